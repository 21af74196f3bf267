"""School: what serves many at once: the courses of several rooms, a room of learners on a hub.

``giving_rooms`` hands out and ``marking_rooms`` marks, by many processes or one; ``made_up`` tries
a sheet's slips with a made-up class. ``hub_recipe`` writes a folder that
sets JupyterHub up, ``learner_server`` is what it starts for each learner, ``hub_folders`` keeps
their folders apart.
"""

from seatwork.doors import doors

NAMES = {
    "giving_rooms": "RoomGiven hand_out_rooms",
    "layout": "Room rooms",
    "made_up": "SlipFigure slip_figures",
    "marking_rooms": "RoomMarked mark_rooms",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
