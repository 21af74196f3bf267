"""Readings of one part that cannot all be true, and what they tell together."""

from dataclasses import replace

from seatwork.errors import SeatworkError
from seatwork.inspection.measured import Measured
from seatwork.plan import SeatPlan
from seatwork.plan.sentences import Show
from seatwork.quantities import Angle, Length
from seatwork.seats import Countersink, ball_top
from seatwork.seats.gaging import angle_from_ball
from seatwork.seats.measuring import Uncertainty, uncertainty

FIGHTING = ("diameter", "angle", "ball_top")
BY_BALL = "ball and diameter together"


def angle_by_ball(measured: Measured, seat: SeatPlan) -> Uncertainty | None:
    """Return the included angle that ball and diameter give together [deg].

    Parameters
    ----------
    measured : Measured
        The part's values.
    seat : SeatPlan
        What it should be.

    Returns
    -------
    Uncertainty or None
        The angle with what both readings leave open; None where one of them is missing, or no
        cone gives them both.
    """
    sizes = _sizes(measured)
    if sizes is None or not isinstance(seat.shape, Countersink):
        return None
    unsure = {key: measured.uncertainty(key) for key in ("diameter", "ball_top")}
    try:
        return uncertainty(angle_from_ball, sizes, unsure)
    except SeatworkError:
        return None


def fight(measured: Measured, seat: SeatPlan, show: Show) -> str:
    """Say that diameter, angle and ball cannot all be true; empty where they may be.

    Parameters
    ----------
    measured : Measured
        The part's values.
    seat : SeatPlan
        What it should be.
    show : callable
        Writes sizes for people.
    """
    sizes, cone = _sizes(measured), seat.shape
    if sizes is None or not isinstance(cone, Countersink):
        return ""
    read = show(Length(sizes["ball_top"]))
    across = show(Length(sizes["diameter"]))
    if measured.angle is None:
        if angle_by_ball(measured, seat) is not None:
            return ""
        return (
            f"Diameter and ball fight: no cone of {across} holds the top of this ball at {read}. "
            "Measure both again."
        )
    expected = _expected(measured, cone)
    if expected is None:
        return ""
    over = (expected.combined**2 + measured.uncertainty("ball_top") ** 2) ** 0.5
    if abs(sizes["ball_top"] - expected.value) <= over:
        return ""
    return (
        f"Diameter, angle and ball fight: at {across} and {show(Angle(measured.angle))} the top of "
        f"this ball stands at {show(Length(expected.value))}, not {read}. Measure all three again."
    )


def _expected(measured: Measured, cone: Countersink) -> Uncertainty | None:
    """Return where the top of the ball stands in the cone as measured [mm]."""
    ball = measured.ball or 0.0

    def top(diameter: float, included_angle: float) -> float:
        return ball_top(ball, replace(cone, diameter=diameter, included_angle=included_angle))

    values = {"diameter": measured.diameter or 0.0, "included_angle": measured.angle or 0.0}
    unsure = {
        "diameter": measured.uncertainty("diameter"),
        "included_angle": measured.uncertainty("angle"),
    }
    try:
        return uncertainty(top, values, unsure)
    except SeatworkError:
        return None


def _sizes(measured: Measured) -> dict[str, float] | None:
    if measured.diameter is None or measured.ball is None or measured.ball_top is None:
        return None
    return {
        "ball_diameter": measured.ball,
        "ball_top": measured.ball_top,
        "diameter": measured.diameter,
    }
