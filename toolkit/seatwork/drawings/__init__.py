"""Drawings of seats: sections, views from above and their text twins."""

from seatwork.doors import doors

NAMES = {
    "scene": "Drawing Look Scene",
    "section": "Section",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
