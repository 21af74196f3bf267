"""The triangle of a cone against hand-worked and published values."""

from math import inf

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats import Triangle
from seatwork.seats.triangles import SLIPS

INCH = 25.4


def test_the_head_of_iso_10642_is_as_deep_as_its_table_says():
    """An M6 head, sharp diameter 13.44 over a 6.6 hole at 90°: 3.42 down (ISO 10642, k by size)."""
    found = Triangle(wide=13.44, narrow=6.6, included_angle=90)
    assert found.across == pytest.approx(3.42)
    assert found.down == pytest.approx(3.42)


@pytest.mark.outside(
    "sum worked by hand",
    "seats.Triangle.down",
    "seats.Triangle.across",
    "seats.Triangle.difference",
    "seats.Triangle.half_angle",
)
def test_the_frame_seat_is_worked_by_hand():
    """.507 on .266 at 82°: .241, half of it .1205, tan 41° = .8693 of any table, so .1386."""
    found = Triangle(wide=0.507 * INCH, narrow=0.266 * INCH, included_angle=82)
    assert found.difference / INCH == pytest.approx(0.241)
    assert found.across / INCH == pytest.approx(0.1205)
    assert found.half_angle == 41.0
    assert found.down / INCH == pytest.approx(0.1386, abs=5e-5)


@pytest.mark.outside("sum worked by hand", "seats.Triangle.slipped")
@pytest.mark.parametrize(
    ("slip", "wrong"),
    [
        ("whole difference", 0.241 / 0.8693),
        ("whole angle", 0.1205 / 7.1154),
        ("to the point", 0.2535 / 0.8693),
    ],
)
def test_a_slip_is_the_same_sum_with_one_thing_left_whole(slip, wrong):
    """The slips of the frame seat, by the tangents of 41° and 82° of any table."""
    found = Triangle(wide=0.507 * INCH, narrow=0.266 * INCH, included_angle=82)
    assert found.slipped(slip) / INCH == pytest.approx(wrong, abs=5e-5)


@pytest.mark.parametrize("angle", [90, 100, 120])
def test_from_90_degrees_on_the_whole_angle_gives_no_number(angle):
    """The tangent of 90° has no end, and beyond it is below zero: no depth comes of it."""
    assert Triangle(wide=12, narrow=6, included_angle=angle).slipped("whole angle") is None


def test_a_slip_of_no_known_name_is_asked_about():
    """A slip that nobody knows gets the names to choose from."""
    with pytest.raises(SeatworkError, match=f"take one of {SLIPS[0]}"):
        Triangle(wide=12, narrow=6, included_angle=82).slipped("half")


@pytest.mark.parametrize(
    ("wide", "narrow", "angle"), [(6, 6, 82), (6, 8, 82), (6, 3, 0), (inf, 3, 82), (6, -1, 82)]
)
def test_what_makes_no_triangle_is_refused(wide, narrow, angle):
    """Equal or swapped diameters, no angle, no number, less than nothing."""
    with pytest.raises(SeatworkError):
        Triangle(wide=wide, narrow=narrow, included_angle=angle)
