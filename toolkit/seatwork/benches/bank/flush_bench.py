"""The flush bench: one seat, a whole box of screws, and how many lie right."""

from dataclasses import dataclass, replace
from typing import ClassVar

import numpy as np
from numpy.typing import NDArray

from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Number, Pick
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import (
    flat_sizes,
    hole_in,
    left_under,
    plate_line,
    plate_size,
    seat_size,
)
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.views.flush_view import BoxOfScrews, FlushView, percents, worst
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import Job, flat_job, jobs
from seatwork.hardware.screws import Screw
from seatwork.seats import Countersink
from seatwork.seats.box_of_screws import SeatRange, corner_heads, seats_for
from seatwork.seats.flushness import Box, simulate_heads
from seatwork.seats.head_gaging import sharp_from_protrusion
from seatwork.seats.heads import FLUSH
from seatwork.seats.touching_off import Limits
from seatwork.shop.house.house_rules import rules
from seatwork.units import show_both, show_length

FIRST = "1/4 flat head 82° (frame)"
BELOW, PROUD = "flush.greatest_below", "flush.greatest_proud"
ONE_ANGLE, ALL_ANGLES = "all of the seat's angle", "as the standard allows"
COUNT, SEED = 2000, 7
"""Screws drawn, and where the draw begins: the same box every time."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawn:
    """What the bench shows.

    Parameters
    ----------
    job : Job
        The screw.
    box : Box
        Its limits and those of the seats.
    heights : ndarray
        Shape (2000,): height of each head above its face [mm].
    range : SeatRange
        Whether one exact seat does it for all.
    thickness : float
        Of the plate [mm].
    under : tuple of Measure
        What the widest cone leaves of the plate, where that is little.
    above : float
        How far a head may stand proud [mm].
    """

    job: Job
    box: Box
    heights: NDArray[np.float64]
    range: SeatRange
    thickness: float
    under: tuple[Measure, ...]
    above: float


class Flush(Bench[Drawn]):
    """Show how the screws of one box lie in seats of one size.

    Opens on a seat cut as the print says, and a box in which many heads lie too deep for it.

    Examples
    --------
    >>> Flush().readouts()[2]
    ['Seat for all', 'none: try the screws']
    """

    title = "Flush: does one seat do for the whole box?"
    view = FlushView
    controls: ClassVar[tuple[Control, ...]] = (
        seat_size("diameter", "Diameter at the face", 6.5, 20.0),
        Number(name="tolerance", label="Seats held to plus or minus", low=0.0, high=0.5,
               start=0.0762, why="a stop that is worse is mended first"),
        Pick(name="screw", label="Screw", listed=lambda: jobs(_known), known=flat_job,
             start=FIRST, others="another screw"),
        Choice(name="heads", label="Angle of the heads", options=(ONE_ANGLE, ALL_ANGLES),
               start=ONE_ANGLE, folded=True),
        seat_size("hole", "Hole", 2.0, 11.0, folded=True),
        plate_size(),
        Number(name="angle", label="Cutter angle", kind="fine angle", low=60.0, high=120.0,
               why="countersinks are ground from 60° to 120°", folded=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a screw bring its hole, seat and cutter angle."""
        return flat_sizes(flat_job(given["screw"])) if "screw" in given else {}

    def part(self, result: Drawn, system: str) -> BoxOfScrews:
        """Draw the histogram beside the two worst heads."""
        return _box(result, system)

    def work_out(
        self, *, diameter: float, tolerance: float, screw: str, heads: str, hole: float,
        thickness: float, angle: float,
    ) -> Drawn:  # fmt: skip
        """Draw the box, set every screw in a seat, and look for one seat that does for all.

        Raises
        ------
        SeatworkError
            If some head of the box would drop through, or the sizes make no seat.
        """
        job = flat_job(screw)
        sharp = _sharp(job)
        head_angle = _angles(job.screw, every=heads == ALL_ANGLES)
        widest = Countersink(
            diameter=diameter + tolerance, hole_diameter=hole, included_angle=angle
        )
        through = hole_in(widest, thickness)
        box = Box(
            sharp_diameter=sharp,
            head_angle=head_angle,
            seat_diameter=Limits(least=diameter - tolerance, greatest=diameter + tolerance),
            hole_diameter=Limits(least=through, greatest=through),
            seat_angle=(angle, angle),
        )
        held = rules()
        corners = corner_heads(sharp_diameter=sharp, included_angle=head_angle)
        return Drawn(
            job=job,
            box=box,
            heights=simulate_heads(box, np.random.default_rng(SEED), count=COUNT),
            range=seats_for(
                corners, hole_diameter=through, included_angle=angle, below=held.number(BELOW)
            ),
            thickness=thickness,
            under=left_under(widest, thickness),
            above=held.number(PROUD) + FLUSH,
        )

    def measures(self, result: Drawn) -> tuple[Measure, ...]:
        """Give the shares, and the seats that do for every head if there are any."""
        deep, flush, proud = percents(*_shares(result))
        bad = f"{deep} too deep, {proud} proud"
        found = result.range
        seats = "none: try the screws" if not found.exists else show_both(found.least, self.system)
        return (
            Measure("Within the rule", flush, kind="word"),
            Measure("The others", bad, kind="word"),
            Measure("Least seat for all" if found.exists else "Seat for all", seats, kind="word"),
            *result.under,
        )

    def sources(self, result: Drawn) -> tuple[str, ...]:
        """Tell where each number comes from."""
        return (
            _spread_line(result.job.screw, self.system),
            fact_line(f"Hole {show_both(result.job.hole.diameter, self.system)}",
                      result.job.hole.source, result.job.hole.confirmed),
            rule_line(BELOW),
            rule_line(PROUD),
            plate_line(result.job),
            f"{COUNT} screws and seats are drawn evenly between their limits, the same ones every "
            "time. A real box is seldom even: gage a handful.",
        )  # fmt: skip


def _known(job: Job) -> bool:
    return job.flat and job.screw.knows_least


def _sharp(job: Job) -> Limits:
    """Give the theoretical sharp diameters that gage or flushness of the standard let pass."""
    part = job.screw
    gage, angle = part.gage, part.seat_angle
    if gage is not None and angle is not None:
        return Limits(
            least=sharp_from_protrusion(gage.least, gage.diameter, angle),
            greatest=sharp_from_protrusion(gage.greatest, gage.diameter, angle),
        )
    if not part.knows_least:
        fault = "no document held here says how small a good head of it may be"
        raise SeatworkError(part.name, fault, "gage a handful, or take another screw")
    return Limits(least=part.lowest_head.sharp_diameter, greatest=part.head.sharp_diameter)


def _spread_line(part: Screw, system: str) -> str:
    """Tell what lets heads of one box differ, and where it stands."""
    if part.gage is None:
        fact = part.facts["flushness"]
        low = show_both(fact.value, system)
        about = f"{part.name} may lie up to {low} below a face cut for the greatest head"
    else:
        fact = part.facts["gage_least"]
        least, most = (show_both(h, system) for h in (part.gage.least, part.gage.greatest))
        about = f"{part.name} stands {least} to {most} above its gage"
    return fact_line(about, fact.source, fact.confirmed)


def _angles(part: Screw, *, every: bool) -> tuple[float, float]:
    """Give the least and greatest angle of the heads [deg]: the standard's, or the seat's own."""
    least, most = part.angle_range if every and part.angle_range else (part.seat_angle,) * 2
    if least is None or most is None:
        raise SeatworkError(part.name, "the lists have no angle for it", "take another screw")
    return least, most


def _shares(result: Drawn) -> tuple[float, float, float]:
    """Give the shares too deep, within the rule, and proud."""
    deep = float(np.mean(result.heights < -result.range.below))
    proud = float(np.mean(result.heights > result.above))
    return deep, 1.0 - deep - proud, proud


def _box(result: Drawn, system: str) -> BoxOfScrews:
    """Give what the picture shows of a result."""
    box, found = result.box, result.range
    deep, flush_share, proud = _shares(result)
    seats = [
        Countersink(
            diameter=diameter,
            hole_diameter=box.hole_diameter.least,
            included_angle=box.seat_angle[0],
        )
        for diameter in (box.seat_diameter.least, box.seat_diameter.greatest)
    ]
    shown = BoxOfScrews(
        heights=result.heights,
        deep=deep,
        flush=flush_share,
        proud=proud,
        below=found.below,
        above=result.above,
        highest=SeatedHead(head=found.highest_head, seat=seats[0], thickness=result.thickness),
        lowest=SeatedHead(head=found.lowest_head, seat=seats[1], thickness=result.thickness),
        second=_second(found, system),
        text="",
    )
    return replace(shown, text=_text(shown, result, system))


def _second(found: SeatRange, system: str) -> str:
    if found.exists:
        least, most = (show_length(size, system) for size in (found.least, found.greatest))
        return f"A seat from {least} to {most} does it for all"
    apart, allowed = (show_length(size, system) for size in (found.spread, found.below))
    return f"No one seat fits them all: heads {apart} apart, {allowed} allowed"


def _text(shown: BoxOfScrews, result: Drawn, system: str) -> str:
    """Tell the histogram, the rule, and the two worst heads, with all numbers."""
    box = result.box
    least, most = (
        show_both(size, system) for size in (box.seat_diameter.least, box.seat_diameter.greatest)
    )
    apart, below = (show_both(size, system) for size in (result.range.spread, shown.below))
    deep, flush, proud = percents(shown.deep, shown.flush, shown.proud)
    none = (
        "" if result.range.exists else " No one seat fits them all: try the screws, or sort them."
    )
    return (
        f"{COUNT} heads of {result.job.screw.name} in seats from {least} to {most} at the face: "
        f"{deep} too deep, {flush} within the rule, {proud} proud. "
        f"The rule is flush to {below} below; in one seat the heads are {apart} apart. "
        f"{worst(shown, system)}{none}"
    )


flush = Flush
