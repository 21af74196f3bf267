"""Bending and bearing: slopes of the formulas, bounds, and the ring's own geometry."""

from math import radians

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats.bearing import Bearing
from seatwork.seats.bolting import (
    STEEL_MODULUS,
    bending_stress,
    seat_tilt,
    slope_angle,
)

QUICK = settings(max_examples=60, deadline=None)
RING = Bearing(outside_diameter=19, hole_diameter=13.5)
HALF_INCH = {
    "diameter": 12.7, "grip": 38.1, "clamp_force": 40_000.0, "seat_modulus": 100_000.0,
    "crushing_pressure": 850.0,
}  # fmt: skip


def counted() -> np.ndarray:
    """Give the distances, across the head, of all points of the ring, farthest first."""
    axis = np.linspace(-9.5, 9.5, 1501)
    distance = np.hypot(*np.meshgrid(axis, axis))
    ring = (distance <= 9.5) & (distance >= 6.75)
    return np.sort(np.broadcast_to(axis, ring.shape)[ring])[::-1]


COUNTED = counted()


@QUICK
@given(tilt=st.floats(1e-3, 5), diameter=st.floats(3, 50), grip=st.floats(5, 300))
def test_bending_is_strain_of_the_outer_fiber(tilt: float, diameter: float, grip: float) -> None:
    """On a bar bent to an arc, the outer fiber is longer by half the diameter times the angle."""
    radius = grip / radians(tilt)
    strain = ((radius + diameter / 2) * radians(tilt) - grip) / grip
    found = bending_stress(tilt=tilt, diameter=diameter, grip=grip)
    assert found == pytest.approx(STEEL_MODULUS * strain, rel=1e-8)


@pytest.mark.parametrize("tilt", [-0.1, 10.1, float("nan")])
def test_a_tilt_beyond_ten_degrees_is_refused(tilt: float) -> None:
    """The bending rule is for small angles and says so."""
    with pytest.raises(SeatworkError, match="between 0 and 10 degrees"):
        bending_stress(tilt=tilt, diameter=10, grip=40)


def test_no_gap_is_no_tilt() -> None:
    """A feeler of nothing is no tilt; a slope below zero is refused."""
    assert seat_tilt(gap=0, across=19) == 0
    with pytest.raises(SeatworkError, match="slope"):
        slope_angle(-0.1)
