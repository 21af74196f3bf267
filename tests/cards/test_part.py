"""The card of a whole part: every feature, every tool once, the bad rows told."""

from collections.abc import Callable

import pytest
from seatwork.cards import Pages, part_card
from seatwork.errors import SeatworkError
from seatwork.plan import Plan

pytestmark = pytest.mark.slow

PART = {
    "hopper rim": "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD",
    "crank boss": "2X ⌀13/32 THRU ⌴ FOR 3/8 SHCS",
    "frame pad": "3X ⌀17/32 THRU, S.F. 1.25",
}


@pytest.fixture
def plans(plan_of: Callable[..., Plan]) -> dict[str, Plan]:
    """Plan the cider mill's part."""
    return {name: plan_of(note, material="gray iron") for name, note in PART.items()}


def test_the_summary_names_every_feature_and_tool(plans: dict[str, Plan]) -> None:
    """The first page lists each feature, its count, and each tool once."""
    front = part_card("frame", plans, date="2026-03-05").words[0]
    for name in PART:
        assert name in front
    tools = [step.tool for plan in plans.values() for s in plan.seats for step in s.operations]
    for tool in filter(None, tools):
        assert sum(line.startswith(tool) for line in front) >= 1
    assert "3 features, date 2026-03-05" in front


def test_every_feature_has_its_own_page(plans: dict[str, Plan]) -> None:
    """Each feature's card starts a page with its name, its note and a signature line."""
    pages = part_card("frame", plans)
    for name, note in PART.items():
        fronts = [words for words in pages.words if f"Print note: {note}" in words]
        assert len(fronts) == 1
        assert any(line.startswith(f"{name}: ") for line in fronts[0])
        assert any("instructor [blank]" in line for line in fronts[0])


def test_what_was_left_out_is_told(plans: dict[str, Plan]) -> None:
    """A row that could not be planned stands on the summary with its reason."""
    front = part_card("frame", plans, left_out=["frame.csv, row 5: no such word"]).words[0]
    assert "Left out: frame.csv, row 5: no such word" in front


def test_progress_is_told_feature_by_feature(plans: dict[str, Plan]) -> None:
    """The bar is moved once for each feature, in order."""
    seen: list[int] = []
    part_card("frame", plans, progress=seen.append)
    assert seen == [1, 2, 3]


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_part_cards_are_legible(
    paper: str, plans: dict[str, Plan], faults: Callable[[Pages], list[str]]
) -> None:
    """No text of a part card is small, clipped or on another one."""
    assert faults(part_card("frame", plans, paper=paper)) == []


def test_an_empty_part_is_refused() -> None:
    """A part without a feature gives one sentence."""
    with pytest.raises(SeatworkError, match="no feature of the part could be planned"):
        part_card("frame", {})
