"""What a form is put together from: its view, buttons, and a region for what is said."""

from collections.abc import Callable, Iterable
from html import escape
from typing import Any

import ipywidgets as widgets

from seatwork.benches.term.grid import TermLook

LETTERS = "abcdefgh"


class FormView(widgets.VBox):  # type: ignore[misc]  # ipywidgets has no types
    """The form's widgets; as text, one line that never changes."""

    def __init__(self, children: list[Any], name: str) -> None:
        super().__init__([TermLook(), *children])
        self._name = name
        self.add_class("seatwork-term")

    def __repr__(self, **_kwargs: Any) -> str:
        return f"Form for {self._name}: run this cell to answer here."

    _repr_keys = None


def button(words: str, answer: Callable[[Any], None]) -> Any:
    """Make a button as wide as its words."""
    made = widgets.Button(description=words, layout=widgets.Layout(width="auto"))
    made.on_click(answer)
    return made


def label(number: int, count: int) -> str:
    """Name the box of a part."""
    return "Answer" if count == 1 else f"Answer ({LETTERS[number]})"


def status(lines: Iterable[str]) -> str:
    """Write lines, escaped, as a region that a screen reader tells when it changes."""
    inside = "<br>".join(escape(line) for line in lines)
    return f'<div role="status" style="font-size: 1.05em; line-height: 1.5">{inside}</div>'
