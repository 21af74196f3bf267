"""The one door for units: shop text in, floats inside, both systems out.

Inside the project lengths are mm, angles degrees, surface speeds m/min, feeds mm/rev.
"""

from seatwork.doors import doors

NAMES = {
    "reading": "angle cutting_speed feed length number",
    "showing": (
        "explain rounded rounded_length show_angle show_both show_feed show_length show_note "
        "show_number show_speed show_spindle"
    ),
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
