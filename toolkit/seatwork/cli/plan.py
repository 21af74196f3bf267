"""``seatwork plan``: a print note, or a file of them, planned on the screen."""

from collections.abc import Iterable
from pathlib import Path
from shutil import get_terminal_size
from typing import Annotated

import typer

from seatwork import notes, units
from seatwork.cli.plan_page import CLOSING, Section, closing_sections, sections
from seatwork.plan.making import make
from seatwork.plan.part_files import Part, plan_part
from seatwork.plan.plans import Plan
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
    thread_below: Annotated[
        str | None, typer.Option(help="Full thread of a blind hole in the part below.")
    ] = None,
    why: Annotated[bool, typer.Option("--why", help="The sums, what holds, house rules.")] = False,
    sources: Annotated[bool, typer.Option("--sources", help="Every document and rule.")] = False,
) -> None:
    """Turn a print note into everything to do.

    Example: seatwork plan "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD" --material "6061 aluminum"
    --machine "bench drill press" --thickness "1/4 in"
    """
    path = Path(note) if len(note) < 250 and "\n" not in note else None
    if path is not None and path.suffix.casefold() in (".csv", ".txt"):
        _part(path, material, machine, why=why, sources=sources)
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
        thread_below=_length(thread_below),
    )
    show(made, why=why, sources=sources)


def _length(text: str | None) -> float | None:
    return None if text is None else units.length(text)


def _part(path: Path, material: str, machine: str, *, why: bool, sources: bool) -> None:
    part = plan_part(path, material=material, machine=machine, shop=Shop.at())
    show_part(part, why=why, sources=sources)
    for fault in part.faults:
        typer.echo(fault, err=True)
    if part.faults:
        raise typer.Exit(1)


def show(made: Plan, *, why: bool = False, sources: bool = False) -> None:
    """Print a plan as a page."""
    _print(sections(made, width=get_terminal_size().columns, why=why, sources=sources))


def show_part(part: Part, *, why: bool = False, sources: bool = False) -> None:
    """Print the plans of a part, feature by feature; the cautions of all stand once, last."""
    wide = get_terminal_size().columns
    for name, made in part.plans.items():
        typer.secho(f"{part.name}, {name}", bold=True)
        _print(sections(made, width=wide, why=why, sources=sources, left_out=CLOSING))
    _print(closing_sections(part.plans.values(), width=wide))


def _print(found: Iterable[Section]) -> None:
    """Print sections, their headings bold; what must be settled first is red too."""
    for one in found:
        for line in one.heading:
            typer.secho(line, bold=True, fg=typer.colors.RED if one.first else None)
        typer.echo("\n".join([*one.lines, ""]))
