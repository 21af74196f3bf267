"""Torque, thrust, power and removal rate of a seat."""

from math import radians, sin

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import cutting
from seatwork.errors import SeatworkError

HOLES = st.floats(0, 20)
WIDER = st.floats(0.1, 20)


@pytest.mark.outside("second method", "cutting.torque")
@pytest.mark.slow
@given(hole=HOLES, wider=WIDER, angle=st.floats(30, 180))
def test_torque_is_the_sum_along_the_lip(hole: float, wider: float, angle: float) -> None:
    """Summing force times radius along the lip gives the closed torque, whatever the angle."""
    half = radians(angle / 2)
    edges = np.linspace(hole / 2, (hole + wider) / 2, 2001)
    radius, step = (edges[1:] + edges[:-1]) / 2, np.diff(edges)
    force = 2000.0 * (0.1 * sin(half)) * (step / sin(half))
    summed = float((force * radius).sum()) / 1000
    found = cutting.torque(
        tangential_coefficient=2000.0, feed=0.1, diameter=hole + wider, hole_diameter=hole
    )
    assert found == pytest.approx(summed, rel=1e-6)


def test_power_of_the_worked_countersink() -> None:
    """12 on 6 mm at 0.1 mm/rev in 1921 MPa takes 81.5 W at 300 rev/min (check G3, computed)."""
    torque = cutting.torque(tangential_coefficient=1920.98, feed=0.1, diameter=12, hole_diameter=6)
    assert cutting.power(torque=torque, spindle_speed=300) == pytest.approx(81.5, abs=0.05)


@pytest.mark.outside("closed form", "cutting.thrust")
def test_a_counterbore_pushes_straight_down() -> None:
    """At 180° the whole normal force is thrust; an 82° cone takes sin 41° of it."""
    cut = {"normal_coefficient": 1345.0, "feed": 0.1, "diameter": 12.0, "hole_diameter": 6.0}
    flat = cutting.thrust(**cut)
    assert flat == pytest.approx(1345 * 0.1 * 3)
    assert cutting.thrust(included_angle=82, **cut) == pytest.approx(flat * sin(radians(41)))


@pytest.mark.parametrize("angle", [0, -82, 181, float("nan")])
def test_no_cutter_has_that_angle(angle: float) -> None:
    """Angles outside 0 to 180 are refused."""
    with pytest.raises(SeatworkError, match="included angle"):
        cutting.thrust(normal_coefficient=1345, feed=0.1, diameter=12, included_angle=angle)
