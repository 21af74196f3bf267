"""The chatter bench: which cut sings, what it leaves on the cone, and what the shop does then."""

from typing import Any, ClassVar

from seatwork import cutting
from seatwork.benches.bench import Bench, Values
from seatwork.benches.chatter_jobs import (
    CRANK,
    FRAME,
    HOPPER,
    LATHE,
    MILL,
    PRESS,
    UNEVEN,
    SeatJob,
    jobs,
    machines,
    metal,
    sources,
)
from seatwork.benches.chatter_shown import CONES, CURES, MAP, SCENES, TRACE, Plunge, Shown
from seatwork.benches.chatter_sums import Setup
from seatwork.benches.controls import Choice, Control, Number, Switch
from seatwork.benches.measures import Measure
from seatwork.cutting import Cutter, Sound, marks_per_turn
from seatwork.drawings.chatter_cones import hertz
from seatwork.drawings.scene import Look, Scene
from seatwork.errors import Length, SeatworkError
from seatwork.units import show_number, show_spindle

HEARD = 1.0
"""How long a cut is heard [s]."""


PICTURES = {"on_map": MAP, "in_time": TRACE, "cures": CURES}
"""By switch the picture it turns to; none of them on shows the cones."""


def _picture(name: str, label: str) -> Switch:
    return Switch(name=name, label=label, back="Cones", needs="shown", redraws=True)


class Chatter(Bench[Plunge]):
    """The bench itself; begin with ``chatter``."""

    name = "chatter"
    title = "Chatter: which cut sings?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press", "paper")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="shown", label="Show which one sings", back="Ask again", redraws=True),
        _picture("on_map", "Map"),
        _picture("in_time", "In time"),
        _picture("cures", "What helps?"),
        Number(
            name="speed",
            label="Spindle speed, rev/min",
            kind="spindle",
            low=100,
            high=3000,
            start=1000,
            size=10,
            why="the map goes that far",
            needs="shown",
        ),
        Number(
            name="flutes",
            label="Flutes",
            kind="count",
            low=1,
            high=6,
            start=6,
            page=1,
            why="countersinks have one to six",
            needs="shown",
        ),
        Number(
            name="width",
            label="Lip in cut",
            low=0.127,
            high=5.08,
            start=0.508,
            why="that is how far these plunges go",
            needs="shown",
        ),
        Choice(name="job", label="Seat", options=(FRAME, CRANK, HOPPER), start=FRAME, folded=True),
        Choice(
            name="machine", label="Machine", options=(PRESS, MILL, LATHE), start=PRESS, folded=True
        ),
        Number(
            name="other_speed",
            label="Speed beside it, rev/min",
            kind="spindle",
            low=100,
            high=3000,
            start=300,
            size=10,
            why="the map goes that far",
            folded=True,
        ),
        Switch(name="uneven", label="Flutes unevenly spaced", folded=True),
        Number(
            name="runout",
            label="One lip proud by",
            low=0.0,
            high=0.2,
            start=0.0,
            why="more is a bent shank",
            folded=True,
        ),
        Number(
            name="rake",
            label="Rake (grabs in brass, bronze, acrylic and thin sheet: none there)",
            kind="angle",
            low=0,
            high=15,
            start=0,
            page=5,
            why="the shear plane is a trend up to there",
            folded=True,
        ),
        Number(
            name="stiffness",
            label="Stiffness, times that of the machine",
            kind="ratio",
            low=0.25,
            high=4.0,
            start=1.0,
            size=5,
            why="that spans a loose quill and a solid one",
            folded=True,
        ),
        Number(
            name="wear_land",
            label="Wear land",
            low=0.0,
            high=0.2,
            start=0.11,
            why="a lip worn more is ground",
            folded=True,
        ),
        Number(
            name="feed",
            label="Feed per turn",
            kind="feed",
            low=0.01,
            high=0.3,
            start=0.0889,
            why="hand feeds lie there",
            folded=True,
        ),
    )

    def work_out(self, **values: Any) -> Plunge:
        """Put machine, cutter and metal together."""
        job = jobs()[values["job"]]
        _refuse_wide(values["width"], job)
        setup = Setup(
            machine=machines()[values["machine"]],
            cutter=_cutter(values, job),
            cut=metal(job, rake=values["rake"], wear_land=values["wear_land"]),
            feed=values["feed"],
            wear_land=max(values["wear_land"], 1e-6),
        ).stiffer(values["stiffness"])
        return Plunge(
            setup=setup,
            job=job,
            machine=values["machine"],
            view=_view(values),
            spindle_speed=values["speed"],
            other_speed=values["other_speed"],
            width=values["width"],
            shown=values["shown"],
        )

    def scene(self, result: Plunge, look: Look) -> Scene[Plunge]:
        """Show the picture chosen."""
        scene, part = SCENES[result.view]
        return Shown(scene(part(result), look), part)

    def measures(self, result: Plunge) -> tuple[Measure, ...]:
        """Give state, limit, critical speed and marks, once they are shown."""
        if not result.shown:
            return (Measure("Lip in cut, both", result.width),)
        setup, speed = result.setup, result.spindle_speed
        limit = setup.limit(speed)
        if self.look().projector:
            return (
                Measure("Sings from", limit.width),
                Measure("Quiet below", setup.quiet_below, kind="spindle"),
            )
        frequency = setup.frequency(speed, result.width)
        return (
            Measure(
                "Here",
                "stays quiet" if frequency is None else f"sings, {hertz(frequency)}",
                kind="word",
            ),
            Measure("Begins to sing at", limit.width, note="of lip"),
            Measure("Which is this deep", _depth(limit.width, result.job), note="past the touch"),
            Measure("Quiet at any width below", setup.quiet_below, kind="spindle"),
            Measure("Marks as it begins", _marks(frequency, speed), kind="word"),
        )

    def sources(self, result: Plunge) -> tuple[str, ...]:
        """Tell where each number comes from."""
        return sources(result.job, result.machine)

    def _read(self, given: Values, now: Values | None = None) -> dict[str, Any]:
        """Read values; a picture switched on takes the place of the others."""
        read = super()._read(given, now)
        if any(read.get(name) for name in PICTURES):
            read = dict.fromkeys(PICTURES, False) | read
        return read

    def sound(self) -> Sound:
        """Give the cut of the moment as a sound, at its true pitch."""
        result = self.result
        trace = result.setup.trace(result.spindle_speed, result.width, HEARD)
        return cutting.sound(trace=trace)

    def heard(self) -> tuple[Sound, str]:
        """Give the sound and what is to be said of it."""
        sound, result = self.sound(), self.result
        begin = f"{result.cutter} at {show_spindle(result.spindle_speed)}"
        quiet = "" if result.sings else " It stays quiet: nearly nothing to hear."
        return sound, f"{begin}.{quiet} {sound.sentence}"


def chatter(
    *,
    shown: bool = False,
    on_map: bool = False,
    in_time: bool = False,
    cures: bool = False,
    speed: float | str = 1000,
    flutes: float | str = 6,
    width: float | str = 0.508,
    job: str = FRAME,
    machine: str = PRESS,
    other_speed: float | str = 300,
    uneven: bool = False,
    runout: float | str = 0.0,
    rake: float | str = 0,
    stiffness: float | str = 1.0,
    wear_land: float | str = 0.11,
    feed: float | str = 0.0889,
    system: str | None = None,
    palette: str | None = None,
    projector: bool = False,
) -> Chatter:
    """Show which cut sings, what it leaves on the cone, and what helps.

    Opens on a question: the same seat on the same machine, six flutes, cut at 1000 and at 300
    rev/min. Everything it shows is an illustration, not a prediction for your machine.

    Parameters
    ----------
    shown : bool
        Begin with the answer shown.
    on_map, in_time, cures : bool
        Which picture to show in place of the cones, one of them at most.
    speed, other_speed : float or str
        Spindle speed, and the one that stands beside it on the cones [rev/min].
    flutes : float or str
        Lips of the cutter [-], 1 to 6.
    width : float or str
        Lip in cut, the width of the chip [mm], or shop text.
    job, machine : str
        A seat of the cider mill, and the machine that cuts it.
    uneven : bool
        Whether the flutes stand at uneven angles.
    runout : float or str
        How far one lip stands proud, along its normal [mm], or shop text.
    rake : float or str
        Rake of the lips [deg], 0 to 15; it grabs in brass, bronze, acrylic and thin sheet.
    stiffness : float or str
        Times that of the machine [-], at the same natural frequency.
    wear_land : float or str
        Wear land on the flanks [mm], or shop text.
    feed : float or str
        Feed [mm/rev], or shop text.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.

    Returns
    -------
    Chatter
        The bench; the last line of a cell shows it.

    Raises
    ------
    SeatworkError
        If a value cannot be read or is out of range, or there is more lip in cut than the
        finished seat has.

    Examples
    --------
    >>> chatter(shown=True).readouts()[0]
    ['Here', 'sings, 273 Hz']
    """
    return Chatter(
        system=system,
        palette=palette,
        projector=projector,
        shown=shown,
        on_map=on_map,
        in_time=in_time,
        cures=cures,
        speed=speed,
        flutes=flutes,
        width=width,
        job=job,
        machine=machine,
        other_speed=other_speed,
        uneven=uneven,
        runout=runout,
        rake=rake,
        stiffness=stiffness,
        wear_land=wear_land,
        feed=feed,
    )


def _view(values: Values) -> str:
    """Give the picture that is switched on."""
    on = [view for name, view in PICTURES.items() if values[name] and values["shown"]]
    return on[0] if on else CONES


def _cutter(values: Values, job: SeatJob) -> Cutter:
    flutes = values["flutes"]
    return Cutter(
        flutes=int(flutes) if flutes == int(flutes) else flutes,
        included_angle=job.included_angle,
        spacing=UNEVEN.get(int(flutes)) if values["uneven"] else None,
        runout=values["runout"],
    )


def _refuse_wide(width: float, job: SeatJob) -> None:
    if width > job.full_width:
        raise SeatworkError(
            Length(width),
            "the seat is done with {full} of lip in cut",
            "take less, or another seat",
            full=Length(job.full_width),
        )


def _depth(width: float | None, job: SeatJob) -> float | None:
    if width is None:
        return None
    return cutting.depth_of_cut(width=width, included_angle=job.included_angle)


def _marks(frequency: float | None, speed: float) -> str:
    """Tell the marks that a frequency [Hz] leaves in a turn."""
    if frequency is None:
        return "none"
    marks = marks_per_turn(frequency=frequency, spindle_speed=speed, direction="axial")
    return f"{show_number(marks, 1)} round the cone"
