"""Commands: what people type in a terminal; each is a thin cover over a room."""

from seatwork.cli.program import main

__all__ = ["main"]
