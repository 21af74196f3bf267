"""Numbers that two learners typed alike, though theirs differ: a question for both, no finding."""

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations
from typing import NamedTuple

from seatwork.marking.results import Data

LEAST = 3
"""Typed numbers that two papers must share before somebody is asked."""
MOST, SHARE = 4, 3
"""A number that more learners typed, and more than one in so many, tells nothing."""
RIGHT = ("right", "own step")
Place = tuple[str, int, str]


class Alike(NamedTuple):
    """Two learners whose papers share typed numbers.

    Parameters
    ----------
    learners : tuple of str
        Their codes, in order.
    questions : tuple of str
        Where, a question for each number.
    """

    learners: tuple[str, str]
    questions: tuple[str, ...]

    def __str__(self) -> str:
        one, two = self.learners
        where = " ".join(dict.fromkeys(self.questions))
        return f"{one} and {two} typed {len(self.questions)} numbers alike ({where}): ask both"


def alike(rows: Iterable[Data], among: Sequence[str] | None = None) -> list[Alike]:
    """Return the learners whose papers share three typed numbers or more, letter for letter.

    What is right for both is passed over, and so is a number that many learners typed. It is
    never more than a reason to ask: two may have worked it out at one table.

    Parameters
    ----------
    rows : iterable of dict
        Papers of a sheet, as `seatwork.record.results` gives them under ``files``.
    among : sequence of str, optional
        Only pairs with one of these learners; all if not given.
    """
    typed: defaultdict[Place, dict[str, bool]] = defaultdict(dict)
    papers = [one for one in rows if one["questions"]]
    for one in papers:
        for place, is_right in _numbers(one):
            typed[place][one["learner"]] = is_right
    limit = max(MOST, len(papers) / SHARE)
    shared: defaultdict[tuple[str, str], Counter[tuple[str, int]]] = defaultdict(Counter)
    for (question, part, _), owners in typed.items():
        for pair in combinations(sorted(owners), 2) if len(owners) <= limit else ():
            if not (owners[pair[0]] and owners[pair[1]]):
                shared[pair][question, part] += 1
    wanted = None if among is None else set(among)
    found = [
        Alike(pair, tuple(question for question, _ in sorted(places)))
        for pair, places in shared.items()
        if len(places) >= LEAST and (wanted is None or wanted.intersection(pair))
    ]
    return sorted(found, key=lambda one: (-len(one.questions), one.learners))


def _numbers(paper: Data) -> Iterator[tuple[Place, bool]]:
    """Yield each typed number of a paper with its place, and whether it is right."""
    for question in paper["questions"]:
        for part, (text, kind) in enumerate(
            zip(question["typed"], question["verdicts"], strict=False)
        ):
            plain = " ".join(text.split()).casefold()
            if any(sign.isdigit() for sign in plain):
                yield (question["id"], part, plain), kind in RIGHT
