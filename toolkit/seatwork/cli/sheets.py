"""``seatwork print``: sheets for the wall, the bench and the crib."""

from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Annotated

import typer

from seatwork import notes, units
from seatwork.cards import (
    Pages,
    charts,
    coupons,
    evening_cuts,
    evening_sheet,
    formulas,
    gages,
    glossary,
    profile,
    station,
)
from seatwork.cli.cards import Day, Paper, Replace, free, keep, stated
from seatwork.errors import SeatworkError
from seatwork.files import write, write_table
from seatwork.marking.evening_file import FILE
from seatwork.plan import Plan, make
from seatwork.plan.part_files import parts
from seatwork.shop.folder import package_text

PLAIN: dict[str, Callable[..., Pages]] = {
    "drills": charts.drills,
    "clearance-holes": charts.clearance_holes,
    "counterbores": charts.counterbores,
    "formulas": formulas.formula_page,
    "crib-checklist": station.crib_checklist,
    "glossary": glossary.glossary_page,
}
OF_A_PLAN: dict[str, Callable[..., Pages]] = {
    "gage-sheet": gages.gage_page,
    "demonstration": station.demonstration,
}
COLUMNS = ("feature", "note", "screw", "material", "machine", "thickness")
FIELDS = ("name", *COLUMNS[1:])
"""Columns of a list of cuts, and what each is called of a cut."""

OF_AN_EVENING: dict[str, Callable[..., Pages]] = {
    "evening": evening_sheet.evening_pages,
    "bench-sheet": evening_cuts.bench_sheets,
}
KINDS = (*PLAIN, *OF_AN_EVENING, "coupons", "station-sign", "seat-profile", *OF_A_PLAN)


def print_sheet(
    kind: Annotated[str, typer.Argument(help=", ".join(KINDS))],
    out: Annotated[Path, typer.Argument(help="The PDF to write (or .svg, one file a page).")],
    note: Annotated[str, typer.Option(help="Print note, for a sheet about one seat.")] = "",
    part: Annotated[
        list[Path] | None, typer.Option(help="A CSV of notes, for the gage sheets of a part.")
    ] = None,
    material: Annotated[str, typer.Option(help="As in the shop's materials.csv.")] = "",
    machine: Annotated[str, typer.Option(help="As in the shop's machines.csv.")] = "",
    screw: Annotated[str | None, typer.Option(help="The screw, if the note names none.")] = None,
    thickness: Annotated[str | None, typer.Option(help="Of the part, such as '1/4 in'.")] = None,
    evening: Annotated[
        int, typer.Option(help="Of the course; left out, evening prints all of them.")
    ] = 0,
    form: Annotated[str, typer.Option(help="eight evenings, or four.")] = "eight",
    listed: Annotated[
        Path | None,
        typer.Option("--list", help="Also write the cuts (CSV), or the list of evenings (TOML)."),
    ] = None,
    paper: Paper = "",
    language: Annotated[str, typer.Option(help="Of a station sign: en or es.")] = "en",
    day: Day = "",
    replace: Replace = False,
) -> None:
    """Print a wall chart, a checklist, a sheet about one seat, or one of an evening.

    Example: seatwork print formulas formulas.pdf
    """
    if language != "en" and kind != "station-sign":
        raise SeatworkError(kind, "it is printed in English alone", "leave --language out")
    free(out, replace)
    when = day or date.today().isoformat()
    if kind in OF_AN_EVENING:
        pages = OF_AN_EVENING[kind](evening, form=form, paper=paper, date=day or None)
        keep(pages, out, replace=replace)
        if listed is not None:
            _write_list(kind, listed, evening, form, replace)
        return
    if part:
        planned = parts(part, material=material or None, machine=machine or None)
        _of_parts(kind, planned, out, paper=paper, date=when, replace=replace)
        return
    if kind in PLAIN:
        pages = PLAIN[kind](paper=paper)
    elif kind == "coupons":
        pages = coupons.coupon_set(paper=paper, date=when)
    elif kind == "station-sign":
        its = stated(machine, "--machine", kind)
        pages = station.station_sign(its, paper=paper, language=language)
    elif kind == "seat-profile":
        pages = profile.seat_profile(
            _plan(kind, note, material, machine, screw, thickness), paper=paper
        )
    elif kind in OF_A_PLAN:
        plan = _plan(kind, note, material, machine, screw, thickness)
        pages = OF_A_PLAN[kind](plan, paper=paper, date=when)
    else:
        raise SeatworkError(kind, "no sheet has that name", f"say one of {', '.join(KINDS)}")
    keep(pages, out, replace=replace)


def _write_list(kind: str, path: Path, evening: int, form: str, replace: bool) -> None:
    """Write the cuts that ``seatwork inspect`` judges by, or the list of evenings to change."""
    if path.exists() and not replace:
        raise SeatworkError(
            str(path), "that file is there already", "name another, or add --replace"
        )
    if kind == "evening":
        write(path, package_text(FILE))
    else:
        jobs = evening_cuts.jobs_of(evening, form)
        write_table(path, COLUMNS, [tuple(getattr(job, name) for name in FIELDS) for job in jobs])
    typer.echo(f"Written: {path}")


def _of_parts(
    kind: str,
    planned: tuple[dict[str, Plan], tuple[str, ...]],
    out: Path,
    *,
    paper: str,
    date: str,
    replace: bool,
) -> None:
    """Print the gage sheets of parts, and tell which features they leave out."""
    if kind != "gage-sheet":
        raise SeatworkError(kind, "that is no sheet of a whole part", "leave --part out")
    plans, faults = planned
    keep(gages.gage_page(plans, paper=paper, date=date), out, replace=replace)
    for fault in faults:
        typer.echo(fault, err=True)
    if faults:
        raise typer.Exit(1)


def _plan(
    kind: str, note: str, material: str, machine: str, screw: str | None, thickness: str | None
) -> Plan:
    return make(
        notes.read(stated(note, "--note", kind)),
        screw=screw,
        material=stated(material, "--material", kind),
        machine=stated(machine, "--machine", kind),
        thickness=None if thickness is None else units.length(thickness),
    )
