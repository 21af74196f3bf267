"""Picks: a question that takes a bet first, and shows the answer after it.

    import seatwork as sw
    sw.pick("angle-eight")

The words stand in ``shop/defaults/picks.toml``; a page holds nothing that answers a bet.
"""

from seatwork.doors import doors

NAMES = {
    "asking": "pick",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
