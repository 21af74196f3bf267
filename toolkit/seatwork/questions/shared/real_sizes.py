"""Sizes that questions are drawn from: screws and holes a shop really has."""

from dataclasses import dataclass
from functools import cache
from random import Random

from seatwork import hardware
from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick
from seatwork.seats import Countersink
from seatwork.seats.gaging import ball_range

FLAT_HEADS = ("#10", "1/4", "5/16", "3/8", "7/16", "1/2")
ALL_FLAT_HEADS = ("#6", "#8", "#10", "1/4", "5/16", "3/8", "7/16", "1/2", "5/8", "3/4")
SOCKET_CAPS = ("#10", "1/4", "5/16", "3/8", "1/2", "5/8")
HEX_CAPS = ("1/4", "5/16", "3/8", "1/2", "5/8", "3/4")
WRONG_STANDARD = {82.0: 90.0, 90.0: 82.0, 100.0: 90.0, 120.0: 100.0, 60.0: 82.0}


@dataclass(frozen=True, slots=True, kw_only=True)
class FlatHead:
    """An inch flat head machine screw and the hole it goes through.

    Parameters
    ----------
    size : str
        Size as the shop says it.
    diameter : float
        Diameter of the thread [mm].
    sharp_diameter, edge_diameter : float
        Theoretical sharp diameter, and the greatest real edge, of the head [mm].
    least_sharp_diameter : float
        Theoretical sharp diameter of the head that stands least above its gage [mm].
    height : float
        Height of the head [mm].
    hole_diameter : float
        Normal clearance hole [mm].
    """

    size: str
    diameter: float
    sharp_diameter: float
    edge_diameter: float
    least_sharp_diameter: float
    height: float
    hole_diameter: float

    def seat(self, included_angle: float) -> Countersink:
        """Return a seat of this head's sharp diameter on its hole, with any angle [deg]."""
        return Countersink(
            diameter=self.sharp_diameter,
            hole_diameter=self.hole_diameter,
            included_angle=included_angle,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class CapScrew:
    """An inch cap screw, socket or hex, and the hole it goes through.

    Parameters
    ----------
    size : str
        Size as the shop says it.
    diameter : float
        Diameter of the thread [mm].
    head_diameter : float
        Greatest diameter of the head, across corners for a hex [mm].
    height : float
        Greatest height of the head [mm].
    hole_diameter : float
        Normal clearance hole [mm].
    """

    size: str
    diameter: float
    head_diameter: float
    height: float
    hole_diameter: float


def flat_head(rng: Random) -> FlatHead:
    """Return an inch flat head machine screw."""
    return flat_head_of(pick(rng, FLAT_HEADS))


def socket_cap(rng: Random) -> CapScrew:
    """Return an inch socket head cap screw."""
    return _cap_screw(pick(rng, SOCKET_CAPS), "socket head cap screw", "head_diameter")


def hex_cap(rng: Random) -> CapScrew:
    """Return an inch hex cap screw."""
    return _cap_screw(pick(rng, HEX_CAPS), "hex cap screw", "across_corners")


def balls(seat: Countersink, spare: float = 0.0, largest: int = 39) -> list[float]:
    """Return the gage balls, from 1/4 in by 32nds, that touch the cone of a seat [mm].

    Parameters
    ----------
    seat : Countersink
        The seat.
    spare : float
        Part of a ball's size that it must keep from both ends of the cone [-].
    largest : int
        Size of the largest ball [1/32 in].
    """
    least, greatest = ball_range(seat)
    sizes = (count / 32 * INCH for count in range(8, largest + 1))
    return [ball for ball in sizes if (1 + spare) * least < ball < (1 - spare) * greatest]


@cache
def hole(size: str, fit: str) -> float:
    """Return the clearance hole of ASME B18.2.8 for an inch size [mm]."""
    return hardware.clearance_hole(size, fit=fit, standard="ASME B18.2.8").diameter


@cache
def drilled_for(thread: str) -> hardware.TapDrill:
    """Return the tap drill of a thread, such as 1/4 UNC."""
    return hardware.tap_drill(thread)


@cache
def flat_head_of(size: str) -> FlatHead:
    """Return the flat head machine screw of a size."""
    screw = hardware.screw(f"{size} flat head machine screw")
    return FlatHead(
        size=size,
        diameter=screw.thread.diameter,
        sharp_diameter=_known(screw.sharp_diameter),
        edge_diameter=_known(screw.edge_diameter),
        least_sharp_diameter=screw.lowest_head.sharp_diameter,
        height=_known(screw.head_height),
        hole_diameter=hole(size, "normal"),
    )


@cache
def across_flats(size: str) -> float:
    """Return the width across the flats of a hex cap screw's head [mm]."""
    return _known(hardware.screw(f"{size} hex cap screw").across_flats)


@cache
def _cap_screw(size: str, kind: str, width: str) -> CapScrew:
    screw = hardware.screw(f"{size} {kind}")
    return CapScrew(
        size=size,
        diameter=screw.thread.diameter,
        head_diameter=_known(getattr(screw, width)),
        height=_known(screw.head_height),
        hole_diameter=hole(size, "normal"),
    )


def _known(value: float | None) -> float:
    assert value is not None, "the list has no such size"
    return value
