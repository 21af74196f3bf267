"""What plating takes off a hole and a cone, drawn out point by point."""

from math import cos, radians, sin, tan

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats.plating import cone_loss


@pytest.mark.parametrize("angle", [60, 82, 90, 100, 120])
def test_a_cone_loses_what_its_offset_wall_shows_at_the_raised_face(angle: float) -> None:
    """Two points of the wall are moved along its normal, and the line met with the new face."""
    half, p = radians(angle) / 2, 0.01
    wall = [(10 - z * tan(half), z) for z in (0.0, 3.0)]  # radius, depth
    moved = [(r - p * cos(half), z - p * sin(half)) for r, z in wall]
    (r0, z0), (r1, z1) = moved
    at_face = r0 + (r1 - r0) * (-p - z0) / (z1 - z0)
    assert 2 * (10 - at_face) / p == pytest.approx(cone_loss(angle))


def test_no_cone_is_refused() -> None:
    """A flat angle has no wall to plate."""
    with pytest.raises(SeatworkError):
        cone_loss(180)
