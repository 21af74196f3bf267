"""What a note leaves open: what was assumed for it, and what must be asked."""

from collections.abc import Iterator, Sequence

from seatwork import notes
from seatwork.hardware import Screw
from seatwork.hardware.rivets import is_rivet
from seatwork.plan.counterbores import INCH_LIST
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Assumed
from seatwork.plan.standing import BELOW

BARE_ANGLE = "note.bare_angle"
METRIC_DEPTH = "counterbore.metric_depth"


def assumptions_of(callout: notes.Callout, screws: Sequence[Screw | None]) -> tuple[Assumed, ...]:
    """Return what was assumed, each once; what the screw itself settles is left out.

    Parameters
    ----------
    callout : Callout
        The note as read.
    screws : sequence of Screw or None
        The screw of each feature of the note.
    """
    open_ones = (
        Assumed(sentence=one.sentence, rule=one.rule)
        for one in callout.assumptions
        if not _settled(one, callout.features[one.feature], screws[one.feature])
    )
    read = (sentence for screw in screws if screw for sentence in screw.assumptions)
    of_screws = (Assumed(sentence=sentence) for sentence in read)
    return tuple(dict.fromkeys([*open_ones, *of_screws]))


def questions_of(
    callout: notes.Callout, screws: Sequence[Screw | None], seats: Sequence[SeatPlan]
) -> tuple[str, ...]:
    """Return what to ask before cutting, each once: of the note, and of the plan's checks."""
    asked = (check.question for seat in seats for check in seat.checks if check.question)
    return tuple(dict.fromkeys([*_of_note(callout, screws), *asked]))


def _of_note(callout: notes.Callout, screws: Sequence[Screw | None]) -> Iterator[str]:
    for warning in callout.warnings:
        at = warning.feature
        screw = screws[at] if at is not None and at < len(screws) else None
        knows_angle = screw is not None and screw.seat_angle is not None
        if not (warning.code in ("angle-missing", "size-missing") and knows_angle):
            yield warning.sentence


def _settled(one: notes.Assumption, feature: notes.Feature, screw: Screw | None) -> bool:
    """Tell whether the screw or the rivet itself gives what the note left open."""
    if screw is None:
        rivet = feature.screw is not None and is_rivet(feature.screw)
        return rivet and one.rule == BELOW
    left_open = one.field == "angle" and one.rule != BARE_ANGLE
    angle = left_open and isinstance(feature, notes.Countersink)
    # what a hexagon's counterbore is wide for is the wrench, and neither list of socket heads
    listed = one.rule == INCH_LIST or (one.rule == METRIC_DEPTH and one.field == "diameter")
    return (angle and screw.seat_angle is not None) or (listed and screw.across_flats is not None)
