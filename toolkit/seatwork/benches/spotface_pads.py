"""The rough pads of the spotface bench, how far each is faced, and the bolt that goes on it."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np

from seatwork.drawings.spotface_joint import Bolt
from seatwork.drawings.spotface_pad import Pad
from seatwork.hardware import clearance_hole, screw
from seatwork.hardware.clearance import ClearanceHole
from seatwork.seats import Spotface, bending_stress
from seatwork.seats.castings import Casting, rough_pad
from seatwork.seats.cleaning import CleanUp, clean_up
from seatwork.seats.surfaces import Round, Surface, Tilted

PAD, BOSS = "frame pad of the cider mill (draft, scale)", "round boss (scale)"
FACES = {PAD: "frame pad", BOSS: "round boss"}
BOLT = "1/2-13 hex cap screw"
POINTS, GRAIN, BEYOND = 160, 2.5, 1.3
"""Grid points along a side, grain of the scale [mm], pad over spotface [-]."""

SEED = 7
"""Of the scale that is drawn: the same pad for everyone."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Ground:
    """A pad before the cut, worked out once for many depths.

    Parameters
    ----------
    surface : Surface
        Its shape without the scale.
    heights, distance : numpy.ndarray
        Shape (n, n): height, and distance from the hole's axis [mm].
    found : CleanUp
        How it cleans up.
    """

    surface: Surface
    heights: Any
    distance: Any
    found: CleanUp


@lru_cache(maxsize=8)
def ground_of(face: str, shape: float, roughness: float, diameter: float) -> Ground:
    """Give a pad and how it cleans up, worked out once.

    Parameters
    ----------
    face : str
        One of `FACES`.
    shape : float
        Draft of the frame pad [deg], or diameter of the round boss [mm].
    roughness, diameter : float
        Standard deviation of the scale, and spotface [mm].
    """
    surface: Surface = Tilted(tilt=shape) if face == PAD else Round(diameter=shape)
    bare = _bare(roughness, BEYOND * diameter)
    casting = Casting(scale=bare.scale, spacing=bare.spacing, shapes=(surface,))
    axis = np.linspace(-casting.size / 2, casting.size / 2, POINTS)
    across, up = axis, axis[:, None]
    spot = Spotface(diameter=diameter, hole_diameter=bolt_hole().diameter)
    return Ground(
        surface=surface,
        heights=casting.scale + surface.height(across, up),
        distance=np.hypot(across, up),
        found=clean_up(spot, casting),
    )


@lru_cache(maxsize=4)
def _bare(roughness: float, size: float) -> Casting:
    """Give the scale alone; roughness and side of the pad [mm]."""
    rng = np.random.default_rng(SEED)
    return rough_pad(rng, size=size, roughness=roughness, correlation_length=GRAIN, points=POINTS)


def pad_at(ground: Ground, values: Mapping[str, Any], depth: float) -> Pad:
    """Give the pad with the cutter `depth` [mm] below its first touch."""
    found, thickness = ground.found, values["thickness"]
    beyond = depth - found.full_depth
    whole = beyond >= 0
    return Pad(
        heights=ground.heights,
        distance=ground.distance,
        size=BEYOND * values["diameter"],
        diameter=values["diameter"],
        hole_diameter=bolt_hole().diameter,
        depth=depth,
        full_depth=found.full_depth,
        highest=found.highest,
        share=1.0 if whole else float(found.share(depth)) if depth > 0 else 0.0,
        thickness=thickness,
        left=found.flange_left(thickness, at="low side", allowance=beyond) if whole else thickness,
        face=FACES[values["face"]],
    )


def bolt_on(surface: Surface, grip: float) -> Bolt:
    """Give the bolt on a seat; its tilt is not known where it rocks."""
    part = screw(BOLT)
    size = part.thread.diameter
    tilt = surface.tilt if isinstance(surface, Tilted) else None
    return Bolt(
        diameter=size,
        across=part.across_flats or 0.0,
        head_height=part.head_height or 0.0,
        grip=grip,
        slope=surface.slope if isinstance(surface, Tilted) else 0.0,
        tilt=tilt,
        bending=None if tilt is None else bending_stress(tilt=tilt, diameter=size, grip=grip),
    )


def bolt_hole() -> ClearanceHole:
    """Give the hole for the bolt, from the lists."""
    return clearance_hole("1/2", fit="close")
