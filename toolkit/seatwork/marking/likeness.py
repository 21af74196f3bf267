"""Answers that fit another learner's numbers: put as a question, never as a finding."""

from collections import Counter, defaultdict
from collections.abc import Iterable

from seatwork.errors import SeatworkError
from seatwork.marking.handed import HandedOut
from seatwork.questions.parts import NumberPart
from seatwork.questions.typed import read

LEAST = 2  # answers that must fit one and the same other learner
Place = tuple[str, int, str]


class Likeness:
    """Right answers of everyone who was given a sheet, to look wrong answers up in."""

    def __init__(self) -> None:
        self._owners: defaultdict[Place, set[str]] = defaultdict(set)

    def add(self, learner: str, form: HandedOut) -> None:
        """Enter the right answers of one form."""
        for name, key in form.key.items():
            for number, entry in enumerate(key):
                if entry is not None:
                    self._owners[name, number, entry[0]].add(learner)

    def fitting(
        self, learner: str, wrong: Iterable[tuple[str, int, NumberPart, str]]
    ) -> tuple[str, int] | None:
        """Return the other learner whose numbers most wrong answers fit, and how many do."""
        found: Counter[str] = Counter()
        for name, number, part, text in wrong:
            found.update(self._owners.get((name, number, _rounded(part, text)), set()) - {learner})
        if not found:
            return None
        other, count = min(found.items(), key=lambda item: (-item[1], item[0]))
        return (other, count) if count >= LEAST else None


def _rounded(part: NumberPart, text: str) -> str:
    places = part.measure.places[part.system]
    try:
        return f"{round(read(text, part.measure, part.system).value, places):f}"
    except SeatworkError:
        return ""
