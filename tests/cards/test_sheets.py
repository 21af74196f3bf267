"""Sheets for wall, bench and crib: complete, legible, and with the figures they are for."""

from collections.abc import Callable

import pytest
from seatwork.cards import Pages, charts, coupons, formulas, gages, profile, station
from seatwork.plan import Plan

NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
SHEETS: dict[str, Callable[[Plan, str], Pages]] = {
    "drills": lambda _plan, paper: charts.drills(paper=paper),
    "clearance holes": lambda _plan, paper: charts.clearance_holes(paper=paper),
    "counterbores": lambda _plan, paper: charts.counterbores(paper=paper),
    "formulas": lambda _plan, paper: formulas.formula_page(paper=paper),
    "coupons": lambda _plan, paper: coupons.coupon_set(paper=paper),
    "checklist": lambda _plan, paper: station.crib_checklist(paper=paper),
    "sign": lambda _plan, paper: station.station_sign("bench drill press", paper=paper),
    "gage sheet": lambda plan, paper: gages.gage_page(plan, paper=paper),
    "profile": lambda plan, paper: profile.seat_profile(plan, paper=paper),
    "demonstration": lambda plan, paper: station.demonstration(plan, paper=paper),
}


def said(pages: Pages) -> str:
    """Join all words of all pages in one line."""
    return " ".join(" ".join(word.split()) for page in pages.words for word in page)


@pytest.mark.slow
@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("name", sorted(SHEETS))
def test_nothing_is_small_clipped_or_overlapping(
    name: str,
    paper: str,
    plan_of: Callable[..., Plan],
    faults: Callable[[Pages], list[str]],
) -> None:
    """Every letter of every sheet is 10 pt or more, on the page and clear of the others."""
    assert faults(SHEETS[name](plan_of(NOTE), paper)) == []


def test_the_clearance_chart_has_the_published_holes() -> None:
    """#10 normal is drill #2 (ASME B18.2.8); M6 medium is 6.6 mm (ISO 273)."""
    words = said(charts.clearance_holes())
    assert "#2: 0.221 (5.61)" in words
    assert "6.60 (0.260)" in words


def test_the_counterbore_chart_has_the_published_bores() -> None:
    """3/8 is bored 5/8 (ASME B18.3 appendix, from memory); M6 is bored 11, 6.4 deep (DIN 974-1)."""
    words = said(charts.counterbores())
    assert "0.625 in (15.88 mm)" in words
    assert "11.00 mm (0.433 in) 6.40 mm (0.252 in)" in words


def test_the_formula_sheet_has_the_factors() -> None:
    """2 tan(A/2) is 1.7386 at 82° and exactly 2 at 90°; a third slower is two thirds."""
    words = said(formulas.formula_page())
    assert "82°: 1.7386" in words
    assert "90°: 2.0000" in words
    assert "a third slower is x 2/3, not x 1/3" in words


def test_the_full_size_profile_carries_its_own_ruler(plan_of: Callable[..., Plan]) -> None:
    """A page printed to fit would lie, so it says when not to use it."""
    assert "DO NOT USE UNLESS BOTH BARS MEASURE 50 mm" in said(profile.seat_profile(plan_of(NOTE)))


@pytest.mark.slow
def test_sheets_for_the_machine_clear_nobody(plan_of: Callable[..., Plan]) -> None:
    """Demonstration, sign, coupons and gage sheet defer to manual, shop rules and instructor."""
    for name in ("demonstration", "sign", "coupons", "gage sheet"):
        assert "clears nobody" in said(SHEETS[name](plan_of(NOTE), "letter"))


def test_the_bar_of_the_angle_lesson_has_one_bad_seat() -> None:
    """Seats at 82°, 90° and 100°, and an M6 head in 82°, wrong on purpose."""
    words = said(coupons.coupon_set())
    for angle in ("X 82°", "X 90°", "X 100°", "WRONG ON PURPOSE"):
        assert angle in words
