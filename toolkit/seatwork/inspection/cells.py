"""The cells of a row of readings: lengths, heights, angles, answers, instruments."""

import re
from collections.abc import Callable, Iterator, Sequence
from functools import partial
from typing import Any

from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.files import Row
from seatwork.inspection.columns import FEATURE, LENGTHS, PART, UNIT, WITH
from seatwork.inspection.cuts import feature_named
from seatwork.inspection.measured import INSTRUMENTS, QUANTITIES, Measured

YES, NO = {"yes", "y", "ok", "x", "1", "true"}, {"no", "n", "0", "false"}
TOUCHES = {"face": "face", "hole edge": "hole edge", "edge": "hole edge"}
SYSTEMS = {"in": "inch", "inch": "inch", '"': "inch", "mm": "metric"}
FORMULA = re.compile(r"[=@]|\+[A-Za-z(]|-[A-Za-z(]")
ZERO = re.compile(r'[+-]?0*[.,]?0*( ?(in|mm|"))?')
BARE = re.compile(r"\d+[.,]?\d*|[.,]\d+", re.ASCII)
FRACTION = re.compile(r"(\d+[ -])?\d+/\d+", re.ASCII)
PROUD, BELOW = ("proud", "high", "above"), ("below", "low", "under")
KEYS = {one.column: key for key, one in QUANTITIES.items()}

Read = Callable[[str], Any]


def read_row(
    row: Row, features: Sequence[str] | None
) -> tuple[Measured | None, list[SeatworkError]]:
    """Read one row.

    Parameters
    ----------
    row : Row
        Cells by heading; a heading may carry a unit, such as ``diameter [mm]``.
    features : sequence of str or None
        The features there are; None leaves the feature as written.

    Returns
    -------
    tuple
        The part, or None with a fault for every cell that cannot stand.
    """
    values: dict[str, Any] = {}
    faults = list(_read_cells(row, features, values))
    faults += [] if faults else _unsaid(row, values)
    if faults:
        return None, faults
    instruments = {
        KEYS[name.removesuffix(WITH)]: values.pop(name)
        for name in [name for name in values if name.endswith(WITH)]
    }
    place = f"{row.file}, row {row.number}"
    part = values.pop(PART, f"row {row.number}")
    fields = {KEYS.get(name, name): value for name, value in values.items()}
    return Measured(part=part, instruments=instruments, place=place, **fields), []


def holds_nothing(row: Row) -> bool:
    """Tell whether only the feature and the unit are filled in, as on a blank."""
    return not any(cell for name, cell in row.cells.items() if name not in (FEATURE, UNIT))


def _read_cells(
    row: Row, features: Sequence[str] | None, values: dict[str, Any]
) -> Iterator[SeatworkError]:
    """Fill in the values of a row, and yield what cannot be read."""
    for heading in (FEATURE, *(name for name in row.cells if name != FEATURE)):
        name, _, unit = heading.removesuffix("]").partition(" [")
        try:
            if name == FEATURE and features is not None:
                values[name] = _feature(row, features)
            elif name in KEYS or name.removesuffix(WITH) in KEYS or name in (FEATURE, PART):
                found = row.read(heading, partial(_cell, name, _system(row, heading, unit)))
                values |= {} if found is None else {name: found}
        except SeatworkError as error:
            yield error


def _unsaid(row: Row, values: dict[str, Any]) -> Iterator[SeatworkError]:
    """Yield what a reading rests on and nobody wrote."""
    if "angle" in values and f"angle{WITH}" not in values:
        known = ", ".join(QUANTITIES["angle"].instruments)
        fault = "there is an angle, and it is not said what it was measured with"
        yield row.refuse(f"angle{WITH}", fault, f"write one of {known}")
    if "ball top" in values and "ball" not in values:
        fault = "there is a ball top, and it is not said of which ball"
        yield row.refuse("ball", fault, "write the diameter of the ball")


def _feature(row: Row, features: Sequence[str]) -> str:
    try:
        return feature_named(row.text(FEATURE), features)
    except SeatworkError as error:
        raise row.refuse(FEATURE, f"{error.value}: {error.fault}", error.remedy) from error


def _system(row: Row, heading: str, unit: str) -> str | None:
    """Return the system of a bare number: what the heading says, else the row's unit."""
    written = row.text(UNIT).casefold()
    if written and written not in SYSTEMS:
        raise row.refuse(UNIT, f"{written} is no unit of a sheet", "write in or mm")
    if unit and written and SYSTEMS[unit] != SYSTEMS[written]:
        raise row.refuse(heading, f"the row says {written}", "write one unit in both places")
    return SYSTEMS.get(unit or written)


def _cell(name: str, system: str | None, cell: str) -> Any:
    if FORMULA.match(cell):
        raise SeatworkError(cell, "that is a formula, not a value", "type the value")
    if name.endswith(WITH):
        return _instrument(KEYS[name.removesuffix(WITH)], cell)
    kind = QUANTITIES[KEYS[name]].kind if name in KEYS else "words"
    if kind in LENGTHS:
        return _SIZES[kind](system, cell)
    return _OTHERS[kind](cell)


def _words(cell: str) -> str:
    if not cell.isprintable():
        raise SeatworkError(ascii(cell), "it holds signs that do not print", "type it again")
    return cell


def _length(system: str | None, cell: str) -> float:
    found = _size(system, cell)
    if not 0 < found < 2540:
        raise SeatworkError(cell, "that is no size of a seat", "measure again")
    return found


def _size(system: str | None, text: str) -> float:
    """Read a size; one without a unit is asked about where the sheet does not say it."""
    if system is None and BARE.fullmatch(text):
        remedy = f"write {text} in or {text} mm, or head the column with the unit, such as [mm]"
        raise SeatworkError(text, "in or mm?", remedy)
    if system == "metric" and FRACTION.fullmatch(text):
        remedy = f"write {text} in, or millimeters as a decimal"
        raise SeatworkError(text, "a fraction is in inches, and the sheet says mm", remedy)
    return units.length(text, system)


def _signed(system: str | None, cell: str) -> float:
    """Read a height that must say proud or below: ``flush``, ``.004 in below``, ``-.004 in``.

    Returns
    -------
    float
        Height above the face [mm]; minus below it.
    """
    text = _plain(cell)
    signed = text.endswith((*PROUD, *BELOW)) or text.startswith(("+", "-"))
    if not signed and text != "flush" and not ZERO.fullmatch(text) and _size(system, text):
        remedy = f"write {cell} proud or {cell} below, or flush"
        raise SeatworkError(cell, "it does not say proud or below", remedy)
    return _height(system, cell)


def _height(system: str | None, cell: str) -> float:
    """Read a height above the face unless it says below: ``.250 in``, ``-0.1 mm``."""
    text = _plain(cell)
    word = next((word for word in (*PROUD, *BELOW) if text.endswith(f" {word}")), "")
    size = text.removesuffix(word).strip()
    if word and size[:1] in ("+", "-"):
        raise SeatworkError(cell, "it has a sign and a word", "write one: .004 below, or -.004")
    if size == "flush" or (size and ZERO.fullmatch(size)):
        return 0.0
    height = _size(system, size.lstrip("+-").strip())
    return -height if size.startswith("-") or word in BELOW else height


def _plain(cell: str) -> str:
    return cell.casefold().replace("\N{MINUS SIGN}", "-").replace("\N{EN DASH}", "-")


def _angle(cell: str) -> float:
    found = units.angle(cell)
    if not 0 < found < 180:
        raise SeatworkError(cell, "that is no angle of a seat", "measure again")
    return found


def _answer(cell: str) -> bool:
    text = cell.casefold()
    if text not in YES | NO:
        raise SeatworkError(cell, "that is no answer", "write yes or no")
    return text in YES


def _touch(cell: str) -> str:
    found = TOUCHES.get(cell.casefold())
    if found is None:
        raise SeatworkError(cell, "that is no place to touch off", "write face or hole edge")
    return found


def _instrument(key: str, cell: str) -> str:
    known = QUANTITIES[key].instruments
    name = " ".join(cell.casefold().split())
    if name not in known or name not in INSTRUMENTS:
        fault = f"that does not measure {QUANTITIES[key].about}"
        raise SeatworkError(cell, fault, f"write {', '.join(known)}")
    return name


_SIZES = {"length": _length, "signed": _signed, "height": _height}
_OTHERS: dict[str, Read] = {
    "angle": _angle,
    "answer": _answer,
    "place": _touch,
    "words": _words,
}
