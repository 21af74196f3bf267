"""Write a callout as a print note, and give it out only if it reads back the same."""

from seatwork.errors import SeatworkError
from seatwork.notes.callout import Callout
from seatwork.notes.composing import STYLES
from seatwork.notes.composition import compose
from seatwork.notes.reading import read


def write(callout: Callout, style: str = "symbols") -> str:
    """Write a callout as a print note.

    Parameters
    ----------
    callout : Callout
        What the note shall say.
    style : {"symbols", "words", "iso"}
        Symbols in ASME order, words as on older prints, or the simplified form of ISO 15786,
        which carries plain holes, countersinks, counterbores and tapped holes only.

    Returns
    -------
    str
        One line for each hole, or several in ISO form; it reads back as the same callout.

    Raises
    ------
    SeatworkError
        If the style cannot carry the callout.

    Examples
    --------
    >>> from seatwork.notes import read
    >>> callout = read("4X ⌀.201 THRU ⌵ ⌀.385 X 82°")
    >>> print(write(callout, style="words"))
    HOLE .201 DIA THRU, CSK .385 DIA X 82°, 4 PLACES
    >>> print(write(callout, style="iso"))
    .385 × 82°
    4× ⌀.201 THRU
    """
    if style not in STYLES:
        raise SeatworkError(style, "that is no style of note", f"write {' or '.join(STYLES)}")
    holds = (f"SIZES {callout.sizes_hold.upper()}",) if callout.sizes_hold else ()
    stated = (*callout.said_not_used, *holds)
    for show_units in (False, True):
        text = compose(callout.groups(), style, show_units=show_units, stated=stated)
        if _reads_back(text, callout):
            return text
    raise SeatworkError(
        text, f"the style {style!r} cannot carry all of this note", "write it in another style"
    )


def _reads_back(text: str, callout: Callout) -> bool:
    try:
        return read(text) == callout
    except SeatworkError:
        return False
