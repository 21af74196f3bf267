"""How wide and how deep a counterbore must be for what goes into it.

Lengths are millimeters.

Notes
-----
The bore is as wide as the widest thing that must go in, plus clearance: the head, the washer,
or the wrench socket; and as deep as what lies in it, plus the amount it must be below the
face.
"""

from dataclasses import dataclass

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.counterbores import Counterbore


@dataclass(frozen=True, slots=True, kw_only=True)
class Sized:
    """A counterbore and what set its diameter.

    Parameters
    ----------
    counterbore : Counterbore
        The counterbore.
    set_by : str
        "head", "washer" or "wrench socket".
    """

    counterbore: Counterbore
    set_by: str


def sized_for(
    *,
    hole_diameter: float,
    head_diameter: float,
    head_height: float,
    clearance: float,
    below: float,
    washer_diameter: float = 0.0,
    washer_thickness: float = 0.0,
    wrench_socket_diameter: float = 0.0,
) -> Sized:
    """Size a counterbore for a head, its washer and the wrench socket that turns it.

    Parameters
    ----------
    hole_diameter : float
        Diameter of the hole [mm].
    head_diameter : float
        Greatest diameter of the head, across corners for a hex head [mm].
    head_height : float
        Greatest height of the head [mm].
    clearance : float
        How much wider than the widest of them the bore is made [mm].
    below : float
        How far the head's top lies below the face [mm].
    washer_diameter : float
        Outside of the washer [mm]; zero without one.
    washer_thickness : float
        Thickness of the washer [mm].
    wrench_socket_diameter : float
        Outside of the wrench socket [mm]; zero if none must go in.

    Returns
    -------
    Sized
        The counterbore and what set its diameter.

    Raises
    ------
    SeatworkError
        If a size is out of range, or a washer has only one of its two sizes.

    Examples
    --------
    3/8 socket head cap screw with a plain washer of .812 in:

    >>> found = sized_for(hole_diameter=10.3, head_diameter=14.2875, head_height=9.525,
    ...                   clearance=1.6, below=0.381, washer_diameter=20.6248,
    ...                   washer_thickness=1.651)
    >>> found.counterbore.depth / 25.4, found.counterbore.diameter / 25.4, found.set_by
    (0.455, 0.875, 'washer')
    """
    checks.length(head_diameter, "head diameter")
    checks.length(head_height, "head height")
    for size, name in (
        (clearance, "clearance"),
        (below, "amount below the face"),
        (washer_diameter, "washer diameter"),
        (washer_thickness, "washer thickness"),
        (wrench_socket_diameter, "wrench socket diameter"),
    ):
        checks.length_or_zero(size, name)
    if (washer_diameter > 0) != (washer_thickness > 0):
        raise SeatworkError(
            Length(max(washer_diameter, washer_thickness)),
            "a washer has a diameter and a thickness",
            "give both, or neither",
        )
    widths = {
        "head": head_diameter,
        "washer": washer_diameter,
        "wrench socket": wrench_socket_diameter,
    }
    set_by = max(widths, key=lambda name: widths[name])
    bore = Counterbore(
        diameter=widths[set_by] + clearance,
        depth=head_height + washer_thickness + below,
        hole_diameter=hole_diameter,
    )
    return Sized(counterbore=bore, set_by=set_by)
