"""A countersink in section with its screw, as artists that move: used large, small, enlarged."""

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Patch, PathPatch, Polygon
from matplotlib.path import Path

from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.parts.underside import Underside
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import BREAK, Points, joined
from seatwork.drawings.strokes.metal import BELOW_BREAK, Window
from seatwork.drawings.strokes.style import CENTER_DASHES, POINTS, Style
from seatwork.seats import Countersink, Fit

ABOVE = 22.0
"""How far a centerline runs past the part [page units]."""


class SeatView:
    """Moving artists of one section.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Colors and weights.
    order : float
        Stacking order of the lowest artist; the next three are used [-].
    clip : matplotlib.patches.Patch, optional
        Border that cuts the view off.
    """

    def __init__(
        self, axes: Axes, style: Style, *, order: float = 2.0, clip: Patch | None = None
    ) -> None:
        colors, sizes = style.colors, style.sizes
        edge, nowhere = sizes.edge * POINTS, np.zeros((3, 2))
        self.cavity = Polygon(nowhere, facecolor=colors.paper, linewidth=0)
        self.walls = Line2D([], [], color=colors.ink, linewidth=edge)
        self.screw = PathPatch(
            Path(nowhere), facecolor=colors.screw, edgecolor=colors.ink, linewidth=edge
        )
        self.center = Line2D([], [], color=colors.center, linewidth=sizes.thin * POINTS)
        self.center.set_linestyle(CENTER_DASHES)
        self.land = Line2D([], [], color=colors.contact, linewidth=1.8 * sizes.contact * POINTS)
        self.rings = _rings(style)
        self._underside = Underside(axes, style, clip)
        for step, artist in enumerate(self.artists):
            artist.set_zorder(order + step / 2)
            artist.set_animated(True)
            axes.add_artist(artist)
            if clip is not None:
                artist.set_clip_path(clip)

    @property
    def artists(self) -> tuple[Artist, ...]:
        """The moving artists, lowest first."""
        return self.cavity, self.walls, self.screw, self.center, self.land, self.rings

    def move(self, part: SeatedHead, found: Fit, window: Window) -> None:
        """Show `part`, lying as `found` says, in `window`, and mark where it touches."""
        self.place(part, found.amount, window)
        self._mark(contact_points(part.in_plate, found), window)

    def place(self, part: SeatedHead, amount: float, window: Window) -> None:
        """Show `part` in `window`, its head `amount` [mm] above the face."""
        seat = part.seat
        lowest = min(window.deepest, -seat.depth) - BELOW_BREAK / window.scale
        opening = profiles.countersink_wall(seat, lowest)
        self._underside.show(window, part, amount)
        self.cavity.set_xy(window.to_page(profiles.whole(opening)))
        _set(self.walls, self._visible_edges(seat, window))
        shank = profiles.shank_diameter(part.head, seat)
        outline = profiles.head_points(part.head, shank, amount, lowest)
        self.screw.set_path(Path(window.to_page(outline), profiles.HEAD_CODES))
        top = window.spot(0.0, max(amount, 0.0))[1] + ABOVE
        self.center.set_data([window.axis] * 2, [top, window.bottom - ABOVE])

    def _visible_edges(self, seat: Countersink, window: Window) -> Points:
        """Face, walls and the edge of the hole, the part of them behind the screw included."""
        wall = profiles.countersink_wall(seat, min(window.deepest, -seat.depth))
        hole_edge = wall[1] * np.array([[-1.0, 1.0], [1.0, 1.0]])
        lines = joined([*profiles.left_and_right(wall), hole_edge])
        face = np.array([(window.left, window.face), (window.right, window.face)])
        return joined([face, window.to_page(lines)])

    def _mark(self, contact: Points, window: Window) -> None:
        """Draw the land that carries, or a ring where only a line does."""
        spots = window.to_page(joined(profiles.left_and_right(contact)))
        on_a_line = len(contact) == 1
        _set(self.land, BREAK if on_a_line else spots)
        _set(self.rings, spots if on_a_line else BREAK)


def contact_points(seat: Countersink, found: Fit) -> Points:
    """Where head and seat touch, right of the axis [mm]: one point, or both ends of the land."""
    upper = (found.contact_diameter / 2, -found.contact_depth)
    if found.contact == "cone":
        return np.array([upper, (found.inner_diameter / 2, -seat.depth)])
    return np.array([upper])


def _rings(style: Style) -> Line2D:
    weight = style.sizes.contact * POINTS
    rings = Line2D([], [], linestyle="none", marker="o", markersize=3.4 * weight)
    rings.set_markerfacecolor("none")
    rings.set_markeredgecolor(style.colors.contact)
    rings.set_markeredgewidth(0.8 * weight)
    return rings


def _set(line: Line2D, points: Points) -> None:
    line.set_data(*points.T.tolist())
