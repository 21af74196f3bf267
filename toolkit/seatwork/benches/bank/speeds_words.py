"""What the speeds bench says: the sum in its order, its heading and its text twin."""

from fractions import Fraction
from typing import TYPE_CHECKING

from seatwork import cutting
from seatwork.drawings.views.speeds_view import DIAMETERS, SpeedSum
from seatwork.units import show_both, show_number, show_speed, show_spindle

if TYPE_CHECKING:
    from seatwork.benches.bank.speeds_sums import Turning

LONGEST = 44
"""Letters that one line of the sum has room for."""


def ladder(result: "Turning", system: str) -> tuple[tuple[str, str], ...]:
    """Give the sum in its order: rule, constant, surface speed, diameter, raw speed, cap, step.

    Parameters
    ----------
    result : Turning
        What was worked out.
    system : {"inch", "metric"}
        Unit system named first.

    Returns
    -------
    tuple of (str, str)
        Seven pairs: a number by name, and where it comes from.
    """
    spindle = result.spindle
    ratio, drill = _ratio(result), show_number(result.drill, 0)
    speed = _speed(spindle.surface_speed, system)
    constant = "12/π = 3.820" if system == "inch" else "1000/π = 318.3"
    mean = spindle.rule == "speeds.countersink_ratio"
    where = "by the shop's rule" if mean else "the largest that cuts"
    rule = "the shop's rule" if spindle.rule else "the table is made for drills"
    return (
        (f"Rule: {ratio} of the drill's speed" if spindle.rule else "Rule: as a drill", rule),
        (f"Constant: {constant}", "exact, not a shortcut"),
        (f"Surface speed: {speed}", f"from {_short(spindle.source)}"),
        (f"Diameter: {show_both(spindle.diameter, system)}", where),
        (f"Raw speed: {show_spindle(spindle.raw)}", f"drill {drill}, times {ratio}"),
        _cap(result),
        _step(result),
    )


def speed_sum(result: "Turning", system: str) -> SpeedSum:
    """Give what the picture shows of a result."""
    spindle, speeds = result.spindle, result.machine.speeds
    steps = (speeds.slowest, speeds.fastest) if isinstance(speeds, cutting.SpeedRange) else speeds
    drill = result.drill * spindle.diameter / DIAMETERS
    misread = None if result.misread is None else drill * (result.misread / result.drill)
    rungs = ladder(result, system)
    heading, second = _heading(result)
    return SpeedSum(
        heading=heading,
        second=second,
        ladder=rungs,
        diameter=spindle.diameter,
        raw=spindle.raw,
        allowed=spindle.step.allowed,
        step=spindle.step.spindle_speed,
        cap=result.cap,
        steps=tuple(steps),
        drill=drill if spindle.rule else None,
        wanted=drill * spindle.ratio,
        misread=misread,
        text=_text(result, rungs, steps),
    )


def _text(result: "Turning", rungs: tuple[tuple[str, str], ...], steps: tuple[float, ...]) -> str:
    """Tell the whole sum, the machine's speeds and what to set."""
    lines = "; ".join(f"{what} ({why})" for what, why in rungs)
    speeds = " to ".join if len(steps) == 2 else ", ".join
    machine = f"The {result.machine.name} has {speeds(show_number(s, 0) for s in steps)} rev/min."
    misread = ""
    if result.misread is not None:
        misread = f" One third of the drill's speed would be {show_spindle(result.misread)}."
    return (
        f"Speed of a {result.operation} in {result.material}, step by step. {lines}. "
        f"{machine} {_advice(result)}{misread}"
    )


def _heading(result: "Turning") -> tuple[str, str]:
    """Say what it comes to."""
    step, machine = result.spindle.step, result.machine.name
    if step.spindle_speed is None:
        return (
            f"Too fast: the slowest of the {machine} is {show_number(step.next_up or 0.0, 0)}",
            f"Allowed {show_spindle(step.allowed)}: back gear or another machine; do not guess",
        )
    text = f"set {show_spindle(step.spindle_speed)} on the {machine}"
    if result.misread is not None and abs(result.spindle.ratio - 2 / 3) < 1e-3:
        raw, third = (show_number(speed, 0) for speed in (result.spindle.raw, result.misread))
        return (
            f"One third slower is {raw}. One third of it is {third}.",
            f"The drill turns {show_number(result.drill, 0)}; {text}",
        )
    held = f", held by the cap of {show_number(step.allowed, 0)}" if step.limited_by else ""
    down = "set without steps" if _stepless(result) else "a step of the machine"
    return text.capitalize(), f"Wanted {show_spindle(step.wanted)}{held}; {down}"


def _cap(result: "Turning") -> tuple[str, str]:
    if result.cap is None:
        return "Cap: none", f"no rule of the shop caps a {result.operation}"
    holds = "holds" if result.spindle.step.limited_by else "is not reached"
    return f"Cap: {show_spindle(result.cap)}, {holds}", "the shop's cap"


def _advice(result: "Turning") -> str:
    """Say the step to set, the rule that holds it by what it does and not by its name."""
    step = result.spindle.step
    return step.advice.replace(step.limited_by, "shop's cap") if step.limited_by else step.advice


def _step(result: "Turning") -> tuple[str, str]:
    step = result.spindle.step
    if step.spindle_speed is None:
        return "Step: none", f"the slowest, {show_number(step.next_up or 0.0, 0)}, is too fast"
    how = "set without steps on the" if _stepless(result) else "a step of the"
    return f"Step: {show_spindle(step.spindle_speed)}", f"{how} {result.machine.name}"


def _stepless(result: "Turning") -> bool:
    return isinstance(result.machine.speeds, cutting.SpeedRange)


def _ratio(result: "Turning") -> str:
    return str(Fraction(result.spindle.ratio).limit_denominator(100))


def _speed(speed: float, system: str) -> str:
    other = "metric" if system == "inch" else "inch"
    return f"{show_speed(speed, system)} ({show_speed(speed, other)})"


def _short(source: str) -> str:
    """Keep the first source named, as far as a line has room."""
    first = source.partition(";")[0]
    if len(first) <= LONGEST - 5:
        return first
    return first[: LONGEST - 5].rpartition(" ")[0].rstrip(",")
