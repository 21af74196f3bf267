"""The public names of the room, and those of the version before."""

import pytest
from seatwork import cards

FORMER = {
    "feedback_sheet": "feedback_page",
    "formula_sheet": "formula_page",
    "gage_sheet": "gage_page",
    "glossary_sheet": "glossary_page",
    "inspection_sheet": "inspection_page",
    "learner_sheet": "learner_pages",
}


@pytest.mark.parametrize("name", FORMER)
def test_a_former_name_answers_with_a_warning(name: str) -> None:
    """A sheet is a worksheet and nothing else; what was called one says its name now."""
    with pytest.warns(DeprecationWarning, match=f"{name} is called {FORMER[name]} now"):
        assert getattr(cards, name) is getattr(cards, FORMER[name])
    assert name not in cards.__all__


def test_a_page_is_asked_for_by_its_name() -> None:
    """``Pages.sheet`` gives the page for one version more."""
    pages = cards.formula_page()
    with pytest.warns(DeprecationWarning, match=r"Pages\.page"):
        assert str(pages.sheet(1)) == str(pages.page(1))
