"""Tables as data frames, and the list of every source."""

from typing import TYPE_CHECKING

from seatwork.tables.reading import Cell, about, names, read_in, rows

if TYPE_CHECKING:
    import pandas


def load(name: str) -> "pandas.DataFrame":
    """Return a table as a data frame.

    Parameters
    ----------
    name : str
        A name that `names` lists.

    Returns
    -------
    pandas.DataFrame
        One row a size, columns as in `rows`; a blank number is NaN.

    Raises
    ------
    SeatworkError
        As `rows` does.

    Examples
    --------
    >>> load("metric_csk_iso_10642").shape
    (10, 11)
    """
    import pandas

    table = pandas.DataFrame(rows(name))
    numeric = [column for column, held in about(name).columns.items() if held.unit]
    return table.astype(dict.fromkeys(numeric, float))


def sources(*, full: bool = False) -> "pandas.DataFrame":
    """Return every source of every table, and how well it is confirmed.

    Parameters
    ----------
    full : bool
        Whether to tell where exactly each was read, in a column ``read_in``.

    Returns
    -------
    pandas.DataFrame
        Columns ``table, title, standard, edition, withdrawn, source, confirmed, rows``;
        `rows` counts the table's rows from that source. A column that is less well confirmed
        than its rows has a line of its own, its name after the table's.

    Examples
    --------
    >>> sources().columns[:2].tolist()
    ['table', 'title']
    """
    import pandas

    lines = [line for name in names() for line in _lines(name, full)]
    return pandas.DataFrame(lines)


def _lines(name: str, full: bool) -> list[dict[str, object]]:
    """List the distinct sources of one table, then its columns that are known less well."""
    table = about(name)
    entries = rows(name)
    head = {"title": table.title, "standard": table.standard, "edition": table.edition}
    head_of: dict[str, object] = {**head, "withdrawn": table.withdrawn}
    counted: dict[tuple[Cell, Cell, str], int] = {}
    for entry, place in zip(entries, read_in(name), strict=True):
        kind = (entry["source"], entry["confirmed"], place if full else "")
        counted[kind] = counted.get(kind, 0) + 1
    lines: list[dict[str, object]] = []
    for (source, grade, place), count in counted.items():
        where = {"read_in": place} if full else {}
        lines.append(
            {"table": name, **head_of, "source": source, "confirmed": grade, "rows": count, **where}
        )
    for column, held in table.columns.items():
        if held.confirmed:
            weak = {"source": held.meaning, "confirmed": held.confirmed, "rows": len(entries)}
            lines.append({"table": f"{name}: {column}", **head_of, **weak})
    return lines
