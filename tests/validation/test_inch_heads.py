"""Heads of inch screws, against ASME B18.3, B18.6.3, B18.2.1 as published."""

import pytest
from seatwork import hardware, tables

DATA = "inch_heads"
INCH = 25.4


def test_table_holds_the_published_value(table_check) -> None:
    """The table holds the number its document prints."""
    inputs = table_check.inputs
    row = tables.row(inputs["table"], inputs["size"])
    assert table_check.agrees(row[inputs["column"]])


def test_across_corners_is_that_of_a_sharp_hexagon(hexagon_check) -> None:
    """Width across corners is width across flats over cos 30°."""
    found = hardware.across_corners(hexagon_check.inputs["F_in"] * INCH) / INCH
    assert hexagon_check.agrees(found)


@pytest.mark.parametrize(
    ("name", "sharp", "edge", "rounded"),
    [
        ("#10-32 flat head", 0.385, 0.362, 0.333),
        ("1/4 FHMS", 0.507, 0.477, 0.442),
        ("1/4-20 socket flat", 0.531, None, 0.480),
        ("#10 FHMS 100°", 0.385, 0.362, 0.329),
    ],
)
def test_one_screw_keeps_its_diameters_apart(name, sharp, edge, rounded) -> None:
    """Theoretical sharp, greatest edge and rounded edge of one screw stay three numbers.

    Source: ANSI B18.6.3-1972 (sharp), ASME B18.6.3-2013 (edges), ASME B18.3-2012 (socket);
    two editions of one standard are sources of one screw.
    """
    screw = hardware.screw(name)
    assert screw.sharp_diameter == pytest.approx(sharp * INCH)
    assert screw.edge_diameter == (None if edge is None else pytest.approx(edge * INCH))
    assert screw.rounded_edge_diameter == pytest.approx(rounded * INCH)


def test_socket_flat_is_larger_than_machine_flat() -> None:
    """A 1/4 socket flat is .531 sharp where the machine screw is .507: two screws.

    Source: ASME B18.3-2012; ANSI B18.6.3-1972.
    """
    machine, socket = hardware.screw("1/4 FHMS").head, hardware.screw("1/4 socket flat").head
    assert (socket.sharp_diameter - machine.sharp_diameter) / INCH == pytest.approx(0.024)


def test_inch_heads_are_made_from_80_to_82_degrees() -> None:
    """A flat head's angle is a range, and its seat is 82°. Source: ASME B18.6.3-2013."""
    screw = hardware.screw("#10 flat head")
    assert screw.angle_range == (80, 82)
    assert screw.seat_angle == 82


@pytest.mark.parametrize(
    ("size", "spread"),
    [("#4", 0.013), ("#8", 0.016), ("#10", 0.017), ("1/4", 0.021), ("3/8", 0.026)],
)
def test_gage_column_spreads_more_than_the_house_rule_for_most(size, spread) -> None:
    """Greatest less least gage protrusion, ASME B18.6.3-2013 Table 3 columns F."""
    gage = hardware.screw(f"{size} FHMS").gage
    assert (gage.greatest - gage.least) / INCH == pytest.approx(spread, abs=1e-9)
