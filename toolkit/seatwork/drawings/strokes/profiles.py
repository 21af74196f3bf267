"""Outlines in section, to the right of the axis or whole, in mm.

The face is at height 0 and metal lies below it; sizes come from seatwork.seats.
"""

import numpy as np
from matplotlib.path import Path
from numpy.typing import NDArray

from seatwork.seats import Chamfer, Counterbore, Countersink, Head, Spotface

Points = NDArray[np.float64]

ROUNDING = 0.6
"""Share of the rim's depth that is rounded off at the top, where a real head has no corner."""

CLEARANCE = 0.94
"""Shank diameter drawn for a screw of unknown neck, as a share of the hole."""


def whole(right: Points) -> Points:
    """Mirror a right-hand outline about the axis, from its left end to its right end."""
    left = right[::-1] * np.array([-1.0, 1.0])
    return np.concatenate([left, right])


def left_and_right(right: Points) -> tuple[Points, Points]:
    """Return a right-hand outline and its mirror image."""
    return right * np.array([-1.0, 1.0]), right


def countersink_wall(seat: Countersink, bottom: float) -> Points:
    """Wall of a countersunk hole, from the face down to `bottom` [mm, negative]."""
    large, small = seat.diameter / 2, seat.hole_diameter / 2
    return np.array([(large, 0.0), (small, -seat.depth), (small, bottom)])


def counterbore_wall(seat: Counterbore, bottom: float) -> Points:
    """Wall of a counterbored hole, from the face down to `bottom` [mm, negative]."""
    large, small = seat.diameter / 2, seat.hole_diameter / 2
    return np.array([(large, 0.0), (large, -seat.depth), (small, -seat.depth), (small, bottom)])


def spotface_wall(seat: Spotface, depth: float, bottom: float) -> Points:
    """Wall of a spotfaced hole, cut `depth` [mm] below the highest spot of the pad."""
    bore = Counterbore(diameter=seat.diameter, depth=depth, hole_diameter=seat.hole_diameter)
    return counterbore_wall(bore, bottom)


def chamfer_wall(chamfer: Chamfer, hole_diameter: float, bottom: float) -> Points:
    """Wall of a chamfered hole, from the face down to `bottom` [mm, negative]."""
    return countersink_wall(chamfer.at_hole(hole_diameter), bottom)


def shank_diameter(head: Head, seat: Countersink) -> float:
    """Diameter to draw the shank with [mm]: the neck's where known, never wider than the hole."""
    neck = head.neck_diameter
    return min(CLEARANCE * seat.hole_diameter if neck is None else neck, seat.hole_diameter)


def neck_depth(head: Head, seat: Countersink) -> float:
    """Depth below the flat top at which the cone, as drawn, meets the shank [mm]."""
    return cone_end(head, shank_diameter(head, seat))


def cone_end(head: Head, shank: float) -> float:
    """Depth below the flat top at which the cone, as drawn, has the diameter of a shank [mm]."""
    share = max(0.0, 1.0 - shank / head.edge)
    return head.rim_depth + share * (head.apex_depth - head.rim_depth)


def head_outline(head: Head, seat: Countersink, amount: float, bottom: float) -> Path:
    """Whole outline of the screw in its seat, down to `bottom` [mm, negative].

    Its top stands `amount` [mm] above the face; the rim is the real one, rounded at the top.
    """
    return Path(head_points(head, shank_diameter(head, seat), amount, bottom), HEAD_CODES)


def head_points(head: Head, shank_diameter: float, amount: float, bottom: float) -> Points:
    """Give the points of `head_outline` for any shank; `HEAD_CODES` join them [mm]."""
    top, edge, shank = amount, head.edge / 2, shank_diameter / 2
    neck = cone_end(head, shank_diameter)
    radius = ROUNDING * head.rim_depth
    rim = [(edge - radius, top), (edge, top), (edge, top - radius)]
    cone = [(edge, top - head.rim_depth), (shank, top - neck), (shank, bottom)]
    points = whole(np.array(rim + cone))
    return np.concatenate([points, points[:1]])


LINE, CURVE = Path.LINETO, Path.CURVE3
HEAD_CODES = [Path.MOVETO, LINE, LINE, LINE, CURVE, CURVE, LINE, CURVE, CURVE, LINE, LINE, LINE]
HEAD_CODES += [Path.CLOSEPOLY]
"""From the lower left up, over the two rounded corners, down to the lower right, and closed."""
