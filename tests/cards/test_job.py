"""Job cards: the numbers of the screen, on paper, nothing small, clipped or overlapping."""

import datetime
import re
from collections.abc import Callable, Iterator

import pytest
from seatwork.cards import job_card
from seatwork.cards.blocks import VERIFY
from seatwork.cards.pages import Pages
from seatwork.errors import SeatworkError
from seatwork.plan import Plan
from seatwork.plan.contents import HEADINGS
from seatwork.shop.house.cautions import closing

pytestmark = pytest.mark.slow

NUMBER = re.compile(r"\d+(?:[.,/]\d+)*")
NOTES = (
    "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD",
    "2X ⌀13/32 THRU ⌴ FOR 3/8 SHCS",
    "17/32 DR, 1-1/4 S.F., 3 HOLES",
    "2X M8X1.25-6H ↧16 / ⌀6.8 ↧20 ⌵ ⌀8.4 X 90°",
    "4X ⌀6.6 THRU ⌵ FOR M6 COUNTERSUNK SOCKET HEAD",
    "BREAK ALL SHARP EDGES .005-.015",
)


def screen(plan: Plan) -> list[str]:
    """Give every text that the screen shows of a plan."""
    rows = plan.rows()
    said = [text for row in rows for text in (row.label, row.text, row.place)]
    return [*said, plan.material, plan.machine]


def card(pages: Pages) -> str:
    """Give all words of a card."""
    return "\n".join(line for page in pages.words for line in page)


def numbers(texts: list[str]) -> set[str]:
    """Give every number in some texts."""
    return {number for text in texts for number in NUMBER.findall(text)}


def own(pages: Pages) -> set[str]:
    """Give the numbers a card adds: page and step numbers, the scale and its bar, the triangle."""
    steps = {str(n) for n in range(1, 40)}
    bars = re.findall(r"\[drawing: (.+)\]", card(pages))
    triangles = re.findall(r"\[triangle: (.+)\]", card(pages))
    return steps | numbers([*triangles, *(bar.rsplit(";", 1)[-1] for bar in bars)])


def assert_same_numbers(plan: Plan) -> None:
    """Hold a card to the screen, both ways."""
    pages = job_card(plan)
    said, shown = card(pages), screen(plan)
    words = [line for page in pages.words for line in page if not line.startswith("[drawing")]
    drawing = [line for page in pages.words for line in page if line.startswith("[drawing")]
    questions = [check.question for seat in plan.seats for check in seat.checks]
    known = numbers([*shown, *questions, plan.callout.text]) | own(pages)
    assert numbers(drawing) <= known
    assert numbers(words) <= known
    for row in plan.rows():
        if row.kind == "setup":
            continue  # its parts stand in lines of their own
        texts = [text for _, text in row.cells if row.kind == "set"] or [row.text]
        on_the_front = row.kind == "set"
        checks = dict(row.cells).get("check", "")
        assert all(text in said for text in texts if not on_the_front or text != checks), row


@pytest.mark.parametrize("paper", ["letter", "a4"])
@pytest.mark.parametrize("note", NOTES)
def test_nothing_is_small_clipped_or_overlapping(
    note: str, paper: str, plan_of: Callable[..., Plan], faults: Callable[[Pages], list[str]]
) -> None:
    """Every text is 10 pt or more, off the edge of the paper, and clear of all others."""
    assert faults(job_card(plan_of(note), paper=paper)) == []


@pytest.mark.parametrize("note", NOTES)
def test_numbers_are_those_of_the_screen(note: str, plan_of: Callable[..., Plan]) -> None:
    """Every row of the screen stands on the card, and the card has no other number."""
    assert_same_numbers(plan_of(note))


def test_numbers_of_random_plans(random_plans: Callable[[int, int], Iterator[Plan]]) -> None:
    """Twelve random plans have the same numbers on card and screen."""
    for plan in random_plans(12, 7):
        assert_same_numbers(plan)


@pytest.mark.long
def test_numbers_of_500_random_plans(random_plans: Callable[[int, int], Iterator[Plan]]) -> None:
    """Five hundred random plans have the same numbers on card and screen."""
    for plan in random_plans(500, 8):
        assert_same_numbers(plan)


@pytest.mark.long
def test_layout_of_random_plans(
    random_plans: Callable[[int, int], Iterator[Plan]], faults: Callable[[Pages], list[str]]
) -> None:
    """Sixty random plans come out with no text small, clipped or on another one."""
    for number, plan in enumerate(random_plans(60, 9)):
        assert faults(job_card(plan, paper=("a4", "letter")[number % 2])) == []


@pytest.mark.parametrize("note", NOTES[:4])
def test_the_front_holds_what_the_bench_needs(note: str, plan_of: Callable[..., Plan]) -> None:
    """The first page has setup, drawing, sizes, what to set, boxes, date and signature."""
    plan = plan_of(note)
    pages = job_card(plan, date=datetime.date(2026, 3, 5))
    front = "\n".join(pages.words[0])
    wanted = ["[drawing", "Setup 1 of 1", HEADINGS["set"], "Measured", "[measured: blank]"]
    wanted += ["date 2026-03-05", VERIFY, closing(), "instructor [blank]", plan.callout.text]
    wanted += [row.text for row in plan.seats[0].size_rows(plan.callout.system)]
    assert [words for words in wanted if words not in front] == []


@pytest.mark.parametrize("note", NOTES)
def test_cautions_stand_once_and_are_short(note: str, plan_of: Callable[..., Plan]) -> None:
    """Each caution of these operations is said once on the card, in under 120 letters."""
    plan = plan_of(note)
    said = card(job_card(plan))
    for row in plan.rows().of("caution"):
        assert said.count(row.text) == 1
        assert len(row.text) < 120


def test_the_date_is_an_argument(plan_of: Callable[..., Plan]) -> None:
    """Without a date the card has a line to write it on, and no date anywhere."""
    pages = job_card(plan_of(NOTES[0]))
    assert "date ______________" in card(pages)
    assert not re.search(r"20\d\d-\d\d-\d\d", card(pages))
    assert b"CreationDate" not in pages.pdf()


def test_the_same_plan_gives_the_same_bytes(plan_of: Callable[..., Plan]) -> None:
    """PDF and SVG of one plan are the same bytes each time."""
    first, second = (job_card(plan_of(NOTES[0]), date="2026-03-05") for _ in range(2))
    assert first.pdf() == second.pdf()
    assert first.svg() == second.svg()


def test_pages_are_black_and_white(plan_of: Callable[..., Plan]) -> None:
    """No pixel of a card has a color."""
    import io

    import numpy as np
    from matplotlib.image import imread

    pixels = imread(io.BytesIO(job_card(plan_of(NOTES[0])).png(0)), format="png")
    assert np.ptp(pixels[..., :3], axis=2).max() == 0


def test_an_unknown_paper_is_refused(plan_of: Callable[..., Plan]) -> None:
    """Paper other than Letter and A4 is told in one sentence."""
    with pytest.raises(SeatworkError, match="write letter or a4"):
        job_card(plan_of(NOTES[0]), paper="legal")


def test_the_look_at_letters_finds_faults(faults: Callable[[Pages], list[str]]) -> None:
    """Small type, a text on another and one off the paper are each found."""
    pages = Pages()
    pages.set("hole 0.201 in", 0.0, 2.0)
    pages.set("face 0.385 in", 0.3, 2.02)
    pages.set("small", 0.0, 3.0, size=9.0)
    pages.set("a line that runs out at the right", 6.5, 4.0)
    kinds = sorted(fault.partition(":")[0] for fault in faults(pages))
    assert kinds == ["clipped", "overlap", "small"]


def test_a_page_can_be_looked_at_on_screen(plan_of: Callable[..., Plan]) -> None:
    """A page comes as a small picture in gray with words that tell what page it is."""
    sheet = job_card(plan_of(NOTES[0], thickness=6.35), name="lid screws").page(0)
    shown = sheet._repr_mimebundle_()
    assert repr(sheet).startswith("Job card lid screws, page 1 of ")
    assert "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD" in shown["text/plain"]
    assert "__" not in shown["text/plain"]
    assert shown["text/markdown"].startswith("![Job card lid screws, page 1 of ")
    assert len(shown["text/markdown"]) < 100_000
