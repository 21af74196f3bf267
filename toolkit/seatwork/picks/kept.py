"""Where bets are kept: one file of a learner, whole, under the folder's lock."""

from pathlib import Path

from seatwork import files
from seatwork.marking import given
from seatwork.marking.pick_file import Bet, PickFile, reopen
from seatwork.shop.folder import find


class KeptBets:
    """The bets of one learner.

    Parameters
    ----------
    learner : str
        Whose they are.
    folder : Path or None
        Where they are kept; None to keep them nowhere.
    """

    def __init__(self, learner: str, folder: Path | None) -> None:
        self.learner = learner
        self.folder = folder

    def of(self, pick: str) -> Bet | None:
        """Return the first bet on a pick; None before any.

        Raises
        ------
        SeatworkError
            If the file cannot be read.
        """
        return reopen(self.learner, self.folder).bets.get(pick) if self.folder else None

    def keep(self, pick: str, bet: Bet) -> None:
        """Keep a bet, unless there is one on this pick already.

        Raises
        ------
        SeatworkError
            If the file is damaged, or the folder cannot be written; nothing is changed then.
        """
        if self.folder is None:
            return
        try:
            files.make_folder(self.folder)
        except OSError as error:
            raise files.refusal(self.folder, error) from error
        with files.lock(self.folder):
            found: PickFile = reopen(self.learner, self.folder)
            if pick not in found.bets:
                found.with_bet(pick, bet).save(self.folder)


def mine() -> KeptBets:
    """Return the bets of whoever sits here; outside of a workbook nothing is written."""
    workbook = find()
    learner = given.whose(Path.cwd(), workbook)
    return KeptBets(learner, workbook / "answers" if workbook else None)
