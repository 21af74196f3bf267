"""Why did they get that number? Everything that gives it, for the instructor alone."""

from dataclasses import dataclass
from decimal import Decimal
from itertools import combinations

from seatwork.entries.typed import Typed, read
from seatwork.errors import SeatworkError
from seatwork.marking.handed import Forms, HandedOut
from seatwork.marking.names import learner_code
from seatwork.marking.sheets import Sheet
from seatwork.marking.typed_back import place_of
from seatwork.quantities import EXACT_INCH
from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.slips import Slip

FACTORS = (
    ("ten times the answer", Decimal(10)),
    ("a tenth of the answer", Decimal("0.1")),
    ("a hundredth of the answer", Decimal("0.01")),
    ("a hundred times the answer", Decimal(100)),
    ("twice the answer", Decimal(2)),
    ("half the answer", Decimal("0.5")),
    ("the answer times 25.4", EXACT_INCH),
    ("the answer over 25.4", 1 / EXACT_INCH),
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Reason:
    """Something that gives a number: one slip, two at once, or a factor on the answer."""

    how: str
    value: Decimal


def why(part: NumberPart, text: str) -> tuple[Reason, ...]:
    """Return everything known that gives a number, single slips first.

    Parameters
    ----------
    part : NumberPart
        What was asked.
    text : str
        The number as typed.

    Raises
    ------
    SeatworkError
        If the text is no number.
    """
    typed = read(text, part.measure, part.system)
    reasons = [*_single(part), *_factors(part), *_pairs(part)]
    return tuple(reason for reason in reasons if _near(reason.value, typed))


def reasons(
    handed_out: Forms, sheet: Sheet, learner: str, question: str, text: str, form: int | None = None
) -> tuple[Reason, ...]:
    """Return what gives the number a learner wrote for a question of a handed-out sheet.

    Parameters
    ----------
    handed_out : Forms
        What was handed out.
    sheet : Sheet
        The worksheet.
    learner, question, text : str
        Who wrote what for which question, such as c3b.
    form : int, optional
        The form it was written on; may be left out where the learner was given one.

    Raises
    ------
    SeatworkError
        If nothing was handed out to the learner, it is not said which of several forms is
        meant, or the question asks for no number.
    """
    given = _given(handed_out, sheet, learner_code(learner), form)
    asked = given.asked(sheet)
    name, number = place_of(question, asked)
    part = given.question(asked.item(name)).parts[number or 0]
    if not isinstance(part, NumberPart):
        raise SeatworkError(question, "it asks for no number", "name a part such as c3b")
    return why(part, text)


def _given(handed_out: Forms, sheet: Sheet, learner: str, form: int | None) -> HandedOut:
    """Return the form that is meant."""
    forms = handed_out.sheets.get(sheet.name, {}).get(learner, [])
    if not forms:
        raise SeatworkError(learner, f"{sheet.name} was not handed out to this learner", "check it")
    meant = [one for one in forms if form in (None, one.form)]
    if len(meant) == 1:
        return meant[0]
    numbers = " and ".join(str(one.form) for one in forms)
    fault = f"this learner was given form {numbers} of {sheet.name}"
    remedy = f"add --form with the number on the paper, such as --form {forms[0].form}"
    raise SeatworkError(learner, fault, remedy)


def _near(value: Decimal, typed: Typed) -> bool:
    return abs(value - typed.value) <= typed.place / 2


def _single(part: NumberPart) -> list[Reason]:
    right = Reason(how="right", value=part.answer)
    return [right, *(Reason(how=_named(slip), value=_value(slip)) for slip in part.slips)]


def _factors(part: NumberPart) -> list[Reason]:
    return [Reason(how=how, value=part.answer * factor) for how, factor in FACTORS]


def _pairs(part: NumberPart) -> list[Reason]:
    """Return two slips at once, where each is a factor on the answer."""
    if not part.answer:
        return []
    known = [slip for slip in part.slips if slip.twin_of is None and _value(slip)]
    return [
        Reason(
            how=f"{_named(first)} and at once {_named(second)}",
            value=_value(first) * _value(second) / part.answer,
        )
        for first, second in combinations(known, 2)
    ]


def _named(slip: Slip) -> str:
    return f"{slip.code}: {slip.sentence}"


def _value(slip: Slip) -> Decimal:
    assert isinstance(slip.value, Decimal)
    return slip.value
