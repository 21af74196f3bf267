"""The order of drilling and spotfacing on a sloped pad."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import ClassVar

from seatwork.questions.earlier.unspotted_pad import UnspottedPad
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
from seatwork.questions.type.question import Question

NO_SPOT = "You started the drill on the slope. It slides down; look what could start it."


@dataclass(frozen=True, slots=True, kw_only=True)
class FirstCut(SlopedPad):
    """Asks for the order of work on a sloped pad; a drill on a slope is spotted first."""

    version = 3
    earlier: ClassVar[Mapping[int, type[Question]]] = {1: UnspottedPad, 2: UnspottedPad}
    steps: ClassVar = {
        PILOTED: (
            "clamp the casting over a support",
            "spot the sloped pad with a stiff spot drill",
            "drill the hole",
            "deburr the hole and brush the chips out",
            "put the pilot in by hand, spindle stopped",
            "spotface until the flat is clean",
        ),
        RIGID: RIGID_STEPS,
    }
    pairs: ClassVar = {
        PILOTED: (
            (1, 2, "M48", NO_SPOT),
            (2, 4, "M48", NO_HOLE),
            (2, 5, "M48", NO_HOLE),
            (4, 5, "M51", NO_PILOT),
            CLAMPED,
        ),
        RIGID: RIGID_PAIRS,
    }
