"""Numbers that two learners typed alike, though theirs differ: a question for both, no finding."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations
from typing import NamedTuple

from seatwork.marking.results import Data

LEAST = 3
"""Questions that two papers must answer with the same numbers before somebody is asked.

Measured with 130 honest made-up classes of 16 on thirteen sheets, where whoever slips in a question
makes the same slip as the others. With three in ten answers slipped, two questions asked about
honest pairs in 8 of the 130 classes, three in none; with six in ten, in 54 and in 2. Who copied
three entries from a neighbor was asked about 81 times of 100, and by two always; a sheet that asks
for fewer than three numbers asks nobody.
"""
MOST, SHARE = 4, 3
"""An answer that more learners gave, and more than one in so many, tells nothing."""
RIGHT = ("right", "own step")
Answer = tuple[str, tuple[str, ...]]


class Alike(NamedTuple):
    """Two learners whose papers share typed numbers.

    Parameters
    ----------
    learners : tuple of str
        Their codes, in order.
    questions : tuple of str
        Where.
    """

    learners: tuple[str, str]
    questions: tuple[str, ...]

    def __str__(self) -> str:
        one, two = self.learners
        count, where = len(self.questions), " ".join(self.questions)
        return f"{one} and {two} typed the same numbers in {count} questions ({where}): ask both"


def alike(rows: Iterable[Data], among: Sequence[str] | None = None) -> list[Alike]:
    """Return the learners who typed the same numbers in three questions or more.

    Numbers are compared letter for letter, a question with all of its parts; what is right for
    both is passed over, and so is what many learners typed. It is never more than a reason to
    ask: two may have worked at one table.

    Parameters
    ----------
    rows : iterable of dict
        Papers of a sheet, as `seatwork.record.results` gives them under ``files``.
    among : sequence of str, optional
        Only pairs with one of these learners; all if not given.
    """
    typed: defaultdict[Answer, dict[str, bool]] = defaultdict(dict)
    papers = [one for one in rows if one["questions"]]
    for one in papers:
        for answer, is_right in _numbers(one):
            typed[answer][one["learner"]] = is_right
    limit = max(MOST, len(papers) / SHARE)
    shared: defaultdict[tuple[str, str], set[str]] = defaultdict(set)
    for (question, _), owners in typed.items():
        for pair in combinations(sorted(owners), 2) if len(owners) <= limit else ():
            if not (owners[pair[0]] and owners[pair[1]]):
                shared[pair].add(question)
    wanted = None if among is None else set(among)
    found = [
        Alike(pair, tuple(sorted(places)))
        for pair, places in shared.items()
        if len(places) >= LEAST and (wanted is None or wanted.intersection(pair))
    ]
    return sorted(found, key=lambda one: (-len(one.questions), one.learners))


def _numbers(paper: Data) -> Iterator[tuple[Answer, bool]]:
    """Yield each question of a paper that numbers were typed to, and whether all is right."""
    for question in paper["questions"]:
        plain = tuple(" ".join(text.split()).casefold() for text in question["typed"])
        if any(sign.isdigit() for text in plain for sign in text):
            is_right = all(kind in RIGHT for kind in question["verdicts"])
            yield (question["id"], plain), is_right
