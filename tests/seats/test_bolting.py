"""Bending and bearing: slopes of the formulas, bounds, and the ring's own geometry."""

from math import pi, radians

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats.bearing import Bearing, bearing_pressure, washer_bearing
from seatwork.seats.bolting import (
    CAUTION,
    STEEL_MODULUS,
    bedded_bending,
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


@QUICK
@given(tilt=st.floats(0, 10), force=st.floats(100, 100_000))
def test_bedding_in_never_adds_stress(tilt: float, force: float) -> None:
    """The bedded estimate is never above the upper bound, and grows with the tilt."""
    sizes = {**HALF_INCH, "clamp_force": force}
    found = bedded_bending(RING, tilt=tilt, **sizes)
    assert 0 <= found.bedded <= found.upper_bound
    steeper = bedded_bending(RING, tilt=min(tilt + 0.5, 10), **sizes)
    assert steeper.bedded >= found.bedded - 1e-9


def test_a_hard_stiff_seat_tends_to_the_upper_bound() -> None:
    """With a seat that neither gives nor is crushed, the head follows it fully."""
    sizes = {**HALF_INCH, "seat_modulus": 1e11, "crushing_pressure": 1e6}
    found = bedded_bending(RING, tilt=0.2, **sizes)
    assert found.bedded == pytest.approx(found.upper_bound, rel=1e-5)
    assert found.limited_by == "stiffness"


def test_the_seat_takes_its_share_of_the_angle() -> None:
    """On iron the seat gives 7.96e-9 rad per N mm, the bolt 145.5e-9: 565 MPa left of 596.

    Worked by hand: L/(E I) = 38.1/(205000 x 1277), 3 (1 - .09)/(4 x 100000 x 9.5 cubed). The
    rule for the give of a seat is from memory.
    """
    found = bedded_bending(RING, tilt=1, **HALF_INCH)
    assert found.upper_bound == pytest.approx(596, abs=1)
    assert found.bedded == pytest.approx(596 * 145.5 / (145.5 + 7.96), abs=1)


def test_a_light_clamp_force_tips_the_head_on_its_edge() -> None:
    """A small force cannot bend the bolt more than its lever to the edge of the head allows."""
    sizes = {**HALF_INCH, "clamp_force": 1000.0}
    found = bedded_bending(RING, tilt=5, **sizes)
    assert found.limited_by == "seat crushing"
    moment = found.bedded * pi * 12.7**3 / 32
    assert moment <= 1000 * 19 / 2
    assert moment == pytest.approx(1000 * 19 / 2, rel=0.05)
    assert found.caution == CAUTION
    assert "OK" not in CAUTION


def test_a_force_that_crushes_the_whole_ring_is_refused() -> None:
    """A ring too small for the force has no lever left, and is told so."""
    with pytest.raises(SeatworkError, match="crushed all round"):
        bedded_bending(RING, tilt=1, **{**HALF_INCH, "clamp_force": 1e6})


@QUICK
@given(share=st.floats(0.01, 1))
def test_the_lever_is_the_centroid_of_the_slice(share: float) -> None:
    """Counted on a fine grid, the one-sided part of the ring has the area and centroid found."""
    area = share * RING.area
    lever = RING.greatest_lever(area)
    far = COUNTED[: max(1, round(share * COUNTED.size))]
    # 1501 points across: the grid's own error is a few hundredths of a step
    assert lever == pytest.approx(far.mean(), abs=0.01)


def test_the_whole_ring_has_no_lever() -> None:
    """All of the ring has its centroid on the axis."""
    assert RING.greatest_lever(RING.area) == pytest.approx(0, abs=1e-6)


def test_pressure_and_washers() -> None:
    """A washer spreads only as far as its thickness lets it, so a thin one helps little."""
    bare = bearing_pressure(force=10_000, outside_diameter=8.9, hole_diameter=6.6)
    thin = washer_bearing(head_diameter=8.9, washer_diameter=18, thickness=1, hole_diameter=6.6)
    thick = washer_bearing(head_diameter=8.9, washer_diameter=18, thickness=10, hole_diameter=6.6)
    assert thin.outside_diameter == pytest.approx(10.5)
    assert thick.outside_diameter == 18
    assert 10_000 / thick.area < 10_000 / thin.area < bare


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
