"""One seat for a box of screws: where it exists, and that it is said where it does not."""

from random import Random

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head, fit
from seatwork.seats.box_of_screws import corner_heads, diameter_for, seats_for
from seatwork.seats.head_gaging import sharp_from_protrusion
from seatwork.seats.touching_off import Limits

INCH = 25.4
QUICK = settings(max_examples=80, deadline=None)
ON = {"hole_diameter": 0.266 * INCH, "included_angle": 82.0}


def gaged(protrusion: float) -> Head:
    """Make the 82° head that stands `protrusion` [in] above a .424 gage."""
    sharp = sharp_from_protrusion(protrusion * INCH, 0.424 * INCH, 82)
    return Head(sharp_diameter=sharp, included_angle=82)


@QUICK
@given(seed=st.integers(0, 10**6), amount=st.floats(-2, 0.5))
def test_the_diameter_for_an_amount_gives_that_amount(seed: int, amount: float) -> None:
    """A head set in the seat found for an amount stands at that amount."""
    rng = Random(seed)
    hole = rng.uniform(2, 20)
    sharp = hole * rng.uniform(1.5, 3)
    edge = rng.uniform(hole * 1.05, sharp) if rng.random() < 0.5 else None
    head = Head(sharp_diameter=sharp, included_angle=rng.uniform(60, 120), edge_diameter=edge)
    angle = rng.uniform(60, 120)
    barely = Countersink(diameter=hole * 1.0001, hole_diameter=hole, included_angle=angle)
    assume(amount < fit(head, barely).amount)
    diameter = diameter_for(head, amount=amount, hole_diameter=hole, included_angle=angle)
    seat = Countersink(diameter=diameter, hole_diameter=hole, included_angle=angle)
    assert fit(head, seat).amount == pytest.approx(amount, abs=1e-9)


def test_ten_screws_that_gage_029_to_050_share_no_seat() -> None:
    """Ten 1/4 heads that gage .029 to .050 lie .021 apart in one seat; .015 is allowed (worked)."""
    heads = [gaged(0.029 + step * 0.021 / 9) for step in range(10)]
    found = seats_for(heads, **ON, below=0.015 * INCH)
    assert not found.exists
    assert found.diameter is None
    assert found.spread / INCH == pytest.approx(0.021, abs=1e-6)
    assert (found.highest_head, found.lowest_head) == (heads[-1], heads[0])
    said = found.explain()
    assert "No one seat fits every screw" in said
    assert "Try the screws" in said


def test_two_screws_within_the_rule_share_seats_and_the_ends_are_exact() -> None:
    """Heads .010 apart leave a range: high one flush at one end, low one at the limit below."""
    heads = [gaged(0.040), gaged(0.050)]
    found = seats_for(heads, **ON, below=0.015 * INCH)
    assert found.exists
    least = Countersink(diameter=found.least, **ON)
    greatest = Countersink(diameter=found.greatest, **ON)
    assert fit(found.highest_head, least).amount == pytest.approx(0, abs=1e-9)
    assert fit(found.lowest_head, greatest).amount == pytest.approx(-0.015 * INCH, abs=1e-9)
    assert "keep every head flush" in found.explain()


def test_largest_seat_for_the_least_head() -> None:
    """The largest seat for a matched head is Dh + 2 T times the allowance (worked)."""
    head = Head(sharp_diameter=0.507 * INCH, included_angle=82)
    found = seats_for([head], **ON, below=0.015 * INCH)
    assert found.least / INCH == pytest.approx(0.507, abs=1e-9)
    assert found.greatest / INCH == pytest.approx(0.507 + 1.7386 * 0.015, abs=1e-5)


def test_every_seat_of_the_range_keeps_every_head_and_none_outside_does() -> None:
    """Inside the range all random heads are flush to the limit below; just outside one is not."""
    rng = Random(3)
    for _ in range(100):
        heads = [
            Head(sharp_diameter=sharp, included_angle=rng.uniform(80, 82),
                 edge_diameter=sharp - rng.uniform(0, 0.8))
            for sharp in (12.6 + rng.uniform(0, 0.3) for _ in range(8))
        ]  # fmt: skip
        found = seats_for(heads, hole_diameter=6.75, included_angle=82, below=0.5)
        assert found.exists
        for part in (0.0, 0.3, 1.0):
            width = found.least + part * (found.greatest - found.least)
            seat = Countersink(diameter=width, hole_diameter=6.75, included_angle=82)
            amounts = [fit(head, seat).amount for head in heads]
            assert min(amounts) >= -0.5 - 1e-9
            assert max(amounts) <= 1e-9
        for width in (found.least - 1e-3, found.greatest + 1e-3):
            seat = Countersink(diameter=width, hole_diameter=6.75, included_angle=82)
            amounts = [fit(head, seat).amount for head in heads]
            assert max(amounts) > 0 or min(amounts) < -0.5


def test_the_corners_of_the_limits_hold_the_worst_heads() -> None:
    """No head drawn from inside the limits stands higher or lies lower than the corner heads."""
    rng = Random(4)
    sharps, edges = Limits(least=12.05, greatest=12.88), Limits(least=11.4, greatest=11.9)
    corners = corner_heads(sharp_diameter=sharps, included_angle=(80, 82), edge_diameter=edges)
    assert len(corners) == 8
    seat = Countersink(diameter=12.9, hole_diameter=6.75, included_angle=82)
    ends = [fit(head, seat).amount for head in corners]
    for _ in range(500):
        head = Head(
            sharp_diameter=rng.uniform(sharps.least, sharps.greatest),
            included_angle=rng.uniform(80, 82),
            edge_diameter=rng.uniform(edges.least, edges.greatest),
        )
        assert min(ends) - 1e-12 <= fit(head, seat).amount <= max(ends) + 1e-12


def test_corners_that_make_no_head_are_left_out() -> None:
    """An edge wider than the sharp diameter is no head, and is not offered as one."""
    corners = corner_heads(
        sharp_diameter=Limits(least=10, greatest=12),
        included_angle=(80, 82),
        edge_diameter=Limits(least=9, greatest=11),
    )
    assert len(corners) == 6


def test_no_countersink_holds_a_head_above_its_bare_hole() -> None:
    """A head stands highest on the bare hole edge; more than that is refused."""
    head = Head(sharp_diameter=12, included_angle=90)
    with pytest.raises(SeatworkError, match="no countersink holds the head as high"):
        diameter_for(head, amount=3.01, hole_diameter=6, included_angle=90)
    assert diameter_for(head, amount=2.99, hole_diameter=6, included_angle=90) > 6


def test_the_sharp_diameter_is_never_taken_under_the_least_edge() -> None:
    """Limits whose least edge is above the least sharp diameter still hold the lowest head."""
    corners = corner_heads(
        sharp_diameter=Limits(least=10, greatest=12),
        included_angle=(82, 82),
        edge_diameter=Limits(least=11, greatest=11.5),
    )
    seat = Countersink(diameter=12, hole_diameter=6, included_angle=82)
    lowest = fit(Head(sharp_diameter=11, included_angle=82, edge_diameter=11), seat).amount
    assert min(fit(head, seat).amount for head in corners) == lowest


def test_an_empty_box_and_a_head_that_drops_through_are_refused() -> None:
    """No head at all, or one smaller than the hole, gets a sentence."""
    with pytest.raises(SeatworkError, match="no head to seat"):
        seats_for([], **ON, below=0.4)
    with pytest.raises(SeatworkError, match="must be smaller"):
        seats_for([Head(sharp_diameter=5, included_angle=82)], **ON, below=0.4)
