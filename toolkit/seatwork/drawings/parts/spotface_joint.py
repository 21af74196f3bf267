"""A flange on its base cut open through the hole, with the bolt that holds it or the cutter."""

from dataclasses import dataclass

import numpy as np
from matplotlib.artist import Artist
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import PathPatch
from matplotlib.path import Path

from seatwork.drawings.parts.spotface_pad import Pad
from seatwork.drawings.strokes.linework import BREAK, Points, joined
from seatwork.drawings.strokes.style import POINTS, Style

ENGAGED, BASE, ROOT, TURNS = 0.8, 1.3, 0.07, 6
"""Drawn, not measured: thread in the base, base below the grip, depth of thread [diameters],
and turns of thread [-]."""

LOOSE = 1.16
"""Drawn hole of the base above its thread [bolt diameters]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Bolt:
    """A bolt on its seat.

    Parameters
    ----------
    diameter, across, head_height, grip : float
        Shank, width of the head, its height, length that bends [mm].
    slope : float
        Rise of the seat over its run [-].
    tilt : float or None
        The same as an angle [deg]; None where the head rocks on a crown.
    bending : float or None
        Upper bound of the bending stress [MPa]; None where the tilt is not known.
    """

    diameter: float
    across: float
    head_height: float
    grip: float
    slope: float
    tilt: float | None
    bending: float | None

    @property
    def reach(self) -> float:
        """From the head's seat to the base's underside [mm]."""
        return self.grip + BASE * self.diameter


class Joint:
    """The joint as artists that move.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Colors and weights.
    axis, face : float
        Where the hole's axis stands and where height zero lies [page units].
    """

    def __init__(self, axes: Axes, style: Style, axis: float, face: float) -> None:
        colors, edge = style.colors, style.sizes.edge * POINTS
        self._place = np.array([axis, face])
        nowhere = np.full((3, 2), -9.0)
        self._metal = [
            PathPatch(
                Path(nowhere),
                facecolor=colors.metal,
                edgecolor=colors.hatch,
                hatch=hatch,
                linewidth=0,
            )
            for hatch in ("/", "/", "\\", "\\")
        ]
        self._skin = Line2D([], [], color=colors.ink, linewidth=edge)
        self._tool = PathPatch(
            Path(nowhere), facecolor=colors.screw, edgecolor=colors.ink, linewidth=edge
        )
        self._stretched = Line2D([], [], color=colors.contact, linewidth=1.8 * edge)
        moving: tuple[Artist, ...] = (*self._metal, self._skin, self._tool, self._stretched)
        for artist, order in zip(moving, (2.0, 2.0, 2.0, 2.0, 2.4, 3.0, 3.4), strict=True):
            artist.set(zorder=order, animated=True)
            axes.add_artist(artist)

    def show_bolt(self, pad: Pad, bolt: Bolt, scale: float, *, tight: bool) -> None:
        """Show the bolt, tightened or just laid in; `scale` is page units per mm."""
        slope = bolt.slope if tight else 0.0
        path, side, end = _bolt(pad, bolt, slope)
        self._show_metal(pad, bolt, scale, end)
        self._tool.set_path(Path(path * scale + self._place, closed=True))
        line = side * scale + self._place if slope else BREAK
        self._stretched.set_data(*line.T.tolist())

    def show_cutter(self, pad: Pad, bolt: Bolt, scale: float) -> None:
        """Show the cutter on the pad, its pilot in the hole."""
        self._show_metal(pad, bolt, scale, 0.0)
        self._tool.set_path(Path(_cutter(pad, bolt) * scale + self._place, closed=True))
        self._stretched.set_data(*BREAK.T.tolist())

    def _show_metal(self, pad: Pad, bolt: Bolt, scale: float, end: float) -> None:
        """Show flange and base; `end` is where the bolt stands below, from the axis [mm]."""
        pieces = [*_flange(pad), *_base(pad, bolt, end)]
        pages = [piece * scale + self._place for piece in pieces]
        outlines = [np.concatenate([one, one[:1]]) for one in pages]
        for metal, outline in zip(self._metal, outlines, strict=True):
            metal.set_path(Path(outline, closed=True))
        self._skin.set_data(*joined(outlines).T.tolist())


def _flange(pad: Pad) -> list[Points]:
    """Left and right half of the flange [mm]."""
    found = []
    surface = np.column_stack([pad.along, pad.faced])
    for side in (-1, 1):
        top = surface[side * surface[:, 0] >= pad.hole_diameter / 2][::side]
        wall = side * pad.hole_diameter / 2
        ends = [(top[-1, 0], pad.underside), (wall, pad.underside), (wall, top[0, 1])]
        found.append(np.concatenate([top, ends]))
    return found


def _base(pad: Pad, bolt: Bolt, end: float) -> list[Points]:
    """Left and right half of the part below, tapped where the grip ends [mm]."""
    top, low = pad.underside, -bolt.reach
    found = []
    for side in (-1, 1):
        tight, loose = (end + side * d / 2 for d in (bolt.diameter, LOOSE * bolt.diameter))
        out = side * pad.size / 2
        corners = [(out, top), (loose, top), (loose, -bolt.grip), (tight, -bolt.grip),
                   (tight, low), (out, low)]  # fmt: skip
        found.append(np.array(corners))
    return found


def _bolt(pad: Pad, bolt: Bolt, slope: float) -> tuple[Points, Points, float]:
    """Outline of a bolt, its stretched side, and where its end stands from the axis [mm]."""
    lift = _rests_at(pad, bolt, slope)
    depth = np.linspace(0.0, bolt.grip, 13)
    # The head turns by the slope and the far end stands upright: the axis is a parabola.
    axis = -slope * (bolt.grip - depth) ** 2 / (2 * bolt.grip)
    axis = axis - np.interp([0.0, lift - pad.underside], depth, axis).mean()
    edge = np.column_stack([axis, lift - depth])
    half = np.array([bolt.diameter / 2, 0.0])
    thread = _thread(bolt) + np.array([axis[-1], lift - bolt.grip])
    mirrored = thread * np.array([-1.0, 1.0]) + np.array([2 * axis[-1], 0.0])
    outline = [_head(bolt, slope) + edge[0], edge + half, thread, mirrored[::-1],
               (edge - half)[::-1]]  # fmt: skip
    return np.concatenate([*outline, outline[0][:1]]), edge + half, float(axis[-1])


def _rests_at(pad: Pad, bolt: Bolt, slope: float) -> float:
    """Height on the axis of a head's underside that lies on the pad [mm]."""
    along = pad.along
    out = np.abs(along)
    under = (out <= bolt.across / 2) & (out >= pad.hole_diameter / 2)
    return float((pad.faced[under] - slope * along[under]).max())


def _head(bolt: Bolt, slope: float) -> Points:
    """Corners of the head from the lower left to the lower right, square to its seat [mm]."""
    normal = np.array([-slope, 1.0]) / np.hypot(slope, 1.0)
    across = np.array([normal[1], -normal[0]]) * bolt.across / 2
    up = normal * bolt.head_height
    return np.array([-across, up - across, up + across, across])


def _thread(bolt: Bolt) -> Points:
    """Right side of the thread that holds, from its first turn down [mm]."""
    down = np.linspace(0.0, ENGAGED * bolt.diameter, 2 * TURNS + 1)
    root = np.where(np.arange(len(down)) % 2, ROOT, 0.0) * bolt.diameter
    return np.column_stack([bolt.diameter / 2 - root, -down])


def _cutter(pad: Pad, bolt: Bolt) -> Points:
    """Cutter with its pilot in the hole [mm]."""
    flat, body, high = pad.cut_height, pad.diameter / 2, bolt.head_height
    pilot, shank = 0.96 * pad.hole_diameter / 2, pad.diameter / 4
    right = [(pilot, pad.underside), (pilot, flat), (body, flat), (body, flat + 0.55 * high),
             (shank, flat + 0.55 * high), (shank, flat + high)]  # fmt: skip
    outline = right + [(-x, y) for x, y in reversed(right)]
    return np.array([*outline, outline[0]])
