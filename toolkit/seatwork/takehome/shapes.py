"""What an entry must look like to be read at all, asked of the reader itself: no answer is in it.

A page without Python cannot read an entry, but it can see that nobody could: no number, two
numbers, words that are no unit. Every list here is what the reader of entries took when asked.
"""

from collections.abc import Iterable
from typing import Any

from seatwork.entries.asked import MEASURES
from seatwork.entries.measures import Measure
from seatwork.entries.spelled import AFTER, BEFORE, IN_INCHES, UNITS
from seatwork.entries.typed import read
from seatwork.errors import SeatworkError
from seatwork.units.reading import ANGLE_UNITS, FEED_UNITS, LENGTH_UNITS, SPEED_UNITS

KNOWN = (LENGTH_UNITS, ANGLE_UNITS, SPEED_UNITS, FEED_UNITS, UNITS, IN_INCHES)
"""Every spelling of a unit that a reader knows, whatever is asked for."""


def shape_name(measure: str, system: str) -> str:
    """Return the name of a shape, as a page looks it up."""
    return f"{measure} {system}"


def shapes_of(parts: Iterable[dict[str, Any]]) -> dict[str, dict[str, Any]]:
    """Return the shape of every number among the parts of a page, by its name."""
    numbers = [part for part in parts if part["kind"] == "number"]
    return {
        shape_name(part["measure"], part["system"]): shape(part["measure"], part["system"])
        for part in numbers
    }


def shape(measure: str, system: str) -> dict[str, Any]:
    """Return what may stand round a number that is asked for.

    Parameters
    ----------
    measure : str
        One of `MEASURES`, such as ``"LENGTH"``.
    system : {"inch", "metric"}
        Unit system the answer is asked in.

    Returns
    -------
    dict
        ``units`` after a decimal, ``after_fraction`` after a fraction, ``words`` after either,
        ``before`` it, and whether a ``sign`` may stand before it.

    Examples
    --------
    >>> shape("COUNT", "inch")["units"]
    ['', 'holes', 'marks', 'x']
    """
    asked = MEASURES[measure]
    spellings = dict.fromkeys(unit.lower() for units in KNOWN for unit in units)
    spellings |= dict.fromkeys(unit.lower() for unit in ("", *asked.spellings))

    def taken(ends: Iterable[str], number: str) -> list[str]:
        texts = ((end, (f"{number} {end}", f"{number}{end}")) for end in ends)
        return sorted(end for end, tried in texts if any(_reads(t, asked, system) for t in tried))

    return {
        "units": taken(spellings, "1"),
        "after_fraction": taken(spellings, "1/2"),
        "words": taken(AFTER, "1"),
        "before": sorted(word for word in BEFORE if _reads(f"{word} 1", asked, system)),
        "sign": _reads("-1", asked, system),
    }


def _reads(text: str, measure: Measure, system: str) -> bool:
    try:
        read(text, measure, system)
    except SeatworkError:
        return False
    return True
