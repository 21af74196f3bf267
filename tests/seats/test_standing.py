"""How a screw stands in a seat that was cut right or wrong, and what is wrong with it."""

from math import radians, tan

import numpy as np
import pytest
from seatwork import hardware
from seatwork.errors import SeatworkError
from seatwork.seats import (
    CapScrew,
    Chamfer,
    Counterbore,
    Countersink,
    Head,
    Spotface,
    stands,
)
from seatwork.seats.faults import LABELS, SENTENCES, Allowed, Fault

HEAD = Head(sharp_diameter=12.0, included_angle=90, edge_diameter=11.4)
M6 = CapScrew(head_diameter=10.0, head_height=6.0, diameter=6.0)
BOLT = CapScrew(head_diameter=22.0, head_height=8.2, diameter=12.7)


def cone(diameter: float, hole: float = 6.6, angle: float = 90) -> Countersink:
    """Give a countersink."""
    return Countersink(diameter=diameter, hole_diameter=hole, included_angle=angle)


def let_down(head: Head, seat: Countersink, thickness: float) -> float:
    """Let a head down on a seat by trying every radius [mm]: no formula of the package.

    At each radius the head's underside is (sharp/2 - r)/tan below its top, and the metal is the
    cone (D/2 - r)/tan below the face, or the face outside it; no metal is below the back.
    """
    half = tan(radians(head.included_angle / 2)), tan(radians(seat.included_angle / 2))
    r = np.linspace(0.0, head.edge_diameter / 2, 200_001)
    under = (head.sharp_diameter / 2 - r) / half[0]
    metal = np.maximum(seat.diameter / 2 - r, 0.0) / half[1]
    solid = (r >= seat.hole_diameter / 2) & (metal <= thickness)
    return float((under - metal)[solid].max())


@pytest.mark.outside("search that shares no formula", "seats.stands")
@pytest.mark.parametrize("angle", [60, 82, 90, 100, 120])
@pytest.mark.parametrize("diameter", [7.5, 10.0, 12.0, 14.0])
@pytest.mark.parametrize("thickness", [1.5, 3.0, 12.0])
def test_the_head_comes_down_until_metal_stops_it(angle, diameter, thickness):
    """The height of the top is that of a head let down radius by radius, in sheet too."""
    found = stands(HEAD, cone(diameter, angle=angle), thickness)
    if found.amount is None:
        assert found.state == "drops through"
        return
    expected = let_down(HEAD, cone(diameter, angle=angle), thickness)
    assert found.amount == pytest.approx(expected, abs=1e-3)


def test_proud_and_below_by_hand():
    """90° cones: a seat 2 mm narrower or wider moves the head by half of that, 1 mm."""
    assert stands(HEAD, cone(10.0), 12).amount == pytest.approx(1.0)
    assert stands(HEAD, cone(10.0), 12).names == ("proud",)
    assert stands(HEAD, cone(14.0), 12).amount == pytest.approx(-1.0)
    assert stands(HEAD, cone(14.0), 12).names == ("below",)
    assert stands(HEAD, cone(12.5), 12).names == ()  # .25 mm below: .015 in is allowed
    assert stands(HEAD, cone(12.5), 12, allowed=Allowed(below=0.1)).names == ("below",)


def test_a_cone_through_the_sheet_is_a_knife_edge():
    """12 mm at the face and 2 mm of sheet leave 12 - 2 x 2 = 8 mm open at the far side at 90°."""
    found = stands(HEAD, cone(12.0), 2.0)
    assert found.faults == (Fault(name="knife edge", amount=8.0),)
    assert found.state == "flush"
    gone = stands(HEAD, cone(14.0), 1.0)  # open to 12 mm, and the head's edge is 11.4
    assert gone.names == ("drops through", "knife edge")
    assert gone.amount is None
    assert gone.faults[0].amount == pytest.approx(0.6)


def test_a_cone_that_takes_most_of_the_sheet_leaves_it_thin():
    """2.7 mm of cone in 3.5 mm of sheet is more than two thirds; 0.8 mm is left."""
    found = stands(HEAD, cone(12.0), 3.5)
    assert found.names == ("thin",)
    assert found.faults[0].amount == pytest.approx(0.8)
    assert stands(HEAD, cone(12.0), 5.0).names == ()


def test_a_wrong_angle_bears_on_a_line():
    """A head in a seat of another angle touches at the hole edge or at its own edge."""
    wide, narrow = (stands(HEAD, cone(12.0, angle=angle), 12) for angle in (100, 82))
    assert "on a line" in wide.names
    assert "on a line" in narrow.names
    assert wide.faults[-1].amount == pytest.approx(6.6)
    assert narrow.faults[-1].amount == pytest.approx(11.4)


def test_a_thick_neck_does_not_enter():
    """A 90° head 12 mm across and 2.5 mm high has a neck of 7 mm, thicker than a hole of 6.6."""
    necked = Head(sharp_diameter=12, included_angle=90, edge_diameter=11.4, height=2.5)
    found = stands(necked, cone(12.0), 12)
    assert found.state == "does not enter"
    assert found.faults[0].amount == pytest.approx(0.4)


@pytest.mark.outside("sum worked by hand", "seats.stands")
@pytest.mark.parametrize(
    ("diameter", "depth", "hole", "thickness", "names", "amount"),
    [
        (11.0, 6.4, 6.6, 16.0, (), -0.4),
        (11.0, 3.0, 6.6, 16.0, ("proud",), 3.0),
        (11.0, 9.0, 6.6, 16.0, ("below",), -3.0),
        (16.0, 6.4, 6.6, 16.0, ("rattling",), -0.4),
        (9.0, 6.4, 6.6, 16.0, ("head too wide", "proud"), 6.0),
        (11.0, 16.0, 6.6, 12.0, ("drops through", "broken through"), None),
        (9.0, 14.0, 6.6, 12.0, ("head too wide", "proud", "broken through"), 6.0),
        (12.0, 6.4, 10.5, 16.0, ("drops through",), None),
        (11.0, 6.4, 5.5, 16.0, ("does not enter",), None),
    ],
)
def test_a_cap_screw_in_its_counterbore(diameter, depth, hole, thickness, names, amount):
    """An M6 head, 10 by 6 mm: it stands at height less depth, or where nothing lets it in."""
    bore = Counterbore(diameter=diameter, depth=depth, hole_diameter=hole)
    found = stands(M6, bore, thickness)
    assert found.names == names
    assert found.amount == (None if amount is None else pytest.approx(amount))


def test_play_is_half_of_what_the_bore_is_wider():
    """A bore of 16 round a head of 10 lets it go 3 mm each way."""
    bore = Counterbore(diameter=16, depth=6.4, hole_diameter=6.6)
    assert stands(M6, bore, 16).faults[0].amount == pytest.approx(3.0)


@pytest.mark.parametrize("size", ["#8-32", "1/4-20", "3/8-16", "1/2-13", "M3", "M6", "M10", "M16"])
def test_no_published_counterbore_is_said_to_be_wrong(size):
    """The counterbores that the tables publish neither rattle nor bury or block their screw."""
    screw = hardware.screw(f"{size} socket head")
    listed = hardware.listed_counterbore(screw)
    head = CapScrew(
        head_diameter=screw.head_diameter or 0.0,
        head_height=screw.head_height or 0.0,
        diameter=screw.thread.diameter,
    )
    hole = hardware.clearance_hole(screw.thread).diameter
    depth = listed.depth or head.head_height
    bore = Counterbore(diameter=listed.diameter, depth=depth, hole_diameter=hole)
    assert stands(head, bore, 3 * depth).names == ()


@pytest.mark.parametrize(
    ("diameter", "depth", "names"),
    [
        (31.75, 1.9, ()),
        (31.75, 0.7, ("not clean",)),
        (31.75, 9.0, ("too deep",)),
        (31.75, 15.0, ("broken through",)),
        (19.0, 1.9, ("overhangs",)),
    ],
)
def test_a_bolt_on_a_spotface(diameter, depth, names):
    """A 1/2 in bolt, 22 mm across its corners, on a flange of 12.7 that cleans up at 1.66 mm."""
    seat = Spotface(diameter=diameter, hole_diameter=13.5)
    assert stands(BOLT, seat, 12.7, depth=depth, clean=1.66).names == names


def test_a_spotface_leaves_what_it_says():
    """9 mm of cut where 1.66 mm is air leaves 12.7 - 7.34 = 5.36 mm at the low side."""
    seat = Spotface(diameter=31.75, hole_diameter=13.5)
    assert stands(BOLT, seat, 12.7, depth=9.0, clean=1.66).left == pytest.approx(5.36)


def test_a_chamfer_keeps_a_ring_or_none():
    """A 45° leg of 2.2 mm on a hole of 6.6 is 11 mm wide; a head of 10 sinks in by half a mm."""
    right, wide, thin = (
        stands(M6, Chamfer(leg=leg), thick, hole_diameter=6.6)
        for leg, thick in ((0.5, 12.0), (2.2, 12.0), (1.5, 1.0))
    )
    assert right.names == ()
    assert wide.names == ("no bearing",)
    assert wide.bears_at == pytest.approx(-0.5)
    assert thin.names == ("knife edge",)
    assert thin.faults[0].amount == pytest.approx(7.6)


@pytest.mark.parametrize(
    ("screw", "seat", "more"),
    [
        (M6, cone(12.0), {}),
        (HEAD, Counterbore(diameter=11, depth=6, hole_diameter=6.6), {}),
        (M6, Chamfer(leg=1.0), {}),
        (M6, Spotface(diameter=20, hole_diameter=6.6), {"depth": -1.0}),
        (HEAD, cone(12.0), {"thickness": 0.0}),
        (M6, "a hole", {}),
    ],
)
def test_what_cannot_be_is_a_sentence(screw, seat, more):
    """A screw that is none for the seat, or a size that no cut has, is refused in a sentence."""
    with pytest.raises(SeatworkError):
        stands(screw, seat, **({"thickness": 10.0} | more))


def test_every_fault_has_its_words():
    """Each fault is said in a short line and in a sentence, with its size."""
    assert LABELS.keys() == SENTENCES.keys()
    for name in LABELS:
        fault = Fault(name=name, amount=1.25)
        assert len(fault.label(lambda _: "0.049 in (1.25 mm)")) <= 48
        assert fault.sentence().endswith(".")
