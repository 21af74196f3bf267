"""Marking the rooms of a school: judged by workers, kept by the one process that asked."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking.marker import Marked
from seatwork.marking.sheets import Sheet, load
from seatwork.marking.submissions import Submission
from seatwork.record.course_record import open_record
from seatwork.record.marking_course import Marking, in_pile, keep_judged
from seatwork.record.takers import Takers
from seatwork.school.layout import Room, refuse_without_course
from seatwork.school.workers import each


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomMarked:
    """What marking a room came to.

    Parameters
    ----------
    room : Room
        The room.
    marking : Marking or None
        What was marked; None if the room could not be marked.
    refused : str
        Why it could not; empty if it was.
    """

    room: Room
    marking: Marking | None
    refused: str = ""

    def __repr__(self) -> str:
        return f"<RoomMarked {self.room.name}: {self.refused or self.marking!r}>"


def mark_rooms(
    rooms: Sequence[Room],
    sheet: Sheet | str,
    *,
    day: str = "",
    handed_in: str = "",
    workers: int = 1,
    scheduler: str = "",
    progress: Callable[[int], None] | None = None,
) -> Iterator[RoomMarked]:
    """Mark what was handed in in each room; the results are those of marking room by room.

    Workers read and judge; they write nothing, so that the task of one that died is done
    again. Each room's record is written here. A room that cannot be marked says why, and
    stops no other.

    Parameters
    ----------
    rooms : sequence of Room
        The rooms.
    sheet : Sheet or str
        The worksheet, or its name.
    day, handed_in : str
        Day of marking, and the day it came, as for `seatwork.record.mark`.
    workers : int
        Processes on this computer; under 2, or without the extra ``school``, one room after
        the other.
    scheduler : str
        Address of a Dask scheduler whose workers see the same folders; anybody who can reach
        it can run code there.
    progress : callable, optional
        Called with the number of rooms done.

    Yields
    ------
    marked : RoomMarked
        What came of each room, as it is done.

    Raises
    ------
    SeatworkError
        If the scheduler does not answer, or the sheet is not known.
    """
    plan = load(sheet) if isinstance(sheet, str) else sheet
    tasks = [(plan, str(room.course), str(room.handed_in)) for room in rooms]
    judged = each(judge, tasks, workers=workers, scheduler=scheduler)
    for done, (place, found) in enumerate(judged, 1):
        yield _marked(rooms[place], plan, found, day, handed_in)
        if progress:
            progress(done)


def judge(plan: Sheet, course: str, handed_in: str) -> list[tuple[Submission, Marked]]:
    """Mark what was handed in in one room: data in, data out, nothing written.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    course, handed_in : str
        The instructor's folder, and where the answer files are.

    Raises
    ------
    SeatworkError
        If nothing was handed out there, or what was handed in cannot be read.
    """
    folder = Path(course)
    refuse_without_course(folder)
    record = open_record(folder)
    try:
        with record.reading() as connection:
            takers = Takers(connection, plan, record.key)
        return [(one, takers.mark(one)) for one in in_pile(record, plan, handed_in)]
    finally:
        record.close()


def _marked(
    room: Room,
    plan: Sheet,
    found: Sequence[tuple[Submission, Marked]] | SeatworkError,
    day: str,
    handed_in: str,
) -> RoomMarked:
    """Keep what was judged of a room; what cannot be kept is said of that room alone."""
    if isinstance(found, SeatworkError):
        return RoomMarked(room=room, marking=None, refused=str(found))
    try:
        marking = keep_judged(room.course, plan, found, day=day, handed_in=handed_in)
    except SeatworkError as error:
        return RoomMarked(room=room, marking=None, refused=str(error))
    return RoomMarked(room=room, marking=marking)
