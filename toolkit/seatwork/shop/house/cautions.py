"""The cautions that stand beside every cut, in wording an instructor may change."""

import tomllib
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.rows import Blocks, Row, Shown
from seatwork.shop.folder import at

FILE = "cautions.toml"
FIELDS = {"title", "short", "hazard", "do", "number", "source"}


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Caution(Shown):
    """One box: the hazard, what to do about it, and the number that matters.

    Parameters
    ----------
    operation : str
        What is being done, such as ``"drill_press"``.
    title, hazard : str
        Heading and what can hurt.
    do : tuple of str
        Habits, one sentence each.
    number : str
        The number that matters; empty where there is none.
    source : str
        Where the habit comes from.
    short : str
        The habits that matter most, in one line.
    """

    operation: str
    title: str
    hazard: str
    do: tuple[str, ...]
    number: str = ""
    source: str
    short: str = ""

    @property
    def in_short(self) -> str:
        """The one line; the first habit where the file gives none."""
        return self.short or self.do[0]

    def _line(self) -> str:
        return f"{self.title}: {self.hazard}"

    def _blocks(self) -> Blocks:
        yield "", tuple(Row(label="do", text=habit, source=self.source) for habit in self.do)


def cautions(*operations: str, folder: str | Path | None = None) -> tuple[Caution, ...]:
    """Return the boxes of some operations, in the order asked; all of them if none is named.

    Parameters
    ----------
    *operations : str
        Names as in ``cautions.toml``: before, belt, drill_press, mill, lathe, counterbore ...
    folder : str or Path, optional
        A workbook folder; looked for from the working folder upward if not given. A box in its
        ``shop/cautions.toml`` stands over the package's own of the same name.

    Raises
    ------
    SeatworkError
        If an operation has no caution, or the file is not as described.

    Examples
    --------
    >>> [box.title for box in cautions("before", "mill")]
    ['Before any cut', 'On the mill']
    """
    boxes = {box: found for file in _files(folder) for box, found in _read(*file).items()}
    names = operations or tuple(boxes)
    for name in names:
        if name not in boxes:
            raise SeatworkError(name, "no caution has that name", f"use one of {', '.join(boxes)}")
    return tuple(boxes[name] for name in names)


def closing(folder: str | Path | None = None) -> str:
    """Return the sentence that ends every box: software clears nobody.

    Parameters
    ----------
    folder : str or Path, optional
        Where to begin looking for the workbook; the working folder if not given.
    """
    lines = [_parsed(*file).get("closing") for file in _files(folder)]
    return str([one for one in lines if one][-1])


def _files(folder: str | Path | None) -> list[tuple[Path, int]]:
    """List the package's file and then the workbook's own, each with when it was written."""
    package = Path(str(files("seatwork.shop"))) / "defaults" / FILE
    place = at(folder)
    own = place / "shop" / FILE if place else None
    there = [package, own] if own and own.is_file() else [package]
    return [(path, path.stat().st_mtime_ns) for path in there]


@lru_cache(maxsize=8)
def _parsed(path: Path, _written: int) -> dict[str, object]:
    try:
        return tomllib.loads(path.read_text(encoding="utf-8"))
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
        raise SeatworkError(path.name, f"it cannot be read: {error}", "mend that line") from error


@lru_cache(maxsize=8)
def _read(path: Path, written: int) -> dict[str, Caution]:
    tables = {k: v for k, v in _parsed(path, written).items() if k != "closing"}
    return {name: _caution(path.name, name, table) for name, table in tables.items()}


def _caution(file: str, name: str, table: object) -> Caution:
    if not isinstance(table, dict) or not table.keys() >= FIELDS - {"number", "short"}:
        raise SeatworkError(
            f"{file}, [{name}]",
            "a caution needs title, hazard, do and source",
            "add what is missing",
        )
    unknown = sorted(table.keys() - FIELDS)
    if unknown:
        raise SeatworkError(f"{file}, [{name}]", f"{unknown[0]!r} is not known here", "remove it")
    return Caution(operation=name, **{**table, "do": tuple(table["do"])})
