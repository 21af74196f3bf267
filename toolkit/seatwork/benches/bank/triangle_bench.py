"""The triangle bench: a cone folded step by step to across, half the angle and down."""

from dataclasses import dataclass
from typing import ClassVar

from seatwork import units
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Number, Pick, Switch
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import LEAST, MOST, WHY, flat_sizes, seat_size
from seatwork.benches.build.sourced import fact_line
from seatwork.drawings.parts.triangle_part import HOLDS, STEPS, TrianglePart
from seatwork.drawings.views.triangle_view import TriangleView
from seatwork.hardware.job_list import Job, flat_job, flat_jobs
from seatwork.quantities import INCH
from seatwork.seats import Countersink
from seatwork.seats.gaging import ball_range
from seatwork.seats.triangles import SLIPS
from seatwork.units import show_angle, show_both

ANGLES = ("none", "60°", "82°", "90°", "100°")
"""Angles that can be drawn beside it, the standard ones."""

FIRST = "1/4 flat head 82° (frame)"
TALLER = 0.030 * INCH
"""How much wider than the seat a head is that is laid in first: an example [mm]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Folded:
    """What the bench shows, and the screw whose seat it is."""

    part: TrianglePart
    job: Job


class Triangle(Bench[Folded]):
    """Show the triangle of a cone: across, half the angle, down.

    Opens on the whole section; each step adds a piece, and three switches draw what comes of
    leaving one thing whole. A gage pin, a ball or a head can be laid into the cone.

    Examples
    --------
    >>> Triangle(step=5).readouts()[-1]
    ['Down', '0.139 in (3.52 mm)']
    >>> Triangle(holds="a pin", held="3/8", step=5).readouts()[-1]
    ['Down', '0.076 in (1.93 mm)']
    """

    title = "The triangle: across, half the angle, down"
    view = TriangleView
    cautions: ClassVar[tuple[str, ...]] = ()
    controls: ClassVar[tuple[Control, ...]] = (
        Number(name="step", label="Step", kind="count", low=1, high=STEPS, start=1, page=1,
               why="it is built in five steps", glides=True),
        seat_size("diameter", "Diameter at the face", 4.0, 30.0),
        seat_size("hole", "Hole", 2.0, 15.0),
        Number(name="angle", label="Included angle", kind="angle", low=60.0, high=120.0,
               why="countersinks are ground from 60° to 120°"),
        Switch(name="whole_difference", label="Slip: whole difference"),
        Switch(name="whole_angle", label="Slip: whole angle"),
        Switch(name="to_the_point", label="Slip: to the point"),
        Pick(name="screw", label="Screw", listed=flat_jobs, known=flat_job, start=FIRST,
             others="another screw", folded=True),
        Choice(name="beside", label="Another angle, dashed", options=ANGLES, start=ANGLES[0],
               folded=True),
        Choice(name="holds", label="Lies in it", options=HOLDS, start="nothing", folded=True),
        Number(name="held", label="Its diameter", low=2.0, high=30.0, least=LEAST, most=MOST,
               why=WHY, folded=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a screw bring its seat, and what is laid in a size that lies on the cone."""
        brought = {}
        if "screw" in given:
            sizes = flat_sizes(flat_job(given["screw"]))
            brought = {name: sizes[name] for name in ("diameter", "hole", "angle")}
        if {"screw", "holds"} & set(given):
            brought["held"] = _lying({**now, **brought, **given})
        return brought

    def work_out(
        self, *, step: float, diameter: float, hole: float, angle: float,
        whole_difference: bool, whole_angle: bool, to_the_point: bool, screw: str, beside: str,
        holds: str, held: float,
    ) -> Folded:  # fmt: skip
        """Make the triangle as far as the step goes.

        Raises
        ------
        SeatworkError
            If the sizes make no cone, or what is laid in does not lie on it.
        """
        on = zip(SLIPS, (whole_difference, whole_angle, to_the_point), strict=True)
        part = TrianglePart(
            seat=Countersink(diameter=diameter, hole_diameter=hole, included_angle=angle),
            step=round(step),
            slips=tuple(slip for slip, wanted in on if wanted) if holds != "a ball" else (),
            holds=holds,
            held=None if holds == "nothing" else held,
            beside=None if beside == ANGLES[0] else units.angle(beside),
        )
        return Folded(part=part, job=flat_job(screw))

    def part(self, result: Folded, system: str) -> TrianglePart:
        """Draw the cone and its triangle."""
        return result.part

    def measures(self, result: Folded) -> tuple[Measure, ...]:
        """Give what the steps have brought, and the number of each slip."""
        part, its = result.part, result.part.triangle
        last = Measure("Down", its.down)
        if part.holds == "a head":
            last = Measure("Down", its.down, note="proud" if part.proud else "below")
        if part.holds == "a ball":
            over = "over the face" if part.ball_top >= 0 else "below the face"
            last = Measure("Top of the ball", abs(part.ball_top), note=over)
        steps = (
            Measure("Difference", its.difference),
            Measure("Across", its.across, kind="fine length"),
            Measure("Half the angle", its.half_angle, kind="fine angle"),
            last,
        )
        slips = (_slip(slip, its.slipped(slip)) for slip in part.slips)
        return (*steps[: part.step - 1], *slips, *_beside(part))

    def sources(self, result: Folded) -> tuple[str, ...]:
        """Tell where each number comes from."""
        screw, hole = result.job.screw, result.job.hole
        sharp = show_both(screw.head.sharp_diameter, self.system)
        return (
            "Down = across ÷ tangent of half the angle; across is half the difference of the two "
            "diameters. Plane geometry, exact.",
            fact_line(f"{screw.name}, theoretical sharp {sharp}", screw.source, screw.confirmed),
            fact_line(
                f"Its hole {show_both(hole.diameter, self.system)}", hole.source, hole.confirmed
            ),
            "Pin, ball and head are examples in size: set your own.",
        )


def _beside(part: TrianglePart) -> tuple[Measure, ...]:
    """Return what another angle beside it gives; nothing where there is none."""
    if part.beside is None:
        return ()
    return (Measure(f"Down, at {show_angle(part.beside)}", part.other.down),)


def _slip(slip: str, down: float | None) -> Measure:
    """Return what a slip gives for down."""
    if down is None:
        return Measure(f"Slip, {slip}", "no number: its tangent has no end, or is below 0")
    return Measure(f"Slip, {slip}", down)


def _lying(values: Values) -> float:
    """Return the diameter of what is laid in first, as an example [mm]."""
    diameter, hole = values["diameter"], values["hole"]
    if values["holds"] == "a head":
        return float(diameter + TALLER)
    if values["holds"] == "a ball":
        seat = Countersink(diameter=diameter, hole_diameter=hole, included_angle=values["angle"])
        return sum(ball_range(seat)) / 2
    return float(diameter + hole) / 2


triangle = Triangle
