"""What a number measures: its units in both systems, its places, and how it is shown and read."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import lru_cache
from math import floor

from seatwork import units
from seatwork.quantities import EXACT_INCH
from seatwork.units.showing import rounded

PER_FOOT = Decimal("0.3048")


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Measure:
    """A kind of quantity, such as length or spindle speed.

    Parameters
    ----------
    name : str
        What it is called.
    unit : dict
        Its unit in the systems "inch" and "metric".
    scale : dict
        Inside units in one of that unit; inside lengths are mm, speeds m/min.
    places : dict
        Decimal places asked for and shown.
    spellings : dict
        Every spelling of a unit that a learner may type, with its size in inside units.
    read : callable
        Reads text this table does not cover: ``read(text, system)`` to inside units.
    """

    name: str
    unit: dict[str, str]
    scale: dict[str, Decimal]
    places: dict[str, int]
    spellings: dict[str, Decimal]
    read: Callable[[str, str], float]

    def __repr__(self) -> str:
        units_of = " or ".join(dict.fromkeys(filter(None, self.unit.values())))
        return f"<Measure {self.name}{' in ' if units_of else ''}{units_of}>"

    def amount(self, value: float, system: str) -> Decimal:
        """Return an inside `value` in the unit of `system`, not rounded."""
        exact = Decimal(repr(float(value)))
        scale = self.scale[system]
        return exact if scale == 1 else exact / scale

    def stated(self, value: float, system: str) -> Decimal:
        """Return an inside `value` in the unit of `system`, rounded as shown."""
        return rounded(self.amount(value, system), self.places[system])

    def as_stated(self, value: float, system: str) -> float:
        """Return an inside `value` as one reads it: rounded as it is shown in `system`.

        Worked in whole numbers of the last place, and exactly where a half lies near.
        """
        size, whole, parts = _last_place(self, system)
        count = value / size
        if not abs(count % 1 - 0.5) > NEAR_HALF or not 0 < count < MOST_COUNTED:
            return self.inside(self.stated(value, system), system)
        return floor(count + 0.5) * whole / parts

    def inside(self, amount: Decimal, system: str) -> float:
        """Return an amount in the unit of `system` as an inside value."""
        return float(amount * self.scale[system])

    def show(self, value: float, system: str) -> str:
        """Write an inside `value` with its unit."""
        return self.write(self.stated(value, system), system)

    def show_finely(self, value: float, system: str) -> str:
        """Write an inside `value` with one more place, as a step of a working."""
        finely = rounded(self.amount(value, system), self.places[system] + 1)
        return self.write(finely, system)

    def write(self, amount: Decimal, system: str) -> str:
        """Write an amount that is in the unit of `system` already."""
        unit = self.unit[system]
        if unit == "°":
            return units.show_angle(float(amount))
        return f"{amount:f} {unit}".rstrip()


def _same(unit: str) -> dict[str, str]:
    return {"inch": unit, "metric": unit}


ONES = {"inch": Decimal(1), "metric": Decimal(1)}
INCHES = ("in", "in.", "inch", "inches", '"')
MILLIMETERS = ("mm", "mm.", "millimeter", "millimeters", "millimetre", "millimetres")


def _read_number(text: str, system: str) -> float:
    del system  # a bare number means the same in both systems
    return float(units.number(text))


def _read_angle(text: str, system: str) -> float:
    del system  # degrees are degrees in both systems
    return units.angle(text)


def _length(inch_places: int, metric_places: int) -> Measure:
    return Measure(
        name="length",
        unit={"inch": "in", "metric": "mm"},
        scale={"inch": EXACT_INCH, "metric": Decimal(1)},
        places={"inch": inch_places, "metric": metric_places},
        spellings={
            **dict.fromkeys(INCHES, EXACT_INCH),
            **dict.fromkeys(MILLIMETERS, Decimal(1)),
            **dict.fromkeys(("thou", "thousandths"), EXACT_INCH / 1000),
        },
        read=units.length,
    )


def _plain(name: str, unit: str, places: int, *spellings: str) -> Measure:
    return Measure(
        name=name,
        unit=_same(unit),
        scale=ONES,
        places={"inch": places, "metric": places},
        spellings=dict.fromkeys(spellings, Decimal(1)),
        read=_read_number,
    )


LENGTH = _length(3, 2)
FINE_LENGTH = _length(4, 3)
ROUGH_LENGTH = _length(2, 1)
ANGLE = Measure(
    name="angle",
    unit=_same("°"),
    scale=ONES,
    places={"inch": 1, "metric": 1},
    spellings=dict.fromkeys(("°", "deg", "deg.", "degree", "degrees"), Decimal(1)),
    read=_read_angle,
)
FINE_ANGLE = replace(ANGLE, places={"inch": 2, "metric": 2})
"""An angle with one more place, as a step of a working."""
SPINDLE_SPEED = _plain("spindle speed", "rev/min", 0, "rev/min", "rpm", "1/min", "r/min")
SURFACE_SPEED = Measure(
    name="surface speed",
    unit={"inch": "sfm", "metric": "m/min"},
    scale={"inch": PER_FOOT, "metric": Decimal(1)},
    places={"inch": 0, "metric": 1},
    spellings={
        **dict.fromkeys(("sfm", "sfpm", "fpm", "ft/min", "feet/min"), PER_FOOT),
        **dict.fromkeys(("m/min", "m/minute"), Decimal(1)),
    },
    read=units.cutting_speed,
)
FEED = Measure(
    name="feed",
    unit={"inch": "in/rev", "metric": "mm/rev"},
    scale={"inch": EXACT_INCH, "metric": Decimal(1)},
    places={"inch": 4, "metric": 3},
    spellings={
        **dict.fromkeys(("ipr", "in/rev", "inch/rev"), EXACT_INCH),
        **dict.fromkeys(("mm/rev", "mm/r"), Decimal(1)),
    },
    read=units.feed,
)
SECONDS = _plain("time", "s", 1, "s", "sec", "sec.", "second", "seconds")
COUNT = _plain("count", "", 0, "holes", "marks", "x", "X")
FREQUENCY = _plain("frequency", "Hz", 0, "hz", "hertz", "1/s")
RATIO = _plain("ratio", "", 4)
"""A plain number, such as a tangent: a step of a working, not asked for."""


NEAR_HALF = 1e-6
MOST_COUNTED = 1e9  # last places that a float counts to a millionth


@lru_cache(maxsize=64)
def _last_place(measure: Measure, system: str) -> tuple[float, int, int]:
    """Return one unit in the last place, in inside units: as a float, and as a fraction."""
    whole, parts = (unit_step(measure, system) * measure.scale[system]).as_integer_ratio()
    return whole / parts, whole, parts


@lru_cache(maxsize=64)
def unit_step(measure: Measure, system: str) -> Decimal:
    """Return one unit in the last place asked for."""
    return Decimal(1).scaleb(-measure.places[system])


def lengths(*names: str) -> dict[str, Measure]:
    """Return sizes that are all lengths, by their names.

    Examples
    --------
    >>> lengths("diameter", "depth")["depth"] is LENGTH
    True
    """
    return dict.fromkeys(names, LENGTH)
