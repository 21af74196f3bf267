"""What is said: a label and a sentence with its numbers, and the long way to them."""

from collections.abc import Sequence
from dataclasses import dataclass

from seatwork.rows import Blocks, Row, Rows, Shown, plain


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Said(Shown):
    """One answer of the room.

    Parameters
    ----------
    rows : Rows
        What is said, a label and a sentence each, sizes in both unit systems.
    long_way : str
        Lines of Python that give the same numbers through the other rooms.

    Examples
    --------
    >>> from seatwork import show
    >>> print(show.stop_error(".005 in", angle=82))
    stop too deep by: 0.005 in (0.13 mm)
    diameter at the face: 0.009 in (0.22 mm) wider
    """

    rows: Rows
    long_way: str

    def code(self) -> str:
        """Return the long way: lines to run in a cell of their own."""
        return self.long_way

    def _line(self) -> str:
        return "; ".join(f"{row.label}: {row.words}" for row in self.rows)

    def _blocks(self) -> Blocks:
        yield "", self.rows

    def __str__(self) -> str:
        return repr(self.rows)

    def _repr_markdown_(self) -> str:
        return "  \n".join(f"**{plain(row.label)}**: {plain(row.words)}" for row in self.rows)


def said(*told: tuple[str, str], code: Sequence[str]) -> Said:
    """Make an answer of labels with their sentences, and of the lines that lead there."""
    rows = Rows(Row(label=label, text=text) for label, text in told)
    return Said(rows=rows, long_way="\n".join(["import seatwork as sw", "", *code]))


def typed(text: str) -> str:
    """Write the line of Python that reads a size as it was typed.

    Examples
    --------
    >>> typed(".375 in")
    'sw.units.length(".375 in")'
    """
    return f"sw.units.length({quoted(text)})"


def quoted(text: str) -> str:
    """Write a text as Python does, in double quotes where that can be."""
    mark = repr(text)
    return f'"{text}"' if mark == f"'{text}'" and '"' not in text else mark
