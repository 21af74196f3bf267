"""What every picture is: a figure with its text twin, and a scene that can move.

A still drawing is made once. A scene keeps its figure and, for every new part, only sets
the data of the artists that move; whoever shows it decides how they reach the eye.
"""

import base64
import io
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Protocol, TypeVar, runtime_checkable

from matplotlib.artist import Artist
from matplotlib.figure import Figure
from PIL import Image

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

    def markdown(self, scale: float = 1.0, colors: int = COLORS) -> str:
        """Return the picture as a Markdown image with its text as alt, then the text.

        Parameters
        ----------
        scale : float
            Pixels of the picture per pixel of the figure's own size [-], 0.25 to 4.
        colors : int
            Most colors it may have, 2 to 256.
        """
        data = base64.b64encode(_of_few_colors(self.png(scale), colors)).decode("ascii")
        return f"![{plain(self.text)}](data:image/png;base64,{data})\n\n{plain(self.text)}"

    def _repr_mimebundle_(self, include: Any = None, exclude: Any = None) -> dict[str, str]:
        return {"text/plain": self.text, "text/markdown": self.markdown()}


def _of_few_colors(png: bytes, colors: int = COLORS) -> bytes:
    """Return the picture with few colors: line work loses nothing and two thirds of its size."""
    out = io.BytesIO()
    image = Image.open(io.BytesIO(png)).convert("RGB")
    image.quantize(colors, dither=Image.Dither.NONE).save(out, "png", optimize=True)
    return out.getvalue()


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
