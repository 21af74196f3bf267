"""Cut metal: a hatched plate, broken off where more of it would tell nothing."""

from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Patch, Polygon

from seatwork.drawings.strokes.linework import Point, Points, joined
from seatwork.drawings.strokes.style import POINTS, Style

WAVE, LENGTH = 5.0, 130.0
"""Height and length of the waves of a break line [page units]."""

ABOVE_SCREW = 3.2
"""Stacking order of what covers the screw below the break."""

BELOW_BREAK = 14.0
"""How far holes run past the break before the skirt covers them [page units]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Window:
    """The piece of page a section fills, and its scale.

    Parameters
    ----------
    axis, face : float
        Where the axis stands and where the face lies [page units].
    left, right, bottom : float
        Edges of the metal shown [page units].
    scale : float
        Page units per mm [1/mm].
    """

    axis: float
    face: float
    left: float
    right: float
    bottom: float
    scale: float = 1.0

    def to_page(self, points: Points) -> Points:
        """Convert points from mm round the axis to page units."""
        return np.asarray(points * self.scale + np.array([self.axis, self.face]))

    def spot(self, x: float, y: float) -> Point:
        """Convert one point from mm to page units."""
        return self.axis + self.scale * x, self.face + self.scale * y

    @property
    def deepest(self) -> float:
        """Height of the bottom edge [mm], negative."""
        return (self.bottom - self.face) / self.scale


def draw_metal(
    axes: Axes, style: Style, window: Window, *, clip: Patch | None = None, whole: bool = False
) -> None:
    """Draw a hatched plate once, below everything that moves.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Colors and weights.
    window : Window
        Where the plate lies.
    clip : matplotlib.patches.Patch, optional
        Border that cuts the view off; without it the plate ends in break lines.
    whole : bool
        Whether the bottom edge is the other face of the part, and no break.
    """
    outline = _broken_outline(window, flat=whole)
    fill = Polygon(outline, facecolor=style.colors.metal, linewidth=0, zorder=1.0)
    thin: dict[str, Any] = {"linewidth": style.sizes.thin * POINTS, "solid_capstyle": "butt"}
    hatch = Line2D(*hatching(window, style.sizes.hatch).T, color=style.colors.hatch, **thin)
    hatch.set_zorder(1.1)
    for artist in (fill, hatch):
        axes.add_artist(artist)
    hatch.set_clip_path(clip or fill)
    if clip is not None:
        fill.set_clip_path(clip)
        return
    sides = joined([outline[: len(outline) // 3], outline[-len(outline) // 3 :]])
    axes.add_artist(Line2D(*sides.T, color=style.colors.ink, zorder=1.2, **thin))
    if whole:
        return
    for artist in _skirt(style, window, thin):
        axes.add_artist(artist)


def _wave(start: float, end: float, steps: int = 61) -> tuple[Points, Points]:
    along = np.linspace(start, end, steps)
    return along, WAVE * np.sin(2 * np.pi * (along - start) / LENGTH)


def _broken_outline(window: Window, *, flat: bool = False) -> Points:
    """Three sides of the plate, broken unless `flat` below: left, along the bottom, right."""
    down, left = _wave(window.face, window.bottom)
    along, floor = _wave(window.left, window.right)
    floor = np.zeros_like(floor) if flat else floor
    sides = [
        np.column_stack([window.left + left, down]),
        np.column_stack([along, window.bottom + floor]),
        np.column_stack([window.right + left[::-1], down[::-1]]),
    ]
    return np.concatenate(sides)


def _skirt(style: Style, window: Window, thin: dict[str, Any]) -> tuple[Polygon, Line2D]:
    """Paper that covers screw and hole below the break, and the break line; neither moves.

    Both lie above the screw, so they count as moving artists that stay where they are.
    """
    along, floor = _wave(window.left, window.right)
    upper = np.column_stack([along, window.bottom + floor])
    low = window.bottom - BELOW_BREAK - WAVE
    corners = np.array([(window.right, low), (window.left, low)])
    cover = Polygon(np.concatenate([upper, corners]), facecolor=style.colors.paper, linewidth=0)
    line = Line2D(*upper.T, color=style.colors.ink, **thin)
    for artist, order in ((cover, ABOVE_SCREW), (line, ABOVE_SCREW + 0.1)):
        artist.set(zorder=order, animated=True)
    return cover, line


def hatching(window: Window, distance: float) -> Points:
    """Lines rising to the right at 45° across the plate, `distance` apart, as one broken line."""
    left, right = window.left - 2 * WAVE, window.right + 2 * WAVE
    low, high = window.bottom - 2 * WAVE, window.face
    step = distance * np.sqrt(2.0)
    offsets = np.arange(low - right + step / 2, high - left, step)
    lines = []
    for offset in offsets:
        start, end = max(left, low - offset), min(right, high - offset)
        if start < end:
            lines.append(np.array([(start, start + offset), (end, end + offset)]))
    return joined(lines)
