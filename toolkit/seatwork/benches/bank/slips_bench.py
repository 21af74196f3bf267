"""The slips bench: a wrong answer, and which known slips give it."""

from dataclasses import dataclass
from decimal import Decimal
from typing import ClassVar

from seatwork.benches.bank.slips_sums import drawn, example, kind_of, topics
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Control, Number, Pick, Switch, TextLine
from seatwork.benches.build.measures import Measure
from seatwork.drawings.views.flags_view import Flag, FlagPage, FlagsView
from seatwork.entries.typed import read
from seatwork.errors import SeatworkError
from seatwork.marking.why import Reason, why
from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.question import Question
from seatwork.questions.type.slips import Slip

START = "depth of a countersink"
LEARNERS, FIRST = 12, 7
LONGEST = 24
MOST_FOUND = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Looked:
    """A number a learner wrote, looked into.

    Parameters
    ----------
    question : Question
        With this learner's sizes.
    learner : str
        Code of the learner.
    part : NumberPart
        What was asked.
    answer : str
        As typed.
    value : Decimal
        The number typed, in the unit asked for.
    reasons : tuple of Reason
        What gives it, single slips first.
    opened : bool
        Whether that is shown.
    """

    question: Question
    learner: str
    part: NumberPart
    answer: str
    value: Decimal
    reasons: tuple[Reason, ...]
    opened: bool

    @property
    def slips(self) -> tuple[Slip, ...]:
        """The slips with a number of their own; of twins the first."""
        return tuple(slip for slip in self.part.slips if slip.twin_of is None)


class Slips(Bench[Looked]):
    """Show which known slips give a number that a learner wrote.

    Opens on a wrong number and the question what happened; one button shows every known slip
    with the number it gives, and marks those that fit. For an instructor: it shows the right
    answer.

    Examples
    --------
    >>> Slips(opened=True).result.reasons[0].how[:23]
    'M01: You used the whole'
    """

    title = "Slips: how did they get that number?"
    view = FlagsView
    cautions: ClassVar[tuple[str, ...]] = ()
    controls: ClassVar[tuple[Control, ...]] = (
        Switch(name="opened", label="What gives it?", back="Hide what gives it", redraws=True),
        Pick(name="pick", label="Question", listed=topics, known=kind_of, start=START,
             others="another question type", redraws=True),
        TextLine(name="answer", label="The learner wrote", longest=LONGEST, redraws=True),
        Number(name="learner", label="Learner's numbers", kind="count", low=1, high=LEARNERS,
               start=FIRST, why="the class has twelve", folded=True, redraws=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let another question bring a number to look into."""
        asked = given.keys() & {"pick", "learner"}
        return {"answer": example(now["pick"], now["learner"])} if asked else {}

    def part(self, result: Looked, system: str) -> FlagPage:
        """Draw the numbers that slips give beside the one typed."""
        return _page(result, system)

    def work_out(self, *, opened: bool, pick: str, answer: str, learner: float) -> Looked:
        """Look for everything known that gives the number."""
        question, part = drawn(pick, learner)
        typed = read(answer, part.measure, part.system)
        if typed.value <= 0:
            raise SeatworkError(answer, "is no size to look into", "type a number above zero")
        return Looked(
            question=question,
            learner=f"L{int(learner):02d}",
            part=part,
            answer=answer,
            value=typed.value,
            reasons=why(part, answer),
            opened=opened,
        )

    def measures(self, result: Looked) -> tuple[Measure, ...]:
        """Give the right number, and how many times it was written."""
        part = result.part
        ratio = f"{result.value / part.answer:.2f} times"
        return (
            Measure("Right", part.measure.write(part.rounded, part.system), kind="word"),
            Measure("Of the right one", ratio, kind="word"),
        )

    def sources(self, result: Looked) -> tuple[str, ...]:
        """Tell what is accepted and why, how a match is made, and how the answer is worked out."""
        part, question = result.part, result.question
        low, high = (part.measure.write(value, part.system) for value in part.band)
        accepted = getattr(question, "accepted", None)
        reason = f" {accepted.reason}" if accepted else ""
        return (
            f"Accepted: {low} to {high}.{reason}",
            "A slip matches within half of the last place typed. It is a match, not a proof: "
            "another way may lead to the same number.",
            f"Worked out: {question.worked()}",
        )


def _single(result: Looked) -> list[Slip]:
    """Return the slips, twins with them, whose one number is the one typed."""
    hows = {reason.how for reason in result.reasons}
    return [slip for slip in result.part.slips if f"{slip.code}: {slip.sentence}" in hows]


def _page(result: Looked, system: str) -> FlagPage:
    part = result.part
    wrote = _wrote(result, system)
    right = Flag(
        value=float(part.answer),
        label=f"right  {_written(part.answer, part, system)}",
        bold=True,
    )
    found = _found(result)
    heading = _heading(result, wrote)
    lines = _text_of(result, system)
    opened = [f"{title} {' '.join(lines)}" for title, lines in found]
    asked = f"{result.learner} was asked: {result.question.text()}"
    return FlagPage(
        heading=heading,
        asked=asked,
        flags=(right, *_flags(result, system)),
        set_against=Flag(
            value=float(result.value),
            label=f"{result.learner} wrote {wrote}",
            bold=True,
            sought=True,
        ),
        found=found,
        text=" ".join([heading, asked, f"The answer is {lines[0]}.", *opened, *lines[1:]]),
    )


def _flags(result: Looked, system: str) -> list[Flag]:
    if not result.opened:
        return []
    fits = {slip.value for slip in _single(result)}
    return [
        Flag(
            value=float(slip.value),
            label=f"{slip.code}  {_written(slip.value, result.part, system)}",
            bold=slip.value in fits,
            sought=slip.value in fits,
        )
        for slip in result.slips
        if isinstance(slip.value, Decimal) and slip.value > 0
    ]


def _heading(result: Looked, wrote: str) -> str:
    if not result.opened:
        return f"{result.learner} wrote {wrote}. What happened?"
    low, high = result.part.band
    if low <= result.value <= high:
        return f"{wrote} is right."
    count = len(_single(result))
    if not count:
        return f"No one slip that is known gives {wrote}."
    return f"{wrote}: this matches {'a known slip' if count == 1 else f'{count} known slips'}."


def _found(result: Looked) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """Say what gives the number, or what to do where nothing known does."""
    if not result.opened:
        return (("Think first.", ("Which wrong step gives this number? Try one on paper.",)),)
    low, high = result.part.band
    if low <= result.value <= high:
        return ()
    hows = tuple(_sentence(reason.how) for reason in result.reasons)
    if hows:
        return (("What gives this number:", hows[:MOST_FOUND]),)
    return (("What to do:", ("Ask the learner to say the steps aloud, and listen.",)),)


def _text_of(result: Looked, system: str) -> list[str]:
    """Tell the right number and, once opened, what every known slip gives."""
    part = result.part
    right = _both(part.answer, part, system)
    if not result.opened:
        return [right]
    gives = [f"{slip.code} gives {_both(slip.value, part, system)}" for slip in result.slips]
    return [right, f"Known slips: {'; '.join(gives)}."]


def _wrote(result: Looked, system: str) -> str:
    """Quote the number with its unit; in the other system say also what it is there."""
    part = result.part
    quoted = part.measure.write(result.value, part.system)
    there = _written(result.value, part, system)
    return quoted if system == part.system or there == quoted else f"{quoted} ({there})"


def _sentence(how: str) -> str:
    return f"{how[:1].upper()}{how[1:]}."


def _written(value: Decimal | str, part: NumberPart, system: str) -> str:
    """Write an amount of the sheet's unit in a system."""
    assert isinstance(value, Decimal)
    return part.measure.show(part.measure.inside(value, part.system), system)


def _both(value: Decimal | str, part: NumberPart, system: str) -> str:
    """Write an amount in both systems, where they differ."""
    other = "metric" if system == "inch" else "inch"
    one, two = (_written(value, part, which) for which in (system, other))
    return one if one == two else f"{one} ({two})"


slips = Slips
