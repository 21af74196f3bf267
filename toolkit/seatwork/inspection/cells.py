"""The cells of a row of measured values: lengths, heights, angles, answers, instruments."""

import re
from collections.abc import Callable, Mapping
from typing import Any

from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.inspection.measured import INSTRUMENTS, QUANTITIES, Measured

YES, NO = {"yes", "y", "ok", "x", "1", "true"}, {"no", "n", "0", "false"}
TOUCHES = {"": "", "face": "face", "hole edge": "hole edge", "edge": "hole edge"}
FORMULA = re.compile(r"[=@]|\+[A-Za-z(]|-[A-Za-z(]")
PROUD, BELOW = ("proud", "high", "above"), ("below", "low", "under")
LONGEST = 120

Read = Callable[[str, str | None], Any]


def measured_of(row: Mapping[str, str], number: int, systems: Mapping[str, str]) -> Measured:
    """Read one row.

    Parameters
    ----------
    row : mapping of str to str
        Cells by column.
    number : int
        Number of the line, for a part without a mark.
    systems : mapping of str to str
        System of each feature's print.

    Raises
    ------
    SeatworkError
        At the first cell that cannot stand, its column named.
    """
    cells = {name: cell.strip() for name, cell in row.items()}
    feature = cells.get("feature", "")
    only = next(iter(systems.values())) if len(systems) == 1 else None
    system = systems.get(feature, only)
    values: dict[str, Any] = {}
    instruments: dict[str, str] = {}
    for name, cell in cells.items():
        if not cell:
            continue
        read = _cell(name, cell, system)
        if name.endswith(" with"):
            instruments[name.removesuffix(" with")] = read
        else:
            values[name] = read
    values.setdefault("part", f"row {number}")
    return Measured(**values, instruments=instruments)


def _cell(name: str, cell: str, system: str | None) -> Any:
    try:
        if len(cell) > LONGEST:
            raise SeatworkError(cell[:30] + "...", "that is too long for a cell", "write one value")
        if FORMULA.match(cell):
            raise SeatworkError(cell, "that is a formula, not a value", "type the value")
        return COLUMNS[name](cell, system)
    except SeatworkError as error:
        told = str(error).removesuffix(".")
        value, _, rest = told.partition(": ")
        fault, _, remedy = rest.rpartition("; ")
        raise SeatworkError(
            f"column {name}: {value}", fault or rest, remedy or "write it again"
        ) from error


def _words(cell: str, _: str | None) -> str:
    if not cell.isprintable():
        raise SeatworkError("the cell", "it holds signs that cannot be printed", "type it again")
    return cell


def _length(cell: str, system: str | None) -> float:
    found = units.length(cell, system)
    if not 0 < found < 2540:
        raise SeatworkError(cell, "that is no size of a seat", "measure again")
    return found


def _stand(cell: str, system: str | None) -> float:
    """Read a height: ``flush``, ``.004 below``, ``0.1 mm proud``, ``-.004``.

    Returns
    -------
    float
        Height above the face [mm]; minus below it.
    """
    text = cell.casefold().replace("\N{MINUS SIGN}", "-")
    if text in ("flush", "0", "0.0", ".000", "0.000", "0.00"):
        return 0.0
    word = next((word for word in (*PROUD, *BELOW) if text.endswith(f" {word}")), "")
    size = text.removesuffix(word).strip()
    if word and size[:1] in "+-":
        raise SeatworkError(cell, "it has a sign and a word", "write one: .004 below, or -.004")
    down = size.startswith("-") or word in BELOW
    bare = size.lstrip("+-").strip()
    if re.fullmatch(r"0*[.,]?0*( ?(in|mm|\"))?", bare) and bare:
        return 0.0
    return -units.length(bare, system) if down else units.length(bare, system)


def _angle(cell: str, _: str | None) -> float:
    return units.angle(cell)


def _answer(cell: str, _: str | None) -> bool:
    text = cell.casefold()
    if text in YES:
        return True
    if text in NO:
        return False
    raise SeatworkError(cell, "that is no answer", "write yes or no")


def _touch(cell: str, _: str | None) -> str:
    found = TOUCHES.get(cell.casefold())
    if found is None:
        raise SeatworkError(cell, "that is no place to touch off", "write face or hole edge")
    return found


def _instrument(key: str) -> Read:
    known = QUANTITIES[key].instruments

    def read(cell: str, _: str | None) -> str:
        name = " ".join(cell.casefold().split())
        if name not in known or name not in INSTRUMENTS:
            raise SeatworkError(cell, f"that does not measure a {key}", f"write {', '.join(known)}")
        return name

    return read


COLUMNS: dict[str, Read] = {
    "part": _words,
    "feature": _words,
    "diameter": _length,
    "depth": _length,
    "stand": _stand,
    "angle": _angle,
    "tried": _answer,
    "cleaned": _answer,
    "screw": _words,
    "touch": _touch,
    "burr": _answer,
    **{f"{key} with": _instrument(key) for key, one in QUANTITIES.items() if one.instruments},
}
