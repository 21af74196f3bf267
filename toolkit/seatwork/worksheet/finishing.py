"""The end of a worksheet: done, or not yet in one clean line."""

from collections.abc import Mapping

from seatwork.errors import SeatworkError
from seatwork.questions import Verdict


class NotYet(SeatworkError):
    """A worksheet that is not done: one line, without a traceback."""

    def __init__(self, title: str, left: str) -> None:
        super().__init__(title, f"not yet, {left}", "answer and run this cell again")

    def _render_traceback_(self) -> list[str]:
        return [str(self)]


class Finished:
    """A worksheet that is done; shows one sentence."""

    def __init__(self, sentence: str) -> None:
        self.sentence = sentence

    def __repr__(self) -> str:
        return self.sentence


def open_points(verdicts: Mapping[str, tuple[Verdict, ...]]) -> str:
    """Return which questions are open and why; empty if all are right."""
    blank = [name for name, found in verdicts.items() if any(v.kind == "blank" for v in found)]
    wrong = [
        name
        for name, found in verdicts.items()
        if name not in blank and not all(verdict.is_right for verdict in found)
    ]
    lines = ((blank, "not answered"), (wrong, "not right"))
    return ", ".join(f"{words}: {' '.join(names)}" for names, words in lines if names)
