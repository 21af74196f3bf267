"""The shop's machines: spindle speeds, power, how a tool is held, how stiff they may be."""

import re
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from typing import TypeVar

from seatwork import cutting
from seatwork.errors import SeatworkError
from seatwork.rows import Blocks, Shown
from seatwork.shop.lists.reading import Row, read_list
from seatwork.shop.lists.shown import listed_rows

Built = TypeVar("Built")

FILE = "machines.csv"
COLUMNS = (
    "machine",
    "kind",
    "speeds",
    "motor_speed",
    "motor_pulleys_mm",
    "spindle_pulleys_mm",
    "gear_ratio",
    "motor_power",
    "chuck",
    "morse_taper",
    "collets",
    "depth_stop",
    "stiffness_n_per_um",
    "natural_frequency_hz",
    "damping_ratio",
    "lateral_stiffness_n_per_um",
    "lateral_frequency_hz",
    "lateral_damping_ratio",
    "stiffness_source",
    "note",
)
KINDS = ("drill press", "mill", "lathe", "hand drill")
_WATT = {"w": 1.0, "kw": 1000.0, "hp": 745.6998715822702}


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class ShopMachine(Shown):
    """A machine of the shop.

    Parameters
    ----------
    name : str
        As the shop says it.
    kind : {"drill press", "mill", "lathe", "hand drill"}
        What it is.
    speeds : tuple of float or SpeedRange
        Spindle speeds [rev/min].
    motor_power : float or None
        Power on the motor's plate [W].
    chuck : float or None
        Largest straight shank it holds [mm].
    morse_taper : int or None
        Number of the Morse taper in its spindle or tailstock.
    collets : bool
        Whether it holds end mills.
    depth_stop : float or None
        Least step of its depth stop [mm].
    axial, lateral : cutting.Machine or None
        How it gives, for the chatter model only.
    stiffness_source : str
        Where those numbers come from.
    note : str
        What else there is to say.
    """

    name: str
    kind: str
    speeds: tuple[float, ...] | cutting.SpeedRange
    motor_power: float | None
    chuck: float | None
    morse_taper: int | None
    collets: bool
    depth_stop: float | None
    axial: cutting.Machine | None
    lateral: cutting.Machine | None
    stiffness_source: str
    note: str

    def _line(self) -> str:
        return f"{self.name}: {self.kind}, from {self.slowest:.0f} rev/min"

    def _blocks(self) -> Blocks:
        yield "", listed_rows(self)

    @property
    def slowest(self) -> float:
        """Slowest spindle speed [rev/min]."""
        if isinstance(self.speeds, cutting.SpeedRange):
            return self.speeds.slowest
        return self.speeds[0]


def machines(folder: str | Path | None = None) -> tuple[ShopMachine, ...]:
    """Read the shop's machines.

    Parameters
    ----------
    folder : str or Path, optional
        Workbook folder; the one found from the working folder if not given,
        and the package's own list where there is none.

    Returns
    -------
    tuple of ShopMachine

    Raises
    ------
    SeatworkError
        Naming file, row and column, and what would do.

    Examples
    --------
    >>> [machine.name for machine in machines()]
    ['bench drill press', 'knee mill', 'lathe', 'hand drill']
    """
    return read_list(FILE, folder, _machine, columns=COLUMNS, needed=("machine", "kind"))


def power(text: str) -> float:
    """Read a power: ``1/3 hp``, ``250 W``, ``1.5 kW``.

    Returns
    -------
    float
        Power [W].

    Raises
    ------
    SeatworkError
        If the text is no power above zero.

    Examples
    --------
    >>> power("1/3 hp")
    248.57
    """
    found = re.fullmatch(r"(\d{1,5}(?:\.\d{1,4})?|\d{1,2}/[1-9]\d?)\s*(hp|kw|w)", text.casefold())
    if not found or not Fraction(found[1]):
        raise SeatworkError(text, "that is no power", "write 1/3 hp, 250 W or 1.5 kW")
    return float(Fraction(found[1])) * _WATT[found[2]]


def _machine(row: Row) -> ShopMachine:
    taper = row.number_in("morse_taper", 0, 7)
    return ShopMachine(
        name=row.needed("machine"),
        kind=row.word("kind", KINDS),
        speeds=_speeds(row),
        motor_power=row.read("motor_power", power),
        chuck=row.length("chuck"),
        morse_taper=None if taper is None else int(taper),
        collets=row.word("collets", ("yes", "no"), "no") == "yes",
        depth_stop=row.length("depth_stop"),
        axial=_gives(row, "axial", ""),
        lateral=_gives(row, "lateral", "lateral_"),
        stiffness_source=row.text("stiffness_source"),
        note=row.text("note"),
    )


def _speeds(row: Row) -> tuple[float, ...] | cutting.SpeedRange:
    """Speeds as listed, as a range, or from pulleys; with the gear in and out."""
    span = re.fullmatch(r"(\S+)\s*(?:to|-|–)\s*(\S+)", row.text("speeds"))
    if span:
        slowest, fastest = (row.read_part("speeds", part) for part in span.groups())
        return _asked(row, "speeds", cutting.SpeedRange, slowest=slowest, fastest=fastest)
    steps = row.numbers("speeds") or _pulleys(row)
    ratio = row.number_in("gear_ratio", 0.01, 10)
    if ratio is not None:
        return cutting.geared_steps(steps=steps, ratio=ratio)
    return tuple(sorted(set(steps)))


def _pulleys(row: Row) -> tuple[float, ...]:
    motor = row.number_in("motor_speed", 1, 100000)
    if motor is None:
        raise row.refuse(
            "speeds",
            "the machine has no spindle speed",
            "list its speeds, or its motor speed and pulleys",
        )
    return _asked(
        row,
        "spindle_pulleys_mm",
        cutting.pulley_steps,
        motor_speed=motor,
        motor_pulleys=row.numbers("motor_pulleys_mm"),
        spindle_pulleys=row.numbers("spindle_pulleys_mm"),
    )


def _gives(row: Row, direction: str, prefix: str) -> cutting.Machine | None:
    names = (f"{prefix}stiffness_n_per_um", f"{prefix}frequency_hz", f"{prefix}damping_ratio")
    if not prefix:
        names = ("stiffness_n_per_um", "natural_frequency_hz", "damping_ratio")
    limits = ((0.01, 10000.0), (1.0, 10000.0), (0.001, 0.5))
    values = [row.number_in(name, *limit) for name, limit in zip(names, limits, strict=True)]
    if not any(values):
        return None
    for name, value in zip(names, values, strict=True):
        if value is None:
            raise row.refuse(name, "the other two are given", "write it too, or leave all blank")
    stiffness, frequency, damping = (value or 0.0 for value in values)
    return _asked(
        row,
        names[0],
        cutting.Machine,
        stiffness=1e6 * stiffness,
        natural_frequency=frequency,
        damping_ratio=damping,
        direction=direction,
    )


def _asked(row: Row, column: str, build: Callable[..., Built], **values: object) -> Built:
    """Build from a row; what it refuses is told with its place."""
    try:
        return build(**values)
    except SeatworkError as error:
        raise row.refuse(column, f"{error.value}: {error.fault}", error.remedy) from error
