"""The edges bench: one chamfer, two readings of its width, and what becomes of it all round."""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ClassVar

from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Number, Pick, Switch
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import (
    left_under,
    plate_line,
    plate_of,
    plate_size,
    seat_size,
)
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.views.edges_view import EdgesView, TwoReadings
from seatwork.drawings.views.rim_view import AllRound, RimView
from seatwork.hardware.job_list import Job, job, jobs
from seatwork.quantities import INCH
from seatwork.seats import Chamfer
from seatwork.seats.rims import Rim, rim
from seatwork.seats.surfaces import Flat, Round, Tilted
from seatwork.shop.house.house_rules import rules
from seatwork.units import show_angle, show_both, show_length

SIZED, INCH_CHAMFER, METRIC_CHAMFER, INCH_BREAK, METRIC_BREAK = (
    "a size",
    "CHAMFER, inch print",
    "CHAMFER, metric print",
    "BREAK EDGES, inch print",
    "BREAK EDGES, metric print",
)
TAKEN = {
    INCH_CHAMFER: ("chamfer.inch_leg", "chamfer.inch_greatest"),
    METRIC_CHAMFER: ("chamfer.metric_leg", "chamfer.metric_greatest"),
    INCH_BREAK: ("edge.inch_break", "edge.inch_break"),
    METRIC_BREAK: ("edge.metric_break", "edge.metric_break"),
}
"""House rules for a note without size: the width taken, and the greatest that will pass."""

PAD, DRAFT, SHAFT, BORE = (
    "frame pad, milled flat",
    "frame pad, tilted by draft",
    "crank shaft, oil hole",
    "crank hub, from inside the bore",
)
CAPTIONS = {
    PAD: "seen along the hole",
    DRAFT: "the face rises to the right",
    SHAFT: "the shaft runs up and down",
    BORE: "the bore runs up and down",
}
FIRST = "1/4 flat head 82° (frame)"
POINTS = 72
"""Directions worked out round the hole: every five degrees."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Edge:
    """What the bench shows.

    Parameters
    ----------
    along_face, across_bevel : Chamfer
        The two readings of the width.
    width : float
        Width as noted, or as taken by the convention [mm].
    hole_diameter : float
        The hole [mm].
    note, place : str
        What the print says, and which face it is.
    tilt, round_diameter : float
        Tilt of the face [deg] and diameter of a round one [mm]; each counts on its own faces.
    rim : Rim
        The first reading, all round on that face.
    all_round : bool
        Whether it is shown all round.
    thickness : float
        Of the plate [mm].
    job : Job
        What the hole is for.
    """

    along_face: Chamfer
    across_bevel: Chamfer
    width: float
    hole_diameter: float
    note: str
    place: str
    tilt: float
    round_diameter: float
    rim: Rim
    all_round: bool
    thickness: float
    job: Job


class Edges(Bench[Edge]):
    """Show how wide a chamfer is, by two readings of its note and all the way round.

    Opens on one chamfer whose width is measured along the face, and across the bevel.

    Examples
    --------
    >>> Edges(width="0.030 in").readouts()[2]
    ['Difference', '0.018 in (0.45 mm)']
    """

    title = "Edges: how wide is a chamfer?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "drill_press", "sheet")
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="all_round", label="Show it all round", back="Show it cut open", redraws=True),
        Choice(name="place", label="Face", options=(PAD, DRAFT, SHAFT, BORE), start=DRAFT,
               needs="all_round"),
        Choice(name="note", label="Print says", options=(SIZED, *TAKEN), start=SIZED),
        Number(name="width", label="Width", low=0.1, high=3.2, start=0.762,
               why="a wider one is a seat, not a chamfer"),
        Pick(name="screw", label="Hole of", listed=jobs, known=job, start=FIRST,
             others="another screw", folded=True),
        seat_size("hole", "Hole", 1.0, 20.0, folded=True),
        plate_size(0.5, 25.0),
        Number(name="angle", label="Tool angle", kind="angle", low=60.0, high=120.0, start=90.0,
               why="chamfering tools are ground from 60° to 120°", folded=True),
        Number(name="tilt", label="Tilt of the face", kind="fine angle", low=0.0, high=30.0,
               start=3.0, why="a steeper face is squared first", folded=True, needs="all_round"),
        Number(name="round_diameter", label="Diameter of the round face", low=5.0, high=150.0,
               start=INCH, why="that takes in every shaft and bore of the cider mill",
               folded=True, needs="all_round"),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let a screw bring its hole, a note without size its width, a size of a face that face."""
        brought: dict[str, Any] = {}
        if "screw" in given:
            one = job(given["screw"])
            brought = {"hole": one.hole.diameter, "thickness": plate_of(one)}
        if given.get("note") in TAKEN:
            width = rules().number(TAKEN[given["note"]][0])
            brought |= {"width": width, "angle": rules().number("chamfer.included_angle")}
        elif "width" in given:
            brought["note"] = SIZED
        if "tilt" in given:
            brought["place"] = DRAFT
        elif "round_diameter" in given:
            brought["place"] = BORE if now.get("place") == BORE else SHAFT
        return brought

    def shows(self, result: Edge) -> tuple[type[Any], Callable[[Edge, str], Any]]:
        """Show the corner in section, or the rim all round."""
        return (RimView, _all_round) if result.all_round else (EdgesView, _two_readings)

    def work_out(
        self, *, all_round: bool, place: str, note: str, width: float, screw: str, hole: float,
        thickness: float, angle: float, tilt: float, round_diameter: float,
    ) -> Edge:  # fmt: skip
        """Read the width both ways and cut the first reading all round.

        Raises
        ------
        SeatworkError
            If the chamfer does not close on the face, or the hole is wider than a round one.
        """
        along_face = Chamfer(leg=width, included_angle=angle)
        share = width / along_face.slant_width
        return Edge(
            along_face=along_face,
            across_bevel=Chamfer(leg=width * share, included_angle=angle),
            width=width,
            hole_diameter=hole,
            note=note,
            place=place,
            tilt=tilt,
            round_diameter=round_diameter,
            rim=rim(along_face.at_hole(hole), _surface(place, tilt, round_diameter), points=POINTS),
            all_round=all_round,
            thickness=thickness,
            job=job(screw),
        )

    def measures(self, result: Edge) -> tuple[Measure, ...]:
        """Give what the two readings differ by, or the extremes all round."""
        allowed = _allowed(result.note)
        first, second = (
            one.diameter_at(result.hole_diameter)
            for one in (result.along_face, result.across_bevel)
        )
        if not result.all_round:
            found: tuple[Measure, ...] = (
                Measure("Mouth by reading 1", first),
                Measure("Mouth by reading 2", second),
                Measure("Difference", first - second),
            )
        else:
            found = (
                Measure("Least across", result.rim.least_diameter),
                Measure("Greatest across", result.rim.greatest_diameter),
                Measure("Edge", _broken(result.rim), kind="word"),
            )
        cone = result.along_face.at_hole(result.hole_diameter)
        found += left_under(cone, result.thickness)
        return found if allowed is None else (*found, Measure("At most, by rule", allowed))

    def sources(self, result: Edge) -> tuple[str, ...]:
        """Tell where each number comes from."""
        lines = [
            "Widths, depths and diameters: plane geometry on the cone, exact; the rim on tilted "
            "and round faces is where the cone meets the face.",
            "Reading 1, the leg along the face, is the one the plan uses; dimensioning "
            "standards want the leg or the angle stated (from memory: check your copy).",
        ]
        if result.note in TAKEN:
            lines += [rule_line(name) for name in dict.fromkeys(TAKEN[result.note])]
            lines.append(rule_line("chamfer.included_angle"))
        hole = result.job.hole
        across = show_both(hole.diameter, self.system)
        lines.append(fact_line(f"Hole of {result.job.name}, {across}", hole.source, hole.confirmed))
        lines.append(plate_line(result.job))
        return (*lines, "Tilt, shaft and bore are examples from the cider mill: measure your part.")


def _two_readings(result: Edge, system: str) -> TwoReadings:
    return TwoReadings(
        along_face=result.along_face,
        across_bevel=result.across_bevel,
        width=result.width,
        hole_diameter=result.hole_diameter,
        note=_stated(result, system),
    )


def _all_round(result: Edge, system: str) -> AllRound:
    return AllRound(
        rim=result.rim,
        hole_diameter=result.hole_diameter,
        leg=result.along_face.leg,
        included_angle=result.along_face.included_angle,
        noted_width=result.along_face.slant_width,
        face=_face(result, system),
        caption=CAPTIONS[result.place],
        note=_stated(result, system),
    )


def _surface(place: str, tilt: float, across: float) -> Flat | Tilted | Round:
    """Give the face that was chosen: its tilt [deg], or its diameter [mm]."""
    if place == DRAFT:
        return Tilted(tilt=tilt)
    if place in (SHAFT, BORE):
        return Round(diameter=across, inside=place == BORE)
    return Flat()


def _face(result: Edge, system: str) -> str:
    """Name the face, in words that follow "on"."""
    across = show_both(result.round_diameter, system)
    return {
        PAD: "a flat face",
        DRAFT: f"a face tilted {show_angle(result.tilt)}",
        SHAFT: f"a shaft of {across}",
        BORE: f"the inside of a bore of {across}",
    }[result.place]


def _stated(result: Edge, system: str) -> str:
    """Tell what the print says, and what was taken where it gives no size."""
    width = show_length(result.width, system)
    if result.note not in TAKEN:
        return f"The print says {width} and no more"
    most = show_length(rules().number(TAKEN[result.note][1]), system)
    what = result.note.partition(",")[0]
    if most == width:
        return f"The print says {what}, no size: by house rule at most {most}"
    return f"The print says {what}, no size: by house rule {width}, at most {most}"


def _allowed(note: str) -> float | None:
    """Give the greatest width [mm] that passes a note without size; None for a size."""
    return rules().number(TAKEN[note][1]) if note in TAKEN else None


def _broken(found: Rim) -> str:
    return "broken all round" if found.complete else "not broken all round"


edges = Edges
