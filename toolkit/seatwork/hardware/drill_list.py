"""Drills by name, and the next one up or down from a size."""

import re
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from typing import Literal

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Sourced
from seatwork.hardware.spelling import as_typed, size_name, tidy
from seatwork.quantities import Length
from seatwork.tables.reading import Cell
from seatwork.units import length, show_both

WANTED = "a drill such as #7, H, 17/64 or 6.6 mm"
SERIES = {
    "drill_sizes_inch": None,
    "drill_sizes_inch_large": "fraction",
    "drill_sizes_metric": "metric",
}
SAME = 1e-6  # mm; two sizes nearer than this are the same drill
PRINTED = 0.0127 + 1e-9  # mm; half a thousandth of an inch, what a three-place decimal hides
FINER = 0.00127 + 1e-9  # mm; what a four-place one hides


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Drill(Sourced):
    """A twist drill.

    Parameters
    ----------
    name : str
        ``#7``, ``H``, ``17/64`` or ``6.6 mm``.
    diameter : float
        Diameter [mm].
    series : str
        ``number``, ``letter``, ``fraction`` or ``metric``.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    name: str
    diameter: float
    series: str

    def _line(self) -> str:
        return f"{self.name}: {show_both(self.diameter)}, {self.document}"

    @property
    def system(self) -> Literal["inch", "metric"]:
        """Whose drill set it is in."""
        return "metric" if self.series == "metric" else "inch"


def drill(text: str) -> Drill:
    """Find a drill by its name or its size.

    Parameters
    ----------
    text : str
        ``#7``, ``No. 7``, ``H``, ``letter F``, ``17/64``, ``1-1/4``, ``.201``, ``6.6``,
        ``6.6 mm``. A bare decimal below 1 is inches (0.5 is asked about), another one
        millimeters.

    Returns
    -------
    Drill
        The drill of that name.

    Raises
    ------
    SeatworkError
        If no drill has the size (the ones beside it are named), or it could be two.

    Examples
    --------
    >>> drill("#7").diameter, drill("letter h").name, drill("6.6").name
    (5.1054, 'H', '6.6 mm')
    """
    with as_typed(text):
        plain = re.sub(r"\b(?:letter|drill|dr\.?)(?= |$)", "", tidy(text, WANTED)).strip()
        name = size_name(plain)
        if name in _by_name():
            return _named(name)
        if re.fullmatch(r"\d+", name):
            raise SeatworkError(name, "number or millimeters?", f"write #{name} or {name} mm")
        if name.startswith("#") or re.fullmatch(r"[A-Z]", name):
            raise SeatworkError(name, "no drill has this name", f"write {WANTED}")
        return _of_size(plain)


def drills(system: str | None = None) -> tuple[Drill, ...]:
    """Return the drills held here, smallest first.

    Parameters
    ----------
    system : {"inch", "metric"}, optional
        One drill set only; without it, both.
    """
    return _sorted(system)


def next_drill(
    diameter: float,
    direction: Literal["up", "down", "over", "under"],
    system: str | None = None,
) -> Drill:
    """Find the next drill from a size: never just the nearest.

    Parameters
    ----------
    diameter : float
        The size wanted [mm], above zero.
    direction : {"up", "down", "over", "under"}
        ``up`` for a clearance hole: the smallest drill that is not under the size;
        ``down``: the largest that is not over it. ``over`` and ``under`` never return the
        size itself: a hole to be reamed is drilled under.
    system : {"inch", "metric"}, optional
        The drill set to look in; without it, both.

    Returns
    -------
    Drill
        Of two names for one size, the first of fraction, number, letter, metric.

    Raises
    ------
    SeatworkError
        If the list ends before one is found, or the direction is another word.

    Examples
    --------
    >>> next_drill(6.5, "up", "inch").name, next_drill(6.35, "under", "inch").name
    ('F', 'D')
    """
    if not 0 < diameter < float("inf"):
        raise SeatworkError(Length(diameter), "that is no drill size", "give one above zero")
    margin = {"up": -SAME, "over": SAME, "down": SAME, "under": -SAME}.get(direction)
    if margin is None:
        raise SeatworkError(
            direction, "that is no direction to look in", "say up, down, over or under"
        )
    rising = direction in ("up", "over")
    held = _sorted(system) if rising else tuple(reversed(_sorted(system)))
    for each in held:
        if (each.diameter > diameter + margin) if rising else (each.diameter < diameter + margin):
            return _first_name(each)
    raise SeatworkError(
        Length(diameter), f"no drill in the list lies {direction} from it", "name another size"
    )


def _first_name(found: Drill) -> Drill:
    """Return the drill that stands first of those of one size and system."""
    same = [each for each in _sorted(found.system) if abs(each.diameter - found.diameter) < SAME]
    return same[0]


def _of_size(plain: str) -> Drill:
    """Return the drill of a size typed as a decimal."""
    is_inch = bool(re.match(r"0?\.\d", plain)) or plain.endswith(("in", '"', "inch"))
    if re.fullmatch(r"0\.\d+", plain) and f"{float(plain):g} mm" in _by_name():
        both = (f"{plain} in", f"{plain} mm")
        raise SeatworkError(plain, "in or mm?", f"write {both[0]} or {both[1]}", options=both)
    is_inch = is_inch and not plain.endswith("mm")
    size = length(plain, "inch" if is_inch else "metric")
    near = (FINER if re.search(r"\.\d{4}", plain) else PRINTED) if is_inch else 0.0005
    found = [each for each in _sorted(None) if abs(each.diameter - size) <= near]
    if not found:
        below, above = _neighbors(size)
        raise SeatworkError(
            plain,
            "no drill has this size",
            f"the drills beside it are {below.name} and {above.name}",
        )
    wanted = "inch" if is_inch else "metric"
    return min(found, key=lambda each: _stated_first(each, wanted, size))


def _stated_first(each: Drill, wanted: str, size: float) -> tuple[bool, bool, float]:
    """Sort own drills before the other system's, fractions before numbers and letters."""
    return each.system != wanted, each.series != "fraction", abs(each.diameter - size)


def _neighbors(size: float) -> tuple[Drill, Drill]:
    for below, above in pairwise(_sorted(None)):
        if below.diameter <= size <= above.diameter:
            return below, above
    raise SeatworkError(Length(size), "no drill that small or large is held here", WANTED)


@cache
def _by_name() -> dict[str, tuple[dict[str, Cell], str]]:
    """Return the row and the series of each drill; most are never asked for."""
    held = {}
    for table, stated in SERIES.items():
        for row in tables.rows(table):
            series = stated or str(row["series"])
            name = f"{row['size']} mm" if series == "metric" else str(row["size"])
            held[name] = row, series
    return held


@cache
def _named(name: str) -> Drill:
    row, series = _by_name()[name]
    size = name if series in ("metric", "fraction") else f"{row['diameter_in']} in"
    return Drill(
        name=name,
        diameter=length(size, "inch"),
        series=series,
        source=str(row["source"]),
        confirmed=str(row["confirmed"]),
    )


@cache
def _sorted(system: str | None) -> tuple[Drill, ...]:
    if system not in (None, "inch", "metric"):
        raise SeatworkError(system, "that is no drill set", 'write "inch" or "metric"')
    order = ("fraction", "number", "letter", "metric")
    held = [each for each in map(_named, _by_name()) if system in (None, each.system)]
    return tuple(sorted(held, key=lambda each: (each.diameter, order.index(each.series))))
