"""The cut told in time: the swing from the start, and the last waves with their missed cuts."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import PathPatch, Polygon
from matplotlib.path import Path
from numpy.typing import NDArray

from seatwork.cutting import Trace
from seatwork.cutting.chatter.parts import NOTE
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.page_words import FOOT, SECOND, heading, word
from seatwork.drawings.strokes.style import POINTS, page
from seatwork.drawings.view import View
from seatwork.drawings.views.chatter_cones import hertz
from seatwork.units import show_length, show_number, show_spindle

LEFT, RIGHT = 80.0, 1200.0
SWING, CHIP = (345.0, 545.0), (100.0, 270.0)
"""Bottom and top of the two strips [page units]."""

BINS, POINTS_SHOWN = 140, 180
ZOOM = 0.02
"""Time that the lower strip shows [s]."""

EMPTY = Path(np.full((1, 2), -9.0))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Followed:
    """A cut that was followed in time.

    Parameters
    ----------
    trace : Trace
        The cut.
    width : float
        Width of lip that was followed [mm].
    asked : float
        Width of lip in cut [mm]; more than `width` where the model would run away.
    frequency : float or None
        Chatter frequency [Hz]; None where the cut stays quiet.
    cutter : str
        The cutter in words.
    """

    trace: Trace
    width: float
    asked: float
    frequency: float | None
    cutter: str


class TraceView(View[Followed]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : Followed
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._add_strips(axes)
        self._heading = heading(axes, self.style)
        self._second = word(axes, self.style, 640.0, SECOND)
        self._upper = word(axes, self.style, LEFT, SWING[1] + 18.0, ha="left")
        self._lower = word(axes, self.style, LEFT, CHIP[1] + 18.0, ha="left")
        self._foot = word(axes, self.style, 640.0, FOOT)
        return Drawing(figure, self.move(self.part))

    def move(self, part: Followed) -> str:
        """Show another cut; return the text."""
        system, cut = self.look.system, part.trace
        self._swing.set_xy(_envelope(cut))
        last = cut.time >= cut.time[-1] - ZOOM
        self._chip.set_data(*_line(cut.time[last], cut.chip_thickness[last]).T.tolist())
        self._missed.set_path(_gaps(cut.time[last], cut.lips_in_cut[last] == 0))
        swing = _small(cut.swing(), system)
        self._heading.set_text(_heading(part))
        self._second.set_text(_second(part, system))
        seconds = show_number(cut.time[-1], 2)
        self._upper.set_text(
            f"Swing of the tool over {seconds} s; at the end {swing} from peak to peak"
        )
        shade = "; shaded: no lip cuts" if cut.missed > 0 else ""
        self._lower.set_text(f"Chip thickness at one lip, the last {show_number(ZOOM, 2)} s{shade}")
        self._foot.set_text(f"An {NOTE}")
        return text_of(part, system)

    def _add_strips(self, axes: Axes) -> None:
        colors, sizes = self.style.colors, self.style.sizes
        thin = sizes.thin * POINTS
        nowhere = np.full((3, 2), -9.0)
        self._swing = Polygon(nowhere, facecolor=colors.contact, linewidth=0)
        self._missed = PathPatch(EMPTY, facecolor=colors.screw, linewidth=0)
        self._chip = Line2D([], [], color=colors.ink, linewidth=1.3 * thin)
        for order, artist in enumerate((self._swing, self._missed, self._chip)):
            artist.set(zorder=2.0 + order, animated=True)
            axes.add_artist(artist)
        for low, top in (SWING, CHIP):
            frame = Line2D([LEFT, LEFT, RIGHT], [top, low, low], color=colors.ink, zorder=1.0)
            frame.set_linewidth(thin)
            axes.add_artist(frame)


def _places(time: NDArray[np.floating[Any]]) -> NDArray[np.float64]:
    """Places of moments along the page [page units]."""
    span = max(float(time[-1] - time[0]), 1e-9)
    places: NDArray[np.float64] = LEFT + (time - time[0]) / span * (RIGHT - LEFT)
    return places


def _envelope(cut: Trace) -> NDArray[np.float64]:
    """Outline of all swings [page units]; the strip is as high as the greatest of them."""
    whole = len(cut.displacement) // BINS * BINS
    shares = cut.displacement[:whole].reshape(BINS, -1)
    low, high = shares.min(axis=1), shares.max(axis=1)
    span = max(float(high.max() - low.min()), 0.02)
    room = SWING[1] - SWING[0] - 8.0
    base = SWING[0] + 4.0 - low.min() / span * room
    x = _places(cut.time[: whole : whole // BINS][:BINS])
    upper, lower = base + high / span * room, base + low / span * room
    return np.concatenate([np.column_stack([x, upper + 1]), np.column_stack([x, lower - 1])[::-1]])


def _line(time: NDArray[np.float64], chip: NDArray[np.float64]) -> NDArray[np.float64]:
    """Chip thickness against time [page units]."""
    chosen = np.linspace(0, len(time) - 1, POINTS_SHOWN).astype(int)
    top = max(float(chip.max()), 1e-3)
    y = CHIP[0] + chip[chosen] / top * (CHIP[1] - CHIP[0] - 6.0)
    return np.column_stack([_places(time)[chosen], y])


def _gaps(time: NDArray[np.float64], missed: NDArray[np.bool_]) -> Path:
    """Draw times in which no lip cuts as blocks [page units]."""
    turns = np.flatnonzero(np.diff(np.concatenate([[False], missed, [False]]).astype(int)))
    x = _places(time)
    blocks = [
        Path(np.array([(x[a], CHIP[0]), (x[b - 1], CHIP[0]), (x[b - 1], CHIP[1]), (x[a], CHIP[1])]))
        for a, b in zip(turns[0::2], turns[1::2], strict=True)
    ]
    return Path.make_compound_path(*blocks) if blocks else EMPTY


def _small(mm: float, system: str) -> str:
    return show_length(mm, system, 4 if system == "inch" else 3)


def _heading(part: Followed) -> str:
    state = "stays quiet" if part.frequency is None else f"sings at {hertz(part.frequency)}"
    return f"{part.cutter} at {show_spindle(part.trace.spindle_speed)}: {state}"


def _second(part: Followed, system: str) -> str:
    width = show_length(part.width, system)
    if part.trace.capped:
        return f"{width} of lip in cut; stopped: the swing outgrew the model"
    if part.width < part.asked:
        return f"Followed at {width}, twice the limit: wider, the model has no wall to hit"
    return f"{width} of lip in cut"


def text_of(part: Followed, system: str) -> str:
    """Tell a cut in time, with all the numbers."""
    cut = part.trace
    missed = f"{show_number(100 * cut.missed, 0)} % of the time no lip cuts"
    return (
        f"The cut in time. {_heading(part)}. {_second(part, system)}. At the end of "
        f"{show_number(cut.time[-1], 2)} s the tool swings {_small(cut.swing(), 'inch')} "
        f"({_small(cut.swing(), 'metric')}) from peak to peak; {missed}. An {NOTE}."
    )
