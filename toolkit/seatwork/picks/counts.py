"""What a class bet: for each pick how many chose what; no learner is named."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.marking.pick_file import Bet, PickFile
from seatwork.picks.bets import NO_IDEA, fits, is_right, named
from seatwork.picks.wording import Words, every

FEWEST = 5
"""Learners in a class whose bets are counted; in a smaller one a count would name somebody."""


@dataclass(frozen=True, slots=True)
class Count:
    """The bets of a class on one pick.

    Parameters
    ----------
    pick : Words
        What was asked.
    bets : tuple of Bet
        The first bet of each learner who made one; those on an older question are left out.
    """

    pick: Words
    bets: tuple[Bet, ...]

    def __str__(self) -> str:
        counted = Counter(bet.bet for bet in self.bets)
        sure = Counter(bet.bet for bet in self.bets if bet.sure)
        told = [self._told(bet, count, sure[bet]) for bet, count in counted.most_common()]
        return f"{self.pick.name}: {'; '.join(told)}"

    def _told(self, bet: str, count: int, sure: int) -> str:
        name = "no idea" if bet == NO_IDEA else named(self.pick, bet)
        right = " (right)" if is_right(self.pick, bet) else ""
        return f"{name}{right} {count}" + (f", {sure} of them sure" if sure else "")


def counted(files: Iterable[PickFile]) -> list[Count]:
    """Count the bets of a class, in the order of the pages.

    Raises
    ------
    SeatworkError
        If there are fewer than five learners.
    """
    found = list(files)
    if len(found) < FEWEST:
        fault = f"bets are counted for {FEWEST} learners or more, and {len(found)} were found"
        raise SeatworkError("the bets", fault, "name the folder with all their answers")
    rows = [
        Count(
            pick,
            tuple(bet for file in found if (bet := file.bets.get(name)) and fits(pick, bet.bet)),
        )
        for name, pick in every().items()
    ]
    return [row for row in rows if row.bets]
