"""One element of the page: its looks, told once, and what of it changes at a move."""

from collections.abc import Callable
from functools import lru_cache
from typing import Any

import numpy as np
from matplotlib.colors import to_rgba
from matplotlib.figure import Figure
from matplotlib.path import Path
from matplotlib.transforms import IdentityTransform, Transform

from seatwork.live.outlines import UNITS_PER_PIXEL, path_data
from seatwork.live.recorder import Color, Stroke

Attributes = dict[str, Any]


class Element:
    """One element of the page that follows one stroke of an artist.

    Parameters
    ----------
    looks : dict
        Attributes that never change, for the page to build the element.
    read : callable
        Gives the attributes that may change, from the artist's data of the moment.
    facts : dict, optional
        What a reader without matplotlib must know to read the same; None where it cannot.
    """

    def __init__(
        self, looks: Attributes, read: Callable[[], Attributes], facts: Attributes | None = None
    ) -> None:
        self.looks, self.facts = looks, facts
        self._read = read
        self._last: Attributes = {}

    def changes(self) -> Attributes:
        """Return what changed since the last reading."""
        now = self._read()
        last, self._last = self._last, now
        return {name: now[name] for name in now if name not in last or last[name] != now[name]}

    @property
    def state(self) -> Attributes:
        """All changing attributes, as last read."""
        return self._last


def to_units(transform: Transform, figure: Figure) -> np.ndarray:
    """Return the map from an artist's coordinates to units, y downwards, shape (3, 3).

    Raises
    ------
    TypeError
        If the axes are not linear.
    """
    if not transform.is_affine:
        raise TypeError("moving artists need linear axes")
    flip = np.array([[1.0, 0, 0], [0, -1.0, figure.bbox.height], [0, 0, 1 / UNITS_PER_PIXEL]])
    scaled: np.ndarray = flip @ transform.get_matrix() * UNITS_PER_PIXEL
    return scaled


@lru_cache(maxsize=256)
def css(color: Color | None) -> str:
    """Return a color for the page; a color with opacity keeps it."""
    if color is None or color[3] == 0:
        return "none"
    return "#" + "".join(f"{round(255 * part):02x}" for part in color[: 3 if color[3] == 1 else 4])


@lru_cache(maxsize=256)
def named_css(color: Any, alpha: float | None = None) -> str:
    """Return a color as matplotlib names it, or its parts, for the page."""
    return css(to_rgba(color, alpha))


def clipping(stroke: Stroke, figure: Figure) -> Attributes:
    """Return the outline that bounds a stroke, if any."""
    clip_path, transform = stroke.clip_path
    if clip_path is not None and transform is not None:
        return {"clip": path_data(clip_path, to_units(transform, figure))}
    if stroke.clip_box is None:
        return {}
    matrix = to_units(IdentityTransform(), figure)
    corners = stroke.clip_box.corners()[[0, 1, 3, 2]]
    return {"clip": path_data(Path(corners), matrix) + "Z"}
