"""What a form is put together from: boxes for answers, buttons, and a region for what is said."""

from collections.abc import Callable, Iterable
from html import escape
from typing import Any

import ipywidgets as widgets

from seatwork.questions.type.parts import UNIT_WORDS, ChoicePart, NumberPart, Part

LETTERS = "abcdefgh"
WIDE = widgets.Layout(width="auto", min_width="14em", max_width="28em")


class FormView(widgets.VBox):  # type: ignore[misc]  # ipywidgets has no types
    """The form's widgets; as text, one line that never changes."""

    def __init__(self, children: list[Any], name: str) -> None:
        super().__init__(children)
        self._name = name
        self.add_class("seatwork-form")

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


def answer_box(part: Part, label: str, text: str) -> Any:
    """Make the box of a part, with what was typed."""
    if isinstance(part, ChoicePart):
        words = {shown: word for word, shown in part.options}
        chosen = part.chosen(text) if text else None
        return widgets.RadioButtons(
            options=words, value=chosen, description=label, layout=widgets.Layout(width="auto")
        )
    asked = part.unit if isinstance(part, NumberPart) else ""
    hint = f"in {UNIT_WORDS.get(asked, asked)}" if asked else ""
    return widgets.Text(value=text, description=label, placeholder=hint, layout=WIDE)


def text_of(box: Any) -> str:
    """Return what is in a box."""
    return box.value or ""


def status(lines: Iterable[str]) -> str:
    """Write lines, escaped, as a region that a screen reader tells when it changes."""
    inside = "<br>".join(escape(line) for line in lines)
    return f'<div role="status" style="font-size: 1.05em; line-height: 1.5">{inside}</div>'
