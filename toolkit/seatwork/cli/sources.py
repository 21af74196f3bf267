"""``seatwork sources``: where every number in the tables comes from."""

from typing import Annotated

import typer


def sources(
    from_memory: Annotated[
        bool, typer.Option("--from-memory", help="Only what is from memory.")
    ] = False,
    full: Annotated[
        bool, typer.Option("--full", help="Also where exactly each table was read.")
    ] = False,
) -> None:
    """List every table with its sources, and say what is from memory."""
    from seatwork.tables.printed import listing

    typer.echo(listing(from_memory=from_memory, full=full))
