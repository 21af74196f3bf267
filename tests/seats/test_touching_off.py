"""What stop, touch-off, nose, sheet and coat do to a seat."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink
from seatwork.seats.sheet_metal import InSheetMetal
from seatwork.seats.touching_off import (
    Limits,
    depth_limits,
    diameter_error,
    diameter_limits,
    oversize_hole,
    resharpened_nose,
    stop_band,
)

INCH = 25.4
QUICK = settings(max_examples=80, deadline=None)
SEAT = Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=82)
ANGLES = st.floats(30, 150)


def test_one_flat_of_the_stop_nut() -> None:
    """A sixth of a turn on 1/2-20 is .0083 of travel and .0145 on the diameter (worked)."""
    travel = INCH / 20 / 6
    assert travel / INCH == pytest.approx(0.0083, abs=5e-5)
    grown = diameter_error(depth_error=travel, included_angle=82)
    assert grown / INCH == pytest.approx(0.0145, abs=5e-5)


def test_a_100_degree_rivet_four_thou_proud() -> None:
    """.004 deeper at 100° opens the seat by .0095 (worked)."""
    assert diameter_error(depth_error=0.004 * INCH, included_angle=100) / INCH == pytest.approx(
        0.0095, abs=5e-5
    )


@QUICK
@given(error=st.floats(-3, 3), angle=ANGLES)
def test_a_stop_error_is_what_the_two_seats_differ_by(error: float, angle: float) -> None:
    """The diameter error is the difference of the seats cut with and without it."""
    right = Countersink.from_depth(depth=5, hole_diameter=6, included_angle=angle)
    wrong = Countersink.from_depth(depth=5 + error, hole_diameter=6, included_angle=angle)
    found = diameter_error(depth_error=error, included_angle=angle)
    assert found == pytest.approx(wrong.diameter - right.diameter, abs=1e-11)
    band = stop_band(diameter_tolerance=abs(found), included_angle=angle)
    assert band == pytest.approx(abs(error), abs=1e-11)


def test_worst_pairing_of_limits() -> None:
    """Depth is least for the least seat on the greatest hole, and no other pairing is beyond."""
    seat, hole = Limits(least=12, greatest=12.2), Limits(least=6.6, greatest=6.8)
    found = depth_limits(diameter=seat, hole_diameter=hole, included_angle=82)
    every = [
        Countersink(diameter=wide, hole_diameter=narrow, included_angle=82).depth
        for wide in (12, 12.1, 12.2)
        for narrow in (6.6, 6.7, 6.8)
    ]
    assert (found.least, found.greatest) == (min(every), max(every))
    assert (found.middle, found.spread) == (
        pytest.approx((min(every) + max(every)) / 2),
        pytest.approx(max(every) - min(every)),
    )


def test_limits_of_the_diameter_come_back_through_the_depth() -> None:
    """The diameters that a travel band gives, given back as limits, need that band at least."""
    travel, hole = Limits(least=2.6, greatest=2.8), Limits(least=6.6, greatest=6.8)
    wide = diameter_limits(travel=travel, start_diameter=hole, included_angle=82)
    assert wide.least == pytest.approx(
        Countersink.from_depth(depth=2.6, hole_diameter=6.6, included_angle=82).diameter
    )
    assert wide.greatest == pytest.approx(
        Countersink.from_depth(depth=2.8, hole_diameter=6.8, included_angle=82).diameter
    )


def test_crossed_limits_are_refused() -> None:
    """A lower limit above the upper is no range."""
    with pytest.raises(SeatworkError, match="lower limit cannot be larger"):
        Limits(least=2, greatest=1)


def test_an_oversize_hole_under_both_touch_offs() -> None:
    """Touched on the face the seat keeps its diameter; on the hole edge it grows with the hole."""
    hole = 0.281 * INCH
    face = oversize_hole(SEAT, hole_diameter=hole, touched="face")
    edge = oversize_hole(SEAT, hole_diameter=hole, touched="hole edge")
    assert face.diameter == SEAT.diameter
    assert face.depth < SEAT.depth
    assert (edge.diameter - SEAT.diameter) / INCH == pytest.approx(0.015, abs=1e-9)
    assert edge.depth == pytest.approx(SEAT.depth, rel=1e-12)


def test_a_resharpened_nose_under_both_touch_offs() -> None:
    """Nose .060 ground to .090: .507 becomes .537 off the face, unchanged off the edge (worked)."""
    noses = {"nose_diameter": 0.060 * INCH, "new_nose_diameter": 0.090 * INCH}
    face = resharpened_nose(SEAT, **noses, touched="face")
    assert face.diameter / INCH == pytest.approx(0.537, abs=1e-9)
    assert resharpened_nose(SEAT, **noses, touched="hole edge") == SEAT


@pytest.mark.parametrize("touched", ["", "tip", "faces"])
def test_an_unknown_touch_off_is_refused(touched: str) -> None:
    """Only the face and the hole edge are ways to touch off."""
    with pytest.raises(SeatworkError, match="no way to touch off"):
        oversize_hole(SEAT, hole_diameter=7, touched=touched)  # type: ignore[arg-type]
    with pytest.raises(SeatworkError, match="no way to touch off"):
        resharpened_nose(SEAT, nose_diameter=1, new_nose_diameter=2, touched=touched)  # type: ignore[arg-type]


@QUICK
@given(thickness=st.floats(0.2, 8), angle=ANGLES)
def test_a_knife_edge_grows_the_hole_to_the_cone_at_the_far_side(
    thickness: float, angle: float
) -> None:
    """The far side opens to D - 2 T t where the cone goes through, and not otherwise."""
    seat = Countersink(diameter=12, hole_diameter=6, included_angle=angle)
    sheet = InSheetMetal(seat=seat, thickness=thickness)
    assert sheet.knife_edge == (seat.depth >= thickness)
    if sheet.knife_edge:
        assert sheet.far_diameter == pytest.approx(12 - 2 * seat.tangent * thickness, abs=1e-9)
        assert sheet.land == 0
    else:
        assert sheet.far_diameter == 6
        assert sheet.land == pytest.approx(thickness - seat.depth)
