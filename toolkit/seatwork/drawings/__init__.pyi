from seatwork.drawings.scene import Drawing as Drawing
from seatwork.drawings.scene import Look as Look
from seatwork.drawings.scene import Scene as Scene
from seatwork.drawings.section import Section as Section

NAMES: dict[str, str]
__all__: list[str]
