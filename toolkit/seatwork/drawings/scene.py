"""What every picture is: a figure with its text twin, and a scene that can move.

A still drawing is made once. A scene keeps its figure and, for every new part, only sets
the data of the artists that move; whoever shows it decides how they reach the eye.
"""

import base64
import io
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass, replace
from typing import Any, Protocol, TypeVar, runtime_checkable

from matplotlib.artist import Artist
from matplotlib.figure import Figure
from matplotlib.text import Text
from PIL import Image, ImageChops

from seatwork.errors import SeatworkError
from seatwork.rows import plain

PALETTES = ("light", "dark", "print")

COLORS = 128
"""Most colors of a picture kept in a notebook."""

PartT = TypeVar("PartT", contravariant=True)


@dataclass(frozen=True, slots=True, kw_only=True)
class Look:
    """How a picture is to look and in which units it speaks.

    Parameters
    ----------
    system : {"inch", "metric"}
        Unit system named first on the picture.
    palette : {"light", "dark", "print"}
        Set of colors and hatches; all three keep their contrast.
    projector : bool
        Larger type and heavier lines, for a room.
    """

    system: str = "inch"
    palette: str = "light"
    projector: bool = False

    def __post_init__(self) -> None:
        if self.system not in ("inch", "metric"):
            raise SeatworkError(self.system, "that is no unit system", 'write "inch" or "metric"')
        if self.palette not in PALETTES:
            raise SeatworkError(
                self.palette, "no palette has that name", f"take one of {', '.join(PALETTES)}"
            )


GAP = "  "
"""Between the number of a line on a picture and its words."""

MARGIN = 6
"""Ground left round a trimmed picture [pixels]."""

PRESENT: ContextVar[Look | None] = ContextVar("look of the sketches of questions", default=None)


@contextmanager
def looking(look: Look) -> Iterator[None]:
    """Draw the sketches of questions in a look, within a ``with`` block; else they are light."""
    token = PRESENT.set(look)
    try:
        yield
    finally:
        PRESENT.reset(token)


def present_look(system: str = "inch") -> Look:
    """Return the look that sketches of questions are drawn in now, in a unit system."""
    return replace(PRESENT.get() or Look(), system=system)


@dataclass(frozen=True, slots=True)
class Drawing:
    """A matplotlib figure and the one or two sentences that say what it shows.

    Parameters
    ----------
    figure : matplotlib.figure.Figure
        Made without pyplot, on an opaque ground.
    text : str
        All the numbers of the picture: alt text, checked output, print and screen reader.
    """

    figure: Figure
    text: str

    def __repr__(self) -> str:
        return self.text

    def png(self, scale: float = 1.0) -> bytes:
        """Draw the whole figure, moving artists included, with Agg.

        Parameters
        ----------
        scale : float
            Pixels of the picture per pixel of the figure's own size [-], 0.25 to 4.

        Returns
        -------
        bytes
            A PNG file; the same figure gives the same bytes.
        """
        out = io.BytesIO()
        self.figure.savefig(
            out, format="png", dpi=self.figure.dpi * scale, metadata={"Software": None}
        )
        return out.getvalue()

    def small_png(self, scale: float = 1.0, colors: int = COLORS) -> bytes:
        """Return the picture as a PNG file of few colors, a third of the size of `png`.

        Parameters
        ----------
        scale : float
            Pixels of the picture per pixel of the figure's own size [-], 0.25 to 4.
        colors : int
            Most colors it may have, 2 to 256.
        """
        return _of_few_colors(self.png(scale), colors)

    def trimmed_png(self, scale: float = 1.0) -> bytes:
        """Return the picture as `small_png`, without the empty ground round what is drawn.

        Parameters
        ----------
        scale : float
            Pixels of the picture per pixel of the figure's own size [-], 0.25 to 4.
        """
        return _of_few_colors(self.png(scale), margin=MARGIN)

    def markdown(self, scale: float = 1.0, colors: int = COLORS) -> str:
        """Return the picture as a Markdown image with its text as alt, then the text.

        Parameters
        ----------
        scale : float
            Pixels of the picture per pixel of the figure's own size [-], 0.25 to 4.
        colors : int
            Most colors it may have, 2 to 256.
        """
        data = base64.b64encode(self.small_png(scale, colors)).decode("ascii")
        return f"![{plain(self.text)}](data:image/png;base64,{data})\n\n{plain(self.text)}"

    def words(self) -> tuple[str, ...]:
        """Return what is written on the picture."""
        written = (text.get_text() for text in self.figure.findobj(Text))
        return tuple(filter(None, GAP.join(written).split(GAP)))

    def spoken(self, say: Callable[[str], str]) -> "Drawing":
        """Return the drawing with its words in another language; its sizes and notes stay.

        Parameters
        ----------
        say : callable
            Says a text in that language; what it cannot say comes back as it was.
        """
        for text in self.figure.findobj(Text):
            if text.get_text():
                text.set_text(GAP.join(map(say, text.get_text().split(GAP))))
                _fit(text, self.figure)
        return replace(self, text=say(self.text))

    def _repr_mimebundle_(self, include: Any = None, exclude: Any = None) -> dict[str, str]:
        return {"text/plain": self.text, "text/markdown": self.markdown()}


def _fit(text: Text, figure: Figure) -> None:
    """Make a text that leaves the page sideways as much smaller as it takes."""
    box, page = text.get_window_extent(), figure.bbox
    beyond = max(box.x1 - page.x1, page.x0 - box.x0)
    if beyond > 0:
        text.set_fontsize(text.get_fontsize() * (1.0 - (beyond + MARGIN) / box.width))


def _of_few_colors(png: bytes, colors: int = COLORS, margin: int | None = None) -> bytes:
    """Return the picture with few colors: line work loses nothing and two thirds of its size."""
    out = io.BytesIO()
    image = Image.open(io.BytesIO(png)).convert("RGB")
    if margin is not None:
        image = _trimmed(image, margin)
    image.quantize(colors, dither=Image.Dither.NONE).save(out, "png", optimize=True)
    return out.getvalue()


def _trimmed(image: Image.Image, margin: int) -> Image.Image:
    """Cut the ground off round what is drawn; the color of the first corner is the ground."""
    ground = Image.new("RGB", image.size, image.getpixel((0, 0)))
    box = ImageChops.difference(image, ground).getbbox()
    if box is None:
        return image
    left, top, right, bottom = box
    wide, high = image.size
    return image.crop((
        max(left - margin, 0), max(top - margin, 0),
        min(right + margin, wide), min(bottom + margin, high),
    ))  # fmt: skip


@runtime_checkable
class Scene(Protocol[PartT]):
    """A picture that follows a part.

    ``draw`` is called once and makes the figure with everything in it; the artists that will
    move are marked ``animated=True`` and belong to an axes of the figure, not to the figure.
    ``move`` sets their data for another part, nothing else, and gives the new text.

    These artists can move: ``Line2D`` (with or without markers, NaN breaks the line),
    ``Polygon``, ``PathPatch`` and the other patches that have a path (fill, hatch, outline),
    ``Text`` (one style, no mathtext, several lines allowed, a square ``bbox`` as ground),
    ``PathCollection`` of one marker, size and color (``scatter``), and one ``AxesImage``.
    Data, position, text and visibility may change between moves, as may fill and line colors;
    line widths, dashes, hatches, fonts, clip boxes, stacking order, axes limits and the number
    of artists may not. Drawing order (``zorder``) and clipping are kept.
    """

    def draw(self) -> Drawing:
        """Make the figure once, at the part the scene was built with."""
        ...

    def move(self, part: PartT, /) -> str:
        """Set the data of the moving artists for `part`; return the text."""
        ...


@runtime_checkable
class GhostScene(Scene[PartT], Protocol[PartT]):
    """A scene whose former state can stay visible, as a dashed outline, for comparison."""

    @property
    def ghosts(self) -> Sequence[Artist]:
        """Moving artists whose outline may stay behind; known after ``draw``."""
        ...
