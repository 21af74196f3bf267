"""Two seats from above, cut at two speeds, with the marks that chatter leaves on the cone."""

from dataclasses import dataclass

import numpy as np
from matplotlib.axes import Axes
from matplotlib.patches import Circle, PathPatch
from matplotlib.path import Path

from seatwork.cutting import ConeSurface, marks_per_turn
from seatwork.cutting.chatter.parts import NOTE
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.linework import Points
from seatwork.drawings.strokes.page_words import FOOT, SECOND, heading, word
from seatwork.drawings.strokes.style import POINTS, Style, page
from seatwork.drawings.view import View
from seatwork.units import show_both, show_length, show_number, show_spindle

CENTERS, MIDDLE, OUTER = (360.0, 920.0), 393.0, 205.0
NAMES = 146.0
SMOOTH = 1e-3
"""Marks lower than this are not to be seen [mm]."""

EMPTY = Path(np.full((1, 2), -9.0))
WEDGE = [Path.MOVETO, *[Path.LINETO] * 7, Path.CLOSEPOLY]
"""What the points of a crest are to its path: four outside, four inside, and closed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Cone:
    """One seat as cut.

    Parameters
    ----------
    spindle_speed : float
        At which it was cut [rev/min].
    frequency : float or None
        Chatter frequency [Hz]; None where the cut stays quiet.
    surface : ConeSurface or None
        What was left on it; None before the answer is shown, or where the swing outgrew the model.
    width : float
        Width of cut that was followed [mm].
    """

    spindle_speed: float
    frequency: float | None
    surface: ConeSurface | None
    width: float

    @property
    def marks(self) -> float | None:
        """Marks round the cone, by the frequency told [-]; None where there are none to see."""
        if self.surface is None or not self.surface.swing >= SMOOTH:
            return None
        if not self.surface.marks > 0 or self.frequency is None:
            return None
        return marks_per_turn(
            frequency=self.frequency, spindle_speed=self.spindle_speed, direction="axial"
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class TwoCones:
    """The same seat at two speeds.

    Parameters
    ----------
    cones : tuple of Cone
        From left to right.
    cutter, seat : str
        What cut it, and what was cut, in words.
    diameter, hole_diameter : float
        Seat at the face, and its hole [mm].
    shown : bool
        Whether the answer is shown.
    """

    cones: tuple[Cone, Cone]
    cutter: str
    seat: str
    diameter: float
    hole_diameter: float
    shown: bool


class ConesView(View[TwoCones]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : TwoCones
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._discs = [_Disc(axes, self.style, x) for x in CENTERS]
        self._heading = heading(axes, self.style)
        self._second = word(axes, self.style, 640.0, SECOND)
        line = self.style.line_height
        self._lines = [
            [word(axes, self.style, x, NAMES - number * line) for number in range(3)]
            for x in CENTERS
        ]
        for words in self._lines:
            words[0].set_fontweight("bold")
        self._foot = word(axes, self.style, 640.0, FOOT)
        return Drawing(figure, self.move(self.part))

    def move(self, part: TwoCones) -> str:
        """Show another part; return the text."""
        system = self.look.system
        inner = OUTER * part.hole_diameter / part.diameter
        for cone, disc, words in zip(part.cones, self._discs, self._lines, strict=True):
            disc.move(cone, inner, shown=part.shown)
            for text, line in zip(words, _lines(cone, system, shown=part.shown), strict=True):
                text.set_text(line)
        self._heading.set_text(_heading(part))
        width = show_length(part.cones[0].width, system)
        self._second.set_text(f"{part.cutter}, same seat, same machine, {width} of lip in cut")
        self._foot.set_text(f"An {NOTE}" if part.shown else "")
        return text_of(part, system)


class _Disc:
    """One cone seen from above: its two edges and the crests between them."""

    def __init__(self, axes: Axes, style: Style, x: float) -> None:
        colors, edge = style.colors, style.sizes.edge * POINTS
        self._x = x
        self.cone = Circle((x, MIDDLE), OUTER, facecolor=colors.metal, edgecolor=colors.ink)
        self.cone.set(linewidth=edge, zorder=1.0)
        self.crests = PathPatch(EMPTY, facecolor=colors.contact, linewidth=0)
        self.hole = Circle((x, MIDDLE), OUTER / 2, facecolor=colors.paper, edgecolor=colors.ink)
        self.hole.set_linewidth(edge)
        self.question = word(axes, style, x, MIDDLE, va="center", fontsize=3 * style.sizes.text)
        for order, artist in enumerate((self.crests, self.hole), start=2):
            artist.set(zorder=float(order), animated=True)
        for patch in (self.cone, self.crests, self.hole):
            axes.add_artist(patch)

    def move(self, cone: Cone, inner: float, *, shown: bool) -> None:
        """Show the crests of one cone; before the answer a question mark."""
        crests = EMPTY
        if shown and cone.surface is not None and cone.marks is not None:
            crests = _crests(cone.surface, inner, np.array([self._x, MIDDLE]))
        self.crests.set_path(crests)
        self.hole.set_radius(inner)
        self.question.set_text("" if shown else "?")


def _crests(surface: ConeSurface, inner: float, place: Points) -> Path:
    """Wedges where the surface stands above its mean [page units]."""
    high = surface.height > 0
    edges = np.flatnonzero(high[1:] != high[:-1])
    starts = np.concatenate([[0], edges]) if high[0] else edges
    if not len(starts):
        return EMPTY
    ends = np.append(starts[1:], len(high) - 1)[0::2]
    turn = np.radians(np.linspace(surface.angle[starts[0::2]], surface.angle[ends], 4, axis=1))
    round_ = np.stack([np.sin(turn), np.cos(turn)], axis=2)
    wedges = np.concatenate(
        [OUTER * round_, inner * round_[:, ::-1], OUTER * round_[:, :1]], axis=1
    )
    return Path((wedges + place).reshape(-1, 2), np.tile(WEDGE, len(wedges)))


def _heading(part: TwoCones) -> str:
    if not part.shown:
        return "Same seat, same machine: which one sings?"
    singing = [cone for cone in part.cones if cone.frequency is not None]
    if len(singing) == 1:
        return f"The one at {show_spindle(singing[0].spindle_speed)} sings"
    return "Both sing" if singing else "Both stay quiet"


def _lines(cone: Cone, system: str, *, shown: bool) -> tuple[str, str, str]:
    """Three lines below a cone."""
    speed = show_spindle(cone.spindle_speed)
    if not shown:
        return speed, "", ""
    if cone.frequency is None:
        return speed, "stays quiet", "no marks to be seen"
    if cone.surface is None:
        return speed, f"sings at {hertz(cone.frequency)}", "the swing outgrew the model"
    if cone.marks is None:
        return speed, f"begins to sing at {hertz(cone.frequency)}", "marks still too low to be seen"
    height = show_length(cone.surface.swing, system, 4 if system == "inch" else 3)
    return (
        speed,
        f"sings at {hertz(cone.frequency)}",
        f"{show_number(cone.marks, 1)} marks, {height} high",
    )


def hertz(frequency: float) -> str:
    """Show a frequency [Hz].

    Examples
    --------
    >>> hertz(281.4)
    '281 Hz'
    """
    return f"{show_number(abs(frequency), 0)} Hz"


def text_of(part: TwoCones, system: str) -> str:
    """Tell both cones with all their numbers."""
    seat = (
        f"{part.cutter} in {part.seat}, {show_both(part.diameter, system)} at the face on a hole "
        f"of {show_both(part.hole_diameter, system)}"
    )
    speeds = [show_spindle(cone.spindle_speed) for cone in part.cones]
    if not part.shown:
        return (
            f"Two seats from above: {seat}. One is cut at {speeds[0]}, the other at {speeds[1]}, "
            f"{show_both(part.cones[0].width, system)} of lip in cut: which one sings?"
        )
    each = " ".join(_text_of(cone, system) for cone in part.cones)
    return f"Two seats from above: {seat}. {each} {_heading(part)}. An {NOTE}."


def _text_of(cone: Cone, system: str) -> str:
    """Tell one cone in a sentence."""
    begin = f"At {show_spindle(cone.spindle_speed)}, {show_both(cone.width, system)} of lip in cut,"
    if cone.frequency is None:
        return f"{begin} it stays quiet and leaves no marks to be seen."
    if cone.surface is None:
        return f"{begin} it sings at {hertz(cone.frequency)} until the swing outgrows the model."
    if cone.marks is None:
        return (
            f"{begin} it begins to sing at {hertz(cone.frequency)}, with no marks to be seen yet."
        )
    places = 4 if system == "inch" else 3
    height = show_length(cone.surface.swing, system, places)
    return (
        f"{begin} it sings at {hertz(cone.frequency)} and leaves {show_number(cone.marks, 1)} "
        f"marks round the cone, {height} high."
    )
