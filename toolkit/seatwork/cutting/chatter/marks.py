"""Marks round the cone, and the frequency they tell.

Notes
-----
Waves in one turn of the spindle: frequency over turns a second. The turning tool sees a sideways
wave one turn slower: one mark fewer forward, one more backward.
"""

from math import inf

from seatwork import checks
from seatwork.cutting.chatter.parts import Direction
from seatwork.errors import SeatworkError


def marks_per_turn(*, frequency: float, spindle_speed: float, direction: Direction) -> float:
    """Chatter marks round the cone, in one turn.

    Parameters
    ----------
    frequency : float
        Chatter frequency [Hz], below zero for backward whirl.
    spindle_speed : float
        Spindle speed [rev/min].
    direction : {"axial", "lateral"}
        How the machine gives.

    Returns
    -------
    float
        Marks per turn [-]; a broken number is a pattern that creeps round.

    Raises
    ------
    SeatworkError
        If the spindle speed is not above zero or the direction is unknown.

    Examples
    --------
    >>> marks_per_turn(frequency=-359.27, spindle_speed=1000.0, direction="lateral")
    22.56

    References
    ----------
    Kinematics: a sideways wave is seen from the turning tool one turn slower (check N1).
    """
    turns = _turns_per_second(spindle_speed)
    _known(direction, frequency)
    ratio = frequency / turns
    return abs(ratio) if direction == "axial" else abs(ratio - 1)


def frequency_from_marks(
    *, marks: float, spindle_speed: float, direction: Direction
) -> tuple[float, ...]:
    """Frequencies [Hz] that leave a number of marks: count them and know what you heard.

    Parameters
    ----------
    marks : float
        Marks counted round the cone [-].
    spindle_speed : float
        Spindle speed [rev/min].
    direction : {"axial", "lateral"}
        How the machine gives.

    Returns
    -------
    tuple of float
        One frequency axially; backward, then forward whirl laterally [Hz].

    Raises
    ------
    SeatworkError
        If a value is not above zero or the direction is unknown.

    Examples
    --------
    >>> frequency_from_marks(marks=17.0, spindle_speed=1000.0, direction="axial")
    (283.3,)
    """
    turns = _turns_per_second(spindle_speed)
    checks.quantity(marks, "number of marks")
    _known(direction, 0.0)
    if direction == "axial":
        return (marks * turns,)
    return ((1 - marks) * turns, (1 + marks) * turns)


def _turns_per_second(spindle_speed: float) -> float:
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    return spindle_speed / 60


def _known(direction: str, frequency: float) -> None:
    if direction not in ("axial", "lateral"):
        raise SeatworkError(
            direction, "a machine gives axially or laterally", "write axial or lateral"
        )
    if not -inf < frequency < inf:
        raise SeatworkError(f"{frequency:g} Hz", "the frequency is no number", "give a frequency")
