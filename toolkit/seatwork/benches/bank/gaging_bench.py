"""The gaging bench: a reading, its doubt, and whether a seat may pass."""

from dataclasses import replace
from typing import Any, ClassVar

from seatwork.benches.bank.gaging_sums import (
    BALL,
    BALLS,
    BELOW,
    CALIPER,
    HEAD,
    PROUD,
    SCREW,
    WAYS,
    Gaged,
    gaged,
    gaged_job,
    readings,
)
from seatwork.benches.bank.gaging_words import VERDICTS, amount, shown_part
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Number, Pick, Switch
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import left_under, plate_line, plate_of, plate_size
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.views.gaging_view import GagedSeat, GagingView
from seatwork.hardware.job_list import flat_job, flat_jobs
from seatwork.units import show_angle, show_both

FIRST = "1/4 flat head 82° (frame)"


def _reading(name: str, label: str, way: str, low: float, high: float) -> Number:
    """Make the slider of one gage [mm]."""
    why = "that is what this gage can read on these seats"
    needs = ("way", way)
    span: dict[str, Any] = {"low": low, "high": high, "least": min(low, 0.01), "most": 10 * high}
    return Number(name=name, label=label, **span, why=why, needs=needs)


class Gaging(Bench[Gaged]):
    """Show what a gage reading says of a seat, and what it cannot say.

    Opens on a seat that the caliper passes; a second gage finds what is wrong with it.

    Examples
    --------
    >>> Gaging(shown=True).readouts()[2]
    ['Verdict', 'out']
    """

    title = "Gaging: may this seat pass?"
    view = GagingView
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="shown", label="Ask a second gage", back="Back to the caliper", redraws=True),
        Choice(name="way", label="Gage", options=WAYS, start=BALLS, needs="shown", redraws=True),
        _reading("rise", "Larger ball's top over the smaller's", BALLS, 1.5, 8.5),
        _reading("stand", "Indicator, from face to head", SCREW, 0.0, 1.5),
        Choice(name="side", label="The head stands", options=(PROUD, BELOW), needs=("way", SCREW)),
        _reading("top", "Top of the ball above the face", BALL, 4.0, 15.0),
        _reading("rim", "Caliper", CALIPER, 7.0, 20.0),
        _reading("over", "Head above the gage", HEAD, 0.0, 1.8),
        Pick(name="job", label="Seat", listed=flat_jobs, known=gaged_job, start=FIRST,
             others="another flat head screw", folded=True, redraws=True),
        plate_size(),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a seat bring what each gage reads on it."""
        if "job" not in given:
            return {}
        return readings(gaged_job(given["job"])) | {"thickness": plate_of(flat_job(given["job"]))}

    def work_out(
        self, *, shown: bool, way: str, rise: float, stand: float, side: str, top: float,
        rim: float, over: float, job: str, thickness: float,
    ) -> Gaged:  # fmt: skip
        """Find what the reading means, and what may be said of it."""
        measured = {"rise": rise, "stand": stand, "side": side, "top": top, "rim": rim}
        found = gaged(gaged_job(job), way if shown else CALIPER, measured | {"over": over})
        return replace(found, thickness=thickness)

    def part(self, result: Gaged, system: str) -> GagedSeat:
        """Draw the gage in the seat, and the reading among its limits."""
        return shown_part(result, system, asked=not self.values["shown"])

    def measures(self, result: Gaged) -> tuple[Measure, ...]:
        """Give the reading, its doubt and the verdict."""
        doubt = Measure("Give or take", result.decision.uncertainty, kind=_kind(result))
        verdict = Measure("Verdict", VERDICTS[result.decision.verdict], kind="word")
        found = (Measure("Reading", result.reading), doubt, verdict)
        if result.seat is None:
            return found
        return (*found, *left_under(result.seat, result.thickness))

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
            plate_line(flat_job(self.values["job"])),
            "Balls, protrusion and angle: plane geometry. How the class cut it is made up.",
        )


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
