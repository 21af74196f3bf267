"""Two seats on one hole, one from each side: the straight hole left, or where they meet.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
Two seats Z1 and Z2 deep in a part t thick leave a straight hole L = t - Z1 - Z2 long. Where L
is not above zero two cones meet. At the depth z under the first face the first cone is
D1 - 2 T1 z wide and the second D2 - 2 T2 (t - z); they are equally wide, and narrowest, at

    z = (D1 - D2 + 2 T2 t) / (2 (T1 + T2)),

the throat. For equal seats its diameter is D - T t.
"""

from dataclasses import dataclass

from seatwork import checks
from seatwork.seats.cones import Countersink
from seatwork.seats.counterbores import Counterbore


@dataclass(frozen=True, slots=True, kw_only=True)
class BothSides:
    """What two seats on one hole leave of the part.

    Parameters
    ----------
    first, second : Countersink or Counterbore
        The seats, each from its own face.
    thickness : float
        Thickness of the part at the hole [mm].

    Raises
    ------
    SeatworkError
        If the part has no thickness.

    Examples
    --------
    >>> seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=82)
    >>> found = BothSides(first=seat, second=seat, thickness=6.35)
    >>> found.land, found.throat
    (-0.692, 7.358)
    """

    first: Countersink | Counterbore
    second: Countersink | Counterbore
    thickness: float

    def __post_init__(self) -> None:
        checks.length(self.thickness, "thickness of the part")

    @property
    def depth(self) -> float:
        """Both depths together [mm]."""
        return self.first.depth + self.second.depth

    @property
    def land(self) -> float:
        """Straight hole left between the seats; zero or below where they meet [mm]."""
        return self.thickness - self.depth

    @property
    def meet(self) -> bool:
        """Whether no straight hole is left."""
        return not self.land > 0

    @property
    def share(self) -> float:
        """Share of the thickness that both seats take together [-]."""
        return self.depth / self.thickness

    @property
    def throat(self) -> float | None:
        """Narrowest diameter where two cones meet [mm].

        None where they do not meet, are no cones, or one swallows the other.
        """
        one, other = self.first, self.second
        if not (self.meet and isinstance(one, Countersink) and isinstance(other, Countersink)):
            return None
        rise = one.diameter - other.diameter + 2 * other.tangent * self.thickness
        depth = rise / (2 * (one.tangent + other.tangent))
        return one.diameter - 2 * one.tangent * depth if 0 < depth < self.thickness else None
