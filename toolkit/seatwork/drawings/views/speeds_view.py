"""Spindle speed against diameter, the machine's steps across it, and the sum step by step."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.text import Text

from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.linework import joined
from seatwork.drawings.strokes.style import HIDDEN_DASHES, POINTS, page
from seatwork.drawings.view import View
from seatwork.quantities import INCH

LEFT, RIGHT, LOW, HIGH = 760.0, 1160.0, 130.0, 560.0
"""Borders of the chart [page units]."""

SLOWEST, FASTEST = 50.0, 5000.0
"""Spindle speeds at the chart's lower and upper border [rev/min]; both axes are logarithmic."""

SMALL, LARGE = 3.0, 60.0
"""Diameters at the chart's left and right border [mm]."""

TICKS = {"inch": (0.125, 0.25, 0.5, 1.0, 2.0), "metric": (3.0, 6.0, 12.0, 25.0, 50.0)}
MM = {"inch": INCH, "metric": 1.0}
SPEEDS = (50.0, 100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0)
HEADING, SECOND, LADDER, TITLE = 672.0, 628.0, 566.0, 42.0
NUMBER, SAID = 36.0, 74.0
"""Where the sum's numbers and its lines begin [page units]."""

DIAMETERS = np.geomspace(SMALL, LARGE, 25)
"""Diameters at which a curve is drawn [mm], shape (25,)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SpeedSum:
    """A spindle speed and how it was come by.

    Parameters
    ----------
    heading, second : str
        What it comes to, in two lines.
    ladder : tuple of (str, str)
        The sum in its order: what, and its value.
    diameter : float
        Diameter it is reckoned at [mm].
    raw, allowed : float
        Speed before and after the cap [rev/min].
    step : float or None
        Speed to set [rev/min]; None where the machine is too fast.
    cap : float or None
        Greatest speed by house rule [rev/min].
    steps : tuple of float
        The machine's speeds [rev/min]; a range by its ends.
    drill, wanted, misread : ndarray or None
        Speeds at `DIAMETERS` [rev/min], shape (25,): of a drill, by the rule, and by the rule
        misread.
    text : str
        The text twin.
    """

    heading: str
    second: str
    ladder: tuple[tuple[str, str], ...]
    diameter: float
    raw: float
    allowed: float
    step: float | None
    cap: float | None
    steps: tuple[float, ...]
    drill: Any
    wanted: Any
    misread: Any
    text: str


class SpeedsView(View[SpeedSum]):
    """The scene: see `seatwork.drawings.scene`.

    Parameters
    ----------
    part : SpeedSum
        What to begin with.
    look : Look
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure, with the part the scene was built with."""
        figure, axes = page(self.style.colors)
        self._add_still(axes)
        colors, sizes = self.style.colors, self.style.sizes
        thin, edge = sizes.thin * POINTS, sizes.edge * POINTS
        self._steps = Line2D([], [], color=colors.hatch, linewidth=0.7 * thin)
        self._cap = Line2D([], [], color=colors.contact, linewidth=thin, linestyle=HIDDEN_DASHES)
        self._drill = Line2D([], [], color=colors.center, linewidth=thin)
        self._misread = Line2D([], [], color=colors.center, linewidth=thin, linestyle=":")
        self._wanted = Line2D([], [], color=colors.ink, linewidth=edge)
        self._drop = Line2D([], [], color=colors.contact, linewidth=thin)
        weight = sizes.contact * POINTS
        self._spot = Line2D([], [], linestyle="none", marker="o", markersize=2.6 * weight)
        self._spot.set(markerfacecolor="none", markeredgecolor=colors.contact)
        self._set = Line2D([], [], linestyle="none", marker="s", markersize=2.6 * weight)
        self._set.set(markerfacecolor=colors.contact, markeredgecolor=colors.contact)
        for marks in (self._spot, self._set):
            marks.set_markeredgewidth(0.7 * weight)
        for number, artist in enumerate(self._artists):
            artist.set(zorder=2.0 + number / 10, animated=True)
            axes.add_artist(artist)
        self._add_words(axes)
        return Drawing(figure, self.move(self.part))

    def move(self, part: SpeedSum) -> str:
        """Show another part; return the text."""
        rungs = [np.array([(LEFT, y), (RIGHT, y)]) for y in _up(np.array(part.steps))]
        self._steps.set_data(*joined(rungs).T.tolist())
        cap = _up(part.cap) if part.cap else np.nan
        self._cap.set_data([LEFT, RIGHT], [cap, cap])
        x = _across(DIAMETERS)
        curves = (part.drill, part.wanted, part.misread)
        for line, speeds in zip((self._drill, self._wanted, self._misread), curves, strict=True):
            line.set_data(x, np.full_like(x, np.nan) if speeds is None else _inside(speeds))
        at, raw = _across(part.diameter), _up(part.raw)
        end = _up(part.allowed if part.step is None else part.step)
        self._spot.set_data([at], [raw])
        self._set.set_data([at], [np.nan if part.step is None else end])
        self._drop.set_data([at, at, LEFT], [raw, end, np.nan if part.step is None else end])
        self._write(part)
        return part.text

    @property
    def _artists(self) -> tuple[Line2D, ...]:
        curves = (self._steps, self._cap, self._drill, self._misread, self._wanted)
        return (*curves, self._drop, self._spot, self._set)

    def _add_still(self, axes: Axes) -> None:
        """Draw the chart's frame, its ticks and titles."""
        colors, thin = self.style.colors, self.style.sizes.thin * POINTS
        frame = [(LEFT, HIGH), (LEFT, LOW), (RIGHT, LOW)]
        axes.add_artist(Line2D(*np.transpose(frame), color=colors.ink, linewidth=thin, zorder=1.0))
        system = self.look.system
        for tick in TICKS[system]:
            x = float(_across(tick * MM[system]))
            axes.add_artist(Line2D([x, x], [LOW, LOW + 8.0], color=colors.ink, linewidth=thin))
            self._word(axes, x, LOW - 34.0, moves=False, ha="center").set_text(f"{tick:g}")
        for speed in SPEEDS:
            y = float(_up(speed))
            axes.add_artist(Line2D([LEFT, LEFT + 8.0], [y, y], color=colors.ink, linewidth=thin))
            looks: dict[str, Any] = {"ha": "right", "va": "center"}
            self._word(axes, LEFT - 10.0, y, moves=False, **looks).set_text(f"{speed:g}")
        unit = "in" if system == "inch" else "mm"
        title = self._word(axes, (LEFT + RIGHT) / 2, TITLE, moves=False, ha="center")
        title.set_text(f"Diameter [{unit}]; gray: the machine's steps")
        self._word(axes, LEFT - 60.0, HIGH + 26.0, moves=False).set_text("Spindle speed [rev/min]")

    def _add_words(self, axes: Axes) -> None:
        large, line = self.style.sizes.large, self.style.line_height
        bold: dict[str, Any] = {"fontsize": large, "fontweight": "bold", "ha": "center"}
        self._heading = self._word(axes, 640.0, HEADING, **bold)
        self._second = self._word(axes, 640.0, SECOND, ha="center")
        self._rungs = []
        for row in range(7):
            y = LADDER - 2.08 * row * line
            self._word(axes, NUMBER, y, moves=False, fontweight="bold").set_text(f"{row + 1}")
            last: dict[str, Any] = {"fontweight": "bold"} if row == 6 else {}
            pair = self._word(axes, SAID, y, **last), self._word(axes, SAID, y - 0.95 * line)
            self._rungs.append(pair)
        self._names = [self._word(axes, RIGHT + 8.0, 0.0, va="center") for _ in range(3)]

    def _word(self, axes: Axes, x: float, y: float, *, moves: bool = True, **looks: Any) -> Text:
        """Add an empty text as the other scenes do, from the left."""
        return super()._word(axes, x, y, moves=moves, **{"ha": "left"} | looks)

    def _write(self, part: SpeedSum) -> None:
        """Set every word and number."""
        self._heading.set_text(part.heading)
        self._second.set_text(part.second)
        for (what, value), words in zip(part.ladder, self._rungs, strict=True):
            words[0].set_text(what)
            words[1].set_text(value)
        ends = [("drill", part.drill), ("rule", part.wanted), ("misread", part.misread)]
        floor = LOW - self.style.line_height
        shown = [(name, _up(speeds[-1])) for name, speeds in ends if speeds is not None]
        for word in self._names:
            word.set_text("")
        for word, (name, y) in zip(
            self._names, sorted(shown, key=lambda one: one[1]), strict=False
        ):
            floor = max(float(y), LOW, floor + 0.95 * self.style.line_height)
            word.set_text(name)
            word.set_y(floor)


def _inside(speeds: Any) -> Any:
    """Heights of speeds, NaN outside the chart."""
    heights = _up(speeds)
    return np.where((heights >= LOW) & (heights <= HIGH), heights, np.nan)


def _across(diameter: Any) -> Any:
    """Where a diameter [mm] stands [page units]."""
    return LEFT + (RIGHT - LEFT) * np.log(diameter / SMALL) / np.log(LARGE / SMALL)


def _up(speed: Any) -> Any:
    """Where a spindle speed [rev/min] stands, no farther out than the border [page units]."""
    share = np.log(np.asarray(speed) / SLOWEST) / np.log(FASTEST / SLOWEST)
    return LOW + (HIGH - LOW) * np.clip(share, -0.02, 1.02)
