"""The four pictures of the chatter bench, and what each is told of a cut."""

from dataclasses import dataclass, replace
from typing import Any

from seatwork.benches.bank.chatter_seat import COUNTED, CutSeat, axial, other_machine
from seatwork.benches.bank.chatter_sums import Mounted
from seatwork.drawings.views.chatter_cones import ConesView, TwoCones
from seatwork.drawings.views.chatter_cures import Cures, CuresView
from seatwork.drawings.views.chatter_map import MapView, Place
from seatwork.drawings.views.chatter_trace import Followed, TraceView

CONES, MAP, TRACE, CURES = "the cones", "the map", "the cut in time", "the cures"


@dataclass(frozen=True, slots=True, kw_only=True)
class Plunge:
    """What the bench shows.

    Parameters
    ----------
    mounted : Mounted
        Machine, cutter and metal.
    seat : CutSeat
        The seat.
    machine, view : str
        Which machine, and which picture.
    spindle_speed, other_speed : float
        The speed set, and the one beside it [rev/min].
    width : float
        Lip in cut [mm].
    shown : bool
        Whether the answer is shown.
    """

    mounted: Mounted
    seat: CutSeat
    machine: str
    view: str
    spindle_speed: float
    other_speed: float
    width: float
    shown: bool

    @property
    def cutter(self) -> str:
        """The cutter in words."""
        cutter = self.mounted.cutter
        left = self.mounted.lips.flutes
        uneven = "" if cutter.equally_spaced else ", uneven"
        proud = f", {left} in cut" if left != cutter.flutes else ""
        return f"{COUNTED[cutter.flutes]}{uneven}{proud}"

    @property
    def sings(self) -> bool:
        """Whether the cut has begun to sing."""
        return self.mounted.sings(self.spindle_speed, self.width)


def cones(result: Plunge, _system: str) -> TwoCones:
    """Give the same seat at the two speeds."""
    seat, mounted = result.seat, result.mounted
    speeds = (result.spindle_speed, result.other_speed)
    first, second = (mounted.cone(speed, result.width, shown=result.shown) for speed in speeds)
    return TwoCones(
        cones=(first, second),
        cutter=result.cutter,
        seat=seat.name,
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        shown=result.shown,
    )


def place(result: Plunge, _system: str) -> Place:
    """Give where the cut stands on the map."""
    mounted = result.mounted
    found, limit = mounted.map, mounted.limit(result.spindle_speed)
    return Place(
        speeds=found.spindle_speeds,
        limits=found.limit,
        spindle_speed=result.spindle_speed,
        width=result.width,
        full_width=result.seat.full_width,
        limit=limit.width,
        frequency=limit.frequency,
        quiet_below=mounted.quiet_below,
        doubtful_below=mounted.doubtful_below,
        cutter=result.cutter,
    )


def followed(result: Plunge, _system: str) -> Followed:
    """Give the cut in time."""
    mounted, speed = result.mounted, result.spindle_speed
    return Followed(
        trace=mounted.trace(speed, result.width),
        width=mounted.followed(speed, result.width),
        asked=result.width,
        frequency=mounted.frequency(speed, result.width),
        cutter=result.cutter,
    )


def cures(result: Plunge, _system: str) -> Cures:
    """Give what each cure comes to at the speed set."""
    mounted, speed = result.mounted, result.spindle_speed
    now, other = mounted.limit(speed).width, other_machine(result.machine)
    moved = replace(mounted, machine=axial(other)).limit(speed).width if other else now
    if now is None or (moved is not None and moved <= now):
        other = ""
    return Cures(
        spindle_speed=speed,
        now=now,
        stiffer=mounted.stiffer(2.0).limit(speed).width,
        one_flute=mounted.with_one_flute().limit(speed).width,
        other=moved,
        quiet_below=mounted.quiet_below,
        cutter=result.cutter,
        other_machine=other,
    )


SCENES: dict[str, tuple[Any, Any]] = {
    CONES: (ConesView, cones),
    MAP: (MapView, place),
    TRACE: (TraceView, followed),
    CURES: (CuresView, cures),
}
"""By name the scene and what gives it its part."""
