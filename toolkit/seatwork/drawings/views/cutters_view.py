"""Cutters to choose from, in a row; then the one to take beside the one picked, and why."""

from dataclasses import dataclass
from typing import Any

from matplotlib.axes import Axes

from seatwork.drawings.parts.cutter_shapes import CutterShape, add_end, add_side
from seatwork.drawings.scene import Drawing
from seatwork.drawings.strokes.paragraphs import Column
from seatwork.drawings.strokes.style import FONT, page
from seatwork.drawings.view import View

HEADING, LEFT, RIGHT, FLOOR = 664.0, 34.0, 1252.0, 20.0
TIP, TOP, END, NAME, LINE = 364.0, 566.0, 284.0, 184.0, 33.0
"""Heights of the tips, of the broken shanks, of the views from the tip, of the names, and
from line to line [page units]."""

WIDE, LARGEST = 130.0, 9.0
"""Most a cutter may take across [page units], and the largest scale [1/mm]."""

COLUMN = 452.0


@dataclass(frozen=True, slots=True, kw_only=True)
class ShownCutter:
    """A cutter with its words.

    Parameters
    ----------
    name : str
        Letter and name.
    shape : CutterShape
        What is drawn.
    lines : tuple of str
        What stands under it.
    """

    name: str
    shape: CutterShape
    lines: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class CutterChoice:
    """What the page shows.

    Parameters
    ----------
    heading : str
        Question or answer.
    job : str
        What is to be cut, in what, on what.
    cutters : tuple of ShownCutter
        All of them with the question; the one or two that matter with the answer.
    lists : tuple of (str, tuple of str)
        With the answer: bold line and the paragraphs under it; empty with the question.
    foot : tuple of str
        Lines under the cutters, with the answer.
    more : str
        Line that says, with {count}, where what finds no room is told.
    text : str
        The text twin.
    """

    heading: str
    job: str
    cutters: tuple[ShownCutter, ...]
    lists: tuple[tuple[str, tuple[str, ...]], ...]
    foot: tuple[str, ...]
    more: str
    text: str


class CuttersView(View[CutterChoice]):
    """The scene: see `seatwork.drawings.scene`. A new state is a new scene.

    Parameters
    ----------
    part : CutterChoice
        What to show.
    look : Look, optional
        Units, palette, size.
    """

    def draw(self) -> Drawing:
        """Make the figure."""
        figure, axes = page(self.style.colors)
        large = self.style.sizes.large
        self._line(axes, LEFT, HEADING, self.part.heading, fontsize=large, fontweight="bold")
        if self.part.lists:
            self._add_row(axes, LEFT, COLUMN - 20.0)
            for row, line in enumerate(reversed(self.part.foot)):
                self._line(axes, LEFT, FLOOR + row * LINE, line)
            self._add_answer(axes)
        else:
            top = HEADING - 16.0
            column = Column(
                axes, self.style, left=LEFT, top=top, width=RIGHT - LEFT, bottom=TOP + 8.0
            )
            column.paragraph(self.part.job)
            self._add_row(axes, LEFT, RIGHT)
        return Drawing(figure, self.part.text)

    def move(self, part: CutterChoice) -> str:
        """Return the text; the picture stands."""
        return part.text

    def _add_row(self, axes: Axes, left: float, right: float) -> None:
        """Draw the cutters side by side, all to one scale."""
        shown = self.part.cutters
        step = (right - left) / len(shown)
        scale = min(LARGEST, WIDE / max(one.shape.body for one in shown))
        for number, one in enumerate(shown):
            x = left + (number + 0.5) * step
            add_side(axes, self.style, one.shape, at=(x, TIP), top=TOP, scale=scale)
            add_end(axes, self.style, one.shape, (x, END), scale)
            self._line(axes, x, NAME, one.name, ha="center", fontweight="bold")
            for row, line in enumerate(one.lines, start=1):
                self._line(axes, x, NAME - row * LINE, line, ha="center")

    def _add_answer(self, axes: Axes) -> None:
        """Write the reasons, as many as there is room for."""
        top = HEADING - 16.0
        column = Column(axes, self.style, left=COLUMN, top=top, width=RIGHT - COLUMN, bottom=FLOOR)
        for title, sentences in self.part.lists:
            column.heading(title)
            column.listed(sentences, self.part.more)

    def _line(self, axes: Axes, x: float, y: float, text: str, **looks: Any) -> None:
        basics: dict[str, Any] = {"fontfamily": FONT, "fontsize": self.style.sizes.text}
        basics |= {"color": self.style.colors.ink, "zorder": 5.3, "parse_math": False}
        axes.text(x, y, text, **basics | looks)
