"""Clearance holes by list and fit."""

import pytest
from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware import clearance_hole, thread
from seatwork.hardware.clearance import LISTS


def test_the_house_rule_decides_where_no_fit_is_named() -> None:
    """Without a fit an inch hole is normal, a metric one medium: the house rules' defaults."""
    assert clearance_hole("1/4").label == "normal (ASME B18.2.8)"
    assert clearance_hole("M6").label == "medium (ISO 273)"


def test_a_changed_house_rule_is_followed(tmp_path, monkeypatch) -> None:
    """A shop that drills close gets the close list."""
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (tmp_path / "shop").mkdir()
    rule = 'format = 1\n[hole]\ninch_fit = "close"\n'
    (tmp_path / "shop" / "house_rules.toml").write_text(rule, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    assert clearance_hole("1/4").drill == "17/64"


@pytest.mark.parametrize("name", LISTS)
def test_every_hole_of_every_list_clears_its_screw(name) -> None:
    """Each size the thread table knows has a hole wider than the screw in every fit."""
    held = LISTS[name]
    table = "threads_inch_unc_unf" if held.system == "inch" else "threads_metric_iso_262"
    key = tables.about(held.table).key
    sizes = {row[key] for row in tables.rows(held.table)}
    found = 0
    for row in tables.rows(table):
        size = row["size"] if held.system == "inch" else row["d_mm"]
        if (row["size"] in sizes) or (size in sizes):
            screw = thread(f"{row['size']} in" if row["size"] == "1" else row["size"])
            for fit in held.fits:
                hole = clearance_hole(screw, fit=fit, standard=name)
                assert hole.diameter > screw.diameter
                assert hole.source
                found += 1
    assert found >= 14


@pytest.mark.parametrize(
    ("size", "fit", "standard", "says"),
    [
        ("M6", "close", None, "close is a word of"),
        ("1/4", "medium", None, "medium is a word of ISO 273"),
        ("1/4", "snug", None, "has no fit snug"),
        ("M6", "fine", "ASME B18.2.8", "list of inch sizes"),
        ("1/4", "close", "some book", "no list of clearance holes"),
        ("#12", "close", None, "no hole for it"),
        ("banana", None, None, "no screw size"),
    ],
)
def test_what_no_list_holds_is_refused(size, fit, standard, says) -> None:
    """The sentence says whose word the fit is, and which lists there are."""
    with pytest.raises(SeatworkError, match=says):
        clearance_hole(size, fit=fit, standard=standard)


def test_loose_inch_holes_carry_their_limits() -> None:
    """1/4 loose: .297 to .311. Source: ASME B18.2.8, Machinery's Handbook 31st ed. p.1741."""
    hole = clearance_hole("1/4", fit="loose")
    assert (hole.least / 25.4, hole.greatest / 25.4) == pytest.approx((0.297, 0.311))
