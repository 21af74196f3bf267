"""The control row: a range, minus, plus and a box that reads shop text."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.benches.build.controls import Number
from seatwork.live.view import LOOK

HERE = Path(__file__).parent
RowState = dict[str, Any]


class ControlRow(anywidget.AnyWidget):
    """One number under the hand; whole steps on the page, exact values in here.

    Parameters
    ----------
    number : Number
        What the row sets.
    asked : callable
        Called with the row, what is wanted (a value [unit of the number's kind] or a text) and
        the page's name for the question. Every question must be answered, by ``shown``.

    Notes
    -----
    The page asks one thing at a time and keeps only the latest of what waits, so that no
    backlog can grow. Answers travel with the picture, in one message; ``now`` is what a page
    finds that joins.
    """

    _esm = HERE / "row.js"
    _css = LOOK

    spec = traitlets.Dict().tag(sync=True)
    now = traitlets.Dict().tag(sync=True)

    def __init__(
        self, number: Number, asked: Callable[["ControlRow", float | str, str], None]
    ) -> None:
        self._asked = asked
        self.number = number
        self.state: RowState = {}
        self._system = "inch"
        super().__init__()
        self.on_msg(self._hear)

    def lay(self, value: float, system: str) -> None:
        """Show a value in a unit system; the range is marked in its steps."""
        self._system = system
        self._span(value)
        self.now = self.shown(value)

    def _span(self, value: float) -> None:
        """Mark the range in steps, stretched where a value lies beyond it."""
        low, high = self.number.steps(self._system, value)
        page = self.number.page
        spec = {"name": self.number.name, "label": self.number.label, "page": page}
        self.spec = spec | {"low": low, "high": high}

    def shown(self, value: float, asked: str = "", trouble: str = "") -> RowState:
        """Return what the page should show for a value, as the answer to a question if any."""
        sort = self.number.sort
        step = self.number.step(value, self._system)
        if not self.spec["low"] <= step <= self.spec["high"]:
            self._span(value)
        self.state = {
            "step": step,
            "text": sort.boxed(value, self._system),
            "value": sort.both(value, self._system),
            "asked": asked,
            "trouble": trouble,
        }
        return self.state

    def _hear(self, _widget: Any, content: dict[str, Any], _buffers: Any) -> None:
        """Pass on what the page asks."""
        if "typed" in content:
            wanted: float | str = str(content["typed"])
        else:
            wanted = self.number.at(int(content["step"]), self._system)
        self._asked(self, wanted, str(content["asked"]))
