"""Every look has its palette, and a room can read the projector size; contrast: tests/access."""

import pytest
from matplotlib.font_manager import findfont, get_font
from seatwork.drawings.scene import PALETTES, Look
from seatwork.drawings.strokes import style


def test_every_look_has_a_palette():
    """The palettes of the style are the ones a look can name."""
    assert set(style.PALETTES) == set(PALETTES)


def test_projector_sizes():
    """On a 1280 by 720 page a projector gets 18 pt type or more and no line under 3 pixels."""
    its = style.style(Look(projector=True)).sizes
    figure, _ = style.page(style.PALETTES["light"])
    assert tuple(figure.bbox.size) == (1280.0, 720.0)
    assert min(its.text, its.large) >= 18.0
    assert min(its.edge, its.thin, its.contact) >= 3.0


@pytest.mark.parametrize("sizes", [style.DESK, style.PROJECTOR])
def test_edges_are_heavier_than_thin_lines(sizes):
    """Visible edges are about twice as heavy as dimension lines, so that the part stands out."""
    assert 1.7 <= sizes.edge / sizes.thin <= 2.3


def test_the_ground_is_opaque():
    """A dark page behind a drawing never shows through."""
    figure, _ = style.page(style.PALETTES["dark"])
    assert figure.get_facecolor()[3] == 1.0


@pytest.mark.parametrize("character", "⌵⌴")
def test_the_font_lacks_the_hole_signs(character):
    """The default font has no countersink and no counterbore sign: they must be drawn."""
    assert ord(character) not in get_font(findfont(style.FONT)).get_charmap()
