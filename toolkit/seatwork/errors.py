"""The one error that people see: what was read, what is wrong, what would do."""

from collections.abc import Callable

LONGEST = 300
"""Letters of a value that a sentence shows."""


class Length(float):
    """A length [mm] inside an error, so that it can be shown in the reader's units."""

    def __str__(self) -> str:
        return f"{float(f'{float(self):.4g}'):g} mm"


class Angle(float):
    """An angle [deg] inside an error."""

    def __str__(self) -> str:
        return f"{float(self):.4g}°"


class SeatworkError(ValueError):
    """A fault a person can mend, told in one plain sentence.

    Parameters
    ----------
    value : object
        What was read: the text as typed, or a ``Length`` or ``Angle``.
    fault : str
        What is wrong with it; ``{name}`` stands for one of `sizes`.
    remedy : str
        What would do instead; may name `sizes` too.
    **sizes : object
        Further values the sentence needs, lengths as ``Length`` [mm].

    Examples
    --------
    >>> str(SeatworkError(Length(6), "the seat is not wider than its hole, {hole}",
    ...                   "make the seat wider or the hole smaller", hole=Length(6.6)))
    '6 mm: the seat is not wider than its hole, 6.6 mm; make the seat wider or the hole smaller.'

    Notes
    -----
    ``seatwork.units.explain`` tells the same sentence in the reader's unit system.
    """

    def __init__(self, value: object, fault: str, remedy: str, **sizes: object) -> None:
        super().__init__(value, fault, remedy)
        self.value = value
        self.fault = fault
        self.remedy = remedy
        self.sizes = sizes

    def __str__(self) -> str:
        return self.sentence(str)

    def _render_traceback_(self) -> list[str]:
        """Show one sentence in a notebook in place of a traceback (an IPython hook)."""
        return [str(self)]

    def sentence(self, show: Callable[[object], str]) -> str:
        """Tell the fault with every value written by `show`."""
        sizes = {name: plainly(size, show) for name, size in self.sizes.items()}
        fault = self.fault.format(**sizes) if sizes else self.fault
        remedy = self.remedy.format(**sizes) if sizes else self.remedy
        return f"{plainly(self.value, show)}: {fault}; {remedy}."


def plainly(value: object, show: Callable[[object], str] = str) -> str:
    r"""Write a value so that a sentence can hold it: one line, printable, not endless.

    Parameters
    ----------
    value : object
        Anything at all, also what cannot be written.
    show : callable
        Writes the value.

    Examples
    --------
    >>> plainly("two\nlines"), plainly("x" * 1000)[-40:]
    ('two lines', 'xxxxxxxxxxxxxxx ... (1,000 letters long)')
    """
    try:
        text = show(value)
    except Exception:
        return f"a value of the kind {type(value).__name__}"
    text = "".join(letter if letter.isprintable() else " " for letter in text)
    return text if len(text) <= LONGEST else f"{text[:LONGEST]} ... ({len(text):,} letters long)"
