"""The signs of a hole note come along with every page, since hardly a computer has them."""

import base64
import importlib.util
import io
import re
from pathlib import Path

import pytest
from fontTools.ttLib import TTFont
from seatwork.live.signs import FONT, RANGE, face
from seatwork.live.view import LiveView
from seatwork.opening.export import POLICY
from seatwork.picks.form import PickForm
from seatwork.worksheet.answer_view import AnswerView

SIGNS = "⌀⌴⌵↧"
TOOL = Path(__file__).parents[1] / "signs_font.py"


@pytest.fixture(scope="module")
def kept() -> TTFont:
    """Read the font that is in the package."""
    return TTFont(FONT)


def test_the_font_has_the_four_signs_and_nothing_else(kept: TTFont) -> None:
    """What is in it is what its range claims for it."""
    assert {chr(code) for code in kept.getBestCmap()} == set(SIGNS)
    assert {chr(int(code, 16)) for code in re.findall(r"U\+(\w{4})", RANGE)} == set(SIGNS)


def test_the_font_has_the_outlines_that_the_drawings_have(kept: TTFont) -> None:
    """Drawn anew from the drawings' outlines, each sign has the same corners and width."""
    spec = importlib.util.spec_from_file_location("signs_font", TOOL)
    tool = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(tool)
    fresh = tool.font().font
    for name in tool.SIGNS:
        assert kept["hmtx"][name] == fresh["hmtx"][name]
        assert kept["glyf"][name].coordinates == fresh["glyf"][name].coordinates


def test_every_form_bench_and_pick_brings_the_font() -> None:
    """It stands in their styles, so that a page on any server has it."""
    for kind in (LiveView, PickForm, AnswerView):
        assert face() in str(kind._css), kind
        assert '"seatwork signs"' in str(kind._css).replace(face(), ""), kind


def test_a_written_page_may_use_the_font_it_holds() -> None:
    """The page's own policy allows a font from the page itself, and from nowhere else."""
    assert "font-src data:;" in POLICY
    data = re.search(r"base64,([^)]+)\)", face())[1]
    assert TTFont(io.BytesIO(base64.b64decode(data))).getBestCmap()
