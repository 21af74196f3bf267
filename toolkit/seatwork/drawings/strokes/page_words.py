"""Words of a picture that change with the part."""

from typing import Any

from matplotlib.axes import Axes
from matplotlib.text import Text

from seatwork.drawings.strokes.style import FONT, Style

HEADING, SECOND, FOOT = 672.0, 628.0, 24.0
"""Where the heading, the line below it and the foot line stand [page units]."""


def word(axes: Axes, style: Style, x: float, y: float, **wanted: Any) -> Text:
    """Add an empty text that moves.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Colors and type.
    x, y : float
        Where it stands, by its middle and its baseline if nothing else is wanted [page units].
    **wanted
        Properties of the text.
    """
    looks: dict[str, Any] = {
        "color": style.colors.ink,
        "fontsize": style.sizes.text,
        "family": FONT,
        "ha": "center",
        "animated": True,
        "zorder": 6.0,
    }
    text = Text(x, y, "", **(looks | wanted))
    axes.add_artist(text)
    return text


def heading(axes: Axes, style: Style) -> Text:
    """Add the large line on top."""
    return word(axes, style, 640.0, HEADING, fontsize=style.sizes.large, fontweight="bold")
