"""Loads of twist drills, to set beside those of a seat."""

import pytest
from seatwork import cutting


def test_the_makers_torque_and_power_agree() -> None:
    """A maker's torque and power of a 10 mm drill at 700 rev/min agree within 2 %, as printed."""
    load = cutting.maker_drilling(material_factor=2.22, diameter=10, feed=0.2, spindle_speed=700)
    assert load.torque == pytest.approx(8.87, abs=0.01)
    assert load.power == pytest.approx(638, abs=1)
    assert cutting.power(torque=load.torque, spindle_speed=700) == pytest.approx(
        load.power, rel=0.025
    )


def test_the_handbooks_torque() -> None:
    """The handbook's 7/8 in drill takes 559 lbf in, 3.1 hp at 350 rev/min (pp. 1152-1153)."""
    load = cutting.handbook_drilling(
        material_factor=24000, diameter=22.225, feed=0.2032, spindle_speed=350
    )
    assert load.torque / 0.1129848 == pytest.approx(559, abs=1)
    assert load.power / 745.7 == pytest.approx(3.1, abs=0.05)
