"""The benches of a lesson as its page plays them: recorded, and put where their stills stand."""

from collections.abc import Mapping
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.live.view import PICTURE
from seatwork.takehome.blocks import json_block, policy, script, style
from seatwork.takehome.calls import BenchCall, bench_call
from seatwork.takehome.choices import pictures
from seatwork.takehome.recording import record


class Moving:
    """What `opening.export` asks for the benches of one page.

    Cells are read, never run. A bench that shows other numbers now than its stored still, since
    lists or rules were changed after the page was saved, keeps its still and is told in `doubts`.
    """

    def __init__(self) -> None:
        self.blocks: list[str] = []
        self.doubts: list[str] = []

    def place(self, source: str, still: str) -> str:
        """Return the name of a bench's block; empty where a cell keeps its still.

        Parameters
        ----------
        source : str
            Text of the cell.
        still : str
            What its stored picture shows, in words.
        """
        call = bench_call(source)
        told = self._told(call, still) if call else None
        if told is None:
            return ""
        name = f"bench-{len(self.blocks) + 1}"
        self.blocks.append(json_block(name, told))
        return name

    def _told(self, call: BenchCall, still: str) -> Mapping[str, Any] | None:
        try:
            bench = call.bench()
            if bench.text.strip() != still.strip():
                self.doubts.append(
                    f"{call.name}: its picture stays still, since it shows other numbers now than "
                    "when the page was saved; run the page, save it, and export it again"
                )
                return None
            recording = record(bench)
            return recording.told if recording else pictures(bench)
        except SeatworkError as error:
            self.doubts.append(f"{call.name}: its picture stays still ({error})")
            return None

    @property
    def code(self) -> str:
        """The script of the page; empty where nothing moves."""
        return script("unpack.js", "player.js", before=PICTURE) if self.blocks else ""

    @property
    def style(self) -> str:
        """The style of what moves."""
        return style("player.css") if self.blocks else ""

    @property
    def policy(self) -> str:
        """What the page may do."""
        return policy(self.code)
