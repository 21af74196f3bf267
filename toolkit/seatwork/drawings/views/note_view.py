"""A print note as typed, the seats it asks for in section, and what was read in it."""

import re
from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon

from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Linework, Points, joined, linework_patches
from seatwork.drawings.strokes.metal import BELOW_BREAK, Window, draw_metal, hatching
from seatwork.drawings.strokes.paragraphs import Column
from seatwork.drawings.strokes.style import CENTER_DASHES, FONT, POINTS, Style, page
from seatwork.drawings.strokes.symbols import RUN, SignedLine, legible, line_width
from seatwork.drawings.view import View
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface

LEFT, TOP, WIDTH, SPACING, MOST_LINES = 34.0, 664.0, 1212.0, 38.0, 4
"""The note: left edge, first baseline, length of a line, line to line, lines shown."""

FACE, BOTTOM, DIAMETER_ABOVE, BELOW = 420.0, 150.0, 38.0, 100.0
"""Face and lower edge of the plates, the diameter above the face, the words below."""

PLACES = {1: ((255.0, 185.0),), 2: ((132.0, 88.0), (506.0, 88.0))}
"""Axis and half the width of each plate, by how many are drawn."""

COLUMNS, RIGHT, FLOOR = (LEFT, 690.0, 800.0), 1250.0, 24.0
"""Left edge of the words, by how many plates are drawn, their right edge and their end."""

CLEAN_UP = 0.04
"""Depth drawn for a spotface that goes as deep as it must, as a share of its diameter."""

TAIL = 2.0
"""Depth of hole drawn below a seat, in depths of the seat."""

Shape = Countersink | Counterbore | Spotface | Chamfer


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnSeat:
    """One seat of the note.

    Parameters
    ----------
    shape : Countersink, Counterbore, Spotface, Chamfer or None
        The seat; None for a plain hole.
    hole_diameter : float or None
        The hole [mm]; None for a chamfer along an edge.
    across, deep : str
        What is written at the diameter and at the depth; empty where there is none.
    below : tuple of str
        Lines below the plate, its name first.
    """

    shape: Shape | None
    hole_diameter: float | None
    across: str
    deep: str
    below: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class NotePage:
    """Everything on the page.

    Parameters
    ----------
    note : str
        The note as typed.
    stopped : tuple of int or None
        Where reading stopped: first character and the one after the last, from 0 [-].
    heading : str
        The question, or what came of it.
    seats : tuple of DrawnSeat
        At most two.
    lists : tuple of (str, tuple of str)
        Headings and what stands under each.
    text : str
        The text twin.
    """

    note: str
    stopped: tuple[int, int] | None
    heading: str
    seats: tuple[DrawnSeat, ...]
    lists: tuple[tuple[str, tuple[str, ...]], ...]
    text: str


class NoteView(View[NotePage]):
    """The scene: see `seatwork.drawings.scene`. Nothing in it moves; a new note is a new scene.

    Parameters
    ----------
    part : NotePage
        What to show.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure."""
        figure, axes = page(self.style.colors)
        part = self.part
        low = _write_note(axes, self.style, part)
        heading = low - 62.0
        looks: dict[str, Any] = {"fontfamily": FONT, "fontweight": "bold", "zorder": 5.3}
        looks |= {"fontsize": self.style.sizes.large, "color": self.style.colors.ink}
        axes.text(LEFT, heading, part.heading, parse_math=False, **looks)
        work = Linework(self.style.sizes)
        for seat, place in zip(part.seats, PLACES.get(len(part.seats), ()), strict=True):
            _draw_seat(axes, self.style, seat, place, work)
        if part.seats:
            for patch, path in zip(
                linework_patches(axes, self.style), (work.lines, work.heads), strict=True
            ):
                patch.set_path(path)
        left = COLUMNS[len(part.seats)]
        column = Column(
            axes,
            self.style,
            left=left,
            top=heading - 16.0,
            width=RIGHT - left,
            bottom=FLOOR,
        )
        for title, lines in part.lists:
            column.heading(title)
            column.listed(lines, "and {count} more, named with the sources below")
        return Drawing(figure, part.text)

    def move(self, part: NotePage) -> str:
        """Return the text; the picture stands."""
        return part.text


def lines_of(note: str, width: float, size: float) -> list[tuple[int, str]]:
    """Break a note into lines of at most `width` [page units], each with its first place."""
    lines: list[tuple[int, str]] = []
    start = end = 0
    for piece in re.finditer(r"\n|[^\S\n]+|\S{1,20}", note):
        if piece.group() == "\n":
            lines.append((start, note[start : piece.start()]))
            start = end = piece.end()
        elif line_width(note[start : piece.end()].rstrip()) * size > width and start < end:
            lines.append((start, note[start : piece.start()]))
            start, end = piece.start(), piece.end()
        else:
            end = piece.end()
    return [*lines, (start, note[start:])]


def _write_note(axes: Axes, its: Style, part: NotePage) -> float:
    """Write the note with its signs, mark where reading stopped; give the last baseline."""
    size, shown = its.sizes.text / POINTS, legible(part.note)
    lines = lines_of(shown, WIDTH, size)
    low = TOP
    for number, (start, line) in enumerate(lines[:MOST_LINES]):
        low = TOP - number * SPACING
        rest = number == MOST_LINES - 1 and len(lines) > MOST_LINES
        runs = len([run for run in RUN.split(line) if run.strip()]) + 1
        SignedLine(axes, its, x=LEFT, y=low, runs=runs).set(f"{line} ..." if rest else line)
        if part.stopped:
            _mark(axes, its, line, tuple(at - start for at in part.stopped), low)
    edge = its.sizes.thin * POINTS
    frame = [(14.0, TOP + 36.0), (1266.0, TOP + 36.0), (1266.0, low - 16.0), (14.0, low - 16.0)]
    axes.add_artist(Polygon(frame, fill=False, edgecolor=its.colors.ink, linewidth=edge))
    return low


def _mark(axes: Axes, its: Style, line: str, at: tuple[int, ...], y: float) -> None:
    """Draw a heavy line below the characters that could not be read, as far as they are here."""
    first, last = at
    if not 0 <= first <= len(line):
        return
    size = its.sizes.text / POINTS
    begin = LEFT + size * line_width(line[:first])
    end = max(begin + 14.0, LEFT + size * line_width(line[: max(last, first)]))
    weight = 1.4 * its.sizes.contact * POINTS
    axes.add_artist(
        Line2D([begin, end], [y - 10.0] * 2, color=its.colors.contact, linewidth=weight, zorder=5.4)
    )


def _draw_seat(
    axes: Axes, its: Style, seat: DrawnSeat, place: tuple[float, float], work: Linework
) -> None:
    """Draw one plate with its seat, dimensioned, and its words below."""
    axis, half = place
    if seat.hole_diameter is None:
        _draw_corner(axes, its, seat, place)
    else:
        wall = _wall(seat)
        window = _window(axis, half, wall)
        draw_metal(axes, its, window)
        cut_hole(axes, its, window, wall)
        _dimension(axes, its, seat, window, wall, work)
    size = its.sizes.text
    for number, line in enumerate(seat.below):
        axes.text(
            axis,
            BELOW - number * its.line_height,
            line,
            ha="center",
            fontfamily=FONT,
            fontsize=size,
            fontweight="normal" if number else "bold",
            color=its.colors.ink,
            zorder=5.3,
            parse_math=False,
        )


def _wall(seat: DrawnSeat) -> Points:
    """Outline right of the axis, from the face down to a little below the seat [mm]."""
    shape, hole = seat.shape, seat.hole_diameter
    match shape:
        case Countersink():
            return profiles.countersink_wall(shape, -TAIL * shape.depth - shape.hole_diameter / 2)
        case Counterbore():
            return profiles.counterbore_wall(shape, -TAIL * shape.depth - shape.hole_diameter / 2)
        case Spotface():
            deep = CLEAN_UP * shape.diameter
            return profiles.spotface_wall(shape, deep, -shape.diameter / 2)
        case Chamfer() if hole is not None:
            return profiles.chamfer_wall(shape, hole, -2.0 * hole)
    radius = (hole or 1.0) / 2
    return np.array([(radius, 0.0), (radius, -3.0 * radius)])


def _window(axis: float, half: float, wall: Points) -> Window:
    scale = min(1.5 * half / (2.0 * wall[0, 0]), (FACE - BOTTOM - 30.0) / -wall[-2:, 1].max())
    if len(wall) > 2:
        scale = min(scale, 0.62 * (FACE - BOTTOM) / -wall[-2, 1])
    return Window(
        axis=axis, face=FACE, left=axis - half, right=axis + half, bottom=BOTTOM, scale=scale
    )


def cut_hole(axes: Axes, its: Style, window: Window, wall: Points) -> None:
    """Cut a hole out of a plate, `wall` [mm] right of its axis, and draw its edges."""
    edge, thin = its.sizes.edge * POINTS, its.sizes.thin * POINTS
    opening = wall.copy()
    opening[-1, 1] = window.deepest - BELOW_BREAK / window.scale
    above = np.array([(wall[0, 0], 1.0 / window.scale)])
    cavity = window.to_page(profiles.whole(np.concatenate([above, opening])))
    axes.add_artist(Polygon(cavity, facecolor=its.colors.paper, linewidth=0, zorder=2.0))
    opening[-1, 1] = window.deepest
    across = [np.array([(-x, y), (x, y)]) for x, y in wall[:-1] if y < 0.0]
    sides = [window.to_page(line) for line in (*profiles.left_and_right(opening), *across)]
    rim = wall[0, 0] * window.scale
    face = [
        np.array([(window.left, window.face), (window.axis - rim, window.face)]),
        np.array([(window.axis + rim, window.face), (window.right, window.face)]),
    ]
    lines = joined([*sides, *face])
    axes.add_artist(Line2D(*lines.T, color=its.colors.ink, linewidth=edge, zorder=2.5))
    middle = Line2D(
        [window.axis] * 2, [window.face + 14.0, window.bottom - 14.0], color=its.colors.center
    )
    middle.set(linewidth=thin, linestyle=CENTER_DASHES, zorder=3.5)
    axes.add_artist(middle)


def _dimension(
    axes: Axes, its: Style, seat: DrawnSeat, window: Window, wall: Points, work: Linework
) -> None:
    above = FACE + DIAMETER_ABOVE
    ends = [window.spot(side * wall[0, 0], 0.0) for side in (-1, 1)]
    for end in ends:
        work.extension(end, (end[0], above))
    work.dimension(*((x, above) for x, _ in ends))
    SignedLine(axes, its, x=window.axis, y=above + 14.0, align="center").set(seat.across)
    if not seat.deep:
        return
    line = window.right + 26.0
    floor = window.spot(wall[-2, 0], wall[-2, 1])
    work.extension((window.right, FACE), (line, FACE))
    work.extension(floor, (line, floor[1]))
    work.dimension((line, floor[1]), (line, FACE))
    y = min((FACE + floor[1]) / 2 - 10.0, FACE - 34.0)
    SignedLine(axes, its, x=line + 22.0, y=y).set(seat.deep)


def _draw_corner(axes: Axes, its: Style, seat: DrawnSeat, place: tuple[float, float]) -> None:
    """Draw the corner of a part with its edge chamfered; the size is in the words."""
    axis, half = place
    left, right, low = axis - half, axis + half, BOTTOM
    bevel = seat.shape
    reach = 0.45 * half
    drop = reach * bevel.depth / bevel.leg if isinstance(bevel, Chamfer) else reach
    outline = np.array(
        [(left, low), (left, FACE), (right - reach, FACE), (right, FACE - drop), (right, low)]
    )
    fill = Polygon(outline, facecolor=its.colors.metal, linewidth=0, zorder=1.0)
    axes.add_artist(fill)
    window = Window(axis=axis, face=FACE, left=left, right=right, bottom=low)
    hatch = Line2D(*hatching(window, its.sizes.hatch).T, color=its.colors.hatch, zorder=1.1)
    hatch.set(linewidth=its.sizes.thin * POINTS, clip_path=fill)
    axes.add_artist(hatch)
    axes.add_artist(
        Line2D(*outline.T, color=its.colors.ink, linewidth=its.sizes.edge * POINTS, zorder=2.5)
    )
    SignedLine(axes, its, x=axis, y=FACE + 14.0, align="center").set(seat.across)
