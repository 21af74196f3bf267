"""Counterbores: the flat-bottomed bore that takes a screw head, washer or wrench socket.

Lengths are millimeters.

Notes
-----
Plain geometry of two cylinders on one axis; which sizes a screw wants stands in
``counterbore_sizes``.
"""

from dataclasses import dataclass
from math import pi

from seatwork import checks


@dataclass(frozen=True, slots=True, kw_only=True)
class Counterbore:
    """A counterbore square to its hole.

    Parameters
    ----------
    diameter : float
        Diameter of the counterbore [mm].
    depth : float
        Depth from the face to its floor [mm].
    hole_diameter : float
        Diameter of the hole it is centered on [mm].

    Raises
    ------
    SeatworkError
        If the sizes cannot make a counterbore; the sentence names the bad one.

    Examples
    --------
    >>> Counterbore(diameter=11, depth=6.4, hole_diameter=6.6).ring_width
    2.2
    """

    diameter: float
    depth: float
    hole_diameter: float

    def __str__(self) -> str:
        hole = f"{self.hole_diameter:.2f} mm hole"
        return f"counterbore {self.diameter:.2f} mm, {self.depth:.2f} mm deep, on a {hole}"

    def __post_init__(self) -> None:
        checks.length(self.diameter, "counterbore diameter")
        checks.length(self.depth, "counterbore depth")
        checks.length(self.hole_diameter, "hole diameter")
        checks.smaller(self.hole_diameter, "hole diameter", self.diameter, "counterbore diameter")

    @property
    def ring_width(self) -> float:
        """Width of the floor from hole to wall [mm]."""
        return (self.diameter - self.hole_diameter) / 2

    @property
    def floor_area(self) -> float:
        """Area of the floor round the hole [mm²]."""
        return pi * (self.diameter - self.hole_diameter) * (self.diameter + self.hole_diameter) / 4

    @property
    def volume(self) -> float:
        """Metal cut away round the hole [mm³]."""
        return self.floor_area * self.depth

    def floor_left(self, thickness: float) -> float:
        """Give the metal left under the counterbore.

        Parameters
        ----------
        thickness : float
            Thickness of the part [mm].

        Returns
        -------
        float
            Thickness less depth [mm].

        Raises
        ------
        SeatworkError
            If the counterbore goes through.

        Examples
        --------
        >>> Counterbore(diameter=11, depth=6.4, hole_diameter=6.6).floor_left(10)
        3.6
        """
        checks.length(thickness, "thickness of the part")
        checks.smaller(self.depth, "counterbore depth", thickness, "thickness of the part")
        return thickness - self.depth

    def wall_to_edge(self, edge_distance: float) -> float:
        """Give the wall between the counterbore and an edge of the part.

        Parameters
        ----------
        edge_distance : float
            From the hole's axis to the edge [mm].

        Returns
        -------
        float
            Wall left [mm].

        Raises
        ------
        SeatworkError
            If the counterbore breaks out at the edge.
        """
        checks.length(edge_distance, "distance to the edge")
        checks.smaller(self.diameter / 2, "radius of the counterbore", edge_distance, "distance")
        return edge_distance - self.diameter / 2
