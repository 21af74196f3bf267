"""The shop's short constants for spindle speed, and the speed rules of operations.

Nothing here is used silently: each shortcut carries its name and its error
against the exact constant, each rule its ratio and where it was published.

Notes
-----
A shortcut stands for n = 1000 v / (pi D), in inches n = 12 V / (pi D), as in `speeds`.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from math import pi
from types import MappingProxyType

from seatwork import checks
from seatwork.cutting.speeds import spindle_speed
from seatwork.errors import SeatworkError


@dataclass(frozen=True, slots=True, kw_only=True)
class Shortcut:
    """A short constant: spindle speed = constant x cutting speed / diameter.

    Parameters
    ----------
    name : str
        How the shop writes it.
    constant : float
        The short constant [rev ft/min/(ft/min) per in, or the metric one with m/min and mm].
    exact : float
        What it stands for, 12/pi or 1000/pi [same as `constant`].
    inch : bool
        Whether it goes with ft/min and inches.
    source : str
        Where it is taught.
    """

    name: str
    constant: float
    exact: float
    inch: bool
    source: str

    def __repr__(self) -> str:
        return f"<Shortcut {self.name}: {self.constant:g}, exactly {self.exact:.2f}>"

    @property
    def error(self) -> float:
        """Share by which the speed comes out too high [-]; below zero too low."""
        return self.constant / self.exact - 1

    def spindle_speed(self, *, cutting_speed: float, diameter: float) -> float:
        """Spindle speed [rev/min] at `cutting_speed` [m/min] and `diameter` [mm] by this shortcut.

        Examples
        --------
        >>> round(SHORTCUTS["4"].spindle_speed(cutting_speed=80 * 0.3048, diameter=12.7))
        640
        """
        exact = spindle_speed(cutting_speed=cutting_speed, diameter=diameter)
        return exact * self.constant / self.exact


def _shortcut(constant: float, *, inch: bool, source: str) -> Shortcut:
    return Shortcut(
        name=f"{constant:g} x V / D",
        constant=constant,
        exact=12 / pi if inch else 1000 / pi,
        inch=inch,
        source=source,
    )


SHORTCUTS: Mapping[str, Shortcut] = MappingProxyType(
    {
        "3.82": _shortcut(3.82, inch=True, source="open shop textbooks"),
        "4": _shortcut(
            4.0, inch=True, source="TC 9-524 type shop formula; a mill maker's manual p. 24"
        ),
        "318": _shortcut(318.0, inch=False, source="common practice, no source"),
        "320": _shortcut(320.0, inch=False, source="common practice, no source"),
    }
)


@dataclass(frozen=True, slots=True, kw_only=True)
class SpeedRule:
    """How fast an operation turns, as a ratio to the drill speed at the same diameter.

    Parameters
    ----------
    operation : str
        What it is said of.
    ratio : float
        Operation speed over drill speed [-].
    source : str
        Where it was published.
    confirmed : str
        ``"one-source"`` or ``"memory"``.
    """

    operation: str
    ratio: float
    source: str
    confirmed: str

    def __repr__(self) -> str:
        return f"<SpeedRule {self.operation}: {self.ratio:.3g} of the drill speed>"


SPREAD: tuple[SpeedRule, ...] = (
    SpeedRule(
        operation="countersink, at the mean diameter",
        ratio=1.0,
        source="a tool maker's drill guide p. 34",
        confirmed="one-source",
    ),
    SpeedRule(
        operation="counterbore (0.80 to 0.85)",
        ratio=0.85,
        source="a tool maker's drill guide p. 33",
        confirmed="one-source",
    ),
    SpeedRule(
        operation="counterbore and spotface, one third slower",
        ratio=2 / 3,
        source="common practice, no source",
        confirmed="memory",
    ),
    SpeedRule(operation="countersink", ratio=0.5, source="TC 9-524 ch. 4", confirmed="one-source"),
    SpeedRule(
        operation="countersink",
        ratio=1 / 3,
        source="NIMI fitter trade practical, volume 2, exercise 62",
        confirmed="one-source",
    ),
    SpeedRule(
        operation="counterbore and spotface",
        ratio=0.25,
        source="TC 9-524 ch. 4, from memory",
        confirmed="memory",
    ),
)


def operation_speed(*, drill_speed: float, ratio: float, cap: float | None = None) -> float:
    """Spindle speed of an operation from the drill speed at the same diameter.

    Parameters
    ----------
    drill_speed : float
        Spindle speed of a drill of that diameter [rev/min].
    ratio : float
        House rule: operation speed over drill speed [-], above 0 and up to 1.
    cap : float, optional
        House rule: greatest spindle speed [rev/min].

    Returns
    -------
    float
        Spindle speed wanted [rev/min].

    Raises
    ------
    SeatworkError
        If the ratio is not above 0 and up to 1, or a speed is not above zero.

    Notes
    -----
    "One third slower" is a ratio of 2/3; "one third of" is 1/3, half as fast as that.

    Examples
    --------
    >>> operation_speed(drill_speed=611.0, ratio=0.5, cap=300.0)
    300.0
    """
    checks.quantity(drill_speed, "drill speed", "rev/min")
    if not 0 < ratio <= 1:
        raise SeatworkError(
            f"{ratio:g}",
            "a speed ratio lies above 0 and goes up to 1",
            "write one third slower as 0.667",
        )
    if cap is None:
        return drill_speed * ratio
    checks.quantity(cap, "speed cap", "rev/min")
    return min(drill_speed * ratio, cap)
