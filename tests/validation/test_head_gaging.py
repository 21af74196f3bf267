"""Published protrusions of flat heads above a gage against ``seats.protrusion``."""

import csv
import json
from pathlib import Path

import pytest
from seatwork.seats import protrusion
from seatwork.seats.head_gaging import plate_hole, sharp_from_protrusion

INCH = 25.4
ROWS = list(
    csv.DictReader((Path(__file__).parent / "rows" / "head_gaging.csv").open(encoding="utf-8"))
)


@pytest.mark.outside("published example", "seats.protrusion")
@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['id']} {row['confirmed']}")
def test_published_protrusions(row: dict[str, str], outside) -> None:
    """A head of greatest sharp diameter stands as far above the gage as the table prints."""
    inputs = json.loads(row["inputs"])
    sharp, gage = inputs["A_in"] * INCH, inputs["G_in"] * INCH
    found = protrusion(sharp, gage, inputs["included_angle_deg"]) / INCH
    name = f"gage {inputs['A_in']:g} {inputs['G_in']:g} {float(row['expected']):g}"
    assert outside.row(row, found, name)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["id"])
def test_published_protrusions_read_back(row: dict[str, str]) -> None:
    """The printed protrusion gives the sharp diameter and the gage hole back."""
    inputs = json.loads(row["inputs"])
    angle, printed = inputs["included_angle_deg"], float(row["expected"]) * INCH
    # protrusion is printed to .001 in, which the cone turns into up to .0024 in of diameter
    slack = 2.4 * float(row["tolerance"])
    sharp = sharp_from_protrusion(printed, inputs["G_in"] * INCH, angle) / INCH
    assert sharp == pytest.approx(inputs["A_in"], abs=slack)
    hole = plate_hole(inputs["A_in"] * INCH, printed, angle) / INCH
    assert hole == pytest.approx(inputs["G_in"], abs=slack)
