"""A pick: look, bet, lock, see. One line in a cell shows it."""

from typing import Any

from seatwork.picks.bench_of import before, opened
from seatwork.picks.still import markdown, told
from seatwork.picks.wording import Words, words
from seatwork.shop.house.house_rules import rules


class Pick:
    """A question that takes a bet; as text, the question alone.

    Parameters
    ----------
    words : Words
        What it asks and says.
    room : bool
        Whether a class bets by show of hands.
    """

    def __init__(self, words: Words, *, room: bool = False) -> None:
        self.words = words
        self.room = room

    def __repr__(self) -> str:
        return told(self.words)

    @property
    def is_open(self) -> bool:
        """Whether the house shows every answer at once, for preparing."""
        return rules().word("display.picks") == "open"

    def still(self) -> dict[str, Any]:
        """Return what stands in the file: plain text and Markdown, its answer in a closed fold."""
        shown = markdown(self.words, opened(self.words), before(self.words), opened=self.is_open)
        return {"text/plain": repr(self), "text/markdown": shown}

    def _ipython_display_(self) -> None:
        from IPython import display as shown

        from seatwork.picks.view import show

        display: Any = shown.display
        show(self.words, room=self.room, is_open=self.is_open)
        display(self.still(), raw=True)


def pick(name: str, *, room: bool = False) -> Pick:
    """Show a pick: a question, a bet, and what it covers until the bet is locked.

    Parameters
    ----------
    name : str
        Such as ``"angle-eight"``.
    room : bool
        For a class: hands are counted for each choice, in large type, and nothing is kept.

    Returns
    -------
    Pick
        The last line of a cell shows it. The first bet is kept in the workbook folder's
        ``answers/``, in a file that no mark is made of.

    Raises
    ------
    SeatworkError
        If no pick has that name.

    Examples
    --------
    >>> pick("angle-eight")
    Your pick. 82° head, 90° seat, right diameter. How will the head stand? a) flush; b) proud \
by a hair (.002); c) proud, you can feel it (about .018); d) below the face.
    """
    return Pick(words(name), room=room)
