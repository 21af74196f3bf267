"""What the scenes of the benches share: what they begin with, and how a word is set."""

from typing import Any, Generic, TypeVar

from matplotlib.axes import Axes
from matplotlib.text import Text

from seatwork.drawings.scene import Look
from seatwork.drawings.strokes.style import FONT, style

PartT = TypeVar("PartT")


class View(Generic[PartT]):
    """A scene as it begins, see `seatwork.drawings.scene`; each kind draws and moves its own.

    Parameters
    ----------
    part : object
        What to begin with.
    look : Look, optional
        Units, palette, size.
    """

    def __init__(self, part: PartT, look: Look | None = None) -> None:
        self.part = part
        self.look = look or Look()
        self.style = style(self.look)

    def _word(self, axes: Axes, x: float, y: float, *, moves: bool = True, **looks: Any) -> Text:
        """Add an empty text in the style's ink and size, centered; `looks` may say otherwise."""
        text = axes.text(x, y, "", fontfamily=FONT, zorder=5.3 if moves else 1.1, animated=moves)
        basics = {"color": self.style.colors.ink, "fontsize": self.style.sizes.text, "ha": "center"}
        text.set(**basics | looks)
        return text
