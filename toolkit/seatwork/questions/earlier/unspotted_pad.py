"""The order of work on a sloped pad as version 2 asked it: the piloted way had no spot."""

from dataclasses import dataclass
from typing import ClassVar

from seatwork.questions.shared.sloped_pad import (
    CLAMPED,
    NO_HOLE,
    NO_PILOT,
    PILOTED,
    RIGID,
    RIGID_PAIRS,
    RIGID_STEPS,
    SlopedPad,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class UnspottedPad(SlopedPad):
    """Asks for five steps with either tool."""

    version = 2
    steps: ClassVar = {
        PILOTED: (
            "clamp the casting over a support",
            "drill the hole",
            "deburr the hole and brush the chips out",
            "put the pilot in by hand, spindle stopped",
            "spotface until the flat is whole",
        ),
        RIGID: RIGID_STEPS,
    }
    pairs: ClassVar = {
        PILOTED: (
            (1, 3, "M48", NO_HOLE),
            (1, 4, "M48", NO_HOLE),
            (3, 4, "M51", NO_PILOT),
            CLAMPED,
        ),
        RIGID: RIGID_PAIRS,
    }
