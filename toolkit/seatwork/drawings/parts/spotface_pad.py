"""A rough pad from above in relief, with the part of it that the cutter has cleaned."""

from dataclasses import dataclass

import numpy as np
from matplotlib.axes import Axes
from matplotlib.colors import ListedColormap, NoNorm
from matplotlib.image import AxesImage
from matplotlib.lines import Line2D
from numpy.typing import NDArray

from seatwork.drawings.strokes.linework import arc
from seatwork.drawings.strokes.style import POINTS, Style
from seatwork.units import show_number

Field = NDArray[np.floating]

LIGHT, SHADE = 1.6, 0.55
"""How strongly slopes show, and how bright a level place is [-]."""

MARKS = 1.1
"""Distance of the rings that the cutter leaves, as drawn [mm]; no measured size."""

ROUGH, CLEAN = 200, 48
"""Shades of rough and of clean metal [-]; neighbors differ by less than a screen can show."""

HOLE, UNCUT = ROUGH + CLEAN, ROUGH + CLEAN + 1
"""The tone of paper in the hole, and what stands for a place that no cutter reaches."""

Tones = NDArray[np.uint8]


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Pad:
    """A rough pad, and how far its spotface has come.

    Parameters
    ----------
    heights : numpy.ndarray
        Shape (n, n): height of the pad before the cut [mm], rows along y, columns along x.
    distance : numpy.ndarray
        Shape (n, n): distance of each place from the hole's axis [mm].
    size : float
        Side of the pad [mm].
    diameter, hole_diameter : float
        Spotface and hole [mm].
    depth, full_depth : float
        Cutter below first touch, now and when the ring is whole [mm].
    highest : float
        Height of the first touch [mm].
    share : float
        Part of the ring that is clean [-], 0 to 1.
    thickness, left : float
        Flange at the low side before the cut, and now [mm].
    face : str
        The pad in words.
    """

    heights: Field
    distance: Field
    size: float
    diameter: float
    hole_diameter: float
    depth: float
    full_depth: float
    highest: float
    share: float
    thickness: float
    left: float
    face: str

    @property
    def cut_height(self) -> float:
        """Height of the cutter's flat [mm]."""
        return self.highest - self.depth

    @property
    def along(self) -> Field:
        """Places along the middle of the pad, from left to right [mm]."""
        return np.linspace(-self.size / 2, self.size / 2, len(self.heights))

    @property
    def profile(self) -> Field:
        """Heights along the middle of the pad before the cut [mm]."""
        return np.asarray(self.heights[len(self.heights) // 2])

    @property
    def faced(self) -> Field:
        """Heights along the middle as they are now [mm]."""
        under, before = np.abs(self.along) <= self.diameter / 2, self.profile
        return np.where(under, np.minimum(before, self.cut_height), before)

    @property
    def underside(self) -> float:
        """Height of the flange's back [mm]."""
        return self.highest - self.full_depth - self.thickness

    @property
    def whole(self) -> bool:
        """Whether the ring is clean all round."""
        return self.depth >= self.full_depth - 1e-9


class Relief:
    """The pad from above, as artists that move.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Colors and weights.
    place : tuple of float
        Left, bottom and side [page units].
    """

    def __init__(self, axes: Axes, style: Style, place: tuple[float, float, float]) -> None:
        self._style, self._place = style, place
        left, bottom, side = place
        colors = tone_colors(style)
        self._image = AxesImage(
            axes,
            cmap=colors,
            norm=NoNorm(0, colors.N - 1),
            interpolation="bilinear",
            interpolation_stage="rgba",
            origin="lower",
            animated=True,
        )
        self._image.set_extent((left, left + side, bottom, bottom + side))
        self._image.set_zorder(2.0)
        self._ring = Line2D([], [], color=style.colors.contact, zorder=3.0, animated=True)
        self._ring.set_linewidth(style.sizes.edge * POINTS)
        for artist in (self._image, self._ring):
            axes.add_artist(artist)
        self._before: tuple[Field, Tones] | None = None
        self._after: tuple[tuple[float, ...], Tones] | None = None

    def move(self, pad: Pad) -> None:
        """Show a pad."""
        left, bottom, side = self._place
        self._image.set_data(self._painted(pad))
        middle = (left + side / 2, bottom + side / 2)
        self._ring.set_data(*arc(middle, pad.diameter / 2 * side / pad.size, 0.0, 360.0).T.tolist())

    def _painted(self, pad: Pad) -> Tones:
        """Paint a pad; what does not depend on the depth is kept until another pad comes."""
        if self._before is None or self._before[0] is not pad.heights:
            self._before = pad.heights, rough(pad)
        sizes = pad.size, pad.diameter, pad.hole_diameter
        if self._after is None or self._after[0] != sizes:
            self._after = sizes, clean(pad)
        return painted(pad, self._before[1], self._after[1])


def painted(pad: Pad, before: Tones, after: Tones) -> Tones:
    """Paint what the cutter has cleaned so far, out of the pad uncut and the spotface whole."""
    cut = (after == HOLE) | (after != UNCUT) & (pad.heights >= pad.cut_height)
    return np.where(cut, after, before)


def rough(pad: Pad) -> Tones:
    """Paint the pad before the cut, lit from the upper left by which way each place slopes."""
    step = pad.size / (len(pad.heights) - 1)
    up, across = np.gradient(pad.heights, step)
    light = np.clip(SHADE + LIGHT * (up - across) / 2, 0.0, 1.0)
    return np.asarray(np.rint(light * (ROUGH - 1)), np.uint8)


def clean(pad: Pad) -> Tones:
    """Paint the whole spotface with the rings that the cutter leaves, and the hole in it."""
    rings = 0.5 + 0.5 * np.cos(2 * np.pi / MARKS * pad.distance)
    tones = np.asarray(ROUGH + np.rint(rings * (CLEAN - 1)), np.uint8)
    tones[pad.distance > pad.diameter / 2] = UNCUT
    tones[pad.distance <= pad.hole_diameter / 2] = HOLE
    return tones


def tone_colors(style: Style) -> ListedColormap:
    """Return the color of each tone: rough metal, clean metal, the paper in the hole."""
    colors = style.colors
    dark, bright, paper = (_rgb(c) for c in (colors.hatch, colors.metal, colors.paper))
    ground = 0.25 * _rgb(colors.contact) + 0.75 * paper
    of_rough = dark + np.linspace(0.0, 1.0, ROUGH)[:, None] * (bright - dark)
    of_clean = ground + 0.22 * np.linspace(0.0, 1.0, CLEAN)[:, None] * (paper - ground)
    return ListedColormap(np.vstack([of_rough, of_clean, paper]) / 255.0)


def _rgb(color: str) -> Field:
    return np.array([int(color[i : i + 2], 16) for i in (1, 3, 5)], dtype=float)


def percent(share: float) -> str:
    """Show a share as per cent, never 100 before it is whole, never 0 once some is clean.

    Examples
    --------
    >>> percent(0.423), percent(0.9999), percent(0.0001)
    ('42 %', '99 %', 'under 1 %')
    """
    if 0 < share < 0.01:
        return "under 1 %"
    return f"{show_number(min(100 * share, 99.0) if share < 1 else 100.0, 0)} %"
