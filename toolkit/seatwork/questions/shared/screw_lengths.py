"""Lengths of the screws in a box, and the longest that stays off the end of a blind thread."""

from math import floor

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.type.working import WorkedStep

STEP = INCH / 8
"""Between one length in the box and the next [mm]."""

THREADS = {"#10": 24, "1/4": 20, "5/16": 18, "3/8": 16, "7/16": 14, "1/2": 13, "5/8": 11}
"""Coarse threads in an inch, by size."""

SURE = 0.03
"""Part of a step that the longest screw keeps from a length in the box [-]."""

UP = "You took the next length up. It bottoms, and its head clamps nothing."
NOT_THERE = "You gave a length that is not in the box. Take the next one down."


LONGEST = "the length that ends one pitch off the end"


def pitch_step(threads: int, system: str) -> WorkedStep:
    """Return the step that finds one pitch, from the threads in an inch."""
    inch = "1 in" if system == "inch" else "25.4 mm"
    return WorkedStep("one pitch", f"{inch} ÷ {threads}", INCH / threads, LENGTH)


def box_step(before: int, value: float) -> WorkedStep:
    """Return the last step: the next length down in the box, from that of step `before`."""
    label, sum_ = "the longest screw in the box", f"next length down from {{{before}}}"
    return WorkedStep(label, sum_, value, LENGTH, "take the next length down in the box")


def listed(most: float) -> float:
    """Return the longest length of the box that is no longer than `most` [mm]."""
    return floor(most / STEP) * STEP


def is_sure(most: float) -> bool:
    """Whether no rounding moves the longest length [mm] to another one in the box."""
    return SURE < most / STEP % 1 < 1 - SURE


def in_system(text: str, system: str) -> str:
    """Return what is asked with the step of the box in the unit of `system`."""
    return text if system == "inch" else text.replace("1/8 in", f"{STEP:.3f} mm")
