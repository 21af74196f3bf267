"""Clearance holes: the list, the fit by that list's own word, and the drill."""

from collections.abc import Mapping
from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.drill_list import drill
from seatwork.hardware.facts import Sourced, fact
from seatwork.hardware.limits import hole_limits
from seatwork.hardware.spelling import as_typed
from seatwork.hardware.threads import Thread, thread
from seatwork.shop import rules
from seatwork.tables.reading import Cell
from seatwork.units import show_both


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class ClearanceHole(Sourced):
    """A hole that a screw passes through.

    Parameters
    ----------
    size : str
        Screw size.
    diameter : float
        Diameter of the hole [mm].
    drill : str, optional
        Name of the drill, where the list names drills.
    fit : str
        The list's own word for the fit.
    standard : str
        Name of the list.
    least, greatest : float, optional
        Limits of the hole [mm], where the list gives a tolerance.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    size: str
    diameter: float
    drill: str | None
    fit: str
    standard: str
    least: float | None = None
    greatest: float | None = None

    def _line(self) -> str:
        return f"{self.size} {self.fit}: {show_both(self.diameter)}, {self.standard}"

    @property
    def label(self) -> str:
        """The fit with its list: ``normal (ASME B18.2.8)``."""
        return f"{self.fit} ({self.standard})"


@dataclass(frozen=True, slots=True, kw_only=True)
class HoleList:
    """A list of clearance holes: its table, its fits, and what tolerance they carry."""

    table: str
    system: str
    fits: Mapping[str, str]
    grades: Mapping[str, str] | None = None
    limits: Mapping[str, tuple[str, str]] | None = None


LISTS: Mapping[str, HoleList] = {
    "ISO 273": HoleList(
        table="clearance_hole_iso_273",
        system="metric",
        fits={"fine": "fine_H12_mm", "medium": "medium_H13_mm", "coarse": "coarse_H14_mm"},
        grades={"fine": "H12", "medium": "H13", "coarse": "H14"},
    ),
    "ASME B18.2.8": HoleList(
        table="clearance_hole_asme_b18_2_8_inch",
        system="inch",
        fits={"close": "close_drill", "normal": "normal_drill", "loose": "loose_drill"},
        limits={"loose": ("loose_hole_min_in", "loose_hole_max_in")},
    ),
    "ASME B18.3 appendix": HoleList(
        table="counterbore_inch_asme_b18_3_appendix",
        system="inch",
        fits={"close": "drill_close_fit_A", "normal": "drill_normal_fit_A"},
    ),
    "older American list": HoleList(
        table="clearance_drills_american_national",
        system="inch",
        fits={"close": "close_fit_drill", "free": "free_fit_drill"},
    ),
    "company practice": HoleList(
        table="counterbore_inch_company_practice",
        system="inch",
        fits={"close": "clearance_close_in", "free": "clearance_free_in"},
    ),
    "BS 4186:1967": HoleList(
        table="clearance_hole_bs_4186_1967",
        system="metric",
        fits={"close": "close_mm", "medium": "medium_mm", "free": "free_mm"},
    ),
    "ASME B18.3.1M": HoleList(
        table="counterbore_metric_asme_b18_3_1m",
        system="metric",
        fits={"close": "drill_close_fit_A_mm", "normal": "drill_normal_fit_A_mm"},
    ),
}


def clearance_hole(
    size: str | Thread, fit: str | None = None, *, standard: str | None = None
) -> ClearanceHole:
    """Find the clearance hole of a screw size.

    Parameters
    ----------
    size : str or Thread
        ``M6``, ``#10``, ``1/4-20``.
    fit : str, optional
        A word of the list: fine, medium, coarse (ISO 273); close, normal, loose
        (ASME B18.2.8). Without it the house rules ``hole.inch_fit`` and ``hole.metric_fit``.
    standard : str, optional
        Another list by its name: a key of `LISTS`.

    Returns
    -------
    ClearanceHole
        With the drill where the list names drills, limits where it gives a tolerance.

    Raises
    ------
    SeatworkError
        If the list has no such size or fit, or the fit belongs to another list.

    Examples
    --------
    >>> clearance_hole("M6", fit="medium").diameter
    6.6
    >>> found = clearance_hole("1/4", fit="close", standard="older American list")
    >>> found.drill, found.label
    ('F', 'close (older American list)')
    """
    with as_typed(size):
        screw_size = thread(size) if isinstance(size, str) else size
        name = standard or _usual(screw_size)
        held = _held(name, screw_size)
        column = _column(screw_size, name, held, fit)
        row = _row(screw_size, name, held)
        return _hole(screw_size, name, held, fit=column, row=row)


def _usual(screw_size: Thread) -> str:
    return "ISO 273" if screw_size.system == "metric" else "ASME B18.2.8"


def _held(name: str, screw_size: Thread) -> HoleList:
    if name not in LISTS:
        raise SeatworkError(name, "no list of clearance holes has this name", _named(screw_size))
    if LISTS[name].system != screw_size.system:
        raise SeatworkError(
            screw_size.size, f"{name} is a list of {LISTS[name].system} sizes", _named(screw_size)
        )
    return LISTS[name]


def _named(screw_size: Thread) -> str:
    names = [name for name, held in LISTS.items() if held.system == screw_size.system]
    return f"the {screw_size.system} lists are {', '.join(names)}"


def _column(screw_size: Thread, name: str, held: HoleList, fit: str | None) -> str:
    """Return the fit, in the list's own word."""
    if fit is None:
        asked = rules().word(f"hole.{screw_size.system}_fit")
        fit = asked if asked in held.fits else list(held.fits)[1]
    if fit in held.fits:
        return fit
    others = [each for each, other in LISTS.items() if fit in other.fits]
    where = f"; {fit} is a word of {', '.join(others)}" if others else ""
    raise SeatworkError(
        screw_size.size,
        f"{name} has no fit {fit}{where}",
        f"say {', '.join(held.fits)}, or name the list",
    )


def _row(screw_size: Thread, name: str, held: HoleList) -> dict[str, Cell]:
    numbered = tables.about(held.table).key == "for_thread_mm"
    wanted = screw_size.diameter if numbered else screw_size.size
    for row in tables.rows(held.table):
        if row[tables.about(held.table).key] == wanted:
            return row
    raise SeatworkError(screw_size.size, f"{name} has no hole for it", _named(screw_size))


def _hole(
    screw_size: Thread,
    name: str,
    held: HoleList,
    *,
    fit: str,
    row: dict[str, Cell],
) -> ClearanceHole:
    column = held.fits[fit]
    value = row[column]
    drilled = drill(value) if isinstance(value, str) else None
    sized = fact(held.table, row, column) if drilled is None else None
    diameter = drilled.diameter if drilled else sized.value if sized else 0.0
    least, greatest = _limits(held, fit, diameter, row)
    return ClearanceHole(
        size=screw_size.size,
        diameter=diameter,
        drill=drilled.name if drilled else None,
        fit=fit,
        standard=name,
        least=least,
        greatest=greatest,
        source=str(row["source"]),
        confirmed=tables.confirmed(held.table, row, column),
    )


def _limits(
    held: HoleList, fit: str, diameter: float, row: dict[str, Cell]
) -> tuple[float | None, float | None]:
    """Return the least and greatest hole, where the list gives a tolerance."""
    if held.grades:
        limits = hole_limits(diameter, held.grades[fit])
        return limits.least, limits.greatest
    if held.limits and fit in held.limits:
        least, greatest = (fact(held.table, row, column) for column in held.limits[fit])
        return (least.value if least else None), (greatest.value if greatest else None)
    return None, None
