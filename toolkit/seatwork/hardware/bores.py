"""The counterbore that a head wants where it is to lie below the face."""

from contextlib import suppress
from dataclasses import dataclass

from seatwork.errors import SeatworkError
from seatwork.hardware.counterbores import listed_counterbore
from seatwork.hardware.facts import Sourced
from seatwork.hardware.screws import Screw
from seatwork.hardware.wrenches import wrench_socket
from seatwork.shop import rules

BELOW = "counterbore.inch_below_face"


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class HeadBore(Sourced):
    """A counterbore for a head, by a list or by the wrench socket that turns it.

    Parameters
    ----------
    diameter, depth : float
        Of the counterbore [mm].
    basis : str
        What they rest on.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    diameter: float
    depth: float
    basis: str

    def _line(self) -> str:
        return self.basis


def head_bore(part: Screw) -> HeadBore:
    """Find the counterbore of a head: a list's, else room for the wrench socket of a hexagon.

    Raises
    ------
    SeatworkError
        If its head is a cone, or no list says how wide.

    Examples
    --------
    >>> from seatwork.hardware.naming import screw
    >>> head_bore(screw("3/8-16 hex cap")).diameter
    28.0
    """
    with suppress(SeatworkError):
        found = listed_counterbore(part)
        basis = f"{found.standard}; depth: {found.depth_basis}"
        return HeadBore(
            diameter=found.diameter,
            depth=found.depth,
            basis=basis,
            source=found.source,
            confirmed=found.confirmed,
        )
    height = part.head_height
    if part.across_flats is None or height is None:
        remedy = "a flat head wants a countersink; for another head write the job in jobs.csv"
        raise SeatworkError(part.name, "no list held here gives a counterbore for it", remedy)
    room = wrench_socket(part)
    return HeadBore(
        diameter=room.counterbore_diameter,
        depth=height + rules().number(BELOW),
        basis=f"{room.basis}; depth: head height and house rule {BELOW}",
        source=room.source,
        confirmed=room.confirmed,
    )
