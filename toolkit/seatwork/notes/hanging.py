"""What hangs on a feature of a note: side, face, screw, head, what is left under it.

A word of these kinds speaks for the feature before it, or for the one it leads.
"""

from seatwork.notes.drafts import SEATS, copy_of
from seatwork.notes.fastening import head_question
from seatwork.notes.features import Counterbore, Countersink, Spotface
from seatwork.notes.gathering import WORDS, Gathering
from seatwork.notes.parsing import Phrase
from seatwork.notes.spelled import HEADS, face_of, head_of, side_of, split_counts


class Hanging(Gathering):
    """Hangs words on the features of one note."""

    def _modifier(self, phrase: Phrase) -> None:
        name, value = (
            "scope",
            "typical" if phrase.kind == "TYPICAL" else "unless otherwise specified",
        )
        if phrase.kind == "SIDE":
            name, value = "side", side_of(phrase.text)
        self._hang(name, value, phrase)

    def _hang(self, name: str, value: str, phrase: Phrase) -> None:
        """Give a side, a scope or a face to the feature before it, else to the next one."""
        if self.lead and self.lead[0][0].kind == "diameter":
            self._close_lead()
        target = self.current or (self.drafts[-1] if self.drafts else None)
        if self.lead or target is None or (name == "side" and self._leads_next()):
            self.waiting[name] = value
        else:
            self.say(target, name, value, phrase)

    def _leads_next(self) -> bool:
        """Tell whether a side word at the head of a clause speaks for the next feature."""
        return self.parted and self._followed_by((*WORDS, "diameter", "drill_name"))

    def _screw(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self.current or (self.drafts[-1] if self.drafts else None)
        if draft is None:
            raise self.fault(
                phrase,
                "no seat stands before the screw",
                "write C'BORE FOR, CSK FOR or DRILL FOR before it",
            )
        question = head_question(phrase.text, draft.kind)
        if question:
            raise self.fault(phrase, *question)
        self.say(draft, "screw", phrase.text, phrase)

    def _clean_up(self, phrase: Phrase) -> None:
        self._close_lead()
        if self.current is None or self.current.kind is not Spotface:
            raise self.fault(phrase, "only a spotface is cut to clean up", "write S.F. before it")
        self.current.stated["clean_up"] = True

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
        if phrase.kind in draft.stated:
            raise self.fault(phrase, "it was said before", "write it once")
        draft.stated[phrase.kind] = self.sizer.size(phrase)
        draft.end = max(draft.end, phrase.end)

    def _wrench_room(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._last((Spotface, Counterbore))
        if draft is None:
            raise self.fault(phrase, "room for the wrench in what?", "write C'BORE before it")
        draft.stated["wrench_room"] = True

    def _head(self, phrase: Phrase) -> None:
        self._close_lead()
        draft = self._last((Countersink, Counterbore))
        if draft is None:
            raise self.fault(phrase, "no seat stands before it", "write CSK or C'BORE first")
        if "head" in draft.stated:
            raise self.fault(phrase, "the head's place was said before", "write it once")
        draft.stated["head"] = head_of(HEADS[phrase.kind], phrase, self.sizer)

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
        self._hang(name, value, phrase)

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
        if draft is None or draft.kind not in SEATS or "side" in draft.stated:
            raise self.fault(phrase, "no seat stands before it", "write the seat first")
        first, second = (self._checked_count(int(n), phrase) for n in split_counts(phrase.text))
        sides = ("near", "far") if "N" in phrase.text.split("F")[0] else ("far", "near")
        other = copy_of(draft)
        draft.count, other.count = first, second
        draft.stated["side"], other.stated["side"] = sides
        self.drafts.append(other)
        self.split.append((draft, other, phrase))
        self.current = other
