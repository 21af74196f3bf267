"""Worked tolerance stacks against ``seats.worst_case`` and ``seats.rss``."""

import csv
import json
from pathlib import Path
from typing import Any

import pytest
from seatwork.seats import rss, worst_case
from seatwork.seats.stack import Term

ROWS = list(
    csv.DictReader((Path(__file__).parent / "rows" / "tolerance_stack.csv").open(encoding="utf-8"))
)


def terms(inputs: dict[str, Any]) -> list[Term]:
    """Read the stack of a row: a gap in a housing, a chain, or bare tolerances."""
    if "housing" in inputs:
        chain = [[*inputs["housing"], 1], *([*part, -1] for part in inputs["parts"])]
    elif "chain" in inputs:
        chain = inputs["chain"]
    else:
        tolerances = [inputs["t"]] * inputs["n"] if "n" in inputs else inputs["t"]
        chain = [[0.0, tolerance, 1] for tolerance in tolerances]
    return [
        Term(nominal=nominal, tolerance=tolerance, direction=direction)
        for nominal, tolerance, direction in chain
    ]


@pytest.mark.outside("published example", "seats.worst_case", "seats.rss")
@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['id']} {row['confirmed']}")
def test_published_stacks(row: dict[str, str], outside) -> None:
    """A worked stack comes out as it was worked."""
    stack, statement = terms(json.loads(row["inputs"])), row["statement"]
    if "nominal" in statement:
        found = worst_case(stack).nominal
    elif "RSS" in statement:
        found = rss(stack).plus_minus
    else:
        assert "worst case" in statement
        found = worst_case(stack).plus_minus
    assert outside.row(row, found)
