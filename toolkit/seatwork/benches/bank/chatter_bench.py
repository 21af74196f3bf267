"""The chatter bench: which cut sings, what it leaves on the cone, and what the shop does then."""

from collections.abc import Callable
from typing import Any, ClassVar

from seatwork import cutting
from seatwork.benches.bank.chatter_seat import (
    UNEVEN,
    CutSeat,
    axial,
    known_metal,
    metal,
    metals,
    sources,
)
from seatwork.benches.bank.chatter_shown import CONES, CURES, MAP, SCENES, TRACE, Plunge
from seatwork.benches.bank.chatter_sums import Mounted
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Control, Number, Pick, Switch
from seatwork.benches.build.listed import kept, machines
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import plate_of, plate_size
from seatwork.cutting import Cutter, Sound, marks_per_turn
from seatwork.drawings.views.chatter_cones import hertz
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import flat_job, flat_jobs
from seatwork.quantities import Length
from seatwork.units import show_number, show_spindle

FIRST = "1/4 flat head 82° (frame)"
HEARD = 1.0
"""How long a cut is heard [s]."""


PICTURES = {"on_map": MAP, "in_time": TRACE, "cures": CURES}
"""By switch the picture it turns to; none of them on shows the cones."""


def _picture(name: str, label: str) -> Switch:
    return Switch(name=name, label=label, back="Cones", needs="shown", redraws=True)


class Chatter(Bench[Plunge]):
    """Show which cut sings, what it leaves on the cone, and what helps.

    Opens on a question: the same seat on the same machine, six flutes, cut at 1000 and at 300
    rev/min. Everything it shows is an illustration, not a prediction for your machine.

    Examples
    --------
    >>> Chatter(shown=True).readouts()[0]
    ['Here', 'sings, 273 Hz']
    """

    title = "Chatter: which cut sings?"
    _last: tuple[object, Mounted] | None = None
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press", "paper")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="shown", label="Show which one sings", back="Ask again", redraws=True),
        _picture("on_map", "Map"),
        _picture("in_time", "In time"),
        _picture("cures", "What helps?"),
        Number(name="speed", label="Spindle speed, rev/min", kind="spindle", low=100, high=3000,
               start=1000, size=10, why="the map goes that far", needs="shown"),
        Number(name="flutes", label="Flutes", kind="count", low=1, high=6, start=6, page=1,
               why="countersinks have one to six", needs="shown"),
        Number(name="width", label="Lip in cut", low=0.127, high=5.08, start=0.508,
               why="that is how far these plunges go", needs="shown"),
        Pick(name="job", label="Seat", listed=flat_jobs, known=flat_job, start=FIRST,
             others="another flat head screw", folded=True),
        Pick(name="material", label="Material", listed=metals, known=known_metal,
             folded=True),
        Pick(name="machine", label="Machine", listed=machines, known=axial,
             start="bench drill press", folded=True),
        plate_size(),
        Number(name="other_speed", label="Speed beside it, rev/min", kind="spindle", low=100,
               high=3000, start=300, size=10, why="the map goes that far", folded=True),
        Switch(name="uneven", label="Flutes unevenly spaced", folded=True),
        Number(name="runout", label="One lip proud by", low=0.0, high=0.2, start=0.0,
               why="more is a bent shank", folded=True),
        Number(name="rake",
               label="Rake (grabs in brass, bronze, acrylic and thin sheet: none there)",
               kind="angle", low=0, high=15, start=0, page=5,
               why="the shear plane is a trend up to there", folded=True),
        Number(name="stiffness", label="Stiffness, times that of the machine", kind="ratio",
               low=0.25, high=4.0, start=1.0, size=5,
               why="that spans a loose quill and a solid one", folded=True),
        Number(name="wear_land", label="Wear land", low=0.0, high=0.2, start=0.11,
               why="a lip worn more is ground", folded=True),
        Number(name="feed", label="Feed per turn", kind="feed", low=0.01, high=0.3, start=0.0889,
               why="hand feeds lie there", folded=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a seat bring its metal, and a picture switched on take the place of the others."""
        brought: dict[str, Any] = {}
        if "job" in given:
            one = flat_job(given["job"])
            brought = {"material": kept(one.material, metals()), "thickness": plate_of(one)}
        if {"job", "thickness"} & given.keys() and "width" not in given:
            deep = dict(now) | brought | dict(given)
            seat = CutSeat(job=flat_job(deep["job"]), material="", thickness=deep["thickness"])
            brought["width"] = min(deep["width"], seat.full_width)
        if any(given.get(name) for name in PICTURES):
            brought |= dict.fromkeys(PICTURES, False)
        return brought

    def work_out(
        self, *, shown: bool, on_map: bool, in_time: bool, cures: bool, speed: float,
        flutes: float, width: float, job: str, material: str, machine: str, thickness: float,
        other_speed: float,
        uneven: bool, runout: float, rake: float, stiffness: float, wear_land: float, feed: float,
    ) -> Plunge:  # fmt: skip
        """Put machine, cutter and metal together."""
        seat = CutSeat(job=flat_job(job), material=material, thickness=thickness)
        _refuse_wide(width, seat)
        mounted = self._mounted(
            seat, machine, flutes=flutes, uneven=uneven, runout=runout, rake=rake,
            stiffness=stiffness, wear_land=wear_land, feed=feed,
        )  # fmt: skip
        turned = {MAP: on_map, TRACE: in_time, CURES: cures}
        return Plunge(
            mounted=mounted,
            seat=seat,
            machine=machine,
            view=next((view for view, on in turned.items() if on and shown), CONES),
            spindle_speed=speed,
            other_speed=other_speed,
            width=width,
            shown=shown,
        )

    def _mounted(self, seat: CutSeat, machine: str, **how: Any) -> Mounted:
        """Put machine, cutter and metal together; the same again while only the cut changes."""
        asked = seat, machine, how
        if self._last is None or self._last[0] != asked:
            self._last = asked, _mount(seat, machine, **how)
        return self._last[1]

    def shows(self, result: Plunge) -> tuple[type[Any], Callable[[Plunge, str], Any]]:
        """Show the picture chosen."""
        return SCENES[result.view]

    def measures(self, result: Plunge) -> tuple[Measure, ...]:
        """Give state, limit, critical speed and marks, once they are shown."""
        if not result.shown:
            return (Measure("Lip in cut, both", result.width),)
        mounted, speed = result.mounted, result.spindle_speed
        limit = mounted.limit(speed)
        if self.look().projector:
            return (
                Measure("Sings from", limit.width),
                Measure("Quiet below", mounted.quiet_below, kind="spindle"),
            )
        frequency = mounted.frequency(speed, result.width)
        return (
            Measure(
                "Here",
                "stays quiet" if frequency is None else f"sings, {hertz(frequency)}",
                kind="word",
            ),
            Measure("Begins to sing at", limit.width, note="of lip"),
            Measure("Which is this deep", _depth(limit.width, result.seat), note="past the touch"),
            Measure("Quiet at any width below", mounted.quiet_below, kind="spindle"),
            Measure("Marks as it begins", _marks(frequency, speed), kind="word"),
        )

    def sources(self, result: Plunge) -> tuple[str, ...]:
        """Tell where each number comes from."""
        return sources(result.seat, result.machine)

    def sound(self) -> Sound:
        """Give the cut of the moment as a sound, at its true pitch."""
        result = self.result
        trace = result.mounted.trace(result.spindle_speed, result.width, HEARD)
        return cutting.sound(trace=trace)

    def heard(self) -> tuple[Sound, str]:
        """Give the sound and what is to be said of it."""
        sound, result = self.sound(), self.result
        begin = f"{result.cutter} at {show_spindle(result.spindle_speed)}"
        quiet = "" if result.sings else " It stays quiet: nearly nothing to hear."
        return sound, f"{begin}.{quiet} {sound.sentence}"


def _mount(
    seat: CutSeat, machine: str, *, flutes: float, uneven: bool, runout: float, rake: float,
    stiffness: float, wear_land: float, feed: float,
) -> Mounted:  # fmt: skip
    return Mounted(
        machine=axial(machine),
        cutter=_cutter(seat, flutes, uneven=uneven, runout=runout),
        cut=metal(seat, rake=rake, wear_land=wear_land),
        feed=feed,
        wear_land=max(wear_land, 1e-6),
    ).stiffer(stiffness)


def _cutter(seat: CutSeat, flutes: float, *, uneven: bool, runout: float) -> Cutter:
    return Cutter(
        flutes=int(flutes) if flutes == int(flutes) else flutes,  # type: ignore[arg-type]
        included_angle=seat.included_angle,
        spacing=UNEVEN.get(int(flutes)) if uneven else None,
        runout=runout,
    )


def _refuse_wide(width: float, seat: CutSeat) -> None:
    if width > seat.full_width:
        raise SeatworkError(
            Length(width),
            "the seat is done with {full} of lip in cut",
            "take less, or another seat",
            full=Length(seat.full_width),
        )


def _depth(width: float | None, seat: CutSeat) -> float | None:
    if width is None:
        return None
    return cutting.depth_of_cut(width=width, included_angle=seat.included_angle)


def _marks(frequency: float | None, speed: float) -> str:
    """Tell the marks that a frequency [Hz] leaves in a turn."""
    if frequency is None:
        return "none"
    marks = marks_per_turn(frequency=frequency, spindle_speed=speed, direction="axial")
    return f"{show_number(marks, 1)} round the cone"


chatter = Chatter
