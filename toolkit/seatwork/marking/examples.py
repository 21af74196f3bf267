"""A made-up class of twelve, with the slips it makes: to show and to try marking with."""

from collections.abc import Iterator, Sequence
from importlib.resources import files as package_files
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import course, roster, typed_back
from seatwork.marking.answers import Answer, AnswerFile
from seatwork.marking.handed import Forms
from seatwork.marking.sealing import form_secret
from seatwork.marking.sheets import Sheet
from seatwork.marking.text import right_answer
from seatwork.questions.type.parts import ChoicePart, NumberPart, Part
from seatwork.questions.type.slips import Slip

CLASS = tuple(f"L{number:02d}" for number in range(1, 13))
"""Codes of the learners."""

KEY = bytes([91]) * course.KEY_BYTES
"""Known to everyone, so that the numbers on the page are the same at every run."""

ANSWERS = "answers.csv"
BLANK, OTHER_UNIT, TIMES, AS = "blank", "other unit", "times ", "as "


def make_course(folder: Path) -> Path:
    """Make the instructor's folder of the made-up class: its roster and its key, no secret.

    Parameters
    ----------
    folder : Path
        Where; made if need be.

    Raises
    ------
    SeatworkError
        If there is a course key already, since another class may need it.
    """
    key = folder / course.KEY_FILE
    if key.exists():
        raise SeatworkError(str(key), "a course is there already", "name an empty folder")
    files.write(key, KEY.hex() + "\n", mode=files.PRIVATE)
    files.write_table(folder / roster.ROSTER_FILE, roster.HEADS, ((code, "", 0) for code in CLASS))
    return folder


def answer(folder: Path, sheet: Sheet, handed_out: Forms) -> Path:
    """Write what the class answered to a sheet handed out to it, as typed back from paper.

    Most answers are right; the others are listed in ``demo/class.csv``: a slip by its code, a
    factor on the right answer that no slip gives, an answer in the other unit, another learner's
    answer, or none.

    Parameters
    ----------
    folder : Path
        The folder made by `make_course`, with the sheet handed out.
    sheet : Sheet
        The worksheet: cones or mixed_test; all is right in any other.
    handed_out : Forms
        What was handed out, as ``seatwork.record.forms`` reads it.

    Returns
    -------
    Path
        The CSV file, for ``seatwork mark``.

    Raises
    ------
    SeatworkError
        If the sheet was not handed out to the class.
    """
    rows = [row for code in CLASS for row in _rows(handed_out, sheet, code, _planned(sheet, code))]
    files.write_table(folder / ANSWERS, typed_back.HEADS, rows)
    return folder / ANSWERS


def hand_in(to: Path, sheet: Sheet, handed_out: Forms, learners: Sequence[str] = CLASS) -> Path:
    """Save what some of the class answered as their pages save it: a sealed answer file each.

    Parameters
    ----------
    to : Path
        Folder that is handed in; made if need be.
    sheet : Sheet
        The worksheet; each learner answers their last form of it, with the slips of `answer`.
    handed_out : Forms
        What was handed out, as ``seatwork.record.forms`` reads it.
    learners : sequence of str
        Who.

    Returns
    -------
    Path
        The folder.
    """
    for code in learners:
        typed: dict[str, list[str]] = {}
        for _, place, text in _rows(handed_out, sheet, code, _planned(sheet, code)):
            typed.setdefault(place.rstrip(typed_back.PARTS), []).append(text)
        form = handed_out.forms(sheet.name, code)[-1]
        answers = {name: Answer(parts=tuple(parts), tries=1) for name, parts in typed.items()}
        file = AnswerFile(
            learner=code, sheet=sheet.name, form=form.form, answers=answers, form_id=form.form_id
        )
        (file.sealed(form_secret(KEY, form.form_id)) if form.form_id else file).save(to)
    return to


def _planned(sheet: Sheet, learner: str) -> dict[str, str]:
    """Return what goes otherwise than right, by question."""
    path = Path(str(package_files("seatwork.marking"))) / "demo" / "class.csv"
    rows = files.read_table(path, columns=("sheet", "learner", "question", "what"))
    return {
        row.text("question"): row.text("what")
        for row in rows
        if (row.text("sheet"), row.text("learner")) == (sheet.name, learner)
    }


def _rows(
    handed_out: Forms, sheet: Sheet, learner: str, planned: dict[str, str]
) -> Iterator[tuple[str, str, str]]:
    for place, part in _parts(handed_out, sheet, learner):
        what = planned.get(place, "right")
        if what.startswith(AS):
            part, what = dict(_parts(handed_out, sheet, what.removeprefix(AS)))[place], "right"
        yield learner, place, _typed(part, what)


def _parts(handed_out: Forms, sheet: Sheet, learner: str) -> Iterator[tuple[str, Part]]:
    """Yield what a learner was asked, each part with its place, such as c3b."""
    forms = handed_out.forms(sheet.name, learner)
    if not forms:
        raise SeatworkError(learner, f"{sheet.name} was not handed out", "hand it out first")
    for name, question in forms[-1].questions(sheet).items():
        parts = question.parts
        for letter, part in zip(typed_back.PARTS, parts, strict=False):
            yield name + letter if len(parts) > 1 else name, part


def _typed(part: Part, what: str) -> str:
    """Write the answer that somebody with this slip would write."""
    if what == BLANK:
        return ""
    if what == "right" or not isinstance(part, NumberPart):
        return right_answer(part) if what == "right" else _chosen(part, what)
    if what == OTHER_UNIT:
        (other,) = {"inch", "metric"} - {part.system}
        return f"{part.measure.stated(part.value, other):f}"
    factor = what.removeprefix(TIMES)
    value = part.value * float(factor) if factor != what else _of_slip(part, what)
    return f"{part.measure.stated(value, part.system):f}"


def _of_slip(part: NumberPart, code: str) -> float:
    """Return what a slip gives; the question's first where it gives nothing with these sizes."""
    slip = next((slip for slip in part.slips if slip.code == code), part.slips[0])
    assert not isinstance(slip.value, str)
    return part.measure.inside(slip.value, part.system)


def _chosen(part: Part, code: str) -> str:
    """Return the option that shows a slip."""
    assert isinstance(part, ChoicePart)
    slip: Slip = next(slip for slip in part.slips if slip.code == code)
    return str(slip.value)
