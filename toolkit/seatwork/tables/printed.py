"""The sources of all tables as people read them, on the command line and in a notebook."""

from typing import Any

from seatwork.tables.showing import sources

MARKS = {"two-source": "two sources", "one-source": "one source", "memory": "FROM MEMORY"}


def listing(*, from_memory: bool = False, full: bool = False) -> str:
    """Write every table with its sources, and say what is from memory.

    Parameters
    ----------
    from_memory : bool
        Only what is from memory.
    full : bool
        Also where exactly each table was read.

    Returns
    -------
    str
        Some hundred lines; the last one sums them up.

    Examples
    --------
    >>> "FROM MEMORY" in listing(from_memory=True)
    True
    """
    listed = sources(full=full).to_dict("records")
    lines: list[str] = []
    last = ""
    for line in listed:
        if from_memory and line["confirmed"] != "memory":
            continue
        name = line["table"].partition(":")[0]
        if name != last:
            last = name
            lines += ["", _heading(line)]
        lines.append(_line(line))
        if isinstance(line.get("read_in"), str):
            lines.append(f"      read in: {line['read_in']}")
    return "\n".join([*lines, "", _summary(listed)])[1:]


def _heading(line: dict[str, Any]) -> str:
    withdrawn = ", WITHDRAWN" if line["withdrawn"] else ""
    return f"{line['title']} - {line['standard']}, {line['edition']}{withdrawn}"


def _line(line: dict[str, Any]) -> str:
    """Tell one source, or one column that is known less well than its rows."""
    column = line["table"].partition(": ")[2]
    what = f"column {column}: {line['source']}" if column else line["source"]
    count = f"{line['rows']} row{'' if line['rows'] == 1 else 's'}"
    return f"  [{MARKS[line['confirmed']]}, {count}] {what}"


def _summary(listed: list[dict[str, Any]]) -> str:
    rows = [line for line in listed if ": " not in line["table"]]
    total = sum(line["rows"] for line in rows)
    memory = sum(line["rows"] for line in rows if line["confirmed"] == "memory")
    tables_told = len({line["table"] for line in rows})
    return (
        f"{total} rows in {tables_told} tables; {memory} rows are from memory. "
        "Check those against your copy of the standard before you rely on them."
    )
