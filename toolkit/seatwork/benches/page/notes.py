"""The notes below a bench: where its numbers come from, and what can hurt."""

from pathlib import Path
from typing import Any

import anywidget
import traitlets

from seatwork.benches.build.setup import Setup
from seatwork.benches.build.sourced import assumed_lines
from seatwork.live.view import LOOK
from seatwork.shop.folder import find
from seatwork.shop.house.cautions import cautions, closing

HERE = Path(__file__).parent
AS_READ = "House rules and lists are those that stood when this cell ran."
OUTDATED = "A house rule or a list was saved since this cell ran: run the cell again to use it."
TITLES = {"sources": "Where the numbers come from", "cautions": "Before you cut"}


class Notes(anywidget.AnyWidget):
    """Two boxes, closed until asked for, below a line that says when the shop's files are newer.

    A box with nothing in it is left out.

    Parameters
    ----------
    bench : Setup
        Gives the sources of its numbers and the names of its cautions.
    """

    _esm = HERE / "notes.js"
    _css = LOOK

    titles = traitlets.Dict(TITLES).tag(sync=True)
    sources = traitlets.List(traitlets.Unicode()).tag(sync=True)
    cautions = traitlets.List(traitlets.Dict()).tag(sync=True)
    closing = traitlets.Unicode().tag(sync=True)
    outdated = traitlets.Unicode().tag(sync=True)

    def __init__(self, bench: Setup[Any]) -> None:
        folder = find()
        boxes = cautions(*bench.cautions, folder=folder) if bench.cautions else ()
        shown = [
            {"title": b.title, "hazard": b.hazard, "doing": list(b.do), "number": b.number}
            for b in boxes
        ]
        super().__init__(cautions=shown, closing=closing(folder))
        self.renew(bench)

    def renew(self, bench: Setup[Any]) -> None:
        """Show where the numbers of the moment come from, and what was taken for granted."""
        assumed = assumed_lines(bench.controls, bench.values)
        self.sources = [*assumed, *bench.sources(bench.result), AS_READ]

    def compare(self, bench: Setup[Any]) -> None:
        """Say when a rule or a list was saved since the bench read them."""
        self.outdated = OUTDATED if bench.as_read.outdated else ""
