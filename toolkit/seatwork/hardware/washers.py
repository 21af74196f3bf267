"""Plain and lock washers by screw size and series."""

import re
from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Sourced, fact, needed
from seatwork.hardware.spelling import as_typed, tidy
from seatwork.hardware.threads import Thread, read_thread
from seatwork.tables.reading import Cell
from seatwork.units import show_both

WANTED = "a washer such as 1/4 narrow, 3/8 wide, #10, M6 or M8 lock"
SERIES = {
    **dict.fromkeys(("narrow", "n", "sae"), "narrow"),
    **dict.fromkeys(("wide", "w", "uss"), "wide"),
    **dict.fromkeys(("regular",), "regular"),
    **dict.fromkeys(("lock", "spring", "lockwasher", "split"), "lock"),
    **dict.fromkeys(("a", "b"), None),
    **dict.fromkeys(("washer", "flat", "plain", "type", "iso", "din", "7089", "7980"), None),
}


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Washer(Sourced):
    """A washer.

    Parameters
    ----------
    size : str
        Screw size it is for.
    series : str
        ``normal``, ``narrow``, ``regular``, ``wide`` or ``lock``.
    standard : str
        Document that governs it.
    outside_diameter : float
        Outside diameter [mm].
    hole_diameter : float, optional
        Inside diameter [mm]; None where the table gives none.
    thickness : float, optional
        Nominal thickness [mm]; None where the table gives none.
    greatest_thickness : float, optional
        Greatest thickness [mm], where the table gives it.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    size: str
    series: str
    standard: str
    outside_diameter: float
    hole_diameter: float | None = None
    thickness: float | None = None
    greatest_thickness: float | None = None

    def _line(self) -> str:
        return (
            f"{self.size} {self.series}: {show_both(self.outside_diameter)} across, {self.standard}"
        )

    @property
    def name(self) -> str:
        """What to ask for: ``1/4 narrow washer``."""
        return f"{self.size} {self.series} washer"


def washer(text: str) -> Washer:
    """Find a washer.

    Parameters
    ----------
    text : str
        Screw size, and the series where there are several: ``1/4 narrow``, ``3/8 wide``,
        ``1/2 type B regular``, ``#10``, ``M6``, ``1/4 lock``. SAE is read as narrow, USS as
        wide.

    Returns
    -------
    Washer
        Inch plain washers are type A unless type B is said.

    Raises
    ------
    SeatworkError
        If the series is left open (it asks), or no such washer is held.

    Examples
    --------
    >>> washer("1/4 narrow").outside_diameter, washer("M6").thickness
    (15.875, 1.6)
    """
    with as_typed(text):
        plain = tidy(text, WANTED)
        glued = re.sub(r"^(\d+(?:-\d+)?/\d+) ?([nw])\b", r"\1 \2", plain)
        found, rest = read_thread(glued)
        words = [word for word in re.split(r"[ ,()-]+", rest) if word]
        return _washer(found, _series(plain, words), type_b="b" in words)


def _series(plain: str, words: list[str]) -> str | None:
    for word in words:
        if word not in SERIES:
            raise SeatworkError(plain, f"I cannot read {word!r}", f"write {WANTED}")
    named = {SERIES[word] for word in words} - {None}
    if len(named) > 1:
        raise SeatworkError(plain, "it names two series", f"write {WANTED}")
    return named.pop() if named else None


def _washer(found: Thread, series: str | None, *, type_b: bool) -> Washer:
    if series == "lock":
        return _lock(found)
    if found.system == "metric":
        return _metric(found, series)
    return _type_b(found, series) if type_b else _type_a(found, series)


def _lock(found: Thread) -> Washer:
    metric = found.system == "metric"
    table = "lock_washer_din_7980" if metric else "lock_washer_inch"
    row = tables.row(table, found.size)
    thick = "thickness_mm" if metric else "thickness_min_in"
    return _made(
        found, "lock", table, row, f"outside_dia_max_{'mm' if metric else 'in'}", thickness=thick
    )


def _metric(found: Thread, series: str | None) -> Washer:
    if series is not None:
        raise SeatworkError(
            found.size,
            f"ISO 7089 has no {series} series",
            f"write {found.size} or {found.size} lock",
        )
    table = "washer_iso_7089"
    return _made(
        found,
        "normal",
        table,
        tables.row(table, found.size),
        "outside_dia_d2_max_mm",
        hole_diameter="hole_d1_min_mm",
        thickness="thickness_h_nominal_mm",
        greatest_thickness="thickness_h_max_mm",
    )


def _type_a(found: Thread, series: str | None) -> Washer:
    table = "washer_type_A_asme_b18_21_1"
    numbered = found.size.startswith("#")
    if not numbered and series not in ("narrow", "wide"):
        raise SeatworkError(
            found.size,
            "narrow or wide washer?",
            f"write {found.size} narrow (SAE) or {found.size} wide (USS)",
        )
    letter = "" if numbered or series is None else series[0].upper()
    row = tables.row(table, f"{found.size}{letter}")
    return _made(
        found,
        series or "narrow",
        table,
        row,
        "outside_dia_basic_in",
        hole_diameter="inside_dia_basic_in",
        thickness="thickness_basic_in",
    )


def _type_b(found: Thread, series: str | None) -> Washer:
    table, name = "washer_type_B_asme_b18_21_1", series or "regular"
    row = tables.row(table, found.size)
    outside = f"outside_dia_{name}_in"
    return _made(found, name, table, row, outside, hole_diameter="inside_dia_basic_in")


def _made(
    found: Thread,
    series: str,
    table: str,
    row: dict[str, Cell],
    outside: str,
    **columns: str,
) -> Washer:
    across = needed(table, row, outside)
    others = {name: fact(table, row, column) for name, column in columns.items()}
    return Washer(
        size=found.size,
        series=series,
        standard=tables.about(table).standard,
        outside_diameter=across.value,
        source=across.source,
        confirmed=across.confirmed,
        **{name: value.value for name, value in others.items() if value},
    )
