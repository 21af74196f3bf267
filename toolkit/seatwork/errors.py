"""The one error that people see: what was read, what is wrong, what would do."""

from collections.abc import Callable, Sequence

LONGEST = 300
"""Letters of a value that a sentence shows."""

LONGEST_WORDS = 1000
"""Letters of what is wrong, and of what would do; some name every choice."""


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
    options : sequence of str
        What would each do, where the sentence asks which is meant; a bench or a command offers
        them.
    **sizes : object
        Further values the sentence needs, lengths as ``Length`` [mm].

    Examples
    --------
    >>> from seatwork.quantities import Length
    >>> str(SeatworkError(Length(6), "the seat is not wider than its hole, {hole}",
    ...                   "make the seat wider or the hole smaller", hole=Length(6.6)))
    '6 mm: the seat is not wider than its hole, 6.6 mm; make the seat wider or the hole smaller.'

    Notes
    -----
    ``seatwork.units.explain`` tells the same sentence in the reader's unit system.
    """

    def __init__(
        self,
        value: object,
        fault: str,
        remedy: str,
        *,
        options: Sequence[str] = (),
        **sizes: object,
    ) -> None:
        super().__init__(value, fault, remedy)
        self.value = value
        self.fault = fault
        self.remedy = remedy
        self.options = tuple(options)
        self.sizes = sizes
        self.show: Callable[[object], str] = str

    def __str__(self) -> str:
        return self.sentence(self.show)

    def of(self, value: object) -> "SeatworkError":
        """Return the same fault told of another value, such as the text as it was typed."""
        return SeatworkError(value, self.fault, self.remedy, options=self.options, **self.sizes)

    def _render_traceback_(self) -> list[str]:
        """Show one sentence in a notebook in place of a traceback (an IPython hook)."""
        return [str(self)]

    def sentence(self, show: Callable[[object], str], say: Callable[[str], str] = str) -> str:
        """Tell the fault with every value written by `show`, its words in a language by `say`."""
        sizes = {name: plainly(size, show) for name, size in self.sizes.items()}
        fault = self.fault.format(**sizes) if sizes else self.fault
        remedy = self.remedy.format(**sizes) if sizes else self.remedy
        fault, remedy = (plainly(words, longest=LONGEST_WORDS) for words in (fault, remedy))
        return f"{plainly(self.value, show)}: {say(f'{fault}; {remedy}')}."


def plainly(value: object, show: Callable[[object], str] = str, *, longest: int = LONGEST) -> str:
    r"""Write a value so that a sentence can hold it: one line, printable, not endless.

    Parameters
    ----------
    value : object
        Anything at all, also what cannot be written.
    show : callable
        Writes the value.
    longest : int
        Letters shown.

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
    return text if len(text) <= longest else f"{text[:longest]} ... ({len(text):,} letters long)"


MOST_TOLD = 20


class Faults(SeatworkError):
    """Several faults of one file, each told on a line of its own.

    Parameters
    ----------
    name : str
        What they are found in.
    faults : sequence of SeatworkError
        At least two, in the order of the file.
    """

    def __init__(self, name: str, faults: Sequence[SeatworkError]) -> None:
        remedy = "mend them, then give the command again"
        super().__init__(name, f"there are {len(faults)} faults in it", remedy)
        self.faults = tuple(faults)

    def sentence(self, show: Callable[[object], str], say: Callable[[str], str] = str) -> str:
        """Tell the first faults, a line each, and how many more there are."""
        lines = [fault.sentence(show, say) for fault in self.faults[:MOST_TOLD]]
        more = len(self.faults) - len(lines)
        rest = [say(f"{more} more like these.")] if more else []
        return "\n".join([super().sentence(show, say), *lines, *rest])


def together(name: str, faults: Sequence[SeatworkError]) -> SeatworkError:
    """Return one error that tells all of `faults`; a single one stays as it is."""
    return faults[0] if len(faults) == 1 else Faults(name, faults)
