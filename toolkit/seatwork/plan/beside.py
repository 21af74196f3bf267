"""What a note says beside the cut: finishes, other notes of the print, grades of another system."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import fields, replace

from seatwork import notes
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Check
from seatwork.seats import Countersink
from seatwork.seats.plating import HOLE_LOSS, cone_loss
from seatwork.units import show_number

REFERRED = re.compile(r"\(?\s*(?:SEE|PER|REFER\s+TO)\s+(.+?)\s*\)?$", re.IGNORECASE)
UNMEASURED = ("heat treatment", "finish")
NARROW = 0.0508  # mm; .002 in, twice what a thin plating takes off (common practice, no source)


def with_beside(callout: notes.Callout, seats: Sequence[SeatPlan]) -> tuple[SeatPlan, ...]:
    """Return the seats with what the note says beside their cut.

    Parameters
    ----------
    callout : Callout
        The note as read.
    seats : sequence of SeatPlan
        Its seats. A finish bears on each; what the whole note says stands with the first.
    """
    of_note = (*_referred(callout), *_grades(callout))
    return tuple(
        replace(seat, checks=(*seat.checks, *_finish(callout.sizes_hold, seat), *whole))
        for seat, whole in zip(seats, (of_note, *[()] * len(seats)), strict=False)
    )


def _finish(hold: str, seat: SeatPlan) -> Iterator[Check]:
    """Say what the finish does to the sizes cut, and ask how thick it is."""
    if not hold:
        return
    when, _, what = hold.partition(" ")
    if what in UNMEASURED:
        sentence = f"The sizes hold {hold}: what does it change, and what is left for it? Ask."
        question = f"The sizes hold {hold}: what is to be left for it?" if when == "after" else ""
    else:
        lost = _lost(seat, what)
        if when == "after":
            sentence = f"{lost} Cut so much larger, depths as they are."
            question = f"The sizes hold after {what}: how thick is it on a side?{_last_cut(seat)}"
        else:
            sentence = f"{lost} The sizes here are those to cut: gage before it, try the screw "
            sentence += "after it."
            question = ""
    asked = when == "after" and _narrow(seat)
    verdict = "stop" if asked else "look"
    yield Check(name=f"sizes {hold}", verdict=verdict, sentence=sentence, question=question)


def _narrow(seat: SeatPlan) -> bool:
    """Tell whether limits of the hole or the seat are so near that a finish may use them up."""
    return any(
        size.least is not None
        and size.greatest is not None
        and size.kind == "length"
        and size.greatest - size.least <= NARROW
        for size in seat.sizes
    )


def _last_cut(seat: SeatPlan) -> str:
    """Ask whether it is the last cut, and not the sizes, that comes after the finish."""
    done = {step.name for step in seat.operations}
    last = next((cut for cut in ("tap", "ream") if cut in done), "")
    return f" Or is the hole {last}{'ped' if last == 'tap' else 'ed'} after it?" if last else ""


def _lost(seat: SeatPlan, what: str) -> str:
    cone = seat.shape if isinstance(seat.shape, Countersink) else None
    off = f", a countersink {show_number(cone_loss(cone.included_angle), 2)} p" if cone else ""
    return (
        f"With {what} p thick on a side a hole or a counterbore loses "
        f"{show_number(HOLE_LOSS, 0)} p in diameter{off}."
    )


def _referred(callout: notes.Callout) -> Iterator[Check]:
    """Name each other note or view of the print that this one sends the reader to."""
    for text in callout.said_not_used:
        found = REFERRED.match(text)
        if found:
            place = " ".join(found[1].split()).lower()
            place = re.sub(r"\b[a-z]$", lambda letter: letter[0].upper(), place)
            yield Check(
                name=place,
                verdict="look",
                sentence=f"Read {place} of the print before cutting: it is not in this note and "
                "may change it.",
            )


def _grades(callout: notes.Callout) -> Iterator[Check]:
    """Remark on an ISO grade behind a size in inches."""
    graded = {
        size.fit
        for feature in callout.features
        for size in (getattr(feature, one.name) for one in fields(feature))
        if isinstance(size, notes.Size) and size.fit and size.unit == "in"
    }
    for grade in sorted(graded):
        yield Check(
            name=f"grade {grade}",
            verdict="look",
            sentence=f"{grade} is an ISO grade, in micrometers by ranges in millimeters, and the "
            "size is in inches: the limits are those of the size in millimeters. Is it meant?",
        )
