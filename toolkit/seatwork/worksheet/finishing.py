"""The end of a worksheet: done, or not yet in one clean line."""

import sys
from collections.abc import Mapping, Sequence
from types import TracebackType
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.speaking import Speaker
from seatwork.questions import Verdict
from seatwork.rows import plain


class NotYet(SeatworkError):
    """A worksheet that is not done: one line, without a traceback.

    An error all the same, so that a page run cell by cell fails, and a script ends with 1. In
    plain Python `sys.excepthook` is what tells it, so that is asked to when the first is made.
    """

    def __init__(self, title: str, left: str, say: Speaker = str) -> None:
        remedy = say("answer and run this cell again")
        super().__init__(say(title), say("not yet, {left}").format(left=left), remedy)
        _tell_in_one_line()

    def _render_traceback_(self) -> list[str]:
        return [str(self)]


def _tell_in_one_line() -> None:
    """Have plain Python tell `NotYet` in its line, and every other error as before."""
    before = sys.excepthook
    if getattr(before, "tells_not_yet", False):
        return

    def tell(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if isinstance(error, NotYet):
            sys.stderr.write(f"{error}\n")
        else:
            before(kind, error, trace)

    tell.tells_not_yet = True  # type: ignore[attr-defined]
    sys.excepthook = tell


class Finished:
    """A worksheet that is done; shows one sentence."""

    def __init__(self, sentence: str) -> None:
        self.sentence = sentence

    def __repr__(self) -> str:
        return self.sentence


def open_points(verdicts: Mapping[str, tuple[Verdict, ...]], say: Speaker = str) -> str:
    """Return which questions are open and why; empty if all are right."""
    blank = [name for name, found in verdicts.items() if any(v.kind == "blank" for v in found)]
    wrong = [
        name
        for name, found in verdicts.items()
        if name not in blank and not all(verdict.is_right for verdict in found)
    ]
    lines = ((blank, "not answered"), (wrong, "not right"))
    return ", ".join(f"{say(words)}: {' '.join(names)}" for names, words in lines if names)


def show_to_go(names: Sequence[str], words: Mapping[str, str]) -> None:
    """Show which questions are to go, as one plain line; the page hides the error below it."""
    from IPython import display as shown

    key = "form.one_to_go" if len(names) == 1 else "form.to_go"
    line = words[key].format(count=len(names), names=" ".join(names))
    display: Any = shown.display
    marked = f'<span class="seatwork-to-go">{plain(line)}</span>'
    display({"text/plain": line, "text/markdown": marked}, raw=True)
