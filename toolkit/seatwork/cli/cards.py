"""``seatwork card`` and ``seatwork print``: cards for the machine, sheets for wall and bench."""

from datetime import date
from pathlib import Path
from typing import Annotated

import typer
from rich.progress import Progress

from seatwork import files, notes, units
from seatwork.cards import Pages, job_card, part_card
from seatwork.errors import SeatworkError
from seatwork.plan import make
from seatwork.plan.part_files import plan_part
from seatwork.shop.shop import Shop

Paper = Annotated[str, typer.Option(help="letter or a4; by house rule display.paper if not given.")]
Day = Annotated[str, typer.Option("--date", help="Day on the sheet; today if not given.")]
Replace = Annotated[bool, typer.Option("--replace", help="Write over a file that is there.")]
Out = Annotated[Path, typer.Argument(help="The PDF to write (or .svg, one file a page).")]


def card(
    note: Annotated[str, typer.Argument(help="A print note, or a CSV or text file of notes.")],
    out: Out,
    material: Annotated[str, typer.Option(help="As in the shop's materials.csv.")] = "",
    machine: Annotated[str, typer.Option(help="As in the shop's machines.csv.")] = "",
    screw: Annotated[str | None, typer.Option(help="The screw, if the note names none.")] = None,
    thickness: Annotated[str | None, typer.Option(help="Of the part, such as '1/4 in'.")] = None,
    edge: Annotated[str | None, typer.Option(help="Hole center to the nearest edge.")] = None,
    slope: Annotated[
        float | None, typer.Option(help="Slope of a raw pad in degrees; thickness at its low side.")
    ] = None,
    name: Annotated[str, typer.Option(help="Name of the feature or the job.")] = "",
    language: Annotated[
        str, typer.Option(help="Of cautions, headings and signature: en or es.")
    ] = "en",
    paper: Paper = "",
    day: Day = "",
    replace: Replace = False,
) -> None:
    """Print the card of a print note, or of a whole part.

    Example: seatwork card "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD" --material "6061 aluminum"
    --machine "bench drill press" hopper.pdf
    """
    free(out, replace)
    when = day or date.today().isoformat()
    path = Path(note) if len(note) < 250 and "\n" not in note else None
    if path is not None and path.suffix.casefold() in (".csv", ".txt"):
        if language != "en":
            raise SeatworkError(note, "a whole part is printed in English", "leave --language out")
        _part(path, material, machine, out, paper, when, replace)
        return
    plan = make(
        notes.read(note),
        screw=screw,
        material=stated(material, "--material", note),
        machine=stated(machine, "--machine", note),
        thickness=None if thickness is None else units.length(thickness),
        edge=None if edge is None else units.length(edge),
        slope=slope,
    )
    pages = job_card(plan, paper=paper, date=when, name=name, language=language)
    keep(pages, out, replace=replace)


def stated(text: str, option: str, what: str) -> str:
    """Return what was given with an option.

    Raises
    ------
    SeatworkError
        If nothing was given.
    """
    if not text:
        raise SeatworkError(what, f"that needs {option}", f"add {option} and what it is")
    return text


def _part(
    path: Path, material: str, machine: str, out: Path, paper: str, when: str, replace: bool
) -> None:
    part = plan_part(path, material=material, machine=machine, shop=Shop.at())
    with Progress(transient=True) as bar:
        task = bar.add_task("cards", total=len(part.plans))
        pages = part_card(
            part.name,
            part.plans,
            paper=paper,
            date=when,
            left_out=part.faults,
            progress=lambda done: bar.update(task, completed=done),
        )
        bar.update(task, description="writing")
        keep(pages, out, replace=replace)
    for fault in part.faults:
        typer.echo(fault, err=True)
    if part.faults:
        raise typer.Exit(1)


def _files(out: Path, count: int) -> list[Path]:
    """Name the files a sheet makes: one PDF, or an SVG for each page."""
    if out.suffix.casefold() == ".svg" and count > 1:
        return [out.with_name(f"{out.stem}-{n}{out.suffix}") for n in range(1, count + 1)]
    return [out]


def free(out: Path, replace: bool) -> None:
    """Refuse a name that is no PDF or SVG, and a file that is there."""
    if out.suffix.casefold() not in (".pdf", ".svg"):
        raise SeatworkError(out.name, "cards are PDF or SVG", "end the name with .pdf or .svg")
    if out.is_dir():
        raise SeatworkError(str(out), "that is a folder", "name a file in it")
    if out.exists() and not replace:
        raise SeatworkError(
            str(out), "that file is there already", "name another, or add --replace"
        )


def keep(pages: Pages, out: Path, *, replace: bool = False) -> None:
    """Write the pages, and say what was written and what was written over.

    Parameters
    ----------
    pages : Pages
        What to write.
    out : Path
        A PDF, or an SVG.
    replace : bool
        Whether a file that is there may be written over.

    Raises
    ------
    SeatworkError
        If a file is there and `replace` is not given, or nothing can be written there.
    """
    names = _files(out, len(pages.figures))
    for name in names:
        free(name, replace)
    there = [name for name in names if name.exists()]
    _write(pages, out, names)
    for name in there:
        typer.echo(f"Written over: {name}")
    for name in names:
        typer.echo(f"Written: {name}")


def _write(pages: Pages, out: Path, names: list[Path]) -> None:
    """Write each file whole, after all of them are drawn."""
    if out.suffix.casefold() == ".pdf":
        pages.save(out)
        return
    drawn = [pages.svg(number) for number in range(len(names))]
    for name, svg in zip(names, drawn, strict=True):
        files.write(name, svg)
