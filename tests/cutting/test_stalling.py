"""The stall warning errs high, and says by what."""

from math import pi

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import cutting
from seatwork.errors import SeatworkError

CUT = {"plain_torque": 5.0, "motor_power": 250.0, "spindle_speed": 250.0}


@given(thickness=st.floats(0.001, 3), wear=st.floats(1, 3))
def test_it_never_errs_low(thickness: float, wear: float) -> None:
    """The torque to reckon with is never under the plain one."""
    found = cutting.stall(chip_thickness=thickness, wear_factor=wear, **CUT)
    assert found.torque >= found.plain_torque * wear
    assert found.torque == pytest.approx(found.plain_torque * found.size_factor * found.wear_factor)


@pytest.mark.outside("sum worked by hand", "cutting.stall")
def test_the_torque_there_is() -> None:
    """250 W through a drive of 80 % at 250 rev/min is 200/(2 pi 250/60) = 7.64 N m."""
    found = cutting.stall(chip_thickness=0.4, **CUT)
    assert found.available == pytest.approx(200 * 60 / (2 * pi * 250))
    assert found.size_factor == 1


def test_a_thin_chip_turns_the_verdict() -> None:
    """5 N m would do by the plain sum; with a thin chip and a worn lip it may stall."""
    found = cutting.stall(chip_thickness=0.02, **CUT)
    assert found.plain_torque < found.available < found.torque
    assert found.may_stall
    assert "Thin chips are in it with x 2.11" in found.sentence
    assert "a worn lip with x 1.30, which errs high on purpose" in found.sentence


def test_a_motor_pulls_more_than_its_plate_for_a_cut() -> None:
    """13.7 N m of 7.6: under twice the plate, where an induction motor breaks down (memory)."""
    found = cutting.stall(chip_thickness=0.02, overload=2.0, **CUT)
    assert found.over_plate
    assert not found.may_stall


@pytest.mark.parametrize(
    "change",
    [{"efficiency": 1.2}, {"wear_factor": 0.9}, {"motor_power": 0.0}, {"chip_thickness": 0.0}],
)
def test_it_is_not_talked_down(change: dict[str, float]) -> None:
    """Factors that would make it err low are refused."""
    with pytest.raises(SeatworkError):
        cutting.stall(**{**CUT, "chip_thickness": 0.1, **change})
