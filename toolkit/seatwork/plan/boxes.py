"""What one seat does for every screw of its size, and what cannot be said of the least head."""

from collections.abc import Iterator

from seatwork.hardware import Screw
from seatwork.plan.countersinks import SizedCountersink
from seatwork.plan.records import Check
from seatwork.plan.sentences import Show
from seatwork.plan.standing import Stand
from seatwork.quantities import Length

NAME = "every head of this size"
FLUSHNESS = " The least head is reckoned with the flushness F of {standard}, from memory: check."


def check_box(sized: SizedCountersink, screw: Screw, show: Show) -> Iterator[Check]:
    """Look at what the seat does for every head of the size.

    Parameters
    ----------
    sized : SizedCountersink
        The seat, with where the head may stand.
    screw : Screw
        The screw.
    show : callable
        Writes sizes for people.

    Notes
    -----
    Where no gage height and no flushness of the standard is held here, the least head is not
    known, and nothing is said of it but to try the screws.
    """
    if not screw.knows_least:
        yield _unknown(screw)
    elif sized.stand is not None and sized.stand.stated:
        yield _in_window(sized.stand, screw, show)
    elif sized.box is not None:
        memory = FLUSHNESS.format(standard=screw.standard) if screw.flushness is not None else ""
        yield Check(
            name=NAME,
            verdict="holds" if sized.box.exists else "look",
            sentence=sized.box.explain(show) + memory,
        )


def _unknown(screw: Screw) -> Check:
    return Check(
        name=NAME,
        verdict="look",
        sentence=f"{screw.standard} as held here gives the greatest head only; the least head is "
        "not known: try the screws you will use.",
    )


def _in_window(stand: Stand, screw: Screw, show: Show) -> Check:
    """Hold the spread of the heads against the window of the note."""
    spread, window = _spread(screw), stand.highest - stand.lowest
    text = f"Heads of this size differ in height by up to {show(Length(spread))}; the note allows "
    text += f"{show(Length(window))}"
    memory = FLUSHNESS.format(standard=screw.standard) if screw.flushness is not None else ""
    if spread <= window:
        return Check(name=NAME, verdict="holds", sentence=f"{text}.{memory}")
    lowest = stand.aim - spread
    return Check(
        name=NAME,
        verdict="look",
        sentence=f"{text}: no one seat fits them all. With the greatest head where it is aimed at,"
        f" the least lies {show(Length(-lowest))} below: sort the screws, or try each.{memory}",
    )


def _spread(screw: Screw) -> float:
    if screw.gage is not None:
        return screw.gage.greatest - screw.gage.least
    return screw.flushness or 0.0
