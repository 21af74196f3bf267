"""The one door for units: shop text in, floats inside, both systems out.

Inside the project lengths are mm, angles degrees, surface speeds m/min, feeds mm/rev.
"""

from seatwork.units.reading import angle, cutting_speed, feed, length, number
from seatwork.units.showing import (
    explain,
    rounded,
    rounded_length,
    show_angle,
    show_both,
    show_feed,
    show_length,
    show_note,
    show_number,
    show_speed,
    show_spindle,
)

__all__ = [
    "angle",
    "cutting_speed",
    "explain",
    "feed",
    "length",
    "number",
    "rounded",
    "rounded_length",
    "show_angle",
    "show_both",
    "show_feed",
    "show_length",
    "show_note",
    "show_number",
    "show_speed",
    "show_spindle",
]
