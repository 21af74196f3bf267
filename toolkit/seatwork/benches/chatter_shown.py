"""The four pictures of the chatter bench, and what each is told of a cut."""

from dataclasses import dataclass, replace
from typing import Any

from seatwork.benches.chatter_jobs import COUNTED, MILL, PRESS, SeatJob, machines
from seatwork.benches.chatter_sums import Setup
from seatwork.drawings.chatter_cones import ConesView, TwoCones
from seatwork.drawings.chatter_cures import Cures, CuresView
from seatwork.drawings.chatter_map import MapView, Place
from seatwork.drawings.chatter_trace import Followed, TraceView
from seatwork.drawings.scene import Drawing

CONES, MAP, TRACE, CURES = "the cones", "the map", "the cut in time", "the cures"


@dataclass(frozen=True, slots=True, kw_only=True)
class Plunge:
    """What the bench shows.

    Parameters
    ----------
    setup : Setup
        Machine, cutter and metal.
    job : SeatJob
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

    setup: Setup
    job: SeatJob
    machine: str
    view: str
    spindle_speed: float
    other_speed: float
    width: float
    shown: bool

    @property
    def cutter(self) -> str:
        """The cutter in words."""
        cutter = self.setup.cutter
        left = self.setup.lips.flutes
        uneven = "" if cutter.equally_spaced else ", uneven"
        proud = f", {left} in cut" if left != cutter.flutes else ""
        return f"{COUNTED[cutter.flutes]}{uneven}{proud}"

    @property
    def sings(self) -> bool:
        """Whether the cut has begun to sing."""
        return self.setup.sings(self.spindle_speed, self.width)


class Shown:
    """A scene of the drawings room, told by the bench's result."""

    def __init__(self, scene: Any, part: Any) -> None:
        self._scene, self._part = scene, part

    def draw(self) -> Drawing:
        """Make the figure."""
        drawing: Drawing = self._scene.draw()
        return drawing

    def move(self, result: Plunge) -> str:
        """Show another result; return the text."""
        return str(self._scene.move(self._part(result)))


def cones(result: Plunge) -> TwoCones:
    """Give the same seat at the two speeds."""
    job, setup = result.job, result.setup
    speeds = (result.spindle_speed, result.other_speed)
    first, second = (setup.cone(speed, result.width, shown=result.shown) for speed in speeds)
    return TwoCones(
        cones=(first, second),
        cutter=result.cutter,
        seat=job.seat,
        diameter=job.diameter,
        hole_diameter=job.hole_diameter,
        shown=result.shown,
    )


def place(result: Plunge) -> Place:
    """Give where the cut stands on the map."""
    setup = result.setup
    found, limit = setup.map(), setup.limit(result.spindle_speed)
    return Place(
        speeds=found.spindle_speeds,
        limits=found.limit,
        spindle_speed=result.spindle_speed,
        width=result.width,
        full_width=result.job.full_width,
        limit=limit.width,
        frequency=limit.frequency,
        quiet_below=setup.quiet_below,
        doubtful_below=setup.doubtful_below(),
        cutter=result.cutter,
    )


def followed(result: Plunge) -> Followed:
    """Give the cut in time."""
    setup, speed = result.setup, result.spindle_speed
    return Followed(
        trace=setup.trace(speed, result.width),
        width=setup.followed(speed, result.width),
        asked=result.width,
        frequency=setup.frequency(speed, result.width),
        cutter=result.cutter,
    )


def cures(result: Plunge) -> Cures:
    """Give what each cure comes to at the speed set."""
    setup, speed = result.setup, result.spindle_speed
    other = PRESS if result.machine == MILL else MILL
    return Cures(
        spindle_speed=speed,
        now=setup.limit(speed).width,
        stiffer=setup.stiffer(2.0).limit(speed).width,
        one_flute=setup.with_one_flute().limit(speed).width,
        other=replace(setup, machine=machines()[other]).limit(speed).width,
        quiet_below=setup.quiet_below,
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
