"""The class and a learner's report on paper: black on white, on their pages, names in place."""

from pathlib import Path

import numpy as np
import pytest
from matplotlib.image import imread
from seatwork.cards.class_page import class_page
from seatwork.cards.pages import Pages
from seatwork.cards.report_page import report_page
from seatwork.record.class_picture import Line, Picture, Slip
from seatwork.record.learner_report import NOBODY, Report, Theory

SHEETS = tuple(f"sheet_{letter}" for letter in "abcdefgh")
NAMES = {"L01": "Ottoline Quillfeather", "L02": "Bram Vantongeren"}


def picture(learners: int) -> Picture:
    """Make the picture of a class with eight sheets."""
    codes = [f"L{number:02d}" for number in range(1, learners + 1)] + ["L012"]
    lines = tuple(
        Line(learner=code, cells=dict.fromkeys(SHEETS, "100+* r2 ?"), parts="1/2",
             signed=("bench drill press",)) for code in codes
    )  # fmt: skip
    slip = Slip(sheet="sheet_a", code="M01", sentence="the whole angle", learners=("L01", "L012"))
    needs = {"re-test sheet_a": ("L02", "L012")}
    return Picture(day="2026-10-15", counts="best", sheets=SHEETS, lines=lines, slips=(slip,),
                   needs=needs)  # fmt: skip


def inside(pages: Pages, folder: Path) -> bool:
    """Whether nothing is printed within a third of an inch of any edge."""
    for number in range(len(pages.figures)):
        path = folder / f"{number}.png"
        path.write_bytes(pages.png(number, dpi=60))
        dark = np.asarray(imread(path))[..., :3].min(axis=2) < 0.5
        edge = 20
        rim = (dark[:edge].any(), dark[-edge // 2 :].any(), dark[:, :edge].any(),
               dark[:, -edge:].any())  # fmt: skip
        if any(rim):
            return False
    return True


@pytest.mark.slow
def test_the_class_fits_its_pages(tmp_path: Path) -> None:
    """Eight sheets of thirty learners stay within the margins of pages that lie on their side."""
    pages = class_page(picture(30), names=NAMES)
    assert pages.width > pages.height
    assert inside(pages, tmp_path)
    said = str(pages)
    assert all(name.replace("_", " ") in said for name in SHEETS)


@pytest.mark.slow
def test_names_stand_for_their_own_codes_alone(tmp_path: Path) -> None:
    """L012 is not the learner L01 with a 2 behind."""
    said = str(class_page(picture(3), names=NAMES))
    assert "M01, 2 learners (Ottoline Quillfeather, L012): the whole angle" in said
    assert "re-test sheet_a: Bram Vantongeren; L012" in said
    assert "Quillfeather2" not in said


@pytest.mark.slow
def test_a_report_is_one_page_and_clears_nobody(tmp_path: Path) -> None:
    """Twelve sittings, parts and signatures stand on one page, three facts and no sum."""
    theory = tuple(
        Theory(title=f"Sheet {n}", sitting=1, points=7.0, of=9.0, counts=True,
               outcome="7 of 9, 78%: not yet (pass mark 80%).") for n in range(12)
    )  # fmt: skip
    report = Report(
        learner="L03", day="2026-10-15", counts="best", theory=theory,
        practical=("hopper plate, L03-1: accept (2026-10-06)",),
        safety=("bench drill press: signed on paper, I1, 2026-10-06; binder 2026, sheet 4",),
        outline=(), not_asked=("S1", "S2"),
    )  # fmt: skip
    pages = report_page(report, name="Ottoline Quillfeather")
    assert len(pages.figures) == 1
    assert inside(pages, tmp_path)
    said = str(pages)
    assert NOBODY in said
    assert "total" not in said.casefold()
