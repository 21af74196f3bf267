"""``seatwork plan``: a print note, or a file of them, planned on the screen."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork import notes, units
from seatwork.plan.making import make
from seatwork.plan.part_files import plan_part
from seatwork.plan.plans import Plan
from seatwork.rows import Row
from seatwork.shop.shop import Shop


def plan(
    note: Annotated[str, typer.Argument(help="A print note, or a CSV or text file of notes.")],
    material: Annotated[str, typer.Option(help="As in the shop's materials.csv.")] = "",
    machine: Annotated[str, typer.Option(help="As in the shop's machines.csv.")] = "",
    screw: Annotated[str | None, typer.Option(help="The screw, if the note names none.")] = None,
    thickness: Annotated[str | None, typer.Option(help="Of the part, such as '1/4 in'.")] = None,
    edge: Annotated[str | None, typer.Option(help="Hole center to the nearest edge.")] = None,
    engagement: Annotated[
        str | None, typer.Option(help="Thread the screw engages beyond the part.")
    ] = None,
    slope: Annotated[
        float | None, typer.Option(help="Slope of a raw pad in degrees; thickness at its low side.")
    ] = None,
) -> None:
    """Turn a print note into everything to do.

    Example: seatwork plan "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD" --material "6061 aluminum"
    --machine "bench drill press" --thickness "1/4 in"
    """
    path = Path(note) if len(note) < 250 and "\n" not in note else None
    if path is not None and path.suffix.casefold() in (".csv", ".txt"):
        _part(path, material, machine)
        return
    made = make(
        notes.read(note),
        screw=screw,
        material=material,
        machine=machine,
        thickness=_length(thickness),
        edge=_length(edge),
        engagement=_length(engagement),
        slope=slope,
    )
    show(made)


def _length(text: str | None) -> float | None:
    return None if text is None else units.length(text)


def _part(path: Path, material: str, machine: str) -> None:
    part = plan_part(path, material=material, machine=machine, shop=Shop.at())
    for name, made in part.plans.items():
        typer.secho(f"{part.name}, {name}", bold=True)
        show(made)
    for fault in part.faults:
        typer.echo(fault, err=True)
    if part.faults:
        raise typer.Exit(1)


def show(made: Plan) -> None:
    """Print a plan: seat by seat, then what was assumed, sources and cautions."""
    system = made.callout.system
    for row in made.setup_rows():
        typer.echo(f"{row.label}: {row.text}")
    for seat in made.seats:
        typer.secho(f"{seat.count} x {seat.title}", bold=True)
        typer.echo(f"  {made.material}, {made.machine}")
        _rows("Sizes", seat.size_rows(system))
        for number, rows in enumerate(seat.operation_rows(system), 1):
            first, *others = rows
            typer.echo(f"  {number}. {first.label}: {first.text}")
            for row in others:
                typer.echo(f"     {row.label}: {row.text}")
        _rows("Stop", seat.stop_rows(system))
        _rows("Gage readings", seat.reading_rows(system))
        _rows("Looked at", seat.check_rows())
        if seat.outlook:
            typer.echo(f"  Chatter: {seat.outlook}")
        for sentence in seat.advice:
            typer.echo(f"  {sentence}")
    for row in made.closing_rows():
        typer.echo(f"{row.label}: {row.text}")


def _rows(heading: str, rows: tuple[Row, ...]) -> None:
    if rows:
        typer.echo(f"  {heading}")
    for row in rows:
        source = f"  [{row.source}]" if row.source and row.source != "print note" else ""
        typer.echo(f"    {row.label}: {row.text}{source}")
