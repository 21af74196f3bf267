"""Read off, once, the style with which matplotlib would draw a moving artist."""

from dataclasses import dataclass
from typing import Any

from matplotlib.artist import Artist
from matplotlib.backend_bases import GraphicsContextBase, RendererBase
from matplotlib.collections import PathCollection
from matplotlib.colors import to_rgba
from matplotlib.figure import Figure
from matplotlib.lines import Line2D
from matplotlib.path import Path
from matplotlib.text import Text
from matplotlib.transforms import Transform

Color = tuple[float, float, float, float]


@dataclass(slots=True, kw_only=True)
class Stroke:
    """One thing that an artist puts on the picture.

    Parameters
    ----------
    kind : {"path", "marks", "text", "image"}
        What is put there.
    line, fill, hatch_color : tuple of float or None
        Red, green, blue, opacity [1]; None is not drawn.
    width, hatch_width : float
        Line widths [pixels].
    dashes : list of float or None
        On and off lengths [pixels].
    hatch, stamp : matplotlib.path.Path or None
        One tile of the hatch in the unit square; the marker around its origin [pixels].
    clip_box, clip_path : object
        What bounds it, as matplotlib keeps it.
    """

    kind: str
    line: Color | None
    fill: Color | None
    width: float
    dashes: list[float] | None
    cap: str
    join: str
    hatch: Path | None = None
    hatch_color: Color | None = None
    hatch_width: float = 0.0
    stamp: Path | None = None
    clip_box: Any = None
    clip_path: Any = (None, None)


class Recorder(RendererBase):
    """A renderer that draws nothing and remembers the strokes asked of it."""

    def __init__(self, figure: Figure) -> None:
        super().__init__()
        self._dpi = figure.dpi
        self._size = figure.bbox.width, figure.bbox.height
        self.strokes: list[Stroke] = []

    def get_canvas_width_height(self) -> tuple[float, float]:
        """Return the figure's size [pixels]."""
        return self._size

    def points_to_pixels(self, points: Any) -> Any:
        """Return points as pixels of the figure."""
        return points * self._dpi / 72

    def draw_path(
        self,
        gc: GraphicsContextBase,
        path: Path,
        transform: Transform,
        rgbFace: Any = None,  # noqa: N803, matplotlib's name
    ) -> None:
        """Remember a path."""
        self.strokes.append(self._stroke("path", gc, rgbFace))

    def draw_markers(
        self,
        gc: GraphicsContextBase,
        marker_path: Path,
        marker_trans: Transform,
        path: Path,
        trans: Transform,
        rgbFace: Any = None,  # noqa: N803, matplotlib's name
    ) -> None:
        """Remember a marker that is put at many places."""
        stroke = self._stroke("marks", gc, rgbFace)
        stroke.stamp = marker_path.transformed(marker_trans)
        self.strokes.append(stroke)

    def draw_path_collection(self, *args: Any, **kwargs: Any) -> None:
        """Refuse markers of several kinds."""
        raise TypeError("a moving scatter has one marker, one size and one color; use several")

    def draw_text(
        self,
        gc: GraphicsContextBase,
        x: float,
        y: float,
        s: str,
        prop: Any,
        angle: float,
        ismath: Any = False,
        mtext: Any = None,
    ) -> None:
        """Remember a line of text."""
        if ismath:
            raise TypeError(f"a moving text is plain, without mathtext: {s!r}")
        if not self.strokes or self.strokes[-1].kind != "text":
            self.strokes.append(self._stroke("text", gc, gc.get_rgb()))

    def draw_image(
        self, gc: GraphicsContextBase, x: float, y: float, im: Any, transform: Any = None
    ) -> None:
        """Remember an image."""
        self.strokes.append(self._stroke("image", gc, None))

    def _stroke(self, kind: str, gc: GraphicsContextBase, face: Any) -> Stroke:
        width = self.points_to_pixels(gc.get_linewidth())
        dashes: Any = gc.get_dashes()[1]
        return Stroke(
            kind=kind,
            line=_color(gc.get_rgb(), gc) if width > 0 else None,
            fill=None if face is None else _color(face, gc),
            width=width,
            dashes=None if dashes is None else [self.points_to_pixels(d) for d in dashes],
            cap=gc.get_capstyle(),
            join=gc.get_joinstyle(),
            hatch=gc.get_hatch_path() if gc.get_hatch() else None,
            hatch_color=to_rgba(gc.get_hatch_color()) if gc.get_hatch() else None,
            hatch_width=self.points_to_pixels(gc.get_hatch_linewidth()),
            clip_box=gc.get_clip_rectangle(),
            clip_path=gc.get_clip_path(),
        )


def _color(rgba: Any, gc: GraphicsContextBase) -> Color:
    """Return the color with its opacity; a forced alpha wins, as in every renderer."""
    red, green, blue, *alpha = (float(part) for part in rgba)
    opacity = gc.get_alpha() if gc.get_forced_alpha() or not alpha else alpha[0]
    return red, green, blue, float(opacity)


def strokes_of(artist: Artist, figure: Figure) -> list[Stroke]:
    """Return the strokes of one artist, also of one that is hidden or empty just now.

    Raises
    ------
    TypeError
        If the live picture cannot carry such an artist.
    """
    recorder = Recorder(figure)
    shown, put_back = artist.get_visible(), _filled(artist)
    artist.set_visible(True)
    artist.draw(recorder)
    artist.set_visible(shown)
    put_back()
    if not recorder.strokes:
        raise TypeError(f"the live picture found nothing to draw in {artist!r}")
    return recorder.strokes


def _filled(artist: Artist) -> Any:
    """Give an empty artist something to draw; return what puts it back."""
    if isinstance(artist, Line2D):
        data = artist.get_data(orig=True)
        artist.set_data([0.5, 0.6], [0.5, 0.6])
        return lambda: artist.set_data(*data)
    if isinstance(artist, Text):
        text = artist.get_text()
        artist.set_text(text or "0")
        return lambda: artist.set_text(text)
    if isinstance(artist, PathCollection):
        places = artist.get_offsets()
        artist.set_offsets([[0.5, 0.5]])
        return lambda: artist.set_offsets(places)
    return lambda: None
