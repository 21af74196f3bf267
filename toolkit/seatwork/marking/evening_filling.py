"""Filling the evenings: pages, sheets and outline, as ``coverage`` reads them.

``shop/defaults/evenings.toml`` says which page on which evening; the rest is read from the pages.
"""

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking import sheets
from seatwork.marking.evening_file import FORMS, Taught, read_evenings
from seatwork.marking.evenings import Evening, EveningCourse, Question
from seatwork.marking.lesson_pages import LessonPage, lesson_pages
from seatwork.shop import find
from seatwork.shop.lists.outline import read_outline

AGAIN = 3
"""Questions from evenings before, with new numbers, on paper."""

Pages = Sequence[tuple[LessonPage, Taught]]


def evening_course(form: str = "eight", *, folder: Path | None = None) -> EveningCourse:
    """Plan the course in evenings, filled from its pages, sheets and outline.

    Parameters
    ----------
    form : {"eight", "four"}
        Eight evenings, or the shorter form.
    folder : Path, optional
        A workbook folder; looked for if not given. Its ``shop/evenings.toml``, its pages and its
        ``shop/outline.csv`` stand in for those that came along.

    Raises
    ------
    SeatworkError
        If there is no such form, the list cannot be read, or an evening takes longer than it
        has. A page that the list names and that is not there is named in its evening.

    Examples
    --------
    >>> evening_course("four").evening(1).number
    1
    """
    if form not in FORMS:
        raise SeatworkError(str(form)[:40], "there is no such form", f"say {' or '.join(FORMS)}")
    place = folder or find()
    known, outline = lesson_pages(place), read_outline(place)
    given, frame = read_evenings(place)
    ours = [one for one in given if one.form == form]
    taken = [tuple((known[p.page], p) for p in one.pages if p.page in known) for one in ours]
    asked = [tuple(_asked(pages)) for pages in taken]
    evenings = tuple(
        Evening(
            number=number + 1,
            count=len(ours),
            given=one,
            frame=frame,
            pages=taken[number],
            codes=_codes(taken[number], outline),
            bets=tuple(bet for page, part in taken[number] for bet in page.bets_of(part.part)),
            asked=asked[number],
            again=_again(asked, number),
            needed=tuple(_needed(taken, number)),
            lacking=tuple(part.page for part in one.pages if part.page not in known),
        )
        for number, one in enumerate(ours)
    )
    for one in evenings:
        _refuse_overtime(one)
    return EveningCourse(
        form=form,
        evenings=evenings,
        left_out=_left_out(known, taken),
        unserved=_unserved(outline, evenings),
    )


def _asked(pages: Pages) -> Iterator[Question]:
    """Yield sheet, place and goal of each question of an evening's pages, once."""
    found = (one for page, part in pages for one in page.asked_of(part.part))
    for sheet, place in dict.fromkeys(found):
        yield sheet, place, sheets.load(sheet).item(place).kind.goal


def _again(asked: Sequence[tuple[Question, ...]], number: int) -> tuple[Question, ...]:
    """Return one question of each evening before, the latest first, each time another."""
    found: list[Question] = []
    before = [one for one in reversed(asked[:number]) if one]
    for turn in range(AGAIN):
        for back, questions in enumerate(before):
            one = questions[(turn + back) % len(questions)]
            if one not in found and len(found) < AGAIN:
                found.append(one)
    return tuple(found)


def _codes(pages: Pages, outline: Mapping[str, str]) -> tuple[tuple[str, str], ...]:
    served = {code for page, _ in pages for code in page.codes}
    return tuple((code, words) for code, words in outline.items() if code in served)


def _needed(taken: Sequence[Pages], number: int) -> Iterator[tuple[int, str, str]]:
    """Yield each page of a later evening that needs a page of this one."""
    here = {page.key: page.title for page, _ in taken[number]}
    for later, pages in enumerate(taken[number + 1 :], number + 2):
        for page, part in pages:
            if part.part == "rest":
                continue
            for need in page.needs:
                if need in here and need != "start_here":
                    yield later, page.title, here[need]


def _refuse_overtime(one: Evening) -> None:
    over = one.taken - one.frame.evening
    if over > 0:
        raise SeatworkError(
            one._line(), f"it takes {one.taken} minutes, {over} more than it has", "shorten it"
        )


def _left_out(known: Mapping[str, LessonPage], taken: Sequence[Pages]) -> tuple[str, ...]:
    """Name the lessons, and their halves, that no evening takes."""
    parts = {(page.key, part.part) for pages in taken for page, part in pages}
    lacking = []
    for key, page in known.items():
        if (key, "all") in parts or {(key, "first"), (key, "rest")} <= parts:
            continue
        half = next((part for part in ("first", "rest") if (key, part) in parts), "")
        lacking.append(f"{page.title}, from its place to stop on" if half else page.title)
    return tuple(lacking)


def _unserved(
    outline: Mapping[str, str], evenings: Sequence[Evening]
) -> tuple[tuple[str, str], ...]:
    served = {code for one in evenings for code, _ in one.codes}
    return tuple((code, words) for code, words in outline.items() if code not in served)
