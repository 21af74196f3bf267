"""Published loads of drills: handbook example, handbook factors, makers' formulas."""

from seatwork import cutting
from seatwork.cutting.drilling import feed_factor, torque_diameter_factor

DATA = "power_torque"
INCH, POUND, HORSEPOWER = 25.4, 4.4482216152605, 745.6998715822702
POUND_INCH = POUND * INCH / 1000


def test_handbook_thrust(thrust_check) -> None:
    """The handbook's worked example of a 7/8 in drill comes out in pounds."""
    inputs = thrust_check.inputs
    load = cutting.handbook_drilling(
        material_factor=inputs["Kd"],
        diameter=inputs["d_in"] * INCH,
        feed=inputs["f_in_rev"] * INCH,
        spindle_speed=inputs["n_rpm"],
        chisel_thrust=inputs["B"],
        chisel_torque=inputs["A"],
        chisel_push=inputs["J"],
        wear_factor=inputs["W"],
    )
    assert thrust_check.agrees(load.thrust / POUND)


def test_handbook_power(power_check) -> None:
    """Torque and spindle speed of the handbook's example give its horsepower."""
    inputs = power_check.inputs
    found = cutting.power(torque=inputs["M_in_lb"] * POUND_INCH, spindle_speed=inputs["n_rpm"])
    assert power_check.agrees(found / HORSEPOWER)


def test_handbook_feed_factors(feed_factor_check) -> None:
    """The 0.8th power of the feed gives the handbook's printed factor."""
    assert feed_factor_check.agrees(feed_factor(feed_factor_check.inputs["f_in_rev"] * INCH))


def test_handbook_diameter_factors(diameter_factor_check) -> None:
    """The 1.8th power of the diameter gives the handbook's printed factor."""
    found = torque_diameter_factor(diameter_factor_check.inputs["d_in"] * INCH)
    assert diameter_factor_check.agrees(found)


def test_maker_torque(torque_check) -> None:
    """A maker's worked torque of a 22 mm drill comes out of its specific force."""
    inputs = torque_check.inputs
    found = cutting.torque(
        tangential_coefficient=inputs["kc_MPa"], feed=inputs["f_mm_rev"], diameter=inputs["D_mm"]
    )
    assert torque_check.agrees(found)


def test_maker_thrust(maker_check) -> None:
    """A maker's thrust formula gives its value for a 12 mm drill."""
    inputs = maker_check.inputs
    load = cutting.maker_drilling(
        material_factor=inputs["K"],
        diameter=inputs["D_mm"],
        feed=inputs["f_mm_rev"],
        spindle_speed=700,
    )
    assert maker_check.agrees(load.thrust)
