"""Views of the coupons at full size, dimensioned: the bar from above and cut, the tilted pad."""

from collections.abc import Mapping

import numpy as np
from matplotlib.lines import Line2D
from matplotlib.patches import Circle, Polygon

from seatwork.cards.lettering import UNITS, width, write
from seatwork.cards.pages import MARGIN, Pages
from seatwork.cards.to_scale import MM, PRINT
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Linework, joined, linework_patches
from seatwork.drawings.strokes.style import CENTER_DASHES
from seatwork.quantities import INCH
from seatwork.seats import Countersink, Spotface
from seatwork.units import show_angle, show_length

END, PITCH, WIDE, THICK = INCH, 1.25 * INCH, INCH, INCH / 2  # mm: 1 in, 1-1/4 in, 1 in, 1/2 in
LONG = 2 * END + 3 * PITCH
PAD, PAD_LOW, TILT = 2 * INCH, INCH, 5.0  # mm, mm, deg
FACE = Spotface(diameter=31.75, hole_diameter=13.49375)  # 1-1/4 on 17/32
EDGE, THIN = 1.8, 0.8
Spot = tuple[float, float]


class View:
    """A view at 1:1 with its dimensions; spots are mm from its lower left corner.

    Parameters
    ----------
    pages : Pages
        Where it goes.
    left, down : float
        Lower left corner: from the left margin, and from the top of the page [in].
    """

    def __init__(self, pages: Pages, *, left: float, down: float) -> None:
        self.axes = pages.axes
        self.corner = np.array([(MARGIN + left) * UNITS, (pages.height - down) * UNITS])
        self.work = Linework(PRINT.sizes)

    def at(self, *spots: Spot) -> profiles.Points:
        """Return spots in page units."""
        return np.asarray(np.array(spots) * MM + self.corner)

    def outline(self, *spots: Spot) -> None:
        """Draw a closed outline."""
        shape = Polygon(self.at(*spots), fill=False, edgecolor="black", linewidth=EDGE)
        self.axes.add_artist(shape)

    def metal(self, *spots: Spot) -> None:
        """Draw a cut piece, hatched."""
        shape = Polygon(self.at(*spots), facecolor="white", edgecolor="black", linewidth=EDGE)
        shape.set_hatch("///")
        shape.set_hatch_linewidth(0.5)
        self.axes.add_artist(shape)

    def ring(self, spot: Spot, diameter: float) -> None:
        """Draw a circle [mm]."""
        center = self.at(spot)[0]
        circle = Circle(tuple(center), diameter * MM / 2, fill=False, linewidth=EDGE)
        self.axes.add_artist(circle)

    def center(self, *lines: tuple[Spot, Spot]) -> None:
        """Draw centerlines."""
        points = joined([self.at(*line) for line in lines])
        self.axes.add_artist(
            Line2D(*points.T, color="black", linewidth=THIN, linestyle=CENTER_DASHES)
        )

    def across(self, start: Spot, end: Spot, up: float, words: str) -> None:
        """Dimension across, on a line `up` [mm]; the words stand over its middle."""
        for spot in (start, end):
            self.work.extension(*(tuple(p) for p in self.at(spot, (spot[0], up))))
        first, last = self.at((start[0], up), (end[0], up))
        self.work.dimension(tuple(first), tuple(last))
        write(self.axes, (first[0] + last[0]) / 2 - width(words) * UNITS / 2, first[1] + 5, words)

    def height(self, low: Spot, high: Spot, right: float, words: str) -> None:
        """Dimension a height, on a line at `right` [mm]; the words stand beside it."""
        for spot in (low, high):
            self.work.extension(*(tuple(p) for p in self.at(spot, (right, spot[1]))))
        first, last = self.at((right, low[1]), (right, high[1]))
        self.work.dimension(tuple(first), tuple(last))
        write(self.axes, first[0] + 8, (first[1] + last[1]) / 2 - 5, words)

    def beside(self, spot: Spot, words: str) -> None:
        """Say something, starting at a spot."""
        x, y = self.at(spot)[0]
        write(self.axes, x, y, words)

    def say(self, spot: Spot, words: str, *, bold: bool = False) -> None:
        """Write words with their middle over a spot."""
        (x, y), half = self.at(spot)[0], width(words, bold=bold) * UNITS / 2
        write(self.axes, x - half, y, words, bold=bold)

    def done(self) -> None:
        """Draw the dimensions gathered."""
        patches = linework_patches(self.axes, PRINT)
        for patch, path in zip(patches, (self.work.lines, self.work.heads), strict=True):
            patch.set_path(path)


def places() -> tuple[float, ...]:
    """Return where the seats stand along the bar [mm]."""
    return tuple(END + number * PITCH for number in range(4))


def bar(pages: Pages, seats: Mapping[str, Countersink]) -> None:
    """Draw the bar at full size from above and cut along its middle.

    Parameters
    ----------
    pages : Pages
        Where it goes.
    seats : mapping of str to Countersink
        Its four seats by letter.
    """
    top = pages.down
    _from_above(View(pages, left=0.0, down=top + 1.45), seats)
    _cut(View(pages, left=0.0, down=top + 2.3), seats)
    sizes = "; ".join(show_length(size) for size in (END, PITCH, WIDE, THICK, LONG))
    pages.words[-1].append(f"[bar at full size, 1:1, from above and cut: {sizes}]")
    pages.down = top + 2.95


def _from_above(view: View, seats: Mapping[str, Countersink]) -> None:
    view.outline((0, 0), (LONG, 0), (LONG, WIDE), (0, WIDE))
    middle, over = WIDE / 2, WIDE + 5.0
    edges = (0.0, *places())
    for (letter, seat), x, before in zip(seats.items(), places(), edges, strict=False):
        for size in (seat.diameter, seat.hole_diameter):
            view.ring((x, middle), size)
        view.center(((x, 2.0), (x, WIDE - 2.0)), ((x - 9.5, middle), (x + 9.5, middle)))
        view.say((x + 12.5, middle - 1.5), letter, bold=True)
        view.across((before, WIDE), (x, WIDE), over, show_length(x - before))
    view.height((LONG, 0), (LONG, WIDE), LONG + 5.0, show_length(WIDE))
    view.done()


def _cut(view: View, seats: Mapping[str, Countersink]) -> None:
    walls = [profiles.countersink_wall(seat, -THICK) for seat in seats.values()]
    right: list[Spot] = [(0.0, THICK), (0.0, 0.0)]
    for wall, x in zip(walls, places(), strict=True):
        left = [(x - r, THICK + y) for r, y in wall[::-1]]
        view.metal(*right, *left)
        right = [(x + r, THICK + y) for r, y in wall]
    view.metal(*right, (LONG, 0.0), (LONG, THICK))
    for (letter, seat), x in zip(seats.items(), places(), strict=True):
        view.center(((x, -2.0), (x, THICK + 2.0)))
        view.say((x, -6.5), f"{letter}  {show_angle(seat.included_angle)}")
    view.height((LONG, 0), (LONG, THICK), LONG + 5.0, show_length(THICK))
    view.across((0.0, -7.0), (LONG, -7.0), -13.5, show_length(LONG))
    view.done()


def pad_clean_up() -> float:
    """Return the depth from first touch that cleans up the pad's spotface [mm]."""
    return FACE.clean_up_on_tilt(TILT)


def pad(pages: Pages) -> None:
    """Draw the tilted pad at full size, cut through its hole, the spotface still to be cut."""
    top = pages.down
    rise = Spotface(diameter=PAD, hole_diameter=FACE.hole_diameter).clean_up_on_tilt(TILT)
    view = View(pages, left=0.3, down=top + 2.25)
    slope, hole = rise / PAD, FACE.hole_diameter / 2
    middle = PAD / 2

    def face(x: float) -> Spot:
        return x, PAD_LOW + slope * x

    view.metal((0, 0), (middle - hole, 0), face(middle - hole), face(0))
    view.metal((middle + hole, 0), (PAD, 0), face(PAD), face(middle + hole))
    view.center(((middle, -3.0), (middle, PAD_LOW + rise + 3.0)))
    left, right = (face(middle + side * FACE.diameter / 2) for side in (-1, 1))
    view.across(left, right, PAD_LOW + rise + 9.0, f"S.F. ⌀ {show_length(FACE.diameter)}")
    view.across((0, 0), (PAD, 0), -12.0, f"{show_length(PAD)} square")
    view.across((middle - hole, 0), (middle + hole, 0), -4.5, "")
    hole_words = f"⌀ {show_length(FACE.hole_diameter)} through"
    view.beside((middle + hole + 7.0, -5.5), hole_words)
    high, low = f"high side {show_length(PAD_LOW + rise)}", f"low side {show_length(PAD_LOW)}"
    view.height((PAD, 0), face(PAD), PAD + 8.0, high)
    tilted = f"{low}, face tilted by {show_angle(TILT)}"
    view.beside((PAD + 11.0, 4.0), tilted)
    view.done()
    said = f"{show_length(PAD)} square, {high}, {tilted}, {hole_words}"
    pages.words[-1].append(f"[pad at full size, 1:1: {said}]")
    pages.down = top + 2.95
