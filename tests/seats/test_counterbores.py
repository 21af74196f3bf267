"""Counterbores, pilots and bosses."""

from collections.abc import Callable
from math import pi

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats import Counterbore
from seatwork.seats.counterbore_sizes import sized_for
from seatwork.seats.pilots import SolidTool, pilot_diameter, pilot_for, raised_boss

INCH = 25.4
BORE = Counterbore(diameter=11, depth=6.4, hole_diameter=6.6)


def test_a_three_eighths_cap_screw_with_a_washer() -> None:
    """3/8 cap screw with a washer .812 does not fit 5/8; bore 7/8, .455 deep (worked)."""
    found = sized_for(
        hole_diameter=13 / 32 * INCH, head_diameter=9 / 16 * INCH, head_height=0.375 * INCH,
        clearance=0.875 * INCH - 0.812 * INCH, below=0.015 * INCH,
        washer_diameter=0.812 * INCH, washer_thickness=0.065 * INCH,
    )  # fmt: skip
    assert found.set_by == "washer"
    assert found.counterbore.diameter > 0.625 * INCH
    assert found.counterbore.depth / INCH == pytest.approx(0.455, abs=1e-9)


def test_the_wrench_socket_sets_the_bore_of_a_hex_head() -> None:
    """A hex head is narrower than the socket that turns it, so the socket sets the bore."""
    found = sized_for(
        hole_diameter=11, head_diameter=18.5, head_height=6.6, clearance=1, below=0,
        wrench_socket_diameter=24,
    )  # fmt: skip
    assert (found.set_by, found.counterbore.diameter) == ("wrench socket", 25)


def test_half_a_washer_is_refused() -> None:
    """A washer without a thickness is not silently left out."""
    with pytest.raises(SeatworkError, match="a diameter and a thickness"):
        sized_for(hole_diameter=7, head_diameter=10, head_height=6, clearance=1, below=0,
                  washer_diameter=12)  # fmt: skip


@pytest.mark.outside(
    "sum worked by hand", "seats.Counterbore.floor_left", "seats.Counterbore.wall_to_edge"
)
@pytest.mark.outside("closed form", "seats.Counterbore.volume")
def test_walls_and_floor() -> None:
    """Floor and wall to an edge are what is left over."""
    assert BORE.floor_left(10) == pytest.approx(3.6)
    assert BORE.wall_to_edge(8) == pytest.approx(2.5)
    assert BORE.volume == pytest.approx(pi * (5.5**2 - 3.3**2) * 6.4)


@pytest.mark.parametrize(
    ("left", "reach"),
    [(BORE.floor_left, 6.4), (BORE.wall_to_edge, 5.5)],
)
def test_a_bore_that_breaks_out_is_refused(left: Callable[[float], float], reach: float) -> None:
    """A bore through the floor or the edge gets a sentence."""
    with pytest.raises(SeatworkError, match="must be smaller than"):
        left(reach)


def test_a_pilot_is_the_size_of_the_hole_less_clearance() -> None:
    """A pilot for a .266 hole, .003 under, is .263, not the screw's .250 (worked)."""
    assert pilot_diameter(hole_diameter=0.266 * INCH, clearance=0.003 * INCH) / INCH == (
        pytest.approx(0.263)
    )


def test_only_a_removable_pilot_serves_a_wide_bore_on_a_small_hole() -> None:
    """The listed solid tool serves its own pair; the socket's wider bore needs a removable one."""
    tools = [
        SolidTool(diameter=11, pilot_diameter=6.5), SolidTool(diameter=11, pilot_diameter=6.55),
        SolidTool(diameter=11, pilot_diameter=6.6), SolidTool(diameter=15, pilot_diameter=8.9),
    ]  # fmt: skip
    sizes = {"clearance": 0.05, "greatest_clearance": 0.13, "solid_tools": tools}
    own = pilot_for(BORE, **sizes)
    assert (own.kind, own.diameter) == ("solid", 6.55)
    wide = pilot_for(Counterbore(diameter=25, depth=6, hole_diameter=6.6), **sizes)
    assert (wide.kind, wide.diameter) == ("removable", pytest.approx(6.55))
    assert wide.clearance == pytest.approx(0.05)


def test_a_raised_boss_is_the_other_way_out() -> None:
    """A boss is as wide as bearing and rims, as high as clean-up and stand, and grips longer."""
    bore = Counterbore(diameter=30, depth=8, hole_diameter=9)
    boss = raised_boss(bearing_diameter=16, clean_up=1, stand=2, rim=2.5, instead_of=bore)
    assert (boss.diameter, boss.height, boss.grip_gain) == (21, 3, 10)
