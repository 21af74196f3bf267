"""The still part of a figure, drawn once, in as many layers as the moving artists need."""

import io
from collections.abc import Iterator
from contextlib import contextmanager
from itertools import groupby
from typing import Any

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.text import Text
from PIL import Image


def stack(figure: Figure) -> list[tuple[bool, list[Artist]]]:
    """Return all artists of a figure, bottom first, in runs that move and runs that do not.

    Parameters
    ----------
    figure : matplotlib.figure.Figure
        Drawn, so that its axes have their place.

    Returns
    -------
    list of (bool, list of Artist)
        Whether the run moves, and its artists.
    """
    return [
        (moves, list(run)) for moves, run in groupby(_in_order(figure), lambda a: a.get_animated())
    ]


def _in_order(figure: Figure) -> Iterator[Artist]:
    """Yield what is drawn, in matplotlib's order: by zorder, then by age."""
    for child in sorted(figure.get_children(), key=lambda a: a.get_zorder()):
        if isinstance(child, Axes):
            yield child.patch
            inside = [a for a in child.get_children() if a is not child.patch]
            yield from sorted(filter(_drawn, inside), key=lambda a: a.get_zorder())
        elif child is not figure.patch and _drawn(child):
            yield child


def _drawn(artist: Artist) -> bool:
    """Tell whether an artist puts anything on the picture, now or after a move."""
    if artist.get_animated():
        return True
    return artist.get_visible() and not (isinstance(artist, Text) and not artist.get_text())


def layer(figure: Figure, artists: list[Artist], *, ground: bool, scale: float) -> bytes:
    """Draw some still artists of a figure as a PNG.

    Parameters
    ----------
    figure : matplotlib.figure.Figure
        Left as it was.
    artists : list of Artist
        What to draw; everything else is left out.
    ground : bool
        Whether the figure's own ground is drawn; else the layer is clear around the artists.
    scale : float
        Pixels of the layer per pixel of the figure [1].
    """
    with _only(figure, artists, ground=ground), _enlarged(figure, scale):
        canvas: Any = FigureCanvasAgg(figure)
        canvas.draw()
        image = Image.fromarray(np.asarray(canvas.buffer_rgba()))
    out = io.BytesIO()
    (image.convert("RGB") if ground else image).save(out, "png", compress_level=4)
    return out.getvalue()


@contextmanager
def _enlarged(figure: Figure, scale: float) -> Iterator[None]:
    """Give a figure more pixels for a while."""
    own_dpi = figure.dpi
    figure.set_dpi(own_dpi * scale)
    try:
        yield
    finally:
        figure.set_dpi(own_dpi)


@contextmanager
def _only(figure: Figure, artists: list[Artist], *, ground: bool) -> Iterator[None]:
    """Hide everything but `artists` for a while."""
    everything = [*_in_order(figure), figure.patch]
    kept = {id(artist) for artist in artists} | ({id(figure.patch)} if ground else set())
    hidden = [a for a in everything if a.get_visible() and id(a) not in kept]
    for artist in hidden:
        artist.set_visible(False)
    try:
        yield
    finally:
        for artist in hidden:
            artist.set_visible(True)
