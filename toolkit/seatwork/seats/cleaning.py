"""Spotfaces on castings: how deep to go until the rough pad is clean all round.

Lengths are millimeters, angles degrees, heights positive above the face at the hole's axis.

Notes
-----
The cutter's flat comes down square to the hole. At depth t below the first touch it has
cleaned every place of the ring between hole and cutter that lies within t of the highest, so
the cleaned share is the share of heights above (highest - t), and the ring is whole at
t = highest - lowest. On a plane tilted by phi that is D tan(phi), all across the cutter, not
half of it; on a round face it is the sagitta of the cutter's radius.

A pad is a shape known as a formula (planes, a round) plus scale, which is a grid of heights.
The cleaned share is counted on the grid. Highest and lowest are also looked for on the two
circles that bound the ring, in the directions where planes and rounds have their ends, with
the formula taken exactly and the grid in between by straight lines; so a plane or a round
without scale gives its closed form to the last digit.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from math import atan2, degrees
from typing import TYPE_CHECKING, Literal

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Length
from seatwork.seats.castings import GRID, Casting
from seatwork.seats.spotfaces import Spotface
from seatwork.seats.surfaces import Round, Surface, Tilted

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

AROUND = 720
"""Directions in which the edges of the ring are looked at, besides the special ones."""

Place = Literal["low side", "axis", "high side"]


@dataclass(frozen=True, kw_only=True, eq=False)
class CleanUp:
    """How a spotface cleans up a pad.

    Parameters
    ----------
    heights : numpy.ndarray
        Shape (n,): heights of the ring's grid points [mm].
    highest : float
        Height of the first touch [mm].
    lowest : float
        Height of the cut when the ring is whole [mm].

    Notes
    -----
    Without slots, since the sorted depths are kept once they were asked for.
    """

    heights: "NDArray[np.floating]"
    highest: float
    lowest: float

    def __repr__(self) -> str:
        return f"<CleanUp whole {self.full_depth:.3f} mm below the first touch>"

    @property
    def full_depth(self) -> float:
        """Depth below the first touch at which the ring is whole [mm]."""
        return self.highest - self.lowest

    @cached_property
    def depths(self) -> "NDArray[np.floating]":
        """Depths below first touch at which one point after the other is cleaned [mm]."""
        import numpy as np

        return np.sort(self.highest - self.heights)

    def share(self, depth: "float | NDArray[np.floating]") -> "NDArray[np.floating]":
        """Give the cleaned share of the ring against depth.

        Parameters
        ----------
        depth : float or numpy.ndarray
            Depth below the first touch [mm].

        Returns
        -------
        numpy.ndarray
            Share from 0 to 1, shape of `depth`.

        Raises
        ------
        SeatworkError
            If a depth is no number.
        """
        import numpy as np

        if np.any(np.isnan(depth)):
            raise SeatworkError("depth", "it holds places that are no number", "leave them out")
        return np.asarray(np.searchsorted(self.depths, depth, side="right") / len(self.depths))

    def flange_left(self, thickness: float, *, at: Place, allowance: float = 0.0) -> float:
        """Give the thickness left under the finished spotface.

        Parameters
        ----------
        thickness : float
            Thickness of the flange before [mm], back face square to the hole.
        at : str
            Where it was measured: "low side", "axis" or "high side" of the ring.
        allowance : float
            Cut further below the lowest place, to be under scale and sand [mm].

        Returns
        -------
        float
            Thickness left, the same all round [mm].

        Raises
        ------
        SeatworkError
            If nothing is left.

        Examples
        --------
        Pad 1-1/4, draft 3°, .500 at the low side, scale 1/32: .469 left.

        >>> found = clean_up(Spotface(diameter=31.75, hole_diameter=13.5), Tilted(tilt=3))
        >>> found.flange_left(12.7, at="low side", allowance=0.79375) / 25.4
        0.469
        """
        checks.length(thickness, "thickness of the flange")
        left = thickness - self._cut_below(at, allowance)
        if not left > 0:
            raise SeatworkError(
                Length(thickness),
                "the spotface cuts through a flange as thin as that",
                "a flange of more than {cut} is needed there",
                cut=Length(self._cut_below(at, allowance)),
            )
        return left

    def _cut_below(self, at: Place, allowance: float) -> float:
        checks.length_or_zero(allowance, "scale allowance")
        places = {"low side": self.lowest, "axis": 0.0, "high side": self.highest}
        if at not in places:
            raise SeatworkError(
                at,
                "the thickness is measured at one of three places",
                'say "low side", "axis" or "high side"',
            )
        return places[at] - self.lowest + allowance


def clean_up(spotface: Spotface, face: "Casting | Surface") -> CleanUp:
    """Find how a spotface cleans up a pad, from first touch to the whole ring.

    Parameters
    ----------
    spotface : Spotface
        Cutter and hole.
    face : Casting, or Flat, Tilted or Round
        The pad.

    Returns
    -------
    CleanUp
        First touch, full depth, cleaned share against depth, flange left.

    Raises
    ------
    SeatworkError
        If the cutter reaches over the edge of the pad.

    Examples
    --------
    >>> found = clean_up(Spotface(diameter=31.75, hole_diameter=13.5), Tilted(tilt=3))
    >>> found.full_depth / 25.4
    0.0655
    """
    casting = face if isinstance(face, Casting) else _smooth(face, spotface)
    if not spotface.diameter <= casting.size * (1 + 1e-12):
        raise SeatworkError(
            Length(spotface.diameter),
            "the cutter reaches over the edge of the pad, {pad}",
            "take a smaller spotface or a larger pad",
            pad=Length(casting.size),
        )
    edges = _edge_heights(casting, spotface)
    heights = _ring_heights(casting, spotface)
    highest = float(max(edges.max(), heights.max(initial=edges.max())))
    lowest = float(min(edges.min(), heights.min(initial=edges.min())))
    if not highest - lowest >= 0:
        raise SeatworkError(
            Length(spotface.diameter),
            "the cutter reaches beyond a round face",
            "take a smaller spotface",
        )
    return CleanUp(heights=heights if heights.size else edges, highest=highest, lowest=lowest)


def _smooth(face: Surface, spotface: Spotface) -> Casting:
    import numpy as np

    return Casting(
        scale=np.zeros((GRID, GRID)), spacing=spotface.diameter / (GRID - 1), shapes=(face,)
    )


def _ring_heights(casting: Casting, spotface: Spotface) -> "NDArray[np.floating]":
    """Heights at the grid points between hole and cutter, shape (n,) [mm]."""
    import numpy as np

    count = len(casting.scale)
    axis = (np.arange(count) - (count - 1) / 2) * casting.spacing
    square = axis * axis
    distance = square[:, None] + square
    inside = (distance >= spotface.hole_diameter**2 / 4) & (distance <= spotface.diameter**2 / 4)
    total = np.array(casting.scale, dtype=float)
    for shape in casting.shapes:
        total += shape.height(axis, axis[:, None])
    return total[inside]


def _edge_heights(casting: Casting, spotface: Spotface) -> "NDArray[np.floating]":
    """Heights along the two circles that bound the ring, shape (2 n,) [mm]."""
    import numpy as np

    angle = np.radians(np.append(np.linspace(0, 360, AROUND, False), _ends(casting.shapes)))
    radius = np.array([[spotface.hole_diameter / 2], [spotface.diameter / 2]])
    return casting.height(radius * np.cos(angle), radius * np.sin(angle)).ravel()


def _ends(shapes: Iterable[Surface]) -> list[float]:
    """Directions where planes together, and each round, are highest and lowest [deg]."""
    import numpy as np

    planes = [shape for shape in shapes if isinstance(shape, Tilted)]
    toward = np.radians([plane.direction for plane in planes])
    slope = np.array([plane.slope for plane in planes])
    fall = degrees(atan2(float(slope @ np.sin(toward)), float(slope @ np.cos(toward))))
    rounds = [shape.direction for shape in shapes if isinstance(shape, Round)]
    return [fall, fall + 180] + [start + turn for start in rounds for turn in (0, 90, 180, 270)]
