"""School: what serves many at once: the courses of several rooms, a room of learners on a hub.

``marking_rooms`` hands out and marks by many processes or one. ``hub_recipe`` writes a folder that
sets JupyterHub up, ``learner_server`` is what it starts for each learner, ``hub_folders`` keeps
their folders apart.
"""

from seatwork.doors import doors

NAMES = {
    "layout": "Room rooms",
    "marking_rooms": "RoomMarked mark_rooms",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
