"""Washers: ISO 7089, ASME B18.21.1."""

from seatwork import hardware, tables

DATA = "washers"
INCH = 25.4


def test_table_holds_the_published_value(table_check) -> None:
    """The table holds the number its document prints."""
    inputs = table_check.inputs
    row = tables.row(inputs["table"], inputs["size"])
    assert table_check.agrees(row[inputs["column"]])


def test_a_plain_washer_does_not_go_into_the_counterbore_of_its_screw() -> None:
    """A 3/8 narrow washer, .812, is wider than the 5/8 counterbore of a 3/8 SHCS.

    Source: ASME B18.21.1-2009 Type A; ASME B18.3 appendix, from memory.
    """
    washer, bore = hardware.washer("3/8 narrow"), hardware.listed_counterbore("3/8 SHCS")
    assert round(washer.outside_diameter / INCH, 3) == 0.812
    assert round(bore.diameter / INCH, 3) == 0.625
    assert washer.outside_diameter > bore.diameter
