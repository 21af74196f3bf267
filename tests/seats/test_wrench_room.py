"""Whether a wrench socket comes down to a head: worked by hand."""

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats import Counterbore
from seatwork.seats.wrench_room import reached

TIGHT = Counterbore(diameter=17.3, depth=6.5, hole_diameter=10.3)
WIDE = Counterbore(diameter=28.0, depth=6.5, hole_diameter=10.3)


def test_a_socket_too_wide_rests_on_the_face() -> None:
    """The head lies .3 below the face, the socket stands on the face: they do not meet."""
    found = reached(TIGHT, room=28.0, head_height=6.2)
    assert found.amount == pytest.approx(-0.3)
    assert (found.goes_in, found.rests_at, found.hold) == (False, 0.0, 0.0)


def test_a_head_that_stands_proud_is_held_by_what_stands_proud() -> None:
    """Cut only 4 deep, the 6.2 head stands 2.2 proud, and the socket holds those 2.2."""
    shallow = Counterbore(diameter=17.3, depth=4.0, hole_diameter=10.3)
    found = reached(shallow, room=28.0, head_height=6.2)
    assert found.hold == pytest.approx(2.2)
    assert not found.goes_in


@pytest.mark.parametrize(("washer", "amount"), [(0.0, -0.3), (1.5, 1.2)])
def test_a_socket_that_goes_in_holds_the_whole_head(washer: float, amount: float) -> None:
    """It rests where the head rests, on floor or washer, and has all 6.2 of the head."""
    found = reached(WIDE, room=28.0, head_height=6.2, washer_thickness=washer)
    assert found.goes_in
    assert found.hold == 6.2
    assert found.rests_at == pytest.approx(washer - 6.5)
    assert found.amount == pytest.approx(amount)


def test_on_a_boss_the_rim_is_in_the_way_only_a_little() -> None:
    """On a boss 6 high, spotfaced 1 deep, the head's top is 11.2 up; the socket holds 5.2."""
    spot = Counterbore(diameter=17.3, depth=1.0, hole_diameter=10.3)
    found = reached(spot, room=28.0, head_height=6.2, rim=6.0)
    assert found.amount == pytest.approx(11.2)
    assert (found.rests_at, found.hold) == (6.0, pytest.approx(5.2))


@pytest.mark.parametrize(
    "given",
    [
        {"room": 0.0, "head_height": 6.2},
        {"room": 28.0, "head_height": float("nan")},
        {"room": 28.0, "head_height": 6.2, "washer_thickness": -1.0},
        {"room": 28.0, "head_height": 6.2, "rim": -1.0},
    ],
)
def test_what_is_no_size_is_refused(given: dict[str, float]) -> None:
    """Sizes below zero and what is no number are refused in a sentence."""
    with pytest.raises(SeatworkError):
        reached(WIDE, **given)
