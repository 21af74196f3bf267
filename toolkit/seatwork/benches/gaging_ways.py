"""What the gaging bench knows: the seats of the class, their gages, and what a reading means."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal

from seatwork import notes, plan
from seatwork.errors import SeatworkError
from seatwork.hardware import screw
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
from seatwork.seats.measuring import Decision, decide, uncertainty
from seatwork.shop.house.house_rules import rules

CALIPER, BALLS, BALL, SCREW, HEAD = (
    "caliper across the rim",
    "two balls",
    "one ball",
    "the screw and an indicator",
    "head gage, on the screw itself",
)
WAYS = (BALLS, SCREW, BALL, CALIPER, HEAD)
BELOW, PROUD = "below the face", "proud of the face"
FRAME, HOPPER, CRANK = (
    "frame, 1/4 flat head",
    "hopper plate, #10 flat head",
    "crank, M6 socket flat head",
)
HEIGHT = INSTRUMENTS["depth micrometer"].uncertainty
"""Doubt of a height measured with a depth micrometer or an indicator [mm]."""

INCH = 25.4
OVER = 0.004 * INCH
"""How far over its least diameter the class cut each seat [mm]: an example."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
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
    job : Job
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
    """

    job: Job
    way: str
    reading: float
    value: float
    least: float
    greatest: float
    decision: Decision
    seat: Countersink | None

    @property
    def kind(self) -> Literal["length", "angle"]:
        """What the value is."""
        return "angle" if self.way == BALLS else "length"


@cache
def jobs() -> dict[str, Job]:
    """Return the seats that can be chosen: the cutter was of another angle each time."""
    frame = "⌀.266 THRU ⌵ FOR 1/4-20 FLAT HEAD MACHINE SCREW"
    hopper = "⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW"
    return {
        FRAME: _job(frame, angle=90, balls=(13 * INCH / 32, 19 * INCH / 32), ball=INCH / 2),
        HOPPER: _job(hopper, angle=90, balls=(5 * INCH / 16, INCH / 2), ball=3 * INCH / 8),
        CRANK: _job("Ø6.6 ⌵ FOR M6 CSK SOCKET", angle=82, balls=(10.0, 15.0), ball=12.0),
    }


def _job(note: str, *, angle: float, balls: tuple[float, float], ball: float) -> Job:
    """Put a job together; the cutter's angle [deg], the balls [mm]."""
    planned = plan.make(notes.read(note), material="1018 steel", machine="bench drill press")
    seat = planned.seats[0]
    least, hole = _limits(seat)[0], seat.size("hole")
    assert hole is not None
    cut = Countersink(diameter=least + OVER, hole_diameter=hole.value, included_angle=angle)
    return Job(
        screw=screw(note.partition("FOR ")[2]), planned=seat, cut=cut, ball=ball, balls=balls
    )


def _limits(seat: SeatPlan) -> tuple[float, float]:
    """Return the limits of the diameter at the face [mm]."""
    asked = seat.size("diameter at the face")
    assert asked is not None
    assert asked.least is not None
    assert asked.greatest is not None
    return asked.least, asked.greatest


def readings(job: Job) -> dict[str, float | str]:
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


def _head_over(job: Job) -> float:
    """Return what a good head stands above its gage [mm]; zero where no gage is listed."""
    gage = job.screw.facts.get("gage_diameter")
    if gage is None:
        return 0.0
    return protrusion(job.screw.sharp_diameter or 0.0, gage.value, job.angle) - OVER


def gaged(job: Job, way: str, values: Mapping[str, Any]) -> Gaged:
    """Return what a reading means.

    Parameters
    ----------
    job : Job
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


def _caliper(job: Job, values: Mapping[str, Any]) -> Gaged:
    rim, doubt = values["rim"], INSTRUMENTS["caliper"].uncertainty
    return _judged(job, CALIPER, rim, rim, job.limits, doubt, job.as_asked(rim))


def _one(job: Job, values: Mapping[str, Any]) -> Gaged:
    """Take the cone for one of the angle asked for, and find its diameter."""
    found = uncertainty(
        diameter_from_ball,
        {"ball_diameter": job.ball, "ball_top": values["top"], "included_angle": job.angle},
        {"ball_top": HEIGHT},
    )
    seat = job.as_asked(found.value)
    ball_top(job.ball, seat)  # refuses a ball that does not touch the cone
    return _judged(job, BALL, values["top"], found.value, job.limits, found.combined, seat)


def _two(job: Job, values: Mapping[str, Any]) -> Gaged:
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


def _stands(job: Job, values: Mapping[str, Any]) -> Gaged:
    height = values["stand"] if values["side"] == PROUD else -values["stand"]
    held = rules()
    limits = (-held.number("flush.greatest_below"), held.number("flush.greatest_proud"))
    doubt = INSTRUMENTS["depth indicator"].uncertainty
    wide = job.screw.head.sharp_diameter - 2 * job.as_asked(job.limits[0]).tangent * height
    return _judged(job, SCREW, values["stand"], height, limits, doubt, job.as_asked(wide))


def _over(job: Job, values: Mapping[str, Any]) -> Gaged:
    facts = job.screw.facts
    if "gage_diameter" not in facts:
        remedy = "take the screw and an indicator, or balls"
        raise SeatworkError(job.screw.name, "the list has no head gage for this screw", remedy)
    limits = facts["gage_least"].value, facts["gage_greatest"].value
    return _judged(job, HEAD, values["over"], values["over"], limits, HEIGHT, None)


def _judged(
    job: Job,
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
