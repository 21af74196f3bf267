"""Pages of text, pictures and boxes, set one below the other and kept as one PDF.

Every page is black on white, one axes of 1/100 in with its origin at the lower left; no type
is smaller than 10 pt, and what does not fit goes on to the next page.
"""

import io
import warnings
from collections.abc import Callable, Sequence
from itertools import accumulate
from pathlib import Path
from typing import Any

import matplotlib
import numpy as np
from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.backends.backend_pdf import PdfPages
from matplotlib.figure import Figure
from matplotlib.lines import Line2D
from matplotlib.patches import Rectangle
from numpy.typing import NDArray

from seatwork import files
from seatwork.cards.lettering import LEADING, SIZE, UNITS, as_on_paper, broken, em, width, write
from seatwork.cards.papers import page_size
from seatwork.cards.pictures import in_gray
from seatwork.drawings.scene import Drawing
from seatwork.errors import SeatworkError
from seatwork.rows import short

MARGIN = 0.6
FOOT = 0.34
THIN, THICK = 0.8, 1.2
GRAYS = 8
"""Colors that a black and white page needs on the screen."""

LONGEST_FOOT = 300
"""Letters of the line at the foot; a page has room for some 80."""

SAID = 3
"""Paragraphs of a page that its alt text gives; the whole is in ``Pages.words``."""


class Page(Drawing):
    """One page as a notebook shows it."""

    def png(self, scale: float = 1.0) -> bytes:
        """Draw the page; its lines are as long as on paper.

        Parameters
        ----------
        scale : float
            Pixels of the picture per pixel of the figure's own size [-], 0.25 to 4.
        """
        with as_on_paper():
            return Drawing.png(self, scale)

    def _repr_mimebundle_(self, include: Any = None, exclude: Any = None) -> dict[str, str]:
        return {"text/plain": self.text, "text/markdown": self.markdown(colors=GRAYS)}


class Pages:
    """Pages filled from the top down; a block that does not fit starts the next page.

    Parameters
    ----------
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    foot : str
        Line at the foot of every page.
    wide : bool
        Whether the pages lie on their side.
    say : callable
        Says what is set in the reader's language; what it cannot say is set as it is.

    Raises
    ------
    SeatworkError
        If the paper is not known, or the foot is no line of 300 letters at most.
    """

    def __init__(
        self,
        paper: str = "",
        foot: str = "",
        *,
        wide: bool = False,
        say: Callable[[str], str] = str,
    ) -> None:
        if not isinstance(foot, str) or len(foot) > LONGEST_FOOT:
            fault = f"it is no line of {LONGEST_FOOT} letters at most"
            raise SeatworkError(foot, fault, "give a shorter name")
        across, up = page_size(paper)
        self.width, self.height = (up, across) if wide else (across, up)
        self.foot, self.say = foot, say
        self.figures: list[Figure] = []
        self.words: list[list[str]] = []
        self.new_page()

    def __repr__(self) -> str:
        return f"<Pages {short(self.foot, 60)}: {len(self.figures)} pages>"

    def __str__(self) -> str:
        return "\n".join(line for page in self.words for line in page if line)

    @property
    def axes(self) -> Axes:
        """The page being filled, 1/100 in, origin at the lower left."""
        return self.figures[-1].axes[0]

    @property
    def room(self) -> float:
        """Width between the margins [in]."""
        return self.width - 2 * MARGIN

    def new_page(self) -> None:
        """Go on to the next page."""
        figure = Figure(figsize=(self.width, self.height), facecolor="white")
        FigureCanvasAgg(figure)
        limits: dict[str, Any] = {
            "xlim": (0.0, self.width * UNITS),
            "ylim": (0.0, self.height * UNITS),
        }
        figure.add_axes((0.0, 0.0, 1.0, 1.0), **limits).set_axis_off()
        self.figures.append(figure)
        self.words.append([])
        self.down, self.floor = MARGIN, self.height - MARGIN
        self._foot()

    def _foot(self) -> None:
        number = self.say(f"page {len(self.figures)}")
        at = self.width - MARGIN - width(number)
        said = broken(self.foot, at - MARGIN - 0.2)
        self.words[-1] += [self.foot, number]
        write(self.axes, MARGIN * UNITS, FOOT * UNITS, said[0])
        write(self.axes, at * UNITS, FOOT * UNITS, number)

    def keep_together(self, inches: float) -> None:
        """Start a page unless this much room is left."""
        if self.down + inches > self.floor and self.down > MARGIN:
            self.new_page()

    def text(
        self,
        words: str,
        *,
        size: float = SIZE,
        bold: bool = False,
        indent: float = 0.0,
        room: float | None = None,
    ) -> None:
        """Set a paragraph, broken to the width there is.

        Parameters
        ----------
        words : str
            What it says; it may hold hole signs.
        size : float
            Type size, 10 at least [pt].
        bold : bool
            Whether it is bold.
        indent : float
            Distance from the left margin [in].
        room : float, optional
            Width of the column [in]; to the right margin if not given.
        """
        step, words = size * LEADING / 72.0, self.say(words)
        wide = self.room - indent if room is None else room
        for number, line in enumerate(broken(words, wide, size, bold=bold)):
            self.keep_together(step)
            if number == 0:
                self.words[-1].append(words)
            self._put(line, indent, self.down + size / 72.0, size=size, bold=bold)
            self.down += step

    def set(
        self, line: str, right: float, down: float, *, size: float = SIZE, bold: bool = False
    ) -> None:
        """Set one line at a spot of the page.

        Parameters
        ----------
        line : str
            What it says.
        right, down : float
            Where its baseline starts: from the left margin, and from the top of the page [in].
        size : float
            Type size [pt].
        bold : bool
            Whether it is bold.
        """
        self._put(self.say(line), right, down, size=size, bold=bold)

    def _put(self, line: str, right: float, down: float, *, size: float, bold: bool) -> None:
        spot = ((MARGIN + right) * UNITS, (self.height - down) * UNITS)
        write(self.axes, *spot, line, size=size, bold=bold)

    def high(
        self, words: str, *, size: float = SIZE, bold: bool = False, room: float | None = None
    ) -> float:
        """Return how high a paragraph comes out [in]."""
        lines = broken(self.say(words), self.room if room is None else room, size, bold=bold)
        return len(lines) * size * LEADING / 72.0

    def space(self, inches: float = 0.15) -> None:
        """Leave a gap."""
        self.down += inches

    def rule(self, weight: float = THIN) -> None:
        """Draw a line across the page; `weight` is its width [pt]."""
        self.stroke(0.0, self.down + 0.05, self.room, self.down + 0.05, weight)
        self.down += 0.1

    def stroke(self, x0: float, y0: float, x1: float, y1: float, weight: float = THIN) -> None:
        """Draw a line between two spots, from the left margin and the top of the page [in]."""
        across = [(MARGIN + x) * UNITS for x in (x0, x1)]
        up = [(self.height - y) * UNITS for y in (y0, y1)]
        self.axes.add_artist(Line2D(across, up, color="black", linewidth=weight))

    def frame(
        self, right: float, down: float, wide: float, high: float, *, weight: float = THICK
    ) -> None:
        """Draw an empty box; its upper left corner is at the spot [in]."""
        corner = ((MARGIN + right) * UNITS, (self.height - down - high) * UNITS)
        sides = (wide * UNITS, high * UNITS)
        self.axes.add_artist(Rectangle(corner, *sides, fill=False, linewidth=weight))

    def box(self, label: str, unit: str = "", *, width: float = 2.4, height: float = 0.4) -> None:
        """Set an empty box to write in [in], its label before it and its unit behind."""
        self.keep_together(height + 0.12)
        base = self.down + height / 2 + em(SIZE) / UNITS * 0.36
        left = 1.2
        self.words[-1].append(f"{label} [        ] {unit}".strip())
        self.set(label, 0.0, base)
        self.frame(left, self.down, width, height)
        self.set(unit, left + width + 0.1, base)
        self.down += height + 0.12

    def tick(self, words: str, *, indent: float = 0.0) -> None:
        """Set a paragraph behind an empty square to tick, `indent` from the margin [in]."""
        self.keep_together(self.high(words, room=self.room - indent - 0.3) + 0.05)
        self.frame(indent, self.down + 0.02, 0.16, 0.16)
        self.text(words, indent=indent + 0.3)
        self.down += 0.05

    def picture(self, png: bytes, *, height: float = 2.8) -> None:
        """Set a picture in gray, as high as given [in] and as wide as it comes."""
        pixels = in_gray(png)
        self.image(pixels, min(height * pixels.shape[1] / pixels.shape[0], self.room))

    def image(self, pixels: NDArray[np.float64], wide: float) -> None:
        """Set gray pixels, 0 black to 1 white, as wide as given [in] and as high as they come."""
        high = wide * pixels.shape[0] / pixels.shape[1]
        self.keep_together(high + 0.1)
        lower = self.height - self.down - high
        place = (MARGIN / self.width, lower / self.height, wide / self.width, high / self.height)
        axes = self.figures[-1].add_axes(place)
        axes.imshow(pixels, aspect="auto", cmap="gray", vmin=0.0, vmax=1.0)
        axes.axis("off")
        self.down += high + 0.1

    def table(
        self, rows: Sequence[Sequence[str]], columns: Sequence[float], *, grid: bool = False
    ) -> None:
        """Set a ruled table; its first row is the head and comes again on every page.

        Parameters
        ----------
        rows : sequence of sequence of str
            The cells.
        columns : sequence of float
            Width of each column [in].
        grid : bool
            Whether lines part the columns, too, for cells to write in.
        """
        head, *others = rows
        self._row(head, columns, bold=True, grid=grid)
        for row in others:
            high = max(
                self.high(cell, room=wide - 0.12) for cell, wide in zip(row, columns, strict=True)
            )
            if self.down + high + 0.08 > self.floor:
                self.new_page()
                self._row(head, columns, bold=True, grid=grid)
            self._row(row, columns, grid=grid)

    def _row(
        self,
        cells: Sequence[str],
        columns: Sequence[float],
        *,
        bold: bool = False,
        grid: bool = False,
    ) -> None:
        top, left, lowest = self.down, 0.0, self.down
        for cell, wide in zip(cells, columns, strict=True):
            self.down = top + 0.03
            self.text(cell, bold=bold, indent=left + 0.04, room=wide - 0.12)
            left, lowest = left + wide, max(lowest, self.down)
        self.down = lowest + 0.05
        for place in accumulate(columns[:-1]) if grid else ():
            self.stroke(place, top, place, self.down)
        self.stroke(0.0, self.down, sum(columns), self.down, THICK if bold else THIN)

    def save(self, path: str | Path, *, private: bool = False) -> None:
        """Write the pages as one PDF without a date in it; the same pages give the same bytes.

        A `private` one, which holds answers or marks, is for its owner alone.
        """
        files.write(path, self.pdf(), mode=files.PRIVATE if private else 0o644)

    def pdf(self) -> bytes:
        """Return the pages as one PDF without a date in it."""
        return bound([self], self.foot)

    def png(self, page: int = 0, *, dpi: float = 100.0) -> bytes:
        """Return one page as a PNG.

        Parameters
        ----------
        page : int
            Which, from 0.
        dpi : float
            Dots per inch [-].
        """
        out = io.BytesIO()
        facts = {"Software": None}
        with as_on_paper():
            self.figures[page].savefig(out, format="png", dpi=dpi, metadata=facts)
        return out.getvalue()

    def page(self, number: int = 0) -> Page:
        """Return one page to look at in a notebook; its alt text tells what the page is.

        Parameters
        ----------
        number : int
            Which, from 0.
        """
        first = " ".join(f"{said.rstrip(' ._')}." for said in self.words[number][2 : 2 + SAID])
        here = f"{self.foot}, page {number + 1} of {len(self.figures)}".removeprefix(", ")
        return Page(self.figures[number], f"{here}. {first}")

    def sheet(self, page: int = 0) -> Page:
        """Return one page; `page` is its name now, and this one goes with the next version.

        Parameters
        ----------
        page : int
            Which, from 0.
        """
        told = "Pages.sheet is called Pages.page now; the old name goes with the next version"
        warnings.warn(told, DeprecationWarning, stacklevel=2)
        return self.page(page)

    def svg(self, page: int = 0) -> str:
        """Return one page as SVG without a date in it."""
        out = io.StringIO()
        with matplotlib.rc_context({"svg.hashsalt": "seatwork"}):
            self.figures[page].savefig(out, format="svg", metadata={"Date": None})
        return out.getvalue()


def bound(several: Sequence[Pages], title: str = "") -> bytes:
    """Return the pages of several sheets, one behind the other, as one PDF without a date in it.

    Parameters
    ----------
    several : sequence of Pages
        The sheets in their order.
    title : str
        What the file says that it is.
    """
    out = io.BytesIO()
    facts = {"CreationDate": None, "Producer": None, "Title": title or None}
    with PdfPages(out, metadata=facts) as pdf:
        for pages in several:
            for figure in pages.figures:
                pdf.savefig(figure)
    return out.getvalue()
