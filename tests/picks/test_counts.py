"""The bets of a class: counted without names, for five learners or more."""

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking.pick_file import Bet, PickFile
from seatwork.picks.counts import counted


def of_class(bets: str) -> list[PickFile]:
    """Give one learner for each letter bet; a letter in capitals was fairly sure."""
    return [
        PickFile(f"L{n:02}", {"angle-eight": Bet(bet.lower(), True if bet.isupper() else None)})
        for n, bet in enumerate(bets, 1)
    ]


def test_bets_are_counted_by_choice() -> None:
    """The most frequent first, with how many were sure, and which one is right."""
    (row,) = counted(of_class("aaAcC?"))
    assert str(row) == ("angle-eight: a 3, 1 of them sure; c (right) 2, 1 of them sure; no idea 1")


def test_a_small_class_is_not_counted() -> None:
    """With four learners a count would name somebody."""
    with pytest.raises(SeatworkError, match="5 learners or more"):
        counted(of_class("aabc"))
