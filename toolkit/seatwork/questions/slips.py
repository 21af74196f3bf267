"""Slips: wrong formulas learners use, and what each gives."""

from dataclasses import dataclass
from decimal import Decimal


@dataclass(frozen=True, slots=True, kw_only=True)
class Slip:
    """A wrong answer that a known slip leads to.

    Parameters
    ----------
    code : str
        Code of the misconception, such as M01.
    value : Decimal or str
        What the slip gives: a number in the unit asked for, or the option chosen.
    sentence : str
        What was done, in the learner's words, then what the part shows.
    twin_of : str, optional
        Code of another slip that gives the same number always; a picture tells them apart.
    """

    code: str
    value: Decimal | str
    sentence: str
    twin_of: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Mistake:
    """A slip before it is put in a unit: `value` in inside units."""

    code: str
    value: float
    sentence: str
    twin_of: str | None = None
