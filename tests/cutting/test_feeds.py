"""Feeds per tooth, turn and minute, and time in cut."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import cutting
from seatwork.errors import SeatworkError


@pytest.mark.outside("closed form", "cutting.feed_per_tooth")
@given(feed=st.floats(1e-3, 1), flutes=st.integers(1, 12), speed=st.floats(1, 5000))
def test_tooth_turn_and_minute_agree(feed: float, flutes: int, speed: float) -> None:
    """A minute holds as many tooth feeds as lips pass in it."""
    turn = feed * flutes
    assert cutting.feed_per_tooth(feed=turn, flutes=flutes) == pytest.approx(feed)
    minute = cutting.feed_rate(spindle_speed=speed, feed=turn)
    assert minute == pytest.approx(feed * flutes * speed)


@pytest.mark.outside("sum worked by hand", "cutting.time_in_cut")
def test_a_dwell_adds_its_turns() -> None:
    """Three turns at the stop at 300 rev/min add 0.6 s to the 10 s of 5 mm at 0.1 mm/rev."""
    cut = {"travel": 5.0, "spindle_speed": 300.0, "feed": 0.1}
    assert cutting.time_in_cut(**cut) == pytest.approx(10.0)
    assert cutting.time_in_cut(**cut, dwell_turns=3) == pytest.approx(10.6)


@pytest.mark.parametrize("flutes", [0, -1, 2.5, float("nan")])
def test_lips_come_whole(flutes: float) -> None:
    """No cutter has no lip, or half a lip."""
    with pytest.raises(SeatworkError, match="whole number of flutes"):
        cutting.feed_per_tooth(feed=0.1, flutes=flutes)


@pytest.mark.parametrize("name", ["travel", "spindle_speed", "feed"])
def test_no_time_without_motion(name: str) -> None:
    """A cut that does not turn, feed or travel is refused."""
    cut = {"travel": 5.0, "spindle_speed": 300.0, "feed": 0.1}
    with pytest.raises(SeatworkError, match=r"must be (a number )?above zero"):
        cutting.time_in_cut(**{**cut, name: 0.0})
