"""What the words of a note mean that are spelled in many ways: sides, faces, taps, heads."""

import re
from typing import Any

from seatwork.notes.features import FLOOR, Head
from seatwork.notes.parsing import Phrase
from seatwork.notes.sizes import Size
from seatwork.notes.sizing import Sizer

HEADS = {
    "head": "flush",
    "flush_within": "flush",
    "flush_or_below": "flush or below",
    "flush_to_below": "flush to below",
    "flush_to_proud": "flush to proud",
    "below": "below",
    "proud": "proud",
}
"""Phrases about the head, and the place each says."""

PROCESS = {"DR": "drill", "RE": "ream", "BO": "bore", "PU": "punch", "TA": "tap drill"}
NEAR, FAR = r"\b(?:NEAR|N[./]?S)|THIS", r"\b(?:FAR|F[./]?S)|BACK"


def side_of(text: str) -> str:
    """Return the side that a spelling says.

    Examples
    --------
    >>> side_of("N.S. & F.S."), side_of("FARSIDE"), side_of("EACH END"), side_of("OPP SIDE")
    ('both', 'far', 'both', 'other')
    """
    near, far = re.search(NEAR, text), re.search(FAR, text)
    if near and far:
        return "both"
    if near or far:
        return "near" if near else "far"
    return "other" if re.search(r"\bO(?:THER|PP)", text) else "both"


def face_of(text: str) -> tuple[str, str]:
    """Return the field and the value of words that name the face a cut starts from.

    Examples
    --------
    >>> face_of("FROM THE BOTTOM"), face_of("TOP PLATE"), face_of("FROM FAR SIDE")
    (('measured_from', 'bottom'), ('measured_from', 'top plate'), ('side', 'far'))
    """
    words = re.sub(r"^(?:FROM|IN|ON|AT)\s+(?:THE\s+)?", "", " ".join(text.split()))
    if re.search(r"FLOOR|BORE", words):
        return "measured_from", FLOOR
    if re.match(r"NEAR|FAR|[NF][./]?S\b|BACK|OTHER|OPP", words):
        return "side", side_of(words)
    words = re.sub(r"^UNDERSIDE OF .*", "UNDERSIDE", words)
    words = re.sub(r"^(TOP|BOTTOM)\s+(?:FACE|SIDE|SURFACE)$", r"\1", words)
    return "measured_from", {"UNDERSIDE": "bottom"}.get(words, words.lower())


def split_counts(text: str) -> tuple[str, str]:
    """Return the two counts of ``2 NS & 2 FS``."""
    first, second = re.findall(r"\d+", text)
    return first, second


def tap_fields(text: str) -> dict[str, str]:
    """Return the kind of tap that BOTTOM TAP, PLUG TAP or TAPER TAP says."""
    found = re.match(r"BOTTOM|PLUG|TAPER", text)
    kinds = {"BOTTOM": "bottoming", "PLUG": "plug", "TAPER": "taper"}
    return {"tap": kinds[found[0]]} if found else {}


def center_fields(text: str) -> dict[str, Any]:
    """Return the fields of a center as ISO 6411 names it: ``ISO 6411-A4/8.5``.

    Notes
    -----
    Form, diameter of the pilot hole, diameter at the mouth, both mm (from memory).
    """
    found = re.search(r"([ABR])\s*(\d[\d.,]*)\s*[/X]\s*(\d+(?:[.,]\d+)?)", text)
    assert found is not None
    pilot, mouth = (
        Size(value=float(number.replace(",", ".")), unit="mm") for number in found.groups()[1:]
    )
    return {"meaning": "center drill", "form": found[1], "pilot": pilot, "diameter": mouth}


def head_of(state: str, phrase: Phrase, sizer: Sizer) -> Head:
    """Return where a phrase wants the head; ``.010 MAX BELOW`` is from flush to .010 below."""
    amount = sizer.size(phrase) if phrase.quantity else None
    if amount is not None and amount.bound == "max" and state in ("below", "proud"):
        state = f"flush to {state}"
    if amount is not None and state == "flush or below":
        state = "flush to below"
    return Head(state=state, amount=amount)


def word_fields(phrase: Phrase) -> dict[str, str]:
    """Return what the word itself says: how a hole is made, what C'DRILL may mean."""
    if phrase.kind == "PROCESS":
        return {"process": PROCESS[phrase.text[:2]]}
    if phrase.kind in ("CENTER_DRILL", "CENTER"):
        return {"meaning": "center drill"}
    if phrase.kind == "COUNTERDRILL":
        return {"meaning": "counterdrill" if phrase.text.startswith("COUNTER") else "ask"}
    return {}
