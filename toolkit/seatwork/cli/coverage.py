"""``seatwork coverage``: what the course teaches and asks, against the outline."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from seatwork.errors import SeatworkError
from seatwork.files import write, write_table

if TYPE_CHECKING:
    from seatwork.marking.outline import Covered


def report(
    word: Annotated[
        str, typer.Argument(help="Show codes that hold this word only.", show_default=False)
    ] = "",
    gaps: Annotated[bool, typer.Option("--gaps", help="Show only codes with a gap.")] = False,
    table: Annotated[
        Path | None, typer.Option("--csv", help="Write the whole report as a CSV file.")
    ] = None,
    listed: Annotated[
        Path | None,
        typer.Option("--list", help="Write what serves which code, to be changed by you."),
    ] = None,
    replace: Annotated[bool, typer.Option("--replace", help="Write over it.")] = False,
) -> None:
    """List each code of the outline with its lessons, question types and sheets, and the gaps.

    The codes stand in shop/outline.csv of the workbook; put your own outline there as it is.
    Which lesson or question type serves which code can be changed in shop/coverage.csv, of
    which --list shop/coverage.csv writes a first one; what you leave out of it stays as it is.

    Example: seatwork coverage --gaps
    """
    from seatwork.marking.outline import COLUMNS, coverage

    found = coverage()
    if table is not None:
        _refuse(table, replace)
        write(table, found.csv().encode("utf-8-sig"))
    if listed is not None:
        _refuse(listed, replace)
        write_table(listed, COLUMNS, found.served)
    if table or listed:
        typer.echo(f"Written: {', '.join(str(path) for path in (table, listed) if path)}")
        return
    for one in found.codes:
        if (one.gaps or not gaps) and word.casefold() in f"{one.code} {one.competency}".casefold():
            show(one)
    short = sum(bool(one.gaps) for one in found.codes)
    typer.echo(f"{len(found.codes)} codes, {short} with a gap.")
    for words, names in (
        ("serve no code of the outline", found.unlisted),
        ("are not there", found.missing),
        ("codes are served and not in the outline", found.unknown),
    ):
        if names:
            typer.echo(f"These {words}: {', '.join(names)}.")
    if found.unknown:
        typer.echo("Say which of your codes they serve: seatwork coverage --list shop/coverage.csv")


def show(one: "Covered") -> None:
    """Print one code: what serves it, and what is missing."""
    typer.secho(f"{one.code}  {one.competency}", bold=True)
    parts = (("lessons", one.lessons), ("questions", one.questions), ("sheets", one.sheets))
    for words, names in parts:
        typer.echo(f"    {words}: {', '.join(names) or 'none'}")
    if one.gaps:
        typer.echo(f"    gap: {', '.join(one.gaps)}")
    typer.echo("")


def _refuse(path: Path, replace: bool) -> None:
    if path.exists() and not replace:
        raise SeatworkError(
            str(path), "that file is there already", "name another, or add --replace"
        )
