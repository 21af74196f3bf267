"""How the screw's heads sit in the planned seat: angle, edge, contact, every head of the size."""

from collections.abc import Iterator

from seatwork.errors import Angle, Length
from seatwork.hardware import Screw
from seatwork.plan.countersinks import SizedCountersink
from seatwork.plan.records import Check
from seatwork.plan.standing import BELOW, PROUD
from seatwork.plan.wording import Show
from seatwork.seats import fit
from seatwork.seats.box_of_screws import SeatRange
from seatwork.shop import HouseRules

ALIKE = 0.08  # mm; a seat this near the head's edge was taken from the wrong column
SLIGHT = 1e-6  # mm; what a sum may be off by in its last digits
APART = 0.13  # mm; edge and theoretical sharp are told apart from here on


def check_head(
    sized: SizedCountersink, screw: Screw, rules: HouseRules, show: Show
) -> tuple[Check, ...]:
    """Look at how the screw's heads sit: angle, edge, contact, steep heads, the whole box.

    Parameters
    ----------
    sized : SizedCountersink
        The seat.
    screw : Screw
        The screw.
    rules : HouseRules
        The rules in force.
    show : callable
        Writes sizes for people.
    """
    alone = Check(
        name="flush is not enough",
        verdict="look",
        sentence="A wrong angle can look flush. Check the angle; look for the contact with blue.",
    )
    return (
        _check_angle(sized, screw, show),
        *_check_edge(sized, screw, show),
        _check_greatest(sized, screw, rules, show),
        *_check_steepest(sized, screw, rules, show),
        alone,
        *_check_box(sized.box, show),
    )


def _check_angle(sized: SizedCountersink, screw: Screw, show: Show) -> Check:
    angles = screw.angle_range
    head = screw.head.included_angle
    told = f"{show(Angle(angles[0]))} to {show(Angle(angles[1]))}" if angles else show(Angle(head))
    seat = show(Angle(sized.seat.included_angle))
    return Check(
        name="angle against the screw",
        verdict="holds",
        sentence=f"The seat is {seat} included, the head {told}.",
    )


def _check_edge(sized: SizedCountersink, screw: Screw, show: Show) -> Iterator[Check]:
    """Ask where a note gives the head's edge as the diameter of the seat."""
    edge, sharp = screw.edge_diameter, screw.sharp_diameter
    if edge is None or sharp is None or not sharp - edge > APART:
        return
    if not abs(sized.seat.diameter - edge) <= ALIKE:
        return
    lifted = fit(screw.head, sized.seat).amount
    yield Check(
        name="edge diameter",
        verdict="stop",
        sentence=f"{show(Length(edge))} is the edge of the {screw.name}; its theoretical sharp "
        f"diameter is {show(Length(sharp))}. In this seat it stands {show(Length(lifted))} proud.",
        question=f"The note gives the seat the edge diameter of the head, {show(Length(edge))}: "
        f"is the theoretical sharp diameter, {show(Length(sharp))}, meant?",
    )


def _check_greatest(sized: SizedCountersink, screw: Screw, rules: HouseRules, show: Show) -> Check:
    sits, stand = fit(screw.head, sized.seat), sized.stand
    assert stand is not None
    highest = stand.highest if stand.said else rules.number(PROUD)
    level = sits.state == "flush" and stand.lowest <= 0 <= highest
    inside = level or stand.lowest - SLIGHT <= sits.amount <= highest + SLIGHT
    stands = _stands(sits.amount, sits.state, show)
    rule = "house rule " + (PROUD if sits.amount > 0 else BELOW)
    against = "the flushness in the note" if stand.said else rule
    question = f"In this seat the greatest head is {stands}, against {against}. Is it meant?"
    return Check(
        name="greatest head",
        verdict="holds" if inside else "stop",
        sentence=f"The greatest head is {stands}. It touches on the {sits.contact}.",
        question="" if inside else question,
    )


def _check_steepest(
    sized: SizedCountersink, screw: Screw, rules: HouseRules, show: Show
) -> Iterator[Check]:
    head = screw.steepest_head
    if head.included_angle == screw.head.included_angle:
        return
    sits = fit(head, sized.seat)
    if sits.amount <= rules.number("flush.greatest_proud") or sits.state != "proud":
        return
    yield Check(
        name="steepest head",
        verdict="look",
        sentence=f"A head of {show(Angle(head.included_angle))}, the least of its range, would be "
        f"{_stands(sits.amount, sits.state, show)}, carried on the {sits.contact}: try the job's "
        "own screw before the part.",
    )


def _check_box(box: SeatRange | None, show: Show) -> Iterator[Check]:
    if box is not None:
        verdict = "holds" if box.exists else "look"
        name = "every head of this size"
        yield Check(name=name, verdict=verdict, sentence=box.explain(show))


def _stands(amount: float, state: str, show: Show) -> str:
    return state if state == "flush" else f"{show(Length(abs(amount)))} {state}"
