"""One chamfer, two readings of its width: the corner of a hole in section, very much enlarged."""

from dataclasses import dataclass

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon

from seatwork.drawings.parts.words import an
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.linework import (
    Linework,
    Point,
    Points,
    joined,
    linework_patches,
    unit,
)
from seatwork.drawings.strokes.metal import Window, draw_metal
from seatwork.drawings.strokes.style import HIDDEN_DASHES, POINTS, page
from seatwork.drawings.view import View
from seatwork.seats import Chamfer
from seatwork.units import show_angle, show_both, show_length

CORNERS = (250.0, 870.0)
"""Where the two corners would stand if they were sharp [page units]."""

FACE, BOTTOM, WIDE, HOLE = 470.0, 165.0, 330.0, 26.0
WIDEST, DEEPEST = 205.0, 250.0
"""Most a leg may take along the face, and a chamfer go down [page units]."""

ABOVE, BESIDE = 62.0, 58.0
"""How far off the part the widths are dimensioned [page units]."""

HEADING, SECOND, NAMES, RIGHT = 672.0, 628.0, 106.0, 150.0
READINGS = ("Reading 1: along the face", "Reading 2: across the bevel")


@dataclass(frozen=True, slots=True, kw_only=True)
class TwoReadings:
    """A chamfer read in two ways.

    Parameters
    ----------
    along_face, across_bevel : Chamfer
        What the width gives if it counts along the face, and if across the bevel itself.
    width : float
        Width as noted [mm].
    hole_diameter : float
        The hole whose edge is chamfered [mm].
    note : str
        One line on what the print says.
    """

    along_face: Chamfer
    across_bevel: Chamfer
    width: float
    hole_diameter: float
    note: str

    @property
    def both(self) -> tuple[Chamfer, Chamfer]:
        """Both, from left to right."""
        return self.along_face, self.across_bevel


class EdgesView(View[TwoReadings]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : TwoReadings
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        colors, sizes = self.style.colors, self.style.sizes
        for x in CORNERS:
            draw_metal(axes, self.style, _window(x, 1.0))
        nowhere = np.zeros((3, 2))
        self._cavities = [Polygon(nowhere, facecolor=colors.paper, linewidth=0) for _ in CORNERS]
        self._edges = Line2D([], [], color=colors.ink, linewidth=sizes.edge * POINTS)
        self._bevels = Line2D([], [], color=colors.contact, linewidth=1.3 * sizes.contact * POINTS)
        self._sharp = Line2D([], [], color=colors.center, linewidth=sizes.thin * POINTS)
        self._sharp.set_linestyle(HIDDEN_DASHES)
        moving = (*self._cavities, self._sharp, self._edges, self._bevels)
        for step, artist in enumerate(moving):
            artist.set(zorder=2.0 + step / 10, animated=True)
            axes.add_artist(artist)
        self._lines, self._heads = linework_patches(axes, self.style, animated=True)
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: TwoReadings) -> str:
        """Show another part; return the text."""
        scale = min(WIDEST / part.along_face.leg, DEEPEST / part.along_face.depth)
        work = Linework(self.style.sizes)
        edges, bevels, sharp = [], [], []
        for x, chamfer, cavity in zip(CORNERS, part.both, self._cavities, strict=True):
            window = _window(x, scale)
            low, high = window.spot(0.0, -chamfer.depth), window.spot(chamfer.leg, 0.0)
            cavity.set_xy(_cavity(window, low, high))
            edges += [np.array([(x, window.bottom), low]), np.array([high, (window.right, FACE)])]
            bevels.append(np.array([low, high]))
            sharp.append(np.array([low, (x, FACE), high]))
        for line, pieces in ((self._edges, edges), (self._bevels, bevels), (self._sharp, sharp)):
            line.set_data(*joined(pieces).T.tolist())
        self._dimension(work, part, scale)
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)
        self._write(part)
        return text_of(part, self.look.system)

    def _add_words(self, axes: Axes) -> None:
        large, line = self.style.sizes.large, self.style.line_height
        self._heading = self._word(axes, 640.0, HEADING, fontsize=large, fontweight="bold")
        self._second = self._word(axes, 640.0, SECOND)
        for x, reading in zip(CORNERS, READINGS, strict=True):
            self._word(axes, x + RIGHT, NAMES, fontweight="bold").set_text(reading)
        self._opens = [self._word(axes, x + RIGHT, NAMES - line) for x in CORNERS]
        self._depths = [self._word(axes, x + RIGHT, NAMES - 2.0 * line) for x in CORNERS]
        self._along = self._word(axes, 0.0, FACE + ABOVE + 14.0)
        self._across = self._word(axes, 0.0, 0.0, ha="right", va="center")
        for x in CORNERS:
            self._word(axes, x - 60.0, BOTTOM + 30.0, ha="right").set_text("hole")

    def _dimension(self, work: Linework, part: TwoReadings, scale: float) -> None:
        """Dimension the width along the face on the left, across the bevel on the right."""
        first, second = (_window(x, scale) for x in CORNERS)
        line = FACE + ABOVE
        ends = [(first.axis, line), (first.spot(part.along_face.leg, 0.0)[0], line)]
        for x, _ in ends:
            work.extension((x, FACE), (x, line))
        work.dimension(*ends)
        self._along.set_x((ends[0][0] + ends[1][0]) / 2)
        low = second.spot(0.0, -part.across_bevel.depth)
        high = second.spot(part.across_bevel.leg, 0.0)
        along = unit(low, high)
        outward = BESIDE * np.array([-along[1], along[0]])
        lifted = [tuple(np.add(end, outward)) for end in (low, high)]
        for end, far in zip((low, high), lifted, strict=True):
            work.extension(end, far)
        work.dimension(*lifted)
        middle = np.mean(lifted, axis=0) + 0.5 * outward
        self._across.set_position((min(float(middle[0]), second.axis - 14.0), float(middle[1])))

    def _write(self, part: TwoReadings) -> None:
        """Set every word and number."""
        system = self.look.system
        width = show_length(part.width, system)
        self._heading.set_text(f"Chamfer {width} wide: measured where?")
        self._second.set_text(part.note)
        self._along.set_text(width)
        self._across.set_text(width)
        hole = show_length(part.hole_diameter, system)
        for opens, depth, one in zip(self._opens, self._depths, part.both, strict=True):
            mouth = show_length(one.diameter_at(part.hole_diameter), system)
            opens.set_text(f"hole {hole} opens to {mouth}")
            depth.set_text(f"cut {show_length(one.depth, system)} deep")


def _window(x: float, scale: float) -> Window:
    return Window(axis=x, face=FACE, left=x - 8.0, right=x + WIDE, bottom=BOTTOM, scale=scale)


def _cavity(window: Window, low: Point, high: Point) -> Points:
    """Where there is no metal: the hole beside its wall, and the corner that was cut away."""
    x, over = window.axis, FACE + 6.0
    side = x - HOLE
    corners = [(side, BOTTOM - 30.0), (x, BOTTOM - 30.0), low, high, (high[0], over), (side, over)]
    return np.array(corners)


def text_of(part: TwoReadings, system: str) -> str:
    """Tell both readings with all the numbers, in three sentences."""
    angle = an(show_angle(part.along_face.included_angle))
    sentences = [
        f"A chamfer noted {show_both(part.width, system)} wide, cut with {angle} tool at a hole "
        f"of {show_both(part.hole_diameter, system)}, read in two ways."
    ]
    for name, one in zip(READINGS, part.both, strict=True):
        sentences.append(
            f"{name}, it is {show_both(one.leg, system)} along the face, "
            f"{show_both(one.slant_width, system)} across the bevel and "
            f"{show_both(one.depth, system)} deep, and the hole opens to "
            f"{show_both(one.diameter_at(part.hole_diameter), system)}."
        )
    return " ".join(sentences)
