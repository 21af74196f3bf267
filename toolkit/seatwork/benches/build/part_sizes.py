"""Sizes of a part that several benches set, as wide as any screw wants: seat, hole and plate."""

from typing import Any

from seatwork.benches.build.controls import Number
from seatwork.benches.build.measures import Measure
from seatwork.hardware.job_list import Job
from seatwork.seats import Countersink
from seatwork.seats.sheet_metal import InSheetMetal
from seatwork.shop.house.house_rules import rules

LEAST, MOST = 0.5, 150.0
"""Least and greatest size that may be typed [mm]: under and over all that the lists hold."""

THINNEST = 0.1
"""Thinnest plate that may be typed [mm]: foil."""

WHY = "that takes in every screw of the lists"
EXAMPLE = 2.5
"""Thickness of a plate over the screw, where nothing gives one [-]: an example."""

PLATE, SHARE = "Left under the cone", "countersink.sheet_share"


def seat_size(name: str, label: str, low: float, high: float, **more: Any) -> Number:
    """Return a size of a seat or hole; the slider spans `low` to `high` [mm] at first."""
    more = dict[str, Any](least=LEAST, most=MOST, why=WHY) | more
    return Number(name=name, label=label, low=low, high=high, **more)


def plate_size(low: float = 1.0, high: float = 25.0, **more: Any) -> Number:
    """Return the thickness of the plate; the slider spans `low` to `high` [mm] at first."""
    more = dict[str, Any](name="thickness", label="Plate thickness", folded=True) | more
    why = "less is foil, and more tells nothing new"
    return Number(low=low, high=high, least=THINNEST, most=MOST, why=why, **more)


def plate_of(job: Job) -> float:
    """Return the thickness of a job's part; an example where its list gives none [mm]."""
    return job.thickness or EXAMPLE * _size(job)


def flat_sizes(job: Job) -> dict[str, Any]:
    """Return what a flat head brings [mm, deg]: its seat, hole and cutter angle, and the plate."""
    return {
        "diameter": job.screw.head.sharp_diameter,
        "hole": job.hole.diameter,
        "angle": job.screw.seat_angle,
        "thickness": plate_of(job),
    }


def _size(job: Job) -> float:
    return job.fastener.thread.diameter if job.fastener else job.hole.diameter


def left_under(seat: Countersink, thickness: float) -> tuple[Measure, ...]:
    """Tell what a cone leaves of a plate [mm], where that is less than the shop allows.

    Examples
    --------
    >>> cone = Countersink(diameter=12, hole_diameter=6.6, included_angle=90)
    >>> left_under(cone, 3.0)[0].text("metric")
    '0.30 mm (0.012 in) of straight hole: ask'
    >>> left_under(cone, 2.0)[0].text("metric")
    'nothing: it breaks through, a knife edge'
    >>> left_under(cone, 8.0)
    ()
    """
    plate = InSheetMetal(seat=seat, thickness=thickness)
    if plate.knife_edge:
        return (Measure(PLATE, "nothing: it breaks through, a knife edge", kind="word"),)
    if plate.share <= rules().number(SHARE):
        return ()
    return (Measure(PLATE, plate.land, note="of straight hole: ask"),)


def hole_in(seat: Countersink, thickness: float) -> float:
    """Return the hole below a cone in a plate: the far side where the cone breaks through [mm]."""
    plate = InSheetMetal(seat=seat, thickness=thickness)
    return plate.far_diameter if plate.knife_edge else seat.hole_diameter


def plate_line(job: Job) -> str:
    """Tell where the thickness of the plate comes from.

    Examples
    --------
    >>> from seatwork.hardware.job_list import job
    >>> plate_line(job("M8 socket flat head"))
    'Plate thickness: as set; at first an example, 2.5 times the screw.'
    """
    first = (
        "that of the list of jobs" if job.thickness else f"an example, {EXAMPLE} times the screw"
    )
    return f"Plate thickness: as set; at first {first}."
