"""The class as a table of buttons on the page."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.live.keys import with_keys

HERE = Path(__file__).parent
NONE = [-1, -1]
"""Row and column where no cell is chosen."""


class TermLook(anywidget.AnyWidget):
    """Brings the look of the term into a page; it shows nothing of its own."""

    _esm = "export default { render() {} }"
    _css = HERE / "term.css"


class Grid(anywidget.AnyWidget):
    """Rows of cells, of which those with a label can be pressed.

    Parameters
    ----------
    pressed : callable
        Called with the row and the column of a cell that was pressed, both from 0.
    """

    _esm = with_keys(HERE / "grid.js")
    _css = HERE / "term.css"

    grid = traitlets.Dict().tag(sync=True)
    chosen = traitlets.List(NONE).tag(sync=True)

    def __init__(self, pressed: Callable[[int, int], None]) -> None:
        self._pressed = pressed
        super().__init__()
        self.on_msg(self._hear)

    def _hear(self, _widget: Any, content: dict[str, Any], _buffers: Any) -> None:
        row, column = content.get("row"), content.get("column")
        if type(row) is int and type(column) is int:
            self._pressed(row, column)
