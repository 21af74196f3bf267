"""Rough pads of castings, as height fields.

Lengths are millimeters, angles degrees, heights positive above the face at the hole's axis.

Notes
-----
A pad is a shape known as a formula (planes, a round) plus scale, which is a grid of heights.
Between its points the grid is taken straight, the formula exactly.
"""

from dataclasses import dataclass
from math import ceil
from typing import TYPE_CHECKING

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.seats.surfaces import Surface

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

GRID = 400
"""Grid points along each side of a pad that is given as a formula alone."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Casting:
    """A rough pad round a hole, as a height field.

    Parameters
    ----------
    scale : numpy.ndarray
        Shape (n, n): height of the skin above the shapes [mm]; rows along y, columns along x,
        the hole's axis in the middle. A measured height field goes here, with no shapes.
    spacing : float
        Distance between grid points [mm].
    shapes : tuple of Flat, Tilted or Round
        Shapes whose heights are added: draft, tilt, boss radius.

    Raises
    ------
    SeatworkError
        If the grid is not square, is smaller than 2 by 2 or holds anything but numbers.
    """

    scale: "NDArray[np.floating]"
    spacing: float
    shapes: tuple[Surface, ...] = ()

    def __post_init__(self) -> None:
        import numpy as np

        checks.length(self.spacing, "grid spacing")
        shape = np.shape(self.scale)
        if not (len(shape) == 2 and shape[0] == shape[1] >= 2):
            raise SeatworkError(
                "x".join(map(str, shape)),
                "a height field is a square grid of heights",
                "give as many rows as columns, two or more",
            )
        if not np.all(np.isfinite(self.scale)):
            raise SeatworkError(
                "height field",
                "it holds places that are no number",
                "fill the gaps of the measurement first",
            )

    @property
    def size(self) -> float:
        """Length of a side of the pad [mm]."""
        return (len(self.scale) - 1) * self.spacing

    def height(
        self, x: "NDArray[np.floating]", y: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        """Height at points of the pad [mm], the grid taken straight between its points.

        Parameters
        ----------
        x : numpy.ndarray
            Distances from the hole's axis along the rows [mm].
        y : numpy.ndarray
            Distances along the columns [mm], same shape.

        Returns
        -------
        numpy.ndarray
            Heights, same shape [mm].
        """
        found = self._scale_between(x, y)
        for shape in self.shapes:
            found = found + shape.height(x, y)
        return found

    def _scale_between(
        self, x: "NDArray[np.floating]", y: "NDArray[np.floating]"
    ) -> "NDArray[np.floating]":
        import numpy as np

        last = len(self.scale) - 2
        column, row = (axis / self.spacing + (last + 1) / 2 for axis in (x, y))
        left = np.clip(np.floor(column).astype(int), 0, last)
        low = np.clip(np.floor(row).astype(int), 0, last)
        across, up = column - left, row - low
        at = self.scale
        lower = at[low, left] * (1 - across) + at[low, left + 1] * across
        upper = at[low + 1, left] * (1 - across) + at[low + 1, left + 1] * across
        return np.asarray(lower * (1 - up) + upper * up)


def rough_pad(
    rng: "np.random.Generator",
    *,
    size: float,
    roughness: float,
    correlation_length: float,
    shapes: tuple[Surface, ...] = (),
    points: int = GRID,
) -> Casting:
    """Make a rough pad with scale of a given height and grain.

    Parameters
    ----------
    rng : numpy.random.Generator
        Where the scale comes from.
    size : float
        Side of the square pad [mm].
    roughness : float
        Standard deviation of the scale's height [mm].
    correlation_length : float
        Distance over which heights are alike [mm]: their correlation falls to 1/e there.
    shapes : tuple of Flat, Tilted or Round
        Draft, tilt and boss radius, added up.
    points : int
        Grid points along each side, 2 to 2000.

    Returns
    -------
    Casting
        The pad.

    Raises
    ------
    SeatworkError
        If a size is out of range.

    Notes
    -----
    White noise smoothed by a bell curve, done as a product of Fourier transforms on a grid
    larger than the pad, so that opposite edges know nothing of each other. The correlation
    is exp(-(distance/length)²).

    Examples
    --------
    >>> import numpy as np
    >>> pad = rough_pad(np.random.default_rng(1), size=40, roughness=0.2, correlation_length=2)
    >>> float(pad.scale.std())
    0.2
    """
    import numpy as np

    checks.length(size, "size of the pad")
    checks.length_or_zero(roughness, "roughness")
    checks.length(correlation_length, "correlation length")
    checks.smaller(correlation_length, "correlation length", size, "size of the pad")
    if not (isinstance(points, int) and 2 <= points <= 2000):
        raise SeatworkError(points, "a grid has 2 to 2000 points a side", "400 is plenty")
    spacing = size / (points - 1)
    whole = points + ceil(3 * correlation_length / spacing)
    noise = np.fft.rfft2(rng.standard_normal((whole, whole)))
    across, up = np.fft.rfftfreq(whole, spacing), np.fft.fftfreq(whole, spacing)
    reach = (np.pi * correlation_length) ** 2 / 2
    filters = np.exp(-reach * up[:, None] ** 2), np.exp(-reach * across**2)
    field = np.fft.irfft2(noise * filters[0] * filters[1], (whole, whole))
    field *= roughness / _gain(whole, spacing, reach)
    return Casting(scale=field[:points, :points].copy(), spacing=spacing, shapes=shapes)


def _gain(count: int, spacing: float, reach: float) -> float:
    """Give the standard deviation of unit white noise after the smoothing [-]."""
    import numpy as np

    return float(np.exp(-2 * reach * np.fft.fftfreq(count, spacing) ** 2).mean())
