"""What the gaging bench says: the question, the verdict, and every number in both systems."""

from collections.abc import Callable

from seatwork.benches.bank.gaging_sums import BALL, BALLS, CALIPER, HEAD, SCREW, Gaged
from seatwork.drawings.views.gaging_view import GagedSeat, Scale
from seatwork.seats import Countersink, ball_top
from seatwork.units import show_angle, show_both, show_length

Show = Callable[[float, str], str]

QUESTION = "The caliper says it is in. Will you pass this seat?"
NAMES = {
    CALIPER: "Caliper",
    BALLS: "Two balls",
    BALL: "One ball",
    SCREW: "Screw and indicator",
    HEAD: "Head gage",
}
ABOUT = {
    CALIPER: "diameter at the face",
    BALLS: "included angle",
    BALL: "diameter at the face",
    SCREW: "head against the face",
    HEAD: "head above its gage",
}
VERDICTS = {
    "inside": "in",
    "outside": "out",
    "cannot be told": "too near a limit to tell",
}
SPREAD = {"length": 0.8, "angle": 5.0}
"""How far the scale runs beyond the limits, as a share of what lies between them [-]."""


def shown_part(one: Gaged, system: str, *, asked: bool) -> GagedSeat:
    """Put together what the picture shows; `asked` is the question at the start."""
    job, part = one.job, _drawn(one)
    heading = QUESTION if asked else f"{NAMES[one.way]}: {VERDICTS[one.decision.verdict]}"
    return GagedSeat(
        seat=part,
        usual=job.limits[0],
        scale=_scale(one, system),
        jaws=one.way == CALIPER,
        balls=_balls(one),
        head=job.screw.head if one.way in (SCREW, HEAD) else None,
        amount=one.value if one.way in (SCREW, HEAD) else 0.0,
        plate=one.way == HEAD,
        heights=_heights(one),
        reading=_reading(one, system),
        named=_named(one, system),
        heading=heading,
        second=_second(one, system),
        text=text_of(one, system, heading),
    )


def _drawn(one: Gaged) -> Countersink:
    """Return the seat, or the hole of the head gage as one."""
    if one.seat is not None:
        return one.seat
    gage = one.job.screw.facts["gage_diameter"].value
    hole = one.job.cut.hole_diameter
    return Countersink(diameter=gage, hole_diameter=hole, included_angle=one.job.angle)


def _balls(one: Gaged) -> tuple[float, ...]:
    return {BALLS: one.job.balls, BALL: (one.job.ball,)}.get(one.way, ())


def _heights(one: Gaged) -> tuple[float, ...]:
    """Return the heights between which the reading lies [mm]; a caliper reads none."""
    if one.way in (SCREW, HEAD):
        return 0.0, one.value
    tops = tuple(ball_top(ball, _drawn(one)) for ball in _balls(one))
    return (0.0, *tops) if one.way == BALL else tops


def _reading(one: Gaged, system: str) -> str:
    return show_length(one.reading, system)


def _named(one: Gaged, system: str) -> str:
    """Name what is in the seat."""
    if one.way in (BALLS, BALL):
        sizes = " and ".join(show_length(ball, system) for ball in _balls(one))
        return f"balls of {sizes}" if one.way == BALLS else f"ball of {sizes}"
    if one.way == HEAD:
        gage = one.job.screw.facts["gage_diameter"].value
        return f"{one.job.screw.name} in a gage of {show_length(gage, system)}"
    return one.job.screw.name if one.way == SCREW else "inside jaws of the caliper, burr off"


def amount(one: Gaged, value: float, system: str, show: Show = show_length) -> str:
    """Write a value of what was found: an angle, a length, or where a head stands."""
    if one.kind == "angle":
        return show_angle(value)
    if one.way == SCREW:
        return stands(value, show(abs(value), system))
    return show(value, system)


def stands(height: float, shown: str) -> str:
    """Say where a head stands, its amount as shown."""
    if not any(digit in shown for digit in "123456789"):
        return "flush"
    return f"{shown} {'proud' if height > 0 else 'below'}"


def _scale(one: Gaged, system: str) -> Scale:
    reach = SPREAD[one.kind] * (one.greatest - one.least)
    doubt = one.decision.uncertainty
    shown = show_angle(doubt) if one.kind == "angle" else show_length(doubt, system)
    least, greatest = (amount(one, value, system) for value in (one.least, one.greatest))
    return Scale(
        value=one.value,
        doubt=doubt,
        least=one.least,
        greatest=one.greatest,
        low=one.least - reach,
        high=one.greatest + reach,
        labels=(least, greatest),
        caption=f"{amount(one, one.value, system)}, give or take {shown}",
    )


def _second(one: Gaged, system: str) -> str:
    """Say what was asked for."""
    least, greatest = (amount(one, value, system) for value in (one.least, one.greatest))
    return f"{ABOUT[one.way].capitalize()}: asked {least} to {greatest}"


def text_of(one: Gaged, system: str, heading: str) -> str:
    """Tell everything in words, lengths in both systems."""
    job = one.job
    value, least, greatest = (
        amount(one, size, system, show_both) for size in (one.value, one.least, one.greatest)
    )
    reads = f"The reading is {show_both(one.reading, system)}"
    if one.way == BALLS:
        reads += ", from the smaller ball's top to the larger one's"
    doubt = one.decision.uncertainty
    sure = show_angle(doubt) if one.kind == "angle" else show_both(doubt, system)
    return (
        f"{heading} {job.screw.name}, seat {show_angle(job.angle)}. {NAMES[one.way]}: "
        f"{reads}. {ABOUT[one.way].capitalize()} {value}, give or take {sure}; "
        f"asked {least} to {greatest}: "
        f"{VERDICTS[one.decision.verdict]}."
    )
