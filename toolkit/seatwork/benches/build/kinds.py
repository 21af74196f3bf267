"""What a number on a bench can be: how it is read, shown and stepped, through ``units`` only."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import cache

from seatwork import units
from seatwork.quantities import Angle, Length


@dataclass(frozen=True, slots=True, kw_only=True)
class Kind:
    """A kind of number.

    Parameters
    ----------
    read : callable
        Shop text and system to the value inside the project.
    show, both : callable
        Value and system to text: in one system, and as people should hear it.
    places : tuple of int
        Decimal places of one step, inch and metric [-].
    wrap : callable
        Value to what an error shows in the reader's units.
    box : callable, optional
        Value and system to what stands in the box that it is typed into; `show` if not given.
    """

    read: Callable[[str, str], float]
    show: Callable[[float, str], str]
    both: Callable[[float, str], str]
    places: tuple[int, int]
    wrap: Callable[[float], object]
    box: Callable[[float, str], str] | None = None

    def boxed(self, value: float, system: str) -> str:
        """Return what stands in the box for a value; it can be typed again as it stands."""
        return (self.box or self.show)(value, system)

    def at(self, step: int, size: int, system: str) -> float:
        """Return the value of a whole step, `size` last places apart."""
        return self.read(str(Decimal(step * size).scaleb(-self._last(system))), system)

    def step(self, value: float, size: int, system: str) -> int:
        """Return the whole step nearest to a value."""
        last = Decimal(repr(value)) / _one(self, system)
        return int(units.rounded(last.scaleb(self._last(system)) / size, 0))

    def _last(self, system: str) -> int:
        """Return how many decimal places a step has."""
        return self.places[system == "metric"]


@cache
def _one(kind: Kind, system: str) -> Decimal:
    """Return one of the unit that a system shows."""
    return Decimal(repr(kind.read("1", system)))


def _plain(show: Callable[[float], str], read: Callable[[str], float], places: int) -> Kind:
    """Return a kind that both systems share."""
    return Kind(
        read=lambda text, system: read(text),
        show=lambda value, system: show(value),
        both=lambda value, system: show(value),
        places=(places, places),
        wrap=show,
    )


def _angle(places: int) -> Kind:
    kind = _plain(units.show_angle, units.angle, places)
    return Kind(read=kind.read, show=kind.show, both=kind.both, places=kind.places, wrap=Angle)


_FINER = {"inch": 4, "metric": 3}
"""Places of what is halved [-]."""

KINDS = {
    "length": Kind(
        read=units.length,
        show=units.show_length,
        both=units.show_both,
        places=(3, 2),
        wrap=Length,
    ),
    "fine length": Kind(
        read=units.length,
        show=lambda value, system: units.show_length(value, system, _FINER[system]),
        both=lambda value, system: units.show_both(value, system, _FINER[system]),
        places=(4, 3),
        wrap=Length,
    ),
    "angle": _angle(0),
    "fine angle": _angle(1),
    "speed": Kind(
        read=units.cutting_speed,
        show=units.show_speed,
        both=units.show_speed,
        places=(0, 0),
        wrap=units.show_speed,
    ),
    "feed": Kind(
        read=units.feed,
        show=units.show_feed,
        both=units.show_feed,
        places=(4, 3),
        wrap=units.show_feed,
    ),
    "spindle": replace(
        _plain(units.show_spindle, lambda text: float(units.number(text)), 0),
        box=lambda value, system: units.show_number(value, 0),
    ),
    "count": _plain(
        lambda value: units.show_number(value, 0), lambda text: float(units.number(text)), 0
    ),
    "ratio": _plain(
        lambda value: units.show_number(value, 2), lambda text: float(units.number(text)), 2
    ),
}
