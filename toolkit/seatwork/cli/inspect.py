"""``seatwork inspect``: a sheet of measured parts, judged against the notes they were cut to."""

from collections.abc import Sequence
from pathlib import Path
from typing import Annotated

import typer

from seatwork.cards import inspection_page
from seatwork.cli.cards import keep
from seatwork.cli.course_folder import Course, day_of, folder_of
from seatwork.errors import SeatworkError
from seatwork.inspection import Inspection, inspect_file
from seatwork.inspection.blank import write_blank
from seatwork.inspection.columns import COLUMNS
from seatwork.inspection.results import write_results
from seatwork.marking import course
from seatwork.plan import Plan
from seatwork.plan.part_files import parts
from seatwork.shop.shop import Shop

SHEET = (
    "A CSV of readings, a row a part. A length needs its unit: in the cell, in the heading as in"
    " diameter (mm), or in the column unit. Columns, any of them: "
    + "; ".join(f"{one.name} ({one.about})" for one in COLUMNS.values())
    + "."
)


def inspect_parts(
    measured: Annotated[Path | None, typer.Argument(help=SHEET)] = None,
    *,
    part: Annotated[list[Path], typer.Option(help="A CSV of notes; give it once for each part.")],
    material: Annotated[str | None, typer.Option(help="For rows that name none.")] = None,
    machine: Annotated[str | None, typer.Option(help="For rows that name none.")] = None,
    blank: Annotated[
        Path | None, typer.Option(help="Write a blank CSV with the columns these parts take.")
    ] = None,
    to: Annotated[Path | None, typer.Option(help="Write the results as CSV.")] = None,
    sheet: Annotated[Path | None, typer.Option(help="Print charts and practical (PDF).")] = None,
    feature: Annotated[str, typer.Option(help="The feature of the sheet; else the first.")] = "",
    kept: Annotated[bool, typer.Option("--keep", help="Keep the parts in the record.")] = False,
    codes: Annotated[str, typer.Option(help="Codes of your outline that they show.")] = "",
    course_named: Course = None,
    day: Annotated[str, typer.Option(help="Day of inspection; today if not given.")] = "",
    replace: Annotated[bool, typer.Option("--replace", help="Over a file that is there.")] = False,
) -> None:
    """Judge measured parts: accept, reject, or cannot tell with this instrument.

    Example: seatwork inspect --blank readings.csv --part hopper_plate.csv, then
    seatwork inspect readings.csv --part hopper_plate.csv
    """
    shop = Shop.at()
    plans, faults = parts(part, material=material, machine=machine, shop=shop)
    if blank is not None:
        _write_blank(plans, faults, blank, measured, replace)
        return
    if measured is None:
        raise SeatworkError("inspect", "no sheet of readings was named", "name one, or --blank")
    found = inspect_file(measured, plans, shop=shop)
    show(found)
    if to is not None:
        typer.echo(write_results(found, to, replace=replace))
    if sheet is not None:
        named = feature or next((part.measured.feature for part in found.parts), "")
        keep(inspection_page(found, named), sheet, replace=replace)
    if kept:
        _keep_parts(found, course_named, codes, day)
    for fault in (*faults, *found.faults):
        typer.echo(fault, err=True)
    if faults or found.faults:
        raise typer.Exit(1)


def _keep_parts(found: Inspection, named: Path | None, codes: str, day: str) -> None:
    """Keep what was found in the record of the course."""
    from seatwork.record.course_record import writable_record
    from seatwork.record.practical import keep_parts

    folder, when = folder_of(named), day_of(day)
    course.read_key(folder)
    record = writable_record(folder, when)
    try:
        marks = keep_parts(record, found, when, codes.replace(",", " ").split())
    finally:
        record.close()
    typer.echo(f"Kept in the record: {', '.join(marks) or 'nothing; mend what is said'}.")


def _write_blank(
    plans: dict[str, Plan], faults: Sequence[str], blank: Path, measured: Path | None, replace: bool
) -> None:
    """Write a blank, and tell which features it leaves out."""
    if measured is not None:
        raise SeatworkError(str(measured), "a blank is made without it", "leave out one of the two")
    rows = write_blank(plans, blank, replace=replace)
    count = "1 row" if rows == 1 else f"{rows} rows"
    typer.echo(f"Wrote {blank}: {count}, one a part; write the mark of the part in each.")
    for fault in faults:
        typer.echo(fault, err=True)
    if faults:
        raise typer.Exit(1)


def show(found: Inspection) -> None:
    """Print part by part, then the count."""
    for part in found.parts:
        head, *rows = part.rows()
        typer.secho(f"{head.label} {part.measured.feature} {head.text}", bold=True)
        for row in rows:
            source = f"  [{row.source}]" if row.source else ""
            typer.echo(f"  {row.label}: {row.text}{source}")
    typer.echo(found.summary)
