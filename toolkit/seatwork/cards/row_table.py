"""Rows of a plan or an inspection as a notebook shows them: a table, its text the rows."""

from collections.abc import Iterable
from typing import Any

from seatwork.rows import Row, plain


class Told:
    """Rows to look at; begin with ``told``.

    Parameters
    ----------
    rows : iterable of Row
        What is told, line by line.
    """

    def __init__(self, rows: Iterable[Row]) -> None:
        self.rows = tuple(rows)

    def __repr__(self) -> str:
        return "\n".join(str(row) for row in self.rows)

    def markdown(self) -> str:
        """Return the rows as a table without a heading."""
        lines = [f"| **{plain(row.label)}** | {plain(row.text)} |" for row in self.rows]
        return "\n".join(["| | |", "|:--|:--|", *lines])

    def _repr_mimebundle_(self, include: Any = None, exclude: Any = None) -> dict[str, str]:
        return {"text/plain": repr(self), "text/markdown": self.markdown()}


def told(*rows: Row) -> Told:
    """Show rows of a plan or an inspection as a table.

    Parameters
    ----------
    *rows : Row
        As ``seatwork.plan.rows`` and ``seatwork.inspection.rows`` give them.

    Returns
    -------
    Told
        The last line of a cell shows it; printed, it is one line a row.

    Examples
    --------
    >>> told(Row(label="hole", text="#7 drill"), Row(label="included angle", text="82°"))
    hole: #7 drill
    included angle: 82°
    """
    return Told(rows)
