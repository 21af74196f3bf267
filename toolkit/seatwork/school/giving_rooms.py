"""Handing out in the rooms of a school: drawn by workers, kept by the one process that asked."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking.handed import HandedOut
from seatwork.marking.handing_out import Handout
from seatwork.marking.sheets import Sheet, load
from seatwork.record.course_record import day_of
from seatwork.record.giving import class_of, draw_forms, keep_drawn
from seatwork.school.layout import Room
from seatwork.school.workers import each


@dataclass(frozen=True, slots=True, kw_only=True)
class RoomGiven:
    """What handing out in a room came to.

    Parameters
    ----------
    room : Room
        The room.
    given : tuple of Handout
        Each learner's form, in the order of the roster; empty if the room got none.
    refused : str
        Why it got none; empty if it did.
    """

    room: Room
    given: tuple[Handout, ...] = ()
    refused: str = ""

    def __repr__(self) -> str:
        return f"<RoomGiven {self.room.name}: {self.refused or f'{len(self.given)} forms'}>"


def hand_out_rooms(
    rooms: Sequence[Room],
    sheet: Sheet | str,
    *,
    sitting: int = 1,
    mode: str | None = None,
    due: str = "",
    day: str = "",
    workers: int = 1,
    scheduler: str = "",
    progress: Callable[[int], None] | None = None,
) -> Iterator[RoomGiven]:
    """Hand a sheet out to everyone in each room; the forms are those of handing out room by room.

    Workers draw and write nothing, so that the task of one that died is done again. Each room's
    record, and the folders of its learners in ``given``, are written here. A room where it
    cannot be handed out says why, and stops no other.

    Parameters
    ----------
    rooms : sequence of Room
        The rooms; each has a roster in its course.
    sheet : Sheet or str
        The worksheet, or its name.
    sitting, mode, due, day : int, str, str, str
        As for `seatwork.record.hand_out`.
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
    given : RoomGiven
        What came of each room, as it is done.

    Raises
    ------
    SeatworkError
        If the scheduler does not answer, a day is none, or the sheet is not known.
    """
    plan, when = load(sheet) if isinstance(sheet, str) else sheet, day_of(day)
    until = day_of(due) if due else ""
    there: list[tuple[Room, list[str]]] = []
    for room in rooms:
        try:
            there.append((room, class_of(room.course, when)))
        except SeatworkError as error:
            yield RoomGiven(room=room, refused=str(error))
    tasks = [(plan, str(room.course), learners, sitting, mode) for room, learners in there]
    drawn = each(draw, tasks, workers=workers, scheduler=scheduler)
    keep = partial(keep_drawn, sheet=plan, sitting=sitting, mode=mode, due=until, day=when)
    for done, (place, found) in enumerate(drawn, 1 + len(rooms) - len(there)):
        yield _given(*there[place], found, keep)
        if progress:
            progress(done)


def draw(
    plan: Sheet, course: str, learners: Sequence[str], sitting: int, mode: str | None
) -> dict[str, HandedOut]:
    """Draw the forms of one room: data in, data out, nothing written.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    course : str
        The instructor's folder.
    learners : sequence of str
        Learner codes.
    sitting, mode : int, str or None
        As for `seatwork.record.hand_out`.

    Raises
    ------
    SeatworkError
        If an earlier sitting is missing, or the record cannot be read.
    """
    return draw_forms(Path(course), plan, learners, sitting=sitting, mode=mode)


def _given(
    room: Room,
    learners: Sequence[str],
    found: Mapping[str, HandedOut] | SeatworkError,
    keep: Callable[..., tuple[Handout, ...]],
) -> RoomGiven:
    """Keep what was drawn for a room; what cannot be kept is said of that room alone."""
    if isinstance(found, SeatworkError):
        return RoomGiven(room=room, refused=str(found))
    try:
        given = keep(room.course, learners=learners, drawn=found, target=room.given)
    except SeatworkError as error:
        return RoomGiven(room=room, refused=str(error))
    return RoomGiven(room=room, given=given)
