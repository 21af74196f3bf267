"""A seat beside its hole: cut open with its screw, and seen from above with what touches."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Circle, PathPatch, Polygon
from matplotlib.path import Path

from seatwork.drawings.parts.beside_hole import (
    BesideHole,
    heading_of,
    leaning,
    standing,
    text_of,
)
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Linework, Points, joined, linework_patches
from seatwork.drawings.strokes.metal import BELOW_BREAK, Window, draw_metal
from seatwork.drawings.strokes.page_words import FOOT, SECOND, heading, word
from seatwork.drawings.strokes.style import CENTER_DASHES, HIDDEN_DASHES, POINTS, page
from seatwork.drawings.view import View
from seatwork.seats.cones import Countersink
from seatwork.units import show_angle, show_length

AXIS, HALF, FACE, BOTTOM = 400.0, 270.0, 430.0, 190.0
"""The plate cut open: the hole's axis on its face, half its width, its face and lower edge."""

ABOVE, SIDE = (990.0, 360.0), 195.0
"""Middle of the view from above, and half of the face that it shows."""

ACROSS, OVER = 330.0, 300.0
"""What the seat takes across, cut open and seen from above [page units]."""

NAMES, LABEL, LEADER = 118.0, 105.0, 14.0
"""Heights of the lines below the pictures, of the words above the face, and the leader's gap."""

UP = 12.0
"""How far a wall is drawn on above the face, where a lean may bring it down [mm]."""


class OnHoleView(View[BesideHole]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : BesideHole
        What to begin with.
    look : Look, optional
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        draw_metal(axes, self.style, _window(1.0))
        self._add_section(axes)
        self._add_plan(axes)
        self._lines, self._heads = linework_patches(axes, self.style, animated=True)
        self._heading = heading(axes, self.style)
        self._second = word(axes, self.style, 640.0, SECOND)
        self._sides = [word(axes, self.style, x, FACE + LABEL) for x in (150.0, 650.0)]
        step = self.style.line_height
        self._named, self._touches = (
            [word(axes, self.style, x, NAMES - row * step) for row in range(2)]
            for x in (AXIS, ABOVE[0])
        )
        for lines in (self._named, self._touches):
            lines[0].set_fontweight("bold")
        self._foot = word(axes, self.style, 640.0, FOOT)
        return Drawing(figure, self.move(self.part))

    def move(self, part: BesideHole) -> str:
        """Show another part; return the text."""
        window = _window(ACROSS / part.seat.diameter)
        self._show_section(part, window)
        self._show_plan(part, OVER / part.seat.diameter)
        self._point(part, window)
        self._write(part)
        return text_of(part, self.look.system)

    def _add_section(self, axes: Axes) -> None:
        colors, sizes = self.style.colors, self.style.sizes
        edge, thin = sizes.edge * POINTS, sizes.thin * POINTS
        nowhere = np.zeros((3, 2))
        self._cavity = Polygon(nowhere, facecolor=colors.paper, linewidth=0)
        self._walls = Line2D([], [], color=colors.ink, linewidth=edge)
        looks = {"facecolor": colors.screw, "edgecolor": colors.ink, "linewidth": edge}
        self._screw = PathPatch(Path(nowhere), **looks)
        self._center = Line2D([], [], color=colors.center, linewidth=thin, linestyle=CENTER_DASHES)
        self._land = Line2D([], [], color=colors.contact, linewidth=1.8 * sizes.contact * POINTS)
        parts: tuple[Artist, ...] = (
            self._cavity, self._walls, self._screw, self._center, self._land,
        )  # fmt: skip
        _moving(axes, parts, (2.0, 2.2, 3.0, 3.5, 3.6))

    def _add_plan(self, axes: Axes) -> None:
        colors, sizes = self.style.colors, self.style.sizes
        edge, thin = sizes.edge * POINTS, sizes.thin * POINTS
        sides = np.array([(-1, -1), (1, -1), (1, 1), (-1, 1)]) * SIDE + np.array(ABOVE)
        still: dict[str, Any] = {
            "facecolor": colors.metal,
            "edgecolor": colors.ink,
            "linewidth": thin,
        }
        axes.add_artist(Polygon(sides, zorder=1.0, **still))
        ink: dict[str, Any] = {"edgecolor": colors.ink, "linewidth": edge}
        self._mouth = Circle(ABOVE, 1.0, facecolor=colors.paper, **ink)
        self._arc = Polygon(np.zeros((3, 2)), facecolor=colors.contact, linewidth=0)
        self._hole = Circle(ABOVE, 1.0, facecolor=colors.hatch, **ink)
        self._head = Circle(ABOVE, 1.0, facecolor="none", edgecolor=colors.ink, linewidth=thin)
        self._head.set_linestyle(HIDDEN_DASHES)
        parts: tuple[Artist, ...] = (self._mouth, self._arc, self._hole, self._head)
        _moving(axes, parts, (2.0, 2.1, 2.2, 2.3))

    def _show_section(self, part: BesideHole, window: Window) -> None:
        turn, low = _Turn(part.lean), window.deepest - BELOW_BREAK / window.scale
        left, right = _walls(part, low, turn)
        self._cavity.set_xy(window.to_page(np.concatenate([left, right[::-1]])))
        visible = [_below_face(wall) for wall in (left, right)]
        lines = [window.to_page(line) for line in visible]
        ends = (window.left, window.right)
        face = [np.array([(e, window.face), (w[0][0], window.face)])
                for e, w in zip(ends, lines, strict=True)]  # fmt: skip
        self._walls.set_data(*joined([*face, *lines]).T.tolist())
        self._screw.set_visible(part.shown)
        if part.shown:
            outline = _screw(part, low, turn)
            self._screw.set_path(Path(window.to_page(outline), profiles.HEAD_CODES))
        above, under = (BOTTOM - 20.0 - FACE) / window.scale, 150.0 / window.scale
        centers = [turn.of(np.array([(x, above), (x, under)])) for x in (0.0, part.offset)]
        self._center.set_data(*joined([window.to_page(one) for one in centers]).T.tolist())
        touching = [window.to_page(turn.of(line)) for line in _touching(part)]
        self._land.set_data(*joined(touching).T.tolist())

    def _show_plan(self, part: BesideHole, scale: float) -> None:
        x, y = ABOVE
        self._mouth.set(center=(x + scale * part.offset, y), radius=scale * part.seat.diameter / 2)
        self._hole.set_radius(scale * part.seat.hole_diameter / 2)
        self._head.set(center=(x + scale * part.shift, y), radius=scale * part.head.edge / 2)
        self._head.set_visible(part.shown)
        self._arc.set_visible(part.shown)
        self._arc.set_xy(_piece(part, scale))

    def _point(self, part: BesideHole, window: Window) -> None:
        """Point from the words above the face to both sides of the head."""
        work = Linework(self.style.sizes)
        if part.shown:
            turn, reach = _Turn(part.lean), part.head.edge / 2
            for text, side in zip(self._sides, (-1, 1), strict=True):
                top = np.array([(part.shift + side * reach, part.lies.amount)])
                x, y = window.to_page(turn.of(top))[0]
                work.leader((text.get_position()[0], FACE + LABEL - LEADER), (x, y + 2.0))
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)

    def _write(self, part: BesideHole) -> None:
        """Set every word."""
        system, lies = self.look.system, part.lies
        beside = show_length(part.offset, system)
        self._heading.set_text(heading_of(part, system))
        self._second.set_text(f"Seat {beside} beside its hole; {leaning(part.lean)}")
        for text, height in zip(self._sides, (lies.high, lies.low), strict=True):
            text.set_text(standing(height, system) if part.shown else "")
        names = ("Cut open", f"the screw {part.held}" if part.shown else "the screw is not in yet")
        arc = f"touches over {show_angle(lies.arc, 0)} of 360°" if part.shown else ""
        touches = ("From above", arc)
        for lines, shown in ((self._named, names), (self._touches, touches)):
            for text, line in zip(lines, shown, strict=True):
                text.set_text(line)
        self._foot.set_text(f"{part.guided}.")


@dataclass(frozen=True, slots=True)
class _Turn:
    """The lean of hole, seat and screw: about the middle of the face, top to the right [deg]."""

    lean: float

    def of(self, points: Points) -> Points:
        """Turn points [mm]."""
        t = np.radians(self.lean)
        across = points @ np.array([np.cos(t), np.sin(t)])
        up = points @ np.array([-np.sin(t), np.cos(t)])
        return np.column_stack([across, up])

    def before(self, x: float, up: float) -> float:
        """Return where a point at `x` must lie along the hole to come out `up` high [mm]."""
        t = np.radians(self.lean)
        return float((up + x * np.sin(t)) / np.cos(t))


def _moving(axes: Axes, parts: tuple[Artist, ...], orders: tuple[float, ...]) -> None:
    for artist, order in zip(parts, orders, strict=True):
        artist.set_zorder(order)
        artist.set_animated(True)
        axes.add_artist(artist)


def _window(scale: float) -> Window:
    return Window(
        axis=AXIS, face=FACE, left=AXIS - HALF, right=AXIS + HALF, bottom=BOTTOM, scale=scale
    )


def _walls(part: BesideHole, low: float, turn: _Turn) -> tuple[Points, Points]:
    """Walls left and right of the axis, from over the face down past the break, turned [mm]."""
    seat, walls = part.seat, []
    for side in (-1, 1):
        mouth, hole = part.offset + side * seat.diameter / 2, side * seat.hole_diameter / 2
        corner = -seat.lower_by(abs(mouth - hole))
        wider = _wider(seat)
        top, end = (mouth + side * wider, UP), (hole, turn.before(hole, low))
        walls.append(turn.of(np.array([top, (hole, corner), end])))
    return walls[0], walls[1]


def _wider(seat: Countersink) -> float:
    """Give by how much a side of the cone is wider over the face, where it ends [mm]."""
    above = Countersink.from_depth(
        depth=UP, hole_diameter=seat.diameter, included_angle=seat.included_angle
    )
    return (above.diameter - seat.diameter) / 2


def _below_face(wall: Points) -> Points:
    """Cut a wall off at the face [mm]."""
    (x, y), (to_x, to_y) = wall[0], wall[1]
    share = y / (y - to_y)
    return np.concatenate([[(x + share * (to_x - x), 0.0)], wall[1:]])


def _screw(part: BesideHole, low: float, turn: _Turn) -> Points:
    """Outline of the screw, shifted and turned; its lower end lies level [mm]."""
    shank = min(part.body, part.seat.hole_diameter)
    points = profiles.head_points(part.head, shank, part.lies.amount, low)
    points = points + np.array([part.shift, 0.0])
    for point in points[points[:, 1] == low]:
        points[(points == point).all(axis=1), 1] = turn.before(point[0], low)
    return turn.of(points)


def _touching(part: BesideHole) -> list[Points]:
    """Lines down the cone where head and seat touch, left and right [mm]."""
    if not part.shown:
        return []
    seat = part.seat
    outer = min(part.head.edge / 2 + part.shift, seat.diameter / 2 + part.offset)
    sides = (-1, 1) if part.lies.arc == 360 else (-1,)
    lines = []
    for side in sides:
        mouth, hole = part.offset + side * seat.diameter / 2, side * seat.hole_diameter / 2
        end = max(mouth, part.shift - part.head.edge / 2) if side < 0 else outer
        heights = [-seat.lower_by(abs(mouth - x)) for x in (hole, end)]
        lines.append(np.array([(hole, heights[0]), (end, heights[1])]))
    return lines


def _piece(part: BesideHole, scale: float) -> Points:
    """Outline the piece of the cone that touches, seen from above [page units]."""
    half = part.lies.arc / 2
    turn = np.radians(np.linspace(180.0 - half, 180.0 + half, 121))
    ring = np.column_stack([np.cos(turn), np.sin(turn)])
    inner = ring * part.seat.hole_diameter / 2
    outer = ring * min(part.head.edge, part.seat.diameter) / 2 + np.array([part.shift, 0.0])
    return np.asarray(np.concatenate([inner, outer[::-1]]) * scale + np.array(ABOVE))
