"""A whole part: a file of notes, planned row by row, the bad rows told and left out."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from seatwork import notes, units
from seatwork.errors import SeatworkError
from seatwork.files import read_table
from seatwork.files.text import lines_of, text_of
from seatwork.plan.making import make
from seatwork.plan.plans import Plan
from seatwork.rows import Blocks, Row, Shown
from seatwork.shop.shop import Shop

SIZES = ("thickness", "edge", "engagement")
COLUMNS = ("feature", "note", "screw", "material", "machine", *SIZES)
MOST = 500  # rows
LONGEST = 2_000  # characters of a note


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Part(Shown):
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

    def _line(self) -> str:
        return f"{self.name}: {len(self.plans)} planned, {len(self.faults)} to mend"

    def _blocks(self) -> Blocks:
        for name, plan in self.plans.items():
            for heading, rows in plan._blocks():
                yield f"{name}, {heading}", rows
        yield "To mend", tuple(Row(label="row", text=fault) for fault in self.faults)


def plan_part(
    path: str | Path,
    *,
    material: str | None = None,
    machine: str | None = None,
    shop: Shop | None = None,
) -> Part:
    """Plan every note of a file.

    Parameters
    ----------
    path : str or Path
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
    path = Path(path)
    shop = shop or Shop.at()
    usual = {"material": material or "", "machine": machine or ""}
    plans: dict[str, Plan] = {}
    rows, faults = _rows(path)
    for number, row in rows:
        filled = {**usual, **{key: value for key, value in row.items() if value}}
        name = filled.get("feature") or f"row {number}"
        try:
            if name in plans:
                raise SeatworkError(name, "two rows have that feature name", "rename one")
            plans[name] = _plan(filled, shop)
        except SeatworkError as error:
            faults.append(f"{path.name}, row {number}: {error}")
    return Part(name=path.stem, plans=plans, faults=tuple(faults))


def parts(
    paths: Sequence[str | Path],
    *,
    material: str | None = None,
    machine: str | None = None,
    shop: Shop | None = None,
) -> tuple[dict[str, Plan], tuple[str, ...]]:
    """Plan the features of several parts; two of one name get the part's name before them.

    Parameters
    ----------
    paths : sequence of str or Path
        Files of notes, as `plan_part` reads them.
    material, machine : str, optional
        For rows that name none.
    shop : Shop, optional
        The shop; the workbook folder's, or the package's own.

    Returns
    -------
    plans : dict of str to Plan
        One plan for each good row, by the name of its feature.
    faults : tuple of str
        One sentence for each bad row.

    Raises
    ------
    SeatworkError
        If a file cannot be read at all.
    """
    plans: dict[str, Plan] = {}
    faults: list[str] = []
    for path in paths:
        made = plan_part(path, material=material, machine=machine, shop=shop)
        for name, one in made.plans.items():
            plans[f"{made.name}, {name}" if name in plans else name] = one
        faults += made.faults
    return plans, tuple(faults)


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
        raise error.of(f"column {column}: {error.value}") from error


def _rows(path: Path) -> tuple[list[tuple[int, dict[str, str]]], list[str]]:
    """Return the rows that hold a note, and a sentence for each that cannot be read."""
    lines = lines_of(text_of(path, path.name))
    if not lines:
        raise SeatworkError(path.name, "it holds no note", "write one note a line")
    heads = {head.strip(' "').casefold() for head in re.split("[,;\t]", lines[0][1])}
    if heads & set(COLUMNS):
        faults: list[SeatworkError] = []
        rows = read_table(
            path, columns=COLUMNS, needed=("note",), most=MOST, longest=LONGEST, faults=faults
        )
        if not rows and not faults:
            raise SeatworkError(path.name, "it holds no note", "write a row for each feature")
        return [(row.number, row.cells) for row in rows], [str(fault) for fault in faults]
    if len(lines) > MOST:
        raise SeatworkError(path.name, f"it has more than {MOST} rows", "split it by part")
    return [(number, {"note": line.strip()}) for number, line in lines], []
