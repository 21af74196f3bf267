"""Which size belongs to which word of a note.

Sizes stand behind their word (``DRILL .281``, ``⌴ ⌀.438``) or before it (``17/32 DR``);
a run of sizes that no word has claimed yet waits in the lead.
"""

import re
from typing import Any

from seatwork.notes.callout import NoteError
from seatwork.notes.drafts import SEATS, Draft
from seatwork.notes.features import (
    LARGEST_COUNT,
    Chamfer,
    Counterbore,
    Counterdrill,
    Countersink,
    EdgeBreak,
    Feature,
    Hole,
    Spotface,
)
from seatwork.notes.hole_behind import (
    given_up,
    is_named_before,
    is_of_hole,
    stands_behind_of,
)
from seatwork.notes.marking import SIZES
from seatwork.notes.parsing import Phrase
from seatwork.notes.repeats import shown
from seatwork.notes.size_questions import (
    ask_about_tap,
    check_places_or_size,
    check_said_twice,
    far_apart,
)
from seatwork.notes.sizing import Sizer
from seatwork.notes.spelled import word_fields

NAMELESS = (Counterbore, Countersink, Spotface)  # no drill's name is their diameter

WORDS: dict[str, type[Feature]] = {
    "COUNTERBORE": Counterbore,
    "COUNTERSINK": Countersink,
    "SPOTFACE": Spotface,
    "COUNTERDRILL": Counterdrill,
    "CENTER_DRILL": Counterdrill,
    "CENTER": Counterdrill,
    "CHAMFER": Chamfer,
    "PROCESS": Hole,
}


class Gathering:
    """Gathers the sizes of one note into drafts of features.

    Parameters
    ----------
    text : str
        The note as typed, for errors and for the names of screws.
    sizer : Sizer
        Turns quantities into sizes.
    """

    def __init__(self, text: str, sizer: Sizer) -> None:
        self.text = text
        self.sizer = sizer
        self.drafts: list[Draft] = []
        self.current: Draft | None = None
        self.lead: list[tuple[Phrase, bool]] = []
        self.following: list[Phrase] = []
        self.line = 0
        self.by: Phrase | None = None
        self.tap: Phrase | None = None
        self.count: tuple[int, Phrase] | None = None
        self.waiting: dict[str, str] = {}
        self.parted = False
        self.separator = ""
        self.split: list[tuple[Draft, Draft, Phrase]] = []
        self.seat_of: Draft | None = None  # the seat whose hole is named behind it, by OF or ON

    def fault(self, phrase: Phrase, fault: str, remedy: str) -> NoteError:
        """Return the error for a phrase."""
        return NoteError(self.text, start=phrase.start, end=phrase.end, fault=fault, remedy=remedy)

    def say(self, draft: Draft, name: str, value: Any, phrase: Phrase) -> None:
        """Give a word to a feature, and ask where another was said before.

        Raises
        ------
        NoteError
            Where the two cannot both hold.
        """
        told = draft.stated.get(name)
        if told and told != value:
            both = name == "side" and {told, value} == {"near", "far"}
            raise self.fault(
                phrase,
                f"{str(told).upper()} was said before: which holds?",
                "write BOTH SIDES, or one of them" if both else "write one of them",
            )
        draft.stated[name] = value

    # -- sizes ---------------------------------------------------------------------------

    def _by(self, phrase: Phrase) -> None:
        if self.by is not None:
            raise self.fault(phrase, "two X in a row", "write the size between them")
        self.by = phrase

    def _size(self, phrase: Phrase) -> None:
        by, self.by = self.by is not None, None
        if not phrase.is_angle and not by:
            ask_about_tap(self.text, self.tap, phrase)
        if not self.lead and is_of_hole(self.text, self.current, phrase, self.following):
            self.seat_of = self.current
        elif self.current is not None and not self.lead and self._current_takes(phrase, by):
            return
        if by and not self.lead:
            raise self.fault(phrase, *self._refusal(phrase))
        self.lead.append((phrase, by))

    def _current_takes(self, phrase: Phrase, by: bool) -> bool:
        draft = self.current
        assert draft is not None
        if self.parted and not by and not self._reaches_back(draft, phrase):
            return False
        return self._take(draft, phrase, by)

    def _take(self, draft: Draft, phrase: Phrase, by: bool) -> bool:
        """Give a size to a feature, and hold what is said twice against each other."""
        size, also = self.sizer.size(phrase), None
        if phrase.also is not None:
            check_said_twice(self.text, draft.kind, phrase, phrase.also)
            also = self.sizer.size(phrase.also)
        if not draft.take(phrase, size, by=by, also=also):
            return False
        if draft.stated.get("through") and draft.stated.get("depth") is size:
            raise self.fault(phrase, "THRU and a depth: which holds?", "write one of them")
        if draft.kind in NAMELESS and size.name and draft.stated.get("diameter") is size:
            seat = draft.kind.__name__.lower()
            raise self.fault(
                phrase,
                f"{size.name} names a drill or a screw, no diameter of a {seat}",
                f"write FOR {size.name} FLAT HEAD or what the screw is, or the diameter",
            )
        if draft.stated.get("diameter") is size and far_apart(size):
            raise self.fault(
                phrase,
                "two limits of a diameter so far apart, or a size and a depth?",
                "write a depth as ↧ or DP, and limits as .380-.390",
            )
        return True

    def _reaches_back(self, draft: Draft, phrase: Phrase) -> bool:
        """Tell whether a size behind a comma or on a new line belongs to the word before."""
        if phrase.quantity is not None and phrase.quantity.is_angle:
            return not self._followed_by(("BY", *SIZES, "CHAMFER", "COUNTERSINK"))
        if phrase.kind == "depth":
            return not self._followed_by(("COUNTERBORE", "SPOTFACE"))
        same_line = draft.line == self.line
        return phrase.kind == "diameter" and same_line and draft.kind in SEATS

    def _followed_by(self, kinds: tuple[str, ...]) -> bool:
        return bool(self.following) and self.following[0].kind in kinds

    def _refusal(self, phrase: Phrase) -> tuple[str, str]:
        if self.current is None:
            return "X stands before it, and nothing before that", "write both sizes, or a count 4X"
        name = self.current.kind.__name__.lower()
        if self.current.kind is Countersink and phrase.kind == "plain":
            return "is this the depth of the countersink?", "write DP behind a depth, ° by an angle"
        return f"the {name} has no place left for it", "mark it ⌀, ↧ or °, or give it its word"

    # -- a seat's hole named behind it ----------------------------------------------------

    def _back_to_seat(self, hole: Draft) -> None:
        """Let what follows speak for the seat again, once the hole it is of has been named."""
        seat, self.seat_of = self.seat_of, None
        if seat is not None and hole.kind is Hole:
            self.current = seat

    def _is_named_before(self, sizes: list[tuple[Phrase, bool]]) -> bool:
        """Take ``CHAM ON .281 DIA`` for the place of the chamfer where .281 is said before."""
        if self.seat_of is None or len(sizes) != 1:
            return False
        phrase = sizes[0][0]
        if not is_named_before(self.text, self.drafts, phrase, self.sizer.size(phrase)):
            return False
        self.current, self.seat_of = self.seat_of, None
        return True

    def _gave_its_hole(self, word: Phrase) -> bool:
        """Hand the size in ``C'BORE 13/32 HOLE 5/8 DIA`` on to the hole."""
        seat = None if self.parted else self.current
        phrase = given_up(self.text, seat, word)
        if phrase is None:
            return False
        self.seat_of = seat
        hole = self._new(Hole, phrase)
        self._take(hole, phrase, by=False)
        self._back_to_seat(hole)
        return True

    # -- words ---------------------------------------------------------------------------

    def _word(self, phrase: Phrase) -> None:
        self._no_loose_x()
        kind = WORDS[phrase.kind]
        if kind is Spotface and phrase.text[0] != "⌴" and self._names_the_symbol():
            return
        sizes = self.lead
        if sizes and self._lead_is_a_hole(kind, phrase):
            self._close_lead()
            sizes = []
        self.lead = []
        draft = self._new(kind, phrase)
        draft.stated |= word_fields(phrase)
        for size, by in sizes:
            if not self._take(draft, size, by):
                raise self.fault(size, *self._refusal(size))
        if sizes:
            draft.start = sizes[0][0].start
            check_places_or_size(self.text, kind, sizes)
        self._back_to_seat(draft)

    def _names_the_symbol(self) -> bool:
        """Take SPOTFACE behind ``⌴ ⌀.875`` for the name of that symbol, as older prints do."""
        draft = self.current
        if draft is None or draft.kind is not Counterbore or self.parted:
            return False
        if self.lead or self._sizes_ahead():
            return False
        if (
            self.text[draft.start] not in "⌴⊔⎵⨆"
            or "head" in draft.stated
            or "bottom" in draft.stated
        ):
            return False
        draft.kind = Spotface
        return True

    def _lead_is_a_hole(self, kind: type[Feature], word: Phrase) -> bool:
        """Tell whether the sizes before a seat's word are the hole's and not the seat's."""
        if kind is Hole or all(p.quantity and p.quantity.is_angle for p, _ in self.lead):
            return False
        if word.text[0] in "⌴⌵":
            return True
        ahead = self._sizes_ahead()
        if not ahead and self._screw_ahead() and not self._says_of_seat(kind):
            first = self.lead[0][0]
            raise self.fault(
                first,
                "is this the hole or the seat?",
                f"write DRILL {shown(first)} for the hole, the seat's sizes behind its word",
            )
        own = [
            (size, by)
            for size, by in ahead
            if size.kind in ("plain", "diameter", "drill_name")
            and not (size.quantity and size.quantity.is_angle)
        ]
        return bool(own) and not (own[0][1] and kind is not Countersink and own[0] == ahead[0])

    def _says_of_seat(self, kind: type[Feature]) -> bool:
        """Tell whether sizes before ``CSK FOR #10 FHMS`` can only be the seat's: an angle is."""
        return kind is Countersink and any(size.is_angle for size, _ in self.lead)

    def _sizes_ahead(self) -> list[tuple[Phrase, bool]]:
        found, by = [], False
        for phrase in self.following:
            if phrase.kind in SIZES and stands_behind_of(self.text, phrase):
                break
            if phrase.kind in SIZES:
                found.append((phrase, by))
            elif phrase.kind != "BY":
                break
            by = phrase.kind == "BY"
        return found

    def _screw_ahead(self) -> bool:
        return bool(self.following) and self.following[0].kind == "SCREW"

    def _new(self, kind: type[Feature], phrase: Phrase) -> Draft:
        draft = Draft(kind, phrase.start, phrase.end, self.line)
        if self.count is not None and kind is not EdgeBreak:
            draft.count, self.count = self.count[0], None
        draft.stated |= {name: value for name, value in self.waiting.items() if draft.has(name)}
        self.waiting = {}
        draft.joined, self.separator = self.separator, ""
        self.drafts.append(draft)
        self.current, self.parted = draft, False
        return draft

    def _last(self, kinds: tuple[type[Feature], ...]) -> Draft | None:
        return next((d for d in reversed(self.drafts) if d.kind in kinds), None)

    def _checked_count(self, number: int, phrase: Phrase) -> int:
        if not 1 <= number <= LARGEST_COUNT:
            raise self.fault(phrase, "that is no number of places", f"write 1 to {LARGEST_COUNT}")
        return number

    def _close_lead(self) -> None:
        """Make a hole, or a bare chamfer or countersink, of sizes that have no word."""
        self._no_loose_x()
        if not self.lead:
            return
        sizes, self.lead = self.lead, []
        if self._is_named_before(sizes):
            return
        kind, above = self._kind_of_bare(sizes)
        draft = self._new(kind, sizes[0][0])
        draft.above, draft.bare = above, True
        for size, by in sizes:
            if not self._take(draft, size, by):
                raise self.fault(size, *self._refusal(size))
        self._back_to_seat(draft)

    def _kind_of_bare(self, sizes: list[tuple[Phrase, bool]]) -> tuple[type[Feature], bool]:
        """Return what sizes without a word are, and whether they stand above their hole."""
        first = sizes[0][0]
        angle = next((p for p, _ in sizes if p.quantity and p.quantity.is_angle), None)
        if first.kind == "c_chamfer":
            return Chamfer, False
        if angle is not None and len(sizes) > 1:
            return self._kind_by_angle(angle), True
        if first.kind in ("diameter", "drill_name"):
            self._ask_what_that_side_gets(first)
            return Hole, False
        if angle is None and len(sizes) == 2 and sizes[1][1] and first.kind == "plain":
            if self._stands_below():
                return Hole, False
            if self._hole_on_next_line():
                return Counterbore, True
        if angle is None and len(sizes) == 1 and self._stands_below() and first.kind == "plain":
            return Hole, False
        ask_about_tap(self.text, self.tap, first)
        if self.count is not None and re.search(r"\d\s+X", self.count[1].text):
            number = self.count[0]
            raise self.fault(
                self.count[1],
                f"{number} places, or {number} by {shown(first)}? and what is cut there?",
                f"write {number}X ⌀{shown(first)} and its depth for holes",
            )
        raise self.fault(
            first,
            "nothing says what this size is",
            "write ⌀ for a hole, or a word such as DRILL, CSK or C'BORE",
        )

    def _ask_what_that_side_gets(self, size: Phrase) -> None:
        """Ask about ``⌀.531 THRU, FAR SIDE ⌀1.12``: no second hole is drilled from there."""
        side = self.waiting.get("side", "")
        if side and any(draft.kind is Hole for draft in self.drafts):
            raise self.fault(
                size,
                f"on the {side} side{'s' * (side == 'both')}: another hole, or a seat there?",
                "write S.F. or C'BORE before it, or DRILL",
            )

    def _kind_by_angle(self, angle: Phrase) -> type[Feature]:
        degrees = self.sizer.size(angle).value or 0.0
        if "included" in angle.marks or degrees >= 60:
            return Countersink
        if degrees <= 45:
            return Chamfer
        raise self.fault(angle, "a chamfer or a countersink?", "write CHAM or CSK beside it")

    def _stands_below(self) -> bool:
        last = self.drafts[-1] if self.drafts else None
        return last is not None and last.above and last.line == self.line - 1

    def _hole_on_next_line(self) -> bool:
        return (
            bool(self.following)
            and self.following[0].kind == "NEWLINE"
            and any(phrase.kind in SIZES for phrase in self.following[1:3])
        )

    def _no_loose_x(self) -> None:
        if self.by is not None:
            raise self.fault(self.by, "X with no size behind it", "write the size, or leave out X")

    def _break(self, phrase: Phrase) -> None:
        if self.by is not None and phrase.kind == "NEWLINE":
            self.line += 1
            return
        self._close_lead_before(phrase)
        self.parted, self.separator = True, phrase.text.strip() or "new line"
        if phrase.kind == "NEWLINE":
            self.line += 1

    def _close_lead_before(self, phrase: Phrase) -> None:
        rest = self.following
        self.following = [phrase, *rest]
        self._close_lead()
        self.following = rest
