"""Pictures on paper: in gray, as a black and white printer lays them down."""

import io

import numpy as np
from matplotlib.image import imread
from numpy.typing import NDArray

LUMA = np.array([0.299, 0.587, 0.114])
"""How light red, green and blue come out on a black and white printer (ITU-R BT.601) [-]."""

PAPER_WHITE, RIM = 0.98, 4
"""Gray of an empty row [-], and rows kept beside the last that is not."""


def in_gray(png: bytes) -> NDArray[np.float64]:
    """Return a picture as a black and white printer lays it down, 0 black to 1 white [-]."""
    return np.asarray(imread(io.BytesIO(png), format="png")[..., :3] @ LUMA)


def trimmed(pixels: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return gray pixels without the empty rows above and below what they show."""
    rows = np.flatnonzero((pixels < PAPER_WHITE).any(axis=1))
    return pixels[max(rows[0] - RIM, 0) : rows[-1] + 1 + RIM] if len(rows) else pixels
