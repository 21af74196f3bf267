"""Tables held against each other: what one document takes from another must agree."""

from collections import Counter

import pytest
from seatwork import tables
from seatwork.hardware import hole_limits

ISO_273 = {row["for_thread_mm"]: row for row in tables.rows("clearance_hole_iso_273")}


@pytest.mark.parametrize(
    ("name", "column", "fit"),
    [
        ("countersink_din_74_form_A_1980", "through_hole_d1_medium_mm", "medium_H13_mm"),
        ("countersink_din_74_form_A_1980", "through_hole_d1_fine_mm", "fine_H12_mm"),
        ("countersink_din_74_form_B_1980", "through_hole_d1_medium_mm", "medium_H13_mm"),
        ("countersink_din_74_form_F_2003", "through_hole_dh_mm", "medium_H13_mm"),
        ("countersink_iso_15065", "through_hole_dh_mm", "medium_H13_mm"),
    ],
)
def test_holes_of_countersink_lists_are_those_of_iso_273(name, column, fit) -> None:
    """DIN 74 and ISO 15065 take their holes from ISO 273, for every size both hold."""
    both = [row for row in tables.rows(name) if row["for_thread_mm"] in ISO_273]
    assert len(both) >= 10
    for row in both:
        assert row[column] == ISO_273[row["for_thread_mm"]][fit]


def test_iso_15065_seats_are_the_theoretical_heads_of_iso_7721() -> None:
    """The least countersink is the theoretical sharp diameter of the head, M1.6 to M10."""
    seats = {row["for_thread_mm"]: row for row in tables.rows("countersink_iso_15065")}
    for row in tables.rows("metric_csk_iso_7721_heads"):
        seat = seats[row["d_mm"]]["countersink_dia_dc_min_nominal_mm"]
        assert seat == row["head_dia_dk_theoretical_max_mm"], row["size"]


def test_iso_7089_washers_have_the_fine_hole_of_iso_273_to_m36() -> None:
    """Over M36 the washer's hole is the medium one: M42, M48, M56, M64."""
    for row in tables.rows("washer_iso_7089"):
        size = float(row["size"][1:])
        fit = "fine_H12_mm" if size <= 36 else "medium_H13_mm"
        assert size in ISO_273, f"clearance_hole_iso_273 has no {row['size']}: add its row there"
        assert row["hole_d1_min_mm"] == ISO_273[size][fit], row["size"]


@pytest.mark.parametrize(
    ("name", "exceptions"),
    [
        ("washer_type_A_asme_b18_21_1", set()),
        ("washer_type_B_asme_b18_21_1", {("#0", 0.068), ("#1", 0.084)}),
    ],
)
def test_inch_washers_are_stamped_in_sixty_fourths(name, exceptions) -> None:
    """Every diameter is a 64th of an inch to the printed .001, but the holes of #0 and #1."""
    key = tables.about(name).key
    odd = {
        (row[key], value)
        for row in tables.rows(name)
        for column, value in row.items()
        if "_dia_" in column and value and abs(value - round(value * 64) / 64) > 0.00051
    }
    assert odd == exceptions


def test_inch_socket_heads_are_as_high_as_their_screw_and_half_as_wide_again() -> None:
    """Head height is the basic diameter; from 1/4 the head is 1.5 times as wide, to .001 in."""
    for row in tables.rows("shcs_inch_asme_b18_3"):
        assert row["head_height_H_max_in"] == row["basic_dia_D_in"]
        if not row["size"].startswith("#"):
            wide = row["basic_dia_D_in"] * 1.5
            assert row["head_dia_A_max_in"] == pytest.approx(wide, abs=0.00051), row["size"]


def test_metric_socket_heads_are_as_high_as_their_screw() -> None:
    """ISO 4762 head height k is the screw's diameter."""
    for row in tables.rows("shcs_metric_iso_4762"):
        assert row["head_height_k_max_mm"] == row["d_mm"]


def test_metric_socket_heads_have_tolerance_it13() -> None:
    """The least plain head lies IT13 below, the knurl IT13 above the plain diameter.

    The least head is from memory, and so is IT13 outside 3 to 50 mm: each bears out the other.
    """
    for row in tables.rows("shcs_metric_iso_4762"):
        plain = row["head_dia_dk_max_plain_mm"]
        width = hole_limits(plain, "H13").greatest - plain
        assert row["head_dia_dk_max_knurled_mm"] == pytest.approx(plain + width, abs=1e-9)
        if row["head_dia_dk_min_plain_mm"]:
            assert row["head_dia_dk_min_plain_mm"] == pytest.approx(plain - width, abs=1e-9)


def test_din_7991_edges_are_twice_the_screw_with_tolerance_it14() -> None:
    """Dk is 2 d to M12, and the least edge lies IT14 below it for every size."""
    for row in tables.rows("metric_csk_din_7991"):
        edge = row["head_dia_dk_edge_max_mm"]
        width = hole_limits(edge, "H14").greatest - edge
        assert row["head_dia_dk_edge_min_mm"] == pytest.approx(edge - width, abs=1e-9)
        if row["d_mm"] <= 12:
            assert edge == 2 * row["d_mm"]


def test_counterbores_come_from_one_row_of_sizes() -> None:
    """DIN 974 uses few diameters: from 5.5 mm each stands at least twice, but for five."""
    counted = Counter(
        value
        for name in ("counterbore_din_974_1", "counterbore_din_974_2")
        for row in tables.rows(name)
        for column, value in row.items()
        if "counterbore_dia" in column and value
    )
    alone = {value for value, count in counted.items() if count == 1 and value >= 5.5}
    assert alone == {16, 22, 28, 93, 112}


def test_across_flats_agree_between_bolt_and_counterbore() -> None:
    """DIN 974-2 goes by the widths across flats of ISO 4014."""
    bolts = {row["d_mm"]: row for row in tables.rows("hex_head_iso_4014_4017")}
    for row in tables.rows("counterbore_din_974_2"):
        flats = bolts[row["for_thread_mm"]]["across_flats_s_nominal_max_mm"]
        assert row["across_flats_s_mm"] == flats


@pytest.mark.parametrize(
    ("names", "angles"),
    [
        (("inch_flat82_", "inch_flat_socket"), {82}),
        (("inch_flat100_", "rivet_"), {100}),
        (("metric_csk_iso", "countersink_iso", "countersink_din_74_form_A",
          "countersink_din_74_form_F"), {90}),
        (("metric_csk_din_7991", "countersink_din_74_form_B"), {90, 60}),
        (("countersink_din_74_form_E",), {75, 60}),
        (("center_drills",), {60}),
    ],
)  # fmt: skip
def test_every_family_keeps_its_angle(names, angles) -> None:
    """Seats and heads are 82° or 100° in inches, 90° in metric but for the named ones."""
    found = {
        row[column]
        for name in tables.names()
        if name.startswith(names)
        for row in tables.rows(name)
        for column in row
        if column.startswith("included_angle")
    }
    assert found == angles


def test_metric_threads_agree_between_screw_and_thread_table() -> None:
    """ISO 10642's pitch is the coarse pitch of ISO 262."""
    coarse = {r["size"]: r["coarse_pitch_mm"] for r in tables.rows("threads_metric_iso_262")}
    for row in tables.rows("metric_csk_iso_10642"):
        assert row["pitch_mm"] == coarse[row["size"]]


def test_every_size_is_what_its_name_says() -> None:
    """M6 is 6 mm, 1/4 is .25 in, #10 is .190 in, in every table that says both."""
    majors = {r["size"]: r["basic_major_dia_in"] for r in tables.rows("threads_inch_unc_unf")}
    checked = 0
    for name in tables.names():
        for row in tables.rows(name):
            if "d_mm" in row and str(row.get("size")).startswith("M"):
                assert row["d_mm"] == float(row["size"][1:])
                checked += 1
            inch = row.get("basic_dia_D_in") or row.get("basic_dia_in")
            if inch and row.get("size") in majors:
                assert inch == majors[row["size"]]
                checked += 1
    assert checked > 150


def test_bs_4186_differs_from_iso_273_at_m12_m14_and_m16_only() -> None:
    """The older British list is ISO 273 but for the medium and free holes of three sizes."""
    fits = {"close_mm": "fine_H12_mm", "medium_mm": "medium_H13_mm", "free_mm": "coarse_H14_mm"}
    differ = {
        (row["for_thread_mm"], column)
        for row in tables.rows("clearance_hole_bs_4186_1967")
        for column, fit in fits.items()
        if row[column] != ISO_273[row["for_thread_mm"]][fit]
    }
    assert differ == {(size, fit) for size in (12, 14, 16) for fit in ("medium_mm", "free_mm")}
