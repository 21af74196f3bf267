"""How wide a cut stays quiet, and how slow is always quiet."""

from dataclasses import dataclass
from math import pi, sin, sqrt

import numpy as np

from seatwork import checks
from seatwork.cutting.chatter.crossings import find_crossings
from seatwork.cutting.chatter.loop import Floats, Loop, regenerative_loop
from seatwork.cutting.chatter.parts import NOTE, Cut, Cutter, Machine
from seatwork.cutting.chatter.whirl import Whirl, whirl
from seatwork.errors import SeatworkError


@dataclass(frozen=True, slots=True, kw_only=True)
class Limit:
    """Widest quiet cut at a spindle speed.

    Parameters
    ----------
    width : float or None
        Width of cut where chatter begins [mm]; None where none was found in range.
    frequency : float or None
        Frequency there [Hz]; below zero for backward whirl; None without a width.
    note : str
        What the number is not.
    """

    width: float | None
    frequency: float | None
    note: str = NOTE

    def __repr__(self) -> str:
        if self.width is None:
            return "<Limit none found in range; illustration>"
        return f"<Limit {self.width:.3g} mm at {abs(self.frequency or 0.0):.0f} Hz; illustration>"


@dataclass(frozen=True, slots=True, kw_only=True)
class CriticalSpeed:
    """Speed under which every width of cut stays quiet.

    Parameters
    ----------
    surface_speed : float
        Surface speed at the mean diameter [m/min]; 0 without process damping.
    spindle_speed : float
        Spindle speed [rev/min].
    note : str
        What the number is not.
    """

    surface_speed: float
    spindle_speed: float
    note: str = NOTE

    def __repr__(self) -> str:
        speeds = f"{self.surface_speed:.3g} m/min, {self.spindle_speed:.0f} rev/min"
        return f"<CriticalSpeed {speeds}; illustration>"


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    """Widths that can chatter at a surface speed, whatever the spindle speed.

    Parameters
    ----------
    lower, upper : float
        Ends of the band, the envelope of all lobes [mm]; the upper end is
        mathematics, not a shop promise, and infinite without process damping.
    note : str
        What the numbers are not.
    """

    lower: float
    upper: float
    note: str = NOTE

    def __repr__(self) -> str:
        return f"<Band {self.lower:.3g} to {self.upper:.3g} mm; illustration>"


def loop_of(machine: Machine, cutter: Cutter, cut: Cut, spindle_speeds: Floats) -> Loop | Whirl:
    """Model that holds for these parts: one delay equation, or the turning frame."""
    three_equal = cutter.flutes >= 3 and cutter.equally_spaced
    if machine.direction == "axial" or three_equal:
        return regenerative_loop(machine, cutter, cut, spindle_speeds)
    return whirl(machine, cutter, cut, spindle_speeds)


def width_limit(
    *, machine: Machine, cutter: Cutter, cut: Cut, spindle_speed: float, widest: float = 50.0
) -> Limit:
    """Width of cut at which chatter begins.

    Parameters
    ----------
    machine : Machine
        How the machine gives.
    cutter : Cutter
        Lips, angle and spacing; pass ``cutter.in_cut(feed)`` where a lip stands proud.
    cut : Cut
        Cutting coefficients, mean diameter, process damping.
    spindle_speed : float
        Spindle speed [rev/min].
    widest : float
        Widest cut looked at [mm].

    Returns
    -------
    Limit
        Width [mm] and frequency [Hz]; both None if no limit was found up to `widest`.

    Raises
    ------
    SeatworkError
        If a speed or width is not above zero.

    Notes
    -----
    Exact but for the frequency grid. Feed does not enter: the linear limit
    ignores it. Process damping C/v is trustworthy while the wear land is under
    about a quarter of the wave (`land_over_wave`). Illustration, not a
    prediction for your machine.

    Examples
    --------
    >>> bench = Machine(stiffness=8e6, natural_frequency=250.0, damping_ratio=0.04)
    >>> steel = Cut(normal_coefficient=1345.08e6, tangential_coefficient=1921e6, mean_diameter=9.0)
    >>> three = Cutter(flutes=3, included_angle=82.0)
    >>> width_limit(machine=bench, cutter=three, cut=steel, spindle_speed=1000.0).width
    0.6648

    References
    ----------
    D-subdivision of the regenerative delay equation: Tlusty, Tobias, Stepan 1989 (checks T4, A1).
    """
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    checks.length(widest, "widest cut")
    model = loop_of(machine, cutter, cut, np.array([float(spindle_speed)]))
    found = find_crossings(model, widest / 1000)
    if not len(found.width):
        return Limit(width=None, frequency=None)
    first = int(found.width.argmin())
    width = float(found.width[first])
    frequency = model.stationary(float(found.frequency[first]), 0, width)
    return Limit(width=1000 * width, frequency=frequency / (2 * pi))


def critical_speed(*, machine: Machine, cutter: Cutter, cut: Cut) -> CriticalSpeed:
    """Speed below which rubbing keeps every width of cut quiet.

    Parameters
    ----------
    machine : Machine
        How the machine gives, axially.
    cutter : Cutter
        Lips and angle; neither changes the speed.
    cut : Cut
        Cutting coefficients, mean diameter, process damping.

    Returns
    -------
    CriticalSpeed
        Surface speed [m/min] and spindle speed [rev/min]; both 0 without process damping.

    Raises
    ------
    SeatworkError
        If the machine gives laterally: no closed form is known there.

    Notes
    -----
    v* = (C w_n/Kn) (sqrt(zeta) + sqrt(1 + zeta))^2, from the condition that no
    delay can make the loop unstable. Valid where the wear land is under about a
    quarter of the wave. Illustration, not a prediction for your machine.

    Examples
    --------
    >>> stand = Machine(stiffness=2e7, natural_frequency=400.0, damping_ratio=0.03)
    >>> one = Cutter(flutes=1, included_angle=180.0)
    >>> cut = Cut(normal_coefficient=1.5e9, tangential_coefficient=1.5e9, mean_diameter=10.0,
    ...           process_damping=2e5)
    >>> critical_speed(machine=stand, cutter=one, cut=cut).surface_speed / 60
    0.473021

    References
    ----------
    Derived for this project and checked against a scan over delays (check P1).
    """
    _axial(machine)
    zeta = machine.damping_ratio
    reach = cut.process_damping * machine.angular_frequency / cut.normal_coefficient
    speed = reach * (sqrt(zeta) + sqrt(1 + zeta)) ** 2
    return CriticalSpeed(
        surface_speed=60 * speed, spindle_speed=60 * speed / (pi * cut.mean_diameter / 1000)
    )


def chatter_band(
    *, machine: Machine, cutter: Cutter, cut: Cut, surface_speed: float
) -> Band | None:
    """Widths between which chatter is possible at a surface speed.

    Parameters
    ----------
    machine : Machine
        How the machine gives, axially.
    cutter : Cutter
        Lips and angle.
    cut : Cut
        Cutting coefficients and process damping.
    surface_speed : float
        Surface speed at the mean diameter [m/min].

    Returns
    -------
    Band or None
        Ends of the band [mm]; None where every width is quiet.

    Raises
    ------
    SeatworkError
        If the machine gives laterally, or the speed is not above zero.

    Notes
    -----
    Roots of 2k a^2 b^2 + (2k a (1 + 2 zeta) - K) b + 2k zeta (1 + zeta) = 0
    with a = q w_n/(2 v k), q the process damping of all lips along the spindle.

    References
    ----------
    Derived for this project and checked against a scan over delays (checks P2, P4).
    """
    _axial(machine)
    checks.quantity(surface_speed, "surface speed", "m/min")
    k, zeta, gain = machine.stiffness, machine.damping_ratio, _gain(cutter, cut)
    rub = gain / cut.normal_coefficient * cut.process_damping
    a = rub * machine.angular_frequency / (2 * (surface_speed / 60) * k)
    middle, last = gain - 2 * k * a * (1 + 2 * zeta), 2 * k * zeta * (1 + zeta)
    inside = middle**2 - 8 * k * a**2 * last
    if middle <= 0 or inside < 0:
        return None
    larger = middle + sqrt(inside)
    upper = larger / (4 * k * a**2) if a else float("inf")
    return Band(lower=1000 * 2 * last / larger, upper=1000 * upper)


def _gain(cutter: Cutter, cut: Cut) -> float:
    return cutter.flutes * sin(cutter.half_angle) ** 2 * cut.normal_coefficient


def _axial(machine: Machine) -> None:
    if machine.direction != "axial":
        raise SeatworkError(
            machine.direction,
            "the closed form holds along the spindle only",
            "use width_limit for sideways chatter, or an axial machine",
        )
