"""Published heights, depths and slopes of cones against ``seats.cones`` and ``seats.heads``."""

import csv
import json
from pathlib import Path

import pytest
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent

INCH = 25.4
ROWS = list(csv.DictReader((Path(__file__).parent / "rows" / "cones.csv").open(encoding="utf-8")))
SIZES = (("A_in", "D_in", INCH), ("dk_theo_mm", "d_mm", 1.0), ("dc_mm", "dh_mm", 1.0))


def cone_name(*sizes: float | str) -> str:
    """Name a height by its cone: wide, narrow, angle, height."""
    return "cone " + " ".join(f"{float(size):g}" for size in sizes)


def cone(inputs: dict[str, float]) -> tuple[Countersink, float] | None:
    """Make the cone that a row speaks of, and millimeters per unit of the row."""
    for wide, narrow, unit in SIZES:
        if wide in inputs:
            seat = Countersink(
                diameter=inputs[wide] * unit,
                hole_diameter=inputs[narrow] * unit,
                included_angle=inputs["included_angle_deg"],
            )
            return seat, unit
    return None


@pytest.mark.outside("published example", "seats.Countersink.depth")
@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['id']} {row['confirmed']}")
def test_published_cones(row: dict[str, str], outside) -> None:
    """A printed head height, seat depth or slope agrees within its printed rounding."""
    inputs, name = json.loads(row["inputs"]), row["id"]
    made = cone(inputs)
    if made is not None:
        found = made[0].depth / made[1]
        # a height that the tables hold too counts once
        name = cone_name(*inputs.values(), row["expected"])
    elif row["statement"].startswith("depth per unit diameter to the point"):
        found = 1 / (2 * half_tangent(inputs["included_angle_deg"]))
    else:
        assert row["statement"].startswith("radius per unit depth")
        found = half_tangent(inputs["included_angle_deg"])
    assert outside.row(row, found, name)
