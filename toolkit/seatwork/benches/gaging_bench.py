"""The gaging bench: a reading, its doubt, and whether a seat may pass."""

from collections.abc import Mapping
from typing import Any, ClassVar

from seatwork.benches.bench import Bench, Values
from seatwork.benches.controls import Choice, Control, Number, Switch
from seatwork.benches.gaging_ways import (
    BALL,
    BALLS,
    BELOW,
    CALIPER,
    CRANK,
    FRAME,
    HEAD,
    HOPPER,
    PROUD,
    SCREW,
    WAYS,
    Gaged,
    gaged,
    jobs,
    readings,
)
from seatwork.benches.gaging_words import VERDICTS, amount, shown_part
from seatwork.benches.measures import Measure
from seatwork.benches.sourced import fact_line, rule_line
from seatwork.drawings.gaging_view import GagedSeat, GagingView
from seatwork.drawings.scene import Drawing, Look, Scene
from seatwork.units import show_angle, show_both


def _reading(name: str, label: str, way: str, low: float, high: float, start: float) -> Number:
    """Make the slider of one gage [mm]."""
    why = "that is what this gage can read on these seats"
    needs = ("way", way)
    return Number(name=name, label=label, low=low, high=high, start=start, why=why, needs=needs)


class Gaging(Bench[Gaged]):
    """The bench itself; begin with ``gaging``."""

    name = "gaging"
    title = "Gaging: may this seat pass?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="shown", label="Ask a second gage", back="Back to the caliper", redraws=True),
        Choice(name="way", label="Gage", options=WAYS, start=BALLS, needs="shown", redraws=True),
        _reading("rise", "Larger ball's top over the smaller's", BALLS, 5.5, 6.8, 5.749),
        _reading("stand", "Indicator, from face to head", SCREW, 0.0, 1.5, 0.409),
        Choice(
            name="side",
            label="The head stands",
            options=(PROUD, BELOW),
            start=PROUD,
            needs=("way", SCREW),
        ),
        _reading("top", "Top of the ball above the face", BALL, 4.0, 11.0, 8.841),
        _reading("rim", "Caliper", CALIPER, 9.0, 15.0, 12.979),
        _reading("over", "Head above the gage", HEAD, 0.3, 1.8, 1.111),
        Choice(
            name="job",
            label="Seat",
            options=(FRAME, HOPPER, CRANK),
            start=FRAME,
            folded=True,
            redraws=True,
        ),
    )

    def work_out(self, **values: Any) -> Gaged:
        """Find what the reading means, and what may be said of it."""
        way = values["way"] if values["shown"] else CALIPER
        return gaged(jobs()[values["job"]], way, values)

    def scene(self, result: Gaged, look: Look) -> Scene[Gaged]:
        """Show the gage in the seat, and the reading among its limits."""
        return _Shown(self, result, look)

    def shown(self, result: Gaged, system: str) -> GagedSeat:
        """Return what the picture shows of a result."""
        return shown_part(result, system, asked=not self.values["shown"])

    def measures(self, result: Gaged) -> tuple[Measure, ...]:
        """Give the reading, its doubt and the verdict."""
        doubt = Measure("Give or take", result.decision.uncertainty, kind=_kind(result))
        verdict = Measure("Verdict", VERDICTS[result.decision.verdict], kind="word")
        return Measure("Reading", result.reading), doubt, verdict

    def sources(self, result: Gaged) -> tuple[str, ...]:
        """Tell where limits and doubt come from, and by which rule the verdict is made."""
        screw, system = result.job.screw, self.system
        limits = " to ".join(
            amount(result, value, system, show_both) for value in (result.least, result.greatest)
        )
        return (
            f"Limits {limits}. {_limits(result)}",
            f"Give or take {_doubt(result, system)}: what a careful learner repeats, by common "
            "practice, no source; with two balls, what that makes of the angle.",
            "In only if it lies inside by its doubt, out only if it lies outside by it: the rule "
            "of ISO 14253-1, from memory: check your copy.",
            fact_line(f"{screw.name}", screw.source, screw.confirmed),
            "Balls, protrusion and angle: plane geometry. How the class cut it is made up.",
        )

    def _read(self, given: Values, now: Values | None = None) -> dict[str, Any]:
        """Read values; another seat brings its own readings, unless they are given."""
        values = super()._read(given, now)
        if "job" in values:
            values = readings(jobs()[values["job"]]) | values
        return values


def gaging(
    *,
    shown: bool = False,
    way: str | None = None,
    job: str | None = None,
    rise: float | str | None = None,
    stand: float | str | None = None,
    side: str | None = None,
    top: float | str | None = None,
    rim: float | str | None = None,
    over: float | str | None = None,
    system: str | None = None,
    palette: str | None = None,
    projector: bool = False,
) -> Gaging:
    """Show what a gage reading says of a seat, and what it cannot say.

    Opens on a seat that the caliper passes; a second gage finds what is wrong with it.

    Parameters
    ----------
    shown : bool
        Begin with the second gage.
    way : str, optional
        The gage: "two balls", "the screw and an indicator", "one ball", "caliper across the
        rim" or "head gage, on the screw itself".
    job : str, optional
        One of the cider mill's seats by name; it brings its readings.
    rise, stand, top, rim, over : float or str, optional
        Readings [mm], or shop text: of two balls, indicator, one ball, caliper and head gage.
    side : {"proud of the face", "below the face"}, optional
        Where the head stands.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.

    Returns
    -------
    Gaging
        The bench; the last line of a cell shows it.

    Raises
    ------
    SeatworkError
        If a reading is out of range, no seat gives it, or no such gage is listed for the screw.

    Examples
    --------
    >>> gaging(shown=True).readouts()[2]
    ['Verdict', 'out']
    """
    given: Mapping[str, Any] = {
        "way": way, "job": job, "rise": rise, "stand": stand, "side": side, "top": top,
        "rim": rim, "over": over,
    }  # fmt: skip
    return Gaging(
        system=system,
        palette=palette,
        projector=projector,
        shown=shown,
        **{name: value for name, value in given.items() if value is not None},
    )


class _Shown:
    """The scene of the drawings room, told by the bench's result."""

    def __init__(self, bench: Gaging, result: Gaged, look: Look) -> None:
        self._bench, self._system = bench, look.system
        self._scene = GagingView(bench.shown(result, look.system), look)

    def draw(self) -> Drawing:
        """Make the figure."""
        return self._scene.draw()

    def move(self, result: Gaged) -> str:
        """Show another result; return the text."""
        return self._scene.move(self._bench.shown(result, self._system))


def _kind(result: Gaged) -> str:
    return "fine angle" if result.kind == "angle" else "length"


def _doubt(result: Gaged, system: str) -> str:
    doubt = result.decision.uncertainty
    return show_angle(doubt) if result.kind == "angle" else show_both(doubt, system)


def _limits(result: Gaged) -> str:
    """Tell where the limits come from."""
    if result.way == BALLS:
        return rule_line("note.angle_tolerance")
    if result.way == SCREW:
        return f"{rule_line('flush.greatest_below')} {rule_line('flush.greatest_proud')}"
    if result.way == HEAD:
        return "They stand in the list of the screw."
    return f"They are {result.job.asked('diameter at the face').source}."
