"""Taking in: what was handed in is copied into the course folder, sheet by sheet; none is lost."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.answers import MOST_BYTES, AnswerFile, parse
from seatwork.marking.submissions import Submission, collect

FOLDER = "handed_in"
"""Where what was taken in lies, in the instructor's folder."""
MOST_COPIES = 99
"""Papers of one form with other answers; more are no accident."""


@dataclass(slots=True)
class TakenIn:
    """What taking in came to.

    Parameters
    ----------
    new, known : int
        Papers copied, and papers that lie there already, answer for answer.
    sheets : set of str
        Sheets of which papers came.
    left : list of str
        What was not taken, each with the reason; it stays where it lies.
    """

    new: int = 0
    known: int = 0
    sheets: set[str] = field(default_factory=set)
    left: list[str] = field(default_factory=list)

    def __repr__(self) -> str:
        return f"<TakenIn: {self.new} new, {self.known} known already, {len(self.left)} left>"

    def lines(self) -> Iterator[str]:
        """Yield what a person should know, a sentence each."""
        of = f" Sheets: {', '.join(sorted(self.sheets))}." if self.sheets else ""
        yield f"Taken in: {self.new} new, {self.known} known already.{of}"
        for line in self.left:
            yield f"Not taken in: {line}. It stays where it is."


def from_folder(course: Path, place: Path) -> TakenIn:
    """Take in the answer files below a folder, such as a stick or a share; nothing is run.

    Parameters
    ----------
    course : Path
        The instructor's folder.
    place : Path
        Where they lie.

    Raises
    ------
    SeatworkError
        If there is no such folder, or the course folder cannot be written.
    """
    try:
        there = place.is_dir()
    except OSError as error:
        raise files.refusal(place, error) from error
    if not there:
        raise SeatworkError(str(place), "there is no such folder", "name the folder handed in")
    if place.resolve() == course.resolve() or place.resolve() in course.resolve().parents:
        fault = "your course lies in that folder, and its copies would be taken for new papers"
        raise SeatworkError(str(place), fault, "name the folder that was handed in alone")
    return _take(course, collect(place))


def from_page(course: Path, sent: Iterable[tuple[str, bytes]]) -> TakenIn:
    """Take in answer files that were chosen on the page: names as the browser tells, and bytes."""
    return _take(course, (_sent(name, content) for name, content in sent))


def _sent(name: str, content: bytes) -> Submission:
    shown = name if name.isprintable() else ascii(name)[1:-1]
    if len(content) > MOST_BYTES:
        return Submission(shown, None, "it is too large for an answer file")
    try:
        return Submission(shown, parse(content, shown))
    except SeatworkError as error:
        return Submission(shown, None, error.fault)


def _take(course: Path, found: Iterable[Submission]) -> TakenIn:
    done = TakenIn()
    with files.lock(course, wait=20):
        for one in found:
            if one.file is None:
                done.left.append(f"{one.name}: {one.doubt}")
            elif _keep(course / FOLDER / one.file.sheet, one.file):
                done.new += 1
            else:
                done.known += 1
            if one.file is not None:
                done.sheets.add(one.file.sheet)
    return done


def _keep(folder: Path, file: AnswerFile) -> bool:
    """Write a paper under a name that its content gives, never over another; False if it is there.

    The folder is the sheet's; learner, sheet and form were checked when the file was read.
    """
    stem, content = file.name.removesuffix(".json"), file.content()
    for number in range(MOST_COPIES):
        path = folder / (f"{stem} ({number}).json" if number else file.name)
        if not path.exists():
            files.make_folder(folder, private=True)
            files.write(path, content, mode=files.PRIVATE)
            return True
        if path.read_bytes() == content:
            return False
    fault = f"{MOST_COPIES} papers of this form lie there, each with other answers"
    raise SeatworkError(file.name, fault, "look at them, and set some aside")
