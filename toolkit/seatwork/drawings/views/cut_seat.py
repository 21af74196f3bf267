"""Seats as they were cut, right or wrong, each with its screw in it: one, or two side by side."""

import io
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from matplotlib.transforms import Bbox

from seatwork.drawings.parts.plates import Plate
from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.strokes import page_words
from seatwork.drawings.strokes.linework import BREAK, Linework, joined, linework_patches
from seatwork.drawings.strokes.metal import Window
from seatwork.drawings.strokes.profiles import left_and_right
from seatwork.drawings.strokes.style import (
    CENTER_DASHES,
    HIDDEN_DASHES,
    POINTS,
    Style,
    page,
    style,
)
from seatwork.drawings.views.cut_shapes import CutSeat, half_of, marks, screw_path, wall
from seatwork.drawings.views.cut_words import lines_under, told
from seatwork.errors import SeatworkError
from seatwork.seats.faults import Standing
from seatwork.seats.heads import FLUSH
from seatwork.units import show_length

PLACES = {1: (640.0,), 2: (320.0, 944.0)}
"""Where the axes of one seat, or of two, stand [page units]."""

HALF, FACE, BOTTOM, ABOVE = 180.0, 430.0, 235.0, 165.0
"""Half of the part shown, its face, the lowest its back may lie, and the room above the face
[page units]."""

WIDEST, OUT, NAMES = 270.0, 22.0, 172.0
"""Most a seat or a head takes across, where the amount is dimensioned beside the part, and the
first line of words under it [page units]."""

SHARPNESS = 1.0
"""Pixels of a picture of one seat per page unit [-]."""

UNDER = 5
"""Lines of words under a seat [-]."""


class SeatWithScrew:
    """The scene of one seat or two: see `seatwork.drawings.scene`.

    Parameters
    ----------
    parts : tuple of CutSeat
        One seat, or two to be held beside each other.
    look : Look, optional
        Units, palette, size.
    title : str
        The large line on top.
    bare : bool
        Whether words and title are left out, and the first seat's wall stands dashed in the
        second.

    Raises
    ------
    SeatworkError
        If there are more than two, or a seat and its screw do not go together.
    """

    def __init__(
        self,
        parts: tuple[CutSeat, ...],
        look: Look | None = None,
        *,
        title: str = "",
        bare: bool = False,
    ) -> None:
        if len(parts) not in PLACES:
            raise SeatworkError(len(parts), "one seat is drawn, or two", "give one or two")
        self.parts, self.look, self._title = parts, look or Look(), "" if bare else title
        self._bare = bare
        self.style = style(self.look)

    def draw(self) -> Drawing:
        """Make the figure, with the seats the scene was built with."""
        figure, axes = page(self.style.colors)
        self._views = [_View(axes, self.style, x) for x in PLACES[len(self.parts)]]
        self._lines, self._heads = linework_patches(axes, self.style, animated=True)
        self._heading = page_words.heading(axes, self.style)
        self._heading.set_text(self._title)
        return Drawing(figure, self.move(self.parts))

    def move(self, parts: tuple[CutSeat, ...]) -> str:
        """Show other seats, as many as before; return the text."""
        found = [part.standing() for part in parts]
        work = Linework(self.style.sizes)
        scale = min(_scale(*pair) for pair in zip(parts, found, strict=True))
        for view, part, one in zip(self._views, parts, found, strict=True):
            view.move(part, one, scale, work, self.look.system)
            if self._bare:
                view.hush(parts[0] if part is not parts[0] else None, scale)
        self._lines.set_path(work.lines)
        self._heads.set_path(work.heads)
        return " ".join(told(*pair, self.look.system) for pair in zip(parts, found, strict=True))


def bare_seats(right: CutSeat | None, own: CutSeat, look: Look) -> list[tuple[bytes, str]]:
    """Draw one's own seat, and the right one before it, each alone and without words.

    Parameters
    ----------
    right : CutSeat or None
        The seat as asked for; None where it is not shown.
    own : CutSeat
        The seat that a learner's answer cuts.
    look : Look
        Units and palette.

    Returns
    -------
    list of (bytes, str)
        For each a PNG file, and what it shows in words. The words for the right seat have no
        sizes, since one of them is asked for.

    Raises
    ------
    SeatworkError
        If a seat cannot be cut.
    """
    parts = (own,) if right is None else (right, own)
    scene = SeatWithScrew(parts, look, bare=True)
    figure = scene.draw().figure
    return [
        (_alone(figure, x), in_words(part, own, look.system))
        for part, x in zip(parts, PLACES[len(parts)], strict=True)
    ]


def _alone(figure: Any, axis: float) -> bytes:
    """Return the part of the page round one seat."""
    out = io.BytesIO()
    low, high = (axis - HALF - 14.0, BOTTOM - 34.0), (axis + HALF + 36.0, FACE + ABOVE + 6.0)
    inches = Bbox(np.array([low, high]) / figure.dpi)
    dpi = figure.dpi * SHARPNESS
    figure.savefig(out, format="png", dpi=dpi, bbox_inches=inches, metadata={"Software": None})
    return out.getvalue()


def in_words(part: CutSeat, own: CutSeat, system: str) -> str:
    """Return what the picture of one seat shows; of the right one, `own` beside it, no size."""
    found = part.standing()
    if part is own:
        return told(part, found, system).replace(", as allowed", "")
    return f"The right seat, with the same screw: {found.state}."


def seat_with_screw(
    part: CutSeat,
    beside: CutSeat | None = None,
    *,
    look: Look | None = None,
    title: str = "The screw in its seat, as cut",
) -> Drawing:
    """Draw a seat as its numbers cut it, with the screw in it; another beside it if wanted.

    Any seat is drawn that can be cut, and what is wrong with it is said in words: proud, below,
    rattling, broken through, a knife edge and the like.

    Parameters
    ----------
    part : CutSeat
        The seat; on the left where there are two.
    beside : CutSeat, optional
        Another, such as the one that a learner's answer cuts, to the same scale.
    look : Look, optional
        Units, palette, size.
    title : str
        The large line on top.

    Raises
    ------
    SeatworkError
        If a seat cannot be cut, or its screw is not one for such a seat.

    Examples
    --------
    >>> from seatwork.seats import CapScrew, Counterbore
    >>> m6 = CapScrew(head_diameter=10, head_height=6, diameter=6)
    >>> bore = Counterbore(diameter=11, depth=5, hole_diameter=6.6)
    >>> drawing = seat_with_screw(CutSeat(screw=m6, seat=bore, thickness=12))
    >>> drawing.text[-53:]
    'The head stands 0.039 in (1.00 mm) proud of the face.'
    """
    parts = (part,) if beside is None else (part, beside)
    return SeatWithScrew(parts, look, title=title).draw()


class _View:
    """One part with its seat and screw, as artists that move."""

    def __init__(self, axes: Axes, its: Style, axis: float) -> None:
        colors, sizes = its.colors, its.sizes
        self._axis, self._style, self._axes = axis, its, axes
        most = Window(
            axis=axis, face=FACE + 60.0, left=axis - HALF, right=axis + HALF, bottom=BOTTOM - 60.0
        )
        self._plate, edge = Plate(axes, its, most), sizes.edge * POINTS
        nowhere = Path(np.zeros((1, 2)))
        self._screw = PathPatch(
            nowhere, facecolor=colors.screw, edgecolor=colors.ink, linewidth=edge
        )
        self._center = Line2D([], [], color=colors.center, linewidth=sizes.thin * POINTS)
        self._center.set_linestyle(CENTER_DASHES)
        weight = sizes.contact * POINTS
        self._heavy = Line2D([], [], color=colors.contact, linewidth=1.8 * weight)
        self._rings = Line2D([], [], linestyle="none", marker="o", markersize=3.4 * weight)
        self._rings.set(markerfacecolor="none", markeredgecolor=colors.contact)
        self._rings.set_markeredgewidth(0.8 * weight)
        moving = (self._screw, self._center, self._heavy, self._rings)
        for step, artist in enumerate(moving):
            artist.set(zorder=3.0 + step / 5, animated=True)
            axes.add_artist(artist)
        self._words = [
            page_words.word(axes, its, axis, NAMES - row * its.line_height) for row in range(UNDER)
        ]
        self._words[0].set_fontweight("bold")
        self._amount = page_words.word(axes, its, axis + HALF + OUT + 14.0, 0.0, ha="left")
        self._amount.set_verticalalignment("center")

    def move(
        self, part: CutSeat, found: Standing, scale: float, work: Linework, system: str
    ) -> None:
        """Show a seat with its screw; dimension lines are added to `work`."""
        axis = self._axis
        window = Window(
            axis=axis, face=FACE, left=axis - HALF, right=axis + HALF, bottom=BOTTOM, scale=scale
        )
        self._lay(part, window)
        self._screw.set_path(screw_path(part, found, window))
        self._center.set_data([axis] * 2, [BOTTOM - 30.0, FACE + ABOVE])
        rings, lines = marks(part, found)
        spots = [window.to_page(np.array([spot]) * (side, 1.0)) for spot in rings
                 for side in (-1.0, 1.0)]  # fmt: skip
        self._rings.set_data(*(joined(spots) if spots else BREAK).T.tolist())
        heavy = [window.to_page(one) for line in lines for one in left_and_right(line)]
        self._heavy.set_data(*(joined(heavy) if heavy else BREAK).T.tolist())
        self._dimension(part, found, window, work, system)
        for word, line in zip(self._words, lines_under(part, found, system, UNDER), strict=True):
            word.set_text(line)

    def hush(self, right: CutSeat | None, scale: float) -> None:
        """Leave out the words; show the wall of the right seat dashed, if there is one."""
        for word in (*self._words, self._amount):
            word.set_text("")
        if right is None or right.clean:
            return
        window = Window(axis=self._axis, face=FACE, left=0.0, right=0.0, bottom=BOTTOM, scale=scale)
        points = np.array(wall(right))
        for side in left_and_right(points):
            line = Line2D(*window.to_page(side).T, color=self._style.colors.ink, zorder=4.4)
            line.set(linewidth=self._style.sizes.thin * POINTS, linestyle=HIDDEN_DASHES)
            self._axes.add_artist(line)

    def _lay(self, part: CutSeat, window: Window) -> None:
        """Show the metal, its edges, and what is seen of them behind the hole."""
        pieces, edges = [], []
        inner = []
        for side, end in zip((-1.0, 1.0), self._plate.outside, strict=True):
            points = window.to_page(half_of(part, side, HALF / window.scale))
            edges.append(points)
            inner.append(points[1:-1])
            whole = points.copy()
            whole[[0, -1], 0] = end
            pieces.append(whole if side < 0 else whole[::-1])
        behind = [np.array(pair) for pair in zip(*inner, strict=False)]
        self._plate.move(pieces, [*edges, *(b for b in behind if abs(b[0, 1] - b[1, 1]) < 0.01)])

    def _dimension(
        self, part: CutSeat, found: Standing, window: Window, work: Linework, system: str
    ) -> None:
        """Dimension how far the head stands above the face or lies below it."""
        amount = found.amount
        faults = {"proud", "below"}.intersection(found.names)
        self._amount.set_text("")
        if amount is None or abs(amount) <= FLUSH or not faults:
            return
        line = window.right + OUT
        top = window.spot(part.head_across / 2, amount)
        work.extension(top, (line, top[1]))
        work.extension((window.right, window.face), (line, window.face))
        work.dimension((line, window.face), (line, top[1]))
        self._amount.set_text(show_length(abs(amount), system))
        self._amount.set_y((window.face + top[1]) / 2)


def _scale(part: CutSeat, found: Standing) -> float:
    """Page units per mm at which a seat and its screw fit."""
    seat: Any = part.cone or part.seat
    across = max(part.across, part.head_across, seat.hole_diameter)
    points = screw_path(part, found, Window(axis=0, face=0, left=0, right=0, bottom=0)).vertices
    highest = float(np.max(np.asarray(points)[:, 1]))
    deep = part.thickness + part.clean
    return float(min(WIDEST / across, (FACE - BOTTOM) / deep, ABOVE / max(highest, 1e-6)))
