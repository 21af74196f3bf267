"""Two screws side by side: from above, where they look alike, and cut open, where they do not."""

from dataclasses import dataclass

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon

from seatwork.drawings.parts import words
from seatwork.drawings.parts.seat_view import SeatView
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.linework import Points, arc, joined
from seatwork.drawings.strokes.metal import Window, draw_metal
from seatwork.drawings.strokes.style import CENTER_DASHES, POINTS, page
from seatwork.drawings.view import View
from seatwork.seats import Fit

AXES = (350.0, 930.0)
HALF = 230.0
MIDDLE, WIDEST = 375.0, 350.0
FACE, BOTTOM, DEEPEST, HIGHEST = 510.0, 150.0, 300.0, 90.0
"""Heights of face and break of the sections; most a seat may go down and a head stand up."""

SOCKET = 0.3
"""Width across the flats of the hex socket drawn, as a share of the head."""

ABSENT = np.full((3, 2), np.nan)


@dataclass(frozen=True, slots=True, kw_only=True)
class Pair:
    """Two seated screws and what is said above them.

    Parameters
    ----------
    first, second : SeatedHead
        Number 1, on the left, and number 2.
    heading : str
        One line above the picture, short enough for a projector: 60 letters.
    """

    first: SeatedHead
    second: SeatedHead
    heading: str

    @property
    def parts(self) -> tuple[SeatedHead, SeatedHead]:
        """Both, from left to right."""
        return self.first, self.second

    def fits(self) -> tuple[Fit, Fit]:
        """How both lie in their seats."""
        return self.first.lies, self.second.lies


class _SideBySide(View[Pair]):
    """What both pictures share: the page, the heading and a line of words under each screw."""

    def _add_words(self, axes: Axes) -> None:
        sizes = self.style.sizes
        self._heading = self._word(axes, 640.0, 655.0, fontsize=sizes.large, fontweight="bold")
        self._numbers = [self._word(axes, x, 88.0, fontweight="bold") for x in AXES]
        self._under = [self._word(axes, x, 88.0 - self.style.line_height) for x in AXES]

    def _write(self, part: Pair, under: tuple[str, str]) -> None:
        self._heading.set_text(part.heading)
        for number, (name, line) in enumerate(zip(self._numbers, self._under, strict=True)):
            name.set_text(f"Number {number + 1}")
            line.set_text(under[number])


class FromAbove(_SideBySide):
    """Two screws seen from above: nothing tells which seat was cut with the wrong angle.

    Parameters
    ----------
    part : Pair
        The two to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the pair the scene was built with."""
        figure, axes = page(self.style.colors)
        for x in AXES:
            axes.add_artist(self._plate(x))
        self._heads = [self._head(axes, self.style.colors.screw) for _ in AXES]
        self._sockets = [self._head(axes, self.style.colors.paper, order=2.2) for _ in AXES]
        ink, weights = self.style.colors.ink, self.style.sizes
        self._rims = Line2D([], [], color=ink, linewidth=weights.edge * POINTS, zorder=2.1)
        self._crosses = Line2D([], [], linewidth=weights.thin * POINTS, zorder=2.3)
        self._crosses.set(color=self.style.colors.center, linestyle=CENTER_DASHES)
        for line in (self._rims, self._crosses):
            line.set_animated(True)
            axes.add_artist(line)
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: Pair) -> str:
        """Show another pair; return the text.

        Raises
        ------
        SeatworkError
            If a head cannot lie in its seat; the picture then stays as it was.
        """
        found = part.fits()
        scale = WIDEST / max(max(p.head.edge, p.seat.diameter) for p in part.parts)
        rims, crosses = [], []
        for x, one, head, socket in zip(AXES, part.parts, self._heads, self._sockets, strict=True):
            radius, rim = (scale * size / 2 for size in (one.head.edge, one.seat.diameter))
            head.set_xy(_circle(x, radius))
            socket.set_xy(_hexagon(x, SOCKET * radius))
            rims.append(_circle(x, rim))
            crosses += _cross(x, max(radius, rim) + 25.0)
        self._rims.set_data(*joined(rims).T.tolist())
        self._crosses.set_data(*joined(crosses).T.tolist())
        self._write(part, ("", ""))
        return words.from_above(found)

    def _plate(self, x: float) -> Polygon:
        """Make the face of the plate, which is not cut and so not hatched."""
        colors, across = self.style.colors, HALF - 10.0
        sides = np.array([(-1, -1), (1, -1), (1, 1), (-1, 1)]) * across + np.array([x, MIDDLE])
        weight = self.style.sizes.edge * POINTS
        return Polygon(
            sides, facecolor=colors.metal, edgecolor=colors.ink, linewidth=weight, zorder=1.0
        )

    def _head(self, axes: Axes, color: str, order: float = 2.0) -> Polygon:
        weight = self.style.sizes.edge * POINTS
        patch = Polygon(ABSENT, facecolor=color, edgecolor=self.style.colors.ink, linewidth=weight)
        patch.set(zorder=order, animated=True)
        axes.add_artist(patch)
        return patch


class CutOpen(_SideBySide):
    """The same two screws in section, with the contact marked on each.

    Parameters
    ----------
    part : Pair
        The two to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the pair the scene was built with."""
        figure, axes = page(self.style.colors)
        for x in AXES:
            draw_metal(axes, self.style, _window(x, 1.0))
        self._views = [SeatView(axes, self.style) for _ in AXES]
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: Pair) -> str:
        """Show another pair; return the text.

        Raises
        ------
        SeatworkError
            If a head cannot lie in its seat; the picture then stays as it was.
        """
        found = part.fits()
        scale = min(_scale(one, one_fit) for one, one_fit in zip(part.parts, found, strict=True))
        for x, view, one, one_fit in zip(AXES, self._views, part.parts, found, strict=True):
            view.move(one, one_fit, _window(x, scale))
        first, second = (" ".join(words.CONTACT_LABEL[one.contact]) for one in found)
        self._write(part, (first, second))
        return words.cut_open(part.parts, found, self.look.system)


def _window(x: float, scale: float) -> Window:
    return Window(axis=x, face=FACE, left=x - HALF, right=x + HALF, bottom=BOTTOM, scale=scale)


def _scale(part: SeatedHead, found: Fit) -> float:
    """Page units per mm at which one seat and its head fit."""
    widest = WIDEST / max(part.seat.diameter, part.head.edge)
    highest = HIGHEST / found.amount if found.amount > 0 else widest
    return min(widest, highest, DEEPEST / part.seat.depth)


def _circle(x: float, radius: float) -> Points:
    return arc((x, MIDDLE), radius, 0.0, 360.0)


def _hexagon(x: float, half_width: float) -> Points:
    """Corners of a hex socket, `half_width` from its middle to a flat."""
    return arc((x, MIDDLE), half_width / np.cos(np.pi / 6), 0.0, 360.0)[::10]


def _cross(x: float, reach: float) -> list[Points]:
    middle = np.array([x, MIDDLE])
    return [
        middle + reach * np.array([(-1, 0), (1, 0)]),
        middle + reach * np.array([(0, -1), (0, 1)]),
    ]
