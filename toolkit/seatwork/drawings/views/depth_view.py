"""Two seats cut at one stop setting, the cutter standing in each: as set, and resharpened."""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon

from seatwork.drawings.parts.words import an
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Linework, Points, joined, linework_patches
from seatwork.drawings.strokes.metal import BELOW_BREAK, Window, draw_metal
from seatwork.drawings.strokes.style import CENTER_DASHES, HIDDEN_DASHES, POINTS, Style, page
from seatwork.drawings.strokes.symbols import SignedLine
from seatwork.drawings.view import View
from seatwork.seats import Countersink
from seatwork.units import show_angle, show_both, show_length

AXES = (360.0, 920.0)
HALF, FACE, BOTTOM = 185.0, 390.0, 145.0
WIDEST, DEEPEST = 300.0, 215.0
"""Most a seat may take across, and a cutter's nose go down [page units]."""

LIFTED, DIAMETER_LINE, STUB = 14.0, 550.0, 110.0
"""How high a lifted nose stands, where diameters are dimensioned, and how much of the cutter
shows above the face [page units]."""

BODY = 1.22
"""Diameter of the cutter's body, as a share of the widest seat."""

HEADING, SECOND, NAMES = 672.0, 628.0, 96.0
TRAVEL_LINE = 26.0
"""How far beside the plate the travel is dimensioned [page units]."""

TOUCHED = {
    "face": "the nose touched on the face",
    "hole edge": "the lips touched on the hole edge",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Plunge:
    """One seat and the cutter that cut it.

    Parameters
    ----------
    seat : Countersink
        The seat as cut.
    nose_diameter : float
        Flat at the cutter's nose [mm].
    travel : float
        Quill travel after the touch-off [mm].
    """

    seat: Countersink
    nose_diameter: float
    travel: float

    @property
    def nose_depth(self) -> float:
        """Depth of the nose below the face when the seat is cut [mm]."""
        return self.seat.travel_from_face(self.nose_diameter)


@dataclass(frozen=True, slots=True, kw_only=True)
class SameStop:
    """Two plunges from one stop setting.

    Parameters
    ----------
    first, second : Plunge
        As set on scrap, and with the cutter resharpened.
    touched : {"face", "hole edge"}
        Where the touch-off was made.
    wider : float
        How much wider the second came out [mm]; below zero if narrower.
    stop_error : float
        How much deeper than set the stop let the second go [mm].
    cut : bool
        Whether the second is cut; before that its cutter stands above the hole.
    """

    first: Plunge
    second: Plunge
    touched: str
    wider: float
    stop_error: float
    cut: bool

    @property
    def both(self) -> tuple[Plunge, Plunge]:
        """Both, from left to right."""
        return self.first, self.second


class DepthView(View[SameStop]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : SameStop
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        for x in AXES:
            draw_metal(axes, self.style, _window(x, 1.0))
        self._cuts = [_CutView(axes, self.style) for _ in AXES]
        self._lines, self._heads = linework_patches(axes, self.style, animated=True)
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: SameStop) -> str:
        """Show another part; return the text."""
        scale = _scale(part)
        body = BODY * max(one.seat.diameter for one in part.both)
        work = Linework(self.style.sizes)
        for number, (one, view, x) in enumerate(zip(part.both, self._cuts, AXES, strict=True)):
            cut = part.cut or number == 0
            window = _window(x, scale)
            view.move(one, window, body=body, cut=cut, former=part.first.seat if number else None)
            if cut:
                self._dimension(work, one, window, outward=2 * number - 1)
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)
        self._write(part, _window(0.0, scale))
        return text_of(part, self.look.system)

    @property
    def ghosts(self) -> tuple[Artist, ...]:
        """The wall of number 2, which may stay behind for comparison; known after `draw`."""
        return (self._cuts[1].walls,)

    def _add_words(self, axes: Axes) -> None:
        large = self.style.sizes.large
        self._heading = self._word(axes, 640.0, HEADING, fontsize=large, fontweight="bold")
        self._second = self._word(axes, 640.0, SECOND)
        self._names = [self._word(axes, x, NAMES, fontweight="bold") for x in AXES]
        line = self.style.line_height
        self._noses = [self._word(axes, x, NAMES - line) for x in AXES]
        self._thirds = [self._word(axes, x, NAMES - 2.0 * line) for x in AXES]
        above = DIAMETER_LINE + 14.0
        self._across = [
            SignedLine(axes, self.style, x=x, y=above, align="center", animated=True) for x in AXES
        ]
        self._travels = []
        for x, side, ha in ((AXES[0], -1.0, "right"), (AXES[1], 1.0, "left")):
            at = x + side * (HALF + TRAVEL_LINE + 14.0)
            self._travels.append([self._word(axes, at, 0.0, ha=ha, va="center") for _ in range(2)])

    def _dimension(self, work: Linework, one: Plunge, window: Window, outward: int) -> None:
        """Dimension the diameter above the plate and the travel beside it."""
        ends = [window.spot(side * one.seat.diameter / 2, 0.0) for side in (-1, 1)]
        for end in ends:
            work.extension(end, (end[0], DIAMETER_LINE))
        work.dimension(*((x, DIAMETER_LINE) for x, _ in ends))
        edge = window.axis + outward * HALF
        line, low = edge + outward * TRAVEL_LINE, window.spot(0.0, -one.travel)[1]
        work.extension((edge, window.face), (line, window.face))
        reach = one.nose_diameter if _from_nose(one) else one.seat.hole_diameter
        start = window.spot(outward * reach / 2, -one.travel)
        work.extension(start, (line, low))
        work.dimension((line, low), (line, window.face))

    def _write(self, part: SameStop, window: Window) -> None:
        """Set every word and number."""
        system = self.look.system
        self._heading.set_text(_heading(part, system))
        self._second.set_text(_second(part, system))
        names = ("Number 1: as set", "Number 2: resharpened")
        for number, one in enumerate(part.both):
            self._names[number].set_text(names[number])
            self._noses[number].set_text(f"nose {show_both(one.nose_diameter, system)}")
            self._thirds[number].set_text(_third(part, number, system))
            cut = part.cut or number == 0
            across = show_length(one.seat.diameter, system)
            self._across[number].set(f"⌀ {across}" if cut else "⌀ ?")
            middle = window.spot(0.0, -one.travel / 2)[1]
            shown = ("travel", show_length(one.travel, system)) if cut else ("", "")
            for word, text, up in zip(self._travels[number], shown, (0.5, -0.5), strict=True):
                word.set(text=text, y=middle + up * self.style.line_height)


class _CutView:
    """One plate with its seat and the cutter, as artists that move."""

    def __init__(self, axes: Axes, style: Style) -> None:
        colors, sizes = style.colors, style.sizes
        edge, thin = sizes.edge * POINTS, sizes.thin * POINTS
        nowhere = np.zeros((3, 2))
        self.cavity = Polygon(nowhere, facecolor=colors.paper, linewidth=0)
        self.walls = Line2D([], [], color=colors.ink, linewidth=edge)
        self.tool = Polygon(nowhere, facecolor=colors.screw, edgecolor=colors.ink, linewidth=thin)
        self.former = Line2D([], [], color=colors.contact, linewidth=1.5 * thin)
        self.former.set_linestyle(HIDDEN_DASHES)
        self.center = Line2D([], [], color=colors.center, linewidth=thin)
        self.center.set_linestyle(CENTER_DASHES)
        parts = (self.cavity, self.walls, self.tool, self.former, self.center)
        for step, artist in enumerate(parts):
            artist.set_zorder(2.0 + step / 5)
            artist.set_animated(True)
            axes.add_artist(artist)

    def move(
        self,
        one: Plunge,
        window: Window,
        *,
        body: float,
        cut: bool,
        former: Countersink | None,
    ) -> None:
        """Show a seat and its cutter; `former` [seat] is dashed where it was another."""
        lowest = window.deepest - BELOW_BREAK / window.scale
        wall = profiles.countersink_wall(one.seat, lowest) if cut else _drilled(one.seat, lowest)
        self.cavity.set_xy(window.to_page(profiles.whole(wall)))
        inside = np.maximum(wall, (-np.inf, window.deepest))
        lines = [window.to_page(line) for line in profiles.left_and_right(inside)]
        face = np.array([(window.left, window.face), (window.right, window.face)])
        self.walls.set_data(*joined([face, *lines]).T.tolist())
        self.tool.set_xy(_tool(one, window, body, cut=cut))
        differs = former is not None and cut and former != one.seat
        self.former.set_data(
            *(_outline(former, window) if differs and former else _NONE).T.tolist()
        )
        middle = window.axis
        self.center.set_data([middle, middle], [window.bottom - 12.0, window.face + 60.0])
        self.center.set_visible(not cut)


_NONE = np.full((1, 2), np.nan)


def _window(x: float, scale: float) -> Window:
    return Window(axis=x, face=FACE, left=x - HALF, right=x + HALF, bottom=BOTTOM, scale=scale)


def _scale(part: SameStop) -> float:
    """Page units per mm at which both seats fit and both noses stay above the break."""
    widest = WIDEST / max(one.seat.diameter for one in part.both)
    return min(widest, DEEPEST / max(max(one.nose_depth, one.travel) for one in part.both))


def _from_nose(one: Plunge) -> bool:
    """Whether the travel ends at the nose, not at the hole edge."""
    return abs(one.travel - one.nose_depth) < abs(one.travel - one.seat.depth)


def _drilled(seat: Countersink, lowest: float) -> Points:
    radius = seat.hole_diameter / 2
    return np.array([(radius, 0.0), (radius, lowest)])


def _outline(seat: Countersink, window: Window) -> Points:
    """Both sides of a seat's cone [page units], broken between them."""
    cone = profiles.countersink_wall(seat, -seat.depth)[:2]
    return joined([window.to_page(side) for side in profiles.left_and_right(cone)])


def _tool(one: Plunge, window: Window, body: float, *, cut: bool) -> Points:
    """Outline of the cutter [page units]: nose, cone, body, broken off above the face."""
    lift = 0.0 if cut else one.nose_depth + LIFTED / window.scale
    top = (STUB if cut else DIAMETER_LINE - FACE - 20.0) / window.scale
    flank = np.array([one.nose_diameter / 2, one.seat.diameter / 2])
    rise = np.array([-one.nose_depth, 0.0])
    slope = (rise[1] - rise[0]) / (flank[1] - flank[0])
    shoulder = lift + (body / 2 - flank[1]) * slope
    right = [(flank[0], lift + rise[0]), (body / 2, shoulder), (body / 2, top)]
    if shoulder > top:
        right = [right[0], (flank[1] + (top - lift) / slope, top)]
    points = window.to_page(profiles.whole(np.array(right)))
    return np.concatenate([points, _wave(points[-1], points[0])])


def _wave(start: Points, end: Points) -> Points:
    """Points of a break line from the right to the left."""
    along = np.linspace(start[0], end[0], 19)
    waves = round(abs(float(end[0] - start[0])) / 130.0) or 1
    height = 5.0 * np.sin(np.linspace(0.0, 2 * np.pi * waves, 19))
    return np.column_stack([along, start[1] + height])


def _heading(part: SameStop, system: str) -> str:
    if not part.cut:
        return "The stop has not moved. How wide will number 2 be?"
    if abs(part.wider) < 5e-4:
        return "Number 2 is as wide as number 1"
    way = "wider" if part.wider > 0 else "narrower"
    return f"Number 2 came out {show_both(abs(part.wider), system)} {way}"


def _second(part: SameStop, system: str) -> str:
    touched = TOUCHED[part.touched]
    if abs(part.stop_error) < 5e-4:
        return f"Both cut alike: {touched}, then the same travel"
    return f"Both: {touched}; number 2 {_missed(part, show_length, system)}"


def _missed(part: SameStop, show: Callable[[float, str], str], system: str) -> str:
    """Tell what the stop did at number 2."""
    way = "too deep" if part.stop_error > 0 else "too shallow"
    return f"{show(abs(part.stop_error), system)} {way}"


def _third(part: SameStop, number: int, system: str) -> str:
    """Tell angle, hole and depth of the first, depth of the second and what is dashed."""
    seat = part.both[number].seat
    deep = f"{show_length(seat.depth, system)} deep"
    if number == 0:
        hole = show_length(seat.hole_diameter, system)
        return f"{show_angle(seat.included_angle)}, hole {hole}, {deep}"
    if not part.cut:
        return ""
    return deep if seat == part.first.seat else f"{deep}; dashed: number 1"


def text_of(part: SameStop, system: str) -> str:
    """Tell what two plunges came to, with all the numbers, in two or three sentences."""
    seat, sizes = part.first.seat, [show_both(one.seat.diameter, system) for one in part.both]
    noses = [show_both(one.nose_diameter, system) for one in part.both]
    begin = (
        f"Number 1, cut with {an(show_angle(seat.included_angle))} cutter of nose {noses[0]} to a "
        f"travel of {show_both(part.first.travel, system)} after {TOUCHED[part.touched]}, is "
        f"{sizes[0]} at the face and {show_both(seat.depth, system)} deep on a hole of "
        f"{show_both(seat.hole_diameter, system)}."
    )
    if not part.cut:
        return f"{begin} For number 2 the nose is {noses[1]} and the stop has not moved."
    second = part.second
    stop = f", {_missed(part, show_both, system)} by the stop" if part.stop_error else ""
    return (
        f"{begin} Number 2, with the nose ground to {noses[1]} and a travel of "
        f"{show_both(second.travel, system)}{stop}, is {sizes[1]} at the face and "
        f"{show_both(second.seat.depth, system)} deep. {_heading(part, system)}."
    )
