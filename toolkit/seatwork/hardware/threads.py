"""Screw sizes and threads: ``#10-32``, ``1/4-20``, ``M6``, ``M8x1``."""

import re
from dataclasses import dataclass, replace
from typing import Literal

from seatwork import quantities, tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Sourced, needed
from seatwork.hardware.spelling import as_typed, tidy
from seatwork.hardware.spoken import digits
from seatwork.tables.reading import Cell
from seatwork.units import show_both

WANTED = "a size such as #10-32, 1/4-20, M6 or M8x1"
INCH_TABLE, METRIC_TABLE = "threads_inch_unc_unf", "threads_metric_iso_262"
INCH_SERIES = {"UNC": "unc_threads_per_inch", "UNF": "unf_threads_per_inch"}

METRIC_PITCHES = ("coarse_pitch_mm", "fine_pitch_1_mm", "fine_pitch_2_mm")

METRIC = re.compile(r"m ?(\d+(?:[.,]\d+)?)(?: ?[x-] ?(\d+(?:[.,]\d+)?)(?![\d/]))?")
INCH = re.compile(
    r"(#|no\.? ?|number )? ?(\d+ ?- ?\d+/\d+|\d+ \d+/\d+|\d+/\d+|\d*\.\d+|\d+)"
    r'( ?(?:"|inch|in\b\.?))?(?: ?- ?(\d+)(?![\d/.]))?'
)
CLASS = re.compile(
    r"^ ?-? ?(?:u?n[cf](?![a-z]))?(?: ?- ?)?(?:[123][ab]|[4-8][egh](?:[4-8][egh])?)?(?![\w/.])"
)


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Thread(Sourced):
    """A screw's size, and its pitch where it was said.

    Parameters
    ----------
    size : str
        ``#10``, ``1/4``, ``M6``.
    system : {"inch", "metric"}
        Whose size it is.
    diameter : float
        Basic major diameter [mm].
    pitch : float, optional
        Advance in one turn [mm]; None where only the size was named.
    series : str, optional
        ``UNC``, ``UNF``, ``coarse`` or ``fine``.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    size: str
    system: Literal["inch", "metric"]
    diameter: float
    pitch: float | None = None
    series: str | None = None

    def _line(self) -> str:
        return f"{self.name}: {show_both(self.diameter)} major diameter, {self.document}"

    @property
    def name(self) -> str:
        """The thread as written on a print: ``#10-32``, ``M6x1``; the size alone without pitch."""
        if self.pitch is None:
            return self.size
        if self.system == "inch":
            return f"{self.size}-{quantities.INCH / self.pitch:.0f}"
        return f"{self.size}x{self.pitch:g}"


def thread(text: str) -> Thread:
    """Read a screw size or a thread.

    Parameters
    ----------
    text : str
        ``#10``, ``10-32``, ``No. 8``, ``1/4-20 UNC-2B``, ``.250-20``, ``M6``, ``M8 x 1``,
        ``quarter-twenty``.

    Returns
    -------
    Thread
        Pitch and series None where none was named.

    Raises
    ------
    SeatworkError
        If it is no size in the tables, or could be two.

    Examples
    --------
    >>> thread("10-32").name, thread("M8 x 1").series, thread("1/4").pitch
    ('#10-32', 'fine', None)
    """
    with as_typed(text):
        plain = digits(tidy(text, WANTED))
        found, rest = read_thread(plain)
        if rest:
            raise SeatworkError(
                plain, f"I cannot read {rest!r} as part of a thread", f"write {WANTED}"
            )
    return found


def read_thread(plain: str) -> tuple[Thread, str]:
    """Read the thread at the start of tidy text; return it and what follows."""
    metric = METRIC.match(plain)
    if metric:
        found, kept = _metric(plain, *metric.groups())
        rest = plain[metric.end() if kept else metric.end(1) :]
    else:
        inch = INCH.match(plain)
        if not inch:
            raise SeatworkError(plain, "no screw size stands at the start", f"write {WANTED}")
        found, rest = _inch(plain, *inch.groups()), plain[inch.end() :]
    return _series_named(plain, found, rest)


def _series_named(plain: str, found: Thread, rest: str) -> tuple[Thread, str]:
    """Take series and class of fit off the rest: ``UNC-2B``, ``-6H``."""
    taken = CLASS.match(rest)
    stated = taken.group() if taken else ""
    series = next((name for name in INCH_SERIES if name[1:].lower() in stated), None)
    if series and found.series is None and found.system == "inch":
        found = _with_inch_series(found, series)
    elif series and series != found.series:
        raise SeatworkError(
            plain, f"{found.name} is not {series}", "leave the series out, or correct the pitch"
        )
    return found, rest[len(stated) :].strip(" ,-")


def _metric(plain: str, diameter: str, second: str | None) -> tuple[Thread, bool]:
    """Return the metric thread, and whether the number after the x was its pitch."""
    size = f"M{float(diameter.replace(',', '.')):g}"
    row = tables.row(METRIC_TABLE, size)
    basic = needed(METRIC_TABLE, row, "d_mm")
    bare = Thread(
        size=size,
        system="metric",
        diameter=basic.value,
        source=basic.source,
        confirmed=basic.confirmed,
    )
    if second is None:
        return bare, True
    pitch = float(second.replace(",", "."))
    pitches = [row[column] for column in METRIC_PITCHES if row[column]]
    if pitch in pitches:
        series = "coarse" if pitch == pitches[0] else "fine"
        return replace(bare, pitch=pitch, series=series), True
    if pitch > float(pitches[0] or 0):
        return bare, False  # a length: M6x20
    text = ", ".join(f"{each:g}" for each in pitches)
    raise SeatworkError(plain, f"{size} has no pitch {pitch:g} in the table", f"it has {text}")


def _inch(plain: str, mark: str | None, size: str, inches: str | None, count: str | None) -> Thread:
    sizes = _inch_sizes(plain, size, marks=f"{'#' if mark else ''}{'in' if inches else ''}")
    if count is None:
        if len(sizes) > 1:
            raise SeatworkError(
                plain, f"{size} could be {' or '.join(sizes)} in", f"write #{size} or {size} in"
            )
        return _inch_thread(sizes[0], None)
    fitting = [(name, series) for name in sizes for series in _series_of(name, float(count))]
    if not fitting:
        raise SeatworkError(
            plain,
            f"no {' or '.join(sizes)} has {count} threads per inch in UNC or UNF",
            "; ".join(_pitches_text(name) for name in sizes),
        )
    return _inch_thread(*fitting[0])


def _inch_sizes(plain: str, size: str, *, marks: str) -> list[str]:
    """Return the sizes in the table that `size` can mean, marked with # or in or neither."""
    held = {str(row["size"]): float(row["basic_major_dia_in"] or 0) for row in _inch_rows()}
    name = re.sub(r" ?[ -] ?(?=\d+/\d)", "-", size)
    if "." in name:
        names = [key for key, basic in held.items() if abs(basic - float(name)) < 0.0005]
    else:
        keys = {"#": [f"#{name}"], "in": [name], "": [f"#{name}", name]}.get(marks, [])
        names = [key for key in keys if key in held]
    if not names:
        _ask_about_run_together(plain, size)
        raise SeatworkError(
            plain,
            f"{marks.replace('in', '')}{size} is no size in the unified thread table",
            "it has #0 to #6, #8, #10, #12, and 1/4 to 1-1/2 in",
        )
    return names


def _ask_about_run_together(plain: str, size: str) -> None:
    """Ask about a size and count run together: 1032 or 10/32 for #10-32, 1420 for 1/4-20."""
    threads = [
        f"{row['size']}-{row[column]:g}"
        for row in _inch_rows()
        for column in INCH_SERIES.values()
        if row[column]
    ]
    meant = [name for name in threads if re.sub(r"\D", "", name) == size.replace("/", "")]
    if meant:
        text = " or ".join(meant)
        raise SeatworkError(plain, f"did you mean {text}?", f"write {text}")


def _series_of(size: str, count: float) -> list[str]:
    rows = [row for row in _inch_rows() if row["size"] == size]
    return [name for row in rows for name, column in INCH_SERIES.items() if row[column] == count]


def _pitches_text(size: str) -> str:
    row = tables.row(INCH_TABLE, size)
    series = [f"{row[col]:g} ({name})" for name, col in INCH_SERIES.items() if row[col]]
    return f"{size} has {' and '.join(series)}"


def _inch_thread(size: str, series: str | None) -> Thread:
    row = tables.row(INCH_TABLE, size)
    basic = needed(INCH_TABLE, row, "basic_major_dia_in")
    found = Thread(
        size=size,
        system="inch",
        diameter=basic.value,
        source=basic.source,
        confirmed=basic.confirmed,
    )
    return _with_inch_series(found, series) if series else found


def _with_inch_series(found: Thread, series: str) -> Thread:
    count = tables.row(INCH_TABLE, found.size)[INCH_SERIES[series]]
    if not isinstance(count, float):
        raise SeatworkError(found.size, f"it has no {series} thread", _pitches_text(found.size))
    return replace(found, pitch=quantities.INCH / count, series=series)


def _inch_rows() -> list[dict[str, Cell]]:
    return tables.rows(INCH_TABLE)
