"""The boss, the depth of its flat as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.castings import round_boss


def draw(question: Stated) -> Drawing:
    """Draw the boss, the depth of its flat as a question mark."""
    return round_boss(question.labels(boss="boss_diameter", diameter="diameter", depth="?"))
