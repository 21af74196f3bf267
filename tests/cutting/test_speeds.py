"""Spindle speed and cutting speed."""

from math import inf, nan, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import cutting
from seatwork.errors import SeatworkError

SPEEDS = st.floats(0.1, 1000)
DIAMETERS = st.floats(0.1, 300)


@given(speed=SPEEDS, diameter=DIAMETERS)
def test_both_ways_give_the_same_speed(speed: float, diameter: float) -> None:
    """Cutting speed to spindle speed and back is the same speed."""
    turned = cutting.spindle_speed(cutting_speed=speed, diameter=diameter)
    back = cutting.cutting_speed(spindle_speed=turned, diameter=diameter)
    assert back == pytest.approx(speed, rel=1e-12)


def test_the_constant_is_exact() -> None:
    """At pi m/min and 1 mm a spindle turns 1000 rev/min, no 318 and no 320."""
    assert cutting.spindle_speed(cutting_speed=pi, diameter=1) == pytest.approx(1000, rel=1e-15)


@pytest.mark.outside("sum worked by hand", "cutting.spindle_speed")
def test_feet_a_minute_on_half_an_inch() -> None:
    """100 ft/min on 0.5 in is 764 rev/min (12 x 100/(pi x 0.5)); a known trap gives 122."""
    found = cutting.spindle_speed(cutting_speed=30.48, diameter=12.7)
    assert found == pytest.approx(1200 / (pi * 0.5))


@pytest.mark.parametrize("bad", [0, -1, nan, inf])
@pytest.mark.parametrize("name", ["cutting_speed", "diameter"])
def test_no_speed_without_size(name: str, bad: float) -> None:
    """Zero, negative, endless and no-number values are refused in one sentence."""
    good = {"cutting_speed": 25.0, "diameter": 12.0}
    with pytest.raises(SeatworkError, match=r"must be (a number )?above zero"):
        cutting.spindle_speed(**{**good, name: bad})


def test_the_mean_diameter_needs_a_wider_cut_than_hole() -> None:
    """A cut no wider than its hole is refused; the sentence names both."""
    with pytest.raises(SeatworkError, match=r"6 mm: the cut is not wider than the hole, 6\.6 mm"):
        cutting.mean_diameter(diameter=6, hole_diameter=6.6)
