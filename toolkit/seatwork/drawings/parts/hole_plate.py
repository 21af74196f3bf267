"""The page that shows one empty seat in section: edges, dimensions, sizes in words, print note."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon

from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Linework, Points, joined, linework_patches, unit
from seatwork.drawings.strokes.metal import BELOW_BREAK, Window, draw_metal
from seatwork.drawings.strokes.style import CENTER_DASHES, FONT, POINTS, Style, page, style
from seatwork.drawings.strokes.symbols import SignedLine
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink
from seatwork.units import show_angle, show_length

AXIS, FACE, HALF_PLATE, BOTTOM = 330.0, 435.0, 255.0, 100.0
WIDEST, DEEPEST = 380.0, 300.0
DIAMETER_LINE, DEPTH_LINE = 665.0, AXIS + HALF_PLATE + 36.0
COLUMN, HEADING = 870.0, 650.0
NOTE = (40.0, 38.0)
ROUGHNESS = 5.0
"""Height of the bumps of a rough casting as drawn; it stands for no measured roughness."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Hole:
    """What one section shows, and everything said about it.

    Parameters
    ----------
    title : str
        Name of the seat.
    diameter, hole_diameter, depth : float
        Sizes drawn and dimensioned [mm]; the depth counts from the face.
    wall : ndarray
        Outline right of the axis, from the face down [mm].
    sizes : dict of str to (str, str)
        By name: what a size is called, and the size in both systems.
    note : str
        Print note.
    cone : Countersink, optional
        Cone whose included angle is dimensioned.
    rough : bool
        Whether the face beside the seat is a rough casting.
    asked : str, optional
        Name of the size that a learner is to find: it is shown as a question mark.
    """

    title: str
    diameter: float
    hole_diameter: float
    depth: float
    wall: Points
    sizes: dict[str, tuple[str, str]]
    note: str
    cone: Countersink | None = None
    rough: bool = False
    asked: str | None = None

    def __post_init__(self) -> None:
        if self.asked is not None and self.asked not in self.sizes:
            raise SeatworkError(
                self.asked, "no size of this drawing has that name", f"ask for {self._names}"
            )

    @property
    def _names(self) -> str:
        return " or ".join(self.sizes)

    def stated(self, name: str, shown: str) -> str:
        """Return what is shown for a size: itself, or a question mark where it is asked for."""
        return "?" if name == self.asked else shown

    @property
    def text(self) -> str:
        """All sizes in one sentence."""
        sizes = (
            f"{called} {'to be found' if name == self.asked else shown}"
            for name, (called, shown) in self.sizes.items()
        )
        return f"{self.title} in section: {'; '.join(sizes)}."


def draw_hole(hole: Hole, look: Look) -> Drawing:
    """Draw the page of one seat.

    Parameters
    ----------
    hole : Hole
        What to show.
    look : Look
        Units, palette, size.
    """
    its = style(look)
    figure, axes = page(its.colors)
    scale = min(WIDEST / hole.diameter, DEEPEST / hole.depth)
    window = Window(
        axis=AXIS,
        face=FACE,
        left=AXIS - HALF_PLATE,
        right=AXIS + HALF_PLATE,
        bottom=BOTTOM,
        scale=scale,
    )
    draw_metal(axes, its, window)
    _add_edges(axes, its, hole, window)
    work = _dimensions(axes, its, hole, window, look.system)
    for patch, path in zip(linework_patches(axes, its), (work.lines, work.heads), strict=True):
        patch.set_path(path)
    _add_words(axes, its, hole)
    return Drawing(figure, hole.text)


def _add_edges(axes: Axes, its: Style, hole: Hole, window: Window) -> None:
    """Cut the hole out of the metal and draw every visible edge."""
    colors, edge = its.colors, its.sizes.edge * POINTS
    wall = hole.wall.copy()
    wall[-1, 1] = window.deepest - BELOW_BREAK / window.scale
    opening = window.to_page(profiles.whole(wall))
    axes.add_artist(Polygon(opening, facecolor=colors.paper, linewidth=0, zorder=2.0))
    wall[-1, 1] = window.deepest
    corners = [corner for corner in hole.wall[:-1] if corner[1] < 0.0]
    across = [np.array([(-x, y), (x, y)]) for x, y in corners]
    lines = [window.to_page(line) for line in (*profiles.left_and_right(wall), *across)]
    face = _face(window, hole)
    for side in face if hole.rough else ():
        above = np.concatenate([side, side[::-1] * (1.0, 0.0) + (0.0, window.face + edge)])
        axes.add_artist(Polygon(above, facecolor=colors.paper, linewidth=0, zorder=2.0))
    axes.add_artist(
        Line2D(*joined([*lines, *face]).T, color=colors.ink, linewidth=edge, zorder=2.5)
    )
    middle = np.array([(AXIS, FACE + 24.0), (AXIS, BOTTOM - 24.0)])
    thin = its.sizes.thin * POINTS
    axes.add_artist(
        Line2D(*middle.T, color=colors.center, linewidth=thin, linestyle=CENTER_DASHES, zorder=3.5)
    )


def _face(window: Window, hole: Hole) -> list[Points]:
    """Return the face from edge to edge; a rough one bulges beside the spotface only."""
    if not hole.rough:
        return [np.array([(window.left, window.face), (window.right, window.face)])]
    rim = hole.diameter / 2 * window.scale
    sides = []
    for start, end in ((window.left, window.axis - rim), (window.axis + rim, window.right)):
        along = np.linspace(start, end, 25)
        bumps = ROUGHNESS * np.abs(np.sin(along / 7.0) * np.sin(along / 19.0 + 1.0))
        sides.append(np.column_stack([along, window.face - bumps]))
    return sides


def _dimensions(axes: Axes, its: Style, hole: Hole, window: Window, system: str) -> Linework:
    """Dimension the diameter above, the depth at the side and, on a cone, the angle."""
    work = Linework(its.sizes)
    ends = [window.spot(side * hole.diameter / 2, 0.0) for side in (-1, 1)]
    for end in ends:
        work.extension(end, (end[0], DIAMETER_LINE))
    work.dimension(*((x, DIAMETER_LINE) for x, _ in ends))
    above = DIAMETER_LINE + 14.0
    across = f"⌀ {hole.stated('diameter', show_length(hole.diameter, system))}"
    SignedLine(axes, its, x=AXIS, y=above, align="center").set(across)
    floor = window.spot(hole.hole_diameter / 2, -hole.depth)
    work.extension((window.right, FACE), (DEPTH_LINE, FACE))
    work.extension(floor, (DEPTH_LINE, floor[1]))
    work.dimension((DEPTH_LINE, floor[1]), (DEPTH_LINE, FACE))
    beside, middle = DEPTH_LINE + 26.0, (FACE + floor[1]) / 2 - 10.0
    deep = f"↧ {hole.stated('depth', show_length(hole.depth, system))}"
    SignedLine(axes, its, x=beside, y=middle).set(deep)
    if hole.cone is not None:
        shown = hole.stated("included_angle", show_angle(hole.cone.included_angle))
        _dimension_angle(axes, its, work, hole.cone, window, f"{shown} included")
    return work


def _dimension_angle(
    axes: Axes, its: Style, work: Linework, cone: Countersink, window: Window, text: str
) -> None:
    apex = window.spot(0.0, -cone.apex_depth)
    ends = [window.spot(side * cone.diameter / 2, 0.0) for side in (-1, 1)]
    radius = float(np.hypot(*np.subtract(ends[1], apex))) + 50.0
    for end in ends:
        work.extension(end, tuple(apex + radius * unit(apex, end)))
    work.angle(apex, radius, cone.included_angle / 2)
    SignedLine(axes, its, x=AXIS, y=apex[1] + radius + 9.0, align="center").set(text)


def _add_words(axes: Axes, its: Style, hole: Hole) -> None:
    """Write the sizes in both systems, and the print note below."""
    looks: dict[str, Any] = {"color": its.colors.ink, "fontfamily": FONT, "zorder": 5.3}
    axes.text(COLUMN, HEADING, hole.title, fontsize=its.sizes.large, fontweight="bold", **looks)
    pen = HEADING - 1.5 * its.line_height
    for name, (called, shown) in hole.sizes.items():
        size = hole.stated(name, shown)
        axes.text(COLUMN, pen, called, fontsize=its.sizes.text, **looks)
        axes.text(COLUMN, pen - its.line_height, size, fontsize=its.sizes.text, **looks)
        pen -= 2.4 * its.line_height
    if hole.asked is None:
        SignedLine(axes, its, x=NOTE[0], y=NOTE[1]).set(f"Print note:  {hole.note}")
