"""How a whole box of screws lies in seats of one size: a histogram, and its two worst heads."""

from dataclasses import dataclass

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import PathPatch
from matplotlib.path import Path
from numpy.typing import NDArray

from seatwork.drawings.parts import words
from seatwork.drawings.parts.seat_view import SeatView
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.metal import Window, draw_metal
from seatwork.drawings.strokes.style import HIDDEN_DASHES, POINTS, page
from seatwork.drawings.view import View
from seatwork.quantities import INCH
from seatwork.units import show_both, show_number

LEFT, RIGHT, LOW, HIGH = 60.0, 730.0, 150.0, 480.0
"""Borders of the histogram [page units]."""

LOWEST, HIGHEST, BINS = -1.143, 0.762, 50
EDGES = np.linspace(LOWEST, HIGHEST, BINS + 1)
"""Heights of heads at the histogram's ends [mm], and its bars; beyond them the end bars count."""

TICKS = {"inch": (-0.04, -0.03, -0.02, -0.01, 0.0, 0.01, 0.02), "metric": (-1.0, -0.5, 0.0, 0.5)}
MM = {"inch": INCH, "metric": 1.0}
HEADING, SECOND, NAMES, TITLE = 672.0, 628.0, 560.0, 44.0
WORST, FACES, HALF, DEEP, WIDE, TALL = 1010.0, (505.0, 205.0), 190.0, 105.0, 250.0, 40.0
HATCHES = {"deep": "///", "flush": None, "proud": "xx"}


@dataclass(frozen=True, slots=True, kw_only=True)
class BoxOfScrews:
    """Many heads in seats of one size.

    Parameters
    ----------
    heights : ndarray
        Shape (n,): height of each head above its face [mm].
    deep, flush, proud : float
        Shares of the heads [-].
    below, above : float
        How far a head may lie below the face and stand above it [mm].
    highest, lowest : SeatedHead
        The two worst pairings of head and seat.
    second : str
        One line: whether one seat does it for all.
    text : str
        The text twin.
    """

    heights: NDArray[np.float64]
    deep: float
    flush: float
    proud: float
    below: float
    above: float
    highest: SeatedHead
    lowest: SeatedHead
    second: str
    text: str


class FlushView(View[BoxOfScrews]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : BoxOfScrews
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._add_still(axes)
        colors, thin = self.style.colors, self.style.sizes.thin * POINTS
        fills = {"deep": colors.metal, "flush": colors.screw, "proud": colors.metal}
        self._bars = {}
        for name, hatch in HATCHES.items():
            bar = PathPatch(Path(np.zeros((1, 2))), facecolor=fills[name], hatch=hatch)
            bar.set(edgecolor=colors.ink, linewidth=0.7 * thin, zorder=2.0, animated=True)
            axes.add_artist(bar)
            self._bars[name] = bar
        self._limits = Line2D([], [], color=colors.contact, linewidth=thin)
        self._limits.set(linestyle=HIDDEN_DASHES, zorder=2.1, animated=True)
        axes.add_artist(self._limits)
        for face in FACES:
            draw_metal(axes, self.style, _window(face, 1.0))
        self._views = [SeatView(axes, self.style) for _ in FACES]
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: BoxOfScrews) -> str:
        """Show another part; return the text."""
        counts = _counts(part)
        unit = (HIGH - LOW) / max(1, max(int(count.max()) for count in counts))
        for bar, count in zip(self._bars.values(), counts, strict=True):
            bar.set_path(_outline(np.asarray(LOW + unit * count, float)))
        x = [_across(limit) for limit in (-part.below, part.above)]
        self._limits.set_data(
            [x[0], x[0], np.nan, x[1], x[1]], [LOW, HIGH + 16.0, np.nan, LOW, HIGH + 16.0]
        )
        both = [(one, one.lies) for one in (part.highest, part.lowest)]
        scale = min(_scale(one, found.amount) for one, found in both)
        for face, (one, found), view in zip(FACES, both, self._views, strict=True):
            view.move(one, found, _window(face, scale))
        self._write(part)
        return part.text

    def _add_still(self, axes: Axes) -> None:
        """Draw the histogram's axis with its ticks and title."""
        ink, thin = self.style.colors.ink, self.style.sizes.thin * POINTS
        axes.add_artist(Line2D([LEFT, RIGHT], [LOW, LOW], color=ink, linewidth=thin, zorder=2.2))
        system = self.look.system
        for tick in TICKS[system]:
            x = _across(tick * MM[system])
            axes.add_artist(Line2D([x, x], [LOW, LOW - 8.0], color=ink, linewidth=thin))
            label = show_number(tick, 2, 2 if system == "inch" else 1).replace("-", "−")
            self._word(axes, x, LOW - 40.0, moves=False).set_text(label)
        unit = "in" if system == "inch" else "mm"
        title = self._word(axes, (LEFT + RIGHT) / 2, TITLE, moves=False)
        title.set_text(f"Below the face (−) or proud (+) [{unit}]")

    def _add_words(self, axes: Axes) -> None:
        large = self.style.sizes.large
        self._heading = self._word(axes, 640.0, HEADING, fontsize=large, fontweight="bold")
        self._second = self._word(axes, 640.0, SECOND)
        places = ((LEFT, "left"), ((LEFT + RIGHT) / 2, "center"), (RIGHT, "right"))
        self._shares = [
            [self._word(axes, x, NAMES - row * self.style.line_height, ha=ha) for row in range(2)]
            for x, ha in places
        ]
        self._worst = [self._word(axes, WORST, face + 60.0) for face in FACES]

    def _write(self, part: BoxOfScrews) -> None:
        """Set every word and number."""
        system = self.look.system
        self._heading.set_text(heading(part))
        self._second.set_text(part.second)
        named = ("too deep", "within the rule", "proud")
        shares = percents(part.deep, part.flush, part.proud)
        for name, share, pair in zip(named, shares, self._shares, strict=True):
            pair[0].set_text(name)
            pair[1].set_text(share)
        names = ("highest", "lowest")
        for name, word, one in zip(names, self._worst, (part.highest, part.lowest), strict=True):
            word.set_text(f"{name}: {words.standing(one.lies, system)}")


def heading(part: BoxOfScrews) -> str:
    """Say what comes of the box in one line."""
    if part.flush >= 1.0:
        return "Every head of this box lies within the rule"
    return f"One seat, one box: {percent(part.deep + part.proud)} of the heads break the rule"


def percents(*shares: float) -> tuple[str, ...]:
    """Write shares [-] that make a whole in whole percent that make 100.

    Examples
    --------
    >>> percents(0.085, 0.7, 0.215), percents(0.001, 0.998, 0.001)
    (('9 %', '70 %', '21 %'), ('under 1 %', 'over 99 %', 'under 1 %'))
    """
    written = [percent(share) for share in shares]
    if not all(one[0].isdigit() for one in written):
        return tuple(written)
    whole = [int(100 * share) for share in shares]
    rests = sorted(range(len(shares)), key=lambda n: whole[n] - 100 * shares[n])
    for number in rests[: 100 - sum(whole)]:
        whole[number] += 1
    return tuple(f"{one} %" for one in whole)


def percent(share: float) -> str:
    """Write a share in whole percent, never 0 or 100 where there are some or some missing.

    Examples
    --------
    >>> percent(0.284), percent(0.0004), percent(1.0)
    ('28 %', 'under 1 %', '100 %')
    """
    if 0 < share < 0.005:
        return "under 1 %"
    return "over 99 %" if 0.995 < share < 1 else f"{show_number(100 * share, 0)} %"


def worst(part: BoxOfScrews, system: str) -> str:
    """Tell the two worst pairings of head and seat."""
    lines = []
    for name, one in (("highest", part.highest), ("lowest", part.lowest)):
        lies = words.standing(one.lies, system)
        sharp, seat = (
            show_both(size, system) for size in (one.head.sharp_diameter, one.seat.diameter)
        )
        lines.append(f"The {name}, theoretical sharp {sharp} in a seat of {seat}, is {lies}.")
    return " ".join(lines)


def _window(face: float, scale: float) -> Window:
    return Window(
        axis=WORST,
        face=face,
        left=WORST - HALF,
        right=WORST + HALF,
        bottom=face - DEEP,
        scale=scale,
    )


def _scale(one: SeatedHead, amount: float) -> float:
    """Page units per mm at which a seat fits, and a proud head stays below its label."""
    widest = WIDE / max(one.head.edge, one.seat.diameter)
    return min(widest, TALL / amount) if amount > 0 else widest


def _across(height: float) -> float:
    """Where a height [mm] stands on the histogram's axis [page units]."""
    return LEFT + (RIGHT - LEFT) * (height - LOWEST) / (HIGHEST - LOWEST)


def _counts(part: BoxOfScrews) -> list[NDArray[np.intp]]:
    """How many heads each bar holds: of those too deep, within the rule, and proud."""
    held = np.sort(np.clip(part.heights, LOWEST + 1e-9, HIGHEST - 1e-9))
    limits = [np.searchsorted(held, -part.below), np.searchsorted(held, part.above, side="right")]
    return [np.diff(np.searchsorted(sort, EDGES)) for sort in np.split(held, limits)]


def _outline(tops: NDArray[np.float64]) -> Path:
    """Outline of neighboring bars as one closed path; only bars that have a height."""
    filled = np.flatnonzero(tops > LOW)
    if not len(filled):
        return Path(np.full((1, 2), LOW))
    first, last = filled[0], filled[-1] + 1
    x = np.repeat([_across(edge) for edge in EDGES[first : last + 1]], 2)
    y = np.concatenate([[LOW], np.repeat(tops[first:last], 2), [LOW]])
    return Path(np.column_stack([x, y]), closed=False)
