"""Counterbores: the flat-bottomed bore that takes a screw head, washer or wrench socket.

Lengths are millimeters.

Notes
-----
The tool leaves a rounded corner between floor and wall. A head whose edge, of radius e,
reaches into a corner of radius R by x is lifted: both are circles, and they touch when their
centers are R - e apart, so the lift is (R - e) - sqrt((R - e)² - x²).
"""

from dataclasses import dataclass
from math import pi, sqrt

from seatwork import checks
from seatwork.seats.chamfers import Chamfer


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

    def wall_to_neighbor(self, other: "Counterbore", pitch: float) -> float:
        """Give the wall between two counterbores.

        Parameters
        ----------
        other : Counterbore
            The neighbor.
        pitch : float
            Distance between the two axes [mm].

        Returns
        -------
        float
            Wall left [mm].

        Raises
        ------
        SeatworkError
            If the two run into each other.

        Examples
        --------
        >>> bore = Counterbore(diameter=11, depth=6.4, hole_diameter=6.6)
        >>> bore.wall_to_neighbor(bore, 15)
        4.0
        """
        checks.length(pitch, "distance between the holes")
        reach = (self.diameter + other.diameter) / 2
        checks.smaller(reach, "sum of the two radii", pitch, "distance between the holes")
        return pitch - reach

    def corner_lift(
        self, *, corner_radius: float, head_diameter: float, edge_radius: float = 0.0
    ) -> float:
        """Give how far the rounded corner of the floor lifts a head.

        Parameters
        ----------
        corner_radius : float
            Radius the tool leaves between floor and wall [mm].
        head_diameter : float
            Diameter of the head, centered in the bore [mm].
        edge_radius : float
            Radius of the head's lower edge [mm].

        Returns
        -------
        float
            Lift of the head off the floor [mm]; zero if the corner clears it.

        Raises
        ------
        SeatworkError
            If the head does not go in.

        Examples
        --------
        >>> bore = Counterbore(diameter=11, depth=6.4, hole_diameter=6.6)
        >>> bore.corner_lift(corner_radius=1, head_diameter=10)
        0.134
        """
        checks.length_or_zero(corner_radius, "corner radius")
        checks.length_or_zero(edge_radius, "edge radius")
        checks.length(head_diameter, "head diameter")
        checks.not_larger(head_diameter, "head", self.diameter, "counterbore")
        checks.not_larger(corner_radius, "corner radius", self.ring_width, "width of the floor")
        checks.not_larger(edge_radius, "edge radius", head_diameter / 2, "radius of the head")
        apart = max(corner_radius - edge_radius, 0.0)
        reach = max((head_diameter - self.diameter) / 2 + apart, 0.0)
        return apart - sqrt(apart * apart - reach * reach)

    def fillet_chamfer(self, transition_diameter: float) -> Chamfer | None:
        """Give the chamfer the hole needs so that the fillet under the head clears.

        Parameters
        ----------
        transition_diameter : float
            Diameter at which the fillet runs out into the bearing face [mm].

        Returns
        -------
        Chamfer or None
            A 90° chamfer out to that diameter; None if the hole is wide enough as it is.

        Raises
        ------
        SeatworkError
            If the fillet is as wide as the floor.

        Examples
        --------
        >>> Counterbore(diameter=11, depth=6.4, hole_diameter=6.4).fillet_chamfer(6.8).leg
        0.2
        """
        checks.length(transition_diameter, "transition diameter")
        checks.smaller(
            transition_diameter, "transition diameter", self.diameter, "counterbore diameter"
        )
        if not transition_diameter - self.hole_diameter > 2 * checks.SMALLEST:
            return None
        return Chamfer(leg=(transition_diameter - self.hole_diameter) / 2)
