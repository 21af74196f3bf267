"""Short constants and the published spread of operation speeds."""

from math import pi

import pytest
from seatwork import cutting
from seatwork.cutting.shortcuts import SPREAD
from seatwork.errors import SeatworkError


@pytest.mark.outside("closed form", "cutting.Shortcut.error")
def test_each_shortcut_tells_its_error() -> None:
    """4 is 4.7 % high, 3.82 all but exact; 320 half a percent high, 318 a tenth low."""
    errors = {name: short.error for name, short in cutting.SHORTCUTS.items()}
    assert errors == pytest.approx(
        {
            "4": 4 * pi / 12 - 1,
            "3.82": 3.82 * pi / 12 - 1,
            "318": 0.318 * pi - 1,
            "320": 0.320 * pi - 1,
        }
    )
    assert round(100 * errors["4"], 1) == 4.7
    assert round(100 * errors["320"], 1) == 0.5


def test_the_published_spread_is_shown_whole() -> None:
    """Sources give 1.0, .85, two thirds, .5, a third and a quarter of the drill speed."""
    ratios = [rule.ratio for rule in SPREAD]
    assert ratios == pytest.approx([1.0, 0.85, 2 / 3, 0.5, 1 / 3, 0.25])
    assert all(rule.source and rule.confirmed for rule in SPREAD)


@pytest.mark.outside("sum worked by hand", "cutting.operation_speed")
def test_one_third_slower_is_not_one_third_of() -> None:
    """Of 600 rev/min one third slower is 400; one third of it is 200."""
    slower = cutting.operation_speed(drill_speed=600, ratio=2 / 3)
    third = cutting.operation_speed(drill_speed=600, ratio=1 / 3)
    assert (slower, third) == pytest.approx((400, 200))


def test_a_cap_is_never_exceeded() -> None:
    """A cap holds only where the ratio gives more."""
    assert cutting.operation_speed(drill_speed=800, ratio=0.5, cap=300) == 300
    assert cutting.operation_speed(drill_speed=500, ratio=0.5, cap=300) == 250


@pytest.mark.parametrize("ratio", [0, -0.5, 1.5, float("nan")])
def test_no_operation_turns_faster_than_the_drill(ratio: float) -> None:
    """A ratio above 1, or not above 0, is refused."""
    with pytest.raises(SeatworkError, match="one third slower"):
        cutting.operation_speed(drill_speed=600, ratio=ratio)
