"""``seatwork check``: the referee."""

from pathlib import Path
from typing import Annotated

import typer


def check(
    notebooks: Annotated[
        list[Path], typer.Argument(help="Your copies of sheets, such as cones.ipynb.")
    ],
) -> None:
    """Let the referee run your own copy of a sheet; nothing of yours is changed.

    Example: seatwork check exercises/cones.ipynb
    """
    from seatwork.worksheet.checking import check as referee

    outcomes = referee(notebooks)
    for notebook, outcome in zip(notebooks, outcomes, strict=True):
        verdict = "the referee passes it." if outcome.passed else "not yet."
        typer.echo(f"{notebook}: {verdict}")
        for line in outcome.lines:
            typer.echo(f"  {line}")
    raise typer.Exit(not all(outcome.passed for outcome in outcomes))
