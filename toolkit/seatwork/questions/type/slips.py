"""Slips: wrong formulas learners use, and what each gives."""

from dataclasses import dataclass
from decimal import Decimal
from typing import NamedTuple

from seatwork.questions.type.slip_sentences import SLIPS


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
        What was done, then what the part shows.
    twin_of : str, optional
        Code of another slip that gives the same number always; a picture tells them apart.
    """

    code: str
    value: Decimal | str
    sentence: str
    twin_of: str | None = None


class Mistake(NamedTuple):
    """A slip before it is put in a unit.

    Parameters
    ----------
    code : str
        Code of the misconception.
    value : float or None
        What it gives in inside units [-]; None where no number comes of it.
    sentence : str
        What was done, then what the part shows.
    twin_of : str, optional
        Code of another slip that gives the same number always.
    """

    code: str
    value: float | None
    sentence: str
    twin_of: str | None = None


def slip(
    code: str, value: float | None, sentence: str | None = None, twin_of: str | None = None
) -> Mistake:
    """Return a slip, with the sentence of the catalogue unless it is said more closely.

    Examples
    --------
    >>> slip("M06", 19.05).sentence
    'a calculator in radian mode; angles here are degrees'
    """
    return Mistake(code, value, sentence or SLIPS[code], twin_of)
