"""Chamfers and edge breaks on straight edges and at holes."""

from math import sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats import Chamfer, Countersink
from seatwork.seats.chamfers import thread_chamfer

INCH = 25.4
QUICK = settings(max_examples=80, deadline=None)


@pytest.mark.outside("closed form", "seats.Chamfer.depth", "seats.Chamfer.slant_width")
def test_a_45_degree_chamfer_has_equal_legs() -> None:
    """A 90° tool cuts as deep as it cuts wide, and the bevel is the diagonal of that square."""
    chamfer = Chamfer(leg=1.5)
    assert chamfer.depth == pytest.approx(1.5, rel=1e-12)
    assert chamfer.slant_width == pytest.approx(1.5 * sqrt(2), rel=1e-12)


@pytest.mark.outside("sum worked by hand", "seats.Chamfer.from_depth", "seats.Chamfer.diameter_at")
def test_the_82_degree_tool_does_not_cut_a_45_degree_note() -> None:
    """.03 X 45° on ⌀.266, cut with the 82° tool .03 deep: ⌀.318, not .326; leg .026 (worked)."""
    cut = Chamfer.from_depth(depth=0.03 * INCH, included_angle=82)
    assert cut.diameter_at(0.266 * INCH) / INCH == pytest.approx(0.318, abs=5e-4)
    assert cut.leg / INCH == pytest.approx(0.026, abs=5e-4)
    noted = Chamfer(leg=0.03 * INCH)
    assert noted.diameter_at(0.266 * INCH) / INCH == pytest.approx(0.326, abs=1e-9)


def test_an_edge_break_opens_a_hole_by_twice_itself() -> None:
    """BREAK EDGES .005-.015: the diameter at a hole grows .010 to .030 (worked)."""
    for leg, grown in ((0.005, 0.010), (0.015, 0.030)):
        assert Chamfer(leg=leg * INCH).diameter_at(INCH) / INCH - 1 == pytest.approx(grown)


def test_the_chamfer_of_a_three_eighths_thread() -> None:
    """3/8-16 on a 5/16 hole, chamfer .406 X 90°: .0468 deep (worked)."""
    seat = thread_chamfer(
        major_diameter=0.375 * INCH, hole_diameter=0.3125 * INCH, over_major=0.0311 * INCH
    )
    assert seat.diameter / INCH == pytest.approx(0.406, abs=5e-4)
    assert seat.depth / INCH == pytest.approx(0.0468, abs=5e-5)


def test_an_m8_thread_chamfer_noted_on_a_print() -> None:
    """M8 on ⌀6.8 with ⌀8.4 X 90° is .8 mm deep (worked)."""
    seat = thread_chamfer(major_diameter=8, hole_diameter=6.8, over_major=0.4)
    assert seat.depth == pytest.approx(0.8)


@QUICK
@given(leg=st.floats(0.01, 20), angle=st.floats(20, 160), hole=st.floats(0.5, 100))
def test_a_chamfer_at_a_hole_is_a_countersink(leg: float, angle: float, hole: float) -> None:
    """Depth, slant width and diameter agree with the same cone written as a countersink."""
    chamfer = Chamfer(leg=leg, included_angle=angle)
    cone = chamfer.at_hole(hole)
    assert cone.depth == pytest.approx(chamfer.depth, rel=1e-9)
    assert cone.slant_width == pytest.approx(chamfer.slant_width, rel=1e-9)
    again = Chamfer.from_depth(depth=chamfer.depth, included_angle=angle)
    assert again.leg == pytest.approx(leg, rel=1e-12)
    assert chamfer.slant_width == pytest.approx(sqrt(leg**2 + chamfer.depth**2), rel=1e-12)


def test_a_spot_drill_that_goes_first() -> None:
    """⌀.266 with a chamfer to ⌀.306, spotted first: .153 deep at 90°, .088 at 120° (worked)."""
    for angle, deep in ((90, 0.153), (120, 0.088)):
        seat = Countersink(diameter=0.306, hole_diameter=0.266, included_angle=angle)
        assert seat.apex_depth == pytest.approx(deep, abs=5e-4)


def test_no_leg_is_no_chamfer() -> None:
    """A chamfer without a leg is refused."""
    with pytest.raises(SeatworkError, match="leg of the chamfer must be above zero"):
        Chamfer(leg=0)
