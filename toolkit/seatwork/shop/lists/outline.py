"""The course outline: the codes of what a learner can do, an instructor's own as it is."""

from pathlib import Path

from seatwork.files import read_table
from seatwork.shop.lists.reading import list_source

FILE = "outline.csv"
LONGEST = 2000  # characters of a cell, in whatever column
COLUMNS = ("code", "competency")


def read_outline(folder: Path | None = None) -> dict[str, str]:
    """Return the codes of the outline, each with what a learner can do.

    Parameters
    ----------
    folder : Path, optional
        A workbook folder; looked for if not given. Its ``shop/outline.csv`` stands in for the
        package's. Other columns are passed over; a code told twice has both texts.

    Raises
    ------
    SeatworkError
        If the file cannot be read as a table, or a row has no code.

    Examples
    --------
    >>> read_outline()["M1"]
    'Work out a spindle speed and name the rule used'
    """
    source, file = list_source(FILE, folder)
    found: dict[str, str] = {}
    rows = read_table(
        source, columns=COLUMNS, needed=COLUMNS, name=file, longest=LONGEST, others=True
    )
    for row in rows:
        code, words = row.needed("code"), row.text("competency")
        found[code] = "; ".join(dict.fromkeys(filter(None, (found.get(code), words))))
    return found
