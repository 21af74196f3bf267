"""Nothing runs past its margin, on paper or on a screen, whatever the note."""

import io
import json
from collections.abc import Callable, Iterator
from pathlib import Path

import numpy as np
import pytest
from matplotlib.image import imread
from seatwork import notes
from seatwork.cards import Pages, formula_page, job_card
from seatwork.cards.lettering import broken, printable
from seatwork.cards.pages import MARGIN
from seatwork.errors import SeatworkError
from seatwork.plan import Plan, make

pytestmark = pytest.mark.slow

PRINTS = Path(__file__).parents[1] / "notes" / "data" / "prints.jsonl"
NOTES = (
    "⌀13/32 THRU, C'BORE .625 X .40 DEEP BOTH SIDES",
    "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD FAR SIDE",
    "2X 3/8-16 UNC-2B ↧ .75, ⌴ ⌀.625 ↧ .12",
)
OVER = 0.02  # in


def ink(pages: Pages, page: int, dpi: float) -> float:
    """Give how far the ink of a page as shown stands beyond its right margin [in]."""
    pixels = imread(io.BytesIO(pages.png(page, dpi=dpi)), format="png")[..., 0]
    dark = np.flatnonzero((pixels < 0.5).any(axis=0))
    return float(dark.max() + 1) / dpi - (pages.width - MARGIN)


@pytest.mark.parametrize("dpi", [72.0, 100.0, 150.0])
@pytest.mark.parametrize("note", NOTES)
def test_no_line_runs_past_its_margin_on_a_screen(
    note: str, dpi: float, plan_of: Callable[..., Plan]
) -> None:
    """At any size on the screen the ink ends at the margin, as on paper."""
    pages = job_card(plan_of(note, material="gray iron", thickness=38.1))
    for page in range(len(pages.figures)):
        assert ink(pages, page, dpi) <= OVER + 1 / dpi


def test_a_line_past_the_margin_is_found() -> None:
    """The look at the ink sees a line that is too long."""
    pages = Pages("letter")
    pages.set("a line that runs out at the right", 5.5, 4.0)
    assert ink(pages, 0, 100.0) > OVER + 0.01


def planned(every: int) -> Iterator[tuple[int, Plan]]:
    """Yield plans of ordinary prints, of every so many."""
    lines = [json.loads(text) for text in PRINTS.read_text("utf-8").splitlines()]
    for number, line in enumerate(lines[::every]):
        usual = {"system": line["system"]} if line["system"] else {}
        machine = ("bench drill press", "knee mill")[number % 2]
        try:
            callout = notes.read(line["note"], **usual)
            yield number, make(callout, material="1018 steel", machine=machine, thickness=19.05)
        except SeatworkError:
            continue  # what must be asked has no card


def hold(every: int, faults: Callable[[Pages], list[str]]) -> int:
    """Look at the cards of ordinary prints, on one paper and the other; give how many."""
    count = 0
    for number, plan in planned(every):
        pages = job_card(plan, paper=("letter", "a4")[number // 2 % 2])
        assert faults(pages) == [], plan.callout.text
        assert str(pages).count("Setup 1 of ") == 1
        count += 1
    return count


def test_cards_of_ordinary_prints_fit(faults: Callable[[Pages], list[str]]) -> None:
    """Of every twelfth note of the prints no text is small, clipped or on another one."""
    assert hold(12, faults) > 8


@pytest.mark.long
def test_cards_of_all_ordinary_prints_fit(faults: Callable[[Pages], list[str]]) -> None:
    """The same of all notes of the prints."""
    assert hold(1, faults) > 120


def test_what_the_font_lacks_is_written_out() -> None:
    """Frames keep their meaning on paper; what nobody can draw is a box, never nothing."""
    assert printable("⌖ ⌀.014 Ⓜ A") == "⊕ ⌀.014 (M) A"
    assert printable("⌵ ⌴ ↧ ±") == "⌵ ⌴ ↧ ±"
    assert broken("中", 2.0) == ["□"]


def test_formulas_keep_to_both_papers(faults: Callable[[Pages], list[str]]) -> None:
    """A page of the wall keeps to the margins of Letter and A4."""
    for paper in ("letter", "a4"):
        assert faults(formula_page(paper=paper)) == []
