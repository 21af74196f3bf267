"""Names of learners: in the instructor's own file, joined on paper and in exports alone."""

from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.names import learner_code

HEADS = ("learner", "name")


def read_names(path: Path | None, course: Path) -> dict[str, str]:
    """Return the names of learners by their codes; nothing if no file is named.

    Parameters
    ----------
    path : Path or None
        A CSV with the columns learner and name; others are left unread.
    course : Path
        The instructor's folder, in which no name may lie.

    Raises
    ------
    SeatworkError
        If the file lies in the course folder, cannot be read, or has faults.
    """
    if path is None:
        return {}
    if course.resolve() in path.resolve().parents:
        remedy = "keep it elsewhere: no name is kept in the course folder"
        raise SeatworkError(str(path), "the list of names lies in the course folder", remedy)
    faults: list[SeatworkError] = []
    rows = files.read_table(path, columns=HEADS, needed=HEADS, others=True, faults=faults)
    return dict(files.build_each(rows, _named, faults))


def _named(row: files.Row) -> tuple[str, str]:
    code = row.read("learner", lambda text: learner_code(text.upper()))
    return code or row.needed("learner"), row.text("name")
