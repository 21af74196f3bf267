"""Drawings of seats: sections, views from above and their text twins."""

from seatwork.doors import doors

NAMES = {
    "scene": "Drawing Look Scene",
    "section": "Section",
    "views.cut_seat": "SeatWithScrew seat_with_screw",
    "views.cut_shapes": "CutSeat",
    "views.triangle_view": "triangle",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
