"""Published counterbore depths, limits and clearances against ``seats.counterbore_sizes``."""

import csv
import json
from pathlib import Path

import pytest
from seatwork.hardware import hole_limits
from seatwork.seats.counterbore_sizes import sized_for

ROWS = list(
    csv.DictReader(
        (Path(__file__).parent / "rows" / "counterbore_geometry.csv").open(encoding="utf-8")
    )
)
ALLOWANCE = {"M5": 0.4, "M16": 0.6, "M24": 0.8}
"""DIN 974-1 allowance over the head's height [mm]; the rows name its source."""


def found(row: dict[str, str]) -> float:
    """Work a row out: a depth, an upper limit, or the clearance round a washer."""
    inputs = json.loads(row["inputs"])
    if "nominal_mm" in inputs:
        return hole_limits(inputs["nominal_mm"], "H13").greatest
    if "k_mm" in inputs:
        head = inputs["k_mm"]
        sized = sized_for(
            hole_diameter=1.1 * head,
            head_diameter=1.5 * head,
            head_height=head,
            clearance=0.5,
            below=ALLOWANCE[inputs["thread"]],
        )
        return sized.counterbore.depth
    sized = sized_for(
        hole_diameter=inputs["washer_od_mm"] / 2,
        head_diameter=inputs["washer_od_mm"] * 0.8,
        head_height=10,
        clearance=float(row["expected"]),
        below=0.5,
        washer_diameter=inputs["washer_od_mm"],
        washer_thickness=2,
    )
    assert sized.set_by == "washer"
    assert sized.counterbore.diameter == pytest.approx(inputs["counterbore_mm"], abs=1e-9)
    return sized.counterbore.diameter - inputs["washer_od_mm"]


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['id']} {row['confirmed']}")
def test_published_counterbores(row: dict[str, str], outside) -> None:
    """A published depth, H13 limit or washer clearance comes out as printed."""
    assert outside.row(row, found(row))


@pytest.mark.parametrize(
    ("nominal", "micrometers"),
    [(4, 180), (8, 220), (11, 270), (15, 270), (18, 270), (20, 330), (33, 390), (50, 390)],
)
def test_it13_follows_its_own_rule(nominal: float, micrometers: float) -> None:
    """The ISO 286-1 rule gives IT13 180, 220, 270, 330 and 390 µm over the steps to 50 mm.

    Source: as row CBR-25, confirmed by one source and memory.
    """
    assert hole_limits(nominal, "H13").greatest - nominal == pytest.approx(
        micrometers / 1000, abs=1e-9
    )
