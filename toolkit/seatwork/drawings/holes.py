"""Still sections of a counterbore, a spotface, a chamfer and an empty countersink."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon

from seatwork.drawings import profiles, words
from seatwork.drawings.linework import Linework, Points, joined, linework_patches, unit
from seatwork.drawings.metal import BELOW_BREAK, Window, draw_metal
from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.style import CENTER_DASHES, FONT, POINTS, Style, page, style
from seatwork.drawings.symbols import SignedLine
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.units import show_angle, show_both, show_length, show_note

AXIS, FACE, HALF_PLATE, BOTTOM = 330.0, 435.0, 255.0, 100.0
WIDEST, DEEPEST = 380.0, 300.0
DIAMETER_LINE, DEPTH_LINE = 665.0, AXIS + HALF_PLATE + 36.0
COLUMN, HEADING = 870.0, 650.0
NOTE = (40.0, 38.0)
ROUGHNESS = 5.0
"""Height of the bumps of a rough casting as drawn; it stands for no measured roughness."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Hole:
    """What one section shows: its wall [mm] and everything said about it."""

    title: str
    diameter: float
    hole_diameter: float
    depth: float
    wall: Points
    sizes: tuple[tuple[str, str], ...]
    note: str
    cone: Countersink | None = None
    rough: bool = False


def countersink(seat: Countersink, look: Look | None = None) -> Drawing:
    """Draw an empty countersink in section.

    Parameters
    ----------
    seat : Countersink
        Sizes [mm] and [deg].
    look : Look, optional
        Units, palette, size.

    Returns
    -------
    Drawing
        Diameter at the face, depth from the face and included angle dimensioned.
    """
    system = (look or Look()).system
    hole = _Hole(
        title="Countersink",
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        depth=seat.depth,
        wall=profiles.countersink_wall(seat, -4 * seat.depth),
        sizes=(
            ("diameter at the face", show_both(seat.diameter, system)),
            ("depth, face to hole edge", show_both(seat.depth, system)),
            ("hole", show_both(seat.hole_diameter, system)),
            ("included angle", show_angle(seat.included_angle)),
        ),
        note=words.seat_note(seat, system),
        cone=seat,
    )
    return _draw(hole, look or Look())


def counterbore(seat: Counterbore, look: Look | None = None) -> Drawing:
    """Draw an empty counterbore in section.

    Parameters
    ----------
    seat : Counterbore
        Sizes [mm].
    look : Look, optional
        Units, palette, size.

    Returns
    -------
    Drawing
        Diameter and depth from the face dimensioned.
    """
    system = (look or Look()).system
    bore, small, deep = (
        show_note(size, system) for size in (seat.diameter, seat.hole_diameter, seat.depth)
    )
    hole = _Hole(
        title="Counterbore",
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        depth=seat.depth,
        wall=profiles.counterbore_wall(seat, -4 * seat.depth),
        sizes=(
            ("diameter of the bore", show_both(seat.diameter, system)),
            ("depth, face to floor", show_both(seat.depth, system)),
            ("hole", show_both(seat.hole_diameter, system)),
        ),
        note=f"⌀{small} THRU ⌴ ⌀{bore} ↧{deep}",
    )
    return _draw(hole, look or Look())


def spotface(seat: Spotface, depth: float, look: Look | None = None) -> Drawing:
    """Draw a spotface on a rough casting in section.

    Parameters
    ----------
    seat : Spotface
        Sizes [mm].
    depth : float
        Depth from the highest spot of the rough face [mm], above zero.
    look : Look, optional
        Units, palette, size.

    Returns
    -------
    Drawing
        Diameter, and depth from the highest spot, dimensioned.
    """
    system = (look or Look()).system
    wide, small = (show_note(size, system) for size in (seat.diameter, seat.hole_diameter))
    hole = _Hole(
        title="Spotface",
        diameter=seat.diameter,
        hole_diameter=seat.hole_diameter,
        depth=depth,
        wall=profiles.spotface_wall(seat, depth, -2 * seat.diameter),
        sizes=(
            ("diameter of the spotface", show_both(seat.diameter, system)),
            ("depth from highest spot", show_both(depth, system)),
            ("hole", show_both(seat.hole_diameter, system)),
        ),
        note=f"⌀{small} THRU, SPOTFACE ⌀{wide}",
        rough=True,
    )
    return _draw(hole, look or Look())


def chamfer(bevel: Chamfer, hole_diameter: float, look: Look | None = None) -> Drawing:
    """Draw the chamfer at the mouth of a hole in section.

    Parameters
    ----------
    bevel : Chamfer
        Leg along the face [mm] and included angle [deg].
    hole_diameter : float
        Diameter of the hole [mm].
    look : Look, optional
        Units, palette, size.

    Returns
    -------
    Drawing
        Diameter at the face, depth and included angle dimensioned; the leg in words.
    """
    system = (look or Look()).system
    seat = bevel.at_hole(hole_diameter)
    hole = _Hole(
        title="Chamfer at a hole",
        diameter=seat.diameter,
        hole_diameter=hole_diameter,
        depth=seat.depth,
        wall=profiles.chamfer_wall(bevel, hole_diameter, -2 * seat.diameter),
        sizes=(
            ("leg along the face", show_both(bevel.leg, system)),
            ("depth below the face", show_both(bevel.depth, system)),
            ("diameter at the face", show_both(seat.diameter, system)),
            ("hole", show_both(hole_diameter, system)),
            ("included angle", show_angle(bevel.included_angle)),
        ),
        note=words.seat_note(seat, system),
        cone=seat,
    )
    return _draw(hole, look or Look())


def _draw(hole: _Hole, look: Look) -> Drawing:
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
    said = "; ".join(f"{name} {size}" for name, size in hole.sizes)
    return Drawing(figure, f"{hole.title} in section: {said}.")


def _add_edges(axes: Axes, its: Style, hole: _Hole, window: Window) -> None:
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


def _face(window: Window, hole: _Hole) -> list[Points]:
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


def _dimensions(axes: Axes, its: Style, hole: _Hole, window: Window, system: str) -> Linework:
    """Dimension the diameter above, the depth at the side and, on a cone, the angle."""
    work = Linework(its.sizes)
    ends = [window.spot(side * hole.diameter / 2, 0.0) for side in (-1, 1)]
    for end in ends:
        work.extension(end, (end[0], DIAMETER_LINE))
    work.dimension(*((x, DIAMETER_LINE) for x, _ in ends))
    above = DIAMETER_LINE + 14.0
    across = f"⌀ {show_length(hole.diameter, system)}"
    SignedLine(axes, its, x=AXIS, y=above, align="center").set(across)
    floor = window.spot(hole.hole_diameter / 2, -hole.depth)
    work.extension((window.right, FACE), (DEPTH_LINE, FACE))
    work.extension(floor, (DEPTH_LINE, floor[1]))
    work.dimension((DEPTH_LINE, floor[1]), (DEPTH_LINE, FACE))
    beside, middle = DEPTH_LINE + 26.0, (FACE + floor[1]) / 2 - 10.0
    deep = f"↧ {show_length(hole.depth, system)}"
    SignedLine(axes, its, x=beside, y=middle).set(deep)
    if hole.cone is not None:
        _dimension_angle(axes, its, work, hole.cone, window)
    return work


def _dimension_angle(
    axes: Axes, its: Style, work: Linework, cone: Countersink, window: Window
) -> None:
    apex = window.spot(0.0, -cone.apex_depth)
    ends = [window.spot(side * cone.diameter / 2, 0.0) for side in (-1, 1)]
    radius = float(np.hypot(*np.subtract(ends[1], apex))) + 50.0
    for end in ends:
        work.extension(end, tuple(apex + radius * unit(apex, end)))
    work.angle(apex, radius, cone.included_angle / 2)
    text = f"{show_angle(cone.included_angle)} included"
    SignedLine(axes, its, x=AXIS, y=apex[1] + radius + 9.0, align="center").set(text)


def _add_words(axes: Axes, its: Style, hole: _Hole) -> None:
    """Write the sizes in both systems, and the print note below."""
    looks: dict[str, Any] = {"color": its.colors.ink, "fontfamily": FONT, "zorder": 5.3}
    axes.text(COLUMN, HEADING, hole.title, fontsize=its.sizes.large, fontweight="bold", **looks)
    pen = HEADING - 1.5 * its.line_height
    for name, size in hole.sizes:
        axes.text(COLUMN, pen, name, fontsize=its.sizes.text, **looks)
        axes.text(COLUMN, pen - its.line_height, size, fontsize=its.sizes.text, **looks)
        pen -= 2.4 * its.line_height
    SignedLine(axes, its, x=NOTE[0], y=NOTE[1]).set(f"Print note:  {hole.note}")
