"""Published bearing areas and the bending rule against ``seats.bearing`` and ``seats.bolting``."""

import csv
import json
from pathlib import Path

import pytest
from seatwork.seats import bearing_pressure, bending_stress
from seatwork.seats.bearing import Bearing
from seatwork.seats.bolting import seat_tilt

INCH, PSI = 25.4, 0.006894757
ROWS = list(
    csv.DictReader((Path(__file__).parent / "rows" / "bearing_bending.csv").open(encoding="utf-8"))
)


@pytest.mark.outside("closed form", "seats.bending_stress")
@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['id']} {row['confirmed']}")
def test_published_areas_and_stresses(row: dict[str, str], outside) -> None:
    """A tabled bearing area, or the stress of a bolt bent through an angle, agrees."""
    inputs = json.loads(row["inputs"])
    if "dw_mm" in inputs:
        ring = Bearing(outside_diameter=inputs["dw_mm"], hole_diameter=inputs["dh_mm"])
        found = ring.area
    else:
        found = bending_stress(
            tilt=inputs["theta_deg"],
            diameter=inputs["d_mm"],
            grip=inputs["L_mm"],
            modulus=inputs["E_MPa"],
        )
    assert outside.row(row, found)


@pytest.mark.outside("published example", "seats.bearing_pressure")
@pytest.mark.parametrize("row", [row for row in ROWS if "dw_mm" in row["inputs"]])
def test_pressure_is_force_over_the_published_area(row: dict[str, str]) -> None:
    """A clamp force of 10 kN on a tabled area gives that force over that area."""
    inputs = json.loads(row["inputs"])
    pressure = bearing_pressure(
        force=10_000, outside_diameter=inputs["dw_mm"], hole_diameter=inputs["dh_mm"]
    )
    # as closely as the area is printed
    within = float(row["tolerance"]) / float(row["expected"])
    assert pressure == pytest.approx(10_000 / float(row["expected"]), rel=within)


def test_one_degree_costs_87_ksi_on_a_half_inch_bolt() -> None:
    """1° on a 1/2 in bolt of 1.5 in grip is 87 ksi (worked out for this project at 30 Mpsi)."""
    stress = bending_stress(tilt=1, diameter=0.5 * INCH, grip=1.5 * INCH, modulus=30e6 * PSI)
    assert stress / PSI / 1000 == pytest.approx(87, abs=0.5)


def test_a_15_thou_feeler_under_a_three_quarter_head_is_a_degree_and_a_bit() -> None:
    """.015 in under a head 3/4 across is 1.15° and 100 ksi (worked out for this project)."""
    tilt = seat_tilt(gap=0.015 * INCH, across=0.75 * INCH)
    assert tilt == pytest.approx(1.15, abs=0.005)
    stress = bending_stress(tilt=tilt, diameter=0.5 * INCH, grip=1.5 * INCH, modulus=30e6 * PSI)
    assert stress / PSI / 1000 == pytest.approx(100, abs=0.5)
