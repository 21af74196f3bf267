"""A whole part: a file of notes, planned row by row, the bad rows told and left out."""

import csv
import io
from dataclasses import dataclass
from pathlib import Path

from seatwork import notes, units
from seatwork.errors import SeatworkError
from seatwork.plan.making import make
from seatwork.plan.records import Plan
from seatwork.shop.stock import Shop

SIZES = ("thickness", "edge", "engagement")
COLUMNS = ("feature", "note", "screw", "material", "machine", *SIZES)
LARGEST = 256 * 1024  # bytes
MOST = 500  # rows


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """A part planned from a file.

    Parameters
    ----------
    name : str
        Name of the part, from the file's name.
    plans : dict of str to Plan
        One plan for each good row, by the name of its feature.
    faults : tuple of str
        One sentence for each bad row: file, row, column, what would do.
    """

    name: str
    plans: dict[str, Plan]
    faults: tuple[str, ...]


def plan_part(
    path: Path,
    *,
    material: str | None = None,
    machine: str | None = None,
    shop: Shop | None = None,
) -> Part:
    """Plan every note of a file.

    Parameters
    ----------
    path : Path
        A CSV with the columns feature, note, screw, material, machine, thickness, edge, engagement
        (all but note may be left out), or a text file with one note a line.
    material, machine : str, optional
        For rows that name none.
    shop : Shop, optional
        The shop; the workbook folder's, or the package's own.

    Returns
    -------
    Part
        The good rows planned, the bad ones told.

    Raises
    ------
    SeatworkError
        If the file cannot be read at all.
    """
    shop = shop or Shop.at()
    usual = {"material": material or "", "machine": machine or ""}
    plans: dict[str, Plan] = {}
    faults: list[str] = []
    for number, row in _rows(path):
        filled = {**usual, **{key: value for key, value in row.items() if value}}
        name = filled.get("feature") or f"row {number}"
        try:
            if name in plans:
                raise SeatworkError(name, "two rows have that feature name", "rename one")
            plans[name] = _plan(filled, shop)
        except SeatworkError as error:
            faults.append(f"{path.name}, row {number}: {error}")
    return Part(name=path.stem, plans=plans, faults=tuple(faults))


def _plan(row: dict[str, str], shop: Shop) -> Plan:
    for needed in ("note", "material", "machine"):
        if not row.get(needed):
            raise SeatworkError(f"column {needed}", "it is empty", f"write the {needed}")
    callout = notes.read(row["note"])
    sizes = {key: _length(key, row[key]) for key in SIZES if row.get(key)}
    return make(
        callout,
        screw=row.get("screw") or None,
        material=row["material"],
        machine=row["machine"],
        shop=shop,
        **sizes,
    )


def _length(column: str, text: str) -> float:
    try:
        return units.length(text)
    except SeatworkError as error:
        told = f"column {column}: {error.value}"
        raise SeatworkError(told, error.fault, error.remedy, **error.sizes) from error


def _rows(path: Path) -> list[tuple[int, dict[str, str]]]:
    text = _text(path)
    lines = text.splitlines()
    header = [cell.strip().casefold() for cell in next(csv.reader(lines[:1]), [])]
    if "note" not in header:
        found = [(n, {"note": line.strip()}) for n, line in enumerate(lines, 1) if line.strip()]
        return _not_too_many(path, found)
    unknown = [name for name in header if name not in COLUMNS]
    if unknown:
        raise SeatworkError(
            f"{path.name}, column {unknown[0] or '(no name)'}",
            "no such column is known",
            f"use {', '.join(COLUMNS)}",
        )
    reader = csv.reader(io.StringIO(text, newline=""))
    next(reader)
    found = []
    try:
        for cells in reader:
            row = {key: cell.strip() for key, cell in zip(header, cells, strict=False)}
            if any(row.values()):
                found.append((reader.line_num, row))
    except csv.Error as error:
        raise SeatworkError(
            f"{path.name}, row {reader.line_num}", f"it is no CSV: {error}", "save it again as CSV"
        ) from error
    return _not_too_many(path, found)


def _not_too_many(
    path: Path, found: list[tuple[int, dict[str, str]]]
) -> list[tuple[int, dict[str, str]]]:
    if not found:
        raise SeatworkError(path.name, "it holds no note", "write one note a line")
    if len(found) > MOST:
        raise SeatworkError(path.name, f"it holds over {MOST} rows", "split it by part")
    return found


def _text(path: Path) -> str:
    try:
        if path.stat().st_size > LARGEST:
            raise SeatworkError(path.name, "it is too large for a list of notes", "split it")
        return path.read_text(encoding="utf-8-sig")
    except OSError as error:
        raise SeatworkError(path.name, "it cannot be opened", "check its name") from error
    except UnicodeDecodeError as error:
        raise SeatworkError(
            path.name, "it is not UTF-8 text", "save it as CSV UTF-8 or plain text UTF-8"
        ) from error
