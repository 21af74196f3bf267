"""Clearance holes by ISO 273, ASME B18.2.8 and the older lists."""

import pytest
from seatwork import hardware, tables

DATA = "clearance_holes"


def test_table_holds_the_published_value(table_check) -> None:
    """The table holds the number, or the drill, its document prints."""
    inputs = table_check.inputs
    metric = inputs["table"] == "clearance_hole_iso_273"
    row = tables.row(inputs["table"], float(inputs["size"]) if metric else inputs["size"])
    found = row[inputs["column"]]
    if table_check.unit == "drill name":
        assert table_check.same(found)
    else:
        assert table_check.agrees(found)


@pytest.mark.parametrize(
    ("size", "standard", "fit", "drill"),
    [
        ("1/4", "ASME B18.2.8", "close", "17/64"),
        ("1/4", "ASME B18.2.8", "normal", "9/32"),
        ("1/4", "ASME B18.2.8", "loose", "19/64"),
        ("1/4", "older American list", "close", "F"),
        ("1/4", "older American list", "free", "H"),
    ],
)
def test_every_list_is_right_by_its_own_name(size, standard, fit, drill) -> None:
    """1/4: F, 17/64, H, 9/32 and 19/64 are all right; the list is named beside the drill.

    Source: ASME B18.2.8-1999; older American handbook list.
    """
    found = hardware.clearance_hole(size, fit=fit, standard=standard)
    assert found.drill == drill
    assert found.label == f"{fit} ({standard})"


def test_m12_follows_iso_273_and_the_older_list_says_14() -> None:
    """M12 medium is 13.5 by ISO 273, 14 by BS 4186:1967. Source: both, see contradictions."""
    assert hardware.clearance_hole("M12", fit="medium").diameter == 13.5
    old = hardware.clearance_hole("M12", fit="medium", standard="BS 4186:1967")
    assert old.diameter == 14.0


def test_medium_hole_carries_h13() -> None:
    """M6 medium: 6.6 H13 is 6.60 to 6.82. Source: ISO 273, ISO 286-1 IT13."""
    found = hardware.clearance_hole("M6", fit="medium")
    assert (found.least, found.greatest) == pytest.approx((6.6, 6.82))
