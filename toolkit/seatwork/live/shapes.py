"""Moving artists as vector elements: their looks once, their data at every move."""

from collections.abc import Callable
from typing import Any

import numpy as np
from matplotlib.artist import Artist
from matplotlib.collections import PathCollection
from matplotlib.figure import Figure
from matplotlib.image import AxesImage
from matplotlib.lines import Line2D
from matplotlib.patches import Circle, FancyArrowPatch, Patch
from matplotlib.path import Path
from matplotlib.text import Annotation, Text
from matplotlib.transforms import IdentityTransform

from seatwork.live.element import Attributes, Element, clipping, css, named_css, to_units
from seatwork.live.lettering import Lettering
from seatwork.live.outlines import (
    UNITS_PER_PIXEL,
    flat,
    line_data,
    path_data,
    plain,
    relative_data,
)
from seatwork.live.recorder import Stroke, strokes_of
from seatwork.live.writing import places


def elements_of(artist: Artist, figure: Figure, letters: Lettering) -> list[Element]:
    """Return the elements that show one moving artist, bottom first.

    Raises
    ------
    TypeError
        If the live picture cannot carry such an artist.
    """
    if isinstance(artist, FancyArrowPatch | Annotation):
        raise TypeError("a moving arrow is a line with a small polygon as its head")
    strokes = strokes_of(artist, figure)
    if isinstance(artist, Line2D | Patch | PathCollection):
        return [Element(_looks(s, figure), *_follower(artist, s, figure)) for s in strokes]
    if isinstance(artist, Text):
        return [letters.element(artist, strokes)]
    if isinstance(artist, AxesImage):
        return [_image(artist, strokes[0], figure)]
    raise TypeError(f"the live picture cannot carry a moving {type(artist).__name__}")


def _looks(stroke: Stroke, figure: Figure) -> Attributes:
    """Return the fixed attributes of a path or of marks."""
    looks: Attributes = {
        "kind": stroke.kind,
        "fill": css(stroke.fill),
        "stroke": css(stroke.line),
        "stroke-width": round(stroke.width * UNITS_PER_PIXEL, 1),
        "stroke-linecap": stroke.cap if stroke.cap != "projecting" else "square",
        "stroke-linejoin": stroke.join,
        **clipping(stroke, figure),
    }
    if stroke.dashes:
        looks["stroke-dasharray"] = " ".join(f"{d * UNITS_PER_PIXEL:.4g}" for d in stroke.dashes)
    if stroke.hatch is not None:
        looks["hatch"] = _hatch(stroke, stroke.hatch, figure)
    if stroke.stamp is not None:
        looks["stamp"] = relative_data(stroke.stamp, UNITS_PER_PIXEL)
    return looks


def _hatch(stroke: Stroke, tile: Path, figure: Figure) -> Attributes:
    """Return the hatch as a tile one inch of the figure wide."""
    side = figure.dpi * UNITS_PER_PIXEL
    matrix = np.array([[side, 0, 0], [0, -side, side], [0, 0, 1.0]])
    return {
        "side": round(side),
        "d": path_data(tile, matrix),
        "ground": css(stroke.fill),
        "color": css(stroke.hatch_color),
        "width": round(stroke.hatch_width * UNITS_PER_PIXEL, 1),
    }


def _follower(
    artist: Any, stroke: Stroke, figure: Figure
) -> tuple[Callable[[], Attributes], Attributes | None]:
    """Return what reads an artist's data and, where they change, its colors; and its facts."""
    if stroke.kind == "marks":
        matrix = _places_matrix(artist, figure)
        places = _places(artist, matrix)
        facts = None if isinstance(artist, PathCollection) else {"kind": "marks", "place": matrix}
        return lambda: {"at": places(), **_shown(artist)}, facts
    base = to_units(Artist.get_transform(artist), figure)
    if isinstance(artist, Line2D):
        return lambda: {
            "d": line_data(artist, base),
            **_shown(artist),
            "stroke": named_css(artist.get_color(), artist.get_alpha()),
        }, {"kind": "line", "place": flat(base)}
    own, fixed = _own_shape(artist), bool(stroke.hatch)

    def read() -> Attributes:
        matrix = base @ artist.get_patch_transform().get_matrix() if own else base
        shown = {"d": path_data(artist.get_path(), matrix), **_shown(artist)}
        return shown if fixed else shown | _patch_colors(artist)

    return read, _patch_facts(artist, flat(base), own=own, fixed=fixed)


def _patch_facts(artist: Any, place: list[float], *, own: bool, fixed: bool) -> Attributes | None:
    """Return what is told of a patch; None for one of another own shape than a circle."""
    if own and type(artist) is not Circle:
        return None
    facts: Attributes = {"kind": "patch", "place": place, "fixed": fixed}
    if own:
        path = artist.get_path()
        facts["round"] = [np.asarray(path.vertices).tolist(), np.asarray(path.codes).tolist()]
    return facts


def _own_shape(artist: Any) -> bool:
    """Tell whether a patch places its path by a transform of its own, as circles do."""
    return isinstance(artist, Patch) and not isinstance(
        artist.get_patch_transform(), IdentityTransform
    )


def _places_matrix(artist: Any, figure: Figure) -> list[float]:
    """Return the map of the places of the marks."""
    scatter = isinstance(artist, PathCollection)
    transform = artist.get_offset_transform() if scatter else artist.get_transform()
    return flat(to_units(transform, figure))


def _places(artist: Any, matrix: list[float]) -> Callable[[], list[int]]:
    """Return what reads the places of the marks, two whole units each."""
    scatter = isinstance(artist, PathCollection)

    def read() -> list[int]:
        if scatter:
            return places(np.ma.filled(artist.get_offsets(), np.nan).tolist(), matrix)
        x, y = artist.get_data(orig=True)
        return places(list(zip(plain(x), plain(y), strict=True)), matrix)

    return read


def _shown(artist: Artist) -> Attributes:
    return {"display": "inline" if artist.get_visible() else "none"}


def _patch_colors(patch: Patch) -> Attributes:
    fill = named_css(patch.get_facecolor()) if patch.get_fill() else "none"
    line = named_css(patch.get_edgecolor()) if patch.get_linewidth() > 0 else "none"
    return {"fill": fill, "stroke": line}


def _image(artist: AxesImage, stroke: Stroke, figure: Figure) -> Element:
    """Return the element of a moving image; its pixels travel apart, as a PNG."""
    matrix = to_units(artist.get_transform(), figure)
    smooth = artist.get_interpolation() not in ("auto", "antialiased", "nearest", "none")

    def read() -> Attributes:
        left, right, bottom, top = artist.get_extent()
        ends = np.array([[left, bottom], [right, top]]) @ matrix[:2, :2].T + matrix[:2, 2]
        (x, y), (width, height) = ends.min(axis=0), np.ptp(ends, axis=0)
        box = {"x": round(x), "y": round(y), "width": round(width), "height": round(height)}
        return box | _shown(artist)

    return Element({"kind": "image", "smooth": smooth, **clipping(stroke, figure)}, read)
