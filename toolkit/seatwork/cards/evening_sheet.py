"""A sheet for each evening of the course: the clock, what to lay out, what to read aloud."""

from collections.abc import Iterable

from seatwork.cards.blocks import Day, caption, heading, written
from seatwork.cards.pages import Pages
from seatwork.marking import Evening, evening_course
from seatwork.shop.house.cautions import cautions, closing

SIZE = 10.0
CLOCK = (0.16, 0.84)
MACHINES = {True: "At the machine", False: "No machine tonight"}


def evening_pages(
    evening: int = 0, *, form: str = "eight", paper: str = "", date: Day = None
) -> Pages:
    """Set the sheet of an evening, or of all of them, each the two sides of one paper.

    Parameters
    ----------
    evening : int
        Which, from 1; all of them if 0.
    form : {"eight", "four"}
        Eight evenings, or the shorter form.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of the evening; a line to write it on if not given.

    Raises
    ------
    SeatworkError
        If there is no such evening, form or paper.
    """
    course = evening_course(form)
    wanted = [course.evening(evening)] if evening else list(course.evenings)
    pages = Pages(paper, foot=f"The course in {len(course.evenings)} evenings")
    for number, one in enumerate(wanted):
        if number:
            pages.new_page()
        _sheet(pages, one, date)
    return pages


def _sheet(pages: Pages, one: Evening, date: Day) -> None:
    """Set the two sides of one sheet of paper: for the room, and for before and after."""
    given = one.given
    heading(
        pages,
        f"Evening {one.number} of {one.count}: {given.title}",
        f"{MACHINES[bool(given.bench)]}; {written(date)}, group ____________",
        size=14.0,
    )
    for page in one.lacking:
        pages.text(f"NOT THERE: the page {page}. It is left out of the clock.", bold=True)
    rows = [(row.label, row.text) for row in one.clock]
    pages.table([("minutes", "what"), *rows], [share * pages.room for share in CLOCK])
    _lines(pages, "Lay out the day before", given.prepare, tick=True)
    _lines(pages, "Read aloud", _aloud(given.cautions))
    _lines(pages, "Shown", given.shown)
    _lines(pages, "Cut", given.cut)
    _lines(pages, "Gaged", given.gaged)
    pages.space(0.06)
    pages.text(closing(), size=SIZE, bold=True)
    pages.new_page()
    _back(pages, one)


def _back(pages: Pages, one: Evening) -> None:
    heading(pages, f"Evening {one.number}: what is asked, and who missed it", size=14.0)
    _lines(pages, "A learner can", [f"{code} {words}" for code, words in one.codes])
    _lines(pages, "Three from before, new numbers, on paper", [_question(q) for q in one.again])
    _lines(pages, "Bets, before they look", one.bets, joined=", ")
    _lines(pages, "Asked", [_question(question) for question in one.asked])
    home = [f"{title}, {minutes} min" for title, minutes in one.home]
    _lines(pages, "Read at home", home, joined="; ")
    _lines(pages, "Who missed it", [f"{row.label}: {row.text}" for row in one.missed])
    cuts = [f"{job.name}: {job.note}; {job.material}, {job.machine}" for job in one.given.bench]
    _lines(pages, "Bench sheets of the evening", cuts)


def _question(question: tuple[str, str, str]) -> str:
    sheet, place, goal = question
    return f"{sheet} {place}: {goal}"


def _aloud(names: tuple[str, ...]) -> list[str]:
    return [f"{box.title}: {box.in_short}" for box in cautions(*names)] if names else []


def _lines(
    pages: Pages, title: str, lines: Iterable[str], *, joined: str = "", tick: bool = False
) -> None:
    """Set lines below a heading, or joined in one paragraph; nothing where there are none."""
    listed = tuple(lines)
    if not listed:
        return
    caption(pages, title, size=SIZE + 0.5)
    for line in (joined.join(listed),) if joined else listed:
        if tick:
            pages.keep_together(pages.high(line, size=SIZE, room=pages.room - 0.25))
            pages.frame(0.05, pages.down + 0.02, 0.12, 0.12, weight=0.8)
        pages.text(line, size=SIZE, indent=0.25 if tick else 0.1)
