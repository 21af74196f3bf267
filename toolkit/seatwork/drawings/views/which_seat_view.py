"""A part, a fastener above it, and four seats to choose from; then the seat, and why."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.patches import PathPatch, Polygon
from matplotlib.path import Path

from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Points
from seatwork.drawings.strokes.metal import Window, draw_metal
from seatwork.drawings.strokes.paragraphs import Column
from seatwork.drawings.strokes.style import FONT, POINTS, Style, page
from seatwork.drawings.view import View
from seatwork.drawings.views.note_view import cut_hole
from seatwork.seats import Counterbore, Countersink, Head, fit

AXIS, HALF, FACE, BOTTOM = 255.0, 215.0, 335.0, 70.0
HEADING, LEFT, COLUMN, RIGHT, FLOOR = 664.0, 34.0, 520.0, 1252.0, 24.0
HIGHEST, LIFT = 630.0, 34.0
"""How high a fastener may reach that is not yet let down, and its gap to the face [units]."""

BUMP = 7.0
"""Height of the bumps of a rough casting as drawn [page units]; no measured roughness."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fastener:
    """A screw in outline.

    Parameters
    ----------
    shank : float
        Diameter of the shank [mm].
    flat : Head or None
        Flat head; None for one with a flat underside.
    diameter, height : float
        Across and height of a head with a flat underside [mm]; zero height is no head at all.
    """

    shank: float
    flat: Head | None = None
    diameter: float = 0.0
    height: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatChoice:
    """What the page shows.

    Parameters
    ----------
    heading : str
        Question or answer.
    fastener : Fastener
        The screw.
    seat : Countersink or Counterbore
        The right seat; a spotface is drawn as a shallow counterbore.
    hole_diameter : float
        The hole [mm].
    rough : bool
        Whether the face is a rough casting.
    lists : tuple of (str, str)
        Bold line and the words under it.
    opened : bool
        Whether the answer is shown.
    text : str
        The text twin.
    """

    heading: str
    fastener: Fastener
    seat: Countersink | Counterbore
    hole_diameter: float
    rough: bool
    lists: tuple[tuple[str, str], ...]
    opened: bool
    text: str


class WhichSeatView(View[SeatChoice]):
    """The scene: see `seatwork.drawings.scene`. A new state is a new scene.

    Parameters
    ----------
    part : SeatChoice
        What to show.
    look : Look, optional
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure."""
        figure, axes = page(self.style.colors)
        part, its = self.part, self.style
        looks: dict[str, Any] = {"fontfamily": FONT, "fontweight": "bold", "zorder": 5.3}
        looks |= {"fontsize": its.sizes.large, "color": its.colors.ink}
        axes.text(LEFT, HEADING, part.heading, **looks)
        window = _window(part)
        draw_metal(axes, its, window)
        wall = _wall(part, window)
        cut_hole(axes, its, window, wall)
        if part.rough:
            _roughen(axes, its, window, wall[0, 0])
        _add_fastener(axes, its, part, window)
        column = Column(
            axes, its, left=COLUMN, top=HEADING - 20.0, width=RIGHT - COLUMN, bottom=FLOOR
        )
        for title, words in part.lists:
            column.heading(title)
            column.paragraph(words)
        return Drawing(figure, part.text)

    def move(self, part: SeatChoice) -> str:
        """Return the text; the picture stands."""
        return part.text


def _window(part: SeatChoice) -> Window:
    high = part.fastener.height or (part.fastener.flat.apex_depth if part.fastener.flat else 1.0)
    across = max(part.seat.diameter, part.fastener.diameter)
    scale = min(1.5 * HALF / across, 0.6 * (HIGHEST - FACE) / high)
    scale = min(scale, 0.7 * (FACE - BOTTOM) / part.seat.depth)
    return Window(
        axis=AXIS, face=FACE, left=AXIS - HALF, right=AXIS + HALF, bottom=BOTTOM, scale=scale
    )


def _wall(part: SeatChoice, window: Window) -> Points:
    """Outline right of the axis: the seat once it is shown, before that the drilled hole."""
    radius, low = part.hole_diameter / 2, window.deepest
    if not part.opened:
        return np.array([(radius, 0.0), (radius, low)])
    if isinstance(part.seat, Counterbore):
        return profiles.counterbore_wall(part.seat, low)
    return profiles.countersink_wall(part.seat, low)


def _roughen(axes: Axes, its: Style, window: Window, rim: float) -> None:
    """Let the face beside the hole, or beside the seat, bulge as a casting does."""
    for side in (-1.0, 1.0):
        start, end = window.axis + side * rim * window.scale, window.axis + side * HALF
        along = np.linspace(start, end, 41)
        bumps = BUMP * np.abs(np.sin(along / 9.0) * np.sin(along / 23.0 + 1.0)) + 1.0
        top = np.column_stack([along, FACE + bumps])
        base = np.array([(end, FACE - 4.0), (start, FACE - 4.0)])
        axes.add_artist(
            Polygon(np.concatenate([top, base]), facecolor=its.colors.ink, linewidth=0, zorder=2.6)
        )


def _add_fastener(axes: Axes, its: Style, part: SeatChoice, window: Window) -> None:
    """Draw the screw: above the part with the question, in its seat with the answer."""
    screw = part.fastener
    if not screw.height and screw.flat is None:
        return
    lowest = window.deepest - 10.0 / window.scale
    if screw.flat is not None and isinstance(part.seat, Countersink):
        amount = fit(screw.flat, part.seat).amount if part.opened else _lifted(part, window)
        outline = profiles.head_outline(screw.flat, part.seat, amount, _end(part, amount, lowest))
        points, codes = np.asarray(outline.vertices), outline.codes
    else:
        floor = -part.seat.depth if isinstance(part.seat, Counterbore) else 0.0
        under = floor if part.opened else LIFT / window.scale
        low = lowest if part.opened else under - 1.2 * screw.shank
        right = np.array(
            [
                (screw.diameter / 2, under + screw.height),
                (screw.diameter / 2, under),
                (screw.shank / 2, under),
                (screw.shank / 2, low),
            ]
        )
        points, codes = profiles.whole(right), None
        points = np.concatenate([points, points[:1]])
    edge = its.sizes.edge * POINTS
    looks: dict[str, Any] = {"facecolor": its.colors.screw, "edgecolor": its.colors.ink}
    path = Path(window.to_page(points), codes)
    axes.add_artist(PathPatch(path, linewidth=edge, zorder=3.0, **looks))


def _lifted(part: SeatChoice, window: Window) -> float:
    head = part.fastener.flat
    return (head.apex_depth if head else 0.0) + LIFT / window.scale


def _end(part: SeatChoice, amount: float, lowest: float) -> float:
    """Where the shank ends that is not yet let down [mm]."""
    return lowest if part.opened else amount - 2.2 * part.seat.depth - part.fastener.shank
