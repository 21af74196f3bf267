"""How heads sit in countersinks."""

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head, fit

INCH = 25.4


def test_the_m6_least_head_in_an_82_degree_seat_lies_below_on_its_rim() -> None:
    """An M6 socket head of edge 11.34 in an 82° seat cut to 13.44 lies .158 mm below."""
    head = Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34)
    found = fit(head, Countersink(diameter=13.44, hole_diameter=6.6, included_angle=82))
    assert found.amount == pytest.approx(-0.158, abs=5e-4)
    assert (found.state, found.contact) == ("below", "rim")
    assert found.contact_diameter == 11.34


def test_an_82_degree_head_in_a_90_degree_seat_stands_proud_on_the_hole_edge() -> None:
    """An 82° head .507 in a 90° seat .507 on .266 stands .018 in proud."""
    head = Head(sharp_diameter=0.507 * INCH, included_angle=82)
    seat = Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=90)
    found = fit(head, seat)
    assert found.amount / INCH == pytest.approx(0.018, abs=5e-4)
    assert (found.state, found.contact) == ("proud", "hole edge")


def test_a_head_no_wider_than_its_hole_drops_through() -> None:
    """A head smaller than the hole is refused with a sentence, not seated."""
    with pytest.raises(SeatworkError, match="drops through"):
        fit(
            Head(sharp_diameter=6, included_angle=90),
            Countersink(diameter=12, hole_diameter=6.6, included_angle=90),
        )
