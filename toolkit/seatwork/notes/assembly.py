"""From a row of phrases to features: every kind of phrase has its way in.

Where sizes go is settled in ``gathering.py``; here are counts, threads, and what hangs on a
feature: sides, screws, heads, flanges.
"""

import re
from collections.abc import Callable
from contextlib import suppress

from seatwork.errors import SeatworkError
from seatwork.notes.callout import NoteError
from seatwork.notes.drafts import SEATS, Draft, copy_of, thread_fields
from seatwork.notes.fastening import head_question
from seatwork.notes.features import (
    LARGEST_COUNT,
    Counterbore,
    Counterdrill,
    Countersink,
    EdgeBreak,
    Feature,
    Hole,
    Spotface,
    Thread,
)
from seatwork.notes.gathering import WORDS, Gathering
from seatwork.notes.marking import BREAKS, SIZES
from seatwork.notes.parsing import Number, Phrase, Quantity
from seatwork.notes.settling import settle
from seatwork.notes.sizing import Sizer
from seatwork.notes.spelled import (
    HEADS,
    center_fields,
    face_of,
    head_of,
    side_of,
    split_counts,
    tap_fields,
)
from seatwork.notes.tally import features_of

NUMBERS = {"ONE": 1, "TWO": 2, "THREE": 3, "FOUR": 4, "FIVE": 5, "SIX": 6, "SEVEN": 7, "EIGHT": 8}
NUMBERS |= {"NINE": 9, "TEN": 10, "ELEVEN": 11, "TWELVE": 12}


AHEAD = 40  # phrases looked at ahead of a word; no feature has as many


class Assembler(Gathering):
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
            "BOTTOM": self._bottom,
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
            return features_of(self.drafts, self.trailing)
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
            self.drafts[-1].said |= self.waiting
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
        for draft in same_line:
            if draft.count is None and draft.kind is not EdgeBreak:
                draft.count = number
        if not same_line:
            self.trailing.append((len(self.drafts), number, phrase))

    def _checked_count(self, number: int, phrase: Phrase) -> int:
        if not 1 <= number <= LARGEST_COUNT:
            raise self.fault(phrase, "that is no number of places", f"write 1 to {LARGEST_COUNT}")
        return number

    # -- holes and threads ---------------------------------------------------------------

    def _hole(self, phrase: Phrase) -> None:
        self._no_loose_x()
        if not self.lead:
            if self.current is None or self.current.kind is not Hole or self.parted:
                self._new(Hole, phrase)
            return
        sizes, self.lead = self.lead, []
        draft = self._new(Hole, sizes[0][0])
        for size, by in sizes:
            if not self._take(draft, size, by):
                raise self.fault(size, *self._refusal(size))
        self._check_places_or_size(Hole, sizes)

    def _through(self, phrase: Phrase) -> None:
        if self.lead and self.lead[0][0].kind == "plain" and len(self.lead) == 1:
            self._hole(phrase)
        else:
            self._close_lead()
        draft = self.current
        if draft is None or not draft.has("through"):
            draft = next((d for d in reversed(self.drafts) if d.has("through")), None)
        if draft is None or draft.said.get("depth") is not None:
            raise self.fault(phrase, "no hole stands before it", "write the hole, such as ⌀.201")
        draft.said["through"] = True

    def _tap(self, phrase: Phrase) -> None:
        behind = self.current is not None and self.current.kind is Thread and not self.lead
        if self.current is not None and behind and not self._followed_by(("thread",)):
            self.current.said |= tap_fields(phrase.text)
            return
        if len(self.lead) == 1 and self.lead[0][0].kind in ("plain", "drill_name"):
            self.tap = phrase
            self._ask_about_tap(self.lead[0][0])
        self._close_lead()
        self.tap = phrase

    def _thread(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._new(Thread, phrase)
        draft.said |= thread_fields(phrase.text)
        if self.tap is not None:
            draft.said |= tap_fields(self.tap.text)
        self.tap = None

    def _last(self, kinds: tuple[type[Feature], ...]) -> Draft | None:
        return next((d for d in reversed(self.drafts) if d.kind in kinds), None)

    def _thread_class(self, phrase: Phrase) -> None:
        draft = self._last((Thread,))
        if draft is None or self.lead:
            raise self.fault(phrase, "no thread stands before it", "write the thread, such as M8")
        draft.said["thread_class"] = phrase.text.lstrip("- ")

    def _left_hand(self, phrase: Phrase) -> None:
        draft = self._last((Thread,))
        if draft is None:
            raise self.fault(phrase, "no thread stands before it", "write the thread, such as M8")
        draft.said["left_hand"] = True

    def _depth_to(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._last((Hole,))
        if draft is None or "depth" not in draft.said:
            raise self.fault(phrase, "no depth of a hole stands before it", "write it, as .75 DP")
        draft.said["depth_to"] = "point" if phrase.kind == "TO_POINT" else "full diameter"

    def _bottom(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._last((Hole, Counterbore))
        if draft is None or "depth" not in draft.said:
            raise self.fault(
                phrase, "a letter with no depth before it", "write U, V or W behind a depth"
            )
        draft.said["bottom"] = phrase.text

    def _pitch(self, phrase: Phrase) -> None:
        """Take the pitch behind ``M8 X``, in millimeters on any print."""
        self.by = None
        assert self.current is not None
        assert phrase.quantity is not None
        self.current.said["pitch"] = float(phrase.quantity.number.text.replace(",", "."))
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
        draft.said["depth"] = thread
        draft.end = phrase.end
        below = Draft(Hole, phrase.start, phrase.end, self.line, {"depth": hole}, draft.count)
        self.drafts.append(below)

    def _as_depth(self, phrase: Phrase, text: str) -> Phrase:
        number = Number(text, "", phrase.start, phrase.end)
        return Phrase("depth", phrase.start, phrase.end, text, Quantity(number))

    # -- what hangs on a feature -----------------------------------------------------------

    def _modifier(self, phrase: Phrase) -> None:
        name, value = (
            "scope",
            "typical" if phrase.kind == "TYPICAL" else "unless otherwise specified",
        )
        if phrase.kind == "SIDE":
            name, value = "side", side_of(phrase.text)
        self._hang(name, value)

    def _hang(self, name: str, value: str) -> None:
        """Give a side, a scope or a face to the feature before it, else to the next one."""
        if self.lead and self.lead[0][0].kind == "diameter":
            self._close_lead()
        target = self.current or (self.drafts[-1] if self.drafts else None)
        if self.lead or target is None or (name == "side" and self._leads_next()):
            self.waiting[name] = value
        else:
            target.said[name] = value

    def _leads_next(self) -> bool:
        """Tell whether a side word at the head of a clause speaks for the next feature."""
        return self.parted and any(self._followed_by((kind,)) for kind in WORDS)

    def _screw(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self.current or (self.drafts[-1] if self.drafts else None)
        if draft is None:
            raise self.fault(
                phrase, "nothing stands before FOR", "write CSK, C'BORE or DRILL first"
            )
        question = head_question(phrase.text, draft.kind)
        if question:
            raise self.fault(phrase, *question)
        draft.said["screw"] = phrase.text

    def _clean_up(self, phrase: Phrase) -> None:
        self._close_lead()
        if self.current is None or self.current.kind is not Spotface:
            raise self.fault(phrase, "only a spotface is cut to clean up", "write S.F. before it")
        self.current.said["clean_up"] = True

    def _under(self, phrase: Phrase) -> None:
        """Take what is left under a flat floor, or the radius of its corner."""
        self._close_lead()
        draft = self._last((Spotface, Counterbore))
        if draft is None or self.by is not None:
            raise self.fault(
                phrase,
                "only a counterbore or a spotface leaves a thickness or a corner",
                "write C'BORE or S.F. before it",
            )
        if phrase.kind in draft.said:
            raise self.fault(phrase, "it was said before", "write it once")
        draft.said[phrase.kind] = self.sizer.size(phrase)
        draft.end = max(draft.end, phrase.end)

    def _wrench_room(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._last((Spotface, Counterbore))
        if draft is None:
            raise self.fault(phrase, "room for the wrench in what?", "write C'BORE before it")
        draft.said["wrench_room"] = True

    def _head(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._last((Countersink, Counterbore))
        if draft is None:
            raise self.fault(phrase, "no seat stands before it", "write CSK or C'BORE first")
        if "head" in draft.said:
            raise self.fault(phrase, "the head's place was said before", "write it once")
        draft.said["head"] = head_of(HEADS[phrase.kind], phrase, self.sizer)

    # -- faces ---------------------------------------------------------------------------

    def _back(self, phrase: Phrase) -> None:
        """Take BACK SPOTFACE for a spotface on the far side."""
        self._close_lead()
        self.parted = True
        self.waiting["side"] = "far"

    def _from(self, phrase: Phrase) -> None:
        """Take the face a cut starts from; ask where it may be the height of a floor."""
        name, value = face_of(phrase.text)
        if self.lead and self.lead[-1][0].kind != "plain":
            self._close_lead()
        if self.lead or self._depth_is_bare():
            self._depth_from(phrase, value)
        self._hang(name, value)

    def _depth_is_bare(self) -> bool:
        draft = self.current
        return draft is not None and draft.by_depth == "X" and not self.parted

    def _depth_from(self, phrase: Phrase, value: str) -> None:
        if value == "bottom":
            size = self.lead[-1][0] if self.lead else phrase
            raise self.fault(
                size,
                "from the bottom: is it the depth, or the height of the floor above the bottom?",
                "write a depth with DP, a height as FLOOR THK",
            )
        if len(self.lead) == 1 and self.lead[0][0].kind == "plain" and self.current is not None:
            size, by = self.lead.pop()
            size.kind = "depth"
            if not self._take(self.current, size, by):
                raise self.fault(size, *self._refusal(size))

    def _split_sides(self, phrase: Phrase) -> None:
        """Take ``2 NS & 2 FS``: some of the seats on one face, the rest on the other."""
        self._close_lead()
        draft = self.current
        if draft is None or draft.kind not in SEATS or "side" in draft.said:
            raise self.fault(phrase, "no seat stands before it", "write the seat first")
        first, second = (self._checked_count(int(n), phrase) for n in split_counts(phrase.text))
        sides = ("near", "far") if "N" in phrase.text.split("F")[0] else ("far", "near")
        other = copy_of(draft)
        draft.count, other.count = first, second
        draft.said["side"], other.said["side"] = sides
        self.drafts.append(other)
        self.current = other

    def _iso_center(self, phrase: Phrase) -> None:
        """Take a center of ISO 6411: form, pilot, diameter at the mouth [mm]."""
        self._close_lead()
        self._new(Counterdrill, phrase).said |= center_fields(phrase.text)

    def _edges(self, phrase: Phrase) -> None:
        sizes, self.lead = self.lead, []
        breaks = not re.match(r"DE|REMOVE", phrase.text)
        last = self.drafts[-1] if self.drafts else None
        if last is not None and last.kind is EdgeBreak and last.line == self.line:
            last.said["edges" if breaks else "burrs"] = True
            self.current, self.parted = last, False
            return
        draft = self._new(EdgeBreak, phrase)
        draft.said |= {"edges": breaks, "burrs": not breaks}
        for size, by in sizes:
            if not self._take(draft, size, by):
                raise self.fault(size, *self._refusal(size))


def _counted(text: str) -> int:
    digits = re.search(r"\d+", text)
    if digits:
        return int(digits[0])
    word = re.search(r"[A-Z]+", text)
    return NUMBERS.get(word[0], 0) if word else 0
