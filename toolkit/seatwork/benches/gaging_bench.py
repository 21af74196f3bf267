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
    """Show what a gage reading says of a seat, and what it cannot say.

    Opens on a seat that the caliper passes; a second gage finds what is wrong with it.

    Examples
    --------
    >>> Gaging(shown=True).readouts()[2]
    ['Verdict', 'out']
    """

    title = "Gaging: may this seat pass?"
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="shown", label="Ask a second gage", back="Back to the caliper", redraws=True),
        Choice(name="way", label="Gage", options=WAYS, start=BALLS, needs="shown", redraws=True),
        _reading("rise", "Larger ball's top over the smaller's", BALLS, 5.5, 6.8, 5.749),
        _reading("stand", "Indicator, from face to head", SCREW, 0.0, 1.5, 0.409),
        Choice(name="side", label="The head stands", options=(PROUD, BELOW), start=PROUD,
               needs=("way", SCREW)),
        _reading("top", "Top of the ball above the face", BALL, 4.0, 11.0, 8.841),
        _reading("rim", "Caliper", CALIPER, 9.0, 15.0, 12.979),
        _reading("over", "Head above the gage", HEAD, 0.3, 1.8, 1.111),
        Choice(name="job", label="Seat", options=(FRAME, HOPPER, CRANK), start=FRAME, folded=True,
               redraws=True),
    )  # fmt: skip

    def work_out(
        self, *, shown: bool, way: str, rise: float, stand: float, side: str, top: float,
        rim: float, over: float, job: str,
    ) -> Gaged:  # fmt: skip
        """Find what the reading means, and what may be said of it."""
        way = way if shown else CALIPER
        return gaged(jobs()[job], way, values)

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


gaging = Gaging
