"""The bench of a seat beside its hole: off center, out of square, or behind a loose pilot."""

from dataclasses import dataclass
from typing import ClassVar

from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Number, Pick, Switch
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import (
    hole_in,
    left_under,
    plate_line,
    plate_of,
    plate_size,
)
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.parts.beside_hole import BesideHole
from seatwork.drawings.views.on_hole_view import OnHoleView
from seatwork.hardware.job_list import Job, flat_job, flat_jobs
from seatwork.seats import Countersink
from seatwork.seats.heads import FLUSH
from seatwork.seats.on_hole import OnHole, on_hole
from seatwork.units import show_angle, show_both

FIRST = "1/4 flat head 82° (frame)"
EYE, PILOT = "set by eye", "kept by a pilot"
MOST, SMALLEST = 1.016, 0.0127
"""Most that a seat is moved beside its hole, and least that a pilot is under it [mm]."""

HELD = "is held on the hole by the thread below"
FREE = "is free in its hole and shifts as far as it can"


@dataclass(frozen=True, slots=True, kw_only=True)
class Beside:
    """What the bench shows.

    Parameters
    ----------
    job : Job
        The screw.
    seat : Countersink
        Its seat, as wide as the theoretical sharp head.
    guide : str
        What kept the seat on its hole.
    pilot_under : float
        How far the pilot is under the hole, on the diameter [mm].
    offset, lean : float
        Seat beside its hole [mm], and how far both lean [deg].
    free, shown : bool
        Whether the screw can shift, and whether it is in.
    lies : OnHole
        How the head stands.
    thickness : float
        Of the plate [mm].
    """

    job: Job
    seat: Countersink
    guide: str
    pilot_under: float
    offset: float
    lean: float
    free: bool
    shown: bool
    lies: OnHole
    thickness: float


class OnTheHole(Bench[Beside]):
    """Show what a seat beside its hole, a crooked hole or a loose pilot does to a flat head.

    Opens on a question: a seat cut .005 in beside its hole, the screw not in yet. The seat is as
    wide as the theoretical sharp head, and of its angle.

    Examples
    --------
    >>> OnTheHole(shown=True).readouts()[0]
    ['Left side', '0.006 in (0.15 mm) proud']
    """

    name = "on_the_hole"
    title = "On the hole: how will the head stand?"
    view = OnHoleView
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="shown", label="Put the screw in", back="Take the screw out"),
        Choice(name="guide", label="The seat was", options=(EYE, PILOT), start=EYE),
        Number(name="off_center", label="Off center", low=0.0, high=MOST, start=0.127,
               why="farther off anybody sees it", needs=("guide", EYE)),
        Number(name="pilot_under", label="Pilot under the hole", low=SMALLEST, high=MOST,
               start=0.7874, why="a pilot must turn freely, and a looser one is none",
               needs=("guide", PILOT)),
        Number(name="out_of_square", label="Hole and seat out of square", kind="fine angle",
               low=0.0, high=5.0, start=0.0, size=1, why="more than that anybody sees"),
        Switch(name="free", label="Let the screw shift in its hole",
               back="Hold it by the thread below", folded=True),
        Pick(name="job", label="Screw", listed=flat_jobs, known=flat_job, start=FIRST,
             others="another screw", folded=True),
        plate_size(),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a screw bring its plate."""
        if "job" not in given:
            return {}
        return {"thickness": plate_of(flat_job(given["job"]))}

    def work_out(
        self, *, shown: bool, guide: str, off_center: float, pilot_under: float,
        out_of_square: float, free: bool, job: str, thickness: float,
    ) -> Beside:  # fmt: skip
        """Lay the head in the seat that was cut.

        Raises
        ------
        SeatworkError
            If the seat is so far off that the head drops in at one side, or through the plate.
        """
        one = flat_job(job)
        head = one.screw.head
        seat = Countersink(
            diameter=head.sharp_diameter,
            hole_diameter=one.hole.diameter,
            included_angle=head.included_angle,
        )
        left = Countersink(
            diameter=seat.diameter,
            hole_diameter=hole_in(seat, thickness),
            included_angle=seat.included_angle,
        )
        offset = pilot_under / 2 if guide == PILOT else off_center
        play = (one.hole.diameter - one.screw.thread.diameter) / 2 if free else 0.0
        return Beside(
            job=one,
            seat=left,
            guide=guide,
            pilot_under=pilot_under,
            offset=offset,
            lean=out_of_square,
            free=free,
            shown=shown,
            lies=on_hole(head, left, offset=offset, lean=out_of_square, play=max(play, 0.0)),
            thickness=thickness,
        )

    def part(self, result: Beside, system: str) -> BesideHole:
        """Draw the seat cut open and from above."""
        under = show_both(result.pilot_under, system)
        guided = (
            f"A pilot {under} under its hole, pushed to one side, leads the cutter"
            if result.guide == PILOT
            else "The part was set by eye under the cutter"
        )
        return BesideHole(
            head=result.job.screw.head,
            seat=result.seat,
            offset=result.offset,
            lean=result.lean,
            body=result.job.screw.thread.diameter,
            shown=result.shown,
            lies=result.lies,
            held=FREE if result.free else HELD,
            guided=guided,
        )

    def measures(self, result: Beside) -> tuple[Measure, ...]:
        """Give both sides, what touches and what is open opposite, once the screw is in."""
        beside = Measure("Seat beside its hole", result.offset)
        under = left_under(_whole(result), result.thickness)
        if not result.shown:
            return (beside, *under)
        lies = result.lies
        touches = Measure("Touches over", f"{show_angle(lies.arc, 0)} of 360°", kind="word")
        sides = (_side("Left side", lies.high), _side("Right side", lies.low))
        if self.look().projector:
            return (*sides, touches)
        opposite = Measure("Clear of the seat opposite", lies.gap)
        return (*sides, touches, opposite, beside, *under)

    def sources(self, result: Beside) -> tuple[str, ...]:
        """Tell where each number comes from."""
        screw, hole, system = result.job.screw, result.job.hole, self.system
        sharp = show_both(screw.head.sharp_diameter, system)
        wide = show_both(hole.diameter, system)
        return (
            fact_line(f"{screw.name}, theoretical sharp {sharp}", screw.source, screw.confirmed),
            fact_line(f"Its hole {wide}", hole.source, hole.confirmed),
            "How it stands, where it touches: plane geometry. Off center by e the head stands "
            "e / tan(half the angle) proud on both sides, and twice that is open opposite. A gap "
            "under 0.001 mm counts as touching: about the roughness of a turned head.",
            "Out of square: the part lay on a chip, or a pilot followed a crooked hole, so hole, "
            "seat and screw lean together; the seat was moved to the low side, the worst case.",
            "A pilot pushed to one side of its hole is off by half of what it is under it.",
            rule_line("pilot.greatest_play"),
            rule_line("flush.greatest_below"),
            rule_line("flush.greatest_proud"),
            plate_line(result.job),
        )


def _whole(result: Beside) -> Countersink:
    """Return the seat as if the plate were thick enough."""
    return Countersink(
        diameter=result.seat.diameter,
        hole_diameter=result.job.hole.diameter,
        included_angle=result.seat.included_angle,
    )


def _side(label: str, height: float) -> Measure:
    if abs(height) <= FLUSH:
        return Measure(label, "flush", kind="word")
    return Measure(label, abs(height), note="proud" if height > 0 else "below")


on_the_hole = OnTheHole
