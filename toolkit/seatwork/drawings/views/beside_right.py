"""What one's own number makes, drawn beside what the right one makes, where it is no whole seat.

Each is drawn without words or sizes, both to one scale, and in one's own the right one is dashed.
"""

import io
from dataclasses import dataclass
from typing import Protocol

import numpy as np
from matplotlib.transforms import Bbox

from seatwork.drawings.scene import Look
from seatwork.drawings.strokes.sketch import Sketch

PLACES = (320.0, 944.0)
"""Where the middle of the right one stands, and of one's own [page units]."""

HALF = 195.0
"""Half of the width of one picture [page units]."""

LONGEST, MOST = 350.0, 6.0
"""The longer of two bars as drawn [page units], and the most it may be of the right one [-]."""

BAR, BASE = 46.0, 60.0
"""Height of a bar, and where its lower side lies [page units]."""


class Beside(Protocol):
    """A thing that a number makes, which can be drawn for any number within reach."""

    @property
    def right(self) -> float:
        """The right value."""

    @property
    def own(self) -> float:
        """One's own."""

    @property
    def box(self) -> tuple[float, float]:
        """Lower and upper end of the picture [page units]."""

    def fits(self) -> bool:
        """Tell whether one's own can be drawn."""

    def draw(self, sketch: Sketch, middle: float, value: float) -> None:
        """Draw what a value makes."""

    def dashed(self, sketch: Sketch, middle: float) -> None:
        """Draw the right one over one's own, dashed."""


def beside_right(pair: Beside, look: Look, *, alone: bool = False) -> list[bytes]:
    """Draw the right one and one's own as two PNG files of one scale.

    Parameters
    ----------
    pair : Beside
        Both values, and how they are drawn.
    look : Look
        Palette and size.
    alone : bool
        Whether one's own is shown alone, as a right answer is.
    """
    sketch = Sketch({}, look)
    values: list[tuple[float, float]] = [(PLACES[1], pair.own)]
    if not alone:
        values.insert(0, (PLACES[0], pair.right))
    for middle, value in values:
        pair.draw(sketch, middle, value)
    if not alone:
        pair.dashed(sketch, PLACES[1])
    sketch.finish()
    return [_cut_out(sketch, middle, pair.box) for middle, _ in values]


def _cut_out(sketch: Sketch, middle: float, box: tuple[float, float]) -> bytes:
    """Return the part of the page round one picture."""
    out, figure = io.BytesIO(), sketch.figure
    corners = np.array([(middle - HALF - 10.0, box[0]), (middle + HALF + 10.0, box[1])])
    inches = Bbox(corners / figure.dpi)
    figure.savefig(out, format="png", bbox_inches=inches, metadata={"Software": None})
    return out.getvalue()


@dataclass(frozen=True, slots=True, kw_only=True)
class Bars:
    """Two amounts of one kind as bars: how far it went, how fast it ran, how many there are.

    Parameters
    ----------
    right, own : float
        The amounts, not below zero, both in one unit [mm, m/min or a count].
    """

    right: float
    own: float

    @property
    def box(self) -> tuple[float, float]:
        """Lower and upper end of the picture [page units]."""
        return BASE - 24.0, BASE + BAR + 24.0

    def fits(self) -> bool:
        """Tell whether both can be seen in one scale."""
        return 0 <= self.own <= MOST * self.right

    def _length(self, value: float) -> float:
        return LONGEST * value / max(self.own, self.right)

    def draw(self, sketch: Sketch, middle: float, value: float) -> None:
        """Draw the bar of a value from its foot."""
        left, top = middle - HALF + 10.0, BASE + BAR
        end = left + self._length(value)
        if value > 0:
            sketch.steel([(left, BASE), (end, BASE), (end, top), (left, top)])
        sketch.edge([(left, BASE - 16.0), (left, top + 16.0)])

    def dashed(self, sketch: Sketch, middle: float) -> None:
        """Draw where the right bar ends."""
        end = middle - HALF + 10.0 + self._length(self.right)
        sketch.hidden([(end, BASE - 16.0), (end, BASE + BAR + 16.0)], order=4.5)


LEAST, STEP, LEVEL, BAND, SPAN = -60.0, 24.0, 100.0, 46.0, 26.0
"""Where the least size stands, one doubt as drawn, lower side and height of the band of good
sizes, and height of the bar of what a reading may mean [page units]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class DoubtBand:
    """What a part may measure that reads so, under the band of good sizes.

    Parameters
    ----------
    least, greatest, doubt : float
        Limits and doubt [mm].
    right, own : float
        Lowest readings that are passed [mm].
    """

    least: float
    greatest: float
    doubt: float
    right: float
    own: float

    @property
    def box(self) -> tuple[float, float]:
        """Lower and upper end of the picture [page units]."""
        return LEVEL - SPAN - 64.0, LEVEL + BAND + 12.0

    def _place(self, middle: float, size: float) -> float:
        return middle + LEAST + STEP * (size - self.least) / self.doubt

    def fits(self) -> bool:
        """Tell whether the reading lies within the picture."""
        ends = (self._place(0.0, self.own + side * self.doubt) for side in (-1.0, 1.0))
        return all(abs(end) < HALF for end in ends)

    def draw(self, sketch: Sketch, middle: float, value: float) -> None:
        """Draw the band of good sizes and under it what the reading may mean."""
        left = self._place(middle, self.least)
        right, top = min(self._place(middle, self.greatest), middle + HALF), LEVEL + BAND
        sketch.metal([(left, LEVEL), (right, LEVEL), (right, top), (left, top)])
        for at, sign in ((left, "MIN"), (right, "MAX")):
            if at < middle + HALF:
                sketch.edge([(at, LEVEL - SPAN - 22.0), (at, top)])
                sketch.write(at, LEVEL - SPAN - 46.0, sign, ha="center")
        sketch.thin([(middle - HALF, LEVEL), (middle + HALF, LEVEL)])
        ends = [self._place(middle, value + side * self.doubt) for side in (-1.0, 1.0)]
        low, high = LEVEL - SPAN - 12.0, LEVEL - 12.0
        sketch.steel([(ends[0], low), (ends[1], low), (ends[1], high), (ends[0], high)])
        for start, end in ((ends[0], min(ends[1], left)), (max(ends[0], right), ends[1])):
            if end - start > 0.5:
                sketch.cannot_be([(start, low), (end, low), (end, high), (start, high)])
        at = self._place(middle, value)
        sketch.edge([(at, low - 10.0), (at, high)], order=4.6)

    def dashed(self, sketch: Sketch, middle: float) -> None:
        """Draw the right reading."""
        at = self._place(middle, self.right)
        sketch.hidden([(at, LEVEL - SPAN - 22.0), (at, LEVEL + BAND)], order=4.7)
