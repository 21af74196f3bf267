"""A seat whose hole is named behind it: ``CHAM OF 1.500 BORE``, ``C'BORE 13/32 HOLE 5/8 DIA``."""

from collections.abc import Sequence

from seatwork.notes.callout import NoteError
from seatwork.notes.drafts import Draft
from seatwork.notes.features import Chamfer, Counterbore, Countersink, Hole, Spotface
from seatwork.notes.marking import SIZES
from seatwork.notes.parsing import Phrase
from seatwork.notes.settling import OF
from seatwork.notes.sizes import Size

OWNERS = (Counterbore, Countersink, Spotface)


def stands_behind_of(text: str, phrase: Phrase) -> bool:
    """Tell whether OF, ON, IN or AT stands right before a size."""
    return OF.search(text[: phrase.start].upper()) is not None


def is_of_hole(text: str, seat: Draft | None, phrase: Phrase, following: Sequence[Phrase]) -> bool:
    """Tell whether a size behind OF, ON or IN is that of the seat's hole.

    It is where a hole's word stands behind it, or the seat has what the size could be.
    """
    if seat is None or phrase.is_angle or seat.kind not in (*OWNERS, Chamfer):
        return False
    if not stands_behind_of(text, phrase):
        return False
    word = next((one for one in following if one.kind not in (*SIZES, "BY")), None)
    if word is not None and (word.kind in ("HOLE", "PROCESS") or "HOLE" in word.text):
        return True
    full = {"diameter", "leg", "screw"} & set(seat.stated)
    return bool(full) and phrase.kind in ("diameter", "drill_name")


def is_named_before(text: str, drafts: Sequence[Draft], phrase: Phrase, size: Size) -> bool:
    """Tell whether ``ON .312 DIA`` names a hole that is said before, and no other one.

    Raises
    ------
    NoteError
        Where it is a counterbore's: the chamfer of its mouth is wanted by its diameter.
    """
    named = next((one for one in drafts if one.stated.get("diameter") == size), None)
    if named is not None and named.kind is not Hole:
        raise NoteError(
            text,
            start=phrase.start,
            end=phrase.end,
            fault="a chamfer at the mouth of the counterbore or spotface: how wide at the face?",
            remedy="write it by its diameter, such as CHAM ⌀.50 X 90°",
        )
    return named is not None


def names_it_again(text: str, last: Draft | None, word: Phrase) -> bool:
    """Tell whether HOLE in ``OF .750 REAMED HOLE`` is the hole the word before it has made."""
    if last is None or last.kind is not Hole:
        return False
    return not text[last.end : word.start].strip()


def given_up(text: str, seat: Draft | None, word: Phrase) -> Phrase | None:
    """Take the size in ``C'BORE 13/32 HOLE 5/8 DIA`` off the seat: HOLE stands behind it."""
    if seat is None or seat.kind not in OWNERS or "angle" in seat.stated:
        return None
    phrase = seat.phrases.get("diameter")
    if phrase is None or text[phrase.end : word.start].strip():
        return None
    del seat.stated["diameter"], seat.phrases["diameter"]
    return phrase
