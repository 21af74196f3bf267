"""Loads of a twist drill by two published formulas, to set beside those of a seat.

A drill works from solid, so its chisel edge pushes; a seat cutter has none.
"""

from dataclasses import dataclass
from math import pi

from seatwork import checks

_MM_PER_IN = 25.4
_N_PER_LBF = 4.4482216152605
_NM_PER_LBF_IN = 0.1129848290276167


@dataclass(frozen=True, slots=True, kw_only=True)
class DrillLoad:
    """What a drill asks of the machine.

    Parameters
    ----------
    thrust : float
        Thrust along the spindle [N].
    torque : float
        Torque [N m].
    power : float
        Power at the cutter [W].
    """

    thrust: float
    torque: float
    power: float


def handbook_drilling(
    *,
    material_factor: float,
    diameter: float,
    feed: float,
    spindle_speed: float,
    chisel_thrust: float = 1.355,
    chisel_torque: float = 1.085,
    chisel_push: float = 0.030,
    wear_factor: float = 1.3,
) -> DrillLoad:
    """Thrust, torque and power of a twist drill by the factors of the handbook.

    Parameters
    ----------
    material_factor : float
        Work material factor Kd of the handbook [lbf per in2 scaled], 24000 for 200 HB steel.
    diameter : float
        Drill diameter [mm], 1.5 to 100.
    feed : float
        Feed [mm/rev], 0.012 to 1.3.
    spindle_speed : float
        Spindle speed [rev/min].
    chisel_thrust, chisel_torque, chisel_push : float
        Chisel edge factors B, A and J [-]; the defaults belong to c/d = 0.18.
    wear_factor : float
        Tool wear factor W [-].

    Returns
    -------
    DrillLoad
        Thrust, torque and power at the cutter.

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Notes
    -----
    The formula is an inch one: T = 2 Kd Ff FT B W + Kd d^2 J W [lbf] and
    M = Kd Ff FM A W [lbf in], with Ff = f^0.8, FT = d^0.8, FM = d^1.8. Work
    factors are recalled; the worked example is reproduced with them.

    Examples
    --------
    >>> cut = {"diameter": 22.225, "feed": 0.2032, "spindle_speed": 350.0}
    >>> round(handbook_drilling(material_factor=24000.0, **cut).thrust / 4.44822)
    2313

    References
    ----------
    Machinery's Handbook, 31st ed., pp. 1152-1153 (checks PWR-01 to PWR-11).
    """
    checks.quantity(material_factor, "material factor")
    checks.length(diameter, "drill diameter")
    checks.quantity(feed, "feed", "mm/rev")
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    inch = diameter / _MM_PER_IN
    worn = material_factor * wear_factor
    cut = worn * feed_factor(feed)
    thrust = 2 * cut * inch**0.8 * chisel_thrust + worn * inch**2 * chisel_push
    torque = cut * torque_diameter_factor(diameter) * chisel_torque * _NM_PER_LBF_IN
    return DrillLoad(
        thrust=thrust * _N_PER_LBF, torque=torque, power=2 * pi * spindle_speed / 60 * torque
    )


def feed_factor(feed: float) -> float:
    """Feed factor Ff [-] of the handbook, the 0.8th power of the `feed` [mm/rev] in inches.

    Examples
    --------
    >>> feed_factor(0.008 * 25.4)
    0.021
    """
    factor: float = (feed / _MM_PER_IN) ** 0.8
    return factor


def torque_diameter_factor(diameter: float) -> float:
    """Torque factor FM [-] of the handbook, the 1.8th power of the `diameter` [mm] in inches.

    Examples
    --------
    >>> torque_diameter_factor(0.875 * 25.4)
    0.786
    """
    factor: float = (diameter / _MM_PER_IN) ** 1.8
    return factor


def maker_drilling(
    *, material_factor: float, diameter: float, feed: float, spindle_speed: float
) -> DrillLoad:
    """Thrust, torque and power of a twist drill by a drill maker's formula.

    Parameters
    ----------
    material_factor : float
        Factor K of the maker [-]: gray iron 1.00, AISI 1020 2.22, aluminum 1.01.
    diameter : float
        Drill diameter [mm].
    feed : float
        Feed [mm/rev].
    spindle_speed : float
        Spindle speed [rev/min].

    Returns
    -------
    DrillLoad
        Thrust, torque and power at the cutter.

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Notes
    -----
    The printed power and torque formulas agree with 2 pi n M to about 2 %.

    Examples
    --------
    >>> cut = {"diameter": 12.0, "feed": 0.2, "spindle_speed": 700.0}
    >>> round(maker_drilling(material_factor=2.22, **cut).thrust)
    3866

    References
    ----------
    Tungaloy technical reference L068 (check PWR-15).
    """
    checks.quantity(material_factor, "material factor")
    checks.length(diameter, "drill diameter")
    checks.quantity(feed, "feed", "mm/rev")
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    rise: float = feed**0.85
    area = material_factor * diameter**2
    return DrillLoad(
        thrust=570 * material_factor * diameter * rise,
        torque=area * (0.630 + 16.84 * feed) / 100,
        power=area * spindle_speed * (0.647 + 17.29 * feed) * 1e-3,
    )
