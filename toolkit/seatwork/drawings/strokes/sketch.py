"""A plain drawing with words on leaders: metal, steel, lines and labels in page units."""

import textwrap
from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon

from seatwork.drawings.scene import Look
from seatwork.drawings.strokes.linework import Linework, Point, Points, joined, linework_patches
from seatwork.drawings.strokes.style import CENTER_DASHES, FONT, HIDDEN_DASHES, POINTS, page, style

HEIGHT = 430.0
"""Height of the page [page units]."""

AWAY = 10.0
"""Gap between a word and the start of its leader [page units]."""

LINE = 27.0
"""Height of one line of a label, the leader's gap included [page units]."""

WIDEST = 25
"""Most letters in one line of a label."""

Corners = Sequence[Point] | Points


class Sketch:
    """A page being drawn on.

    Parameters
    ----------
    words : mapping of str to (str, str)
        What to write for each term: a bold line, and the line below it.
    look : Look
        Palette and size.
    """

    def __init__(self, words: Mapping[str, tuple[str, str]], look: Look) -> None:
        self.words = dict(words)
        self.style = style(look)
        self.colors = self.style.colors
        self.figure, self.axes = page(self.colors, height=HEIGHT)
        self.work = Linework(self.style.sizes)
        self.shown: set[str] = set()

    def metal(self, corners: Corners, order: float = 1.0) -> None:
        """Fill cut metal, hatched, without an outline."""
        looks: dict[str, Any] = {"facecolor": self.colors.metal, "zorder": order}
        patch = Polygon(np.asarray(corners, dtype=float), linewidth=0, **looks)
        patch.set(hatch="/", edgecolor=self.colors.hatch)
        self.axes.add_artist(patch)

    def steel(self, corners: Corners, order: float = 3.0, *, plain: bool = False) -> None:
        """Fill a tool, a screw or a machine part with its outline."""
        fill = self.colors.paper if plain else self.colors.screw
        looks: dict[str, Any] = {"facecolor": fill, "edgecolor": self.colors.ink}
        width = self.style.sizes.edge * POINTS
        patch = Polygon(np.asarray(corners, dtype=float), linewidth=width, zorder=order, **looks)
        patch.set_joinstyle("round")
        self.axes.add_artist(patch)

    def edge(self, *lines: Corners, order: float = 3.5) -> None:
        """Draw visible edges."""
        self._draw(lines, self.style.sizes.edge, order, "-")

    def thin(self, *lines: Corners, order: float = 3.6) -> None:
        """Draw thin lines."""
        self._draw(lines, self.style.sizes.thin, order, "-")

    def hidden(self, *lines: Corners, order: float = 3.6) -> None:
        """Draw hidden edges, or where something was."""
        self._draw(lines, self.style.sizes.thin, order, HIDDEN_DASHES)

    def center(self, *line: Point) -> None:
        """Draw a centerline."""
        self._draw([line], self.style.sizes.thin, 4.0, CENTER_DASHES, self.colors.center)

    def contact(self, line: Corners) -> None:
        """Draw where two parts touch."""
        self._draw([line], self.style.sizes.contact * 1.4, 4.8, "-", self.colors.contact)

    def cannot_be(self, corners: Corners) -> None:
        """Fill what is out of limits, or metal in metal, cross-hatched."""
        looks: dict[str, Any] = {"facecolor": self.colors.contact, "edgecolor": self.colors.ink}
        patch = Polygon(np.asarray(corners, dtype=float), hatch="xxx", zorder=4.4, **looks)
        patch.set_linewidth(self.style.sizes.thin * POINTS)
        self.axes.add_artist(patch)

    def _draw(
        self, lines: Sequence[Corners], width: float, order: float, dashes: Any, color: str = ""
    ) -> None:
        points = joined([np.asarray(line, dtype=float) for line in lines])
        looks: dict[str, Any] = {"color": color or self.colors.ink, "zorder": order}
        self.axes.add_artist(Line2D(*points.T, linewidth=width * POINTS, linestyle=dashes, **looks))

    def arrow(self, *points: Point) -> None:
        """Draw an arrow through `points`."""
        self.work.leader(*points)

    def write(self, x: float, y: float, text: str, **wanted: Any) -> None:
        """Write a line that is no term."""
        looks: dict[str, Any] = {"fontfamily": FONT, "fontsize": self.style.sizes.text}
        looks |= {"color": self.colors.ink, "zorder": 6.0, "parse_math": False, "va": "center"}
        self.axes.text(x, y, text, **(looks | wanted))

    def label(
        self, term: str, x: float, y: float, tip: Point | None = None, ha: str = "left"
    ) -> None:
        """Write a term in both languages, with a leader to `tip`.

        Parameters
        ----------
        term : str
            Its English word; a term without words is left out.
        x, y : float
            The side of the words that faces the drawing, and the line between the two
            languages [page units].
        tip : (float, float), optional
            Where the leader points [page units]; no leader without it.
        ha : {"left", "right", "center"}
            Which side of the words `x` names.
        """
        if term not in self.words:
            return
        self.shown.add(term)
        first, second = self.words[term]
        self.write(x, y, first, ha=ha, va="bottom", fontweight="bold")
        second = textwrap.fill(second, WIDEST)
        self.write(x, y - 2.0, second, ha=ha, va="top", fontstyle="italic")
        if tip is not None:
            side = {"left": -AWAY, "right": AWAY, "center": 0.0}[ha]
            rise = (
                0.0 if side else (LINE if tip[1] > y else -LINE - 6.0 - LINE * second.count("\n"))
            )
            self.work.leader((x + side, y + rise), tip)

    def finish(self) -> None:
        """Put the thin lines on."""
        paths = (self.work.lines, self.work.heads)
        for patch, path in zip(linework_patches(self.axes, self.style), paths, strict=True):
            patch.set_path(path)
