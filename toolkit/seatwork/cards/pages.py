"""Pages of text, pictures and boxes, set one below the other and kept as one PDF."""

import io
import textwrap
from pathlib import Path

from matplotlib.backends.backend_pdf import PdfPages
from matplotlib.figure import Figure
from matplotlib.image import imread
from matplotlib.patches import Rectangle

LETTER = (8.5, 11.0)
A4 = (8.27, 11.69)
PAPERS = {"letter": LETTER, "a4": A4}
MARGIN = 0.75
SIZE = 12.0
LEADING = 1.35
CHARACTER = 0.60  # mean width of a character, in font sizes
POINTS = 72.0


class Pages:
    """Pages filled from the top down; a block that does not fit starts the next page.

    Parameters
    ----------
    paper : {"letter", "a4"}
        Size of the sheets.
    foot : str
        Line at the foot of every page.
    """

    def __init__(self, paper: str = "letter", foot: str = "") -> None:
        self.width, self.height = PAPERS[paper]
        self.foot = foot
        self.figures: list[Figure] = []
        self._new_page()

    def _new_page(self) -> None:
        figure = Figure(figsize=(self.width, self.height), facecolor="white")
        self.figures.append(figure)
        self.down = MARGIN
        said = f"{self.foot}   page {len(self.figures)}".strip()
        figure.text(MARGIN / self.width, 0.45 / self.height, said, fontsize=10, parse_math=False)

    def _room(self, needed: float) -> None:
        """Start a page if less than `needed` inches are left on this one."""
        if self.down + needed > self.height - MARGIN and self.down > MARGIN:
            self._new_page()

    def text(
        self, words: str, *, size: float = SIZE, bold: bool = False, indent: float = 0
    ) -> None:
        """Set a paragraph, broken to the width of the page."""
        step = size * LEADING / POINTS
        room = self.width - 2 * MARGIN - indent
        count = int(room * POINTS / (size * CHARACTER))
        for paragraph in words.split("\n"):
            for line in textwrap.wrap(paragraph, count) or [""]:
                self._room(step)
                self._line(line, size, bold, indent)
                self.down += step

    def _line(self, line: str, size: float, bold: bool, indent: float) -> None:
        self.figures[-1].text(
            (MARGIN + indent) / self.width,
            1 - (self.down + size / POINTS) / self.height,
            line,
            fontsize=size,
            fontweight="bold" if bold else "normal",
            parse_math=False,
        )

    def space(self, inches: float = 0.15) -> None:
        """Leave a gap."""
        self.down += inches

    def picture(self, png: bytes, *, height: float = 2.8) -> None:
        """Set a picture, as high as said and as wide as it comes."""
        pixels = imread(io.BytesIO(png), format="png")
        wide = min(height * pixels.shape[1] / pixels.shape[0], self.width - 2 * MARGIN)
        high = wide * pixels.shape[0] / pixels.shape[1]
        self._room(high + 0.1)
        place = (
            MARGIN / self.width,
            1 - (self.down + high) / self.height,
            wide / self.width,
            high / self.height,
        )
        axes = self.figures[-1].add_axes(place)
        axes.imshow(pixels, aspect="auto")
        axes.axis("off")
        self.down += high + 0.1

    def box(self, label: str, unit: str = "", *, width: float = 2.4, height: float = 0.4) -> None:
        """Set an empty box to write in, with what goes in before it and its unit behind."""
        self._room(height + 0.12)
        figure, middle = self.figures[-1], 1 - (self.down + height / 2) / self.height
        left = MARGIN + 1.2
        figure.text(
            MARGIN / self.width, middle, label, fontsize=SIZE, va="center", parse_math=False
        )
        figure.add_artist(
            Rectangle(
                (left / self.width, 1 - (self.down + height) / self.height),
                width / self.width,
                height / self.height,
                fill=False,
                linewidth=1.2,
                transform=figure.transFigure,
            )
        )
        after = (left + width + 0.1) / self.width
        figure.text(after, middle, unit, fontsize=SIZE, va="center", parse_math=False)
        self.down += height + 0.12

    def keep_together(self, inches: float) -> None:
        """Start a page unless this much room is left."""
        self._room(inches)

    def save(self, path: Path) -> None:
        """Write the pages as one PDF without a date in it."""
        path.parent.mkdir(parents=True, exist_ok=True)
        with PdfPages(path, metadata={"CreationDate": None, "Producer": None}) as pdf:
            for figure in self.figures:
                pdf.savefig(figure)
