"""Which paper everything is printed on: an option, or the rule of the house."""

from collections.abc import Callable
from pathlib import Path

import pytest
from seatwork.cards import Pages, formula_page, job_card
from seatwork.cards.papers import page_size
from seatwork.errors import SeatworkError
from seatwork.plan import Plan

LETTER, A4 = (8.5, 11.0), (8.27, 11.69)
"""ANSI/ASME Y14.1 size A; ISO 216 A4, 210 x 297 mm [in]."""


@pytest.fixture
def metric_house(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Work in a workbook whose house rule is A4."""
    (tmp_path / "workbook.toml").write_text("format = 1\n", encoding="utf-8")
    (tmp_path / "shop").mkdir()
    rules = tmp_path / "shop" / "house_rules.toml"
    rules.write_text('[display]\npaper = "a4"\n', encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def size(pages: Pages) -> tuple[float, float]:
    """Give width and height of the first page [in]."""
    return tuple(pages.figures[0].get_size_inches())


def test_an_option_names_the_paper() -> None:
    """Letter and A4 have the sizes of their standards, however they are written."""
    assert page_size("letter") == LETTER
    assert page_size("A4") == page_size("a4") == A4
    assert [round(side * 25.4) for side in A4] == [210, 297]
    with pytest.raises(SeatworkError, match="write letter or a4"):
        page_size("legal")


def test_the_house_rule_names_the_paper(metric_house: Path, plan_of: Callable[..., Plan]) -> None:
    """Without an option a card and a wall chart come on the paper of the house."""
    plan = plan_of("4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD")
    assert size(job_card(plan)) == size(formula_page()) == A4
    assert size(job_card(plan, paper="letter")) == LETTER


def test_the_package_prints_on_letter(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Outside a workbook the default of the rule holds."""
    monkeypatch.chdir(tmp_path)
    assert size(formula_page()) == LETTER
