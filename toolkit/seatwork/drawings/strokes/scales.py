"""Scales and scale bars of drawings to scale, on the page and on the card alike."""

from seatwork.quantities import INCH

SCALES = (20.0, 10.0, 5.0, 2.0, 1.0, 0.5, 0.2, 0.1)
"""Scales of ISO 5455, and 20:1; largest first."""

BARS = {
    "metric": (0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0),
    "inch": tuple(INCH * part for part in (0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.0)),
}
"""Lengths of a scale bar, by system [mm]."""
