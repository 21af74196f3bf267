"""The screws and rivets that a note names: which they are, and what seat they can take."""

import re
from functools import lru_cache

from seatwork import hardware
from seatwork.errors import SeatworkError
from seatwork.hardware import other_heads
from seatwork.hardware.rivets import is_rivet
from seatwork.notes.apart import FOR
from seatwork.notes.characters import plain
from seatwork.notes.features import Counterbore, Countersink, Feature
from seatwork.notes.parsing import Phrase

KEPT = 256  # names remembered


def with_screws(text: str, phrases: list[Phrase]) -> list[Phrase]:
    """Return the phrases, each screw with its name as typed."""
    for phrase in phrases:
        if phrase.kind == "SCREW":
            phrase.text = screw_name(text[phrase.start : phrase.end])
    return phrases


def screw_name(text: str) -> str:
    """Return the name in ``FOR 1/4 FHMS`` as typed, with single blanks."""
    intro = FOR.match(plain(text))
    return " ".join(text[intro.end() if intro else 0 :].split())


def head_question(name: str, kind: type[Feature]) -> tuple[str, str] | None:
    """Return what to ask and what would do, where a seat cannot take a head.

    Parameters
    ----------
    name : str
        The screw as the note names it.
    kind : type of Feature
        What it is named for.
    """
    cone = has_cone(name)
    if kind is Countersink and cone is False:
        return (
            "its head has no cone: is a counterbore meant, or a flat head, or only the edge of a "
            "floor broken for the fillet?",
            "write C'BORE, name the flat head, or give the break its diameter and angle",
        )
    if kind is Counterbore and cone:
        return (
            "its head is a cone: is a countersink meant, or another screw?",
            "write CSK, or name the screw that sits in the counterbore",
        )
    return None


@lru_cache(maxsize=KEPT)
def has_cone(name: str) -> bool | None:
    """Tell whether a fastener's head is a cone; None where the lists do not know it."""
    if is_rivet(name):
        return True
    try:
        return hardware.screw(name).seat_angle is not None
    except SeatworkError:
        seat = other_heads.seat_of(name)
        return None if seat is None else seat == "cone"


@lru_cache(maxsize=KEPT)
def doubt_about(name: str, *, is_seat: bool) -> str:
    """Return the question about a name that the lists do not know; empty where they do.

    Only a countersink or a counterbore, a seat for the head itself, asks which head it is.
    """
    try:
        hardware.rivet(name) if is_rivet(name) else hardware.screw(name)
    except SeatworkError as error:
        if error.options and not is_seat:
            return ""
        return f"{error.fault}; {error.remedy}"
    return ""


def is_metric(name: str) -> bool:
    """Tell whether a fastener's name has a metric size."""
    return re.search(r"(?<![A-Z])M ?\d", plain(name)) is not None and not is_rivet(name)
