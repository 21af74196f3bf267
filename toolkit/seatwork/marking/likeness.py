"""Answers that fit another learner's numbers: put as a question, never as a finding."""

from collections import Counter, defaultdict
from collections.abc import Iterable

from seatwork.entries.typed import read
from seatwork.errors import SeatworkError
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.units import rounded

LEAST = 2  # answers that must fit one and the same other learner
Place = tuple[str, int, str]


class Likeness:
    """Right answers of everyone who was given a sheet, to look wrong answers up in."""

    def __init__(self) -> None:
        self._owners: defaultdict[Place, set[str]] = defaultdict(set)

    def add(self, learner: str, asked: Iterable[tuple[str, tuple[Part, ...]]]) -> None:
        """Enter the right answers of one form: the id of each question, and its parts."""
        for name, parts in asked:
            for number, part in enumerate(parts):
                if isinstance(part, NumberPart):
                    self._owners[name, number, f"{part.rounded:f}"].add(learner)

    def fitting(self, learner: str, wrong: Iterable[Place]) -> tuple[str, int] | None:
        """Return the other learner whose numbers most wrong answers fit, and how many do."""
        found: Counter[str] = Counter()
        for place in wrong:
            owners = self._owners.get(place)
            if owners:
                found.update(owners - {learner})
        if not found:
            return None
        other, count = min(found.items(), key=lambda item: (-item[1], item[0]))
        return (other, count) if count >= LEAST else None


def rounded_text(text: str, part: NumberPart) -> str:
    """Return a typed number rounded as answers are; empty if it cannot be read."""
    try:
        value = read(text, part.measure, part.system).value
    except SeatworkError:
        return ""
    return f"{rounded(value, part.measure.places[part.system]):f}"
