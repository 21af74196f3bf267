"""Blocks that cards share: heading, signature line, boxes for readings, cautions."""

import datetime
from collections.abc import Iterable, Sequence

from seatwork.cards.lettering import LEADING, SIZE
from seatwork.cards.pages import THICK, Pages
from seatwork.errors import SeatworkError
from seatwork.shop.house.cautions import Caution, closing

LINE = SIZE * LEADING / 72.0
BOX, SMALL_BOX, BOX_HIGH = 1.35, 0.62, 0.32
MOST_BOXES = 4
STOP_SIZE, HEAVY = 14.0, 3.0
READ = 10.5
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


def heading(pages: Pages, title: str, *lines: str, size: float = 16.0) -> None:
    """Set a title with a few lines below it and a heavy rule."""
    pages.text(title, size=size, bold=True)
    for line in lines:
        pages.text(line)
    pages.rule(THICK)


def caption(pages: Pages, words: str, *, needs: float = 2 * LINE, size: float = SIZE) -> None:
    """Set the heading of a block, kept with what follows it.

    Parameters
    ----------
    pages : Pages
        Where it goes.
    words : str
        The heading.
    needs : float
        Height that must be left below the heading [in].
    size : float
        Type size [pt].
    """
    pages.space(0.06)
    pages.keep_together(LINE + needs)
    pages.text(words, bold=True, size=size)


def sign_here(pages: Pages) -> None:
    """Keep the foot of this page for the signature; software signs nothing."""
    said = f"{pages.say(VERIFY)} {pages.say(closing())}"
    high = pages.high(said) + SIGNATURE + 0.1
    kept, top = pages.down, pages.floor - high
    pages.stroke(0.0, top, pages.room, top, THICK)
    pages.down = top + 0.06
    pages.text(said)
    base = pages.floor - 0.02
    pages.words[-1].append(f"{pages.say('instructor')} [blank]  {pages.say('date')} [blank]")
    pages.set("instructor", 0.0, base)
    pages.stroke(0.95, base + 0.03, 4.6, base + 0.03)
    pages.set("date", 4.8, base)
    pages.stroke(5.3, base + 0.03, pages.room, base + 0.03)
    pages.down, pages.floor = kept, top - 0.04


def measured(pages: Pages, words: str, count: int = 1) -> None:
    """Set a line of text with empty boxes at the right margin, to write what is measured.

    Parameters
    ----------
    pages : Pages
        Where it goes.
    words : str
        What is measured, and what it should say.
    count : int
        Number of places; a box for each, at most four.
    """
    boxes = max(1, min(count, MOST_BOXES))
    box = BOX if boxes == 1 else SMALL_BOX
    wide = pages.room - boxes * (box + 0.05) - 0.1
    high = max(pages.high(words, room=wide, size=READ), BOX_HIGH)
    pages.keep_together(high + 0.06)
    top = pages.down
    for number in range(boxes):
        right = pages.room - (boxes - number) * (box + 0.05) + 0.05
        pages.frame(right, top, box, BOX_HIGH)
    pages.text(words, room=wide, size=READ)
    pages.words[-1].append("[measured: blank]" * boxes)
    pages.down = top + high + 0.05


def stop_box(pages: Pages, title: str, lines: Sequence[str]) -> None:
    """Set what must be settled first in a heavy frame, so that it is seen without a color."""
    room = pages.room - 0.3
    high = pages.high(title, size=STOP_SIZE, bold=True, room=room)
    high += sum(pages.high(line, room=room) for line in lines) + 0.2
    pages.space(0.05)
    pages.keep_together(high)
    top = pages.down
    pages.frame(0.0, top, pages.room, high, weight=HEAVY)
    pages.down = top + 0.08
    pages.text(title, size=STOP_SIZE, bold=True, indent=0.15, room=room)
    for line in lines:
        pages.text(line, indent=0.15, room=room)
    pages.down = top + high + 0.08


def in_full(pages: Pages, boxes: Iterable[Caution]) -> None:
    """Set each caution with what to do and the number that matters."""
    for box in boxes:
        needs = sum(pages.high(line, room=pages.room - 0.25) for line in box.do) + 2 * LINE
        caption(pages, box.title, needs=min(needs, 2.5))
        pages.text(box.hazard)
        for line in (*box.do, *filter(None, [box.number])):
            pages.text(f"• {pages.say(line)}", indent=0.15)
