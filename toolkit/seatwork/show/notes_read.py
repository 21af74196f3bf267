"""Sentences about print notes: what one says, and what it leaves to ask."""

from seatwork import notes
from seatwork.show.said import Said, quoted, said

STYLES = {"symbols": "in signs", "words": "in words", "iso": "ISO form"}


def read(note: str) -> Said:
    """Say a print note in words, and what it leaves to ask.

    Parameters
    ----------
    note : str
        The note as it stands on the print.

    Returns
    -------
    Said
        The note in words; a line for each thing to ask.

    Raises
    ------
    SeatworkError
        If the note cannot be read: which mark, and what would do.

    Examples
    --------
    >>> print(read("4X ⌀.201 THRU ⌵ ⌀.385 X 82°"))
    in words: HOLE .201 DIA THRU, CSK .385 DIA X 82°, 4 PLACES
    """
    callout = notes.read(note)
    asked = [("ask", one.sentence) for one in callout.warnings]
    return said(
        ("in words", notes.write(callout, style="words")),
        *asked,
        code=(
            f"callout = sw.read({quoted(note)})",
            'print(sw.write(callout, style="words"))',
            "print(*(one.sentence for one in callout.warnings))",
        ),
    )


def three_ways(note: str) -> Said:
    """Say a print note three ways: in signs, in words, in the short form of ISO.

    Parameters
    ----------
    note : str
        The note as it stands on the print.

    Returns
    -------
    Said
        The note in each form.

    Raises
    ------
    SeatworkError
        If the note cannot be read, or cannot be written in one of them.

    Examples
    --------
    >>> print(three_ways("⌀6.6 THRU ⌴ ⌀11 ↧ 6.4"))
    in signs: ⌀6.6 THRU ⌴ ⌀11 ↧6.4
    in words: HOLE 6.6 DIA THRU, C'BORE 11 DIA X 6.4 DP
    ISO form: 11 × 6.4 / ⌀6.6 THRU
    """
    callout = notes.read(note)
    told = {style: notes.write(callout, style=style) for style in STYLES}
    return said(
        *((STYLES[style], " / ".join(text.splitlines())) for style, text in told.items()),
        code=(
            f"callout = sw.read({quoted(note)})",
            *(f'print(sw.write(callout, style="{style}"))' for style in STYLES),
        ),
    )
