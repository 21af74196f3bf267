"""Steps of machines: next down, never above a cap."""

from math import nan

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import cutting
from seatwork.errors import SeatworkError

SPEED = st.floats(1, 10000)
STEPS = st.lists(SPEED, min_size=1, max_size=12)
CAPS = st.dictionaries(st.sampled_from(["cap", "machine"]), SPEED)


@pytest.mark.slow
@given(wanted=SPEED, steps=STEPS, caps=CAPS)
def test_no_step_is_above_the_wanted_speed_or_a_cap(wanted, steps, caps) -> None:
    """Whatever the machine, the step set is at most wanted and at most every cap."""
    step = cutting.pick_step(spindle_speed=wanted, steps=steps, caps=caps)
    bound = min([wanted, *caps.values()]) * (1 + 1e-8)
    if step.spindle_speed is None:
        assert step.too_fast
        assert min(steps) > bound * (1 - 1e-7)
    else:
        assert step.spindle_speed <= bound
        assert not [other for other in steps if step.spindle_speed < other <= bound * (1 - 1e-7)]


@pytest.mark.outside("sum worked by hand", "cutting.pick_step")
def test_the_next_step_down_and_not_the_nearest() -> None:
    """500 wanted between 410 and 550 is 410, though 550 is nearer (a slip learners make)."""
    step = cutting.pick_step(spindle_speed=500, steps=(250, 410, 550, 875))
    assert (step.spindle_speed, step.next_up, step.limited_by) == (410, 550, None)


def test_a_step_equal_to_the_wanted_speed_is_taken() -> None:
    """The last digit of a sum does not push a step away."""
    step = cutting.pick_step(spindle_speed=409.99999999999994, steps=(250, 410))
    assert step.spindle_speed == 410


def test_the_lowest_cap_rules_and_is_named() -> None:
    """Of two caps the lower one holds, and the reader sees its name."""
    caps = {"house rule": 300.0, "machine plate": 280.0}
    step = cutting.pick_step(spindle_speed=900, steps=(250, 290, 800), caps=caps)
    assert (step.spindle_speed, step.limited_by) == (250, "machine plate")


def test_a_machine_too_fast_says_what_to_do_instead() -> None:
    """A slowest speed over what is allowed sets nothing, and gives other ways."""
    step = cutting.pick_step(spindle_speed=400, steps=(620, 1100), caps={"countersink cap": 300})
    assert step.spindle_speed is None
    assert step.too_fast
    assert "The slowest speed, 620 rev/min, is above 300" in step.advice
    assert "back gear" in step.advice


def test_a_machine_without_steps_takes_the_speed_itself() -> None:
    """A variable drive runs what is wanted, within its range and its cap."""
    drive = cutting.SpeedRange(slowest=60, fastest=4200)
    wanted = {200.0: 200.0, 9000.0: 4200.0}
    for speed, set_ in wanted.items():
        assert cutting.pick_step(spindle_speed=speed, steps=drive).spindle_speed == set_
    capped = cutting.pick_step(spindle_speed=900, steps=drive, caps={"cap": 300})
    assert capped.spindle_speed == 300
    assert cutting.pick_step(spindle_speed=50, steps=drive).too_fast


@pytest.mark.outside("sum worked by hand", "cutting.pulley_steps")
def test_pulleys_give_the_ratio_of_their_diameters() -> None:
    """Equal pulleys run the spindle at motor speed, 1 to 3 at a third of it."""
    found = cutting.pulley_steps(
        motor_speed=1725, motor_pulleys=(100, 50), spindle_pulleys=(100, 150)
    )
    assert found == pytest.approx((575, 1725))


@pytest.mark.outside("sum worked by hand", "cutting.geared_steps")
def test_back_gear_adds_the_slow_steps() -> None:
    """A back gear of 1 to 8 doubles the number of speeds."""
    assert cutting.geared_steps(steps=(800, 1600), ratio=1 / 8) == (100, 200, 800, 1600)


@pytest.mark.parametrize(
    "steps", [(), (250, 0), (250, nan), (-1,)], ids=["none", "zero", "no number", "negative"]
)
def test_bad_steps_are_refused(steps) -> None:
    """A machine without speeds, or with one not above zero, is refused."""
    with pytest.raises(SeatworkError):
        cutting.pick_step(spindle_speed=300, steps=steps)


def test_unpaired_pulleys_are_refused() -> None:
    """A belt position needs two pulleys."""
    with pytest.raises(SeatworkError, match="2 and 1 pulleys"):
        cutting.pulley_steps(motor_speed=1725, motor_pulleys=(1, 2), spindle_pulleys=(1,))


def test_a_range_written_backwards_is_refused() -> None:
    """A variable drive lists its slowest speed first."""
    with pytest.raises(SeatworkError, match="slowest speed first"):
        cutting.SpeedRange(slowest=300, fastest=200)


def test_a_step_a_hair_over_is_taken_where_no_cap_forbids_it() -> None:
    """407 of 410 is .7 %: with 2 % let pass the step is taken, with a cap of 408 it is not."""
    over = {"steps": (250.0, 410.0), "may_be_over": 0.02}
    step = cutting.pick_step(spindle_speed=407.0, **over)
    assert step.spindle_speed == 410.0
    assert "the step is 0.7 % over" in step.advice
    assert cutting.pick_step(spindle_speed=400.0, **over).spindle_speed == 250.0
    held = cutting.pick_step(spindle_speed=407.0, caps={"a cap": 408.0}, **over)
    assert held.spindle_speed == 250.0


def test_the_nearest_step_stays_below_a_cap() -> None:
    """By hand: 540 lies nearer to 550 than to 410, but a cap of 545 forbids it."""
    steps = (410.0, 550.0, 800.0)
    free = cutting.pick_step(spindle_speed=540.0, steps=steps, nearest=True)
    assert (free.spindle_speed, free.next_up) == (550.0, 800.0)
    held = cutting.pick_step(spindle_speed=540.0, steps=steps, caps={"a cap": 545.0}, nearest=True)
    assert held.spindle_speed == 410.0
