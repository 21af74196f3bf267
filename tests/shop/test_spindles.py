"""Spindle speeds by the house rules: whoever changes a rule gets another speed."""

import pytest
from seatwork.shop.choosing.spindles import spindle_for
from seatwork.shop.house.house_rules import HouseRules, apply
from seatwork.shop.shop import Shop

SHOP = Shop.at()
MACHINE, STEEL = SHOP.machine("bench drill press"), SHOP.material("1018 steel")


def spindle(changed: str = ""):
    """Work out the speed of a 1/2 in counterbore in steel, with a rule changed."""
    rules = HouseRules(apply(changed, "house_rules.toml"), "a test")
    return spindle_for(
        "counterbore",
        diameter=12.7,
        hole_diameter=6.8,
        material=STEEL,
        machine=MACHINE,
        rules=rules,
    )


@pytest.mark.parametrize(("constant", "share"), [("4", 4.7), ("3.82", 0.0)])
def test_a_short_constant_changes_the_speed_by_its_error(constant: str, share: float) -> None:
    """4 stands for 12/pi = 3.8197 and runs 4.7 % fast; 3.82 is right to a hundredth of 1 %."""
    exact, short = spindle(), spindle(f'[speeds]\nconstant = "{constant}"\n')
    assert 100 * (short.raw / exact.raw - 1) == pytest.approx(share, abs=0.03)


def test_the_nearest_step_may_be_the_one_above() -> None:
    """Where the shop takes the nearest step, it is never farther off than the next one down."""
    down, near = spindle(), spindle('[speeds]\nstep = "nearest"\n')
    assert down.step.spindle_speed <= down.raw * 1.005  # house rule speeds.step_over
    off = [abs(step - near.raw) for step in MACHINE.speeds]
    assert abs(near.step.spindle_speed - near.raw) == pytest.approx(min(off))
