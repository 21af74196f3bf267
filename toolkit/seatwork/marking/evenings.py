"""The evening course: what is taught, shown, cut, gaged and asked on each evening."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.marking.evening_file import Frame, Given, Taught
from seatwork.marking.lesson_pages import LessonPage
from seatwork.rows import Blocks, Row, Rows, Shown

Question = tuple[str, str, str]
"""Sheet, place on it, and what the question is for."""


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Evening(Shown):
    """One evening.

    Parameters
    ----------
    number, count : int
        Which of how many.
    given : Given
        What the list says of it.
    frame : Frame
        Minutes that every evening has.
    pages : tuple of (LessonPage, Taught)
        Its pages with what is taken of each.
    codes : tuple of (str, str)
        Codes of the outline that its pages serve, with what a learner can do.
    bets : tuple of str
        Names of the bets on its pages.
    asked : tuple of (str, str, str)
        Sheet, place and goal of its questions.
    again : tuple of (str, str, str)
        Those of evenings before that begin it.
    needed : tuple of (int, str, str)
        Later evenings with a page that needs one of these: number, that page, this page.
    lacking : tuple of str
        Pages that the list names and that are not there.
    """

    number: int
    count: int
    given: Given
    frame: Frame
    pages: tuple[tuple[LessonPage, Taught], ...]
    codes: tuple[tuple[str, str], ...]
    bets: tuple[str, ...]
    asked: tuple[Question, ...]
    again: tuple[Question, ...]
    needed: tuple[tuple[int, str, str], ...]
    lacking: tuple[str, ...] = ()

    @property
    def clock(self) -> Rows:
        """From minute to minute: what is done, and in hand what is left of the evening."""
        rows, at = [], 0
        for words, minutes in self._slots():
            if minutes:
                rows.append(Row(label=f"{at} to {at + minutes}", text=words))
                at += minutes
        left = self.frame.evening - at
        return Rows([*rows, *([Row(label="in hand", text=f"{left} minutes")] if left else [])])

    @property
    def home(self) -> tuple[tuple[str, int], ...]:
        """Titles of pages that are read on at home, with the minutes of it [min]."""
        rest = ((page.title, page.long(one.part) - one.minutes(page)) for page, one in self.pages)
        return tuple((title, minutes) for title, minutes in rest if minutes > 0)

    @property
    def taken(self) -> int:
        """Minutes that are planned [min]."""
        return sum(minutes for _, minutes in self._slots())

    @property
    def missed(self) -> Rows:
        """What a missed evening costs, and how to catch up."""
        minutes = sum(page.long(one.part) for page, one in self.pages)
        titles = ", ".join(page.title for page, _ in self.pages)
        rows = [
            Row(label="costs", text=f"{minutes} minutes of pages: {titles}"),
            *self._needs(),
            Row(label="at home", text="the exported pages (seatwork export), bets before folds"),
        ]
        if self.asked:
            words = f"{_places(self.asked)}; with own numbers"
            rows.append(Row(label="on the sheet", text=words))
        for job in self.given.bench:
            words = f"{job.name}: before the next cut, with the instructor beside; no cut alone"
            rows.append(Row(label="at the machine", text=words))
        return Rows(rows)

    def _needs(self) -> Iterator[Row]:
        """Yield a row for each later evening whose pages need one of these."""
        for number in dict.fromkeys(number for number, _, _ in self.needed):
            found: dict[str, list[str]] = {}
            for other, later, page in self.needed:
                if other == number:
                    found.setdefault(later, []).append(page)
            words = (f"{later} needs {' and '.join(pages)}" for later, pages in found.items())
            yield Row(label=f"evening {number}", text="; ".join(words))

    def _slots(self) -> Iterator[tuple[str, int]]:
        given, frame = self.given, self.frame
        three = "Three from before, new numbers, on paper"
        yield three if self.again else "Names on the list, codes given out", frame.again
        yield "Cautions read aloud", frame.aloud
        for page, one in self.pages:
            yield f"Page: {page.title}{one.words}", one.minutes(page)
        yield "Shown by the instructor", given.shown_minutes
        yield "At the machine and at the gages" if given.bench else "Gaged", given.cut_minutes
        yield given.test or "Test", given.test_minutes
        yield "Exit ticket of the last page, collected", frame.ticket

    def _line(self) -> str:
        return f"Evening {self.number} of {self.count}: {self.given.title}"

    def _blocks(self) -> Blocks:
        yield "Pages that are not there", [Row(label="page", text=one) for one in self.lacking]
        yield "By the clock", self.clock
        yield "A learner can", [Row(label=code, text=words) for code, words in self.codes]
        given = self.given
        for heading, lines in (
            ("Shown", given.shown),
            ("Cut", given.cut),
            ("Gaged", given.gaged),
            ("Lay out the day before", given.prepare),
        ):
            yield heading, [Row(label=str(n), text=line) for n, line in enumerate(lines, 1)]
        for heading, asked in (("Three from before", self.again), ("Asked", self.asked)):
            yield heading, _rows(asked)
        yield "Bets", [Row(label="before they look", text=", ".join(self.bets))] * bool(self.bets)
        yield "At home", [Row(label=t, text=f"{minutes} minutes") for t, minutes in self.home]
        yield "Missed", self.missed


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class EveningCourse(Shown):
    """The course in evenings.

    Parameters
    ----------
    form : {"eight", "four"}
        How many evenings it has.
    evenings : tuple of Evening
        In their order.
    left_out : tuple of str
        Titles of lessons that no evening takes.
    unserved : tuple of (str, str)
        Codes of the outline that no page of an evening serves, with their words.
    """

    form: str
    evenings: tuple[Evening, ...]
    left_out: tuple[str, ...]
    unserved: tuple[tuple[str, str], ...]

    def evening(self, number: int) -> Evening:
        """Return one evening, from 1.

        Raises
        ------
        SeatworkError
            If there is none of that number.
        """
        if isinstance(number, bool) or number not in range(1, len(self.evenings) + 1):
            fault = f"the form of {self.form} evenings has none of that number"
            raise SeatworkError(str(number)[:20], fault, f"say 1 to {len(self.evenings)}")
        return self.evenings[number - 1]

    def _line(self) -> str:
        minutes = self.evenings[0].frame.evening
        return f"{len(self.evenings)} evenings of {minutes} minutes"

    def _blocks(self) -> Blocks:
        yield "", [_overview(one) for one in self.evenings]
        yield "Left out", [Row(label="page", text=title) for title in self.left_out]
        yield "Not reached", [Row(label=code, text=words) for code, words in self.unserved]


def _places(asked: Sequence[Question]) -> str:
    """Name each sheet once, with the places of its questions."""
    found: dict[str, list[str]] = {}
    for sheet, place, _ in asked:
        found.setdefault(sheet, []).append(place)
    return "; ".join(f"{sheet} {', '.join(places)}" for sheet, places in found.items())


def _rows(asked: Sequence[Question]) -> list[Row]:
    return [Row(label=f"{sheet} {place}", text=goal) for sheet, place, goal in asked]


def _overview(one: Evening) -> Row:
    titles = "; ".join(f"{page.title}{part.words}" for page, part in one.pages)
    cells = (
        ("taught", titles),
        ("shown", " ".join(one.given.shown)),
        ("cut", " ".join(one.given.cut)),
        ("gaged", " ".join(one.given.gaged)),
        ("asked", _places(one.asked) or "bets alone"),
        ("at home", f"{sum(minutes for _, minutes in one.home)} min"),
    )
    return Row(label=f"{one.number} {one.given.title}", text=titles, cells=cells)
