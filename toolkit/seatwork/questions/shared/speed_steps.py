"""The steps to a spindle speed, as the shop works them."""

from collections.abc import Iterator
from math import pi

from seatwork.entries.measures import LENGTH, SPINDLE_SPEED
from seatwork.questions.type.working import WorkedStep

IN_ONE = {"inch": "12", "metric": "1000"}
"""Inches in a foot, millimeters in a meter: what brings speed and diameter to one unit."""


def drill_speed_steps(
    name: str, diameter: float, surface_speed: float, system: str, first: int = 0, part: int = -1
) -> Iterator[WorkedStep]:
    """Yield the two steps to the speed of a drill: the way round, then turns in a minute.

    Parameters
    ----------
    name : str
        The diameter as it stands in a sum, such as ``{diameter}``.
    diameter : float
        Largest cutting diameter [mm].
    surface_speed : float
        Surface speed [m/min].
    system : {"inch", "metric"}
        Unit system of the question.
    first : int
        Number of the first of these steps among those of the question.
    part : int
        Part of the question that they lead to.
    """
    round_ = pi * diameter
    yield WorkedStep("the way round in one turn", f"π × {name}", round_, LENGTH, part=part)
    sum_ = f"{IN_ONE[system]} × {{surface_speed}} ÷ {{{first}}}"
    how = "divide the surface speed by the way round, both in one unit"
    turns = 1000 * surface_speed / round_
    yield WorkedStep("the speed of a drill", sum_, turns, SPINDLE_SPEED, how, part=part)
