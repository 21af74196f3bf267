"""A seat with a gage in it, and the reading on a scale between its limits, doubt and all."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import PathPatch, Polygon
from matplotlib.path import Path

from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes import page_words, profiles
from seatwork.drawings.strokes.linework import Linework, Points, arc, joined, linework_patches
from seatwork.drawings.strokes.metal import BELOW_BREAK, Window, draw_metal
from seatwork.drawings.strokes.style import HIDDEN_DASHES, POINTS, WIDTH, Style, page
from seatwork.drawings.strokes.symbols import line_width
from seatwork.drawings.view import View
from seatwork.seats import Countersink, Head, ball_top

AXIS, HALF, FACE, BOTTOM = 640.0, 300.0, 372.0, 226.0
"""The plate: its axis and half its width, its face and lower edge [page units]."""

ACROSS, ACROSS_HEAD = 235.0, 400.0
"""What the seat, as asked for, takes across under a gage that stands high, and under a head."""

BLADE = np.array([(-0.3, -0.7), (0.0, -0.7), (0.0, 9.5), (-2.2, 9.5), (-2.2, 1.6)])
"""A jaw of a caliper, its edge at 0, from the face up [mm], beside a seat of `SIZE`."""

CALIPER_LINE, SIDE, LABEL = 205.0, 60.0, 16.0
"""How far above the face a diameter is dimensioned, how far beside the plate a height, and how
far from that line its words stand [page units]."""

BAND, LEFT, RIGHT = 104.0, 120.0, 1160.0
TICK, WHISKER, MARK = 24.0, 14.0, 11.0
"""The scale, its ends, and half the heights of a limit, of the doubt's ends and of the mark."""

MARGIN, BOLD = 24.0, 1.13
"""Room beside words [page units], and how much wider bold type runs [-]."""

PLUNGER = np.array([(0.0, 0.0), (0.35, 0.25), (0.35, 0.9), (0.22, 0.9), (0.22, 5.6)])
"""Right half of an indicator's plunger, its tip at 0 [mm], beside a seat of `SIZE`."""

SIZE = 13.0
"""Diameter of the seat that jaws and plunger are drawn for [mm]."""

NOWHERE = np.full((3, 2), np.nan)


@dataclass(frozen=True, slots=True, kw_only=True)
class Scale:
    """A value between two limits.

    Parameters
    ----------
    value, doubt : float
        What was found, and its uncertainty either way [mm or deg].
    least, greatest : float
        The limits [mm or deg].
    low, high : float
        Ends of the scale [mm or deg]; what lies beyond is shown at the end.
    labels : tuple of str
        Words at the two limits.
    caption : str
        Words under the mark.
    """

    value: float
    doubt: float
    least: float
    greatest: float
    low: float
    high: float
    labels: tuple[str, str]
    caption: str

    def place(self, value: float) -> float:
        """Return where a value stands [page units]."""
        share = (value - self.low) / (self.high - self.low)
        return LEFT + (RIGHT - LEFT) * min(max(share, 0.0), 1.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class GagedSeat:
    """What is to be seen.

    Parameters
    ----------
    seat : Countersink
        The seat, or for a head gage one as wide as its hole.
    usual : float
        Diameter of the seat as asked for [mm]; it sets the scale of the picture.
    scale : Scale
        The reading among its limits.
    jaws : bool
        Whether a caliper is in the seat.
    balls : tuple of float
        Balls in the seat, the one behind first [mm].
    head : Head or None
        A head in the seat, or in the gage.
    amount : float
        How far it stands above the face, minus below it [mm].
    plate : bool
        Whether it hangs in the square-edged hole of a gage.
    heights : tuple of float
        The two heights above the face between which the reading is dimensioned [mm]; none for
        a diameter.
    reading, named : str
        Words at the dimension, and under the plate.
    heading, second, text : str
        Two lines on top, and the text twin.
    """

    seat: Countersink
    usual: float
    scale: Scale
    jaws: bool = False
    balls: tuple[float, ...] = ()
    head: Head | None = None
    amount: float = 0.0
    plate: bool = False
    heights: tuple[float, ...] = ()
    reading: str
    named: str
    heading: str
    second: str
    text: str

    @property
    def tops(self) -> tuple[float, ...]:
        """Heights of the balls' tops above the face [mm]."""
        return tuple(ball_top(ball, self.seat) for ball in self.balls)


class GagingView(View[GagedSeat]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : GagedSeat
        What to begin with.
    look : Look, optional
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        draw_metal(axes, self.style, _window(1.0))
        self._add_artists(axes)
        self._lines, self._heads = linework_patches(axes, self.style, animated=True)
        self._band = _Band(axes, self.style)
        self._heading = page_words.heading(axes, self.style)
        self._second = page_words.word(axes, self.style, 640.0, page_words.SECOND)
        self._named = page_words.word(axes, self.style, AXIS, BOTTOM - 44.0)
        self._reading = page_words.word(axes, self.style, 0.0, 0.0)
        return Drawing(figure, self.move(self.part))

    def _add_artists(self, axes: Axes) -> None:
        colors, sizes = self.style.colors, self.style.sizes
        edge, thin = sizes.edge * POINTS, sizes.thin * POINTS
        self._cavity = Polygon(NOWHERE, facecolor=colors.paper, linewidth=0)
        self._walls = Line2D([], [], color=colors.ink, linewidth=edge)
        looks = {"facecolor": colors.screw, "edgecolor": colors.ink, "linewidth": thin}
        self._tool = PathPatch(Path(np.zeros((3, 2))), **looks)
        self._behind = Line2D([], [], color=colors.ink, linewidth=thin, linestyle=HIDDEN_DASHES)
        parts: tuple[Artist, ...] = (self._cavity, self._walls, self._tool, self._behind)
        for step, artist in enumerate(parts):
            artist.set_zorder(2.0 + step / 5)
            artist.set_animated(True)
            axes.add_artist(artist)

    def move(self, part: GagedSeat) -> str:
        """Show another part; return the text."""
        window = _window((ACROSS_HEAD if part.head else ACROSS) / part.usual)
        wall = _wall(part, window.deepest - BELOW_BREAK / window.scale)
        self._cavity.set_xy(window.to_page(profiles.whole(wall)))
        visible = np.maximum(wall, (-np.inf, window.deepest))
        lines = [window.to_page(line) for line in profiles.left_and_right(visible)]
        face = np.array([(window.left, window.face), (window.right, window.face)])
        self._walls.set_data(*joined([face, *lines]).T.tolist())
        self._tool.set_path(_tool(part, window))
        behind = _ball(part.balls[1], part.tops[1], window) if len(part.balls) > 1 else NOWHERE
        self._behind.set_data(*behind.T.tolist())
        self._dimension(part, window)
        self._band.move(part.scale)
        self._heading.set_text(part.heading)
        self._second.set_text(part.second)
        self._named.set_text(part.named)
        return part.text

    def _dimension(self, part: GagedSeat, window: Window) -> None:
        """Dimension the diameter, or the height that was read, and write the reading."""
        work = Linework(self.style.sizes)
        if not part.heights:
            y = window.face + CALIPER_LINE
            ends = [window.spot(side * part.seat.diameter / 2, 0.0)[0] for side in (-1, 1)]
            work.dimension(*((x, y) for x in ends))
            self._reading.set(x=AXIS, y=y + 14.0, ha="center", text=part.reading)
        else:
            x, reach = window.right + SIDE, part.head.edge / 2 if part.head else 0.0
            for height in part.heights:
                start = window.spot(reach, height) if height else (window.right, window.face)
                work.extension(start, (x, start[1]))
            low, high = sorted(window.spot(0.0, height)[1] for height in part.heights)
            if high > low:
                work.dimension((x, low), (x, high))
            self._reading.set(x=x + LABEL, y=(low + high) / 2 - 9.0, ha="left", text=part.reading)
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)


class _Band:
    """The scale with its two limits, and the mark with its doubt."""

    def __init__(self, axes: Axes, style: Style) -> None:
        colors, sizes = style.colors, style.sizes
        edge = sizes.edge * POINTS
        still = Line2D([LEFT, RIGHT], [BAND, BAND], color=colors.ink, zorder=2.0)
        still.set_linewidth(sizes.thin * POINTS)
        axes.add_artist(still)
        self._between = Line2D([], [], color=colors.ink, linewidth=3.0 * edge)
        self._between.set_solid_capstyle("butt")
        self._limits = Line2D([], [], color=colors.ink, linewidth=edge)
        self._doubt = Line2D([], [], color=colors.contact, linewidth=edge)
        self._mark = Polygon(NOWHERE, facecolor=colors.contact, linewidth=0)
        parts: tuple[Artist, ...] = (self._between, self._limits, self._doubt, self._mark)
        for step, artist in enumerate(parts):
            artist.set_zorder(2.2 + step / 5)
            artist.set_animated(True)
            axes.add_artist(artist)
        up = BAND + TICK + 10.0
        self._labels = [page_words.word(axes, style, 0.0, up) for _ in range(2)]
        self._size = sizes.text / POINTS
        bold = {"fontweight": "bold", "color": colors.contact}
        self._caption = page_words.word(axes, style, 0.0, BAND - TICK - 34.0, **bold)

    def move(self, scale: Scale) -> None:
        """Show another value, or other limits."""
        ends = [scale.place(value) for value in (scale.least, scale.greatest)]
        self._between.set_data(ends, [BAND, BAND])
        self._limits.set_data(*joined([_upright(x, TICK) for x in ends]).T.tolist())
        x = scale.place(scale.value)
        sides = [scale.place(scale.value + way * scale.doubt) for way in (-1, 1)]
        along = np.array([(sides[0], BAND), (sides[1], BAND)])
        self._doubt.set_data(*joined([along, *(_upright(s, WHISKER) for s in sides)]).T.tolist())
        corners = [(x - MARK, BAND), (x, BAND + MARK), (x + MARK, BAND), (x, BAND - MARK)]
        self._mark.set_xy(corners)
        for label, end, text, ha in zip(
            self._labels, ends, scale.labels, ("right", "left"), strict=True
        ):
            label.set(x=end + (12.0 if ha == "right" else -12.0), text=text, ha=ha)
        half = BOLD * line_width(scale.caption) * self._size / 2
        self._caption.set(x=min(max(x, MARGIN + half), WIDTH - MARGIN - half), text=scale.caption)


def _upright(x: float, half: float) -> Points:
    return np.array([(x, BAND - half), (x, BAND + half)])


def _window(scale: float) -> Window:
    return Window(
        axis=AXIS, face=FACE, left=AXIS - HALF, right=AXIS + HALF, bottom=BOTTOM, scale=scale
    )


def _wall(part: GagedSeat, lowest: float) -> Points:
    """Wall right of the axis: the seat's, or the square hole of a head gage [mm]."""
    if part.plate:
        radius = part.seat.diameter / 2
        return np.array([(radius, 0.0), (radius, lowest)])
    return profiles.countersink_wall(part.seat, lowest)


def _ball(diameter: float, top: float, window: Window) -> Points:
    center = window.spot(0.0, top - diameter / 2)
    return arc(center, diameter / 2 * window.scale, 0.0, 360.0)


def _tool(part: GagedSeat, window: Window) -> Path:
    """Outline of what is in the seat [page units]."""
    if part.jaws:
        jaw = part.usual / SIZE * BLADE + np.array([part.seat.diameter / 2, 0.0])
        return Path.make_compound_path(*_closed(window, (jaw, jaw * np.array([-1.0, 1.0]))))
    if part.balls:
        return Path(_ball(part.balls[0], part.tops[0], window), closed=True)
    assert part.head is not None
    low = window.deepest - BELOW_BREAK / window.scale
    outline = profiles.head_outline(part.head, part.seat, part.amount, low)
    head = Path(window.to_page(np.asarray(outline.vertices)), outline.codes)
    plunger = profiles.whole(part.usual / SIZE * PLUNGER) + np.array([0.0, part.amount])
    return Path.make_compound_path(head, *_closed(window, (plunger,)))


def _closed(window: Window, outlines: Sequence[Points]) -> list[Path]:
    return [
        Path(window.to_page(np.concatenate([points, points[:1]])), closed=True)
        for points in outlines
    ]
