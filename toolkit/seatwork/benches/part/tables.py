"""Blocks of a heading and a table on the page; every word is set as text."""

from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.live.view import LOOK

HERE = Path(__file__).parent


class Tables(anywidget.AnyWidget):
    """Some blocks, each a heading with a table.

    Parameters
    ----------
    told : bool
        Whether a screen reader tells them when they change.
    """

    _esm = HERE / "tables.js"
    _css = LOOK

    blocks = traitlets.List(traitlets.Dict()).tag(sync=True)
    told = traitlets.Bool(False).tag(sync=True)

    def show(self, blocks: list[dict[str, Any]]) -> None:
        """Show other blocks; the same ones send nothing."""
        self.blocks = blocks
