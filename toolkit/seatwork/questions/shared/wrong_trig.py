"""The trigonometry of a cone as learners get it wrong; None where no number comes of it."""

from math import radians, sin, tan

from seatwork.seats.cones import half_tangent


def over(length: float, ratio: float | None) -> float | None:
    """Return a length over a ratio, None if there is no ratio."""
    return length / ratio if ratio else None


def times(length: float, ratio: float | None) -> float | None:
    """Return a length times a ratio, None if there is no ratio."""
    return length * ratio if ratio else None


def whole_tangent(included_angle: float) -> float | None:
    """Return the tangent of the whole angle, where half of it belongs."""
    return half_tangent(2 * included_angle) if included_angle < 89 else None


def half_sine(included_angle: float) -> float:
    """Return the sine of half the angle, where the tangent belongs."""
    return sin(radians(included_angle / 2))


def radian_tangent(included_angle: float) -> float | None:
    """Return what a calculator in radian mode gives for the tangent of half the angle."""
    value = tan(included_angle / 2)
    return value if value > 0.01 else None
