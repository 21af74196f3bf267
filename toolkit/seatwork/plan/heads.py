"""How the screw's heads sit in the planned seat: angle, edge, contact, every head of the size."""

from collections.abc import Iterator
from dataclasses import replace

from seatwork.hardware import Screw
from seatwork.plan.boxes import check_box
from seatwork.plan.countersinks import SizedCountersink
from seatwork.plan.records import Check, Given
from seatwork.plan.sentences import Show
from seatwork.plan.standing import BELOW, PROUD
from seatwork.quantities import Angle, Length
from seatwork.seats import fit
from seatwork.seats.heads import state_of
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
        *_check_ends(sized, screw, show),
        *_check_steepest(sized, screw, rules, show),
        alone,
        *check_box(sized, screw, show),
    )


def _check_angle(sized: SizedCountersink, screw: Screw, show: Show) -> Check:
    angles = screw.angle_range
    head = screw.head.included_angle
    text = f"{show(Angle(angles[0]))} to {show(Angle(angles[1]))}" if angles else show(Angle(head))
    seat = show(Angle(sized.seat.included_angle))
    return Check(
        name="angle against the screw",
        verdict="holds",
        sentence=f"The seat is {seat} included, the head {text}.",
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
    highest = stand.top(rules)
    level = sits.state == "flush" and stand.lowest <= 0 <= highest
    inside = level or stand.lowest - SLIGHT <= sits.amount <= highest + SLIGHT
    stands = _stands(sits.amount, sits.state, show)
    rule = "house rule " + (PROUD if sits.amount > 0 else BELOW)
    against = "the flushness in the note" if stand.stated else rule
    other = ": which governs?" if stand.stated else ". Is it meant?"
    question = f"In this seat the greatest head is {stands}, against {against}{other}"
    return Check(
        name="greatest head",
        verdict="holds" if inside else "stop",
        sentence=f"The greatest head is {stands}. It touches on the {sits.contact}.",
        question="" if inside else question,
    )


def _check_ends(sized: SizedCountersink, screw: Screw, show: Show) -> Iterator[Check]:
    """Look at the head in the seat's own limits, where the note gives both it and flushness."""
    across, stand = sized.sizes[1], sized.stand
    if stand is None or not stand.stated or across.smallest == across.largest:
        return
    ends = [fit(screw.head, replace(sized.seat, diameter=one)).amount for one in _ends(across)]
    if stand.lowest - SLIGHT <= ends[1] and ends[0] <= stand.highest + SLIGHT:
        return
    least, most = (_stands(one, state_of(one), show) for one in ends)
    yield Check(
        name="seat against flushness",
        verdict="look",
        sentence=f"In the limits of the seat the greatest head is {least} to {most}; the note "
        f"allows {_stands(stand.highest, state_of(stand.highest), show)} to "
        f"{_stands(stand.lowest, state_of(stand.lowest), show)}: keep to the narrower.",
    )


def _ends(across: Given) -> tuple[float, float]:
    return across.smallest, across.largest


def _check_steepest(
    sized: SizedCountersink, screw: Screw, rules: HouseRules, show: Show
) -> Iterator[Check]:
    head = screw.steepest_head
    if head.included_angle == screw.head.included_angle:
        return
    sits, stand = fit(head, sized.seat), sized.stand
    stated = stand is not None and stand.stated
    highest = rules.number(PROUD) if stand is None else stand.top(rules)
    if sits.amount <= highest + SLIGHT or (sits.state == "flush" and not stated):
        return
    yield Check(
        name="steepest head",
        verdict="look",
        sentence=f"A head of {show(Angle(head.included_angle))}, the least of its range, would be "
        f"{_stands(sits.amount, sits.state, show)}, carried on the {sits.contact}"
        f"{', outside what the note allows' if stated else ''}: try the job's own screw before the "
        "part.",
    )


def _stands(amount: float, state: str, show: Show) -> str:
    return state if state == "flush" else f"{show(Length(abs(amount)))} {state}"
