"""Flushness of many screws at once: tolerance terms, arrays of heads, drawn boxes.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
With equal angles the height of a head is S = (Dh - D)/(2 T), so as a stack it has two terms,
the head's diameter with slope 1/(2 T) and the seat's with -1/(2 T). With angles that differ
the contact moves from hole edge to rim and S is no straight line any more; then draw the box
and look (``simulate_heads``), or take the corners (``box_of_screws``).
"""

from dataclasses import dataclass
from typing import TYPE_CHECKING

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.touching_off import Limits

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import ArrayLike, NDArray

BLOCK = 16_384
"""Heads worked on at once: their arrays then stay in the processor's own memory."""


def amounts(
    *,
    sharp_diameter: "ArrayLike",
    head_angle: "ArrayLike",
    seat_diameter: "ArrayLike",
    hole_diameter: "ArrayLike",
    seat_angle: "ArrayLike",
    edge_diameter: "ArrayLike | None" = None,
) -> "NDArray[np.float64]":
    """Find how high many heads stand above the face.

    Parameters
    ----------
    sharp_diameter : array_like
        Theoretical sharp diameters [mm]; all arguments are broadcast together.
    head_angle : array_like
        Whole angles of the heads [deg].
    seat_diameter : array_like
        Diameters of the seats at the face [mm].
    hole_diameter : array_like
        Diameters of the holes [mm].
    seat_angle : array_like
        Whole angles of the seats [deg].
    edge_diameter : array_like, optional
        Edges of the heads [mm]; None for theoretical sharp ones.

    Returns
    -------
    numpy.ndarray
        Heights of the flat tops, broadcast shape [mm]; minus below the face. The same rule
        as ``heads.fit``, so 0 and the other sizes agree to the last digit but one.

    Raises
    ------
    SeatworkError
        If in any place the head is not wider than the hole, or the seat is not, or an angle
        makes no cone.

    Examples
    --------
    >>> amounts(sharp_diameter=[12, 13], head_angle=90, seat_diameter=12,
    ...         hole_diameter=6.6, seat_angle=90).tolist()
    [0.0, 0.5]
    """
    import numpy as np

    edges = sharp_diameter if edge_diameter is None else edge_diameter
    sharp, edge, seat, hole = (
        np.asarray(size, dtype=float)
        for size in (sharp_diameter, edges, seat_diameter, hole_diameter)
    )
    _refuse_heads_that_cannot_sit(sharp, edge, seat, hole)
    head_slope, seat_slope = 0.5 / _tangents(head_angle), 0.5 / _tangents(seat_angle)
    outer = np.minimum(edge, seat)
    base = sharp * head_slope - seat * seat_slope
    lean = seat_slope - head_slope
    return np.asarray(base + np.maximum(hole * lean, outer * lean))


def _tangents(angles: "ArrayLike") -> "NDArray[np.float64]":
    import numpy as np

    values = np.asarray(angles, dtype=float)
    if values.size == 0:
        raise SeatworkError("", "there is no head to seat", "give at least one head")
    for end in (float(values.min()), float(values.max())):
        checks.included_angle(end)
    return np.asarray(np.tan(np.radians(values / 2)))


def _refuse_heads_that_cannot_sit(
    sharp: "NDArray[np.float64]",
    edge: "NDArray[np.float64]",
    seat: "NDArray[np.float64]",
    hole: "NDArray[np.float64]",
) -> None:
    import numpy as np

    if min(sharp.size, edge.size, seat.size, hole.size) == 0:
        raise SeatworkError("", "there is no head to seat", "give at least one head")
    sits = (hole > 0) & (hole < np.minimum(edge, seat)) & (edge <= sharp)
    if not (np.all(sits) and np.all(np.maximum(sharp, seat) <= checks.LARGEST)):
        raise SeatworkError(
            Length(float(hole.max())),
            "at least one head or seat is not wider than its hole, or has no size at all",
            "leave out the heads that drop through, or take a smaller hole",
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class Box:
    """A size of screw and the seats cut for it, by limits.

    Parameters
    ----------
    sharp_diameter : Limits
        Limits of the theoretical sharp diameter [mm].
    head_angle : tuple of float
        Least and greatest angle of the heads [deg].
    seat_diameter : Limits
        Limits of the seats at the face [mm].
    hole_diameter : Limits
        Limits of the holes [mm].
    seat_angle : tuple of float
        Least and greatest angle of the seats [deg].
    """

    sharp_diameter: Limits
    head_angle: tuple[float, float]
    seat_diameter: Limits
    hole_diameter: Limits
    seat_angle: tuple[float, float]


def simulate_heads(
    box: Box, rng: "np.random.Generator", *, count: int = 100_000
) -> "NDArray[np.float64]":
    """Draw screws and seats from their limits and set each screw in a seat.

    Parameters
    ----------
    box : Box
        The limits; every size is drawn evenly between them.
    rng : numpy.random.Generator
        Where the draws come from.
    count : int
        How many screws, 1 to 10,000,000.

    Returns
    -------
    numpy.ndarray
        Shape (count,): height of each head above its face [mm].

    Raises
    ------
    SeatworkError
        If some heads of the box would drop through, or the count is out of range.

    Examples
    --------
    >>> import numpy as np
    >>> box = Box(sharp_diameter=Limits(least=12.05, greatest=12.9), head_angle=(80, 82),
    ...           seat_diameter=Limits(least=12.85, greatest=13.0),
    ...           hole_diameter=Limits(least=6.75, greatest=6.85), seat_angle=(81.5, 82.5))
    >>> drawn = simulate_heads(box, np.random.default_rng(1), count=1000)
    >>> bool(-0.56 < drawn.min() < drawn.max() < 0.25)
    True
    """
    checks.count(count, "number of screws")
    import numpy as np

    found = np.empty(count)
    for start in range(0, count, BLOCK):
        part = found[start : start + BLOCK]
        part[:] = _drawn_heads(box, rng, len(part))
    return found


def _drawn_heads(box: Box, rng: "np.random.Generator", count: int) -> "NDArray[np.float64]":
    def drawn(limits: Limits) -> "NDArray[np.float64]":
        return rng.uniform(limits.least, limits.greatest, count)

    return amounts(
        sharp_diameter=drawn(box.sharp_diameter),
        head_angle=rng.uniform(*box.head_angle, count),
        seat_diameter=drawn(box.seat_diameter),
        hole_diameter=drawn(box.hole_diameter),
        seat_angle=rng.uniform(*box.seat_angle, count),
    )
