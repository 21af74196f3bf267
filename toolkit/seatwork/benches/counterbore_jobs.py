"""What the counterbore bench can be set to: screws of the cider mill, and the ways out."""

from dataclasses import dataclass, replace
from functools import cache

from seatwork.errors import Length, SeatworkError
from seatwork.hardware import clearance_hole, counterbore, screw, washer, wrench_socket
from seatwork.hardware.clearance import ClearanceHole
from seatwork.hardware.counterbores import CounterboreSize
from seatwork.hardware.screws import Screw
from seatwork.hardware.washers import Washer
from seatwork.hardware.wrenches import WrenchSocket
from seatwork.seats import Counterbore
from seatwork.seats.counterbore_sizes import sized_for
from seatwork.seats.pilots import Pilot, RaisedBoss, SolidTool, pilot_for, raised_boss
from seatwork.shop.choosing.fitting import LOOSEST_PILOT
from seatwork.shop.house.house_rules import HouseRules, rules
from seatwork.shop.lists.cutters import cutters

HEAD, BORE, KEY, BOSS = (
    "cut for the head",
    "larger counterbore",
    "socket head screw",
    "raised boss",
)
THREE, QUARTER, HALF, M6, M8 = (
    "3/8 hex cap (bearing cap)",
    "1/4 hex cap (guard bracket)",
    "1/2 hex cap (frame foot)",
    "M6 hex (guard bracket)",
    "M8 hex (bearing cap)",
)
CAST, RIM = 6.35, 1.5875
"""Height of a boss as cast, and metal left round the spotface on it [mm]: examples, no source."""

WRENCH, BELOW, METRIC_DEPTH, ALLOWANCE = (
    "counterbore.wrench_clearance",
    "counterbore.inch_below_face",
    "counterbore.metric_depth",
    "spotface.scale_allowance",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
    """A place on the cider mill and what can hold there.

    Parameters
    ----------
    hexagon, cylinder : Screw
        The hex cap screw, and the socket head screw of the same thread.
    hole : ClearanceHole
        Hole for either.
    ring : Washer
        Its washer.
    room : WrenchSocket
        What the list gives for the wrench socket.
    thickness, edge_distance : float
        Of the part there [mm]: examples.
    """

    hexagon: Screw
    cylinder: Screw
    hole: ClearanceHole
    ring: Washer
    room: WrenchSocket
    thickness: float
    edge_distance: float

    @property
    def stand_in(self) -> float:
        """Outside diameter of a socket for which the list's counterbore leaves room [mm]."""
        return self.room.counterbore_diameter - rules().number(WRENCH)


@cache
def jobs() -> dict[str, Job]:
    """Give the screws that can be chosen, sizes from the lists."""
    inch = 25.4
    chosen = {
        THREE: ("3/8-16", "3/8 narrow", 1.0 * inch, 1.0 * inch),
        QUARTER: ("1/4-20", "1/4 narrow", 0.75 * inch, 0.75 * inch),
        HALF: ("1/2-13", "1/2 narrow", 1.25 * inch, 1.25 * inch),
        M6: ("M6", "M6", 16.0, 15.0),
        M8: ("M8", "M8", 20.0, 20.0),
    }
    return {
        name: _job(size, ring, thickness, edge)
        for name, (size, ring, thickness, edge) in chosen.items()
    }


def _job(size: str, ring: str, thickness: float, edge: float) -> Job:
    hexagon = screw(f"{size} hex" if size.startswith("M") else f"{size} hex cap")
    return Job(
        hexagon=hexagon,
        cylinder=screw(f"{size} SHCS"),
        hole=clearance_hole(hexagon.thread),
        ring=washer(ring),
        room=wrench_socket(hexagon),
        thickness=thickness,
        edge_distance=edge,
    )


def usual(name: str, way: str, ringed: bool, room: float, held: HouseRules) -> Counterbore:
    """Give the seat for a job and a way out, with the depth that is usual.

    Parameters
    ----------
    name, way : str
        A key of `jobs`, and one of the ways out.
    ringed : bool
        Whether a washer lies under the head.
    room : float
        Counterbore that leaves room for the wrench socket [mm].
    held : HouseRules
        The rules in force.

    Raises
    ------
    SeatworkError
        If the sizes make no counterbore.
    """
    job = jobs()[name]
    part, ring = (job.cylinder if way == KEY else job.hexagon), job.ring
    clearance = held.number(WRENCH)
    sized = sized_for(
        hole_diameter=job.hole.diameter,
        head_diameter=part.head_diameter or part.across_corners or 0.0,
        head_height=part.head_height or 0.0,
        clearance=clearance,
        below=held.number(BELOW),
        wrench_socket_diameter=room - clearance if way == BORE else 0.0,
        washer_diameter=ring.outside_diameter if ringed else 0.0,
        washer_thickness=(ring.thickness or 0.0) if ringed else 0.0,
    ).counterbore
    if way == BOSS:
        return replace(sized, depth=held.number(ALLOWANCE))
    listed = listing(job, way, ringed)
    if listed is None:
        return sized
    own = listed.diameter if way in (HEAD, KEY) else 0.0
    least = sized.diameter if ringed or way == BORE else 0.0
    return replace(sized, diameter=max(own, least), depth=listed.depth)


def listing(job: Job, way: str, ringed: bool) -> CounterboreSize | None:
    """Give what a list has for the head; None for a hex cap screw in inches, and on a boss."""
    part = job.cylinder if way == KEY else job.hexagon
    if way == BOSS or (part is job.hexagon and part.thread.system == "inch"):
        return None
    thick = (job.ring.thickness or 0.0) if ringed else 0.0
    return counterbore(part, room_for="no wrench", washer_thickness=thick)


def boss_for(seat: Counterbore, instead_of: Counterbore) -> RaisedBoss:
    """Size a boss, cast to the example's height, whose spotface is `seat`.

    Raises
    ------
    SeatworkError
        If the spotface takes the whole boss.
    """
    if not seat.depth < CAST:
        raise SeatworkError(
            Length(seat.depth),
            "so deep a spotface takes the whole boss, cast {height} high",
            "cut only until it is clean all round",
            height=Length(CAST),
        )
    return raised_boss(
        bearing_diameter=seat.diameter,
        clean_up=seat.depth,
        stand=CAST - seat.depth,
        rim=RIM,
        instead_of=instead_of,
    )


def pilot(seat: Counterbore, held: HouseRules, tools: tuple[SolidTool, ...]) -> Pilot:
    """Choose the pilot: fixed if the shop has such a tool, else interchangeable."""
    clearance = held.number("pilot.clearance")
    return pilot_for(
        seat,
        clearance=clearance,
        greatest_clearance=max(LOOSEST_PILOT, clearance),
        solid_tools=tools,
    )


def solid_tools() -> tuple[SolidTool, ...]:
    """Read the tools with a fixed pilot from the shop's list."""
    return tuple(
        SolidTool(diameter=one.body_diameter, pilot_diameter=one.pilot_diameter)
        for one in cutters()
        if one.kind in ("counterbore", "spotface cutter")
        and one.body_diameter
        and one.pilot_diameter
    )
