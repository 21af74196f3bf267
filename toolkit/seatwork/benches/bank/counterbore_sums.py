"""What the counterbore bench works out: the usual seat, boss and pilot for each way out."""

from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import TypeVar

from seatwork.errors import SeatworkError
from seatwork.hardware import listed_counterbore, screw, washer, wrench_socket
from seatwork.hardware.clearance import ClearanceHole
from seatwork.hardware.counterbores import CounterboreSize
from seatwork.hardware.drill_list import Drill
from seatwork.hardware.job_list import Job, job, jobs
from seatwork.hardware.screws import Screw
from seatwork.hardware.washers import Washer
from seatwork.hardware.wrenches import WrenchSocket
from seatwork.quantities import Length
from seatwork.seats import Counterbore
from seatwork.seats.counterbore_sizes import sized_for
from seatwork.seats.pilots import Pilot, RaisedBoss, SolidTool, pilot_for, raised_boss
from seatwork.shop.choosing.fitting import LOOSEST_PILOT
from seatwork.shop.house.house_rules import HouseRules, rules
from seatwork.shop.shop import Shop

AskedT = TypeVar("AskedT")
FoundT = TypeVar("FoundT")

HEAD, BORE, KEY, BOSS = (
    "cut for the head",
    "larger counterbore",
    "socket head screw",
    "raised boss",
)
CAST, RIM = 6.35, 1.5875
"""Height of a boss as cast, and metal left round the spotface on it [mm]: examples, no source."""

WRENCH, BELOW, METRIC_DEPTH, ALLOWANCE = (
    "counterbore.wrench_clearance",
    "counterbore.inch_below_face",
    "counterbore.metric_depth",
    "spotface.scale_allowance",
)


EXAMPLE = 2.5
"""Thickness and edge distance over the screw, where the list of jobs gives none [-]: an example."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """What can hold at a place: a hexagon head, or a socket head screw of the same thread.

    Parameters
    ----------
    named : Screw
        The one that was named.
    hexagon, cylinder : Screw or None
        Either screw; None where the lists have none of that thread.
    hole : Drill or ClearanceHole
        Hole for either.
    washer : Washer or None
        Its washer, where the lists have one.
    wrench : WrenchSocket or None
        What the list gives for the wrench socket, where there is a hexagon.
    thickness, edge_distance : float
        Of the part there [mm].
    """

    named: Screw
    hexagon: Screw | None
    cylinder: Screw | None
    hole: Drill | ClearanceHole
    washer: Washer | None
    wrench: WrenchSocket | None
    thickness: float
    edge_distance: float

    @property
    def keyed(self) -> bool:
        """Whether the screw named is turned by a key."""
        return self.named is self.cylinder

    @property
    def room(self) -> WrenchSocket:
        """What the list gives for the wrench socket.

        Raises
        ------
        SeatworkError
            If no hexagon head of that thread is held here.
        """
        if self.wrench is None:
            raise _none(self.named, "hex cap screw", f"take the way out {KEY}")
        return self.wrench

    @property
    def ring(self) -> Washer:
        """The washer.

        Raises
        ------
        SeatworkError
            If the lists have none of that thread.
        """
        if self.washer is None:
            raise _none(self.named, "washer", "leave the washer out")
        return self.washer

    @property
    def stand_in(self) -> float:
        """Outside diameter of a socket for which the list's counterbore leaves room [mm]."""
        if self.wrench is None:
            return 2 * self.named.thread.diameter
        return self.wrench.counterbore_diameter - rules().number(WRENCH)

    def held_by(self, way: str) -> Screw:
        """Return the screw of a way out.

        Raises
        ------
        SeatworkError
            If the lists have none of that thread.
        """
        part = self.cylinder if way == KEY else self.hexagon
        if part is None:
            missing = "socket head cap screw" if way == KEY else "hex cap screw"
            raise _none(self.named, missing, "take another way out")
        return part


def hexagons() -> tuple[str, ...]:
    """Name the jobs of the list that counterbore a head."""
    return jobs(lambda one: one.seat == "counterbore" and one.fastener is not None)


def held(name: str) -> Held:
    """Find what can hold in a job of the list, or at any screw whose head is flat below.

    Raises
    ------
    SeatworkError
        If the job names no screw, or its head is a cone.
    """
    found = job(name)
    if found.screw.seat_angle is not None:
        fault = "its head is a cone, which wants a countersink"
        raise SeatworkError(name, fault, "name a hex cap screw or a socket head cap screw")
    return _held(found)


@lru_cache(maxsize=16)
def _held(found: Job) -> Held:
    named, thread = found.screw, found.screw.thread
    flats, usual = named.across_flats is not None, EXAMPLE * thread.diameter
    hexagon = named if flats else _if_held(screw, f"{thread.name} hex cap")
    size = thread.size if thread.system == "metric" else f"{thread.size} narrow"
    return Held(
        named=named,
        hexagon=hexagon,
        cylinder=_if_held(screw, f"{thread.name} SHCS") if flats else named,
        hole=found.hole,
        washer=_if_held(washer, size),
        wrench=_if_held(wrench_socket, hexagon) if hexagon else None,
        thickness=found.thickness or usual,
        edge_distance=found.edge_distance or usual,
    )


def _if_held(find: Callable[[AskedT], FoundT], asked: AskedT) -> FoundT | None:
    """Return what a list has, None where it has no such row."""
    with suppress(SeatworkError):
        return find(asked)
    return None


def _none(named: Screw, what: str, remedy: str) -> SeatworkError:
    return SeatworkError(named.name, f"no list held here has a {what} of this thread", remedy)


def usual(at: Held, way: str, ringed: bool, room: float, kept: HouseRules) -> Counterbore:
    """Give the seat for a screw and a way out, with the depth that is usual.

    Parameters
    ----------
    at : Held
        What can hold there.
    way : str
        One of the ways out.
    ringed : bool
        Whether a washer lies under the head.
    room : float
        Counterbore that leaves room for the wrench socket [mm].
    kept : HouseRules
        The rules in force.

    Raises
    ------
    SeatworkError
        If the sizes make no counterbore.
    """
    part, clearance = at.held_by(way), kept.number(WRENCH)
    sized = sized_for(
        hole_diameter=at.hole.diameter,
        head_diameter=part.head_diameter or part.across_corners or 0.0,
        head_height=part.head_height or 0.0,
        clearance=clearance,
        below=kept.number(BELOW),
        wrench_socket_diameter=room - clearance if way == BORE else 0.0,
        washer_diameter=at.ring.outside_diameter if ringed else 0.0,
        washer_thickness=(at.ring.thickness or 0.0) if ringed else 0.0,
    ).counterbore
    if way == BOSS:
        return replace(sized, depth=kept.number(ALLOWANCE))
    listed = listing(at, way, ringed)
    if listed is None:
        return sized
    own = listed.diameter if way in (HEAD, KEY) else 0.0
    least = sized.diameter if ringed or way == BORE else 0.0
    return replace(sized, diameter=max(own, least), depth=listed.depth)


def listing(at: Held, way: str, ringed: bool) -> CounterboreSize | None:
    """Give what a list has for the head; None for a hex cap screw in inches, and on a boss."""
    part = at.held_by(way)
    if way == BOSS or (part is at.hexagon and part.thread.system == "inch"):
        return None
    thick = (at.ring.thickness or 0.0) if ringed else 0.0
    return listed_counterbore(part, room_for="no wrench", washer_thickness=thick)


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


def pilot(seat: Counterbore, kept: HouseRules, tools: tuple[SolidTool, ...]) -> Pilot:
    """Choose the pilot: fixed if the shop has such a tool, else interchangeable."""
    clearance = kept.number("pilot.clearance")
    return pilot_for(
        seat,
        clearance=clearance,
        greatest_clearance=max(LOOSEST_PILOT, clearance),
        solid_tools=tools,
    )


def solid_tools(shop: Shop) -> tuple[SolidTool, ...]:
    """Return the tools with a fixed pilot of the shop's list."""
    return tuple(
        SolidTool(diameter=one.body_diameter, pilot_diameter=one.pilot_diameter)
        for one in shop.cutters
        if one.kind in ("counterbore", "spotface cutter")
        and one.body_diameter
        and one.pilot_diameter
    )
