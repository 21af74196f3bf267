"""Own question files that a course may run: each by its fingerprint, put there by a person."""

from collections.abc import Sequence
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.questions.left_out import described
from seatwork.questions.registry import drawing_file, listed_name
from seatwork.questions.type.running import fingerprint

LIST = "own_questions.txt"
HEAD = """# Question files that commands may run for this course, each by the SHA-256 of its bytes.
# Added by seatwork question allow; take a line out, and its file is run no more.
"""


def allowed(course: str | Path) -> dict[str, str]:
    """Return the files that may be run for a course: their names by fingerprint.

    Parameters
    ----------
    course : str or Path
        The instructor's folder.

    Raises
    ------
    SeatworkError
        If the list cannot be read.
    """
    place = Path(course) / LIST
    if not place.is_file():
        return {}
    try:
        lines = place.read_text(encoding="utf-8").splitlines()
    except (OSError, UnicodeDecodeError) as error:
        remedy = "run seatwork question allow for your files again, after it is set aside"
        raise SeatworkError(str(place), "it cannot be read", remedy) from error
    rows = (line.split(maxsplit=1) for line in lines if not line.startswith("#"))
    return {row[0]: row[1].strip() for row in rows if len(row) == 2}


def allow(course: str | Path, paths: Sequence[Path]) -> list[str]:
    """Put question files on the list of a course; none is run. A drawing goes with its type.

    Parameters
    ----------
    course : str or Path
        The instructor's folder.
    paths : sequence of Path
        The files, or folders of them.

    Returns
    -------
    list of str
        Names of the files that are on the list now.

    Raises
    ------
    SeatworkError
        If there is no such course folder or file; then nothing is changed.
    """
    folder = Path(course)
    if not folder.is_dir():
        remedy = "name your own folder with --course; roster new or hand-out makes it"
        raise SeatworkError(str(folder), "there is no such folder", remedy)
    found = {listed_name(one): fingerprint(one) for path in paths for one in _with_drawings(path)}
    with files.lock(folder, wait=20):
        kept = {name: mark for mark, name in allowed(folder).items()} | found
        rows = "".join(f"{mark}  {name}\n" for name, mark in sorted(kept.items()))
        files.write(folder / LIST, (HEAD + rows).encode(), mode=files.PRIVATE)
    return sorted(found)


def _with_drawings(path: Path) -> list[Path]:
    """Return the question files that a path names, each with the drawing beside it."""
    types = sorted(path.glob("*.py")) if path.is_dir() else [path]
    if not types or not all(one.suffix == ".py" and one.is_file() for one in types):
        raise SeatworkError(str(path), "there is no Python file", "name a file that ends with .py")
    drawings = [
        drawing
        for one in types
        for name in described(one.parent, only=one.name)
        if (drawing := drawing_file(one.parent, name)).is_file()
    ]
    return [*types, *drawings]
