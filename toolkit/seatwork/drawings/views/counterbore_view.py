"""A counterbore in section, twice: being cut on its pilot, and with its screw tightened."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import PathPatch
from matplotlib.path import Path

from seatwork.drawings.parts import tightening
from seatwork.drawings.parts.plates import Plate
from seatwork.drawings.parts.tightening import Bolt, Ring
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes import page_words
from seatwork.drawings.strokes.linework import BREAK, Linework, Points, joined, linework_patches
from seatwork.drawings.strokes.metal import Window
from seatwork.drawings.strokes.profiles import left_and_right
from seatwork.drawings.strokes.style import CENTER_DASHES, HIDDEN_DASHES, POINTS, Style, page
from seatwork.drawings.strokes.symbols import SignedLine
from seatwork.drawings.view import View
from seatwork.seats import Counterbore
from seatwork.seats.pilots import Pilot, RaisedBoss
from seatwork.units import show_length

CUTTING, TIGHTENING = 340.0, 800.0
FACE, BOTTOM, HALF, RIGHT, HIGHEST = 345.0, 140.0, 160.0, 225.0, 140.0
"""Where the face lies, how far down and to either side a plate may reach from it, and how far
up a boss with its head [page units]."""

SHOULDER, TOP, ACROSS = 85.0, 546.0, 570.0
"""How far a cutter's body shows above the face; where shanks are broken off; where the
diameter is dimensioned [page units]."""

WIDEST, SOCKET, BELOW = 300.0, 330.0, 10.0
NAMES, ASIDE, LABEL = (96.0, 60.0, 24.0), 26.0, 40.0
COLUMNS = (CUTTING, TIGHTENING + (RIGHT - HALF) / 2)


@dataclass(frozen=True, slots=True, kw_only=True)
class Tightened:
    """A counterbore, its cutter and its screw.

    Parameters
    ----------
    bore : Counterbore
        As cut, into the face or into the boss.
    thickness, edge_distance : float
        Of the plate, and from the hole's axis to its edge [mm].
    floor_left, web : float
        Metal under the seat, and from seat or boss to the edge [mm].
    bolt : Bolt
        The screw.
    amount : float
        How far its head stands above the face, minus below it [mm].
    pilot : Pilot
        Pilot of the cutter.
    washer : Ring, optional
        Under the head.
    boss : RaisedBoss, optional
        What the seat is cut into instead of the face.
    socket : float, optional
        Outside diameter of the wrench socket [mm]; None where a key turns the screw.
    rests_at : float
        Height of what the socket's rim rests on, from the face [mm].
    heading, second : str
        The two lines on top.
    cutting, tightening : tuple of str
        Two lines under each section.
    text : str
        The text twin.
    """

    bore: Counterbore
    thickness: float
    edge_distance: float
    floor_left: float
    web: float
    bolt: Bolt
    amount: float
    pilot: Pilot
    washer: Ring | None
    boss: RaisedBoss | None
    socket: float | None
    rests_at: float
    heading: str
    second: str
    cutting: tuple[str, str]
    tightening: tuple[str, str]
    text: str

    @property
    def rim(self) -> float:
        """Height of what the seat is cut into, from the face [mm]."""
        return self.boss.height if self.boss else 0.0

    @property
    def floor(self) -> float:
        """Height of the seat's floor, from the face [mm]."""
        return self.rim - self.bore.depth

    @property
    def under_head(self) -> float:
        """Height of what the head lies on, from the face [mm]."""
        return self.floor + (self.washer.thickness if self.washer else 0.0)


class CounterboreView(View[Tightened]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : Tightened
        What to begin with.
    look : Look, optional
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._plates = [Plate(axes, self.style, _most(axis)) for axis in (CUTTING, TIGHTENING)]
        self._solids = _Solids(axes, self.style)
        self._lines, self._heads = linework_patches(axes, self.style, animated=True)
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: Tightened) -> str:
        """Show another part; return the text."""
        scale = _scale(part)
        left, right = (_window(axis, scale) for axis in (CUTTING, TIGHTENING))
        edge = right.spot(part.edge_distance, 0.0)[0]
        for plate, window, outer in zip(self._plates, (left, right), (None, edge), strict=True):
            _lay(plate, part, window, outer)
        self._solids.cut(part, left)
        self._solids.tighten(part, right)
        work = Linework(self.style.sizes)
        self._dimension_cut(work, part, left)
        self._dimension_plate(work, part, right, edge)
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)
        self._write(part)
        return part.text

    @property
    def ghosts(self) -> tuple[Artist, ...]:
        """The wall of the screw's seat, which may stay behind; known after `draw`."""
        return (self._plates[1].edges,)

    def _add_words(self, axes: Axes) -> None:
        its = self.style
        self._heading = page_words.heading(axes, its)
        self._second = page_words.word(axes, its, 640.0, page_words.SECOND)
        self._names = []
        for x, name in zip(COLUMNS, ("Cutting it", "Tightening it"), strict=True):
            first, *rest = (page_words.word(axes, its, x, y) for y in NAMES)
            first.set(text=name, fontweight="bold")
            self._names.append(rest)
        self._across = SignedLine(
            axes, its, x=CUTTING, y=ACROSS + 18.0, align="center", animated=True
        )
        beside = CUTTING - HALF - LABEL
        self._deep = [page_words.word(axes, its, beside, 0.0, ha="right") for _ in range(2)]
        self._web, self._floor = (page_words.word(axes, its, 0.0, 0.0, ha="left") for _ in range(2))
        for word in (*self._deep, self._web, self._floor):
            word.set(va="center")

    def _dimension_cut(self, work: Linework, part: Tightened, window: Window) -> None:
        """Dimension diameter and depth of the cut on the left."""
        shoulder = _shoulder(part, window)
        ends = [window.spot(side * part.bore.diameter / 2, 0.0)[0] for side in (-1, 1)]
        for x in ends:
            work.extension((x, shoulder), (x, ACROSS))
        work.dimension(*((x, ACROSS) for x in ends))
        line = window.axis - HALF - ASIDE
        rim = part.boss.diameter if part.boss else part.bore.diameter
        top, low = window.spot(-rim / 2, part.rim), window.spot(-part.bore.diameter / 2, part.floor)
        for corner in (top, low):
            work.extension(corner, (line, corner[1]))
        work.dimension((line, low[1]), (line, top[1]))
        middle = (top[1] + low[1]) / 2
        for word, up in zip(self._deep, (0.5, -0.5), strict=True):
            word.set_y(middle + up * self.style.line_height)

    def _dimension_plate(
        self, work: Linework, part: Tightened, window: Window, edge: float
    ) -> None:
        """Dimension floor and web on the right."""
        reach = part.boss.diameter if part.boss else part.bore.diameter
        wall = window.spot(reach / 2, 0.0)[0]
        web = window.spot(0.0, (part.rim if part.boss else -part.bore.depth) / 2)[1]
        if part.boss:
            work.extension((edge, window.face), (edge, web))
        work.dimension((wall, web), (edge, web))
        floor, under = (window.spot(0.0, y)[1] for y in (part.floor, -part.thickness))
        line = edge + ASIDE
        work.extension((window.spot(part.bore.diameter / 2, 0.0)[0], floor), (line, floor))
        work.extension((edge, under), (line, under))
        work.dimension((line, under), (line, floor))
        self._web.set_position((edge + ASIDE + LABEL, web))
        below = min((floor + under) / 2, web - 1.1 * self.style.line_height)
        self._floor.set_position((edge + LABEL, below))

    def _write(self, part: Tightened) -> None:
        """Set every word and number."""
        system = self.look.system
        self._heading.set_text(part.heading)
        self._second.set_text(part.second)
        for words, lines in zip(self._names, (part.cutting, part.tightening), strict=True):
            for word, line in zip(words, lines, strict=True):
                word.set_text(line)
        self._across.set(f"⌀ {show_length(part.bore.diameter, system)}")
        for word, text in zip(
            self._deep, ("depth", show_length(part.bore.depth, system)), strict=True
        ):
            word.set_text(text)
        self._web.set_text(f"web {show_length(part.web, system)}")
        self._floor.set_text(f"floor {show_length(part.floor_left, system)}")


class _Solids:
    """What is not the plate: cutter, screw, washer, wrench; as artists that move."""

    def __init__(self, axes: Axes, its: Style) -> None:
        colors, edge, thin = its.colors, its.sizes.edge * POINTS, its.sizes.thin * POINTS
        self.wrench = _solid(colors.metal, colors.ink, thin)
        self.wrench.set_hatch("\\\\")
        self.cutter = _solid(colors.screw, colors.ink, thin)
        self.washer = _solid(colors.center, colors.ink, thin)
        self.bolt = _solid(colors.screw, colors.ink, edge)
        self.key = _solid(colors.metal, colors.ink, thin)
        weight = 1.3 * its.sizes.contact * POINTS
        self.stopped = Line2D([], [], color=colors.contact, linewidth=weight)
        self.center = Line2D([], [], color=colors.center, linewidth=thin)
        self.center.set_linestyle(CENTER_DASHES)
        self.seen = [Line2D([], [], color=colors.ink, linewidth=thin) for _ in range(2)]
        self.hidden = [Line2D([], [], color=colors.ink, linewidth=thin) for _ in range(2)]
        for line in self.hidden:
            line.set_linestyle(HIDDEN_DASHES)
        order = (self.wrench, self.washer, self.key, self.cutter, self.bolt)
        lines = (*self.seen, *self.hidden, self.center, self.stopped)
        for artist, height in (
            *((solid, 2.6 + step / 10) for step, solid in enumerate(order)),
            *((line, 3.2) for line in lines),
        ):
            artist.set(zorder=height, animated=True)
            axes.add_artist(artist)

    def cut(self, part: Tightened, window: Window) -> None:
        """Show the cutter on the floor, its pilot in the hole."""
        low = -part.thickness - BELOW / window.scale
        shoulder = _shoulder(part, window)
        body, pilot, floor = part.bore.diameter, part.pilot.diameter, part.floor
        self.cutter.set_path(
            tightening.cutter(body, pilot, window, floor=floor, low=low, tops=(shoulder, TOP))
        )
        place: dict[str, Any] = {"floor": floor, "shoulder": shoulder}
        self.seen[0].set_data(*tightening.flutes(body, window, **place).T.tolist())
        removable = part.pilot.kind == "removable"
        _set(self.hidden[0], tightening.stem(pilot, window, **place) if removable else BREAK)

    def tighten(self, part: Tightened, window: Window) -> None:
        """Show the screw on its seat, and what turns it."""
        seat, screw, ring = part.under_head, part.bolt, part.washer
        low = -part.thickness - BELOW / window.scale
        self.bolt.set_path(tightening.bolt(screw, window, seat=seat, low=low))
        _set(self.seen[1], tightening.bolt_lines(screw, window, seat))
        self.washer.set_visible(ring is not None)
        if ring is not None:
            self.washer.set_path(tightening.washer(ring, window, part.floor))
        self.wrench.set_visible(part.socket is not None)
        self.key.set_visible(part.socket is None)
        if part.socket is None:
            outline, inside = tightening.key(screw, window, seat=seat, top=TOP)
            self.key.set_path(outline)
        else:
            inside = BREAK
            self.wrench.set_path(
                tightening.socket(screw, part.socket, window, rests=part.rests_at, top=TOP)
            )
        _set(self.hidden[1], inside)
        _set(self.stopped, _stop(part, window))
        axis = window.axis
        self.center.set_data([axis, axis], [window.spot(0.0, low)[1] - 8.0, TOP + 20.0])


def _stop(part: Tightened, window: Window) -> Points:
    """Give the face that keeps a wrench socket out, both sides [page units]."""
    if part.socket is None or part.boss or part.rests_at < 0:
        return BREAK
    line = np.array([(part.bore.diameter / 2, 0.0), (part.socket / 2, 0.0)])
    return joined([window.to_page(side) for side in left_and_right(line)])


def _solid(face: str, edge: str, weight: float) -> PathPatch:
    nothing = Path(np.zeros((1, 2)))
    return PathPatch(nothing, facecolor=face, edgecolor=edge, linewidth=weight)


def _set(line: Line2D, points: Points) -> None:
    line.set_data(*points.T.tolist())


def _most(axis: float) -> Window:
    """Give the most that is ever metal: the plate, and above it the boss."""
    right = axis + (RIGHT if axis == TIGHTENING else HALF)
    return Window(axis=axis, face=FACE + HIGHEST, left=axis - HALF, right=right, bottom=BOTTOM)


def _window(axis: float, scale: float) -> Window:
    right = axis + (RIGHT if axis == TIGHTENING else HALF)
    return Window(axis=axis, face=FACE, left=axis - HALF, right=right, bottom=BOTTOM, scale=scale)


def _scale(part: Tightened) -> float:
    """Page units per mm at which all of it fits."""
    above = max(part.rim, part.amount, 1e-6)
    return min(
        (FACE - BOTTOM) / part.thickness,
        WIDEST / max(part.bore.diameter, part.boss.diameter if part.boss else 0.0),
        RIGHT / part.edge_distance,
        SOCKET / (part.socket or 1e-6),
        HIGHEST / above,
    )


def _shoulder(part: Tightened, window: Window) -> float:
    """Where the body of the cutter ends [page units]."""
    return window.spot(0.0, part.rim)[1] + SHOULDER


def _lay(plate: Plate, part: Tightened, window: Window, edge: float | None) -> None:
    """Show the plate with its seat; `edge` is where it ends on the right [page units]."""
    large, small = part.bore.diameter / 2, part.bore.hole_diameter / 2
    top = [(large, part.rim)]
    if part.boss:
        top += [(part.boss.diameter / 2, part.rim), (part.boss.diameter / 2, 0.0)]
    wall = [(small, -part.thickness), (small, part.floor), (large, part.floor)]
    mm, scaled = np.array([*top, *wall]), []
    for side, outer in zip((-1.0, 1.0), plate.outside, strict=True):
        points = window.to_page(mm * np.array([side, 1.0]))
        end = outer if edge is None or side < 0 else edge
        under = window.spot(0.0, -part.thickness)[1]
        corners = np.array([(end, window.face), (end, under)])
        scaled.append((points[: len(top)], corners, points[len(top) :]))
    pieces = [np.concatenate(piece) for piece in scaled]
    pieces[0] = pieces[0][::-1]
    edges = []
    for number, (rim, corners, inside) in enumerate(scaled):
        real = number == 1 and edge is not None
        ends = corners if real else _drawn(corners, window, number)
        edges.append(np.concatenate([inside[::-1][:1], rim, ends[:1]]))
        edges.append(np.concatenate([ends[1:], inside]))
        if real:
            edges.append(corners)
    edges.append(np.array([scaled[0][0][0], scaled[1][0][0]]))
    plate.move(pieces, edges)


def _drawn(corners: Points, window: Window, number: int) -> Points:
    """Let edges end at the break line, not beyond it."""
    x = window.right if number else window.left
    return np.array([(x, y) for _, y in corners])
