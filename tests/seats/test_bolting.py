"""Bending and bearing: slopes of the formulas, bounds, and the ring's own geometry."""

from math import radians

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats.bolting import (
    STEEL_MODULUS,
    bending_stress,
    seat_tilt,
    slope_angle,
)

QUICK = settings(max_examples=60, deadline=None)


@pytest.mark.outside("closed form", "seats.bending_stress")
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
