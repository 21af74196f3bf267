"""What the buttons do, each told in sentences; doing one twice changes nothing more."""

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from random import SystemRandom

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import roster, sheets
from seatwork.marking.allowed import allowed
from seatwork.marking.names import learner_code
from seatwork.marking.speaking import voice_at
from seatwork.record import Record, giving, marking_course, picture, writable_record
from seatwork.record.class_now import Class
from seatwork.record.course_record import day_of, open_record
from seatwork.record.learner_report import report_in
from seatwork.record.marking_told import told
from seatwork.record.naming import read_names
from seatwork.record.tables_out import write_all_marks
from seatwork.worksheet.term_desk.taking import FOLDER

Progress = Callable[[int], None]
TYPED = "from_paper"


def plan_of(course: Path, name: str) -> sheets.Sheet:
    """Return a sheet with the question types of the workbook that holds the course."""
    return sheets.load(name, own=sheets.own_folder(course), allowed=allowed(course))


def draw_codes(course: Path, text: str) -> list[str]:
    """Draw learner codes for a class of so many."""
    if not text.strip().isdecimal():
        raise SeatworkError(text[:20], "that is no number of learners", "write one such as 12")
    learners = roster.new(course, int(text), SystemRandom())
    codes = " ".join(one.code for one in learners)
    return [f"{len(learners)} codes: {codes}.", "Write the names on your own list, on paper."]


def give(
    course: Path,
    name: str,
    *,
    sitting: int,
    due: str,
    only: str,
    day: str,
    progress: Progress,
) -> list[str]:
    """Hand a sheet out to the class, or to some, and print it with its key.

    Parameters
    ----------
    course : Path
        The instructor's folder.
    name : str
        Name of the sheet.
    sitting : int
        2 for the first re-test.
    due, day : str
        The day it is due, empty for none; the day of handing out, empty for today.
    only : str
        Codes of some, between spaces; all if empty.
    progress : callable
        Called with the number of learners whose paper is printed.
    """
    from seatwork.cards.paper import print_class, which_papers

    plan, when = plan_of(course, name), day_of(day)
    learners = _among(giving.class_of(course, when), only)
    place = course / "given"
    given = giving.hand_out(
        course, plan, learners, sitting=sitting, mode="graded", target=place, due=due, day=when
    )
    which = which_papers(sitting, learners if only.split() else [])
    with files.lock(course, wait=20):
        papers, key = print_class(
            plan,
            given,
            to=place,
            keep=course,
            which=which,
            language=voice_at(course).language,
            progress=progress,
        )
    until = f", due {due}" if due else ""
    stays = giving.other_mode(given, "graded")
    return [
        f"{plan.title}, sitting {sitting}: {len(given)} forms{until}.",
        *([f"{stays}."] if stays else []),
        f"For the screen: a folder for each learner in {place}.",
        f"To print, in the order of the roster: {papers}. The key, for you alone: {key}.",
    ]


def _among(learners: list[str], only: str) -> list[str]:
    wanted = [learner_code(code.strip(",").upper()) for code in only.split()]
    for code in wanted:
        if code not in learners:
            fault = "nobody of that code is on the roster, or they left the course"
            raise SeatworkError(code, fault, "check the code")
    return wanted or learners


def class_size(course: Path, only: str) -> int:
    """Return for how many learners a hand-out prints; 1 where that cannot be told yet."""
    try:
        return len(only.split()) or len(roster.read(course))
    except SeatworkError:
        return 1


def pile_size(course: Path, name: str) -> int:
    """Return how many files lie ready to be marked."""
    return sum(1 for place in _piles(course, name) for path in place.iterdir() if path.is_file())


def _piles(course: Path, name: str) -> list[Path]:
    place = course / FOLDER / name
    return [place] if place.is_dir() else []


def mark(course: Path, name: str, *, day: str, progress: Progress) -> list[str]:
    """Mark what was taken in of a sheet; what was marked before stays."""
    plan, piles = plan_of(course, name), _piles(course, name)
    if not piles:
        fault = "nothing of this sheet was taken in"
        raise SeatworkError(plan.title, fault, "take it in first, or choose another sheet")
    done = marking_course.mark(course, plan, piles, day=day, progress=progress)
    return told(plan, done, course)


def print_class_page(course: Path, to: Path, *, names: str, day: str) -> list[str]:
    """Print the class in one picture, with names if a list of them is named."""
    from seatwork.cards.class_page import class_page

    when = day_of(day)
    known = _names(names, to, course)
    with reading(course) as record:
        found = picture(record, when)
    place = to / f"class-{when}.pdf"
    class_page(found, names=known).save(place, private=True)
    return [f"To print: {place}."]


def print_reports(course: Path, to: Path, *, names: str, day: str, progress: Progress) -> list[str]:
    """Print a report of each learner, with names if a list of them is named."""
    from seatwork.cards.report_page import report_page

    when = day_of(day)
    known = _names(names, to, course)
    with reading(course) as record, record.reading() as connection:
        now = Class(connection, when)
    codes, voice = now.learners(), voice_at(course)
    for number, code in enumerate(codes, 1):
        found = report_in(now, code, voice.say)
        page = report_page(found, name=known.get(code, ""), language=voice.language)
        page.save(to / f"{code}-report.pdf", private=True)
        progress(number)
    return [f"To print: {len(codes)} reports in {to}."]


def learners_of(course: Path, day: str) -> int:
    """Return how many learners have a report."""
    with reading(course) as record, record.reading() as connection:
        return len(Class(connection, day_of(day)).learners())


def _names(named: str, to: Path, course: Path) -> dict[str, str]:
    """Read the list of names, and keep what is printed with them out of the course folder."""
    known = read_names(Path(named.strip()) if named.strip() else None, course)
    home = course.resolve()
    if known and (to.resolve() == home or home in to.resolve().parents):
        fault = "names are never written into the course folder"
        raise SeatworkError(str(to), fault, "print elsewhere, or leave the list of names out")
    files.make_folder(to, private=True)
    return known


@contextmanager
def reading(course: Path) -> Iterator[Record]:
    """Open the record to read it, and let go of it: a copy may take its place."""
    record = open_record(course)
    try:
        yield record
    finally:
        record.close()


@contextmanager
def deciding(course: Path, day: str) -> Iterator[tuple[Record, str]]:
    """Open the record to decide in; the marks are written anew at the end."""
    when = day_of(day)
    with reading(course):  # says what is missing before anything is made
        pass
    record = writable_record(course, when)
    try:
        yield record, when
        write_all_marks(record, course, when)
    finally:
        record.close()


def sheet_names(place: Path | None = None) -> Sequence[str]:
    """Return the names of the sheets that can be handed out."""
    return sorted(found.stem for found in (place or sheets.folder()).glob("*.toml"))
