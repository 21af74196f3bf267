"""The angles bench: two heads that look alike from above, cut open, then measured."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any, ClassVar

from seatwork import units
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Control, Number, Pick, Switch
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import (
    left_under,
    plate_line,
    plate_of,
    plate_size,
    seat_size,
)
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.parts.words import CONTACT_LABEL
from seatwork.drawings.section import Section
from seatwork.drawings.views.two_heads import CutOpen, FromAbove, Pair
from seatwork.hardware.job_list import Job, flat_job, flat_jobs
from seatwork.seats import Countersink, Fit
from seatwork.shop.house.house_rules import rules

FIRST = "M6 socket flat 90° (hopper plate)"
PAPER = "display.paper_thickness"
"""House rule with the thickness of a sheet of paper."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Opened:
    """What the bench shows.

    Parameters
    ----------
    job : Job
        The screw.
    matched : SeatedHead
        Number 1: the screw in a seat of its own angle.
    part : SeatedHead
        Number 2: the same screw in a seat cut with the cutter chosen.
    found : Fit
        How number 2 lies.
    cut_open, measure : bool
        Whether the plates are cut open, and whether number 2 is measured.
    thickness : float
        Of the plate [mm].
    """

    job: Job
    matched: SeatedHead
    part: SeatedHead
    found: Fit
    cut_open: bool
    measure: bool
    thickness: float

    @property
    def pair(self) -> Pair:
        """Both, with the line to stand above them."""
        heading = "The same two, cut open" if self.cut_open else _question(self)
        return Pair(first=self.matched, second=self.part, heading=heading)


class Angles(Bench[Opened]):
    """Show what a countersink of the wrong angle does to a flat head.

    Opens on two heads seen from above, both flush by the shop's rule, and one button. A head has
    the greatest cone of its size; one without a gage in the lists has the least edge, as many in
    a box have.

    Examples
    --------
    >>> bench = Angles(screw="1/4 flat head 82° (frame)", cutter_angle=90, measure=True)
    >>> bench.readouts()[0]
    ['Head proud', '0.018 in (0.46 mm) or about 4 sheets of paper']
    """

    title = "Angles: which seat carries its screw?"
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="cut_open", label="Cut it open", back="Show it from above", redraws=True),
        Switch(name="measure", label="Measure number 2", back="Show both", needs="cut_open",
               redraws=True),
        Number(name="cutter_angle", label="Cutter angle", kind="angle", low=60.0, high=120.0,
               start=82.0, why="countersinks are ground from 60° to 120°", needs="cut_open"),
        Pick(name="screw", label="Screw", listed=flat_jobs, known=flat_job, start=FIRST,
             others="another screw", folded=True, needs="cut_open"),
        seat_size("diameter", "Diameter at the face", 5.0, 26.0, folded=True, needs="cut_open"),
        seat_size("hole", "Hole", 3.0, 13.0, folded=True, needs="cut_open"),
        plate_size(needs="cut_open"),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a screw bring its hole and seat; measuring cuts open first."""
        brought: dict[str, Any] = {"cut_open": True} if given.get("measure") else {}
        if "screw" in given:
            found = flat_job(given["screw"])
            brought |= {"diameter": found.screw.head.sharp_diameter, "hole": found.hole.diameter}
            brought["thickness"] = plate_of(found)
        return brought

    def shows(self, result: Opened) -> tuple[type[Any], Callable[[Opened, str], Any]]:
        """Show two heads from above, two sections, or one section with its numbers."""
        if not result.cut_open:
            return FromAbove, _pair
        return (Section, _part) if result.measure else (CutOpen, _pair)

    def work_out(
        self, *, cut_open: bool, measure: bool, cutter_angle: float, screw: str, diameter: float,
        hole: float, thickness: float,
    ) -> Opened:  # fmt: skip
        """Seat the screw chosen with the cutter chosen.

        Raises
        ------
        SeatworkError
            If the hole is as wide as the seat, or the head cannot lie in it.
        """
        job = flat_job(screw)
        held = job.screw
        head = held.head
        if not held.gage:
            head = replace(head, edge_diameter=held.rounded_edge_diameter)
        sizes = {"diameter": diameter, "hole_diameter": hole}
        own = Countersink(included_angle=head.included_angle, **sizes)
        seat = Countersink(included_angle=cutter_angle, **sizes)
        opened = SeatedHead(head=head, seat=seat, thickness=thickness)
        return Opened(
            job=job,
            matched=SeatedHead(head=head, seat=own, thickness=thickness),
            part=opened,
            found=opened.lies,
            cut_open=cut_open,
            measure=measure,
            thickness=thickness,
        )

    def measures(self, result: Opened) -> tuple[Measure, ...]:
        """Give what is to be measured on number 2, and nothing before it is cut open."""
        if not result.cut_open:
            return ()
        found = result.found
        contact = f"across, {' '.join(CONTACT_LABEL[found.contact])}"
        return (
            _standing(found),
            Measure("Contact", found.contact_diameter, note=contact),
            Measure("Diameter at the face", result.part.seat.diameter),
            *left_under(result.part.seat, result.thickness),
        )

    def sources(self, result: Opened) -> tuple[str, ...]:
        """Tell where each number comes from."""
        screw, hole = result.job.screw, result.job.hole
        sharp = units.show_both(screw.head.sharp_diameter, self.system)
        hole_size = units.show_both(hole.diameter, self.system)
        return (
            fact_line(f"{screw.name}, theoretical sharp {sharp}", screw.source, screw.confirmed),
            fact_line(f"Its hole {hole_size}", hole.source, hole.confirmed),
            "Where the head touches, and how it stands: plane geometry, exact.",
            rule_line("flush.greatest_below"),
            rule_line("flush.greatest_proud"),
            rule_line(PAPER),
            plate_line(result.job),
        )


def _pair(result: Opened, _system: str) -> Pair:
    return result.pair


def _part(result: Opened, _system: str) -> SeatedHead:
    return result.part


def _question(result: Opened) -> str:
    """Ask which one to sign for, if both keep the shop's rule for flush heads."""
    found = result.matched.lies, result.found
    least, most = -rules().number("flush.greatest_below"), rules().number("flush.greatest_proud")
    if all(one.state == "flush" or least <= one.amount <= most for one in found):
        return "Both flush by the shop's rule. Which would you sign for?"
    return "Two screws, seen from above"


def _standing(found: Fit) -> Measure:
    if found.state == "flush":
        return Measure("Head", "flush with the face", kind="word")
    return Measure(f"Head {found.state}", abs(found.amount), note=_paper(abs(found.amount)))


def _paper(amount: float) -> str:
    """Compare an amount with sheets of paper by the house rule; no word if less than half one."""
    sheets = int(units.rounded(amount / rules().number(PAPER), 0))
    if not 1 <= sheets <= 20:
        return ""
    return f"or about {sheets} {'sheet' if sheets == 1 else 'sheets'} of paper"


angles = Angles
