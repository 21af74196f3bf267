"""The speeds a machine has, and which of them to set.

Notes
-----
A gear multiplies each open speed by its ratio. The step under the wanted speed is taken: common
practice, no source.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import inf

from seatwork import checks
from seatwork.errors import SeatworkError

# Bring the wanted speed down no step for a rounding of the last digit.
_SAME = 1 + 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class SpeedRange:
    """Spindle speeds of a machine that is set without steps.

    Parameters
    ----------
    slowest : float
        Slowest spindle speed [rev/min].
    fastest : float
        Fastest spindle speed [rev/min].

    Raises
    ------
    SeatworkError
        If the range is empty or not above zero.
    """

    slowest: float
    fastest: float

    def __post_init__(self) -> None:
        checks.quantity(self.slowest, "slowest spindle speed", "rev/min")
        if not self.slowest <= self.fastest < inf:
            raise SeatworkError(
                f"{self.slowest:g} to {self.fastest:g} rev/min",
                "the range ends below where it starts",
                "write the slowest speed first",
            )


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """The spindle speed to set, and why it is that one.

    Parameters
    ----------
    spindle_speed : float or None
        Speed to set [rev/min]; None where the machine has none slow enough.
    wanted : float
        Speed the sum asked for [rev/min].
    allowed : float
        Speed left after the caps [rev/min].
    limited_by : str or None
        Name of the cap that brought the speed down; None if none did.
    next_up : float or None
        The step above, one too fast [rev/min]; None if there is none.
    over : float
        Share by which the speed to set is over the wanted one, where that is let pass [-].
    """

    spindle_speed: float | None
    wanted: float
    allowed: float
    limited_by: str | None
    next_up: float | None
    over: float = 0.0

    def __repr__(self) -> str:
        return f"<Step {self.advice.partition('.')[0]}>"

    @property
    def too_fast(self) -> bool:
        """Whether the machine turns too fast even at its slowest."""
        return self.spindle_speed is None

    @property
    def advice(self) -> str:
        """One sentence that says what was set, or what to do instead."""
        if self.spindle_speed is None:
            return (
                f"The slowest speed, {self.next_up:.0f} rev/min, is above {self.allowed:.0f}: "
                "use a machine with back gear; a small countersink can be turned by hand in a bit "
                "brace; do not guess."
            )
        held = f", held by the {self.limited_by}" if self.limited_by else ""
        over = f"; the step is {100 * self.over:.1f} % over" if self.over else ""
        return f"Set {self.spindle_speed:.0f} rev/min (wanted {self.wanted:.0f}{held}{over})."


def pick_step(
    *,
    spindle_speed: float,
    steps: Sequence[float] | SpeedRange,
    caps: Mapping[str, float] | None = None,
    nearest: bool = False,
    may_be_over: float = 0.0,
) -> Step:
    """Take the next step down, or the nearest one; never above a cap.

    Parameters
    ----------
    spindle_speed : float
        Speed wanted [rev/min].
    steps : sequence of float or SpeedRange
        The machine's speeds, in any order [rev/min].
    caps : mapping of str to float, optional
        Greatest speeds that hold, each under the name a reader will see [rev/min].
    nearest : bool
        Take the step above where it is nearer and no cap forbids it.
    may_be_over : float
        Share by which a step may be over the wanted speed where no cap forbids it [-], from 0.

    Returns
    -------
    Step
        The speed to set; its `spindle_speed` is None where every step is too fast.

    Raises
    ------
    SeatworkError
        If a speed is not above zero, or the machine has no steps.

    Examples
    --------
    >>> pick_step(spindle_speed=500.0, steps=(410.0, 550.0, 250.0)).spindle_speed
    410.0
    >>> pick_step(spindle_speed=500.0, steps=(250.0, 410.0), caps={"countersink cap": 300.0}).advice
    'Set 250 rev/min (wanted 500, held by the countersink cap).'

    >>> pick_step(spindle_speed=500.0, steps=(410.0, 550.0), nearest=True).spindle_speed
    550.0

    >>> pick_step(spindle_speed=499.0, steps=(410.0, 500.0), may_be_over=0.02).advice
    'Set 500 rev/min (wanted 499; the step is 0.2 % over).'

    References
    ----------
    Next step down is the project's house rule; common practice, no source.
    """
    checks.quantity(spindle_speed, "spindle speed", "rev/min")
    if not checks.between(may_be_over, 0, 1):
        raise SeatworkError(may_be_over, "that is no share a step may be over by", "take 0 to 0.05")
    allowed, limited_by = _allowed(spindle_speed, caps or {})
    slower, faster = _around(allowed, steps)
    highest = min((allowed * (1 + may_be_over), *(caps or {}).values()))
    close = faster is not None and faster <= highest * _SAME
    if close and faster is not None:
        slower, faster = faster, _around(faster, steps)[1]
    elif nearest and slower is not None and faster is not None:
        forbidden = faster > min((caps or {}).values(), default=inf)
        if not forbidden and faster - allowed < allowed - slower:
            slower, faster = faster, _around(faster, steps)[1]
    return Step(
        spindle_speed=slower,
        wanted=spindle_speed,
        allowed=allowed,
        limited_by=limited_by,
        next_up=faster,
        over=slower / allowed - 1 if close and slower is not None else 0.0,
    )


def _allowed(wanted: float, caps: Mapping[str, float]) -> tuple[float, str | None]:
    for name, cap in caps.items():
        checks.quantity(cap, name, "rev/min")
    lower = [(cap, name) for name, cap in caps.items() if cap < wanted]
    return min(lower) if lower else (wanted, None)


def _around(
    allowed: float, steps: Sequence[float] | SpeedRange
) -> tuple[float | None, float | None]:
    if isinstance(steps, SpeedRange):
        if allowed < steps.slowest:
            return None, steps.slowest
        return min(allowed, steps.fastest), None
    if not len(steps):
        raise SeatworkError("no steps", "the machine has no spindle speed", "list its speeds")
    for speed in steps:
        checks.quantity(speed, "spindle speed", "rev/min")
    slower = [speed for speed in steps if speed <= allowed * _SAME]
    faster = [speed for speed in steps if speed > allowed * _SAME]
    return max(slower, default=None), min(faster, default=None)


def pulley_steps(
    *,
    motor_speed: float,
    motor_pulleys: Sequence[float],
    spindle_pulleys: Sequence[float],
) -> tuple[float, ...]:
    """Spindle speeds of a belt drive, one for each pair of pulleys.

    Parameters
    ----------
    motor_speed : float
        Speed of the motor under load, from its plate [rev/min].
    motor_pulleys, spindle_pulleys : sequence of float
        Pitch diameters, paired in order, each pair one belt position [mm].

    Returns
    -------
    tuple of float
        Spindle speeds, slowest first [rev/min].

    Raises
    ------
    SeatworkError
        If a pulley has no partner or a size is not above zero.

    Notes
    -----
    Belt slip is left out; a flat or vee belt loses some 1 to 3 % (from memory).

    Examples
    --------
    >>> pulley_steps(motor_speed=1725.0, motor_pulleys=(50.0, 75.0), spindle_pulleys=(150.0, 100.0))
    (575.0, 1293.75)

    References
    ----------
    Equal belt speed on both pulleys.
    """
    if len(motor_pulleys) != len(spindle_pulleys) or not len(motor_pulleys):
        raise SeatworkError(
            f"{len(motor_pulleys)} and {len(spindle_pulleys)} pulleys",
            "a belt position needs a pulley on each shaft",
            "list as many motor pulleys as spindle pulleys",
        )
    checks.quantity(motor_speed, "motor speed", "rev/min")
    for diameter in (*motor_pulleys, *spindle_pulleys):
        checks.length(diameter, "pulley diameter")
    pairs = zip(motor_pulleys, spindle_pulleys, strict=True)
    return tuple(sorted(motor_speed * driver / driven for driver, driven in pairs))


def geared_steps(*, steps: Sequence[float], ratio: float) -> tuple[float, ...]:
    """All speeds of a machine that has its steps open and through a gear.

    Parameters
    ----------
    steps : sequence of float
        Speeds in open drive [rev/min].
    ratio : float
        Spindle turns with the gear in, per turn without; under 1 for back gear [-].

    Returns
    -------
    tuple of float
        Both sets of speeds together, slowest first [rev/min].

    Raises
    ------
    SeatworkError
        If a value is not above zero.

    Examples
    --------
    >>> geared_steps(steps=(660.0, 1115.0), ratio=0.125)
    (82.5, 139.375, 660.0, 1115.0)
    """
    checks.quantity(ratio, "gear ratio")
    for speed in steps:
        checks.quantity(speed, "spindle speed", "rev/min")
    return tuple(sorted({*steps, *(speed * ratio for speed in steps)}))
