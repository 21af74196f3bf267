"""Right numbers written wrongly: the point, the unit, thousandths without a point, a fraction."""

from collections.abc import Iterator
from decimal import Decimal

from seatwork.entries.typed import Typed
from seatwork.questions.type.parts import UNIT_WORDS, NumberPart
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.questions.type.slips import Slip, framed

OTHER = {"inch": "metric", "metric": "inch"}
POINT = (Decimal(10), Decimal(100), Decimal("0.1"), Decimal("0.01"))
THOUSAND = Decimal(1000)
DRILLS = (Decimal(1) / 64, Decimal(1) / 32, Decimal(1) / 16)
"""Steps of fractional drills [in]."""
THOUSANDTHS = "You left out the point: {typed} what? In the shop that is {right}."
UNIT = "You have the right number. You wrote {said} beside it, and it is {meant}."
POINT_MOVED = "You have the right figures. You put the decimal point in another place."
ROUNDED_DOWN = "You rounded down. At least so deep is asked: round up."


def spoiled(part: NumberPart, typed: Typed, text: str) -> Iterator[Slip]:
    """Yield how a number typed is the right one written wrongly.

    Parameters
    ----------
    part : NumberPart
        What was asked.
    typed : Typed
        The number as read; it is not right as it stands.
    text : str
        As it was typed.
    """
    if is_fraction(part, typed):
        yield Slip(code="M56", value=typed.value, sentence=SLIPS["M56"])
        return
    if part.is_least and 0 < part.band[0] - typed.value < part.step:
        yield Slip(code="M40", value=typed.value, sentence=ROUNDED_DOWN)
    if typed.unit_said:
        asked, other = part.measure.unit[part.system], part.measure.unit[OTHER[part.system]]
        for factor, said, meant in (
            (1 / other_unit(part), other, asked),
            (other_unit(part), asked, other),
        ):
            if is_times(part, typed, factor):
                words = UNIT_WORDS.get(said, said), UNIT_WORDS.get(meant, meant)
                yield framed("M55", typed.value, UNIT, said=words[0], meant=words[1])
    elif part.unit == "in" and is_times(part, typed, THOUSAND):
        right = f"{part.rounded:f}".lstrip("0")
        yield framed("M54", typed.value, THOUSANDTHS, typed=text.strip(), right=right)
    if any(is_times(part, typed, factor) for factor in POINT):
        yield Slip(code="M38", value=typed.value, sentence=POINT_MOVED)


def other_unit(part: NumberPart) -> Decimal:
    """Return the unit asked for in the unit of the other system; 1 if they are one."""
    scale = part.measure.scale
    return scale[part.system] / scale[OTHER[part.system]]


def is_times(part: NumberPart, typed: Typed, factor: Decimal) -> bool:
    """Whether a number typed is a factor times the right one; a factor of 1 is none."""
    reach = max(part.tolerance * factor, typed.place / 2)
    return factor != 1 and abs(typed.value - part.answer * factor) <= reach


def is_fraction(part: NumberPart, typed: Typed) -> bool:
    """Whether the fraction of a drill near the right number was typed."""
    if not typed.is_fraction or part.unit != "in":
        return False
    off = abs(typed.value - part.answer)
    exact = typed.value.quantize(Decimal("1e-9"))
    return any(off <= step / 2 and not (exact / step) % 1 for step in DRILLS)
