"""Numbers on a line, each under a flag that names it, with one number set against them."""

from dataclasses import dataclass, field
from math import log
from typing import Any

from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon

from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.paragraphs import Column
from seatwork.drawings.strokes.style import FONT, POINTS, Style, page
from seatwork.drawings.strokes.symbols import line_width
from seatwork.drawings.view import View

LEFT, RIGHT, HEADING = 34.0, 1246.0, 664.0
ASKED, ASKED_FLOOR = 648.0, 548.0
"""Top and end of the words of the question: three lines."""

LINE, LANE, FIRST_LANE = 282.0, 33.0, 30.0
"""The number line, the height of a lane of flags, and of the lowest flag above the line."""

BEGIN, END, GAP = 90.0, 980.0, 14.0
"""Where the least and the greatest number stand, and the room after a flag."""

TRIANGLE, BOLD = 16.0, 1.13
"""Height of the mark below the line, and how much wider bold type runs."""

FOUND, FOUND_FLOOR = 206.0, 18.0
"""Top and end of the words below."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Flag:
    """A number of the line.

    Parameters
    ----------
    value : float
        Where it stands, above zero [-].
    label : str
        What stands on its flag.
    bold : bool
        Whether it stands out from the others.
    sought : bool
        Whether it is one that was looked for.
    """

    value: float
    label: str
    bold: bool = False
    sought: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class FlagPage:
    """Everything on the page.

    Parameters
    ----------
    heading : str
        The question, or what came of it.
    asked : str
        What was asked of the learner.
    flags : tuple of Flag
        The numbers; no more than a dozen.
    set_against : Flag
        The number they are compared with.
    found : tuple of (str, tuple of str)
        Headings and lines below.
    text : str
        The text twin.
    """

    heading: str
    asked: str
    flags: tuple[Flag, ...]
    set_against: Flag
    found: tuple[tuple[str, tuple[str, ...]], ...]
    text: str


@dataclass(slots=True)
class Lanes:
    """Flags already placed, from the right: where each begins and ends, and its lane."""

    placed: list[tuple[float, float, int]] = field(default_factory=list)

    def above(self, begin: float, end: float) -> int:
        """Place a flag above every one it would cover, so that no staff crosses a label."""
        covered = [lane for left, _, lane in self.placed if left < end]
        lane = 1 + max(covered, default=-1)
        self.placed.append((begin, end, lane))
        return lane


class FlagsView(View[FlagPage]):
    """The scene: see `seatwork.drawings.scene`. A new state is a new scene.

    Parameters
    ----------
    part : FlagPage
        What to show.
    look : Look, optional
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure."""
        figure, axes = page(self.style.colors)
        part, its = self.part, self.style
        _write(axes, its, LEFT, HEADING, part.heading, fontsize=its.sizes.large, fontweight="bold")
        _column(axes, its, ASKED, ASKED_FLOOR).paragraph(part.asked)
        places = _places((*part.flags, part.set_against))
        _draw_line(axes, its)
        lanes = Lanes()
        for flag in sorted(part.flags, key=lambda one: places[one.value], reverse=True):
            _draw_flag(axes, its, flag, places[flag.value], lanes)
        _draw_set_against(axes, its, part.set_against, places[part.set_against.value])
        column = _column(axes, its, FOUND, FOUND_FLOOR)
        for title, lines in part.found:
            column.heading(title)
            column.listed(lines, "and {count} more")
        return Drawing(figure, part.text)

    def move(self, part: FlagPage) -> str:
        """Return the text; the picture stands."""
        return part.text


def _column(axes: Axes, its: Style, top: float, bottom: float) -> Column:
    return Column(axes, its, left=LEFT, top=top, width=RIGHT - LEFT, bottom=bottom)


def _places(flags: tuple[Flag, ...]) -> dict[float, float]:
    """Give each number its place; equal ratios are equal distances."""
    least, greatest = (log(pick(flag.value for flag in flags)) for pick in (min, max))
    reach = (greatest - least) or 1.0
    return {flag.value: BEGIN + (END - BEGIN) * (log(flag.value) - least) / reach for flag in flags}


def _draw_line(axes: Axes, its: Style) -> None:
    line = Line2D([LEFT, RIGHT], [LINE, LINE], color=its.colors.ink, zorder=2.0)
    line.set_linewidth(its.sizes.edge * POINTS)
    axes.add_artist(line)


def _draw_flag(axes: Axes, its: Style, flag: Flag, x: float, lanes: Lanes) -> None:
    """Draw a number's staff and its label, high enough to clear those right of it."""
    y = LINE + FIRST_LANE + LANE * lanes.above(x, x + GAP + _width(its, flag) + GAP)
    color = its.colors.contact if flag.sought else its.colors.ink
    staff = Line2D([x, x], [LINE, y + 0.6 * LANE], color=color, zorder=2.1)
    staff.set_linewidth((its.sizes.contact if flag.sought else its.sizes.thin) * POINTS)
    axes.add_artist(staff)
    _label(axes, its, x + 8.0, y, flag)


def _draw_set_against(axes: Axes, its: Style, flag: Flag, x: float) -> None:
    """Draw the number compared, below the line, its triangle touching it."""
    top = LINE - 4.0
    corners = [(x, top), (x - TRIANGLE / 1.6, top - TRIANGLE), (x + TRIANGLE / 1.6, top - TRIANGLE)]
    axes.add_artist(Polygon(corners, facecolor=its.colors.contact, linewidth=0, zorder=2.2))
    left = min(x - 10.0, RIGHT - _width(its, flag))
    _label(axes, its, left, top - TRIANGLE - 24.0, flag)


def _width(its: Style, flag: Flag) -> float:
    """Length of a label [page units]."""
    heavier = BOLD if flag.bold else 1.0
    return heavier * line_width(flag.label) * its.sizes.text / POINTS


def _label(axes: Axes, its: Style, x: float, y: float, flag: Flag) -> None:
    color = its.colors.contact if flag.sought else its.colors.ink
    weight = "bold" if flag.bold else "normal"
    _write(axes, its, x, y, flag.label, color=color, fontweight=weight)


def _write(axes: Axes, its: Style, x: float, y: float, text: str, **looks: Any) -> None:
    basics: dict[str, Any] = {"fontfamily": FONT, "fontsize": its.sizes.text, "zorder": 5.3}
    basics |= {"color": its.colors.ink}
    axes.text(x, y, text, parse_math=False, **basics | looks)
