"""Boxes for what was measured: a seat, a part's mark, and a box for every reading it takes."""

from collections.abc import Callable, Mapping
from typing import Any

import ipywidgets

from seatwork.benches.part.blocks import block, boxed_columns, measure_blocks, refusal_blocks
from seatwork.benches.part.boxes import button, lay, line, menu, tree
from seatwork.benches.part.desk import PartDesk
from seatwork.benches.part.state import mark_of
from seatwork.benches.part.tables import Tables
from seatwork.inspection.columns import WITH

Attempt = Callable[[Callable[[], object]], str]
FIRST_MARK = "L07-1"


class ReadingsForm:
    """What to measure on one seat, and the boxes of one part.

    Parameters
    ----------
    part : PartDesk
        Whose readings.
    attempt : callable
        Does something to the part; returns a sentence of trouble, or an empty text.
    """

    def __init__(self, part: PartDesk, attempt: Attempt) -> None:
        self._part, self._attempt = part, attempt
        self._laying = False
        self._shown: Any = None
        self.feature, self.mark = "", _last_mark(part)
        self._laid: tuple[tuple[str, str], dict[str, str]] | None = None
        self.wanted, self.refused = Tables(), Tables(told=True)
        self.boxes: dict[str, Any] = {}
        self.box = ipywidgets.VBox([])

    def follow(self) -> None:
        """Show the boxes of the seat being measured; the same ones stay as they are."""
        cuts = self._part.found.cuts
        if self.feature not in cuts:
            self.feature = next(iter(cuts), "")
        if not cuts:
            self.box.children, self._shown = [], None
            return
        cut = cuts[self.feature]
        self.wanted.show(measure_blocks(self.feature, cut, self._part.rules))
        shown = self.feature, tuple(cuts), tuple(boxed_columns(cut))
        if shown != self._shown:
            self._shown = shown
            self._build(tuple(cuts), tuple(boxed_columns(cut)))
        self._lay()

    def _build(self, names: tuple[str, ...], columns: tuple[Any, ...]) -> None:
        """Make the boxes anew."""
        for old in self.box.children:
            for widget in tree(old) if old not in (self.wanted, self.refused) else ():
                widget.close()
        self._laid = None
        self.boxes = {
            column: menu(label, ("", *choices), self._heard)
            if choices
            else line(label, self._heard)
            for column, label, choices in columns
        }
        seats = [menu("Seat measured", names, self._seat, chosen=self.feature)]
        self.mark_box = line("Part", self._marked, text=self.mark, hint="L07-1, never a name")
        grid = ipywidgets.HBox(self._pairs())
        grid.add_class("seatwork-grid")
        another = button("Another part", self._another)
        self.box.children = [
            self.wanted,
            _heading("What it measured, part by part"),
            *(seats if len(names) > 1 else []),
            self.mark_box,
            grid,
            self.refused,
            another,
        ]

    def _pairs(self) -> list[Any]:
        """Return the boxes, each with that of its instrument below it."""
        pairs = []
        for column, box in self.boxes.items():
            if not column.endswith(WITH):
                name = column.partition(" [")[0]
                below = [self.boxes[name + WITH]] if name + WITH in self.boxes else []
                pairs.append(ipywidgets.VBox([box, *below]))
        return pairs

    def _typed(self) -> dict[str, str]:
        readings = self._part.state.readings
        key = self.feature, self.mark
        found = (one for one in readings if (one.feature, one.part) == key)
        cells = next((one.cells for one in found), {})
        boxes = {heading.partition(" [")[0]: heading for heading in self.boxes}
        return dict(_in_box(heading, text, boxes) for heading, text in cells.items())

    def _lay(self) -> None:
        """Fill the boxes of another part; of the same one, those written down otherwise since."""
        key, typed = (self.feature, self.mark), self._typed()
        held = self._laid[1] if self._laid and self._laid[0] == key else None
        self._laid, self._laying = (key, typed), True
        for column, box in self.boxes.items():
            text = typed.get(column, "")
            if held is None or text != held.get(column, ""):
                _fill(box, text)
        self._laying = False

    def _heard(self, _text: str) -> None:
        if self._laying:
            return
        cells = {column: box.value or "" for column, box in self.boxes.items()}
        self._try(lambda: self._part.write_down(self.mark, self.feature, cells))

    def _try(self, deed: Callable[[], object]) -> str:
        """Do something to the part; what is refused is told beside the boxes too."""
        trouble = self._attempt(deed)
        self.refused.show(refusal_blocks(trouble))
        return trouble

    def _seat(self, name: str) -> None:
        if name and name != self.feature:
            self.feature = name
            self.follow()

    def _marked(self, text: str) -> None:
        """Go to the part of another mark, with what was written down of it."""
        if self._laying or self._try(lambda: mark_of(text)):
            return
        self.mark = mark_of(text)
        lay(self.mark_box, self.mark)
        self.follow()

    def _another(self) -> None:
        stem, dash, number = self.mark.rpartition("-")
        marks = {one.part for one in self._part.state.readings}
        start = int(number) + 1 if dash and number.isascii() and number.isdigit() else 2
        stem = stem if dash else self.mark
        wanted = next(n for n in range(start, start + 1000) if f"{stem}-{n}" not in marks)
        self._marked(f"{stem}-{wanted}")


def _in_box(heading: str, text: str, boxes: Mapping[str, str]) -> tuple[str, str]:
    """Return the box of a reading, and its text there: with its unit where the box has another."""
    name, _, unit = heading.removesuffix("]").partition(" [")
    box = boxes.get(name, heading)
    return box, f"{text} {unit}" if unit and box != heading and text[-1:].isdigit() else text


def _fill(box: Any, text: str) -> None:
    """Show a text in a box or a menu; what a menu does not offer is shown all the same."""
    options = getattr(box, "options", None)
    if options is not None and text not in options:
        box.options = (*options, text)
    lay(box, text)


def _heading(words: str) -> Tables:
    made = Tables()
    made.show([block(words, [])])
    return made


def _last_mark(part: PartDesk) -> str:
    """Return the mark that was measured last; a first one where none was."""
    readings = part.state.readings
    return readings[-1].part if readings else FIRST_MARK
