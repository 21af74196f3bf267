"""A bench: a setup that shows itself, live, below the cell that names it."""

from typing import TypeVar

from seatwork.benches.build.setup import Setup, Values

__all__ = ["Bench", "Values"]

ResultT = TypeVar("ResultT")


class Bench(Setup[ResultT]):
    """A setup with a live view above a still picture; usable from code alone."""

    def _ipython_display_(self) -> None:
        from seatwork.benches.page.view import show

        show(self)
