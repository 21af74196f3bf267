"""Print notes: read into what they say, and written in symbols, words or ISO form.

The grammar library is loaded at the first note that is read.
"""

from seatwork.notes.callout import Assumption, Callout, NoteError, NoteWarning
from seatwork.notes.features import (
    BoltCircle,
    Chamfer,
    Counterbore,
    Counterdrill,
    Countersink,
    EdgeBreak,
    Feature,
    Head,
    Hole,
    Spotface,
    Thread,
)
from seatwork.notes.reading import read
from seatwork.notes.sizes import Size
from seatwork.notes.writing import write

__all__ = [
    "Assumption",
    "BoltCircle",
    "Callout",
    "Chamfer",
    "Counterbore",
    "Counterdrill",
    "Countersink",
    "EdgeBreak",
    "Feature",
    "Head",
    "Hole",
    "NoteError",
    "NoteWarning",
    "Size",
    "Spotface",
    "Thread",
    "read",
    "write",
]
