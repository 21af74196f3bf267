"""How one sitting of one learner stands, and the two house rules that decide what counts."""

from dataclasses import dataclass
from typing import NamedTuple

from seatwork.shop import rules

DUE_RULE, FIRST, LAST = "later until due", "first", "last"


@dataclass(frozen=True, slots=True)
class Counting:
    """The two house rules of the record.

    Parameters
    ----------
    sitting : {"best", "last"}
        Which sitting of a sheet counts.
    paper : {"later until due", "first", "last"}
        Which of several papers of one form counts.
    """

    sitting: str = "best"
    paper: str = DUE_RULE


def in_force() -> Counting:
    """Return the house rules of the record that are in force."""
    found = rules()
    return Counting(sitting=found.word("record.counts"), paper=found.word("record.two_papers"))


class Cell(NamedTuple):
    """One sitting of one learner.

    Parameters
    ----------
    word : str
        passed, not yet, needs a person, handed out, not here, excused, paper lost, void or
        withdrawn.
    points, of : float or None
        Points that count and points to be had [-]; None while a person must look, or where
        there is no paper.
    late : bool
        Whether the paper that counts came after the day.
    why : str
        What a person should look at, or the reason given for the word.
    sitting, form : int
        Which.
    """

    word: str
    points: float | None = None
    of: float | None = None
    late: bool = False
    why: str = ""
    sitting: int = 1
    form: int = 1

    @property
    def percent(self) -> float | None:
        """Share of the points that were earned [%]; None without points."""
        return 100 * self.points / self.of if self.points is not None and self.of else None
