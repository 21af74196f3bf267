"""Seats shared out to the two faces, ``2 NS & 2 FS``, held against the count of holes."""

from collections.abc import Sequence

from seatwork.notes.callout import NoteError
from seatwork.notes.drafts import Draft
from seatwork.notes.features import Hole, Thread
from seatwork.notes.parsing import Phrase


def check_split(
    text: str, drafts: Sequence[Draft], split: Sequence[tuple[Draft, Draft, Phrase]]
) -> None:
    """Hold the seats on each face against the holes there are.

    Parameters
    ----------
    text : str
        The note as typed, for errors.
    drafts : sequence of Draft
        All features of the note, their counts settled.
    split : sequence of (Draft, Draft, Phrase)
        The seats of the one face, those of the other, and the words that shared them out.

    Raises
    ------
    NoteError
        If the count of holes is not said, or the seats fit it neither one to a hole nor one on
        each face of every hole.
    """
    for first, second, phrase in split:
        counts = (first.count or 0, second.count or 0)
        hole = _hole_of(first, drafts)
        if hole is None or hole.count in _fitting(counts):
            continue
        raise _question(text, phrase, counts, hole.count)


def _hole_of(seat: Draft, drafts: Sequence[Draft]) -> Draft | None:
    """Return the hole that a seat was written behind, else the one written after it."""
    holes = [one for one in drafts if one.kind in (Hole, Thread)]
    before = [one for one in holes if one.start <= seat.start]
    return before[-1] if before else next(iter(holes), None)


def _fitting(counts: tuple[int, int]) -> set[int]:
    """Return the holes that such seats can be on: one each, or both faces of every hole."""
    return {sum(counts), *(counts if counts[0] == counts[1] else ())}


def _question(text: str, phrase: Phrase, counts: tuple[int, int], holes: int | None) -> NoteError:
    ways = tuple(f"{one} HOLES" for one in sorted(_fitting(counts), reverse=True))
    shared = f"{counts[0]} seats on one side and {counts[1]} on the other"
    if holes is None:
        fault = f"{shared}, on how many holes?"
    else:
        fault = f"{shared} do not fit {holes} hole{'' if holes == 1 else 's'}: which holds?"
    return NoteError(
        text,
        start=phrase.start,
        end=phrase.end,
        fault=fault,
        remedy=f"write {' or '.join(ways)}",
        options=ways,
    )
