"""A learner's desk: one worksheet with its numbers, its answers, and where they are kept."""

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Any

from seatwork.errors import SeatworkError
from seatwork.marking import given, sheets
from seatwork.marking.allowed import allowed
from seatwork.marking.course import read_key
from seatwork.marking.handed import Forms
from seatwork.questions import Verdict
from seatwork.shop import find
from seatwork.worksheet import handing_in, watching
from seatwork.worksheet.answered import Answered
from seatwork.worksheet.entry import Entry, typed_parts
from seatwork.worksheet.finishing import Finished, NotYet, open_points, show_to_go
from seatwork.worksheet.routing import Route

if TYPE_CHECKING:
    from seatwork.worksheet.paper_form import PaperForm

__all__ = ["Desk", "NotYet", "from_paper", "model_sheet", "sheet"]

TYPED = "from_paper"
"""Where answers typed from paper go, in the instructor's folder."""


def sheet(name: str) -> "Desk":
    """Open a worksheet.

    Parameters
    ----------
    name : str
        Name of the sheet, such as "cones".

    Returns
    -------
    Desk
        With the numbers and the saved answers of the learner whom ``given.json`` names;
        without it, in practice: the numbers everyone gets. Answers are saved in the
        workbook folder's ``answers/``; outside of a workbook nothing is written.

    Raises
    ------
    SeatworkError
        If there is no such sheet.

    Examples
    --------
    >>> sheet("cones").ask("c1", answer=".001 in").verdicts[0].kind
    'wrong'
    """
    workbook = find()
    mine = given.look_for(name, Path.cwd(), workbook)
    plan = sheets.load(name, own=sheets.own_folder())
    return Desk(mine.asked(plan), mine, workbook / "answers" if workbook else None)


def model_sheet(name: str) -> "Desk":
    """Open a worksheet for a model answer: practice numbers, and nothing is saved."""
    plan = sheets.load(name, own=sheets.own_folder())
    return Desk(plan, given.practice(name), None)


def from_paper(sheet: str, course: str | Path = "course") -> "PaperForm":
    """Open the form that answers written on paper are typed into.

    Parameters
    ----------
    sheet : str
        Name of the sheet, such as "cones".
    course : str or Path
        The instructor's folder, in which the hand-out is recorded.

    Returns
    -------
    PaperForm
        The last line of a cell shows it. Answers go into the folder's ``from_paper/`` as
        answer files, which ``seatwork mark`` reads like any others.

    Raises
    ------
    SeatworkError
        If there is no such sheet, or it was handed out to nobody.
    """
    from seatwork.record.giving import forms
    from seatwork.record.marking_course import has_course
    from seatwork.worksheet.paper_form import PaperForm

    folder = Path(course)
    plan = sheets.load(sheet, own=sheets.own_folder(folder), allowed=allowed(folder))
    handed_out = forms(folder) if has_course(folder) else Forms()
    if not any(handed_out.sheets.get(plan.name, {}).values()):
        remedy = "name the folder with record.db, or hand the sheet out first"
        raise SeatworkError(str(folder), f"{plan.name} was handed out to nobody here", remedy)
    return PaperForm(plan, handed_out, folder / TYPED, read_key(folder))


class Desk(Answered):
    """One worksheet being answered.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    mine : Given
        Whose numbers these are.
    folder : Path or None
        Where answers are saved; None to keep them in memory only.
    """

    def ask(self, name: str, answer: str | Sequence[str] | None = None) -> Entry:
        """Show a question with its form, or answer it in one line.

        Parameters
        ----------
        name : str
            The question's place on the sheet, such as "c1".
        answer : str or sequence of str, optional
            The answer as typed, such as ``".139 in"``; several parts as a sequence, or
            in one text with ``;`` between them.

        Returns
        -------
        Entry
            The question with its form; as text, the question alone.

        Raises
        ------
        SeatworkError
            If the sheet has no such question.
        """
        self.plan.item(name)
        self.kept.show(name)
        self.asked.add(name)
        entry = Entry(self, name, _form)
        if answer is not None and typed_parts(answer) != self.answers.of(name).parts:
            self.keep(name, typed_parts(answer))
            self.count(name, "tries")
        return entry

    def hand_in(self) -> Finished:
        """Hand the answers in: copy their file to the folder that ``workbook.toml`` names.

        Raises
        ------
        SeatworkError
            If no folder is named, it is not there, or nothing is answered; nothing is handed
            in then, and the answers stay saved.
        """
        self.kept.refresh()
        return Finished(handing_in.hand_in(self))

    def finish(self) -> Any:
        """End the sheet: in practice all must be right; graded, say what is saved.

        A practice sheet whose questions name lessons ends with the route through them,
        whatever was answered. Where the workbook names a folder for handing in, a sheet that
        was handed out ends with a button for it.

        Returns
        -------
        Finished, Route or HandInForm
            Each a sentence or a few as text.

        Raises
        ------
        NotYet
            In practice, naming the questions that are open.
        """
        self.finished = True
        self.kept.refresh()
        place = None if watching.sitting else handing_in.place_of(self)
        if not self.is_practice:
            return self._hand_in_form(place) if place else Finished(self._saved())
        if place and self._shown:
            _display(self._hand_in_form(place))
        verdicts = {item.id: self.verdicts(item.id) for item in self.plan.items}
        if any(item.lesson for item in self.plan.items):
            return Route(self.plan, verdicts, self.voice.say)
        left = open_points(verdicts, self.voice.say)
        if left:
            self._say_what_is_left(verdicts)
            raise NotYet(self.plan.title, left, self.voice.say)
        all_right = f"{self.plan.title}: all {len(self.plan.items)} questions are right."
        return Finished(self.voice.say(all_right))

    def _hand_in_form(self, place: Path) -> Any:
        """Make the button that hands in; its widgets are loaded when one is shown."""
        from seatwork.worksheet.hand_in_form import HandInForm

        return HandInForm(self, place, lambda: self._saved(place))

    def _say_what_is_left(self, verdicts: Mapping[str, tuple[Verdict, ...]]) -> None:
        """Say in one plain line what is to do, where forms are shown; it stands for the error."""
        if self._shown and not watching.sitting:
            left = [name for name, found in verdicts.items() if not _all_right(found)]
            show_to_go(left, self.voice.words)

    def _saved(self, place: Path | None = None) -> str:
        """Say how much of a graded sheet is answered, what is not, and what to hand in."""
        words, names = self.voice.words, [item.id for item in self.plan.items]
        left = {name: self._left(name) for name in names}
        empty = [name for name in names if left[name] == len(self.question(name).parts)]
        in_part = [name for name in names if left[name] and name not in empty]
        unread = [name for name in names if self._is_unread(name)]
        left_out = {*empty, *in_part, *unread}
        listed = (
            ("form.left_empty", empty),
            ("form.left_in_part", in_part),
            ("form.left_unread", unread),
        )
        named = "form.hand_in_here" if place else "form.hand_in"
        kept = words[named if self.kept.folder else "form.not_kept"]
        return words["form.finished"].format(
            done=len(names) - len(left_out),
            count=len(names),
            left="".join(words[key].format(names=" ".join(them)) for key, them in listed if them),
            place=kept.format(file=self.answers.name),
        )

    def _is_unread(self, name: str) -> bool:
        """Tell whether some part of an answer cannot be read; nothing is said of what it is."""
        return any(verdict.kind == "unreadable" for verdict in self.verdicts(name))

    def _left(self, name: str) -> int:
        """Count the parts of a question that are empty."""
        typed, count = self.answers.of(name).parts, len(self.question(name).parts)
        return count - sum(bool(part.strip()) for part in typed[:count])


def _all_right(verdicts: tuple[Verdict, ...]) -> bool:
    return all(verdict.is_right for verdict in verdicts)


def _form(entry: Entry) -> Any:
    """Make the form under a question; its widgets are loaded when one is shown."""
    from seatwork.worksheet.form import Form

    return Form(entry).view


def _display(view: Any) -> None:
    """Show something above the cell's own output."""
    from IPython import display as shown

    display: Any = shown.display
    display(view)
