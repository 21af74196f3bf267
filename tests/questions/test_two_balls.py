"""Two balls are stated as they are: rounding them to a thousandth turns 100° into 98.2°."""

from math import asin, degrees
from random import Random

import pytest
from seatwork.questions import all_types, judge_all

INCH = 25.4
KIND = all_types()["two-balls"]
DRAWN = {"small": 15 / 32, "large": 17 / 32, "small_top": 0.3788, "large_top": 0.4508}


def asked(kind):
    """Return the question with balls of 15/32 and 17/32 in as its form states them."""
    sizes = {name: size * INCH for name, size in DRAWN.items()}
    return kind(system="inch", **sizes).stated_in("inch")


def by_hand(small, large):
    """Work out twice the angle whose sine is radii over centers apart."""
    radii = (large - small) / 2
    return 2 * degrees(asin(radii / (DRAWN["large_top"] - DRAWN["small_top"] - radii)))


def test_the_balls_of_the_drawer_are_stated_exactly() -> None:
    """15/32 is .46875 and 17/32 is .53125; they give 100.1°, and 100° is right, 98.2° is not."""
    question = asked(KIND)
    assert "0.46875 in and 0.53125 in" in question.text()
    assert question.value() == pytest.approx(by_hand(15 / 32, 17 / 32), abs=1e-6)
    assert judge_all(question, ["100°"])[0].is_right
    assert not judge_all(question, ["98.2°"])[0].is_right


def test_a_paper_handed_out_before_keeps_its_balls() -> None:
    """Version 1 rounded them to .469 and .531, which makes 98.2° of the same heights."""
    question = asked(KIND.earlier[1])
    assert by_hand(0.469, 0.531) == pytest.approx(98.2, abs=0.05)
    assert judge_all(question, ["98.2°"])[0].is_right


@pytest.mark.parametrize("seed", range(20))
def test_what_is_drawn_gives_a_seat_that_is_cut(seed) -> None:
    """The angle of a form is that of lathe centers, inch or metric heads (common practice)."""
    drawn = KIND.draw(Random(seed))
    for system in ("inch", "metric"):
        value = drawn.stated_in(system).value()
        assert min(abs(value - angle) for angle in (60, 82, 90)) <= 0.25


def test_no_angle_is_the_answer_of_every_form() -> None:
    """A learner who has heard the neighbor's answer has not heard their own."""
    values = [KIND.draw(Random(seed)).value() for seed in range(60)]
    for angle in (60, 82, 90):
        assert 10 <= sum(abs(value - angle) <= 0.25 for value in values) <= 40
