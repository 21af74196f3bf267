"""What is drawn to scale has that size on the paper, and the bars measure what they say."""

import re
from collections.abc import Callable

import numpy as np
import pytest
from matplotlib.lines import Line2D
from matplotlib.patches import Circle, Rectangle
from seatwork.cards import Pages, coupons, job_card, profile
from seatwork.cards.section import Face, Shown
from seatwork.cards.to_scale import Place, pick_scale
from seatwork.drawings.strokes.profiles import countersink_wall
from seatwork.drawings.strokes.scales import SCALES
from seatwork.errors import SeatworkError
from seatwork.plan import Plan
from seatwork.seats import Countersink

NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
MM = 100 / 25.4  # page units, 1/100 in, in a millimeter


def shown(seat: Countersink) -> Shown:
    """Give the section of a countersink alone."""
    wall = countersink_wall(seat, -2 * seat.depth)
    face = Face(diameter=seat.diameter, depth=seat.depth, angle=seat.included_angle)
    return Shown(wall=wall, hole_diameter=seat.hole_diameter, upper=face)


def lines(pages: Pages, page: int = 0) -> list[np.ndarray]:
    """Give the points of every line of a page [page units]."""
    found = [one for one in pages.figures[page].axes[0].get_children() if isinstance(one, Line2D)]
    return [np.column_stack([one.get_xdata(), one.get_ydata()]).astype(float) for one in found]


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_both_bars_of_the_profile_measure_50_mm(paper: str, plan_of: Callable[..., Plan]) -> None:
    """One bar across and one down are 50 mm long on the paper."""
    spans = [
        np.ptp(line, axis=0) / MM
        for line in lines(profile.seat_profile(plan_of(NOTE), paper=paper))
    ]
    assert any(np.allclose(span, (50.0, 0.0)) for span in spans)
    assert any(np.allclose(span, (0.0, 50.0)) for span in spans)


def test_the_profile_is_full_size(plan_of: Callable[..., Plan]) -> None:
    """The mouth of the #10 seat is .385 in wide at 1:1 and ten times that at 10:1."""
    found = set()
    for line in lines(profile.seat_profile(plan_of(NOTE))):
        breaks = np.flatnonzero(np.isnan(line[:, 0]))
        if len(line) == 11 and len(breaks) == 1:  # rim, wall; then the other side
            found.add(round(abs(line[1, 0] - line[7, 0]) / 100, 3))
    assert found == {0.385, 3.85}


def test_the_scale_bar_is_as_long_as_it_says(plan_of: Callable[..., Plan]) -> None:
    """Length of the bar on paper, divided by the scale beside it, is the length written."""
    pages = job_card(plan_of(NOTE))
    drawn = " ".join(word for word in pages.words[0] if word.startswith("[drawing"))
    length, scale = re.search(r"([\d.]+) in, scale (\d+):1", drawn).groups()
    boxes = pages.figures[0].axes[0].get_children()
    halves = [one for one in boxes if isinstance(one, Rectangle) and one.get_height() == 9.0]
    assert len(halves) == 2
    on_paper = sum(half.get_width() for half in halves) / 100
    assert on_paper == pytest.approx(float(length) * float(scale))


@pytest.mark.slow
def test_the_coupon_bar_is_full_size() -> None:
    """Two seats on the bar are drawn .507 in wide, two 13.44 mm, at 1:1."""
    axes = coupons.coupon_set().figures[0].axes[0]
    circles = [one for one in axes.get_children() if isinstance(one, Circle)]
    wide = sorted(round(2 * one.radius / MM, 2) for one in circles)
    assert wide[4:] == [12.88, 12.88, 13.44, 13.44]


@pytest.mark.parametrize("diameter", [3.0, 9.8, 25.0, 60.0, 200.0])
def test_the_scale_is_a_standard_one_and_the_largest_that_fits(diameter: float) -> None:
    """The scale picked fits its place, and the next larger of ISO 5455 does not."""
    seat = Countersink(diameter=diameter, hole_diameter=diameter / 2, included_angle=82)
    place = Place(left=0.0, top=300.0, wide=370.0, high=230.0)
    scale = pick_scale(shown(seat), place)
    assert scale in SCALES
    larger = [one for one in SCALES if one > scale]
    inches = seat.diameter / 25.4, seat.depth / 25.4
    assert inches[0] * scale < 3.7
    assert inches[1] * scale < 2.3
    assert not larger or inches[0] * larger[-1] > 1.7 or inches[1] * larger[-1] > 0.6


def test_a_seat_too_large_for_the_card_is_told() -> None:
    """A seat that no standard scale fits gets one sentence, and no picture of something else."""
    seat = Countersink(diameter=2000.0, hole_diameter=20.0, included_angle=90)
    with pytest.raises(SeatworkError, match="too large for the drawing"):
        pick_scale(shown(seat), Place(left=0.0, top=300.0, wide=370.0, high=230.0))
