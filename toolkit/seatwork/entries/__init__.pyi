from seatwork.entries.asked import AskedChoice as AskedChoice
from seatwork.entries.asked import AskedNumber as AskedNumber
from seatwork.entries.asked import AskedOrder as AskedOrder
from seatwork.entries.asked import echo as echo
from seatwork.entries.typed import Typed as Typed
from seatwork.entries.typed import read as read

NAMES: dict[str, str]
__all__: list[str]
