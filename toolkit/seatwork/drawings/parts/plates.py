"""A hatched plate whose outline moves: metal lies still, and paper covers what is not metal.

So a step of the hand sets one path and one line, and the hatch never swims.
"""

from collections.abc import Sequence

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import PathPatch, Polygon
from matplotlib.path import Path

from seatwork.drawings.strokes.linework import Points, joined
from seatwork.drawings.strokes.metal import LENGTH, WAVE, Window, hatching
from seatwork.drawings.strokes.style import POINTS, Style

MARGIN = 3.0
"""How far the cover runs beyond the waves at the sides [page units]."""


class Plate:
    """Metal in section with a hole through it.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Colors and weights.
    window : Window
        The most that is ever metal; its `face` is the top of that. Both sides are broken off.
    """

    def __init__(self, axes: Axes, style: Style, window: Window) -> None:
        colors, thin = style.colors, style.sizes.thin * POINTS
        left, right = (_side(x, window) for x in (window.left, window.right))
        fill = Polygon(np.concatenate([left, right[::-1]]), facecolor=colors.metal, linewidth=0)
        hatch = Line2D(*hatching(window, style.sizes.hatch).T, color=colors.hatch, linewidth=thin)
        breaks = Line2D(*joined([left, right]).T, color=colors.ink, linewidth=thin)
        for step, still in enumerate((fill, hatch, breaks)):
            still.set_zorder(1.0 + step / 10)
            axes.add_artist(still)
        hatch.set_clip_path(fill)
        beyond = WAVE + MARGIN
        self._frame = np.array(
            [
                (window.left - beyond, window.bottom - beyond),
                (window.right + beyond, window.bottom - beyond),
                (window.right + beyond, window.face + beyond),
                (window.left - beyond, window.face + beyond),
            ]
        )
        self.cover = PathPatch(Path(np.zeros((1, 2))), facecolor=colors.paper, linewidth=0)
        self.edges = Line2D([], [], color=colors.ink, linewidth=style.sizes.edge * POINTS)
        moving: tuple[Artist, ...] = (self.cover, self.edges)
        for step, artist in enumerate(moving):
            artist.set(zorder=1.6 + step / 2, animated=True)
            axes.add_artist(artist)

    def move(self, pieces: Sequence[Points], edges: Sequence[Points]) -> None:
        """Show metal.

        Parameters
        ----------
        pieces : sequence of ndarray
            Shape (n, 2) each [page units]: outlines of the metal, clockwise; a side that is
            broken off runs to `outside`.
        edges : sequence of ndarray
            Shape (n, 2) each [page units]: its visible edges.
        """
        paths = [Path(_closed(outline), closed=True) for outline in (self._frame, *pieces)]
        self.cover.set_path(Path.make_compound_path(*paths))
        self.edges.set_data(*joined(list(edges)).T.tolist())

    @property
    def outside(self) -> tuple[float, float]:
        """Where broken sides lie, on the left and on the right [page units]."""
        return float(self._frame[0, 0]), float(self._frame[1, 0])


def _side(x: float, window: Window) -> Points:
    """Give the wave in which a side is broken off, from the bottom up."""
    up = np.linspace(window.bottom, window.face, 61)
    return np.column_stack([x + WAVE * np.sin(2 * np.pi * (up - window.bottom) / LENGTH), up])


def _closed(outline: Points) -> Points:
    return np.concatenate([outline, outline[:1]])
