"""The class in one picture, to press a cell of and see what lies behind it."""

from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any, TypeVar

import ipywidgets

from seatwork import record
from seatwork.benches.part.blocks import Block, block
from seatwork.benches.part.tables import Tables
from seatwork.benches.term.cells import cell_blocks, grid_of, report_blocks
from seatwork.benches.term.grid import NONE, Grid
from seatwork.errors import SeatworkError

T = TypeVar("T")
PRESS = "Press a cell to see its paper, or a code to see the report. Arrow keys lead on."


class ClassPicture:
    """The class of a course as it stands on a day; a cell shows its paper, slips and history.

    Names are nowhere in it: learners are codes, as in the record. It reads and changes nothing.

    Parameters
    ----------
    folder : str or Path
        The instructor's folder.
    day : str
        Year-month-day; today if not given.

    Raises
    ------
    SeatworkError
        If there is no record, it cannot be read, or the day is none.
    """

    def __init__(self, folder: str | Path, day: str = "") -> None:
        self._folder, self._day = Path(folder), day
        self.chosen: tuple[str, str] | None = None
        self._followers: list[Callable[[], None]] = []
        self.picture = self._picture()
        self._grid, self._below = Grid(self._press), Tables(told=True)
        self._lay()

    def __repr__(self) -> str:
        count, sheets = len(self.picture.lines), len(self.picture.sheets)
        return f"<ClassPicture: {count} learners, {sheets} sheets, {self.picture.day}>"

    def __str__(self) -> str:
        return str(self.picture)

    def look(self, learner: str, sheet: str = "") -> "record.CellFacts | record.Report":
        """Return what lies behind a cell, or a learner's report, and show it on the page.

        Parameters
        ----------
        learner, sheet : str
            Code of the learner, and name of the sheet; without a sheet it is the report.

        Raises
        ------
        SeatworkError
            If nobody of that code is in the record, or was given no such sheet.
        """
        found = self._found(learner, sheet)
        self.chosen = learner, sheet
        self._below.show(_blocks(found))
        self._grid.chosen = self._place(learner, sheet)
        for follower in tuple(self._followers):
            follower()
        return found

    def renew(self, day: str = "") -> "ClassPicture":
        """Read the record again, as of another day if one is given."""
        self._day = day or self._day
        self.picture = self._picture()
        self._lay()
        if self.chosen is not None:
            try:
                self.look(*self.chosen)
            except SeatworkError:  # erased, or another record came back
                self.chosen, self._grid.chosen = None, NONE
                self._below.show([])
        return self

    def attach(self, follower: Callable[[], None]) -> None:
        """Let someone hear when another cell is chosen."""
        self._followers.append(follower)

    @property
    def view(self) -> Any:
        """The widgets that show it; as text, the picture."""
        return ClassView(self, [self._grid, ipywidgets.Label(PRESS), self._below])

    def _ipython_display_(self) -> None:
        from IPython import display as shown

        display: Any = shown.display
        display(self.view)

    def _picture(self) -> "record.Picture":
        return self._read(record.picture)

    def _found(self, learner: str, sheet: str) -> "record.CellFacts | record.Report":
        if sheet:
            return self._read(lambda kept, day: record.cell_facts(kept, learner, sheet, day))
        return self._read(lambda kept, day: record.report(kept, learner, day))

    def _read(self, what: Callable[["record.Record", str], T]) -> T:
        """Open the record, read, and let go of it: a copy may take its place."""
        kept = record.open_record(self._folder)
        try:
            return what(kept, self._day or date.today().isoformat())
        finally:
            kept.close()

    def _lay(self) -> None:
        self._grid.grid = grid_of(self.picture)

    def _press(self, row: int, column: int) -> None:
        """Show what lies behind the cell that was pressed, or say why that cannot be."""
        if not (0 <= row < len(self.picture.lines) and 0 <= column <= len(self.picture.sheets)):
            return
        learner = self.picture.lines[row].learner
        try:
            self.look(learner, self.picture.sheets[column - 1] if column else "")
        except SeatworkError as error:
            self._below.show([_trouble(error)])

    def _place(self, learner: str, sheet: str) -> list[int]:
        rows = [line.learner for line in self.picture.lines]
        columns = ["", *self.picture.sheets]
        known = learner in rows and sheet in columns
        return [rows.index(learner), columns.index(sheet)] if known else NONE


class ClassView(ipywidgets.VBox):  # type: ignore[misc]  # ipywidgets has no types
    """The widgets of the class; as text, what it shows before a cell is pressed."""

    def __init__(self, shown: ClassPicture, children: list[Any]) -> None:
        super().__init__(children)
        self._shown = shown
        self.add_class("seatwork-term")

    def __repr__(self, **_kwargs: Any) -> str:
        return str(self._shown)

    _repr_keys = None

    def _repr_mimebundle_(self, **kwargs: Any) -> Any:
        """Return the view, and the picture whole where no kernel runs."""
        return {**super()._repr_mimebundle_(**kwargs), "text/plain": repr(self)}


def _blocks(found: "record.CellFacts | record.Report") -> list[Block]:
    return cell_blocks(found) if isinstance(found, record.CellFacts) else report_blocks(found)


def _trouble(error: SeatworkError) -> Block:
    return block(str(error), [], kind="stop")


class_picture = ClassPicture
