"""Hexagons: from flat to flat, and from corner to corner."""

from math import cos, radians

from seatwork.errors import SeatworkError
from seatwork.quantities import Length


def across_corners(across_flats: float) -> float:
    """Return the width across the corners of a sharp hexagon.

    Parameters
    ----------
    across_flats : float
        Width across flats, the wrench size [mm].

    Returns
    -------
    float
        Width across corners [mm]; real corners are rounded and a little less.

    Raises
    ------
    SeatworkError
        If the width is not above zero.

    Examples
    --------
    >>> across_corners(19.05)
    21.997
    """
    if not 0 < across_flats < float("inf"):
        raise SeatworkError(
            Length(across_flats), "that is no width across flats", "give one above zero"
        )
    return across_flats / cos(radians(30))
