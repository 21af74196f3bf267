"""``seatwork rules``: the house rules in force, with their sources and what others do."""

from typing import Annotated

import typer


def rules(
    word: Annotated[
        str, typer.Argument(help="Show rules that hold this word only.", show_default=False)
    ] = "",
) -> None:
    """List the house rules in force here: value, source, and what others do instead."""
    from seatwork import shop

    rows = [row for row in shop.rules().table() if word.lower() in " ".join(row.values()).lower()]
    if not rows:
        typer.echo(f"No house rule holds the word {word!r}.")
        raise typer.Exit(1)
    for row in rows:
        report(row)
    typer.echo(shop.rules().origin)


def report(row: dict[str, str]) -> None:
    """Print one rule: its value first, then what it settles and where it comes from."""
    typer.secho(f"{row['rule']} = {row['value']}", bold=True)
    lines = [row["about"], f"source: {row['source']}"]
    if row["confirmed"] == "memory" and "no source" not in row["source"]:
        lines.append("from memory: check your copy")
    if row["alternatives"]:
        lines.append(f"others: {row['alternatives']}")
    if row["changed"]:
        lines.append(f"changed in: {row['changed']}")
    typer.echo("".join(f"    {line}\n" for line in lines))
