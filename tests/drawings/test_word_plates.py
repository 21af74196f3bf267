"""Plates of the glossary show every word they are given, clear of each other and on the page."""

from itertools import combinations

import pytest
from matplotlib.backends.backend_agg import RendererAgg
from matplotlib.patches import Polygon
from matplotlib.text import Text
from seatwork.drawings.parts.word_plates import PLATES, plate
from seatwork.drawings.scene import PALETTES, Drawing, Look
from seatwork.drawings.strokes.sketch import HEIGHT
from seatwork.errors import SeatworkError
from seatwork.shop.house.glossary import glossary

RENDERER = RendererAgg(1280, int(HEIGHT), 100)


def drawn(name: str, look: Look | None = None) -> Drawing:
    """Draw a plate with the words of the glossary."""
    words = {term.english: (term.english, term.spanish) for term in glossary().on(name)}
    return plate(name, words, look)


@pytest.mark.parametrize("name", PLATES)
def test_every_word_of_a_plate_is_lettered_on_it(name: str) -> None:
    """Each term of the glossary has its drawing: both of its words stand on it."""
    drawing = drawn(name)
    on_it = {" ".join(text.get_text().split()) for text in drawing.figure.findobj(Text)}
    for term in glossary().on(name):
        assert {term.english, term.spanish} <= on_it
        assert f"{term.english} ({term.spanish})" in drawing.text


def test_every_plate_of_the_glossary_is_drawn_and_no_other() -> None:
    """The list of the glossary and the drawings name the same plates in the same order."""
    assert [one.name for one in glossary().plates] == list(PLATES)


@pytest.mark.parametrize("name", PLATES)
def test_no_words_overlap_or_leave_the_page(name: str) -> None:
    """Every line of lettering is whole and clear of every other, at the projector's size too."""
    drawing = drawn(name, Look(projector=True))
    boxes = [
        (text.get_text(), text.get_window_extent(RENDERER))
        for text in drawing.figure.findobj(Text)
        if text.get_text()
    ]
    for words, box in boxes:
        on_page = box.x0 >= 2 and box.x1 <= 1278 and box.y0 >= 2 and box.y1 <= HEIGHT - 2
        assert on_page, (words, box)
    for (words, box), (other, its) in combinations(boxes, 2):
        assert not box.padded(-1).overlaps(its.padded(-1)), (words, other)


def test_the_tip_of_a_lathe_center_is_free() -> None:
    """A center rides on its cone and never bottoms: the pilot hole goes deeper (practice)."""
    axes = drawn("centers").figure.axes[0]
    parts = [part for part in axes.patches + axes.artists if isinstance(part, Polygon)]
    shaft, center = ([*part.get_xy()] for part in parts[:2])
    inside = [x for x, y in shaft if abs(y - 170.0) < 1]
    tip = min(x for x, y in center if abs(y - 170.0) < 1)
    assert max(inside) < tip < max(x for x, _ in shaft)


@pytest.mark.parametrize("palette", PALETTES)
def test_plates_take_every_palette(palette: str) -> None:
    """The ground of the figure is the palette's paper; the picture has more than one color."""
    drawing = drawn("cone", Look(palette=palette))
    assert drawing.png(0.5)[:4] == b"\x89PNG"


def test_a_word_that_a_plate_does_not_show_is_not_said_of_it() -> None:
    """An instructor's own word stops no lesson: it stands in the table, not in the picture."""
    words = {"vise": ("vise", "prensa"), "hole": ("hole", "agujero")}
    assert plate("cone", words).text.endswith("Named on it: hole (agujero).")


def test_a_word_taken_out_leaves_no_leader() -> None:
    """An instructor may drop words: the plate is drawn without them."""
    assert "depth" not in plate("cone", {"hole": ("hole", "agujero")}).text


def test_an_unknown_plate_gets_the_list() -> None:
    """A name that is no drawing is answered with those there are."""
    with pytest.raises(SeatworkError, match="cone, head"):
        plate("kone", {})
