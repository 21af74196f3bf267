"""Heads that no table here holds: what seat each wants, and what to measure on the screw.

What seat such a head takes is common practice, no source; which head a document is for, from
memory.
"""

import re
from collections.abc import Iterable
from typing import Literal

from seatwork.errors import SeatworkError

Seat = Literal["flat", "bore", "cone", "none"]

HEADS: dict[str, tuple[Seat, tuple[str, ...]]] = {
    "button": ("flat", ("button", "bhcs", "btn", "bhscs", "fbhcs")),
    "pan": ("flat", ("pan", "phms")),
    "round": ("flat", ("round", "rd", "rhms", "dome", "domed", "mushroom")),
    "truss": ("flat", ("truss",)),
    "binding": ("flat", ("binding", "bind")),
    "flange": ("flat", ("flange", "flanged", "flg")),
    "square": ("flat", ("square", "sq")),
    "thumb": ("flat", ("thumb", "wing")),
    "lag": ("flat", ("lag",)),
    "carriage": ("flat", ("carriage",)),
    "cheese": ("bore", ("cheese",)),
    "fillister": ("bore", ("fillister", "fil", "fill")),
    "low cap": ("bore", ("low", "lhcs", "lhscs")),
    "shoulder": ("bore", ("shoulder",)),
    "oval": ("cone", ("oval", "oval-head", "ohms", "fohms", "raised")),
    "undercut": ("cone", ("undercut",)),
    "wood screw": ("cone", ("wood",)),
    "sheet-metal screw": ("cone", ("sheet", "tapping")),
    "set": ("none", ("set",)),
    "eye": ("none", ("eye",)),
    "rivet": ("none", ("rivet",)),
}
"""Each head: the seat it wants, and the words it is named with."""

WORDS = {word: head for head, (_, words) in HEADS.items() for word in words}
DOCUMENTS = {
    **dict.fromkeys(("iso 7380",), "button"),
    **dict.fromkeys(("iso 7045", "iso 1580", "iso 14583", "din 7985", "din 85"), "pan"),
    **dict.fromkeys(("iso 1207", "din 84"), "cheese"),
    **dict.fromkeys(("din 7984", "din 6912"), "low cap"),
    **dict.fromkeys(("iso 7379",), "shoulder"),
    **dict.fromkeys(("iso 4162", "iso 15071", "din 6921"), "flange"),
    **dict.fromkeys(("din 603",), "carriage"),
    **dict.fromkeys(("iso 4026", "iso 4027", "iso 4028", "iso 4029"), "set"),
    **dict.fromkeys(("din 913", "din 914", "din 915", "din 916"), "set"),
}
"""Documents whose heads no table here holds, from memory."""

WANTS: dict[Seat, tuple[str, str]] = {
    "flat": (
        "flat underneath, they sit on the face, on a spotface where it is rough, or in a "
        "counterbore",
        "measure the head across and its height, and make that cut about 1/32 in (0.8 mm) wider",
    ),
    "bore": (
        "flat underneath, they sit in a counterbore",
        "measure the head across and its height, and make the counterbore about 1/32 in (0.8 mm) "
        "wider",
    ),
    "cone": (
        "they sit on their cone, in a countersink of the same angle",
        "measure the head's angle and the diameter where its cone ends, and write both",
    ),
    "none": ("", ""),
}
"""What seat a head wants, and what to measure."""

BESIDE = {
    "flange": "the spotface must clear the flange, and a wrench socket what is above it",
    "square": "measure it across the corners; a wrench must fit round it",
    "wood screw": "flat ones; others sit on the face",
    "sheet-metal screw": "flat ones; others sit on the face",
    "shoulder": "its shoulder wants a reamed hole of its own",
    "carriage": "its square neck wants a square hole, which nothing here cuts",
    "oval": "from memory that of the flat head of their size; the crown stands above the face",
    "undercut": "its cone is cut short below, so that it sits in thinner plate",
}
"""What else holds for a head."""

HEADLESS = {
    "set": (
        "a set screw has no head and wants no seat",
        "for one with a hexagon head write hex head",
    ),
    "eye": ("an eye bolt seats on its collar", "measure the collar, and write the spotface wider"),
    "rivet": (
        "a rivet has no thread and a list of its own",
        "name it by its shank, as 1/8 flush rivet or MS20426AD4",
    ),
}


def seat_of(name: str) -> Seat | None:
    """Return the seat that an unlisted head wants, or None where its name is none of these.

    Parameters
    ----------
    name : str
        A screw's name.

    Examples
    --------
    >>> seat_of("M8 BHCS"), seat_of("1/4 OVAL HD"), seat_of("M8 SHCS")
    ('flat', 'cone', None)
    """
    plain = name.lower()
    documents = (head for text, head in DOCUMENTS.items() if text in re.sub(r" +", " ", plain))
    head = next(documents, None) or head_of(plain.replace(".", "").split())
    return HEADS[head][0] if head else None


def head_of(words: Iterable[str]) -> str | None:
    """Return the unlisted head that some words name, or None.

    Parameters
    ----------
    words : iterable of str
        In lower case, without full stops. What says the shape of a head goes before what says
        what the screw is driven into.

    Examples
    --------
    >>> head_of(["m8", "button", "head"]), head_of(["sheet", "metal", "pan"]), head_of(["shcs"])
    ('button', 'pan', None)
    """
    named = [WORDS[word] for word in words if word in WORDS]
    return min(named, key=lambda head: head.endswith(" screw"), default=None)


def refuse(name: str, head: str) -> SeatworkError:
    """Return what to say of a head that no table holds: its seat, and what to measure.

    Parameters
    ----------
    name : str
        The screw as it was named.
    head : str
        A key of `HEADS`.

    Examples
    --------
    >>> refuse("M8 button head", "button").remedy
    'measure the head across and its height, and make that cut about 1/32 in (0.8 mm) wider'
    """
    if head in HEADLESS:
        return SeatworkError(name, *HEADLESS[head])
    wants, measure = WANTS[HEADS[head][0]]
    beside = f" ({BESIDE[head]})" if head in BESIDE else ""
    return SeatworkError(name, f"no table here holds {head} heads: {wants}{beside}", measure)
