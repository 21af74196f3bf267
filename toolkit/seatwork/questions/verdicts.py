"""What is said of one answer: right, a known slip, or what else it may be."""

from dataclasses import dataclass
from decimal import Decimal

from seatwork.errors import SeatworkError
from seatwork.questions.parts import ChoicePart, NumberPart, OrderPart, Part
from seatwork.questions.slips import Slip
from seatwork.questions.typed import Typed, read

OTHER = {"inch": "metric", "metric": "inch"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """What is said of one answer.

    Parameters
    ----------
    kind : str
        "right", "blank", "other unit", "slip", "several slips", "wrong" or "unreadable".
    slips : tuple of Slip
        The slips whose number the answer matches, nearest first.
    fault : str
        For an unreadable answer, the sentence that says why.
    """

    kind: str
    slips: tuple[Slip, ...] = ()
    fault: str = ""

    @property
    def is_right(self) -> bool:
        """Whether the answer earns its points."""
        return self.kind == "right"


RIGHT = Verdict(kind="right")
BLANK = Verdict(kind="blank")
WRONG = Verdict(kind="wrong")
OTHER_UNIT = Verdict(kind="other unit")


def judge(part: Part, text: str) -> Verdict:
    """Say of an answer, as typed, what it is.

    Parameters
    ----------
    part : NumberPart, ChoicePart or OrderPart
        What was asked.
    text : str
        What the learner typed; it is matched and read, never evaluated.

    Returns
    -------
    Verdict
        Never raises for any text.
    """
    if not text.strip():
        return BLANK
    if isinstance(part, NumberPart):
        return _judge_number(part, text)
    return _judge_choice(part, text) if isinstance(part, ChoicePart) else _judge_order(part, text)


def _judge_number(part: NumberPart, text: str) -> Verdict:
    try:
        typed = read(text, part.measure, part.system)
    except SeatworkError as error:
        return Verdict(kind="unreadable", fault=str(error))
    low, high = part.band
    if low <= typed.value <= high:
        return RIGHT
    slips = matching(part.slips, typed)
    if len(slips) == 1:
        return Verdict(kind="slip", slips=slips)
    if slips:
        return Verdict(kind="several slips", slips=slips)
    return OTHER_UNIT if _right_in_other_unit(part, typed) else WRONG


def matching(slips: tuple[Slip, ...], typed: Typed) -> tuple[Slip, ...]:
    """Return the slips within half a unit of the last place typed, nearest first; no twins."""
    near = [
        (abs(slip.value - typed.value), number, slip)
        for number, slip in enumerate(slips)
        if isinstance(slip.value, Decimal)
        and slip.twin_of is None
        and abs(slip.value - typed.value) <= typed.place / 2
    ]
    return tuple(slip for _, _, slip in sorted(near, key=lambda found: found[:2]))


def _right_in_other_unit(part: NumberPart, typed: Typed) -> bool:
    other = OTHER[part.system]
    if typed.unit_said or part.measure.unit[other] == part.unit:
        return False
    value = typed.value * part.measure.scale[other] / part.measure.scale[part.system]
    low, high = part.band
    return low <= value <= high


def _judge_choice(part: ChoicePart, text: str) -> Verdict:
    word = part.chosen(text)
    if word is None:
        remedy = f"answer with a letter from a to {chr(ord('a') + len(part.options) - 1)}"
        return Verdict(kind="unreadable", fault=f"That is none of the options; {remedy}.")
    if word == part.right:
        return RIGHT
    slips = tuple(slip for slip in part.slips if slip.value == word)
    return Verdict(kind="slip", slips=slips) if slips else WRONG


def _judge_order(part: OrderPart, text: str) -> Verdict:
    letters = part.chosen(text)
    if letters is None:
        fault = "Each step must stand there once; answer with the letters, such as CABD."
        return Verdict(kind="unreadable", fault=fault)
    if letters == part.right:
        return RIGHT
    broken = tuple(
        slip
        for slip in part.slips
        if letters.index(str(slip.value)[0]) > letters.index(str(slip.value)[1])
    )
    return Verdict(kind="slip", slips=broken[:1]) if broken else WRONG
