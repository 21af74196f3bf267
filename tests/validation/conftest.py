"""Published rows for the validation tests.

A module names its data with ``DATA = "washers"``; a test that takes the fixture
``table_check`` is run once for every row of ``data/washers.csv`` whose form is ``table``.
"""

import csv
import json
from collections.abc import Iterator
from contextvars import ContextVar
from dataclasses import dataclass
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest
from proof.holding import Outside

HOLDING: ContextVar[Outside] = ContextVar("what counts the checks of the running test")
FOLDER = Path(__file__).with_name("data")


@dataclass(frozen=True, slots=True, kw_only=True)
class Check:
    """One published row: what goes in, what must come out, and who says so."""

    id: str
    form: str
    statement: str
    inputs: dict[str, Any]
    expected: str
    unit: str
    tolerance: float
    source: str
    confirmed: str

    @property
    def value(self) -> float:
        """The expected number, in the row's own unit."""
        return float(self.expected)

    def agrees(self, found: float) -> bool:
        """Whether `found` is the expected number within the row's tolerance, which is counted.

        A tolerance of 0 stands for a number read from a table: the same float but for the
        last bits of a change of units.
        """
        return self._held(found, self.value)

    def same(self, found: str) -> bool:
        """Whether `found` is word for word what is expected, which is counted."""
        return self._held(found, self.expected)

    def _held(self, found: float | str, expected: float | str) -> bool:
        return HOLDING.get()(
            self.id,
            found,
            expected,
            within=self.tolerance,
            unit=self.unit,
            source=self.source,
            confirmed=self.confirmed,
        )


def read_checks(path: Path) -> list[Check]:
    """Read the rows of one data file."""
    with path.open(encoding="utf-8", newline="") as file:
        return [
            Check(
                **{
                    **row,
                    "inputs": json.loads(row["inputs"]),
                    "tolerance": float(row["tolerance"]),
                }
            )
            for row in csv.DictReader(file)
        ]


def pytest_generate_tests(metafunc: pytest.Metafunc) -> None:
    """Give every ``<form>_check`` fixture the rows of that form."""
    for name in metafunc.fixturenames:
        if name.endswith("_check"):
            rows = _rows_of(metafunc.module, name.removesuffix("_check"))
            metafunc.parametrize(name, rows, ids=[f"{row.id}-{row.confirmed}" for row in rows])


def _rows_of(module: ModuleType, form: str) -> list[Check]:
    return [row for row in read_checks(FOLDER / f"{module.DATA}.csv") if row.form == form]


@pytest.fixture(autouse=True)
def _counted(outside: Outside) -> Iterator[None]:
    """Count what the running test's rows are held against."""
    token = HOLDING.set(outside)
    yield
    HOLDING.reset(token)


@pytest.fixture
def all_checks() -> dict[str, list[Check]]:
    """Every row of every data file, by the file's name."""
    return {path.stem: read_checks(path) for path in sorted(FOLDER.glob("*.csv"))}
