"""The pilot of a counterbore, and the way out when none fits.

Lengths are millimeters.

Notes
-----
A pilot guides the cutter in the hole and must turn freely there, so it is a little smaller
than the *hole*, not the size of the screw. A tool with a solid pilot is made for one pair of
cutter and hole; as soon as the bore must be wider than its list says, for a washer or a
wrench socket on a small hole, only a removable pilot in a larger cutter will do. Where the
bore becomes too large for the part, the other way out is a raised boss: the head stands on
it, above the face, and the socket needs no pocket.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from seatwork import checks
from seatwork.seats.counterbores import Counterbore

SAME_SIZE = 0.05
"""Cutters this close to the size asked for count as that size [mm]: half of the last place
that catalogs of tools give in metric."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SolidTool:
    """A counterbore with a solid pilot.

    Parameters
    ----------
    diameter : float
        Diameter it cuts [mm].
    pilot_diameter : float
        Diameter of its pilot [mm].
    """

    diameter: float
    pilot_diameter: float

    def __post_init__(self) -> None:
        checks.length(self.diameter, "cutting diameter")
        checks.length(self.pilot_diameter, "pilot diameter")
        checks.smaller(self.pilot_diameter, "pilot diameter", self.diameter, "cutting diameter")


@dataclass(frozen=True, slots=True, kw_only=True)
class Pilot:
    """The pilot to use.

    Parameters
    ----------
    diameter : float
        Diameter of the pilot [mm].
    kind : str
        "solid" if a listed tool does it, else "removable".
    clearance : float
        How much smaller than the hole it is, on the diameter [mm].
    """

    diameter: float
    kind: Literal["solid", "removable"]
    clearance: float


def pilot_diameter(*, hole_diameter: float, clearance: float) -> float:
    """Find the pilot for a hole.

    Parameters
    ----------
    hole_diameter : float
        Diameter of the hole as drilled [mm].
    clearance : float
        How much smaller the pilot is, on the diameter [mm].

    Returns
    -------
    float
        Diameter of the pilot [mm].

    Raises
    ------
    SeatworkError
        If nothing is left of it.

    Examples
    --------
    >>> pilot_diameter(hole_diameter=6.7564, clearance=0.0762) / 25.4
    0.263
    """
    checks.length(hole_diameter, "hole diameter")
    checks.length(clearance, "pilot clearance")
    checks.smaller(clearance, "pilot clearance", hole_diameter, "hole diameter")
    return hole_diameter - clearance


def pilot_for(
    bore: Counterbore,
    *,
    clearance: float,
    greatest_clearance: float,
    solid_tools: Sequence[SolidTool] = (),
) -> Pilot:
    """Choose the pilot for a counterbore.

    Parameters
    ----------
    bore : Counterbore
        The counterbore to cut.
    clearance : float
        How much smaller than the hole the pilot should be [mm].
    greatest_clearance : float
        How loose a solid pilot may be before it hammers [mm].
    solid_tools : sequence of SolidTool
        The tools with solid pilots at hand.

    Returns
    -------
    Pilot
        The tightest solid pilot that turns freely, else a removable one made to size.

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    A socket wrench asks for 30 mm on a 9 mm hole; the solid tool for that hole cuts 15.

    >>> tool = SolidTool(diameter=15, pilot_diameter=8.9)
    >>> bore = Counterbore(diameter=30, depth=8, hole_diameter=9)
    >>> pilot_for(bore, clearance=0.05, greatest_clearance=0.13, solid_tools=[tool]).kind
    'removable'
    """
    wanted = pilot_diameter(hole_diameter=bore.hole_diameter, clearance=clearance)
    checks.length(greatest_clearance, "greatest clearance")
    checks.not_larger(clearance, "pilot clearance", greatest_clearance, "greatest clearance")
    fitting = [
        tool.pilot_diameter
        for tool in solid_tools
        if abs(tool.diameter - bore.diameter) <= SAME_SIZE
        and 0 < bore.hole_diameter - tool.pilot_diameter <= greatest_clearance
    ]
    kind: Literal["solid", "removable"] = "solid" if fitting else "removable"
    diameter = max(fitting, default=wanted)
    return Pilot(diameter=diameter, kind=kind, clearance=bore.hole_diameter - diameter)


@dataclass(frozen=True, slots=True, kw_only=True)
class RaisedBoss:
    """A boss that lifts the head above the face in place of a counterbore.

    Parameters
    ----------
    diameter : float
        Diameter of the boss [mm].
    height : float
        Height as cast, before the spotface [mm].
    spotface_diameter : float
        Diameter of the spotface on it [mm].
    grip_gain : float
        How much longer the screw's grip is than over the floor of the counterbore [mm].
    """

    diameter: float
    height: float
    spotface_diameter: float
    grip_gain: float


def raised_boss(
    *, bearing_diameter: float, clean_up: float, stand: float, rim: float, instead_of: Counterbore
) -> RaisedBoss:
    """Size a raised boss as the other way out.

    Parameters
    ----------
    bearing_diameter : float
        Diameter that head or washer bears on [mm].
    clean_up : float
        Depth the spotface will take off [mm].
    stand : float
        Height that must remain above the face, so that the socket clears it [mm].
    rim : float
        Metal round the spotface on each side [mm].
    instead_of : Counterbore
        The counterbore it replaces.

    Returns
    -------
    RaisedBoss
        Sizes of the boss.

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Examples
    --------
    >>> bore = Counterbore(diameter=30, depth=8, hole_diameter=9)
    >>> raised_boss(bearing_diameter=16, clean_up=1, stand=2, rim=2, instead_of=bore)
    RaisedBoss(diameter=20, height=3, spotface_diameter=16, grip_gain=10)
    """
    checks.length(bearing_diameter, "bearing diameter")
    checks.length_or_zero(clean_up, "clean-up depth")
    checks.length(stand, "height above the face")
    checks.length_or_zero(rim, "rim of the boss")
    checks.smaller(instead_of.hole_diameter, "hole diameter", bearing_diameter, "bearing diameter")
    return RaisedBoss(
        diameter=bearing_diameter + 2 * rim,
        height=clean_up + stand,
        spotface_diameter=bearing_diameter,
        grip_gain=stand + instead_of.depth,
    )
