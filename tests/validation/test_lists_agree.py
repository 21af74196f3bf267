"""One published list against another that was read elsewhere: each value counts once.

What one document takes from another must agree. It finds slips of typing; where both lists were
read in one book, it finds no error of the book.
"""

from dataclasses import dataclass
from typing import Any

import pytest
from proof.holding import LISTS
from seatwork import tables


@dataclass(frozen=True, slots=True)
class Shared:
    """A column of one table that another table holds too, by the size both are for."""

    table: str
    column: str
    other: str
    others: str
    exceptions: tuple[float, ...] = ()


ISO_273 = "clearance_hole_iso_273"
MEDIUM, FINE, COARSE = "medium_H13_mm", "fine_H12_mm", "coarse_H14_mm"
ODD = (12.0, 14.0, 16.0)  # BS 4186:1967 is wider there; the table of contradictions says so
SHARED = [
    Shared("countersink_din_74_form_A_1980", "through_hole_d1_medium_mm", ISO_273, MEDIUM),
    Shared("countersink_din_74_form_A_1980", "through_hole_d1_fine_mm", ISO_273, FINE),
    Shared("countersink_din_74_form_B_1980", "through_hole_d1_medium_mm", ISO_273, MEDIUM),
    Shared("countersink_din_74_form_F_2003", "through_hole_dh_mm", ISO_273, MEDIUM),
    Shared("countersink_iso_15065", "through_hole_dh_mm", ISO_273, MEDIUM),
    Shared("clearance_hole_bs_4186_1967", "close_mm", ISO_273, FINE),
    Shared("clearance_hole_bs_4186_1967", "medium_mm", ISO_273, MEDIUM, ODD),
    Shared("clearance_hole_bs_4186_1967", "free_mm", ISO_273, COARSE, ODD),
    Shared("countersink_iso_15065", "countersink_dia_dc_min_nominal_mm",
           "metric_csk_iso_7721_heads", "head_dia_dk_theoretical_max_mm"),
    Shared("counterbore_din_974_2", "across_flats_s_mm",
           "hex_head_iso_4014_4017", "across_flats_s_nominal_max_mm"),
    Shared("metric_csk_iso_10642", "pitch_mm", "threads_metric_iso_262", "coarse_pitch_mm"),
    Shared("shcs_inch_asme_b18_3", "head_height_H_max_in",
           "threads_inch_unc_unf", "basic_major_dia_in"),
]  # fmt: skip


def size(row: dict[str, Any]) -> float | str:
    """Tell for which screw a row is: millimeters, or the name of an inch size."""
    if "for_thread_mm" in row:
        return row["for_thread_mm"]
    return float(row["size"][1:]) if row["size"].startswith("M") else row["size"]


@pytest.mark.parametrize("shared", SHARED, ids=lambda one: f"{one.table} {one.column}")
def test_two_documents_print_one_value(shared: Shared, outside) -> None:
    """Every size that both lists hold is the same in both, but for exceptions by name."""
    theirs = {size(row): row[shared.others] for row in tables.rows(shared.other)}
    about, other = tables.about(shared.table), tables.about(shared.other)
    source = f"{about.standard} {about.edition} against {other.standard} {other.edition}"
    compared = 0
    for row in tables.rows(shared.table):
        expected = theirs.get(size(row))
        if expected is None or row[shared.column] is None or size(row) in shared.exceptions:
            continue
        name = f"{shared.table} {size(row)} {shared.column}"
        sure = tables.confirmed(shared.table, row, shared.column)
        unit = shared.column.rpartition("_")[2]
        assert outside(
            name, row[shared.column], expected, within=0, unit=unit, source=source,
            confirmed=sure, kind=LISTS,
        ), name  # fmt: skip
        compared += 1
    assert compared >= 10
