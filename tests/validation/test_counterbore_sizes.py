"""Counterbores by DIN 974-1, DIN 974-2, the ASME B18.3 appendix and company practice."""

import pytest
from seatwork import hardware, tables

DATA = "counterbore_sizes"
INCH = 25.4


def test_table_holds_the_published_value(table_check) -> None:
    """The table holds the number its document prints."""
    inputs = table_check.inputs
    row = tables.row(inputs["table"], float(inputs["size"]))
    assert table_check.agrees(row[inputs["column"]])


def test_depth_is_head_height_and_allowance(depth_check) -> None:
    """A metric counterbore is as deep as the greatest head plus the DIN 974-1 allowance."""
    found = hardware.listed_counterbore(f"{depth_check.inputs['thread']} SHCS")
    assert depth_check.agrees(found.depth)


def test_appendix_diameter(appendix_check) -> None:
    """The B18.3 appendix gives counterbore B; it is from memory and says so."""
    found = hardware.listed_counterbore(f"{appendix_check.inputs['size']} SHCS")
    assert appendix_check.agrees(found.diameter / INCH)
    assert found.caution == "from memory: check your copy"


def test_appendix_fillet_countersink(fillet_check) -> None:
    """The B18.3 appendix gives countersink C, which clears the fillet under the head."""
    found = hardware.listed_counterbore(f"{fillet_check.inputs['size']} SHCS")
    assert fillet_check.agrees(found.fillet_countersink_diameter / INCH)


def test_upper_limit_of_a_counterbore(limit_check) -> None:
    """An H13 counterbore may be larger by the width of grade IT13."""
    found = hardware.hole_limits(limit_check.inputs["nominal_mm"], "H13")
    assert found.least == limit_check.inputs["nominal_mm"]
    assert limit_check.agrees(found.greatest)


def test_washer_goes_into_series_5(washer_check) -> None:
    """A plain washer lies in the series 5 counterbore with room around it."""
    size = washer_check.inputs["thread"]
    bore, washer = hardware.listed_counterbore(f"{size} SHCS", series=5), hardware.washer(size)
    assert bore.diameter == washer_check.inputs["counterbore_mm"]
    assert washer.outside_diameter == washer_check.inputs["washer_od_mm"]
    assert washer_check.agrees(bore.diameter - washer.outside_diameter)


def test_company_practice_is_narrower_than_the_appendix() -> None:
    """1/4 SHCS: 7/16 by the appendix, .400 to .416 by one company. Source: contradictions."""
    usual = hardware.listed_counterbore("1/4 SHCS")
    close = hardware.listed_counterbore("1/4 SHCS", standard="company practice")
    free = hardware.listed_counterbore("1/4 SHCS", standard="company practice", fit="free")
    found = [each.diameter / INCH for each in (usual, close, free)]
    assert found == pytest.approx([0.4375, 0.400, 0.416])


def test_wrench_socket_wants_more_than_the_head() -> None:
    """M10: the head is 16 mm across flats, a socket wants a 28 mm counterbore.

    Source: DIN 974-2 row 1.
    """
    room = hardware.wrench_socket("M10")
    assert (room.across_flats, room.counterbore_diameter) == (16, 28)
    assert "measure yours" in room.basis
