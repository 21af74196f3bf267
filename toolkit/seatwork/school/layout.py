"""The rooms of a school: folders that each hold a course and what was handed in."""

from dataclasses import dataclass
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.record.marking_course import has_course

COURSE, HANDED_IN, GIVEN = "course", "handed_in", "given"


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """One room: a class with a course of its own.

    Parameters
    ----------
    name : str
        Of its folder.
    course : Path
        The instructor's folder.
    handed_in : Path
        Where the answer files are.
    given : Path
        Where each learner's folder goes at a hand-out.
    """

    name: str
    course: Path
    handed_in: Path
    given: Path

    def __repr__(self) -> str:
        return f"<Room {self.name}>"


def rooms(folder: str | Path) -> list[Room]:
    """Return the rooms of a folder, by name: each folder in it that holds a folder ``course``.

    Parameters
    ----------
    folder : str or Path
        It holds a folder for each room, with ``course`` and ``handed_in`` in it.

    Raises
    ------
    SeatworkError
        If it cannot be read, or holds no room.
    """
    place = Path(folder)
    try:
        inside = sorted(path for path in place.iterdir() if (path / COURSE).is_dir())
    except OSError as error:
        raise files.refusal(place, error) from error
    if not inside:
        remedy = f"lay each room's folder there, with {COURSE} and {HANDED_IN} in it"
        raise SeatworkError(str(place), "it holds no room", remedy)
    return [
        Room(
            name=path.name,
            course=path / COURSE,
            handed_in=path / HANDED_IN,
            given=path / GIVEN,
        )
        for path in inside
    ]


def passed_over(folder: str | Path) -> list[str]:
    """Say of each other folder beside the rooms why it is none, by name; hidden ones aside.

    Parameters
    ----------
    folder : str or Path
        As for `rooms`.
    """
    others = sorted(
        path
        for path in Path(folder).iterdir()
        if path.is_dir() and not path.name.startswith(".") and not (path / COURSE).is_dir()
    )
    return [f"{path.name}: passed over, no folder {COURSE} is in it" for path in others]


def refuse_without_course(folder: Path) -> None:
    """Refuse a course folder in which nothing was handed out.

    Raises
    ------
    SeatworkError
        Of such a folder.
    """
    if not has_course(folder):
        fault = "no sheet was handed out in this room"
        raise SeatworkError(str(folder), fault, "hand one out there first")
