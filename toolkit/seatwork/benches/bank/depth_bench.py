"""The depth bench: one stop setting, a resharpened cutter, another seat."""

from dataclasses import dataclass, replace
from typing import ClassVar

from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Number, Pick, Switch
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import (
    flat_sizes,
    left_under,
    plate_line,
    plate_size,
    seat_size,
)
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.views.depth_view import DepthView, Plunge, SameStop
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import Job, flat_job, flat_jobs
from seatwork.quantities import Length
from seatwork.seats import Countersink, Fit
from seatwork.seats.touching_off import diameter_error, resharpened_nose
from seatwork.shop.house.house_rules import rules
from seatwork.units import show_both

FIRST = "1/4 flat head 82° (frame)"
FACE, HOLE_EDGE = "nose on the face", "lips on the hole edge"
DEEP, SHALLOW = "too deep", "too shallow"
BELOW, PROUD = "flush.greatest_below", "flush.greatest_proud"
BLUNT = "a wider nose is ground back to a point first"


@dataclass(frozen=True, slots=True, kw_only=True)
class Stopped:
    """Both plunges, the screw that is to lie in them, how it lies in number 2, and the plate."""

    pair: SameStop
    job: Job
    lies: Fit
    thickness: float

    @property
    def within_rule(self) -> bool:
        """Whether the shop's rule for flush heads is kept."""
        least, most = -rules().number(BELOW), rules().number(PROUD)
        return self.lies.state == "flush" or least <= self.lies.amount <= most


class Depth(Bench[Stopped]):
    """Show what one depth-stop setting comes to, touched off in two ways.

    Opens on a seat that was set right and a cutter that was resharpened since; the stop has not
    moved, and one button cuts the second seat. A screw brings its own hole, seat and angle.

    Examples
    --------
    >>> Depth(cut=True).readouts()[0]
    ['Number 2', '0.537 in (13.64 mm)']
    >>> Depth(screw="M8 socket flat head").values["hole"]
    9.0
    """

    title = "Depth: does the stop set the seat?"
    view = DepthView
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="cut", label="Cut number 2", back="Lift the cutter"),
        Choice(name="touch", label="Touch off", options=(FACE, HOLE_EDGE), start=FACE, needs="cut"),
        Number(name="new_nose", label="Nose after resharpening", low=0.0, high=5.0, start=2.286,
               why=BLUNT, needs="cut"),
        Number(name="stop_error", label="Stop off by", low=0.0, high=0.5, start=0.0,
               why="a stop that is worse is mended, not figured with", needs="cut"),
        Choice(name="stop_way", label="Stop lets number 2 go", options=(DEEP, SHALLOW), start=DEEP,
               folded=True, needs="cut"),
        Pick(name="screw", label="Screw", listed=flat_jobs, known=flat_job, start=FIRST,
             others="another screw", folded=True),
        seat_size("diameter", "Diameter at the face, as set", 4.0, 30.0, folded=True),
        Number(name="angle", label="Cutter angle", kind="angle", low=60.0, high=120.0,
               why="countersinks are ground from 60° to 120°", folded=True),
        seat_size("hole", "Hole", 2.0, 15.0, folded=True),
        plate_size(),
        Number(name="nose", label="Nose when the stop was set", low=0.0, high=5.0, start=1.524,
               why=BLUNT, folded=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a screw bring its seat, hole and cutter angle."""
        return flat_sizes(flat_job(given["screw"])) if "screw" in given else {}

    def work_out(
        self, *, cut: bool, touch: str, new_nose: float, stop_error: float, stop_way: str,
        screw: str, diameter: float, angle: float, hole: float, thickness: float, nose: float,
    ) -> Stopped:  # fmt: skip
        """Cut both seats at one stop setting and lay the screw into the second.

        Raises
        ------
        SeatworkError
            If the sizes make no cone, or the stop error leaves none.
        """
        error = stop_error if stop_way == DEEP else -stop_error
        seat = Countersink(diameter=diameter, hole_diameter=hole, included_angle=angle)
        on_edge = touch == HOLE_EDGE
        if on_edge:
            _refuse_blunt(nose, seat)
        touched = "hole edge" if on_edge else "face"
        ground = resharpened_nose(
            seat,
            nose_diameter=nose,
            new_nose_diameter=new_nose,
            touched=touched,  # type: ignore[arg-type]
        )
        shift = diameter_error(depth_error=error, included_angle=angle)
        second = replace(ground, diameter=ground.diameter + shift)
        travel = seat.depth if on_edge else seat.travel_from_face(nose)
        pair = SameStop(
            first=Plunge(seat=seat, nose_diameter=nose, travel=travel),
            second=Plunge(seat=second, nose_diameter=new_nose, travel=travel + error),
            touched=touched,
            wider=second.diameter - seat.diameter,
            stop_error=error,
            cut=cut,
        )
        held = flat_job(screw)
        lying = SeatedHead(head=held.screw.head, seat=second, thickness=thickness)
        return Stopped(pair=pair, job=held, lies=lying.lies, thickness=thickness)

    def part(self, result: Stopped, system: str) -> SameStop:
        """Draw both plates in section, the cutter in each."""
        return result.pair

    def measures(self, result: Stopped) -> tuple[Measure, ...]:
        """Give the travel that was set; once cut, number 2 and what becomes of screw and plate."""
        pair, lies = result.pair, result.lies
        if not pair.cut:
            return (Measure("Travel set", pair.first.travel),)
        rule = "within the rule" if result.within_rule else "outside the rule"
        flush = Measure("Screw in it", f"flush, {rule}", kind="word")
        other = Measure("Screw in it", abs(lies.amount), note=f"{lies.state}, {rule}")
        second = Measure("Number 2", pair.second.seat.diameter)
        under = left_under(pair.second.seat, result.thickness)
        return second, flush if lies.state == "flush" else other, *under

    def sources(self, result: Stopped) -> tuple[str, ...]:
        """Tell where each number comes from."""
        part, hole = result.job.screw, result.job.hole
        sharp = show_both(part.head.sharp_diameter, self.system)
        return (
            "Travel and diameter: nose + 2 x travel x tan(half the included angle) is the "
            "diameter at the face; plane geometry, exact. Touched on the hole edge, the hole "
            "stands in place of the nose.",
            fact_line(f"{part.name}, theoretical sharp {sharp}", part.source, part.confirmed),
            fact_line(f"Its hole {show_both(hole.diameter, self.system)}", hole.source,
                      hole.confirmed),
            rule_line(BELOW),
            rule_line(PROUD),
            plate_line(result.job),
            "Noses of 0.060 and 0.090 in are examples: measure your own cutter.",
        )  # fmt: skip


def _refuse_blunt(nose: float, seat: Countersink) -> None:
    """Refuse a nose that would stand on the hole edge instead of the lips."""
    if not nose < seat.hole_diameter:
        raise SeatworkError(
            Length(nose),
            "so wide a nose does not enter a hole of {hole}: the lips cannot touch its edge",
            "take a narrower nose, or touch off on the face",
            hole=Length(seat.hole_diameter),
        )


depth = Depth
