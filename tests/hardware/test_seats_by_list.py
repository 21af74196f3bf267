"""Counterbores, countersinks and wrench room as published lists give them."""

import pytest
from seatwork.errors import SeatworkError
from seatwork.hardware import (
    listed_counterbore,
    listed_countersink,
    screw,
    wrench_socket,
)
from seatwork.hardware.counterbores import series_meaning


@pytest.mark.parametrize(
    ("series", "diameter"), [(1, 11), (2, 13), (3, 11), (4, 13), (5, 15), (6, 15)]
)
def test_din_974_1_series_of_m6(series, diameter) -> None:
    """M6 in the six series. Source: DIN 974-1 Table 1."""
    found = listed_counterbore("M6 SHCS", series=series)
    assert found.diameter == diameter
    assert series_meaning(series) in found.series
    assert found.limits.greatest > found.diameter


def test_only_the_well_read_series_are_two_source() -> None:
    """Series 1 of M6 is two-source, series 2 one-source."""
    assert listed_counterbore("M6 SHCS", series=1).confirmed == "two-source"
    assert listed_counterbore("M6 SHCS", series=2).confirmed == "one-source"


def test_a_washer_deepens_the_counterbore() -> None:
    """Depth grows by the washer's thickness, and says so."""
    plain, deep = (
        listed_counterbore("M6 SHCS"),
        listed_counterbore("M6 SHCS", series=5, washer_thickness=1.8),
    )
    assert deep.depth == pytest.approx(plain.depth + 1.8)
    assert "washer" in deep.depth_basis


@pytest.mark.parametrize(
    ("room", "diameter"), [("socket wrench", 28), ("ring wrench", 33), ("no wrench", 22)]
)
def test_din_974_2_rows_of_m10(room, diameter) -> None:
    """M10 hex, 16 mm across flats. Source: DIN 974-2 Table 1."""
    assert listed_counterbore("M10 hex", room_for=room).diameter == diameter


def test_an_old_din_head_takes_the_next_row() -> None:
    """M10 DIN 933 has 17 mm across flats: the row for 18 mm stands in."""
    assert listed_counterbore("M10 DIN 933").diameter == 33
    assert "18 mm across flats stands in" in wrench_socket("M10 DIN 933").basis


def test_inch_depth_is_head_height_and_the_house_rule() -> None:
    """1/4 SHCS: head .250 and .010 below the face. Source: ASME B18.3; common practice."""
    found = listed_counterbore("1/4 SHCS")
    assert found.depth / 25.4 == pytest.approx(0.260)
    assert "counterbore.inch_below_face" in found.depth_basis


def test_the_house_rule_names_the_inch_list(tmp_path, monkeypatch) -> None:
    """A shop that follows a company's practice gets its smaller bore."""
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (tmp_path / "shop").mkdir()
    rule = (
        'format = 1\n[counterbore]\ninch_list = "company practice"\n'
        'metric_depth = "DIN 74 form K"\n'
    )
    (tmp_path / "shop" / "house_rules.toml").write_text(rule, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert listed_counterbore("1/4 SHCS").diameter / 25.4 == pytest.approx(0.400)
    assert listed_counterbore("M6 SHCS").depth == 6.8


@pytest.mark.parametrize(
    ("name", "options", "says"),
    [
        ("3/8-16 hex cap", {}, "take room for the wrench socket"),
        ("#10 FHMS", {}, "flat head wants a countersink"),
        ("M6 SHCS", {"standard": "DIN 974-2"}, "gives no counterbore for it"),
        ("M6 SHCS", {"series": 7}, "no such row"),
        ("M30 SHCS", {"series": 2}, "gives no counterbore diameter, series 2"),
        ("M10 hex", {"room_for": "two wrenches"}, "no such row"),
        ("1/4 SHCS", {"standard": "company practice", "fit": "loose"}, "no such fit"),
        ("M6 SHCS", {"washer_thickness": float("nan")}, "no washer is that thick"),
    ],
)
def test_what_no_list_gives_is_refused(name, options, says) -> None:
    """The sentence says what would do instead."""
    with pytest.raises(SeatworkError, match=says):
        listed_counterbore(name, **options)


@pytest.mark.parametrize(
    ("name", "standard", "diameter"),
    [
        ("M6 csk socket", "DIN 74 form F", 13.71),
        ("M6 slotted csk", "ISO 15065", 12.6),
        ("M6 DIN 963", "DIN 74 form A", 12.4),
        ("M6 DIN 7991", "DIN 74 form B", 13.0),
    ],
)
def test_each_metric_head_has_its_own_list(name, standard, diameter) -> None:
    """M6 countersinks. Source: DIN 74 (2003, 1980), ISO 15065:2005."""
    found = listed_countersink(name)
    assert (found.standard, found.diameter) == (standard, diameter)
    assert found.withdrawn == screw(name).withdrawn


def test_form_f_lets_the_greatest_iso_10642_head_lie_below() -> None:
    """DIN 74 form F is wider than the theoretical head of ISO 10642 for every size."""
    for size in ("M3", "M4", "M5", "M6", "M8", "M10", "M12", "M14", "M16", "M20"):
        assert (
            listed_countersink(f"{size} csk socket").diameter
            > screw(f"{size} csk socket").sharp_diameter
        )


def test_fine_series_of_form_a_is_smaller() -> None:
    """M6 DIN 963, fine series: 11.5 on a 6.4 hole. Source: DIN 74-1:1980 form A, one source."""
    found = listed_countersink("M6 DIN 963", standard="DIN 74 form A fine")
    assert (found.diameter, found.hole_diameter, found.depth) == (11.5, 6.4, None)
    assert found.confirmed == "one-source"


def test_inch_heads_have_no_list_of_countersinks() -> None:
    """An inch seat is cut to the theoretical sharp diameter; the sentence says so."""
    with pytest.raises(SeatworkError, match="theoretical sharp diameter"):
        listed_countersink("#10 FHMS")
    with pytest.raises(SeatworkError, match="say ISO 15065"):
        listed_countersink("M6 slotted csk", standard="DIN 74 form F")


def test_a_measured_wrench_socket_beats_the_list() -> None:
    """A 20 mm socket and the house rule's 1/32 in make 20.79 mm; one under the head is refused."""
    found = wrench_socket("3/8-16 hex cap", outside_diameter=20.0)
    assert found.counterbore_diameter == pytest.approx(20.0 + 25.4 / 32)
    for wrong in (5.0, float("nan"), float("inf")):
        with pytest.raises(SeatworkError, match="wider than the head"):
            wrench_socket("3/8-16 hex cap", outside_diameter=wrong)


def test_wrench_room_for_inch_heads_says_that_it_stands_in() -> None:
    """3/8 hex, 9/16 across flats: the row for 16 mm stands in, "measure yours"."""
    found = wrench_socket("3/8")
    assert found.across_flats == pytest.approx(0.562 * 25.4)
    assert found.basis == "DIN 974-2 row 1 for 16 mm across flats stands in: measure yours"
    with pytest.raises(SeatworkError, match="no hexagon head"):
        wrench_socket("M6 SHCS")
