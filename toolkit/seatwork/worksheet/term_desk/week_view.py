"""The week by buttons: what an instructor does with a class, with no terminal."""

from pathlib import Path
from typing import Any

import ipywidgets as widgets

from seatwork.benches.term.class_bench import ClassPicture
from seatwork.benches.term.grid import TermLook
from seatwork.errors import SeatworkError
from seatwork.marking import roster
from seatwork.record.course_record import day_of, has_record
from seatwork.worksheet.boxes import status
from seatwork.worksheet.desk import TYPED, from_paper
from seatwork.worksheet.term_desk import deeds, taking
from seatwork.worksheet.term_desk.decisions import Chosen, DecisionBoxes
from seatwork.worksheet.term_desk.pressing import Pressing, Progress

PRINTED = "printed"
"""Folder for what is printed, beside the course: names may stand there."""
HEADINGS = {
    "hand out": "1  Hand out",
    "take in": "2  Take in",
    "mark": "3  Mark",
    "look": "4  Look and decide",
    "print": "5  Print",
}


class Week:
    """Hand out, take in, mark, look, decide and print for one course, by buttons.

    Parameters
    ----------
    folder : str or Path
        The instructor's folder; made by the first button that writes.
    day : str
        The day that stands in its box, year-month-day; empty for today.

    Raises
    ------
    SeatworkError
        If the day is none.

    Notes
    -----
    Learners are codes. A list of names is read for what is printed alone, and never kept.
    """

    def __init__(self, folder: str | Path = "course", day: str = "") -> None:
        self.course = Path(folder)
        self.day = _box("Day, such as 2026-09-21; today if empty", day and day_of(day))
        self.sheet = widgets.Dropdown(options=deeds.sheet_names(), description="Sheet")
        self.pressing = Pressing(self._renew)
        self.shown: ClassPicture | None = None
        self.decisions = DecisionBoxes()
        self.look = widgets.VBox()
        self.typing = widgets.VBox()
        self.standing = widgets.HTML()
        self.view = WeekView(self._sections())
        self._renew()

    def __repr__(self) -> str:
        return f"<Week of {self.course.name}: hand out, take in, mark, look, print>"

    def _ipython_display_(self) -> None:
        from IPython import display as shown

        display: Any = shown.display
        display(self.view)

    def _sections(self) -> list[Any]:
        return [
            TermLook(),
            self.standing,
            widgets.HBox([self.day, self.sheet]),
            _heading("hand out"), self._hand_out(),
            _heading("take in"), self._take_in(), self.typing,
            _heading("mark"), self._mark(),
            self.pressing.bar, self.pressing.said,
            _heading("look"), self.look, self._decide(),
            _heading("print"), self._print(),
        ]  # fmt: skip

    def _hand_out(self) -> Any:
        self.count = _box("How many learners", "12")
        self.draw = self.pressing.button(
            "Draw codes", lambda _: deeds.draw_codes(self.course, self.count.value)
        )
        self.sitting = widgets.Dropdown(
            options={"first test": 1, "first re-test": 2, "second re-test": 3},
            description="Which sitting",
        )
        self.due = _box("Due, such as 2026-09-28")
        self.only = _box("Only these codes; all if empty")
        press = self.pressing.button(
            "Hand out and print", self._give,
            lambda: deeds.class_size(self.course, self.only.value),
        )  # fmt: skip
        return widgets.HBox([self.count, self.draw, self.sitting, self.due, self.only, press])

    def _take_in(self) -> Any:
        self.place = _box("Folder handed in, such as a stick", "handed_in")
        self.files = widgets.FileUpload(
            accept=".json", multiple=True, description="Choose files",
            layout=widgets.Layout(width="auto"),
        )  # fmt: skip
        buttons = [
            self.pressing.button("Take in the folder", lambda _: self._from_folder()),
            self.files,
            self.pressing.button("Take in the files chosen", lambda _: self._from_page()),
            self.pressing.button("Type answers from paper", lambda _: self._type()),
            self.pressing.button("Take in what was typed", lambda _: self._typed()),
        ]
        return widgets.HBox([self.place, *buttons])

    def _mark(self) -> Any:
        return self.pressing.button(
            "Mark this sheet", self._mark_sheet,
            lambda: deeds.pile_size(self.course, str(self.sheet.value)),
        )  # fmt: skip

    def _decide(self) -> Any:
        press = self.pressing.button("Keep the decision", lambda _: self._keep())
        return widgets.VBox([self.decisions.row, press])

    def _print(self) -> Any:
        self.to = _box("Folder to print to", str(self.course.parent / PRINTED))
        self.names = _box("Your list of names (CSV), if names are wanted")
        buttons = [
            self.pressing.button("Print the class", lambda _: self._class_page()),
            self.pressing.button(
                "Print the reports", self._reports,
                lambda: deeds.learners_of(self.course, self.day.value),
            ),
        ]  # fmt: skip
        return widgets.HBox([self.to, self.names, *buttons])

    def _give(self, progress: Progress) -> list[str]:
        return deeds.give(
            self.course, str(self.sheet.value), sitting=self.sitting.value,
            due=self.due.value.strip(), only=self.only.value, day=self.day.value.strip(),
            progress=progress,
        )  # fmt: skip

    def _from_folder(self) -> list[str]:
        return self._taken(taking.from_folder(self.course, _folder(self.place)))

    def _from_page(self) -> list[str]:
        chosen = [(one["name"], bytes(one["content"])) for one in self.files.value]
        if not chosen:
            raise SeatworkError("no file", "none was chosen", "choose answer files first")
        found = taking.from_page(self.course, chosen)
        self.files.value = ()
        return self._taken(found)

    def _typed(self) -> list[str]:
        return self._taken(taking.from_folder(self.course, self.course / TYPED))

    def _taken(self, found: taking.TakenIn) -> list[str]:
        if len(found.sheets) == 1 and found.sheets <= {*self.sheet.options}:
            (self.sheet.value,) = found.sheets
        return [*found.lines()]

    def _type(self) -> list[str]:
        form = from_paper(str(self.sheet.value), self.course)
        self.typing.children = [form.view]
        return ["Type below, learner by learner. Then press: Take in what was typed."]

    def _mark_sheet(self, progress: Progress) -> list[str]:
        day = self.day.value.strip()
        return deeds.mark(self.course, str(self.sheet.value), day=day, progress=progress)

    def _keep(self) -> list[str]:
        chosen = self.shown.chosen if self.shown is not None else None
        with deeds.deciding(self.course, self.day.value.strip()) as (record, day):
            return self.decisions.keep(record, Chosen(*chosen, day) if chosen else None)

    def _class_page(self) -> list[str]:
        to, names, day = _folder(self.to), self.names.value, self.day.value.strip()
        return deeds.print_class_page(self.course, to, names=names, day=day)

    def _reports(self, progress: Progress) -> list[str]:
        to, names, day = _folder(self.to), self.names.value, self.day.value.strip()
        return deeds.print_reports(self.course, to, names=names, day=day, progress=progress)

    def _renew(self) -> None:
        """Show the class as it stands now, and whether there are codes to hand out to."""
        there = (self.course / roster.ROSTER_FILE).is_file()
        for one in (self.count, self.draw):
            one.layout.display = "none" if there else None
        self.standing.value = status([self._standing()])
        try:
            if has_record(self.course):
                self._lay_class(day_of(self.day.value.strip()))
        except SeatworkError as error:
            self.standing.value = status([str(error)])

    def _lay_class(self, day: str) -> None:
        if self.shown is None:
            self.shown = ClassPicture(self.course, day)
            self.look.children = [self.shown.view]
        else:
            self.shown.renew(day)

    def _standing(self) -> str:
        """Say whose course this is, and what is not there yet."""
        try:
            count = len(roster.read(self.course))
        except SeatworkError:
            return f"{self.course}: no learner codes yet. Draw them first."
        return f"{self.course}: {count} learners on the roster. Keep this folder to yourself."


class WeekView(widgets.VBox):  # type: ignore[misc]  # ipywidgets has no types
    """The widgets of the week; as text, one line that never changes."""

    def __init__(self, children: list[Any]) -> None:
        super().__init__(children)
        self.add_class("seatwork-term")

    def __repr__(self, **_kwargs: Any) -> str:
        return "The week by buttons: run this cell to press them here."

    _repr_keys = None


def week(folder: str | Path = "course", day: str = "") -> Week:
    """Open the week of a course: hand out, take in, mark, look, decide and print by buttons.

    Parameters
    ----------
    folder : str or Path
        The instructor's folder; made by the first button that writes.
    day : str
        The day that stands in its box, year-month-day; empty for today.

    Raises
    ------
    SeatworkError
        If the day is none.

    Examples
    --------
    >>> week("course")
    <Week of course: hand out, take in, mark, look, print>
    """
    return Week(folder, day)


def _folder(box: Any) -> Path:
    """Return the folder that a box names; an empty box names none."""
    text = box.value.strip()
    if not text:
        raise SeatworkError(box.description, "no folder is named", "type where it lies")
    return Path(text)


def _box(label: str, text: str = "") -> Any:
    return widgets.Text(description=label, value=text, continuous_update=True)


def _heading(name: str) -> Any:
    return widgets.HTML(f"<h3>{HEADINGS[name]}</h3>")
