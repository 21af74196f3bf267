from seatwork.notes.callout import Assumption as Assumption
from seatwork.notes.callout import Callout as Callout
from seatwork.notes.callout import NoteError as NoteError
from seatwork.notes.callout import NoteWarning as NoteWarning
from seatwork.notes.features import Chamfer as Chamfer
from seatwork.notes.features import Counterbore as Counterbore
from seatwork.notes.features import Counterdrill as Counterdrill
from seatwork.notes.features import Countersink as Countersink
from seatwork.notes.features import EdgeBreak as EdgeBreak
from seatwork.notes.features import Feature as Feature
from seatwork.notes.features import Head as Head
from seatwork.notes.features import Hole as Hole
from seatwork.notes.features import Spotface as Spotface
from seatwork.notes.features import Thread as Thread
from seatwork.notes.reading import read as read
from seatwork.notes.sizes import Size as Size
from seatwork.notes.writing import write as write

NAMES: dict[str, str]
__all__: list[str]
