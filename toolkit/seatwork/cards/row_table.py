"""The former name of rows to look at; it answers for one version."""

import warnings

from seatwork.rows import Row, Rows


def told(*rows: Row) -> Rows:
    """Show rows as a table; `seatwork.plan.Rows` is its name now.

    Parameters
    ----------
    *rows : Row
        What is shown.
    """
    message = "cards.told is called plan.Rows now; the old name goes with the next version"
    warnings.warn(message, DeprecationWarning, stacklevel=2)
    return Rows(rows)
