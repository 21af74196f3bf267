"""Words on a page: headings and paragraphs, wrapped to a column, hole signs included."""

from typing import Any

from matplotlib.axes import Axes

from seatwork.drawings.strokes.style import FONT, POINTS, Style
from seatwork.drawings.strokes.symbols import RUN, SignedLine, legible, line_width

LEADING, AFTER_HEADING, AFTER_PARAGRAPH = 1.28, 0.1, 0.12
"""Line to line, and the room below a heading and a paragraph, in lines."""


def wrapped(text: str, width: float, size: float) -> list[str]:
    """Break text into lines.

    Parameters
    ----------
    text : str
        Line breaks in it stay.
    width : float
        Most a line may take [page units]; a longer word is broken.
    size : float
        Size of the type [page units].

    Returns
    -------
    list of str
        At least one line.
    """
    lines: list[str] = []
    for line in text.split("\n"):
        lines += _broken(line.split(), width / size)
    return lines


def _broken(words: list[str], width: float) -> list[str]:
    """Fill lines with words; `width` is in type sizes."""
    lines = [""]
    for word in words:
        whole = f"{lines[-1]} {word}".strip()
        if line_width(whole) <= width:
            lines[-1] = whole
            continue
        lines.append(word)
        while line_width(lines[-1]) > width and len(lines[-1]) > 1:
            part = _fitting(lines[-1], width)
            lines[-1:] = [lines[-1][:part], lines[-1][part:]]
    return [line for line in lines if line] or [""]


def _fitting(word: str, width: float) -> int:
    """Give how many characters of a word fit a line, one at least."""
    count = len(word)
    while count > 1 and line_width(word[:count]) > width:
        count -= 1
    return count


class Column:
    """A column of text that is written from its top down.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Color of the ink, size of the type.
    left, top, width, bottom : float
        Where it stands [page units]; nothing is written below `bottom`.
    """

    def __init__(
        self, axes: Axes, style: Style, *, left: float, top: float, width: float, bottom: float
    ) -> None:
        self._axes, self._style = axes, style
        self._left, self._width, self._bottom = left, width, bottom
        self._size = style.sizes.text / POINTS
        self.pen = top

    @property
    def line_height(self) -> float:
        """From one baseline to the next [page units]."""
        return LEADING * self._size

    def heading(self, text: str, **looks: Any) -> None:
        """Write a heading in bold, if it fits."""
        if self.room < 2:
            return
        self._down(1.0)
        basics: dict[str, Any] = {"fontfamily": FONT, "fontsize": self._style.sizes.text}
        basics |= {"color": self._style.colors.ink, "fontweight": "bold", "zorder": 5.3}
        self._axes.text(self._left, self.pen, text, parse_math=False, **basics | looks)
        self._down(AFTER_HEADING)

    def paragraph(self, text: str, *, indent: float = 0.0) -> bool:
        """Write a paragraph, hole signs drawn; tell whether there was room for it."""
        lines = wrapped(legible(text), self._width - indent, self._size)
        if self.room < len(lines):
            return False
        for line in lines:
            self._down(1.0)
            runs = len([run for run in RUN.split(line) if run.strip()]) or 1
            signed = SignedLine(
                self._axes, self._style, x=self._left + indent, y=self.pen, runs=runs
            )
            signed.set(line)
        self._down(AFTER_PARAGRAPH)
        return True

    def listed(self, sentences: tuple[str, ...], more: str) -> None:
        """Write paragraphs while there is room; `more` says, with {count}, where the rest is."""
        for number, sentence in enumerate(sentences):
            last = number == len(sentences) - 1
            lines = len(wrapped(legible(sentence), self._width, self._size))
            if self.room < lines + (not last):
                self.paragraph(more.format(count=len(sentences) - number))
                return
            self.paragraph(sentence)

    @property
    def room(self) -> int:
        """Lines that still fit."""
        return int((self.pen - self._bottom) / self.line_height + 1e-6)

    def _down(self, lines: float) -> None:
        self.pen -= lines * self.line_height
