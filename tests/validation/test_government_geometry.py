"""Geometry stated by public manuals against ``seats.sheet`` and ``seats.bolting``."""

import csv
import json
from pathlib import Path

import pytest
from seatwork.seats import Countersink
from seatwork.seats.bolting import STRUCTURAL_SLOPE, slope_angle
from seatwork.seats.sheet_metal import InSheetMetal

INCH = 25.4
ROWS = {
    row["id"]: row
    for row in csv.DictReader(
        (Path(__file__).parent / "rows" / "government_geometry.csv").open(encoding="utf-8")
    )
}


def test_gov_08_a_rivet_seat_leaves_land_in_the_least_sheet() -> None:
    """GOV-08: the 100° seat of a 5/32 rivet is .052 deep and leaves no knife edge in .064."""
    row = ROWS["GOV-08"]
    inputs = json.loads(row["inputs"])
    seat = Countersink(
        diameter=inputs["dc_in"] * INCH, hole_diameter=inputs["dh_in"] * INCH, included_angle=100
    )
    sheet = InSheetMetal(seat=seat, thickness=inputs["sheet_in"] * INCH)
    assert seat.depth / INCH == pytest.approx(float(row["expected"]), abs=float(row["tolerance"]))
    assert not sheet.knife_edge
    assert sheet.land / INCH == pytest.approx(0.064 - 0.052, abs=float(row["tolerance"]))


def test_gov_16_one_in_twenty_is_not_quite_three_degrees() -> None:
    """GOV-16: the structural-steel slope of 1:20 is 2.862°."""
    row = ROWS["GOV-16"]
    found = slope_angle(STRUCTURAL_SLOPE)
    assert found == pytest.approx(float(row["expected"]), abs=float(row["tolerance"]))
