"""Published loads of drills: the power of a handbook example, a maker's torque."""

import pytest
from seatwork import cutting

DATA = "power_torque"
HORSEPOWER = 745.6998715822702
POUND_INCH = 4.4482216152605 * 25.4 / 1000


@pytest.mark.outside("published example", "cutting.power")
def test_handbook_power(power_check) -> None:
    """Torque and spindle speed of the handbook's example give its horsepower."""
    inputs = power_check.inputs
    found = cutting.power(torque=inputs["M_in_lb"] * POUND_INCH, spindle_speed=inputs["n_rpm"])
    assert power_check.agrees(found / HORSEPOWER)


@pytest.mark.outside("published example", "cutting.torque")
def test_maker_torque(torque_check) -> None:
    """A maker's worked torque of a 22 mm drill comes out of its specific force."""
    inputs = torque_check.inputs
    found = cutting.torque(
        tangential_coefficient=inputs["kc_MPa"], feed=inputs["f_mm_rev"], diameter=inputs["D_mm"]
    )
    assert torque_check.agrees(found)
