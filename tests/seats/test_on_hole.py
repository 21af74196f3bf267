"""Heads in seats beside a leaning hole, against plane geometry and a search in space."""

from math import acos, atan2, cos, degrees, hypot, radians, sin, tan
from random import Random

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head, fit
from seatwork.seats.heads import BEDDED
from seatwork.seats.off_center import off_center
from seatwork.seats.on_hole import lean_from_chip, on_hole

INCH = 25.4
T = tan(radians(41))
SEAT = Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=82)
HEAD = Head(sharp_diameter=0.507 * INCH, included_angle=82)


def test_on_its_hole_and_square_it_is_flush_all_round() -> None:
    """Nothing off: flush on both sides, touching over the whole turn, no gap."""
    found = on_hole(HEAD, SEAT, offset=0, lean=0)
    assert found.high == pytest.approx(fit(HEAD, SEAT).amount, abs=1e-12)
    assert found.low == pytest.approx(found.high, abs=1e-12)
    assert found.arc == 360
    assert found.gap == pytest.approx(0, abs=1e-9)


def test_five_thou_beside_is_six_proud_and_twelve_open_opposite() -> None:
    """Plane geometry: e / T proud, and 2 e / T open on the other side, since both slopes are T."""
    found = on_hole(HEAD, SEAT, offset=0.005 * INCH, lean=0)
    assert found.high == pytest.approx(0.005 * INCH / T, rel=1e-9)
    assert found.low == pytest.approx(found.high, rel=1e-12)
    assert found.gap == pytest.approx(2 * 0.005 * INCH / T, rel=1e-9)


def test_the_arc_is_that_of_two_circles() -> None:
    """The gap at the hole edge reaches 0.001 mm where two circles, e apart, are that far apart.

    In plan the hole edge is a circle of radius r, and the head's circle that the gap allows has
    radius q = r - e + T x 0.001 about a center e away: by the law of cosines they cross at
    cos v = (r² - q² - e²) / (2 q e).
    """
    for offset in (0.01, 0.05, 0.127, 0.4):
        r, q = SEAT.hole_diameter / 2, SEAT.hole_diameter / 2 - offset + T * BEDDED
        turn = degrees(acos((r * r - q * q - offset * offset) / (2 * q * offset)))
        assert on_hole(HEAD, SEAT, offset=offset, lean=0).arc == pytest.approx(2 * turn, abs=0.2)


def test_a_lean_runs_the_top_from_high_to_low() -> None:
    """1° over a .507 head is .507 x sin 1° = .0088 from side to side, and half of it up."""
    found = on_hole(HEAD, SEAT, offset=0, lean=1)
    assert found.high - found.low == pytest.approx(0.507 * INCH * sin(radians(1)), rel=1e-9)
    assert found.high == pytest.approx(-found.low, rel=1e-9)
    assert found.arc == 360


def turned(x: float, y: float, lean: float) -> tuple[float, float]:
    """Turn a point about the middle of the face, its top to the right."""
    away, at = hypot(x, y), atan2(y, x) - radians(lean)
    return away * cos(at), away * sin(at)


@pytest.mark.slow
def test_random_heads_stand_where_a_search_in_space_finds_them() -> None:
    """A cone let down on another one, point by point; its rim then turned with the part."""
    rng = Random(7)
    for _ in range(6):
        hole, lean, offset = rng.uniform(4, 8), rng.uniform(0, 5), rng.uniform(0.01, 0.3)
        angle = rng.choice([60, 82, 90, 100])
        seat = Countersink(diameter=2 * hole, hole_diameter=hole, included_angle=angle)
        head = Head(sharp_diameter=hole * rng.uniform(1.8, 2.1), included_angle=angle)
        slope, highest = tan(radians(angle / 2)), -1e9
        for turn in range(0, 181, 5):
            for step in range(2001):
                radius = head.edge / 2 * step / 2000
                x, y = radius * cos(radians(turn)) + offset, radius * sin(radians(turn))
                if hypot(x, y) >= hole / 2:
                    seat_down = max(seat.diameter / 2 - hypot(x, y), 0) / slope
                    highest = max(highest, (head.edge / 2 - radius) / slope - seat_down)
        found = on_hole(head, seat, offset=offset, lean=lean)
        slack = 3 * head.edge / 4000 / slope  # a step of the search, down the slope
        assert found.amount == pytest.approx(highest, abs=slack)
        sides = [turned(way * head.edge / 2, found.amount, lean)[1] for way in (-1, 1)]
        assert (found.high, found.low) == pytest.approx(sides, abs=1e-9)


def test_a_free_screw_hides_what_its_hole_lets_it() -> None:
    """With .008 of play a seat .005 beside its hole touches all round, as if it were on it."""
    hidden = on_hole(HEAD, SEAT, offset=0.005 * INCH, lean=0, play=0.008 * INCH)
    assert (hidden.arc, hidden.left_over) == (360, 0)
    assert hidden.high == pytest.approx(0, abs=1e-9)


def test_heads_of_another_angle_agree_with_the_section() -> None:
    """The amount is that of the section, and the side that touches has no gap."""
    head = Head(sharp_diameter=13, included_angle=90, edge_diameter=12)
    found = on_hole(head, SEAT, offset=0.1, lean=2)
    assert found.amount == off_center(head, SEAT, offset=0.1).amount
    assert 0 < found.arc < 360


def test_a_chip_leans_the_part() -> None:
    """A .005 chip under a 2 in part leans a .385 seat by .001 (.005 / 2 x .385 = .00096)."""
    lean = lean_from_chip(chip=0.005 * INCH, width=2 * INCH)
    assert 0.385 * sin(radians(lean)) == pytest.approx(0.00096, abs=5e-6)


@pytest.mark.parametrize("lean", [-1, 31, float("nan"), "1", None])
def test_a_lean_that_no_hole_has_is_refused(lean) -> None:
    """Beyond 0° to 30° the lean is refused in a sentence."""
    with pytest.raises(SeatworkError, match="from square"):
        on_hole(HEAD, SEAT, offset=0, lean=lean)


def test_a_chip_thicker_than_the_part_is_refused() -> None:
    """A chip as wide as the part is no chip."""
    with pytest.raises(SeatworkError, match="chip"):
        lean_from_chip(chip=60, width=50)
