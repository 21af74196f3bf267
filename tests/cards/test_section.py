"""The section on a card: every seat of a hole, as the part lies in the setup."""

from collections.abc import Callable

import numpy as np
import pytest
from seatwork.cards import job_card
from seatwork.cards.section import section_of
from seatwork.plan import Plan

INCH = 25.4
BOTH = "2X ⌀.266 THRU ⌵ ⌀.507 X 82° BOTH SIDES"
MIXED = "2X ⌀.266 THRU, CSK .507 X 82° NEAR SIDE, C'BORE .438 X .125 DEEP FAR SIDE"


def radius(wall: np.ndarray, depth: float) -> float:
    """Give how wide a wall is at a depth [in]."""
    return float(np.interp(depth * INCH, -wall[:, 1], wall[:, 0])) / INCH


def test_both_sides_stand_in_one_section(plan_of: Callable[..., Plan]) -> None:
    """Cones .1386 deep at both faces of 3/8 in leave .098 (geometry, worked by hand).

    Depth (.507 - .266) / (2 tan 41°) = .1386; .375 - 2 x .1386 = .0977.
    """
    shown = section_of(plan_of(BOTH, thickness=0.375 * INCH), 0)
    assert shown.thickness == pytest.approx(0.375 * INCH)
    for depth, wide in ((0.0, 0.507), (0.1386, 0.266), (0.375 - 0.1386, 0.266), (0.375, 0.507)):
        assert 2 * radius(shown.wall, depth) == pytest.approx(wide, abs=2e-4)
    assert (shown.upper.depth / INCH, shown.lower.depth / INCH) == pytest.approx(
        (0.1386,) * 2, abs=5e-5
    )


def test_seats_that_meet_are_drawn_meeting(plan_of: Callable[..., Plan]) -> None:
    """In 1/4 in they meet in a throat of D - t tan 41° = .507 - .250 x .8693 = .2897."""
    shown = section_of(plan_of(BOTH, thickness=0.25 * INCH), 0)
    assert 2 * shown.wall[:, 0].min() / INCH == pytest.approx(0.2897, abs=1e-4)
    assert 2 * radius(shown.wall, 0.125) == pytest.approx(0.2897, abs=1e-4)


def test_the_part_is_drawn_as_it_lies(plan_of: Callable[..., Plan]) -> None:
    """With the near face up the cone is above; turned over, the counterbore."""
    plan = plan_of(MIXED, thickness=12.7)
    near, far = (section_of(plan, 0, turned=turned) for turned in (False, True))
    assert (near.upper.angle, near.lower.angle) == (82.0, None)
    assert (far.upper.angle, far.lower.angle) == (None, 82.0)
    assert near.upper == far.lower


def test_an_unknown_thickness_is_told_on_the_drawing(plan_of: Callable[..., Plan]) -> None:
    """Where nobody gave the thickness the section says that it shows none."""
    assert "thickness as it comes" in str(job_card(plan_of(BOTH)))
    assert "thickness as it comes" not in str(job_card(plan_of(BOTH, thickness=12.7)))


def test_two_near_and_two_far_are_two_holes(plan_of: Callable[..., Plan]) -> None:
    """2 NS & 2 FS on four holes leave no hole with a seat on both sides."""
    plan = plan_of("4X ⌀.266 THRU, CSK .507 X 82°, 2 NS & 2 FS", thickness=12.7)
    assert [seat.spot for seat in plan.seats] == [0, 1]
    assert section_of(plan, 0).lower is None


def test_a_tapped_hole_shows_its_counterbore_thread_and_point(
    plan_of: Callable[..., Plan],
) -> None:
    """3/8-16 under ⌴ .625 ↧ .12: major .375, thread to .75 from the face, point at the end."""
    plan = plan_of("2X 3/8-16 UNC-2B ↧ .75, ⌴ ⌀.625 ↧ .12", thickness=38.1)
    shown = section_of(plan, 0)
    assert shown.blind
    assert shown.wall[-1, 0] == 0.0
    assert 2 * radius(shown.wall, 0.06) == pytest.approx(0.625)
    major, start, end = (size / INCH for size in shown.thread)
    assert (major, end) == pytest.approx((0.375, 0.75))
    assert 0.12 < start < 0.17


def test_an_open_hole_has_no_other_face(plan_of: Callable[..., Plan]) -> None:
    """A seat on one side of a through hole is drawn to a break."""
    shown = section_of(plan_of("4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD", thickness=6.35), 0)
    assert (shown.thickness, shown.lower, shown.blind) == (None, None, False)


def test_an_edge_alone_has_no_section(plan_of: Callable[..., Plan]) -> None:
    """Without a hole there is nothing to cut through."""
    assert section_of(plan_of("BREAK ALL SHARP EDGES .005-.015"), 0) is None
