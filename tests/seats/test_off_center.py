"""Seats off center: held screws rise, free ones hide the error."""

from math import cos, hypot, radians, sin, tan
from random import Random

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head, fit
from seatwork.seats.off_center import off_center

INCH = 25.4
SEAT = Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=82)
HEAD = Head(sharp_diameter=0.507 * INCH, included_angle=82)


def test_five_thou_off_center_is_58_tenths_proud() -> None:
    """.005 off center with the screw held stands .0058 proud, e/T (worked)."""
    found = off_center(HEAD, SEAT, offset=0.005 * INCH)
    assert found.amount / INCH == pytest.approx(0.0058, abs=5e-5)
    assert found.rise == pytest.approx(0.005 * INCH / tan(radians(41)), rel=1e-9)


def test_a_screw_in_a_clearance_hole_hides_the_error() -> None:
    """With more play than offset the screw centers itself; with less, the rest shows."""
    hidden = off_center(HEAD, SEAT, offset=0.1, play=0.2)
    assert (hidden.rise, hidden.left_over) == (0.0, 0.0)
    partly = off_center(HEAD, SEAT, offset=0.3, play=0.2)
    assert partly.left_over == pytest.approx(0.1, rel=1e-12)
    assert partly.rise == pytest.approx(off_center(HEAD, SEAT, offset=0.1).rise, rel=1e-9)


def test_centered_is_the_limit() -> None:
    """As the offset goes to nothing the amount tends to that of the centered head."""
    for offset in (1e-3, 1e-6, 0.0):
        found = off_center(HEAD, SEAT, offset=offset)
        assert found.amount == pytest.approx(fit(HEAD, SEAT).amount, abs=1.2 * offset + 1e-15)


def searched(head: Head, seat: Countersink, offset: float) -> float:
    """Look at many points of the head all round, in space, and lift it off the highest clash."""
    highest = -1e9
    edge = head.edge / 2
    for turn in range(0, 181, 10):
        for step in range(4001):
            radius = edge * step / 4000
            x = offset + radius * cos(radians(turn))
            away = hypot(x, radius * sin(radians(turn)))
            if away >= seat.hole_diameter / 2:
                seat_depth = max(seat.diameter / 2 - away, 0.0) / seat.tangent
                highest = max(highest, (head.sharp_diameter / 2 - radius) / head.tangent
                              - seat_depth)  # fmt: skip
    return highest


@pytest.mark.slow
def test_random_offsets_agree_with_a_search_all_round() -> None:
    """The head lifted off every clash found in space stands where the section says."""
    rng = Random(5)
    for _ in range(6):
        hole = rng.uniform(4, 8)
        seat = Countersink(
            diameter=hole * 2, hole_diameter=hole, included_angle=rng.uniform(70, 110)
        )
        sharp = hole * rng.uniform(1.7, 2.2)
        head = Head(
            sharp_diameter=sharp,
            included_angle=rng.uniform(70, 110),
            edge_diameter=sharp * rng.uniform(0.9, 1),
        )
        offset = rng.uniform(0.01, 0.3)
        # the search steps by edge/4000 in radius and can miss the true clash by that, on a slope
        slack = 3 * head.edge / 8000 * max(1 / head.tangent, 1 / seat.tangent)
        found = off_center(head, seat, offset=offset).amount
        assert found == pytest.approx(searched(head, seat, offset), abs=slack)
        assert found >= searched(head, seat, offset) - 1e-9


def test_a_head_so_far_off_that_it_drops_in_is_refused() -> None:
    """A head whose edge passes the hole edge at one side is not seated."""
    with pytest.raises(SeatworkError, match="drops into the hole"):
        off_center(HEAD, SEAT, offset=(HEAD.edge - SEAT.hole_diameter) / 2 + 0.01)
