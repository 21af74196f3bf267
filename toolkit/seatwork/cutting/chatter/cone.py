"""What chatter leaves on the cone.

Notes
-----
The surface is the motion of the first lip, laid out along its way and seen along the normal of
the cone: geometry, with nothing rubbed off or smeared.
"""

from dataclasses import dataclass
from math import pi, sin

import numpy as np

from seatwork import checks
from seatwork.cutting.chatter.loop import Floats
from seatwork.cutting.chatter.marks import marks_per_turn
from seatwork.cutting.chatter.parts import NOTE
from seatwork.cutting.chatter.tracing import Trace
from seatwork.errors import SeatworkError


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class ConeSurface:
    """Waves round the cone.

    Parameters
    ----------
    angle : ndarray
        Place round the cone [deg], 0 to 360.
    height : ndarray
        Height of the surface along its normal, around zero, above zero out of
        the work [mm].
    marks : float
        Marks per turn [-]; NaN where the surface is smooth.
    note : str
        What the surface is not.
    """

    angle: Floats
    height: Floats
    marks: float
    note: str = NOTE

    def __repr__(self) -> str:
        return f"<ConeSurface {self.marks:.3g} marks round the cone; illustration>"

    @property
    def swing(self) -> float:
        """Peak to valley [mm]."""
        return float(np.ptp(self.height))


def surface_left(trace: Trace) -> ConeSurface:
    """Surface that the first lip leaves in the last turn of a trace.

    Parameters
    ----------
    trace : Trace
        A trace of at least one turn.

    Returns
    -------
    ConeSurface
        Heights round one turn, and the number of marks in it.

    Raises
    ------
    SeatworkError
        If the trace is shorter than a turn.

    Notes
    -----
    Missed places keep what was there. Marks are counted by where the waves
    cross their mean, to a broken number. Illustration, not a prediction.
    """
    turn = 60 / trace.spindle_speed
    if not trace.time[-1] >= turn:
        raise SeatworkError(
            f"{trace.time[-1]:.3g} s",
            f"the trace is shorter than one turn, {turn:.3g} s",
            "follow the cut for longer",
        )
    last = trace.time > trace.time[-1] - turn
    time, left = trace.time[last] - trace.time[last][0], trace.left[last]
    height = -sin(trace.cutter.half_angle) * (left - left.mean())
    return ConeSurface(angle=360 * time / turn, height=height, marks=_waves(time / turn, height))


def ring(
    *, frequency: float, spindle_speed: float, height: float, points: int = 720
) -> ConeSurface:
    """Wave that sideways chatter of a steady frequency leaves in one turn.

    Parameters
    ----------
    frequency : float
        Chatter frequency, below zero for backward whirl [Hz].
    spindle_speed : float
        Spindle speed [rev/min].
    height : float
        Peak to valley along the normal of the cone [mm].
    points : int
        Number of places round the cone [-].

    Returns
    -------
    ConeSurface
        Heights round one turn; the ends do not meet where the marks are a broken number.

    Raises
    ------
    SeatworkError
        If the spindle speed is not above zero or the height is below zero.

    Examples
    --------
    >>> ring(frequency=-27.0, spindle_speed=300.0, height=0.04).marks
    6.4
    """
    checks.frequency(frequency)
    checks.count(points, "number of points")
    checks.not_below(height, 0, "height of the marks", "mm")
    marks = marks_per_turn(frequency=frequency, spindle_speed=spindle_speed, direction="lateral")
    angle = np.linspace(0, 360, points)
    wave = height / 2 * np.cos(marks * angle * pi / 180)
    return ConeSurface(angle=angle, height=wave, marks=marks)


def _waves(turn: Floats, height: Floats) -> float:
    """Waves in one turn, from the first and the last upward crossing of the mean."""
    if np.ptp(height) < 1e-9:
        return float("nan")
    rising = np.flatnonzero((height[:-1] < 0) & (height[1:] >= 0))
    if len(rising) < 2:
        return float("nan")
    span = height[rising + 1] - height[rising]
    at = turn[rising] - height[rising] * (turn[rising + 1] - turn[rising]) / span
    return float((len(at) - 1) / (at[-1] - at[0]))
