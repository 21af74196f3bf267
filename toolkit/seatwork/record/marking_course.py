"""Marking a pile of a course: taken in, told, and the tables of marks written anew."""

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import course, roster, submissions, typed_back
from seatwork.marking.handed import Forms
from seatwork.marking.marker import Marked
from seatwork.marking.results import Data
from seatwork.marking.sheets import Sheet, load
from seatwork.marking.submissions import Submission
from seatwork.record.checking import BY_HAND, changed
from seatwork.record.course_record import day_of, has_old_files, has_record, writable_record
from seatwork.record.deciding import enroll
from seatwork.record.formed import read_forms
from seatwork.record.keeping import Record
from seatwork.record.other_papers import notes
from seatwork.record.paper_results import results
from seatwork.record.tables_out import write_marks
from seatwork.record.takers import Judged, Takers
from seatwork.record.taking_in import (
    AGAIN,
    ANOTHER,
    KNOWN,
    NEW,
    PILE,
    Taken,
    take_in,
)

Change = tuple[str, str, float | None, float | None]


@dataclass(frozen=True, slots=True, kw_only=True)
class Marking:
    """What marking a pile came to.

    Parameters
    ----------
    marked : tuple of Marked
        Each hand-in once, in the order it came.
    new, known, changed : int
        Not marked before; known already; papers whose marks are others than before.
    late : tuple of str
        Learners whose paper of this pile counts and came after the day.
    notes : tuple of str
        What a person should know, a sentence each.
    changes : tuple
        Learner and form, question, points before and now [-]; None where a person must decide.
    results : dict
        The marks of the whole sheet, as `seatwork.record.results` gives them.
    """

    marked: tuple[Marked, ...]
    new: int
    known: int
    changed: int
    late: tuple[str, ...]
    notes: tuple[str, ...]
    changes: tuple[Change, ...]
    results: Data

    def __repr__(self) -> str:
        return f"<Marking: {self.new} new, {self.known} known already, {self.changed} changed>"


def mark(
    folder: str | Path,
    sheet: Sheet | str,
    given: str | Path | Sequence[str | Path],
    *,
    day: str = "",
    handed_in: str = "",
    progress: Callable[[int], None] | None = None,
) -> Marking:
    """Mark what was handed in, keep it, and write the marks of the sheet anew.

    What is in the record stays as it is; the same pile again adds nothing.

    Parameters
    ----------
    folder : str or Path
        The instructor's folder.
    sheet : Sheet or str
        The worksheet, or its name.
    given : str or Path, or sequence of them
        Folders of answer files, single ones, CSVs typed back from paper; opened as data,
        nothing is run.
    day : str
        The day of marking, year-month-day; today if not given.
    handed_in : str
        The day it came, for a pile that is marked later; `day` if not given. A paper is late by
        this day.
    progress : callable, optional
        Called with the number of hand-ins done.

    Raises
    ------
    SeatworkError
        If a folder or CSV cannot be read; then nothing is kept.
    """
    home, plan = Path(folder), load(sheet) if isinstance(sheet, str) else sheet
    when = day_of(day)
    with _joined(home, when) as record:
        pile = in_pile(record, plan, given)
        came = day_of(handed_in) if handed_in else when
        return _kept(record, home, plan, pile, when, came, progress=progress)


def keep_judged(
    folder: Path,
    sheet: Sheet,
    judged: Sequence[tuple[Submission, Marked]],
    *,
    day: str,
    handed_in: str = "",
) -> Marking:
    """Keep what another process marked, and write the marks of the sheet anew, as `mark` does.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    sheet : Sheet
        The worksheet.
    judged : sequence of (Submission, Marked)
        Each hand-in with what came of it.
    day, handed_in : str
        As for `mark`.

    Raises
    ------
    SeatworkError
        If the record cannot be opened or written.
    """
    when = day_of(day)
    with _joined(folder, when) as record:
        with record.reading() as connection:
            takers = Judged(connection, sheet, record.key, [marked for _, marked in judged])
        came = day_of(handed_in) if handed_in else when
        pile = [one for one, _ in judged]
        return _kept(record, folder, sheet, pile, when, came, takers=takers)


@contextmanager
def _joined(home: Path, day: str) -> Iterator[Record]:
    """Give the record of a course that has its key, everyone on the roster in it."""
    course.read_key(home)
    record = writable_record(home, day)
    try:
        join(record, home, day)
        yield record
    finally:
        record.close()


def _kept(
    record: Record, home: Path, plan: Sheet, pile: Sequence[Submission], when: str, came: str,
    *, progress: Callable[[int], None] | None = None, takers: Takers | None = None,
) -> Marking:  # fmt: skip
    _refuse_changed(record, pile)
    before = results(record, plan.name, when)
    taken = take_in(record, plan, pile, day=came, progress=progress, takers=takers)
    return _marking(taken, before, write_marks(record, home, plan.name, when))


def in_pile(
    record: Record, plan: Sheet, given: str | Path | Sequence[str | Path]
) -> list[Submission]:
    """Return every hand-in of folders and CSVs once; nothing in them is run."""
    places = [given] if isinstance(given, str | Path) else given
    with record.reading() as connection:
        handed_out = read_forms(connection, plan.name).forms
    return [one for place in places for one in _submissions(plan, Path(place), handed_out)]


def _submissions(plan: Sheet, place: Path, handed_out: Forms) -> Sequence[Submission]:
    try:
        is_file, is_folder = place.is_file(), place.is_dir()
    except OSError as error:  # whoever may not look there
        raise files.refusal(place, error) from error
    if is_file:
        one = submissions.one_file(place)
        return [one] if one is not None else typed_back.read(place, plan, handed_out)
    if not is_folder:
        raise SeatworkError(str(place), "there is no such folder", "name the folder handed in")
    return list(submissions.collect(place))


def join(record: Record, folder: Path, day: str) -> int:
    """Let everyone on the roster join the course; return how many were not in it as it says."""
    if not (folder / roster.ROSTER_FILE).is_file():
        return 0
    return enroll(record, roster.read(folder), day)


def _marking(taken: Taken, before: Data, after: Data) -> Marking:
    changes = compare(before, after)
    piled = _new_on_pile(before, after)
    touched = {place for place, *_ in changes}
    instead = sum(f"{one.learner}, form {one.form}" in touched for one in taken.another)
    return Marking(
        marked=tuple(taken.marked),
        new=taken.count[NEW] + taken.count[ANOTHER] - instead + piled,
        known=taken.count[KNOWN] + taken.count[PILE] - piled,
        changed=taken.count[AGAIN] + instead,
        late=_late(after, taken),
        notes=tuple(notes(taken, after)),
        changes=tuple(changes),
        results=after,
    )


def _refuse_changed(record: Record, pile: Sequence[Submission]) -> None:
    """Write no marks over what somebody changed by hand in the record."""
    learners = sorted({one.file.learner for one in pile if one.file is not None})
    with record.reading() as connection:
        for said in changed(connection, record.key, learners):
            if BY_HAND in said:
                remedy = "run: seatwork record check, then: seatwork record bring-back"
                raise SeatworkError(str(record.place), said, remedy)


def _new_on_pile(before: Data, after: Data) -> int:
    known = {one["id"] for one in before["files"] if one["form"] is None}
    return sum(one["form"] is None and one["id"] not in known for one in after["files"])


def _late(after: Data, taken: Taken) -> tuple[str, ...]:
    came = {(one.file.learner, one.file.form) for one in taken.marked if one.file is not None}
    late = (one for one in after["files"] if one["late"])
    return tuple(one["learner"] for one in late if (one["learner"], one["form"]) in came)


def compare(before: Data, after: Data) -> list[Change]:
    """Return where two results of a sheet differ: learner and form, question, old, new points."""
    old, new = _points(before), _points(after)
    return [
        (*place, old[place], new[place])
        for place in sorted(old.keys() & new.keys())
        if old[place] != new[place]
    ]


def _points(content: Data) -> dict[tuple[str, str], float | None]:
    return {
        (f"{file['learner']}, form {file['form']}", question["id"]): question["points"]
        for file in content["files"]
        for question in file["questions"]
    }


def has_course(folder: Path) -> bool:
    """Whether something was handed out in a folder, in a record or in old files."""
    return has_record(folder) or has_old_files(folder)
