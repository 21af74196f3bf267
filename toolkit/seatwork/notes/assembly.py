"""From a row of phrases to features: every kind of phrase has its way in.

Where sizes go is settled in ``gathering.py``; here are counts, threads, and what hangs on a
feature: sides, screws, heads, flanges.
"""

import re
from collections.abc import Callable
from contextlib import suppress

from seatwork.errors import SeatworkError
from seatwork.notes.callout import NoteError
from seatwork.notes.drafts import Draft, thread_fields
from seatwork.notes.features import (
    Counterbore,
    Counterdrill,
    EdgeBreak,
    Feature,
    Hole,
    Thread,
)
from seatwork.notes.gathering import WORDS
from seatwork.notes.hanging import Hanging
from seatwork.notes.hole_behind import names_it_again
from seatwork.notes.marking import BREAKS, SIZES
from seatwork.notes.parsing import Number, Phrase, Quantity
from seatwork.notes.settling import settle
from seatwork.notes.size_questions import ask_about_tap, check_places_or_size
from seatwork.notes.sizing import Sizer
from seatwork.notes.spelled import (
    HEADS,
    center_fields,
    tap_fields,
)
from seatwork.notes.split_sides import check_split
from seatwork.notes.tally import features_of

NUMBERS = {"ONE": 1, "TWO": 2, "THREE": 3, "FOUR": 4, "FIVE": 5, "SIX": 6, "SEVEN": 7, "EIGHT": 8}
NUMBERS |= {"NINE": 9, "TEN": 10, "ELEVEN": 11, "TWELVE": 12}


AHEAD = 40  # phrases looked at ahead of a word; no feature has as many


class Assembler(Hanging):
    """Builds the features of one note.

    Parameters
    ----------
    text : str
        The note as typed, for errors and for the names of screws.
    sizer : Sizer
        Turns quantities into sizes.
    """

    def __init__(self, text: str, sizer: Sizer) -> None:
        super().__init__(text, sizer)
        self.trailing: list[tuple[int, int, Phrase]] = []
        self.ways: dict[str, Callable[[Phrase], None]] = {
            **dict.fromkeys(SIZES, self._size),
            **dict.fromkeys(WORDS, self._word),
            **dict.fromkeys(BREAKS, self._break),
            **dict.fromkeys(("SIDE", "TYPICAL", "UNLESS"), self._modifier),
            **dict.fromkeys(("FULL_DIAMETER", "TO_POINT"), self._depth_to),
            **dict.fromkeys(HEADS, self._head),
            **dict.fromkeys(("left", "fillet"), self._under),
            "pitch": self._pitch,
            "depth_pair": self._depth_pair,
            "BY": self._by,
            "COUNT": self._leading_count,
            "TRAILING_COUNT": self._trailing_count,
            "HOLE": self._hole,
            "THROUGH": self._through,
            "TAP": self._tap,
            "thread": self._thread,
            "THREAD_CLASS": self._thread_class,
            "LEFT_HAND": self._left_hand,
            "SCREW": self._screw,
            **dict.fromkeys(("BOTTOM", "FLAT_BOTTOM"), self._bottom),
            "CLEAN_UP": self._clean_up,
            "WRENCH_ROOM": self._wrench_room,
            "BACK": self._back,
            "FROM": self._from,
            "SPLIT_SIDES": self._split_sides,
            "ISO_CENTER": self._iso_center,
            "edges": self._edges,
        }

    def run(self, phrases: list[Phrase]) -> tuple[Feature, ...]:
        """Return the features of the note.

        Raises
        ------
        NoteError
            At the phrase that cannot be placed, with what was understood before it.
        """
        try:
            for index, phrase in enumerate(phrases):
                self.following = phrases[index + 1 : index + 1 + AHEAD]
                self.ways[phrase.kind](phrase)
            self._end()
            settle(self.text, self.drafts)
            found = features_of(self.drafts, self.trailing)
            for before, number, phrase in self.trailing:
                self._check_count(self.drafts[before - 1], number, phrase)
            check_split(self.text, self.drafts, self.split)
            return found
        except NoteError as error:
            error.understood = self._understood(error.start)
            raise

    def _understood(self, place: int) -> tuple[Feature, ...]:
        """Return what was settled before a place in the note."""
        if self.lead and self.lead[-1][0].end <= place:
            self.by = None
            with suppress(NoteError):
                self._close_lead()
        settled = [draft for draft in self.drafts if draft.end <= place]
        try:
            return features_of(settled, [])
        except SeatworkError:
            return ()

    def _end(self) -> None:
        self.following = []
        self._close_lead()
        if self.tap is not None:
            raise self.fault(self.tap, "it names no thread", "write the thread, such as 1/4-20 UNC")
        if self.count is not None:
            raise self.fault(self.count[1], "places of what?", "write the hole or seat behind it")
        if self.waiting and self.drafts:
            self.drafts[-1].stated |= self.waiting
        if not self.drafts:
            raise NoteError(
                self.text,
                start=0,
                end=len(self.text),
                fault="the note asks for nothing",
                remedy="write a hole or a seat, such as ⌀.201 THRU ⌵ ⌀.385 X 82°",
            )

    # -- counts --------------------------------------------------------------------------

    def _leading_count(self, phrase: Phrase) -> None:
        self._close_lead()
        if self.count is not None:
            raise self.fault(phrase, "a second count", "write one count before each feature")
        self.count = self._checked_count(int(re.sub(r"\D", "", phrase.text)), phrase), phrase
        self.parted = True

    def _trailing_count(self, phrase: Phrase) -> None:
        number = self._checked_count(_counted(phrase.text), phrase)
        if self.lead and "HOLE" in phrase.text:
            self._hole(phrase)
        else:
            self._close_lead()
        if not self.drafts:
            self.count = number, phrase
            return
        same_line = [draft for draft in self.drafts if draft.line == self.line]
        open_ones = [d for d in same_line if d.count is None and d.kind is not EdgeBreak]
        for draft in open_ones:
            draft.count = number
        if not same_line:
            self.trailing.append((len(self.drafts), number, phrase))
        elif not open_ones and self._leads_next() and self.count is None:
            self.count = number, phrase
        elif not open_ones:
            self._check_count(same_line[-1], number, phrase)

    def _check_count(self, draft: Draft, number: int, phrase: Phrase) -> None:
        """Ask where a second count of places is another number."""
        if draft.count not in (None, number):
            raise self.fault(
                phrase,
                f"{draft.count} places were said before: which count holds?",
                "write one of them, before or behind what is cut there",
            )

    # -- holes and threads ---------------------------------------------------------------

    def _hole(self, phrase: Phrase) -> None:
        self._no_loose_x()
        if not self.lead:
            last = self.drafts[-1] if self.drafts and not self.parted else None
            if self._gave_its_hole(phrase) or names_it_again(self.text, last, phrase):
                return
            if self.current is None or self.current.kind is not Hole or self.parted:
                self._new(Hole, phrase)
            return
        sizes, self.lead = self.lead, []
        draft = self._new(Hole, sizes[0][0])
        for size, by in sizes:
            if not self._take(draft, size, by):
                raise self.fault(size, *self._refusal(size))
        check_places_or_size(self.text, Hole, sizes)
        self._back_to_seat(draft)

    def _through(self, phrase: Phrase) -> None:
        if self.lead and self.lead[0][0].kind == "plain" and len(self.lead) == 1:
            self._check_one_hole(self.lead[0][0])
            self._hole(phrase)
        else:
            self._close_lead()
        draft = self.current
        if draft is None or not draft.has("through"):
            draft = next((d for d in reversed(self.drafts) if d.has("through")), None)
        if draft is None or draft.stated.get("depth") is not None:
            raise self.fault(phrase, "no hole stands before it", "write the hole, such as ⌀.201")
        draft.stated["through"] = True

    def _check_one_hole(self, size: Phrase) -> None:
        """Ask about ``DRILL A .234/.236 THRU``: two sizes of one hole, nothing between them."""
        hole = self.current
        if hole is None or hole.kind is not Hole or self.parted or "diameter" not in hole.stated:
            return
        raise self.fault(
            size,
            "a second size of the hole before it, or another hole?",
            "write the drill in brackets behind the size, or a comma and DRILL before another hole",
        )

    def _tap(self, phrase: Phrase) -> None:
        behind = self.current is not None and self.current.kind is Thread and not self.lead
        if self.current is not None and behind and not self._followed_by(("thread",)):
            self.current.stated |= tap_fields(phrase.text)
            return
        if len(self.lead) == 1 and self.lead[0][0].kind in ("plain", "drill_name"):
            self.tap = phrase
            ask_about_tap(self.text, self.tap, self.lead[0][0])
        self._close_lead()
        self.tap = phrase

    def _thread(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._new(Thread, phrase)
        draft.stated |= thread_fields(phrase.text)
        if self.tap is not None:
            draft.stated |= tap_fields(self.tap.text)
        self.tap = None

    def _thread_class(self, phrase: Phrase) -> None:
        draft = self._last((Thread,))
        if draft is None or self.lead:
            raise self.fault(phrase, "no thread stands before it", "write the thread, such as M8")
        self.say(draft, "thread_class", phrase.text.lstrip("- "), phrase)

    def _left_hand(self, phrase: Phrase) -> None:
        draft = self._last((Thread,))
        if draft is None:
            raise self.fault(phrase, "no thread stands before it", "write the thread, such as M8")
        draft.stated["left_hand"] = True

    def _depth_to(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._last((Hole,))
        if draft is None or "depth" not in draft.stated:
            raise self.fault(phrase, "no depth of a hole stands before it", "write it, as .75 DP")
        draft.stated["depth_to"] = "point" if phrase.kind == "TO_POINT" else "full diameter"

    def _bottom(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._last((Hole, Counterbore))
        if draft is None or "depth" not in draft.stated:
            raise self.fault(
                phrase, "a letter with no depth before it", "write U, V or W behind a depth"
            )
        letter = "U" if phrase.kind == "FLAT_BOTTOM" else phrase.text
        self.say(draft, "bottom", letter, phrase)

    def _pitch(self, phrase: Phrase) -> None:
        """Take the pitch behind ``M8 X``, in millimeters on any print."""
        self.by = None
        assert self.current is not None
        assert phrase.quantity is not None
        self.current.stated["pitch"] = float(phrase.quantity.number.text.replace(",", "."))
        self.current.end = phrase.end

    def _depth_pair(self, phrase: Phrase) -> None:
        """Take ``25/30`` behind a metric thread: its depth and its hole's, ISO 15786."""
        self.by = None
        draft = self.current
        assert draft is not None
        assert phrase.quantity is not None
        thread, hole = (
            self.sizer.size(self._as_depth(phrase, text))
            for text in phrase.quantity.number.text.split("/")
        )
        if not (thread.value or 0.0) <= (hole.value or 0.0):
            raise self.fault(
                phrase, "the thread is deeper than its hole", "write thread depth / hole depth"
            )
        draft.stated["depth"] = thread
        draft.end = phrase.end
        below = Draft(Hole, phrase.start, phrase.end, self.line, {"depth": hole}, draft.count)
        self.drafts.append(below)

    def _as_depth(self, phrase: Phrase, text: str) -> Phrase:
        number = Number(text, "", phrase.start, phrase.end)
        return Phrase("depth", phrase.start, phrase.end, text, Quantity(number))

    def _iso_center(self, phrase: Phrase) -> None:
        """Take a center of ISO 6411: form, pilot, diameter at the mouth [mm]."""
        self._close_lead()
        named = self.current is not None and not self.parted and self.current.kind is Counterdrill
        draft = self.current if named else self._new(Counterdrill, phrase)
        assert draft is not None
        draft.stated |= center_fields(phrase.text)
        draft.end = phrase.end

    def _edges(self, phrase: Phrase) -> None:
        sizes, self.lead = self.lead, []
        breaks = not re.match(r"DE|REMOVE", phrase.text)
        last = self.drafts[-1] if self.drafts else None
        if last is not None and last.kind is EdgeBreak and last.line == self.line:
            last.stated["edges" if breaks else "burrs"] = True
            self.current, self.parted = last, False
            return
        draft = self._new(EdgeBreak, phrase)
        draft.stated |= {"edges": breaks, "burrs": not breaks}
        for size, by in sizes:
            if not self._take(draft, size, by):
                raise self.fault(size, *self._refusal(size))


def _counted(text: str) -> int:
    digits = re.search(r"\d+", text)
    if digits:
        return int(digits[0])
    word = re.search(r"[A-Z]+", text)
    return NUMBERS.get(word[0], 0) if word else 0
