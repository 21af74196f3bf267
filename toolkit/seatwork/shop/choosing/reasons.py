"""What speaks for a cutter and what against it, each with its weight.

The weights only order the answers; they are a judgement of the trade, common
practice, no source, and no number of them is shown.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from seatwork.cutting.chatter.parts import NOTE
from seatwork.seats import Counterbore, Countersink
from seatwork.shop.choosing.situation import Situation
from seatwork.shop.lists.cutters import CONES
from seatwork.units import show_both

SMALL_COUNTERBORE = 8.0
LIGHT_SEAT = 3.0
OUTLOOK = "outlook"


@dataclass(frozen=True, slots=True, kw_only=True)
class Reason:
    """One thing that speaks for a cutter, or against it.

    Parameters
    ----------
    about : str
        Such as outlook (of chatter, by the model), chatter, chip room, rake, burrs, pilot, finish.
    sentence : str
        What to say.
    weight : float
        Above zero for it, below zero against it [-].
    """

    about: str
    sentence: str
    weight: float


def _reason(about: str, sentence: str, weight: float) -> Reason:
    return Reason(about=about, sentence=sentence, weight=weight)


def _outlook(case: Situation) -> Iterator[Reason]:
    sings = case.sings()
    if sings is None:
        return
    words = "may sing: try on scrap" if sings else "likely quiet"
    yield _reason(OUTLOOK, f"{words} ({NOTE})", -2.0 if sings else 1.0)


def _flutes(case: Situation) -> Iterator[Reason]:
    cutter = case.tool.cutter
    if cutter.kind not in CONES:
        return
    if cutter.flutes == 1:
        yield _reason("chatter", "one lip chatters least", 2.0)
        yield _reason("chip room", "one flute has the most chip room", 1.0)
        yield _reason("time", "one lip is slow to feed", -0.5)
        if case.tool.pilot_diameter is None and cutter.kind != "cross-hole countersink":
            yield _reason("roundness", "one lip cuts off-round if the spindle is loose", -0.5)
        return
    if cutter.uneven:
        yield _reason("chatter", "its lips are spaced unevenly, so that it does not sing", 1.0)
    else:
        weight = -0.25 * (cutter.flutes or 2)
        yield _reason("chatter", f"{cutter.flutes} even lips chatter sooner than one", weight)
    if (cutter.flutes or 0) >= 3:
        yield _reason("lips", "one of them often does most of the work: blue them, look", -0.25)
        yield _reason("finish", "more lips leave a finer seat where it runs quiet", 0.5)


def _rake(case: Situation) -> Iterator[Reason]:
    rake = case.tool.cutter.rake
    if rake > 0 and (case.material.rake_grabs or case.thin):
        where = "thin sheet" if case.thin else case.material.name
        cross = case.tool.cutter.kind == "cross-hole countersink" and not case.material.rake_grabs
        weight = 0.0 if cross else -0.1 * rake
        if weight:
            yield _reason("rake", f"positive rake grabs and feeds itself in {where}", weight)
    elif rake > 0:
        yield _reason("rake", "positive rake cuts with less force", 0.05 * rake)


def _burrs(case: Situation) -> Iterator[Reason]:
    cutter = case.tool.cutter
    if cutter.kind == "cross-hole countersink":
        weight = 2.0 if case.thin else 0.5
        yield _reason(
            "burrs", "its curved edge cuts clean and leaves no burr, in sheet too", weight
        )
        if case.seat.diameter - case.seat.hole_diameter > LIGHT_SEAT:
            words = "made for deburring and light seats: the chip must leave through its hole"
            yield _reason("chip room", words, -2.0)
    elif case.thin and cutter.kind in CONES and (cutter.flutes or 0) >= 3:
        yield _reason("burrs", "it can raise a burr in sheet", -1.0)


def _pilot(case: Situation) -> Iterator[Reason]:
    pilot = case.tool.pilot_diameter
    if pilot is not None:
        play = show_both(case.seat.hole_diameter - pilot, case.system)
        yield _reason("pilot", f"its pilot keeps it on the hole, {play} under it; oil it", 1.5)
    elif not isinstance(case.seat, Countersink):
        yield _reason("pilot", "no pilot: bring the spindle over the hole first and lock up", -1.5)
    if case.tool.cutter.pilot == "removable":
        yield _reason("pilot", f"the {case.tool.cutter.held_by or 'pilot'} must be tight", -0.1)


def _size(case: Situation) -> Iterator[Reason]:
    cutter = case.tool.cutter
    body = cutter.body_diameter or 0.0
    if cutter.kind == "counterbore" and body <= SMALL_COUNTERBORE:
        words = "small counterbores snap: small steps, no jab, no side load, back out and brush"
        yield _reason("fragile", words, -0.5)
    over = body - case.seat.diameter
    if isinstance(case.seat, Counterbore) and over > 0.025:
        yield _reason(
            "size", f"it cuts {show_both(over, case.system)} larger than called for", -4 * over
        )


def _condition(case: Situation) -> Iterator[Reason]:
    cutter = case.tool.cutter
    weights = {"worn": -1.0, "dull": -4.0}
    if cutter.condition in weights:
        yield _reason("condition", f"it is {cutter.condition}", weights[cutter.condition])
    if cutter.material == "carbide" and case.machine.kind in ("drill press", "hand drill"):
        yield _reason("material", "carbide chips on a light machine", -1.0)


def _speed(case: Situation) -> Iterator[Reason]:
    step = case.step()
    if step is not None and step.too_fast:
        yield _reason("speed", step.advice, -3.0)


def _stop(case: Situation) -> Iterator[Reason]:
    holder = case.tool.holder
    if holder is not None and holder.kind == "stop cage":
        click = f" in clicks of {show_both(holder.click, case.system)}" if holder.click else ""
        weight = 2.0 if case.thickness is not None else 0.5
        yield _reason("depth", f"the stop cage sets its depth{click}", weight)
    elif case.machine.depth_stop is None:
        yield _reason("depth", f"nothing stops its depth on the {case.machine.name}", -2.0)


REASONS: tuple[Callable[[Situation], Iterator[Reason]], ...] = (
    _outlook,
    _flutes,
    _rake,
    _burrs,
    _pilot,
    _size,
    _condition,
    _speed,
    _stop,
)


def reasons(case: Situation) -> tuple[Reason, ...]:
    """Everything that speaks for the tool and against it, weightiest first."""
    found = [reason for rule in REASONS for reason in rule(case)]
    return tuple(sorted(found, key=lambda reason: -abs(reason.weight)))
