"""Print notes: read into what they say, and written in symbols, words or ISO form.

The grammar library is loaded at the first note that is read.
"""

from seatwork.doors import doors

NAMES = {
    "reading": "read",
    "writing": "write",
    "callout": "Assumption Callout NoteError NoteWarning",
    "features": (
        "Chamfer Counterbore Counterdrill Countersink EdgeBreak Feature Head Hole Spotface Thread"
    ),
    "sizes": "Size",
}
"""The public names of each module."""

__all__, __getattr__, __dir__ = doors(__name__, NAMES)
