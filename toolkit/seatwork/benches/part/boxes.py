"""The boxes of the page: a line or a menu with its label, which tells what was typed."""

from collections.abc import Callable, Iterator, Sequence
from typing import Any

import ipywidgets

Heard = Callable[[str], None]


def line(label: str, heard: Heard, *, hint: str = "", text: str = "") -> Any:
    """Return a line that tells its text on Enter, and when the hand leaves it."""
    made = ipywidgets.Text(value=text, description=label, placeholder=hint, continuous_update=False)
    return _dressed(made, heard)


def area(label: str, heard: Heard, *, rows: int = 2, text: str = "") -> Any:
    """Return a box of several lines that tells its text with every key."""
    return _dressed(ipywidgets.Textarea(value=text, description=label, rows=rows), heard)


def menu(label: str, options: Sequence[str], heard: Heard, *, chosen: str = "") -> Any:
    """Return a menu with an empty entry, unless something is chosen from the first."""
    names = list(options) if chosen in options else ["", *options]
    made = ipywidgets.Dropdown(options=names, value=chosen or names[0], description=label)
    made.style.description_width = "initial"
    made.observe(lambda change: heard(change["new"]), "value")
    return made


def button(words: str, pressed: Callable[[], object]) -> Any:
    """Return a button as wide as its words."""
    made = ipywidgets.Button(description=words)
    made.on_click(lambda _: pressed())
    return made


def tree(widget: Any) -> Iterator[Any]:
    """Yield all widgets below one, and itself at last."""
    for child in getattr(widget, "children", ()):
        yield from tree(child)
    yield widget


def lay(box: Any, text: str) -> None:
    """Show a text in a box without its being heard as typed: the same text changes nothing."""
    if box.value.strip() != text:
        box.value = text


def _dressed(made: Any, heard: Heard) -> Any:
    made.style.description_width = "initial"
    made.add_class("seatwork-text")
    made.observe(lambda change: heard(change["new"]), "value")
    return made
