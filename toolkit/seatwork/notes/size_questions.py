"""What a size that has found its place must still be asked about."""

import re

from seatwork.notes.callout import NoteError
from seatwork.notes.features import Counterdrill, Feature, Hole
from seatwork.notes.parsing import Phrase
from seatwork.notes.repeats import agree, shown, threads_of, true_size
from seatwork.notes.sizes import Size

SPREAD = 1.1  # limits of a diameter further apart than this are two sizes


def check_said_twice(text: str, kind: type[Feature], phrase: Phrase, again: Phrase) -> None:
    """Hold a size against the bracket that says it again.

    Raises
    ------
    NoteError
        Where the two do not agree.
    """
    if kind is Counterdrill:
        fault, remedy = "the bracket repeats no size I know", "write the number alone"
        raise NoteError(text, start=again.start, end=again.end, fault=fault, remedy=remedy)
    if agree(phrase, again):
        return
    name, decimal = (phrase, again) if again.quantity else (again, phrase)
    name, decimal = (decimal, name) if _is_plain_decimal(name) else (name, decimal)
    raise NoteError(
        text,
        start=again.start,
        end=again.end,
        fault=f"{shown(name)} is {true_size(name)}, not {shown(decimal)}: which holds?",
        remedy="write the one that does",
        options=(shown(name), shown(decimal)),
    )


def check_places_or_size(text: str, kind: type[Feature], sizes: list[tuple[Phrase, bool]]) -> None:
    """Ask about ``4 X 6.6 DRILL``: four places, or a depth."""
    first = sizes[0][0]
    if kind is not Hole or len(sizes) != 2 or not re.fullmatch(r"\d{1,2}", first.text):
        return
    if sizes[1][1] and first.kind == sizes[1][0].kind == "plain":
        raise NoteError(
            text,
            start=first.start,
            end=first.end,
            fault=f"{first.text} places, or {first.text} wide?",
            remedy=f"write {first.text}X for places, ⌀ before a diameter",
        )


def ask_about_tap(text: str, tap: Phrase | None, size: Phrase) -> None:
    """Ask for the threads per inch of ``TAP 1/4``."""
    if tap is None:
        return
    threads = threads_of(shown(size))
    raise NoteError(
        text,
        start=size.start,
        end=size.end,
        fault=f"{' or '.join(threads)}?" if threads else "which pitch?",
        remedy="write the thread whole, such as 1/4-20 UNC or M6",
        options=threads,
    )


def far_apart(size: Size) -> bool:
    """Tell whether limits are too far from each other to be those of one diameter."""
    return (
        size.least is not None
        and size.greatest is not None
        and (size.greatest > SPREAD * size.least)
    )


def _is_plain_decimal(phrase: Phrase) -> bool:
    quantity = phrase.quantity
    return quantity is not None and re.fullmatch(r"\d*\.\d+", quantity.number.text) is not None
