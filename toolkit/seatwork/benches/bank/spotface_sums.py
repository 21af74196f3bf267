"""The rough pads of the spotface bench, how far each is faced, and the bolt that goes on it."""

from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import numpy as np

from seatwork.drawings.parts.spotface_joint import Bolt
from seatwork.drawings.parts.spotface_pad import Pad
from seatwork.errors import SeatworkError
from seatwork.hardware.job_list import Job, job, jobs
from seatwork.hardware.screws import Screw
from seatwork.seats import Spotface, bending_stress
from seatwork.seats.castings import Casting, rough_pad
from seatwork.seats.cleaning import CleanUp, clean_up
from seatwork.seats.surfaces import Round, Surface, Tilted

PAD, BOSS = "frame pad of the cider mill (draft, scale)", "round boss (scale)"
FACES = {PAD: "frame pad", BOSS: "round boss"}
POINTS, GRAIN, BEYOND = 160, 2.5, 1.3
"""Grid points along a side, grain of the scale [mm], pad over spotface [-]."""

GRIP, SEAT = 3.0, 2.5
"""Grip, and a spotface of which the list says no size, over the bolt's diameter [-]: examples."""

FLANGE = 12.7
"""Flange at the low side where the list of jobs gives none [mm], and no thicker than the bolt:
an example."""

SEED = 7
"""Of the scale that is drawn: the same pad for everyone."""


def bolts() -> tuple[str, ...]:
    """Name the jobs of the list that face a pad for a head."""
    return jobs(lambda one: one.seat == "spotface" and one.fastener is not None)


def bolt_job(name: str) -> Job:
    """Find a job as `job` does, whose screw has a head that is flat below.

    Raises
    ------
    SeatworkError
        If the job names no screw, or its head is a cone.
    """
    found = job(name)
    if found.screw.seat_angle is not None:
        fault = "its head is a cone, which wants a countersink"
        raise SeatworkError(name, fault, "name a hex cap screw or a socket head cap screw")
    return found


def across(part: Screw) -> float:
    """Return how wide a head is: across its corners, or across a round one [mm]."""
    return part.across_corners or part.head_diameter or part.thread.diameter


def brought(one: Job) -> dict[str, float]:
    """Return spotface, grip and flange that a job brings [mm]; examples where it says none."""
    size = one.screw.thread.diameter
    thickness = one.thickness or min(FLANGE, size)
    return {
        "diameter": one.diameter or SEAT * size,
        "grip": max(GRIP * size, thickness + size),
        "thickness": thickness,
    }


def grip_for(thickness: float, grip: float, size: float) -> float:
    """Return a grip that still leaves a base under a flange [mm]; the same one where it does."""
    return grip if grip >= thickness + size else thickness + (GRIP - 1.0) * size


def strength(bolt: Screw) -> tuple[str, float, str]:
    """Return the usual strength of a bolt: its name, its proof load [MPa], and the document.

    From memory: 85 ksi for grade 5 up to 1 in; 580 MPa for class 8.8 up to M16, 600 above. Socket
    head cap screws: 140 ksi up to 1/2 in, 135 above; 970 MPa for class 12.9.
    """
    if bolt.across_flats is None and bolt.thread.system == "inch":
        return "alloy socket head", 965.0 if bolt.thread.diameter <= 12.7 else 931.0, "ASTM A574"
    if bolt.across_flats is None:
        return "class 12.9", 970.0, "ISO 898-1"
    if bolt.thread.system == "inch":
        return "grade 5", 586.0, "SAE J429"
    return "class 8.8", 580.0 if bolt.thread.diameter <= 16 else 600.0, "ISO 898-1"


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
def ground_of(face: str, shape: float, roughness: float, diameter: float, hole: float) -> Ground:
    """Give a pad and how it cleans up, worked out once.

    Parameters
    ----------
    face : str
        One of `FACES`.
    shape : float
        Draft of the frame pad [deg], or diameter of the round boss [mm].
    roughness, diameter, hole : float
        Standard deviation of the scale, spotface, and hole [mm].
    """
    surface: Surface = Tilted(tilt=shape) if face == PAD else Round(diameter=shape)
    bare = _bare(roughness, BEYOND * diameter)
    casting = Casting(scale=bare.scale, spacing=bare.spacing, shapes=(surface,))
    axis = np.linspace(-casting.size / 2, casting.size / 2, POINTS)
    across, up = axis, axis[:, None]
    spot = Spotface(diameter=diameter, hole_diameter=hole)
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


@lru_cache(maxsize=8)
def pad_at(
    ground: Ground, depth: float, *, diameter: float, hole: float, thickness: float, face: str
) -> Pad:
    """Give the pad with the cutter `depth` [mm] below its first touch; the same one if asked again.

    Parameters
    ----------
    ground : Ground
        Before the cut.
    depth, diameter, hole, thickness : float
        Of the cut, spotface, hole and flange [mm].
    face : str
        One of `FACES`.
    """
    found = ground.found
    beyond = depth - found.full_depth
    whole = beyond >= 0
    return Pad(
        heights=ground.heights,
        distance=ground.distance,
        size=BEYOND * diameter,
        diameter=diameter,
        hole_diameter=hole,
        depth=depth,
        full_depth=found.full_depth,
        highest=found.highest,
        share=1.0 if whole else float(found.share(depth)) if depth > 0 else 0.0,
        thickness=thickness,
        left=found.flange_left(thickness, at="low side", allowance=beyond) if whole else thickness,
        face=FACES[face],
    )


def bolt_on(surface: Surface, part: Screw, grip: float) -> Bolt:
    """Give a bolt of a grip [mm] on a seat; its tilt is not known where it rocks."""
    size = part.thread.diameter
    tilt = surface.tilt if isinstance(surface, Tilted) else None
    return Bolt(
        diameter=size,
        across=part.across_flats or across(part),
        head_height=part.head_height or 0.0,
        grip=grip,
        slope=surface.slope if isinstance(surface, Tilted) else 0.0,
        tilt=tilt,
        bending=None if tilt is None else bending_stress(tilt=tilt, diameter=size, grip=grip),
    )
