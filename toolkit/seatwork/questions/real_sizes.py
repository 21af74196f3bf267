"""Sizes that questions are drawn from: screws and holes a shop really has."""

from dataclasses import dataclass
from random import Random

from seatwork.questions.draws import pick


@dataclass(frozen=True, slots=True, kw_only=True)
class FlatHead:
    """An inch flat head and the hole it goes through: sizes in mm."""

    name: str
    sharp_diameter: float
    hole_diameter: float


# Sharp diameters: ANSI B18.6.3-1972 (two-source); holes: normal drill of ASME B18.2.8.
INCH_FLAT_HEADS = tuple(
    FlatHead(name=name, sharp_diameter=sharp * 25.4, hole_diameter=hole * 25.4)
    for name, sharp, hole in (
        ("#8", 0.332, 0.196),
        ("#10", 0.385, 0.221),
        ("1/4", 0.507, 0.281),
        ("5/16", 0.635, 0.344),
        ("3/8", 0.762, 0.406),
        ("1/2", 0.875, 0.562),
    )
)
WRONG_STANDARD = {82.0: 90.0, 90.0: 82.0, 100.0: 90.0, 120.0: 100.0, 60.0: 82.0}


def flat_head(rng: Random) -> FlatHead:
    """Return an inch flat head."""
    return pick(rng, INCH_FLAT_HEADS)
