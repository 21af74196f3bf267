"""Blocks that cards share: heading, signature line, boxes for readings, cautions."""

import datetime
from collections.abc import Iterable

from seatwork.cards.lettering import LEADING, SIZE
from seatwork.cards.pages import THICK, Pages
from seatwork.errors import SeatworkError
from seatwork.shop.house.cautions import Caution, closing

LINE = SIZE * LEADING / 72.0
BOX, BOX_HIGH = 1.35, 0.32
SIGNATURE = 0.36
LONGEST_NAME = 200
Day = datetime.date | str | None
VERIFY = "VERIFY WITH YOUR INSTRUCTOR."


def written(date: Day) -> str:
    """Write a date, or the line to write it on.

    Examples
    --------
    >>> written(datetime.date(2026, 3, 5)), written(None)
    ('date 2026-03-05', 'date ______________')
    """
    if date is None or date == "":
        return "date ______________"
    if not isinstance(date, str | datetime.date):
        raise SeatworkError(date, "that is no date", "write it such as 2026-03-05")
    return f"date {named(str(date), 'date')}"


def named(words: str, what: str) -> str:
    """Return a name or a date as it stands on a card.

    Raises
    ------
    SeatworkError
        If it is no text, or over 200 letters long.
    """
    if not isinstance(words, str) or len(words) > LONGEST_NAME:
        fault = f"a {what} on a card is text of {LONGEST_NAME} letters at most"
        raise SeatworkError(words, fault, f"give a shorter {what}")
    return words


def heading(pages: Pages, title: str, *lines: str) -> None:
    """Set a title with a few lines below it and a heavy rule."""
    pages.text(title, size=16.0, bold=True)
    for line in lines:
        pages.text(line)
    pages.rule(THICK)


def caption(pages: Pages, words: str, *, needs: float = 2 * LINE) -> None:
    """Set the heading of a block, kept with what follows it.

    Parameters
    ----------
    pages : Pages
        Where it goes.
    words : str
        The heading.
    needs : float
        Height that must be left below the heading [in].
    """
    pages.space(0.06)
    pages.keep_together(LINE + needs)
    pages.text(words, bold=True)


def sign_here(pages: Pages) -> None:
    """Keep the foot of this page for the signature; software signs nothing."""
    said = f"{VERIFY} {closing()}"
    high = pages.high(said) + SIGNATURE + 0.1
    kept, top = pages.down, pages.floor - high
    pages.stroke(0.0, top, pages.room, top, THICK)
    pages.down = top + 0.06
    pages.text(said)
    base = pages.floor - 0.02
    pages.words[-1].append("instructor [blank]  date [blank]")
    pages.set("instructor", 0.0, base)
    pages.stroke(0.95, base + 0.03, 4.6, base + 0.03)
    pages.set("date", 4.8, base)
    pages.stroke(5.3, base + 0.03, pages.room, base + 0.03)
    pages.down, pages.floor = kept, top - 0.04


def reading_box(pages: Pages, words: str, box: str = "measured") -> None:
    """Set a line of text with an empty box at the right margin."""
    wide = pages.room - BOX - 0.15
    high = max(pages.high(words, room=wide), BOX_HIGH)
    pages.keep_together(high + 0.06)
    top = pages.down
    pages.frame(pages.room - BOX, top, BOX, BOX_HIGH)
    pages.text(words, room=wide)
    pages.words[-1].append(f"[{box}: blank]")
    pages.down = top + high + 0.07


def in_short(pages: Pages, boxes: Iterable[Caution]) -> None:
    """Set the cautions in one paragraph: of each its title and its hazard."""
    caption(pages, "Cautions (in full on a page behind this one)")
    pages.text(" ".join(f"{box.title}: {box.hazard}" for box in boxes))


def in_full(pages: Pages, boxes: Iterable[Caution]) -> None:
    """Set each caution with what to do and the number that matters."""
    for box in boxes:
        needs = sum(pages.high(line, room=pages.room - 0.25) for line in box.do) + 2 * LINE
        caption(pages, box.title, needs=min(needs, 2.5))
        pages.text(box.hazard)
        for line in (*box.do, *filter(None, [box.number])):
            pages.text(f"• {line}", indent=0.15)
