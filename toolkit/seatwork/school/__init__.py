"""School: the courses of several rooms at once, handed out and marked by many processes or one."""

from seatwork.doors import doors

NAMES = {
    "layout": "Room rooms",
    "marking_rooms": "RoomMarked mark_rooms",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
