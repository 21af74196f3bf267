"""What the underside of a head needs: its fillet clear, a ring to bear on, no corner under it.

Lengths are millimeters.

Notes
-----
The fillet under a head must clear the edge of the hole: a hole smaller than the fillet's
diameter C is broken to it, (C - d)/2 a side at 90° included. What is broken away bears
nothing. A corner radius at the floor of a counterbore must lie outside the head, also when
the screw leans over by the play in its hole.
"""

from seatwork import checks


def floor_leg(*, hole_diameter: float, clear_diameter: float) -> float:
    """Find the leg of the break that clears a fillet, 90° included.

    Parameters
    ----------
    hole_diameter : float
        Diameter of the hole [mm].
    clear_diameter : float
        Diameter the fillet needs [mm].

    Returns
    -------
    float
        Leg, which is also its depth from the floor [mm]; 0 where the hole clears the fillet.

    Raises
    ------
    SeatworkError
        If a size is none.

    Examples
    --------
    >>> floor_leg(hole_diameter=6.6, clear_diameter=6.8)
    0.1
    """
    checks.length(hole_diameter, "hole diameter")
    checks.length(clear_diameter, "diameter of the fillet")
    return max((clear_diameter - hole_diameter) / 2, 0.0)


def ring_left(*, head_diameter: float, inner_diameter: float) -> float:
    """Find the width of the ring that a head bears on.

    Parameters
    ----------
    head_diameter : float
        Diameter of the bearing face, or of the head [mm].
    inner_diameter : float
        Diameter of the hole, or of the break at its edge [mm].

    Returns
    -------
    float
        Width [mm]; zero or less where nothing is left.

    Raises
    ------
    SeatworkError
        If a size is none.

    Examples
    --------
    >>> ring_left(head_diameter=10, inner_diameter=6.8)
    1.6
    """
    checks.length(head_diameter, "head diameter")
    checks.length(inner_diameter, "inside of the ring")
    return (head_diameter - inner_diameter) / 2


def corner_room(
    *, bore_diameter: float, head_diameter: float, hole_diameter: float, screw_diameter: float
) -> tuple[float, float]:
    """Find the greatest corner radius at the floor that the head does not ride on.

    Parameters
    ----------
    bore_diameter : float
        Least counterbore [mm].
    head_diameter : float
        Greatest head [mm].
    hole_diameter : float
        Diameter of the hole [mm].
    screw_diameter : float
        Diameter of the screw [mm].

    Returns
    -------
    tuple of float
        Radius for a screw in the middle, and for one that lies against its hole [mm].

    Raises
    ------
    SeatworkError
        If a size is none.

    Examples
    --------
    >>> corner_room(bore_diameter=11, head_diameter=10, hole_diameter=6.6, screw_diameter=6)
    (0.5, 0.2)
    """
    for size, name in ((bore_diameter, "counterbore"), (head_diameter, "head diameter")):
        checks.length(size, name)
    middle = (bore_diameter - head_diameter) / 2
    return middle, middle - max(hole_diameter - screw_diameter, 0.0) / 2
