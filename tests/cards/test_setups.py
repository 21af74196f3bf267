"""A card for each setup: which face is up, how it is held, where zero is, what is done in it."""

import re
from collections.abc import Callable

import pytest
from seatwork.cards import job_card
from seatwork.cards.setups import cards_of
from seatwork.plan import Plan

pytestmark = pytest.mark.slow

ONE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
FAR = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD FAR SIDE"
BOTH = "2X ⌀.266 THRU ⌵ ⌀.507 X 82° BOTH SIDES"
MIXED = "2X ⌀.266 THRU, CSK .507 X 82° NEAR SIDE, C'BORE .438 X .125 DEEP FAR SIDE"
CENTERS = "CENTER DRILL #3 BOTH ENDS"
HALF = 12.7  # mm, 1/2 in


def fronts(plan: Plan) -> list[str]:
    """Give the words of each card, from its setup on."""
    words = str(job_card(plan)).partition("Behind the card")[0]
    return re.split(r"(?=Setup \d of \d:)", words)[1:]


@pytest.mark.parametrize("note", [ONE, FAR, BOTH, MIXED])
def test_each_setup_has_a_card(note: str, plan_of: Callable[..., Plan]) -> None:
    """A card says of its setup how the part is held, on what, the face that is up, and zero."""
    plan = plan_of(note, thickness=HALF)
    found = fronts(plan)
    assert len(found) == len(plan.setups)
    for number, (page, setup) in enumerate(zip(found, plan.setups, strict=True), 1):
        assert f"Setup {number} of {len(plan.setups)}: {setup.face}" in page
        assert all(words in page for words in (setup.held, setup.under, setup.zero))


@pytest.mark.parametrize("note", [ONE, FAR, BOTH, MIXED])
def test_each_step_stands_on_the_card_of_its_setup(note: str, plan_of: Callable[..., Plan]) -> None:
    """Steps, in order, are those that the setup names; none is lost, none stands twice."""
    plan = plan_of(note, thickness=HALF)
    cards = cards_of(plan)
    lines = [row.label for card in cards for _, _, row in card.steps]
    assert sorted(lines) == sorted(row.label for row in plan.set_rows())
    for card in cards:
        assert {step.name for _, step, _ in card.steps} == set(card.setup.steps)


def test_turning_over_begins_a_card(plan_of: Callable[..., Plan]) -> None:
    """A seat on the far side is drilled on one card and cut on the next, far face up."""
    drilled, cut = cards_of(plan_of(FAR, thickness=HALF))
    assert [step.name for _, step, _ in drilled.steps] == ["drill", "break the rims"]
    assert next(step.name for _, step, _ in cut.steps) == "turn the part over"
    assert (drilled.setup.far_up, cut.setup.far_up) == (False, True)
    assert (drilled.cut, len(cut.cut)) == ((), 1)


def test_readings_stand_on_the_card_where_they_are_taken(plan_of: Callable[..., Plan]) -> None:
    """Of two seats each is gaged in its own setup, with a box for each of the two holes."""
    near, far = fronts(plan_of(MIXED, thickness=HALF))
    assert "depth micrometer" not in near
    assert "ball" in near
    assert "depth micrometer" in far
    assert near.count("[measured: blank][measured: blank]") == 2


def test_every_reading_has_a_box(plan_of: Callable[..., Plan]) -> None:
    """What a gage should say stands beside boxes to write in, up to four."""
    plan = plan_of(ONE)
    words = [line for page in job_card(plan).words for line in page]
    for row in plan.seats[0].reading_rows("inch"):
        assert words[words.index(str(row)) + 1] == "[measured: blank]" * 4


def test_a_gage_is_named_whole(plan_of: Callable[..., Plan]) -> None:
    """A head gage is named by its hole: .313 for #10 at 82° (ASME B18.6.3 as tabled here)."""
    plan = plan_of(ONE)
    gage = plan.seats[0].screw.gage
    named = f"head gage, hole {gage.diameter / 25.4:.3f} in"
    assert named in str(job_card(plan))


def test_both_ends_of_a_shaft_are_two_cards(plan_of: Callable[..., Plan]) -> None:
    """Centers in both ends are cut in two setups: near end, far end."""
    found = fronts(plan_of(CENTERS, material="1018 steel", machine="lathe"))
    heads = [page.partition("\n")[0] for page in found]
    assert heads == ["Setup 1 of 2: near end", "Setup 2 of 2: far end"]


def test_only_a_cone_is_tried_with_blue(plan_of: Callable[..., Plan]) -> None:
    """Blue shows contact on a cone; the head in a counterbore is only tried (common practice)."""
    cone, bore = fronts(plan_of(ONE))[0], fronts(plan_of("13/32 THRU ⌴ FOR 3/8 SHCS"))[0]
    assert "contact seen with blue" in cone
    assert "tried with the job's own screw" in bore
    assert "blue" not in bore.partition("Look at")[0]


def test_a_center_hole_has_its_mouth_measured_and_no_size_of_the_tool(
    plan_of: Callable[..., Plan],
) -> None:
    """The mouth is what a caliper reaches; pilot and body are sizes of the center drill."""
    for page in fronts(plan_of(CENTERS, machine="lathe")):
        asked = page.partition("Measured")[2].partition("Take care")[0]
        assert "mouth of the center hole" in asked
        assert "body of the center drill" not in asked
