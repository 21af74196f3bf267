"""Slips: wrong formulas learners use, and what each gives."""

from collections.abc import Callable
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
    frame : str
        Sentence with room for words of the question, where it has such words.
    words : tuple of (str, str)
        Those words, by their names in the frame.
    """

    code: str
    value: Decimal | str
    sentence: str
    twin_of: str | None = None
    frame: str = ""
    words: tuple[tuple[str, str], ...] = ()

    def told(self, translate: Callable[[str], str] = str) -> str:
        """Return the sentence in the reader's language.

        Parameters
        ----------
        translate : callable
            Says a text in that language.
        """
        if not self.frame:
            return translate(self.sentence)
        return translate(self.frame).format(**{name: translate(word) for name, word in self.words})


def framed(code: str, value: Decimal, frame: str, **words: str) -> Slip:
    """Return a slip whose sentence is a frame with words of the question in it.

    Examples
    --------
    >>> framed("M57", Decimal("0.5"), "You wrote back {size}.", size="the feed").sentence
    'You wrote back the feed.'
    """
    sentence = frame.format(**words)
    return Slip(code=code, value=value, sentence=sentence, frame=frame, words=tuple(words.items()))


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
    'Your calculator is in radians. Switch it to degrees: the tangent of 45 must be 1.'
    """
    return Mistake(code, value, sentence or SLIPS[code], twin_of)
