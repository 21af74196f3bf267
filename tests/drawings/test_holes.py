"""Sections of empty seats: sizes in words, dimensions, print notes."""

import itertools

import pytest
from seatwork.drawings.parts import holes
from seatwork.drawings.scene import Look
from seatwork.errors import SeatworkError
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface

INCH = 25.4
SEAT = Countersink(diameter=0.385 * INCH, hole_diameter=0.201 * INCH, included_angle=82)
BORE = Counterbore(diameter=0.625 * INCH, depth=0.385 * INCH, hole_diameter=0.406 * INCH)
RING = Spotface(diameter=1.25 * INCH, hole_diameter=0.531 * INCH)


def page(drawing):
    """Give all letters on the page, in reading order of their making."""
    return [text.get_text() for text in drawing.figure.axes[0].texts if text.get_text()]


def test_countersink():
    """⌀.201 THRU ⌵ ⌀.385 X 82° is .106 deep: (.385 - .201)/1.739, worked by hand."""
    drawing = holes.countersink(SEAT)
    assert drawing.text == (
        "Countersink in section: diameter at the face 0.385 in (9.78 mm); depth, face to hole "
        "edge 0.106 in (2.69 mm); hole 0.201 in (5.11 mm); included angle 82°."
    )
    assert page(drawing)[-3:] == ["Print note:", ".201 THRU", ".385 X 82°"]


def test_counterbore():
    """The bore's note carries diameter and depth; the text says from where the depth counts."""
    drawing = holes.counterbore(BORE)
    assert "depth, face to floor 0.385 in (9.78 mm)" in drawing.text
    assert page(drawing)[-4:] == ["Print note:", ".406 THRU", ".625", ".385"]


def test_spotface():
    """A spotface's depth is said to count from the highest spot, and its note gives no depth."""
    drawing = holes.spotface(RING, 0.03 * INCH)
    assert "depth from highest spot 0.030 in (0.76 mm)" in drawing.text
    assert page(drawing)[-1] == "1.250"


def test_chamfer():
    """A .020 leg on a .266 hole is .306 at the face (worked by hand)."""
    drawing = holes.chamfer(Chamfer(leg=0.508), 0.266 * INCH)
    assert "leg along the face 0.020 in (0.51 mm)" in drawing.text
    assert "diameter at the face 0.306 in (7.77 mm)" in drawing.text


def drawn(look):
    """Draw all four kinds, ordinary and extreme."""
    for size, share, angle in itertools.product((2.0, 12.0, 60.0), (0.15, 0.9), (60, 120)):
        yield holes.countersink(
            Countersink(diameter=size, hole_diameter=size * share, included_angle=angle), look
        )
    for size, deep, share in itertools.product((4.0, 40.0), (0.05, 3.0), (0.2, 0.9)):
        bore = Counterbore(diameter=size, depth=size * deep, hole_diameter=size * share)
        yield holes.counterbore(bore, look)
    for size, deep in itertools.product((10.0, 60.0), (0.2, 5.0)):
        yield holes.spotface(Spotface(diameter=size, hole_diameter=size / 2), deep, look)
    for leg, angle, hole in itertools.product((0.2, 2.0), (60, 90, 120), (3.0, 25.0)):
        yield holes.chamfer(Chamfer(leg=leg, included_angle=angle), hole, look)


@pytest.mark.slow
@pytest.mark.parametrize("system", ["inch", "metric"])
def test_nothing_overlaps_or_leaves_the_page(system, faults):
    """Tiny, huge, shallow and deep: no words touch, leave the page or are crossed by a line."""
    for drawing in drawn(Look(system=system, projector=True)):
        assert faults(drawing) == [], drawing.text


@pytest.mark.slow
def test_the_same_twice():
    """A drawing comes out the same, byte for byte."""
    assert holes.spotface(RING, 0.5).png(0.5) == holes.spotface(RING, 0.5).png(0.5)


@pytest.mark.parametrize(
    ("asked", "hidden"),
    [
        ("depth", "0.106"),
        ("diameter", "0.385"),
        ("included_angle", "82°"),
        ("hole_diameter", ".201"),
    ],
)
def test_what_is_asked_is_not_given_away(asked, hidden, faults):
    """A size to be found shows as a question mark, in no label, no note and no text."""
    drawing = holes.countersink(SEAT, Look(projector=True), asked=asked)
    assert not any(hidden in letters for letters in page(drawing))
    assert hidden not in drawing.text
    assert "to be found" in drawing.text
    assert any("?" in letters for letters in page(drawing))
    assert faults(drawing) == []


def test_an_unknown_size_is_refused():
    """Asking for a size that the drawing has not is told in a sentence with the names there are."""
    with pytest.raises(SeatworkError, match="ask for diameter or depth or hole_diameter"):
        holes.counterbore(BORE, asked="angle")
