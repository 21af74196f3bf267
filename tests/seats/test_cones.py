"""Countersinks: inverse pairs, steady growth, scaling, and the worked figures of the trade."""

from math import atan, cos, degrees, isfinite, pi, radians, sin, sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent, included_angle

INCH = 25.4
QUICK = settings(max_examples=80, deadline=None)
LENGTHS = st.floats(0.05, 500, allow_subnormal=False)
ANGLES = st.floats(20, 160)


@st.composite
def seats(draw: st.DrawFn) -> Countersink:
    """Draw a countersink of any size."""
    hole = draw(LENGTHS)
    return Countersink(
        diameter=hole * draw(st.floats(1.01, 5)), hole_diameter=hole, included_angle=draw(ANGLES)
    )


@QUICK
@given(seat=seats())
def test_depth_and_diameter_give_each_other_back(seat: Countersink) -> None:
    """A seat made again from its depth has the same diameter."""
    again = Countersink.from_depth(
        depth=seat.depth, hole_diameter=seat.hole_diameter, included_angle=seat.included_angle
    )
    assert again.diameter == pytest.approx(seat.diameter, rel=1e-13)


@QUICK
@given(seat=seats())
def test_the_angle_comes_back_from_depth_and_diameters(seat: Countersink) -> None:
    """Two diameters and the depth give the included angle."""
    found = included_angle(
        diameter=seat.diameter, hole_diameter=seat.hole_diameter, depth=seat.depth
    )
    assert found == pytest.approx(seat.included_angle, rel=1e-11)


@pytest.mark.outside("closed form", "seats.Countersink.slant_width")
@QUICK
@given(seat=seats())
def test_the_side_of_the_cone_is_a_right_triangle(seat: Countersink) -> None:
    """Slant width is the hypotenuse over depth and half the difference of diameters."""
    run = (seat.diameter - seat.hole_diameter) / 2
    assert seat.slant_width == pytest.approx(sqrt(seat.depth**2 + run**2), rel=1e-12)
    assert 2 * degrees(atan(run / seat.depth)) == pytest.approx(seat.included_angle, rel=1e-12)


@pytest.mark.outside("closed form", "seats.Countersink.volume")
@QUICK
@given(seat=seats())
def test_volume_is_the_difference_of_two_whole_cones_less_the_hole(seat: Countersink) -> None:
    """The metal cut is the cone to the apex, less the small cone below the hole edge, less hole."""
    whole = pi / 12 * seat.diameter**2 * seat.apex_depth
    below = pi / 12 * seat.hole_diameter**2 * (seat.apex_depth - seat.depth)
    hole = pi / 4 * seat.hole_diameter**2 * seat.depth
    # near a flat cone the three large terms cancel
    assert seat.volume == pytest.approx(whole - below - hole, rel=1e-9, abs=1e-12 * whole)


@pytest.mark.outside(
    "closed form", "seats.Countersink.bearing_area", "seats.Countersink.projected_area"
)
@QUICK
@given(seat=seats())
def test_area_is_an_unrolled_sector_and_projects_to_the_ring(seat: Countersink) -> None:
    """The land unrolls to a sector of a ring; seen along the axis it is a flat ring."""
    slope = sin(radians(seat.included_angle / 2))
    outer, inner = seat.diameter / 2 / slope, seat.hole_diameter / 2 / slope
    assert seat.bearing_area == pytest.approx(pi * slope * (outer**2 - inner**2), rel=1e-9)
    assert seat.projected_area == pytest.approx(seat.bearing_area * slope, rel=1e-12)


@pytest.mark.outside("closed form", "seats.Countersink.diameter_at")
@QUICK
@given(seat=seats(), part=st.floats(0, 1))
def test_diameter_falls_steadily_from_face_to_hole(seat: Countersink, part: float) -> None:
    """The cone narrows from the face to the hole and stays a hole below."""
    found = seat.diameter_at(part * seat.depth)
    assert seat.hole_diameter <= found <= seat.diameter
    assert found == pytest.approx(
        seat.diameter - part * (seat.diameter - seat.hole_diameter), rel=1e-9
    )
    assert seat.diameter_at(seat.depth * 1.5) == seat.hole_diameter


@QUICK
@given(seat=seats(), scale=st.floats(0.05, 15))
def test_sizes_scale_together(seat: Countersink, scale: float) -> None:
    """Lengths, areas and volumes of a scaled seat go with the first, second and third power."""
    large = Countersink(
        diameter=seat.diameter * scale / 5,
        hole_diameter=seat.hole_diameter * scale / 5,
        included_angle=seat.included_angle,
    )
    factor = scale / 5
    assert large.depth == pytest.approx(seat.depth * factor, rel=1e-9)
    assert large.bearing_area == pytest.approx(seat.bearing_area * factor**2, rel=1e-9)
    assert large.volume == pytest.approx(seat.volume * factor**3, rel=1e-9)


@QUICK
@given(seat=seats())
def test_no_size_of_a_valid_seat_is_nan_or_below_zero(seat: Countersink) -> None:
    """Whatever can be built has finite sizes above zero."""
    sizes = (
        seat.depth, seat.apex_depth, seat.slant_width, seat.volume,
        seat.bearing_area, seat.projected_area, seat.travel_from_hole_edge(),
        seat.travel_from_face(0.0),
    )  # fmt: skip
    assert all(isfinite(size) and size > 0 for size in sizes)


@pytest.mark.outside(
    "sum worked by hand",
    "seats.Countersink.depth",
    "seats.Countersink.apex_depth",
    "seats.Countersink.slant_width",
    "seats.Countersink.travel_from_face",
    "seats.Countersink.travel_from_hole_edge",
)
def test_the_worked_quarter_inch_seat() -> None:
    """.507 on .266 at 82° is .1386 deep, .2916 to the point, .1837 along the slant (worked)."""
    seat = Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=82)
    assert seat.depth / INCH == pytest.approx(0.1386, abs=5e-5)
    assert seat.apex_depth / INCH == pytest.approx(0.2916, abs=5e-5)
    assert seat.slant_width / INCH == pytest.approx(0.1837, abs=5e-5)
    assert seat.travel_from_face(0.060 * INCH) / INCH == pytest.approx(0.2571, abs=5e-5)
    assert seat.travel_from_hole_edge() == seat.depth


def test_a_print_note_of_a_number_ten_gives_its_depth() -> None:
    """⌀.201 with a seat ⌀.385 X 82° is .106 deep, (.385 - .201)/1.739 (worked)."""
    seat = Countersink(diameter=0.385 * INCH, hole_diameter=0.201 * INCH, included_angle=82)
    assert seat.depth / INCH == pytest.approx(0.184 / 1.739, abs=5e-5)


@pytest.mark.parametrize(
    ("angle", "factor"), [(60, 1.155), (82, 1.739), (90, 2.0), (100, 2.384), (120, 3.464)]
)
def test_diameter_gained_per_depth(angle: float, factor: float) -> None:
    """Diameter grows 1.155, 1.739, 2, 2.384, 3.464 per unit of depth at 60 to 120° (worked)."""
    assert 2 * half_tangent(angle) == pytest.approx(factor, abs=6e-4)


def test_a_118_degree_point_is_no_seat_for_an_82_degree_head() -> None:
    """A 118° drill run to .507 on .266 is only .0724 deep (worked)."""
    seat = Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=118)
    assert seat.depth / INCH == pytest.approx(0.0724, abs=5e-5)


def test_no_angle_between_60_and_120_makes_a_wider_seat_shallower() -> None:
    """With hole and angle kept, depth grows with the diameter by cos/sin of the half angle."""
    for angle in (60.0, 82.0, 90.0, 100.0, 120.0):
        narrow = Countersink(diameter=10, hole_diameter=5, included_angle=angle)
        wide = Countersink(diameter=11, hole_diameter=5, included_angle=angle)
        half = radians(angle / 2)
        assert wide.depth - narrow.depth == pytest.approx(0.5 * cos(half) / sin(half), rel=1e-12)


def test_a_nose_as_wide_as_the_seat_is_refused() -> None:
    """A tool whose nose is wider than the seat cannot cut it."""
    seat = Countersink(diameter=10, hole_diameter=5, included_angle=90)
    with pytest.raises(SeatworkError, match="nose diameter must be smaller"):
        seat.travel_from_face(10)


def test_an_angle_no_cutter_has_is_refused() -> None:
    """Sizes that would make a needle or a flat are refused as an angle."""
    with pytest.raises(SeatworkError, match="included angle must lie between"):
        included_angle(diameter=10, hole_diameter=9.999999, depth=100)
