"""Seats as they were cut, right or wrong, drawn with their screws."""

import importlib.util
import random
import re
import sys
from contextlib import suppress
from pathlib import Path

import numpy as np
import pytest
from seatwork.drawings import CutSeat, Look, SeatWithScrew, seat_with_screw
from seatwork.errors import SeatworkError
from seatwork.seats import CapScrew, Chamfer, Counterbore, Countersink, Head, Spotface
from seatwork.units import show_both


def _loaded():
    """Load the wrong seats that are drawn to be looked at."""
    path = Path(__file__).parents[1] / "wrong_seats.py"
    spec = importlib.util.spec_from_file_location("wrong_seats", path)
    module = importlib.util.module_from_spec(spec)
    sys.modules["wrong_seats"] = module
    spec.loader.exec_module(module)
    return module


SEATS = _loaded()
M6 = CapScrew(head_diameter=10.0, head_height=6.0, diameter=6.0)


def test_there_are_twenty_wrong_seats():
    """Of each kind some are cut wrong, and each fault that the issue names is among them."""
    wrong = [part for _, part, _ in SEATS.WRONG.values()]
    assert len(wrong) >= 20
    assert {type(part.seat) for part in wrong} == {Countersink, Counterbore, Spotface, Chamfer}
    seen = set().union(*(names for _, _, names in SEATS.WRONG.values()))
    assert seen >= {"proud", "below", "rattling", "broken through", "knife edge"}


@pytest.mark.parametrize("name", SEATS.WRONG)
def test_what_is_wrong_is_said(name):
    """Each wrong seat is said to be wrong in just what it was cut wrong in; the right ones not."""
    right, wrong, names = SEATS.WRONG[name]
    assert set(wrong.standing().names) == names
    assert SEATS.RIGHT[right].standing().names == ()


@pytest.mark.slow
@pytest.mark.parametrize("system", ["inch", "metric"])
@pytest.mark.parametrize("projector", [False, True])
def test_nothing_overlaps(system, projector, faults):
    """Words of a wrong seat and of the right one beside it touch nothing."""
    for name in SEATS.WRONG:
        assert faults(SEATS.drawn(name, Look(system=system, projector=projector))) == [], name


@pytest.mark.slow
@pytest.mark.parametrize("name", SEATS.WRONG)
def test_the_picture_says_what_the_text_says(name):
    """Every number under the picture is in its text, and every fault's sentence too."""
    drawing = SEATS.drawn(name)
    wrong = SEATS.WRONG[name][1]
    words = [text.get_text() for text in drawing.figure.axes[0].texts]
    words += [a.get_text() for a in drawing.figure.axes[0].artists if hasattr(a, "get_text")]
    for number in re.findall(r"\d+\.\d+ in", " ".join(words)):
        assert number in drawing.text
    for fault in wrong.standing().faults:
        assert fault.sentence(lambda size: show_both(float(size), "inch")) in drawing.text


@pytest.mark.slow
def test_a_move_shows_what_a_drawing_shows():
    """Moved from one seat to another the picture is that of the other, to the pixel."""
    scene = SeatWithScrew((SEATS.RIGHT["ten"],))
    drawing = scene.draw()
    for _, wrong, _ in list(SEATS.WRONG.values())[::5]:
        scene.move((wrong,))
        assert drawing.png(0.5) == SeatWithScrew((wrong,)).draw().png(0.5)


def test_the_head_is_drawn_where_it_stands():
    """An M6 head 3 mm proud of its bore is drawn 3 mm above the face, to the scale of the bore."""
    part = CutSeat(
        screw=M6, seat=Counterbore(diameter=11, depth=3, hole_diameter=6.6), thickness=16
    )
    scene = SeatWithScrew((part,))
    scene.draw()
    view = scene._views[0]
    top = view._screw.get_path().vertices[:, 1].max()
    sides = view._screw.get_path().vertices[:, 0]
    scale = (sides.max() - sides.min()) / 10.0
    assert top - 430.0 == pytest.approx(3.0 * scale, abs=0.01)


@pytest.mark.slow
def test_any_seat_that_can_be_cut_is_drawn():
    """Two hundred seats with sizes at random are drawn, or refused in a sentence."""
    chance = random.Random(11)
    drawn = 0
    for _ in range(200):
        with suppress(SeatworkError):
            scene = SeatWithScrew((_any(chance),))
            scene.draw()
            drawn += 1
            assert np.isfinite(scene._views[0]._screw.get_path().vertices).all()
    assert drawn > 100


def _any(chance: random.Random) -> CutSeat:
    """Draw a seat, a screw and a part at random."""
    wide, hole, thick = (chance.uniform(*ends) for ends in ((3, 40), (2, 20), (0.5, 40)))
    cap = CapScrew(head_diameter=chance.uniform(8, 30), head_height=chance.uniform(2, 15),
                   diameter=chance.uniform(2, 8))  # fmt: skip
    kind = chance.randrange(4)
    if kind == 0:
        head = Head(sharp_diameter=chance.uniform(5, 30), included_angle=chance.uniform(60, 120))
        cone = Countersink(
            diameter=wide, hole_diameter=hole, included_angle=chance.uniform(60, 120)
        )
        return CutSeat(screw=head, seat=cone, thickness=thick)
    if kind == 1:
        bore = Counterbore(diameter=wide, depth=chance.uniform(0.5, 30), hole_diameter=hole)
        return CutSeat(screw=cap, seat=bore, thickness=thick)
    if kind == 2:
        face = Spotface(diameter=wide, hole_diameter=hole)
        depth, clean = chance.uniform(0, 6), chance.uniform(0, 4)
        return CutSeat(screw=cap, seat=face, thickness=thick, depth=depth, clean=clean)
    return CutSeat(
        screw=cap, seat=Chamfer(leg=chance.uniform(0.1, 6)), thickness=thick, hole_diameter=hole
    )


def test_what_cannot_be_drawn_is_a_sentence():
    """Three seats at once, or a flat head in a counterbore, are refused in a sentence."""
    part = SEATS.RIGHT["ten"]
    with pytest.raises(SeatworkError, match="one seat is drawn, or two"):
        SeatWithScrew((part, part, part))
    with pytest.raises(SeatworkError, match="flat underside"):
        seat_with_screw(CutSeat(screw=part.screw, seat=SEATS.RIGHT["bore"].seat, thickness=10))
