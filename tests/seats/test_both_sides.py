"""Two seats on one hole, and the points of drills: plane geometry, worked by hand."""

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats.blind_holes import BlindHole, point_length
from seatwork.seats.both_sides import BothSides
from seatwork.seats.cones import Countersink
from seatwork.seats.counterbores import Counterbore

IN = 25.4
SEAT = Countersink(diameter=0.507 * IN, hole_diameter=0.266 * IN, included_angle=82)


@pytest.mark.parametrize(("thickness", "land"), [(0.5, 0.223), (0.375, 0.098), (0.25, -0.027)])
def test_the_land_is_what_both_seats_leave(thickness, land) -> None:
    """The land is t - Z1 - Z2, Z = (.507 - .266)/(2 x .86929) = .1386 each."""
    found = BothSides(first=SEAT, second=SEAT, thickness=thickness * IN)
    assert found.land / IN == pytest.approx(land, abs=5e-4)
    assert found.meet is (land < 0)


def test_two_cones_that_meet_leave_a_throat() -> None:
    """.507 - .250 x .86929 = .2897, wider than the hole of .266."""
    found = BothSides(first=SEAT, second=SEAT, thickness=0.25 * IN)
    assert found.throat / IN == pytest.approx(0.2897, abs=5e-5)


def test_unequal_cones_meet_nearer_the_smaller_one() -> None:
    """At 90°, 12 and 8 wide in 3 mm: z = (12 - 8 + 2 x 3)/4 = 2.5, the throat 12 - 5 = 7."""
    first = Countersink(diameter=12, hole_diameter=5, included_angle=90)
    second = Countersink(diameter=8, hole_diameter=5, included_angle=90)
    assert BothSides(first=first, second=second, thickness=3).throat == pytest.approx(7)
    assert BothSides(first=second, second=first, thickness=3).throat == pytest.approx(7)


def test_no_throat_is_told_where_there_is_none() -> None:
    """A land, a counterbore, or a cone inside the other: no throat."""
    bore = Counterbore(diameter=12, depth=4, hole_diameter=6)
    small = Countersink(diameter=7, hole_diameter=5, included_angle=90)
    large = Countersink(diameter=20, hole_diameter=5, included_angle=90)
    assert BothSides(first=SEAT, second=SEAT, thickness=20).throat is None
    assert BothSides(first=bore, second=bore, thickness=7).throat is None
    assert BothSides(first=small, second=large, thickness=2).throat is None


@pytest.mark.parametrize(
    ("angle", "length"), [(118, 0.3004), (120, 0.2887), (135, 0.2071), (90, 0.5)]
)
def test_the_point_of_a_drill_goes_deeper_than_its_full_diameter(angle, length) -> None:
    """The point is d/(2 tan(P/2)) long: geometry."""
    assert point_length(diameter=1.0, point_angle=angle) == pytest.approx(length, abs=5e-5)


def test_the_point_is_what_breaks_out() -> None:
    """F (.257) .56 deep: .0772 of point, .637 in all; 5/8 breaks by .012, 3/4 keeps .113."""
    hole = BlindHole(diameter=0.257 * IN, depth=0.56 * IN, point_angle=118)
    assert hole.tip_depth / IN == pytest.approx(0.6372, abs=5e-5)
    assert 0.625 - hole.tip_depth / IN == pytest.approx(-0.0122, abs=5e-5)
    assert 0.75 - hole.tip_depth / IN == pytest.approx(0.1128, abs=5e-5)


def test_a_depth_to_the_point_is_less_at_full_diameter() -> None:
    """17/32 X 1.75 TO POINT: 1.75 - .1596 = 1.590."""
    hole = BlindHole.to_point(depth=1.75 * IN, diameter=17 / 32 * IN, point_angle=118)
    assert hole.depth / IN == pytest.approx(1.5904, abs=5e-5)
    with pytest.raises(SeatworkError, match="point"):
        BlindHole.to_point(depth=1, diameter=10, point_angle=118)
