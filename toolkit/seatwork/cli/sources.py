"""``seatwork sources``: where every number in the tables comes from."""

from typing import Annotated, Any

import typer

MARKS = {"two-source": "two sources", "one-source": "one source", "memory": "FROM MEMORY"}


def sources(
    from_memory: Annotated[
        bool, typer.Option("--from-memory", help="Only what is from memory.")
    ] = False,
) -> None:
    """List every table with its sources, and say what is from memory."""
    from seatwork import tables

    listed = tables.sources().to_dict("records")
    shown = [line for line in listed if line["confirmed"] == "memory" or not from_memory]
    told = ""
    for line in shown:
        name = line["table"].partition(":")[0]
        if name != told:
            told = name
            typer.echo(f"\n{_heading(line)}")
        typer.echo(_line(line))
    typer.echo(f"\n{_summary(listed)}")


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
