"""The job card: a plan on paper, for the bench beside the machine, a card for each setup."""

from seatwork.cards.behind import Behind
from seatwork.cards.blocks import Day, named, written
from seatwork.cards.front import front
from seatwork.cards.pages import Pages
from seatwork.cards.setups import cards_of
from seatwork.errors import SeatworkError
from seatwork.marking.speaking import speaker
from seatwork.plan import Plan


def job_card(
    plan: Plan,
    *,
    paper: str = "",
    date: Day = None,
    name: str = "",
    language: str = "en",
) -> Pages:
    """Set a plan as cards, one for each setup, what does not fit on pages behind it.

    Parameters
    ----------
    plan : Plan
        What to do.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of printing; a line to write it on if not given.
    name : str
        Name of the feature or the job.
    language : {"en", "es"}
        What cautions, headings and the lines to sign are said in; the plan stays English.

    Returns
    -------
    Pages
        ``save(path)`` writes the PDF, ``png(page)`` shows one page, ``words`` holds the text.

    Raises
    ------
    SeatworkError
        If the paper or the language is not known, or the plan holds nothing to cut.
    """
    named(name, "name")
    if not plan.seats:
        raise SeatworkError(
            plan.callout.text, "the plan holds nothing to cut", "write a note with a seat or a hole"
        )
    say = speaker(language)
    pages = Pages(paper, foot=f"{say('Job card')} {name}".strip(), say=say)
    add_cards(pages, plan, date=date, name=name)
    return pages


def add_cards(pages: Pages, plan: Plan, *, date: Day, name: str = "") -> None:
    """Add the cards of a plan to pages whose last one is empty, and what stands behind them."""
    rows = plan.rows()
    behind, fronts = Behind(plan, rows), 0
    for card in cards_of(plan):
        if card.number > 1:
            pages.new_page()
        fronts = len(pages.figures)
        front(pages, plan, rows, card, day=written(date), name=name)
        behind.leave_out(card)
    if len(pages.figures) == fronts:
        pages.new_page()
    else:
        pages.space()
    behind.add(pages)
