"""A plan's lines in a learner's words: the shop's rule by what it does, never by its name."""

import re
from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction

from seatwork.plan import Operation, show_power, show_torque
from seatwork.rows import Row, Rows
from seatwork.units import show_length, show_number, show_speed, show_spindle

NAMED = re.compile(r"(?:the )?(?:shop's |house )?rule \w+\.\w+", re.IGNORECASE)
BARE = re.compile(r" \(\w+\.\w+_\w+\)")
LEAST = 16
"""Parts of a whole that a ratio is told in, at most."""


def plainly(rows: Iterable[Row]) -> Rows:
    """Return rows in which a rule is the shop's, whatever its setting is called.

    Examples
    --------
    >>> plainly([Row(label="web", text="Within house rule countersink.sheet_share.")])
    web: Within the shop's rule.
    """
    return Rows(replace(row, text=_words(row.text)) for row in rows)


def _words(text: str) -> str:
    return BARE.sub("", NAMED.sub("the shop's rule", text))


def step_plainly(step: Operation, rows: Iterable[Row], system: str) -> Rows:
    """Return what is said of a step, its speed and its load each as a sum that can be followed."""
    own = {"spindle speed": _speed(step, system), "torque": _load(step, system)}
    return plainly(replace(row, text=own.get(row.label) or row.text) for row in rows)


def _speed(step: Operation, system: str) -> str:
    """Say the step to set, and the sum that leads there."""
    spindle = step.spindle
    if spindle is None or spindle.step.spindle_speed is None:
        return ""
    asked = f"the sum says {show_number(spindle.raw, 0)}"
    if spindle.step.limited_by:
        asked += f"; the shop's cap is {show_number(spindle.step.allowed, 0)}"
    part = f", times {_part(spindle.ratio)} for a {step.name}" if spindle.rule else ""
    at = show_length(spindle.diameter, system)
    return (
        f"Set {show_spindle(spindle.step.spindle_speed)} ({asked}). "
        f"{show_speed(spindle.surface_speed, system)} at {at}{part}: {show_spindle(spindle.raw)}."
    )


def _part(ratio: float) -> str:
    """Write a ratio as a plain fraction where it is one.

    Examples
    --------
    >>> _part(0.5), _part(2 / 3), _part(0.77)
    ('1/2', '2/3', '0.77')
    """
    near = Fraction(ratio).limit_denominator(LEAST)
    return str(near) if abs(float(near) - ratio) < 1e-9 else show_number(ratio, 3)


def _load(step: Operation, system: str) -> str:
    """Say what the cut may need of the machine, and how safe that sum is."""
    load = step.load
    if load is None:
        return ""
    times = show_number(load.size_factor * load.wear_factor, 1)
    power = f" Power: {show_power(step.power, system)}." if step.power is not None else ""
    carry = "It may stall: take a lighter cut or a stronger machine." if load.may_stall else ""
    if load.over_plate and not load.may_stall:
        carry = "The motor pulls that for a short while: if it slows, ease the feed."
    has = f"The machine has {show_torque(load.available, system)}."
    return " ".join(
        filter(
            None,
            (
                f"The cut may need {show_torque(load.torque, system)}. {has}",
                f"{carry}{power}".strip(),
                f"This is {times} times the plain sum, to be safe with thin chips and a worn lip.",
            ),
        )
    )
