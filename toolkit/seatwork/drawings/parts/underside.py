"""The far side of a thin plate: what is not there any more is covered, and its edge is drawn."""

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Patch, PathPatch
from matplotlib.path import Path

from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Points
from seatwork.drawings.strokes.metal import ABOVE_SCREW, BELOW_BREAK, WAVE, Window
from seatwork.drawings.strokes.style import POINTS, Style

CODES = 2 * [Path.MOVETO, *[Path.LINETO] * 4, Path.CLOSEPOLY]
"""Of the two sheets of paper, left and right of the screw."""


class Underside:
    """The far side as artists that move; out of sight where the plate is thicker than is shown.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    style : Style
        Colors and weights.
    clip : matplotlib.patches.Patch, optional
        Border that cuts the view off.
    """

    def __init__(self, axes: Axes, style: Style, clip: Patch | None = None) -> None:
        self._stands: tuple[SeatedHead, float, Window] | None = None
        self.paper = PathPatch(Path(np.zeros((12, 2)), CODES), facecolor=style.colors.paper)
        self.paper.set_linewidth(0)
        self.edge = Line2D([], [], color=style.colors.ink, linewidth=style.sizes.edge * POINTS)
        for artist, order in ((self.paper, ABOVE_SCREW + 0.2), (self.edge, ABOVE_SCREW + 0.3)):
            artist.set(zorder=order, animated=True, visible=False)
            axes.add_artist(artist)
            if clip is not None:
                artist.set_clip_path(clip)

    def show(self, window: Window, part: SeatedHead, amount: float) -> None:
        """Show the far side of the plate of `part`, where that is in `window`.

        Parameters
        ----------
        window : Window
            The piece of page.
        part : SeatedHead
            Head, seat and plate.
        amount : float
            How far the head stands above the face [mm].
        """
        thick = part.thickness
        seen = thick is not None and window.spot(0.0, -thick)[1] > window.bottom + WAVE
        self.paper.set_visible(seen)
        self.edge.set_visible(seen)
        stands = (part, amount, window)
        if thick is None or not seen or stands == self._stands:
            return
        self._stands = stands
        low, out = -thick, (window.right - window.left) / 2 / window.scale
        screw = _screw(part, amount, low)
        bottom = window.deepest - (BELOW_BREAK + 2 * WAVE) / window.scale
        beyond = out + 2 * WAVE / window.scale
        corners = [(screw[-1, 0], bottom), (beyond, bottom), (beyond, low)]
        right = np.concatenate([screw, corners, screw[:1]])
        both = np.concatenate([right, right * np.array([-1.0, 1.0])])
        self.paper.set_path(Path(window.to_page(both), CODES))
        inner = max(part.in_plate.hole_diameter / 2, screw[0, 0])
        x = window.axis + window.scale * np.array([-out, -inner, np.nan, inner, out])
        self.edge.set_data(x.tolist(), 5 * [window.spot(0.0, low)[1]])


def _screw(part: SeatedHead, amount: float, low: float) -> Points:
    """Side of the screw below the far side: cone as far as it reaches, then shank [mm]."""
    head = part.head
    shank = profiles.shank_diameter(head, part.seat) / 2
    neck = amount - profiles.neck_depth(head, part.seat)
    left = 1.0 - (amount - low) / head.apex_depth
    wide = max(shank, head.sharp_diameter / 2 * left)
    return np.array([(wide, low), (shank, min(neck, low))])
