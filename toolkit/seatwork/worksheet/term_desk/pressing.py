"""A press of a button: the work with its bar, what came of it in sentences, one at a time."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from time import monotonic
from typing import Any

import ipywidgets as widgets

from seatwork.errors import SeatworkError
from seatwork.units import explain
from seatwork.worksheet.boxes import status

Progress = Callable[[int], None]
Deed = Callable[[Progress], list[str]]
KEPT = 3
"""How many things that were said stay on the page, the newest first."""
AT_ONCE = 0.1
"""A press that is heard so soon after the work ended was made while it ran [s]."""
WRONG = "Nothing was changed that the record does not show. Something is wrong in the program"


class Pressing:
    """Does what buttons ask, one after the other, and says what came of it.

    A second press of a double click is passed over: the first is at work.

    Parameters
    ----------
    after : callable
        Called when a deed is done, or was refused.
    """

    def __init__(self, after: Callable[[], None]) -> None:
        self._after, self._said = after, list[list[str]]()
        self._busy, self._ended = False, -AT_ONCE
        self.buttons: list[Any] = []
        self.bar = widgets.IntProgress(layout=widgets.Layout(display="none", width="24em"))
        self.said = widgets.HTML()
        self.said.add_class("seatwork-told")

    def button(self, words: str, deed: Deed, count: Callable[[], int] | None = None) -> Any:
        """Return a button for a deed; `count` says of how many steps its bar is."""
        made = widgets.Button(description=words, layout=widgets.Layout(width="auto"))
        made.on_click(lambda _: self.press(words, deed, count))
        self.buttons.append(made)
        return made

    def press(self, words: str, deed: Deed, count: Callable[[], int] | None = None) -> None:
        """Do a deed, with a bar if it has steps, and say what came of it."""
        if self._busy or monotonic() - self._ended < AT_ONCE:
            return
        with self._at_work(words, count):
            self._say(words, _told(lambda: deed(self._step)))
            self._after()

    @contextmanager
    def _at_work(self, words: str, count: Callable[[], int] | None) -> Iterator[None]:
        self._busy = True
        for one in self.buttons:
            one.disabled = True
        if count is not None:
            self.bar.value, self.bar.max, self.bar.description = 0, max(count(), 1), ""
            self.bar.tooltip = words
            self.bar.layout.display = None
        self.said.value = status([f"{words}: at work …"])
        try:
            yield
        finally:
            self.bar.layout.display = "none"
            for one in self.buttons:
                one.disabled = False
            self._busy, self._ended = False, monotonic()
            self._show()

    def _step(self, done: int) -> None:
        self.bar.value = done
        self.bar.description = f"{done} of {self.bar.max}"

    def _say(self, words: str, lines: list[str]) -> None:
        self._said = [[f"{words}:", *lines], *self._said][:KEPT]

    def _show(self) -> None:
        self.said.value = status(line for lines in self._said for line in [*lines, ""])


def _told(work: Callable[[], list[str]]) -> list[str]:
    """Return what came of some work: its lines, or in one sentence why it was not done."""
    try:
        return work()
    except SeatworkError as error:
        return [f"Not done: {explain(error)}"]
    except Exception as error:  # no traceback on the page, and nothing of what was typed
        return [f"Not done. {WRONG} ({type(error).__name__}); seatwork doctor tells more."]
