"""One hole in section with every seat cut on it, on both faces, to a standard scale."""

from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon, Rectangle

from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.hole_walls import (
    CutHole,
    SeatCut,
    outline,
    rims,
    seat_wall,
    thickness_of,
    wall_of,
)
from seatwork.drawings.strokes.linework import Linework, Points, joined, linework_patches
from seatwork.drawings.strokes.metal import Window, hatching
from seatwork.drawings.strokes.scales import BARS, SCALES
from seatwork.drawings.strokes.style import CENTER_DASHES, FONT, POINTS, Style, page, style
from seatwork.drawings.strokes.symbols import SignedLine
from seatwork.units import show_length

MM = 3.5
"""Page units per mm at 1:1."""

LONGEST = 180.0
"""The most the scale bar may take of the page."""

AXIS, WIDE, HIGH, MIDDLE = 520.0, 640.0, 370.0, 345.0
"""Axis of the hole, room for the widest seat, for the plate, and the middle of the plate."""

LINE, STEP = 62.0, 40.0
"""First dimension line off a face, and from one to the next."""

TOP, FLOOR = 676.0, 24.0


class HoleSection:
    """The scene: see `seatwork.drawings.scene`. Nothing in it moves; another hole is a new scene.

    Parameters
    ----------
    part : CutHole
        What to show.
    look : Look
        Units, palette, size.
    """

    def __init__(self, part: CutHole, look: Look | None = None) -> None:
        self.part, self.look = part, look or Look()
        self.style = style(self.look)

    def draw(self) -> Drawing:
        """Make the figure."""
        figure, axes = page(self.style.colors)
        part, its = self.part, self.style
        _words(axes, its, part)
        if part.hole_diameter:
            self._draw_hole(axes)
        return Drawing(figure, part.text)

    def _draw_hole(self, axes: Axes) -> None:
        part, its = self.part, self.style
        window = window_of(part)
        _metal(axes, its, part, window)
        work = Linework(its.sizes)
        _dimensions(axes, its, part, window, work)
        patches = linework_patches(axes, its)
        for patch, path in zip(patches, (work.lines, work.heads), strict=True):
            patch.set_path(path)
        _scale_bar(axes, its, self.look.system, window)

    def move(self, part: CutHole) -> str:
        """Return the text; the picture stands."""
        return part.text


def window_of(part: CutHole) -> Window:
    """Return where the section stands and its scale: the largest standard one that fits."""
    thick = thickness_of(part)
    across = max([part.hole_diameter, *(2 * wall_of(part, far)[0, 0] for far in (False, True))])
    fits = (s for s in SCALES if across * s * MM <= WIDE - 160.0 and thick * s * MM <= HIGH)
    scale = next(fits, SCALES[-1]) * MM
    half = WIDE / 2
    face = MIDDLE + thick * scale / 2
    return Window(
        axis=AXIS,
        face=face,
        left=AXIS - half,
        right=AXIS + half,
        bottom=face - thick * scale,
        scale=scale,
    )


def _metal(axes: Axes, its: Style, part: CutHole, window: Window) -> None:
    """Draw the hatched plate, the hole cut out of it and every visible edge."""
    box = [(window.left, window.bottom), (window.left, window.face)]
    box += [(window.right, window.face), (window.right, window.bottom)]
    fill = Polygon(box, facecolor=its.colors.metal, linewidth=0, zorder=1.0)
    axes.add_artist(fill)
    thin: dict[str, Any] = {"linewidth": its.sizes.thin * POINTS, "solid_capstyle": "butt"}
    lines = hatching(window, its.sizes.hatch)
    hatch = Line2D(*lines.T, color=its.colors.hatch, zorder=1.1, **thin)
    axes.add_artist(hatch)
    hatch.set_clip_path(fill)
    wall = outline(part)
    opening = window.to_page(np.concatenate([wall, (wall * np.array([-1.0, 1.0]))[::-1]]))
    cavity = Polygon(opening, facecolor=its.colors.paper, edgecolor=its.colors.paper, zorder=2.0)
    axes.add_artist(cavity)
    _edges(axes, its, part, window, wall)


def _edges(axes: Axes, its: Style, part: CutHole, window: Window, wall: Points) -> None:
    across = [np.array([(-x, y), (x, y)]) for x, y in rims(part, wall)]
    lines = [window.to_page(line) for line in (*profiles.left_and_right(wall), *across)]
    for y, radius in ((window.face, wall[0, 0]), (window.bottom, wall[-1, 0])):
        gap = radius * window.scale
        lines += [np.array([(window.left, y), (window.axis - gap, y)])]
        lines += [np.array([(window.axis + gap, y), (window.right, y)])]
    edge = its.sizes.edge * POINTS
    axes.add_artist(Line2D(*joined(lines).T, color=its.colors.ink, linewidth=edge, zorder=2.5))
    middle = np.array([(window.axis, window.face + 16.0), (window.axis, window.bottom - 16.0)])
    thin: dict[str, Any] = {"linewidth": its.sizes.thin * POINTS, "linestyle": CENTER_DASHES}
    axes.add_artist(Line2D(*middle.T, color=its.colors.center, zorder=3.5, **thin))


def _dimensions(axes: Axes, its: Style, part: CutHole, window: Window, work: Linework) -> None:
    """Dimension the seats of each face; one alone has its depth beside the plate."""
    for far in (False, True):
        seats = [one for one in part.seats if one.far is far]
        seats.sort(key=lambda one: float(seat_wall(one, part.hole_diameter)[0, 0]))
        widest = max((seat_wall(one, part.hole_diameter)[0, 0] for one in seats), default=0.0)
        beside = window.axis + widest * window.scale + 16.0
        for number, seat in enumerate(seats):
            ends = _across(window, work, seat, part.hole_diameter, LINE + number * STEP)
            said = seat.across if len(seats) == 1 else f"{seat.across} {seat.deep}".strip()
            room = ends[1] - ends[0] < 3.0 * its.sizes.arrow
            x = beside + room * 2.2 * its.sizes.arrow
            SignedLine(axes, its, x=x, y=ends[2] - 7.0, runs=6).set(said)
        if len(seats) == 1 and seats[0].deep:
            _deep_line(axes, its, window, work, seats[0], part.hole_diameter)
    _thickness(axes, its, part, window, work)


def _across(
    window: Window, work: Linework, seat: SeatCut, hole_diameter: float, off: float
) -> tuple[float, float, float]:
    """Dimension a diameter above the near face or below the far one; give ends and height."""
    half = seat_wall(seat, hole_diameter)[0, 0] * window.scale
    face, way = (window.bottom, -1.0) if seat.far else (window.face, 1.0)
    line, start = face + way * off, face - way * seat.start * window.scale
    left, right = window.axis - half, window.axis + half
    for x in (left, right):
        work.extension((x, start), (x, line))
    work.dimension((left, line), (right, line))
    return left, right, line


def _deep_line(
    axes: Axes, its: Style, window: Window, work: Linework, seat: SeatCut, hole_diameter: float
) -> None:
    """Dimension a depth from its face, right of the plate."""
    radius, deep = seat_wall(seat, hole_diameter)[-1]
    face, way = (window.bottom, 1.0) if seat.far else (window.face, -1.0)
    floor = face + way * deep * window.scale
    line = window.right + 50.0
    work.extension((window.right, face), (line, face))
    work.extension((window.axis + radius * window.scale, floor), (line, floor))
    work.dimension((line, floor), (line, face))
    SignedLine(axes, its, x=line + 18.0, y=(face + floor) / 2 - 8.0).set(seat.deep)


def _thickness(axes: Axes, its: Style, part: CutHole, window: Window, work: Linework) -> None:
    """Dimension the thickness left of the plate, where it is known."""
    if not part.thick:
        return
    line = window.left - 30.0
    if part.thickness is not None:
        for y in (window.face, window.bottom):
            work.extension((window.left, y), (line, y))
        work.dimension((line, window.bottom), (line, window.face))
    axes.text(
        line - 14.0,
        (window.face + window.bottom) / 2,
        part.thick,
        rotation=90,
        ha="right",
        va="center",
        fontfamily=FONT,
        fontsize=its.sizes.text,
        color=its.colors.ink,
        parse_math=False,
        zorder=5.3,
    )


def _words(axes: Axes, its: Style, part: CutHole) -> None:
    """Write the heading, and what is said of the hole."""
    looks: dict[str, Any] = {"fontfamily": FONT, "color": its.colors.ink, "parse_math": False}
    axes.text(34.0, TOP, part.heading, fontsize=its.sizes.large, fontweight="bold", **looks)
    SignedLine(axes, its, x=34.0, y=TOP - 36.0).set(part.hole)


def _scale_bar(axes: Axes, its: Style, system: str, window: Window) -> None:
    bar, said = _bar(system, window.scale)
    long = bar * window.scale
    for start, color in ((0.0, its.colors.ink), (0.5, its.colors.paper)):
        corner = (34.0 + start * long, FLOOR)
        axes.add_artist(
            Rectangle(corner, long / 2, 12.0, facecolor=color, edgecolor=its.colors.ink)
        )
    looks: dict[str, Any] = {"fontfamily": FONT, "color": its.colors.ink}
    axes.text(34.0 + long + 12.0, FLOOR, said, fontsize=its.sizes.text, **looks)


def _bar(system: str, scale: float) -> tuple[float, str]:
    """Return the length of the scale bar [mm] and what is written at it."""
    lengths = BARS[system]
    length = max((one for one in lengths if one * scale <= LONGEST), default=lengths[0])
    return length, show_length(length, system)
