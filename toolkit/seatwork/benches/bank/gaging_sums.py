"""What the gaging bench knows: the seats of the class, their gages, and what a reading means."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any, Literal

from seatwork import notes, plan
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import Job, flat_job
from seatwork.hardware.screws import Screw
from seatwork.inspection.measured import INSTRUMENTS
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Given
from seatwork.seats import (
    Countersink,
    angle_from_two_balls,
    ball_top,
    diameter_from_ball,
    fit,
    protrusion,
)
from seatwork.seats.gaging import ball_range
from seatwork.seats.measuring import Decision, decide, uncertainty
from seatwork.shop.house.house_rules import rules
from seatwork.units import show_note

CALIPER, BALLS, BALL, SCREW, HEAD = (
    "caliper across the rim",
    "two balls",
    "one ball",
    "the screw and an indicator",
    "head gage, on the screw itself",
)
WAYS = (BALLS, SCREW, BALL, CALIPER, HEAD)
BELOW, PROUD = "below the face", "proud of the face"
HEIGHT = INSTRUMENTS["depth micrometer"].uncertainty
"""Doubt of a height measured with a depth micrometer or an indicator [mm]."""

OVER = 0.1016
"""How far over its least diameter the class cut each seat [mm]: an example."""

BALLS_AT = (0.2, 0.75, 0.45)
"""Balls that no list names, between the smallest and the largest that touch the cone [-]:
examples."""

STOCK = {"inch": 0.79375, "metric": 0.5}
"""Steps in which balls are had [mm]: 1/32 in, and half a millimeter."""

FINER = 4
"""How often the steps are halved for a small seat, before a ball of any size is taken [-]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GagedJob:
    """A seat that was asked for, and how it came out in the class.

    Parameters
    ----------
    screw : Screw
        What goes in.
    planned : SeatPlan
        Its seat, with limits.
    cut : Countersink
        What was really cut, known to nobody in the class.
    ball : float
        The one ball [mm].
    balls : tuple of float
        The smaller and the larger of two [mm].
    """

    screw: Screw
    planned: SeatPlan
    cut: Countersink
    ball: float
    balls: tuple[float, float]

    def asked(self, about: str) -> Given:
        """Return a size of the plan."""
        found = self.planned.size(about)
        assert found is not None
        return found

    @property
    def angle(self) -> float:
        """Included angle asked for [deg]."""
        return self.asked("included angle").value

    @property
    def angle_limits(self) -> tuple[float, float]:
        """The title block's limits on the angle [deg]."""
        allowed = rules().number("note.angle_tolerance")
        return self.angle - allowed, self.angle + allowed

    @property
    def limits(self) -> tuple[float, float]:
        """Limits of the diameter at the face [mm]."""
        return _limits(self.planned)

    def as_asked(self, diameter: float) -> Countersink:
        """Return the seat of the angle asked for, `diameter` [mm] across."""
        hole = self.cut.hole_diameter
        return Countersink(diameter=diameter, hole_diameter=hole, included_angle=self.angle)


@dataclass(frozen=True, slots=True, kw_only=True)
class Gaged:
    """A reading, what it means, and what may be said.

    Parameters
    ----------
    job : GagedJob
        The seat.
    way : str
        How it was gaged.
    reading : float
        What the instrument shows [mm].
    value : float
        What it means: diameter, height, or angle [mm or deg]; a head's height is minus below.
    least, greatest : float
        Limits on that [mm or deg].
    decision : Decision
        What may be said.
    seat : Countersink or None
        The seat as the reading makes it; None where the screw itself is gaged.
    thickness : float
        Of the plate [mm].
    """

    job: GagedJob
    way: str
    reading: float
    value: float
    least: float
    greatest: float
    decision: Decision
    seat: Countersink | None
    thickness: float = 0.0

    @property
    def kind(self) -> Literal["length", "angle"]:
        """What the value is."""
        return "angle" if self.way == BALLS else "length"


def gaged_job(name: str) -> GagedJob:
    """Return a job's seat as the class cut it: with a cutter of another angle.

    Parameters
    ----------
    name : str
        A job of the shop's list, or any flat head screw.

    Raises
    ------
    SeatworkError
        If it has no flat head, or no ball touches its seat.
    """
    return _gaged_job(flat_job(name))


@lru_cache(maxsize=16)
def _gaged_job(one: Job) -> GagedJob:
    held, system = one.screw, one.screw.thread.system
    note = notes.read(f"⌀{show_note(one.hole.diameter, system)} THRU ⌵", system)
    planned = plan.make(note, screw=one.called, material=one.material, machine=one.machine)
    seat = planned.seats[0]
    least, angle = _limits(seat)[0], held.facts["seat_angle"].value
    hole = seat.size("hole")
    assert hole is not None
    cut = Countersink(
        diameter=least + OVER,
        hole_diameter=hole.value,
        included_angle=82.0 if angle == 90 else 90.0,
    )
    asked = replace(cut, diameter=least, included_angle=angle)
    small, large, ball = one.balls or _balls(cut, asked, STOCK[system])
    return GagedJob(screw=held, planned=seat, cut=cut, ball=ball, balls=(small, large))


def _balls(cut: Countersink, asked: Countersink, step: float) -> tuple[float, ...]:
    """Choose balls [mm] that touch the cone, be it of the angle asked for or the one cut."""
    ranges = ball_range(cut), ball_range(asked)
    least, greatest = max(r[0] for r in ranges), min(r[1] for r in ranges)
    wanted = (least + share * (greatest - least) for share in BALLS_AT)
    return tuple(_had(size, least, greatest, step) for size in wanted)


def _had(size: float, least: float, greatest: float, step: float) -> float:
    """Return the ball nearest to a size that is had, in finer steps where none would touch."""
    for _ in range(FINER):
        found = step * round(size / step)
        if least < found <= greatest:
            return found
        step /= 2
    return size


def _limits(seat: SeatPlan) -> tuple[float, float]:
    """Return the limits of the diameter at the face [mm]."""
    asked = seat.size("diameter at the face")
    assert asked is not None
    assert asked.least is not None
    assert asked.greatest is not None
    return asked.least, asked.greatest


def readings(job: GagedJob) -> dict[str, float | str]:
    """Return what each gage shows on the seat as it was cut [mm], and where the head stands."""
    stands = fit(job.screw.head, job.cut).amount
    small, large = (ball_top(ball, job.cut) for ball in job.balls)
    return {
        "rim": job.cut.diameter,
        "rise": large - small,
        "top": ball_top(job.ball, job.cut),
        "side": PROUD if stands > 0 else BELOW,
        "stand": abs(stands),
        "over": _head_over(job),
    }


def _head_over(job: GagedJob) -> float:
    """Return what a good head stands above its gage [mm]; zero where no gage is listed."""
    gage = job.screw.facts.get("gage_diameter")
    if gage is None:
        return 0.0
    return protrusion(job.screw.sharp_diameter or 0.0, gage.value, job.angle) - OVER


def gaged(job: GagedJob, way: str, values: Mapping[str, Any]) -> Gaged:
    """Return what a reading means.

    Parameters
    ----------
    job : GagedJob
        The seat.
    way : str
        One of `WAYS`.
    values : mapping
        Readings by name: rim, rise, top, stand and over [mm], and side, where a head stands.

    Raises
    ------
    SeatworkError
        If no cone can hold the balls so, or no gage is listed for the screw.
    """
    measure = {CALIPER: _caliper, BALLS: _two, BALL: _one, SCREW: _stands, HEAD: _over}[way]
    return measure(job, values)


def _caliper(job: GagedJob, values: Mapping[str, Any]) -> Gaged:
    rim, doubt = values["rim"], INSTRUMENTS["caliper"].uncertainty
    return _judged(job, CALIPER, rim, rim, job.limits, doubt, job.as_asked(rim))


def _one(job: GagedJob, values: Mapping[str, Any]) -> Gaged:
    """Take the cone for one of the angle asked for, and find its diameter."""
    found = uncertainty(
        diameter_from_ball,
        {"ball_diameter": job.ball, "ball_top": values["top"], "included_angle": job.angle},
        {"ball_top": HEIGHT},
    )
    seat = job.as_asked(found.value)
    ball_top(job.ball, seat)  # refuses a ball that does not touch the cone
    return _judged(job, BALL, values["top"], found.value, job.limits, found.combined, seat)


def _two(job: GagedJob, values: Mapping[str, Any]) -> Gaged:
    small, large = job.balls
    rise = values["rise"]
    found = uncertainty(
        angle_from_two_balls,
        {"small_diameter": small, "large_diameter": large, "small_top": 0.0, "large_top": rise},
        {"small_top": HEIGHT, "large_top": HEIGHT},
    )
    seat = Countersink(
        diameter=values["rim"],
        hole_diameter=job.cut.hole_diameter,
        included_angle=found.value,
    )
    for ball in job.balls:
        ball_top(ball, seat)  # refuses one that does not touch the cone
    return _judged(job, BALLS, rise, found.value, job.angle_limits, found.combined, seat)


def _stands(job: GagedJob, values: Mapping[str, Any]) -> Gaged:
    height = values["stand"] if values["side"] == PROUD else -values["stand"]
    held = rules()
    limits = (-held.number("flush.greatest_below"), held.number("flush.greatest_proud"))
    doubt = INSTRUMENTS["depth indicator"].uncertainty
    wide = job.screw.head.sharp_diameter - 2 * job.as_asked(job.limits[0]).tangent * height
    return _judged(job, SCREW, values["stand"], height, limits, doubt, job.as_asked(wide))


def _over(job: GagedJob, values: Mapping[str, Any]) -> Gaged:
    facts = job.screw.facts
    if "gage_diameter" not in facts:
        remedy = "take the screw and an indicator, or balls"
        raise SeatworkError(job.screw.name, "the list has no head gage for this screw", remedy)
    limits = facts["gage_least"].value, facts["gage_greatest"].value
    return _judged(job, HEAD, values["over"], values["over"], limits, HEIGHT, None)


def _judged(
    job: GagedJob,
    way: str,
    reading: float,
    value: float,
    limits: tuple[float, float],
    doubt: float,
    seat: Countersink | None,
) -> Gaged:
    least, greatest = limits
    return Gaged(
        job=job,
        way=way,
        reading=reading,
        value=value,
        least=least,
        greatest=greatest,
        decision=decide(value, lower=least, upper=greatest, uncertainty=doubt),
        seat=seat,
    )
