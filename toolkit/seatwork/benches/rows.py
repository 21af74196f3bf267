"""The control row: a range, minus, plus and a box that reads shop text."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.benches.controls import Number

HERE = Path(__file__).parent


class ControlRow(anywidget.AnyWidget):
    """One number under the hand; whole steps on the page, exact values in here.

    Parameters
    ----------
    number : Number
        What the row sets.
    asked : callable
        Called with the row and what is wanted: a value [unit of the number's kind] or a text.
        It returns a sentence of trouble, or an empty text.

    Notes
    -----
    The page asks one thing at a time and keeps only the latest of what waits, so that no
    backlog can grow; every question is answered, also when it led to trouble.
    """

    _esm = HERE / "row.js"
    _css = HERE / "bench.css"

    spec = traitlets.Dict().tag(sync=True)
    now = traitlets.Dict().tag(sync=True)

    def __init__(self, number: Number, asked: Callable[["ControlRow", float | str], str]) -> None:
        self._asked = asked
        self.number = number
        self._value = number.start
        self._system = "inch"
        self._answering = False
        super().__init__()
        self.on_msg(self._hear)

    def lay(self, value: float, system: str) -> None:
        """Show a value in a unit system; the range is marked in its steps."""
        self._system = system
        low, high = self.number.steps(system)
        self.spec = {
            "label": self.number.label,
            "low": low,
            "high": high,
            "page": self.number.page,
        }
        self.show(value)

    def show(self, value: float, asked: str = "", trouble: str = "") -> None:
        """Show a value, as the answer to a question if there was one."""
        self._value = value
        if self._answering and not asked:
            return
        sort = self.number.sort
        self.now = {
            "step": self.number.step(value, self._system),
            "text": sort.show(value, self._system),
            "value": sort.both(value, self._system),
            "asked": asked,
            "trouble": trouble,
        }

    def _hear(self, _widget: Any, content: dict[str, Any], _buffers: Any) -> None:
        """Do what the page asks; answer in any case, for it waits."""
        trouble = "This row lost its bench; run the cell again."
        self._answering = True
        try:
            trouble = self._asked(self, self._wanted(content))
        finally:
            self._answering = False
            self.show(self._value, str(content["asked"]), trouble)

    def _wanted(self, content: dict[str, Any]) -> float | str:
        if "typed" in content:
            return str(content["typed"])
        return self.number.at(int(content["step"]), self._system)
