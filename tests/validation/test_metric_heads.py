"""Heads of metric screws, against ISO 10642, ISO 7721, ISO 4762, ISO 4014 and the old DIN."""

import pytest
from seatwork import hardware, tables
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, fit

DATA = "metric_heads"


def test_table_holds_the_published_value(table_check) -> None:
    """The table holds the number its document prints."""
    inputs = table_check.inputs
    row = tables.row(inputs["table"], inputs["size"])
    assert table_check.agrees(row[inputs["column"]])


def test_m6_socket_head_keeps_sharp_and_edge_apart() -> None:
    """M6 ISO 10642: theoretical 13.44, least edge 11.34, the latter from memory."""
    screw = hardware.screw("M6 csk socket")
    assert (screw.sharp_diameter, screw.rounded_edge_diameter) == (13.44, 11.34)
    assert screw.facts["sharp_diameter"].caution == ""
    assert screw.facts["rounded_edge_diameter"].caution == "from memory: check your copy"


def test_m6_least_head_lies_below_in_an_82_degree_seat() -> None:
    """M6 least head in an 82° seat cut to 13.44 lies .158 mm below, on the rim.

    Source: derived from ISO 10642 sizes; the flat head's rim in a steeper seat.
    """
    seat = Countersink(diameter=13.44, hole_diameter=6.6, included_angle=82)
    found = fit(hardware.screw("M6 csk socket").least_head, seat)
    assert found.amount == pytest.approx(-0.158, abs=0.0005)
    assert (found.state, found.contact) == ("below", "rim")


@pytest.mark.parametrize(("name", "edge"), [("M6 DIN 7991", 12.0), ("DIN 963 M6", 11.0)])
def test_withdrawn_din_edge_is_refused_as_theoretical_sharp(name, edge) -> None:
    """DIN 7991 and DIN 963 dk is an edge; used as sharp it would leave the head proud.

    Source: DIN 7991:1986, DIN 963, both withdrawn; (dk - d)/2 is less than their k.
    """
    screw = hardware.screw(name)
    assert screw.withdrawn
    assert "withdrawn DIN" in screw.name
    assert screw.edge_diameter == edge
    assert screw.sharp_diameter is None
    with pytest.raises(SeatworkError, match=r"edge of the head.*not its theoretical sharp"):
        _ = screw.head


@pytest.mark.parametrize(
    ("size", "iso", "old"), [("M10", 16, 17), ("M12", 18, 19), ("M14", 21, 22), ("M22", 34, 32)]
)
def test_old_din_widths_across_flats_differ(size, iso, old) -> None:
    """ISO 4014 and DIN 931 widths across flats. Source: schrauben-lexikon.de."""
    assert hardware.screw(f"{size} hex").across_flats == iso
    assert hardware.screw(f"{size} DIN 931").across_flats == old


def test_counterbores_go_by_the_plain_head() -> None:
    """An M8 head is 13 mm plain and 13.27 mm over the knurl. Source: ISO 4762:2004."""
    screw = hardware.screw("M8 SHCS")
    assert screw.head_diameter == 13.0
    assert screw.value("knurled_diameter") == 13.27
