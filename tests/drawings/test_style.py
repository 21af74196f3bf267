"""Every palette keeps its contrast, and a room can read the projector size."""

import itertools

import pytest
from matplotlib.colors import to_rgb
from matplotlib.font_manager import findfont, get_font
from seatwork.drawings.scene import PALETTES, Look
from seatwork.drawings.strokes import style


def luminance(color):
    """Give the relative luminance of WCAG 2.2, from its definition."""
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in to_rgb(color)]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one, other):
    """Give the contrast ratio of WCAG 2.2."""
    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize(
    ("one", "other", "ratio"),
    [("#000000", "#ffffff", 21.0), ("#0072b2", "#ffffff", 5.2), ("#e69f00", "#ffffff", 2.3)],
)
def test_the_yardstick_itself(one, other, ratio):
    """The contrast formula gives the ratios published for black and for two common colors.

    Source: WCAG 2.2 (21:1 for black on white); ratios of the two colors on white to one decimal
    from a survey of color-blind-safe palettes.
    """
    assert contrast(one, other) == pytest.approx(ratio, abs=0.06)


def test_every_look_has_a_palette():
    """The palettes of the style are the ones a look can name."""
    assert set(style.PALETTES) == set(PALETTES)


@pytest.mark.parametrize("name", PALETTES)
def test_text_reaches_four_and_a_half(name):
    """Words in ink stand 4.5:1 off paper, metal and screw; contact words off paper (WCAG 1.4.3)."""
    its = style.PALETTES[name]
    for ground in (its.paper, its.metal, its.screw):
        assert contrast(its.ink, ground) >= 4.5
    assert contrast(its.contact, its.paper) >= 4.5


@pytest.mark.parametrize("name", PALETTES)
def test_lines_reach_three(name):
    """Lines stand 3:1 off every ground they cross (WCAG 1.4.11)."""
    its = style.PALETTES[name]
    grounds = (its.paper, its.metal, its.screw)
    for line, ground in itertools.product((its.ink, its.center, its.contact), grounds):
        assert contrast(line, ground) >= 3.0, (line, ground)
    assert contrast(its.hatch, its.metal) >= 3.0


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
