"""Torque and power of a cut against the machine's, erring high."""

from dataclasses import dataclass
from math import radians, sin

from seatwork import cutting
from seatwork.shop import HouseRules
from seatwork.shop.lists.machines import ShopMachine
from seatwork.shop.lists.materials import Material

WEAR = 1.3  # allowance for a worn lip (Machinery's Handbook, from memory)
OVERLOAD = "machine.overload"
HAND_FED = "drill press"  # the hand eases the feed as the spindle slows; a power feed does not
THICK = 1.0  # mm; chip thickness a material's main value belongs to


@dataclass(frozen=True, slots=True, kw_only=True)
class Load:
    """What a cut asks of a machine.

    Parameters
    ----------
    stall : Stall
        Torque against the machine's, erring high.
    power : float
        Cutting power at that torque [W].
    """

    stall: cutting.Stall
    power: float


def load_for(
    *,
    diameter: float,
    hole_diameter: float,
    included_angle: float,
    feed: float,
    flutes: int,
    spindle_speed: float,
    material: Material,
    machine: ShopMachine,
    rules: HouseRules,
) -> Load | None:
    """Reckon the torque of a cut, high on purpose.

    Parameters
    ----------
    diameter, hole_diameter : float
        Largest and smallest diameter that cut [mm].
    included_angle : float
        Included angle of the lips [deg]; 180 for a flat cut.
    feed : float
        Feed [mm/rev].
    flutes : int
        Number of lips.
    spindle_speed : float
        Spindle speed [rev/min].
    material, machine : Material, ShopMachine
        What is cut, and by what.
    rules : HouseRules
        The house rules in force, for what a motor pulls over its plate.

    Returns
    -------
    Load or None
        None where the lists give no cutting force or no power: no value is no value.
    """
    if material.main_value is None or machine.motor_power is None:
        return None
    chip = cutting.feed_per_tooth(feed=feed, flutes=flutes) * sin(radians(included_angle / 2))
    plain = cutting.torque(
        tangential_coefficient=material.main_value,
        feed=feed,
        diameter=diameter,
        hole_diameter=hole_diameter,
    )
    stall = cutting.stall(
        plain_torque=plain,
        chip_thickness=chip,
        motor_power=machine.motor_power,
        spindle_speed=spindle_speed,
        exponent=material.exponent or 0.0,
        reference_thickness=THICK,
        wear_factor=WEAR,
        overload=rules.number(OVERLOAD) if machine.kind == HAND_FED else 1.0,
    )
    watts = cutting.power(torque=stall.torque, spindle_speed=spindle_speed)
    return Load(stall=stall, power=watts)
