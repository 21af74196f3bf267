"""The slips of a class, counted: what to teach again, and to how many."""

from collections import defaultdict
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.rows import short

OWN = "a slip of a question type of your own"


@dataclass(frozen=True, slots=True, kw_only=True)
class SlipCount:
    """One slip in the answers of a class.

    Parameters
    ----------
    code : str
        Code of the slip, such as M01.
    sentence : str
        What was done, then what the part shows.
    questions : tuple of str
        Where answers match it, such as m2.
    learners : tuple of str
        Codes of the learners whose answers match it.

    Examples
    --------
    >>> print(SlipCount(code="M02", sentence="both sides", questions=("c1",), learners=("L05",)))
    M02: 1 learner, question c1: both sides
    """

    code: str
    sentence: str
    questions: tuple[str, ...]
    learners: tuple[str, ...]

    def __repr__(self) -> str:
        return f"<SlipCount {short(str(self), 100)}>"

    def __str__(self) -> str:
        count, where = len(self.learners), len(self.questions)
        who = f"{count} learner" + "s" * (count > 1)
        asked = "question" + "s" * (where > 1)
        return f"{self.code}: {who}, {asked} {' '.join(self.questions)}: {self.sentence}"


def counted(results: Mapping[str, Any]) -> tuple[SlipCount, ...]:
    """Count the slips in the results of a sheet, the most frequent first.

    Parameters
    ----------
    results : mapping
        As ``seatwork.marking.results`` reads or makes them.

    Returns
    -------
    tuple of SlipCount
        A learner counts once for a slip; an answer that matches two slips counts for both.
    """
    if not isinstance(results, Mapping) or "files" not in results:
        raise SeatworkError(results, "that is no record of marks", "read one with results.read")
    learners: defaultdict[str, set[str]] = defaultdict(set)
    questions: defaultdict[str, list[str]] = defaultdict(list)
    for learner, question, code in _found(results):
        learners[code].add(learner)
        questions[code].append(question)
    order = [question["id"] for file in results["files"] for question in file["questions"]]
    rows = (
        SlipCount(
            code=code,
            sentence=SLIPS.get(code, OWN),
            questions=tuple(sorted(set(questions[code]), key=order.index)),
            learners=tuple(sorted(who)),
        )
        for code, who in learners.items()
    )
    return tuple(sorted(rows, key=lambda row: (-len(row.learners), row.code)))


def _found(results: Mapping[str, Any]) -> Iterator[tuple[str, str, str]]:
    """Yield learner, question and slip of every answer that matches one."""
    for file in results["files"]:
        for question in file["questions"]:
            for code in question["slips"]:
                yield file["learner"], question["id"], code
