"""Threads and twist drills: ASME B1.1, ISO 261/262, ASME B94.11M."""

import pytest
from seatwork import hardware, tables

DATA = "threads_drills"
INCH = 25.4


def test_table_holds_the_published_value(table_check) -> None:
    """The table holds the number its document prints."""
    inputs = table_check.inputs
    row = tables.row(inputs["table"], inputs["size"])
    assert table_check.agrees(row[inputs["column"]])


def test_number_sizes_follow_their_rule(number_check) -> None:
    """A numbered size is .060 in and .013 in for every number."""
    found = hardware.thread(f"#{number_check.inputs['number']}").diameter / INCH
    assert number_check.agrees(found)


@pytest.mark.parametrize(
    ("name", "inches"), [("#7", 0.201), ("H", 0.266), ("17/64", 0.265625), ("F", 0.257)]
)
def test_drills_by_name(name, inches) -> None:
    """Number, letter and fraction drills. Source: ASME B94.11M; a fraction is its own size."""
    assert hardware.drill(name).diameter == pytest.approx(inches * INCH, abs=1e-9)
