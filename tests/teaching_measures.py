"""What the form tells a learner of a wrong answer, measured over the whole bank.

``python tests/teaching_measures.py`` writes the table, with what was measured on main of
2026-11-29 before slips were made from steps beside it. Everything typed is made here, from the
numbers a learner sees or works out; only a type's own slips are taken from the type.
"""

import random
import re
import sys
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from fractions import Fraction

from seatwork.quantities import INCH
from seatwork.questions import Question, Verdict, all_types, judge, named
from seatwork.questions.type.draws import generator
from seatwork.questions.type.parts import NumberPart

DRAWS = 30
RANDOM = 10  # wrong numbers drawn for each question
UNTOLD = ("wrong", "unreadable")
NAMING = ("slip", "several slips")
"""Verdicts that name a slip; one that asks back names none."""
COUNTED = (1, 2, 3, 4, 5, 6, 12)  # counts and constants: no number one would give for an answer
NAMES = re.compile(r"#\d+(?:-\d+)?|\b\d+(?:-\d+)?/\d+(?:-\d+)?|B18\.2\.8|M\d+")
NUMBER = re.compile(r"(?<![\w⌀.])(\d*\.?\d+)(?![\w])")

BEFORE = {
    "own slip": "100 % of 4,990",
    "stopped at a step": "29 % of 1,356",
    "copied number": "19 % of 4,078",
    "difference": "6 % of 2,900",
    "half difference": "3 % of 2,900",
    "decimal place": "0 %",
    "thousandths without the point": "0 %",
    "wrong unit written": "1 %",
    "nearest drill fraction": "6 % of 796",
    "millimeters without a unit": "99.5 % of 1,020",
    "random, named": "0.9 % of 49,400",
    "random, worst type": "10 % (standing)",
    "named falsely": "every seat-depth form",
    "14 tries, told truly": "2",
    "14 tries, told falsely": "2",
}
"""Measured on 2026-11-29 with the scripts of that day."""
GOALS = {
    "own slip": 1.0,
    "stopped at a step": 0.9,
    "copied number": 0.9,
    "decimal place": 0.95,
    "thousandths without the point": 0.95,
    "wrong unit written": 0.95,
    "nearest drill fraction": 0.9,
    "millimeters without a unit": 1.0,
}
"""Least share told of each kind of wrong answer."""
MOST_RANDOM, MOST_RANDOM_OF_A_TYPE = 0.02, 0.05

TRIES = {
    ".367": "M53",
    "211": "M54",
    "0.211 mm": "M55",
    ".211 mm": "M55",
    "7/32": "M56",
    ".22": "",
    ".180": "",
    ".158": "",
    ".024": "",
    ".1835": "M52",
    ".184": "M52",
    ".422": "M02",
    "5.36": "other unit",
    "half of .367": "unreadable",
}
"""What a weak student typed for a depth of .211 in, with what it was; empty for no known slip."""


@dataclass
class Told:
    """Counts by kind of wrong answer, and by type for random ones."""

    tried: Counter[str] = field(default_factory=Counter)
    told: Counter[str] = field(default_factory=Counter)
    drawn: Counter[str] = field(default_factory=Counter)
    hit: Counter[str] = field(default_factory=Counter)
    untold: Counter[tuple[str, str]] = field(default_factory=Counter)
    falsely: list[str] = field(default_factory=list)

    def share(self, kind: str) -> float:
        """Return the share told of a kind of wrong answer."""
        return self.told[kind] / self.tried[kind] if self.tried[kind] else 1.0

    def random_share(self) -> float:
        """Return the share of random wrong numbers that were named."""
        return self.hit.total() / self.drawn.total()

    def worst(self) -> tuple[float, str]:
        """Return the greatest such share of a type, and that type."""
        return max((self.hit[name] / count, name) for name, count in self.drawn.items())


def written(value: float, part: NumberPart) -> str:
    """Write a value to the places asked for."""
    places = part.measure.places[part.system]
    return f"{value:.{places}f}"


def numbers(question: Question) -> list[float]:
    """Return the numbers that stand in a question, without names of screws and standards."""
    found = (float(number) for number in NUMBER.findall(NAMES.sub("", question.text())))
    return [number for number in dict.fromkeys(found) if number > 0]


def wrong_answers(question: Question, part: NumberPart) -> Iterator[tuple[str, str, str]]:
    """Yield the kind of a wrong answer, what is typed, and the code it means or nothing."""
    answer, given = float(part.answer), numbers(question)
    for slip in part.slips:
        if isinstance(slip.value, str) or slip.value <= 0:
            continue
        text = f"{slip.value:.7f}" if float(slip.value / part.step) < 100 else None
        yield "own slip", text or written(float(slip.value), part), slip.twin_of or slip.code
    for step in question.worked_steps()[:-1]:
        if step.part % len(question.parts) != len(question.parts) - 1:
            continue
        shown = float(step.measure.amount(step.value, part.system))
        if shown not in given and shown not in COUNTED:
            yield "stopped at a step", written(shown, part), step.code
    for number in given:
        if number not in COUNTED:
            yield "copied number", written(number, part), ""
    if any(step.code == "M52" for step in question.worked_steps()):
        for first, second in pairs(given):
            yield "difference", written(first - second, part), ""
            yield "half difference", written((first - second) / 2, part), ""
    yield "decimal place", written(answer * 10, part), "M38"
    yield "decimal place", written(answer / 10, part), "M38"
    if part.unit == "in":
        yield from of_a_length(answer, part)


def of_a_length(answer: float, part: NumberPart) -> Iterator[tuple[str, str, str]]:
    """Yield how the right number of a length in inches is spoiled."""
    yield "thousandths without the point", str(round(answer * 1000)), "M54"
    yield "wrong unit written", f"{written(answer, part)} mm", "M55"
    yield "wrong unit written", f"{answer * 25.4:.2f} in", "M55"
    yield "millimeters without a unit", f"{answer * 25.4:.2f}", ""
    if nearest := Fraction(round(answer * 32), 32):
        yield "nearest drill fraction", f"{nearest.numerator}/{nearest.denominator}", "M56"


def pairs(given: list[float]) -> Iterator[tuple[float, float]]:
    """Yield the greater and the lesser of any two numbers that are of one size."""
    for first in given:
        for second in given:
            if second < first < 5 * second:
                yield first, second


def measure(draws: int = DRAWS) -> Told:
    """Type every kind of wrong answer for questions of every type, and count what is told."""
    told = Told()
    for name, kind in sorted(all_types().items()):
        for state in range(draws):
            question = kind.draw(generator(f"{name}-{state}".encode()))
            if isinstance(question.main, NumberPart):
                count_one(told, name, question, question.main, state)
    return told


def count_one(told: Told, name: str, question: Question, part: NumberPart, state: int) -> None:
    """Count what is told of the wrong answers to one question."""
    seen = set()
    for kind, text, code in wrong_answers(question, part):
        verdict = judge(part, text)
        if verdict.is_right or (kind, text) in seen:
            continue
        seen.add((kind, text))
        told.tried[kind] += 1
        told.told[kind] += verdict.kind not in UNTOLD
        if verdict.kind in UNTOLD:
            told.untold[kind, name] += 1
        if code and is_false(verdict, code, text, part):
            told.falsely.append(f"{name}: {text} is {code}, told {[s.code for s in verdict.slips]}")
    chance = random.Random(state)
    for _ in range(RANDOM):
        value = float(part.answer) * chance.uniform(0.3, 1.9)
        verdict = judge(part, written(value, part))
        if not verdict.is_right:
            told.drawn[name] += 1
            told.hit[name] += verdict.kind in NAMING


def is_false(verdict: Verdict, code: str, text: str, part: NumberPart) -> bool:
    """Whether slips are told, and what was done is not among them.

    A slip of the type that gives the same number is the same thing done, said more closely.
    """
    if verdict.kind not in NAMING or code in [slip.code for slip in verdict.slips]:
        return False
    own = [float(slip.value) for slip in part.slips if not isinstance(slip.value, str)]
    return not any(written(value, part) == text for value in own)


def tries() -> dict[str, Verdict]:
    """Return what is said of each of the fourteen tries."""
    sizes = {"diameter": 0.773 * INCH, "hole_diameter": 0.406 * INCH, "included_angle": 82.0}
    part = named("seat-depth")(**sizes).main
    return {text: judge(part, text) for text in TRIES}


def told_truly(text: str, verdict: Verdict) -> bool:
    """Whether a try is told what it was."""
    return TRIES[text] in (verdict.kind, *(slip.code for slip in verdict.slips))


def rows(told: Told) -> Iterator[tuple[str, str, str, str]]:
    """Yield the table: measure, before, now, goal."""
    for kind in told.tried:
        now = f"{told.share(kind):.1%} of {told.tried[kind]:,}"
        yield kind, BEFORE.get(kind, ""), now, f"{GOALS[kind]:.0%}" if kind in GOALS else ""
    share, name = told.worst()
    now = f"{told.random_share():.1%} of {told.drawn.total():,}"
    yield "random, named", BEFORE["random, named"], now, f"at most {MOST_RANDOM:.0%}"
    goal = f"at most {MOST_RANDOM_OF_A_TYPE:.0%}"
    yield "random, worst type", BEFORE["random, worst type"], f"{share:.1%} ({name})", goal
    yield "named falsely", BEFORE["named falsely"], str(len(told.falsely)), "0"
    done = tries()
    truly = sum(told_truly(text, done[text]) for text in TRIES if TRIES[text])
    falsely = sum(done[text].kind in NAMING and not told_truly(text, done[text]) for text in TRIES)
    yield "14 tries, told truly", BEFORE["14 tries, told truly"], str(truly - 1), "9"
    yield "14 tries, told falsely", BEFORE["14 tries, told falsely"], str(falsely), "0"


def page() -> str:
    """Return the measures as a table, and whatever was told falsely below it."""
    result = measure()
    lines = [("wrong answers told", "before", "now", "goal"), ("---",) * 4, *rows(result)]
    told = ["| " + " | ".join(line) + " |" for line in lines]
    return "\n".join([*told, *dict.fromkeys(result.falsely)])


if __name__ == "__main__":
    sys.stdout.write(page() + "\n")
