"""Every row that prints what a formula gives: heads, seats, gages, hexagons, limits, drills.

A height that a cone does not give is a printed exception; it is named here and not counted.
"""

from dataclasses import dataclass
from typing import Any

import pytest
from seatwork import hardware, tables
from seatwork.seats import Countersink, protrusion
from seatwork.seats.counterbore_sizes import sized_for

INCH = 25.4


@dataclass(frozen=True, slots=True)
class Heights:
    """Columns of a table that print a cone: wide, narrow, height, angle, printed rounding."""

    table: str
    wide: str
    narrow: str
    high: str
    angle: float | None
    rounding: float
    exceptions: tuple[object, ...] = ()


HEIGHTS = [
    Heights("inch_flat82_ansi_b18_6_3_1972", "head_dia_A_max_sharp_in", "basic_dia_D_in",
            "head_height_H_ref_in", 80, 0.0009, ("#6", "5/16")),
    Heights("inch_flat100_ansi_1972_ms24693", "head_dia_A_max_sharp_in", "basic_dia_D_in",
            "head_height_H_ref_in", 99, 0.0009),
    Heights("inch_flat_socket_asme_b18_3", "head_dia_A_max_theoretical_sharp_in",
            "basic_dia_D_in", "head_height_H_ref_in", 82, 0.0009, ("1/2",)),
    Heights("metric_csk_iso_10642", "head_dia_dk_theoretical_max_mm", "d_mm",
            "head_height_k_max_mm", 90, 1e-9),
    Heights("metric_csk_iso_7721_heads", "head_dia_dk_theoretical_max_mm", "d_mm",
            "head_height_k_max_mm", 90, 1e-9),
    Heights("countersink_din_74_form_A_1980", "countersink_dia_d2_medium_mm",
            "through_hole_d1_medium_mm", "depth_t1_medium_mm", 90, 0.051, (7.0,)),
    Heights("countersink_din_74_form_B_1980", "countersink_dia_d2_mm",
            "through_hole_d1_medium_mm", "depth_t1_mm", None, 0.051, (22.0, 24.0)),
    Heights("countersink_din_74_form_F_2003", "countersink_dia_dc_mm", "through_hole_dh_mm",
            "depth_t1_mm", 90, 0.051),
    Heights("countersink_iso_15065", "countersink_dia_dc_max_mm", "through_hole_dh_mm",
            "depth_t1_approx_mm", 90, 0.0051),
    Heights("rivet_heads_ms20426", "head_dia_in", "basic_dia_in", "head_height_in", 100, 0.0011),
]  # fmt: skip
GAGES = [
    ("inch_flat82_asme_b18_6_3_2013", "inch_flat82_ansi_b18_6_3_1972", 80, ("#0",)),
    ("inch_flat100_asme_b18_6_3_2013", "inch_flat100_ansi_1972_ms24693", 99, ()),
]
"""Gages of the newer edition, sharp heads of the older, angle [deg], printed exceptions."""


def said(table: str, row: dict[str, Any], *columns: str) -> dict[str, str]:
    """Tell the document of a table, and how well the cells of a row are confirmed."""
    about = tables.about(table)
    source = f"{about.standard} {about.edition}"
    return {"source": source, "confirmed": tables.confirmed(table, row, *columns)}


@pytest.mark.outside("published example", "seats.Countersink.depth")
@pytest.mark.parametrize("printed", HEIGHTS, ids=lambda one: one.table)
def test_every_printed_height_is_that_of_its_cone(printed: Heights, outside) -> None:
    """Half the difference of the diameters over the tangent of half the angle, as printed.

    Exceptions stand in the table of contradictions and must still differ (`tests/tables`).
    """
    key = tables.about(printed.table).key
    unit = printed.high.rpartition("_")[2]
    per = INCH if unit == "in" else 1.0
    for row in tables.rows(printed.table):
        if row[key] in printed.exceptions:
            continue
        wide, narrow, high = row[printed.wide], row[printed.narrow], row[printed.high]
        angle = printed.angle or row["included_angle_deg"]
        cone = Countersink(diameter=wide * per, hole_diameter=narrow * per, included_angle=angle)
        name = f"cone {wide:g} {narrow:g} {angle:g} {high:g}"
        sure = said(printed.table, row, printed.wide, printed.narrow, printed.high)
        assert outside(name, cone.depth / per, high, within=printed.rounding, unit=unit, **sure)


@pytest.mark.outside("published example", "seats.protrusion")
@pytest.mark.parametrize(("gages", "sharps", "angle", "exceptions"), GAGES)
def test_every_printed_protrusion_is_that_of_the_sharp_head(
    gages: str, sharps: str, angle: float, exceptions: tuple[str, ...], outside
) -> None:
    """The greatest protrusion of the 2013 gage is that of the 1972 sharp cone, to .0012 in."""
    cones = {row["size"]: row["head_dia_A_max_sharp_in"] for row in tables.rows(sharps)}
    for row in tables.rows(gages):
        sharp, gage = cones.get(row["size"]), row["gauge_dia_G_in"]
        if sharp and gage and row["size"] not in exceptions:
            printed = row["gauge_protrusion_F_max_in"]
            found = protrusion(sharp * INCH, gage * INCH, angle) / INCH
            name = f"gage {sharp:g} {gage:g} {printed:g}"
            sure = said(gages, row, "gauge_dia_G_in", "gauge_protrusion_F_max_in")
            assert outside(name, found, printed, within=0.0012, unit="in", **sure)


def test_every_printed_width_across_corners_is_that_of_the_hexagon(outside) -> None:
    """ASME B18.2.1: width across flats over cos 30°, to the printed .001 in."""
    table, flats, corners = (
        "hex_cap_screw_asme_b18_2_1",
        "across_flats_F_max_in",
        "across_corners_G_max_in",
    )
    for row in tables.rows(table):
        found = hardware.across_corners(row[flats] * INCH) / INCH
        name = f"hexagon {row[flats]:g} {row[corners]:g}"
        sure = said(table, row, flats, corners)
        assert outside(name, found, row[corners], within=0.0011, unit="in", **sure)


def test_every_printed_counterbore_depth_is_head_and_allowance(outside) -> None:
    """The list of flush depths: ISO 4762's head and DIN 974-1's allowance, to the last digit."""
    heads = {r["size"]: r["head_height_k_max_mm"] for r in tables.rows("shcs_metric_iso_4762")}
    bores = {r["for_thread_mm"]: r for r in tables.rows("counterbore_din_974_1")}
    for row in tables.rows("counterbore_depth_iso_4762_flush"):
        across = float(row["size"][1:])
        head = heads.get(row["size"], across)
        sized = sized_for(
            hole_diameter=1.1 * across, head_diameter=1.5 * across, head_height=head,
            clearance=0.5, below=bores[across]["depth_allowance_over_head_height_mm"],
        )  # fmt: skip
        printed = row["counterbore_depth_t_mm"]
        sure = said("counterbore_depth_iso_4762_flush", row)
        name = f"flush depth {row['size']}"
        found = sized.counterbore.depth
        assert outside(name, found, printed, within=0, unit="mm", **sure)


@pytest.mark.parametrize(
    ("table", "nominal", "printed", "grade", "sign"),
    [
        ("shcs_metric_iso_4762", "head_dia_dk_max_plain_mm", "head_dia_dk_max_knurled_mm",
         "H13", 1),
        ("metric_csk_din_7991", "head_dia_dk_edge_max_mm", "head_dia_dk_edge_min_mm", "H14", -1),
    ],
)  # fmt: skip
def test_every_head_with_a_grade_has_the_width_of_its_grade(
    table: str, nominal: str, printed: str, grade: str, sign: int, outside
) -> None:
    """Knurled heads are IT13 over the plain one, DIN 7991's least edge IT14 under the greatest."""
    for row in tables.rows(table):
        across = row[nominal]
        width = hardware.hole_limits(across, grade).greatest - across
        name = f"{table} {row['size']} {printed}"
        sure = said(table, row, nominal, printed)
        assert outside(name, across + sign * width, row[printed], within=0, unit="mm", **sure)


def test_every_fraction_drill_has_its_printed_decimal(outside) -> None:
    """A fraction is read as its own size; the list prints it to .0001 in."""
    table = "drill_sizes_inch"
    for row in tables.rows(table):
        if row["series"] == "fraction":
            found = hardware.drill(row["size"]).diameter / INCH
            printed = row["diameter_in"]
            name, sure = f"drill {row['size']}", said(table, row, "diameter_in")
            assert outside(name, found, printed, within=0.000051, unit="in", **sure)
