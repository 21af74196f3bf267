"""Counterbores, pilots and bosses."""

from collections.abc import Callable
from functools import partial
from math import cos, hypot, pi, sin

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats import Counterbore
from seatwork.seats.counterbore_sizes import sized_for
from seatwork.seats.pilots import SolidTool, pilot_diameter, pilot_for, raised_boss

INCH = 25.4
QUICK = settings(max_examples=80, deadline=None)
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


def test_walls_and_floor() -> None:
    """Floor, wall to an edge and wall to a neighbor are what is left over."""
    assert BORE.floor_left(10) == pytest.approx(3.6)
    assert BORE.wall_to_edge(8) == pytest.approx(2.5)
    small = Counterbore(diameter=8, depth=3, hole_diameter=4.5)
    assert BORE.wall_to_neighbor(small, 12) == pytest.approx(2.5)
    assert BORE.volume == pytest.approx(pi * (5.5**2 - 3.3**2) * 6.4)


@pytest.mark.parametrize(
    ("left", "reach"),
    [
        (BORE.floor_left, 6.4),
        (BORE.wall_to_edge, 5.5),
        (partial(BORE.wall_to_neighbor, BORE), 11),
    ],
)
def test_a_bore_that_breaks_out_is_refused(left: Callable[[float], float], reach: float) -> None:
    """A bore through the floor, the edge or its neighbor gets a sentence."""
    with pytest.raises(SeatworkError, match="must be smaller than"):
        left(reach)


@QUICK
@given(
    corner=st.floats(0.01, 2.1), edge=st.floats(0, 2), head=st.floats(8, 11), part=st.floats(0, 1)
)
def test_a_lifted_head_touches_the_corner_and_never_cuts_into_it(
    corner: float, edge: float, head: float, part: float
) -> None:
    """With the lift given, no point of the head's rounded edge lies inside the corner."""
    lift = BORE.corner_lift(corner_radius=corner, head_diameter=head, edge_radius=edge)
    assert 0 <= lift <= max(corner - edge, 0) + 1e-12
    turn = part * pi / 2
    r = head / 2 - edge + edge * sin(turn)
    z = lift + edge - edge * cos(turn)
    center_r, center_z = BORE.diameter / 2 - corner, corner
    if r > center_r and z < center_z:
        assert hypot(r - center_r, z - center_z) <= corner + 1e-9


def test_a_sharp_edge_against_a_one_millimeter_corner() -> None:
    """A sharp head 10 in a bore 11 reaches .5 into a 1 mm corner: lift 1 - sqrt(.75) (worked)."""
    lift = BORE.corner_lift(corner_radius=1, head_diameter=10)
    assert lift == pytest.approx(1 - 0.75**0.5, rel=1e-12)
    assert BORE.corner_lift(corner_radius=1, head_diameter=10, edge_radius=0.5) == 0
    assert BORE.corner_lift(corner_radius=0.5, head_diameter=10) == 0


def test_the_fillet_under_the_head_clears() -> None:
    """A hole as wide as the fillet's run-out needs no chamfer; a narrower one is opened to it."""
    assert BORE.fillet_chamfer(6.6) is None
    chamfer = BORE.fillet_chamfer(7.0)
    assert chamfer is not None
    assert chamfer.diameter_at(6.6) == pytest.approx(7.0)
    with pytest.raises(SeatworkError, match="transition diameter"):
        BORE.fillet_chamfer(11)


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
