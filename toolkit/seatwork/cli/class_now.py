"""``seatwork class`` and ``report``: the class in one picture, and one page a learner."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork import files
from seatwork.cli.course_folder import Course, day_of, folder_of
from seatwork.errors import SeatworkError
from seatwork.marking.names import learner_code
from seatwork.marking.speaking import Voice, voice_at
from seatwork.record.class_now import Class
from seatwork.record.class_picture import Picture
from seatwork.record.class_picture import picture as picture_of
from seatwork.record.course_record import open_record
from seatwork.record.learner_report import report_in
from seatwork.record.naming import read_names
from seatwork.record.tables_out import spreadsheet

Day = Annotated[str, typer.Option(help="As it stood on this day; today if not given.")]
Names = Annotated[
    Path | None,
    typer.Option(help="Your list of names, kept outside the course folder: learner, name."),
]
Size = Annotated[str, typer.Option(help="letter or a4; by house rule display.paper.")]
Replace = Annotated[bool, typer.Option("--replace", help="Over a file that is there.")]
WIDE = 14
"""Width of a column of the spreadsheet [letters]."""


def show_class(
    named: Course = None,
    day: Day = "",
    lists: Annotated[
        bool, typer.Option("--next", help="The lists alone: slips, and who needs what.")
    ] = False,
    projector: Annotated[
        bool, typer.Option("--projector", help="For the class to see: counts, no codes.")
    ] = False,
    out: Annotated[Path | None, typer.Option("--print", help="Write it as a PDF.")] = None,
    table: Annotated[Path | None, typer.Option(help="Write it as .xlsx or .csv.")] = None,
    names: Names = None,
    size: Size = "",
    replace: Replace = False,
) -> None:
    """Show the class in one picture, the slips of two and more, and who needs what next.

    Example: seatwork class --print class.pdf --names names.csv
    """
    folder, when = folder_of(named), day_of(day)
    known = read_names(names, folder)
    record = open_record(folder)
    try:
        found = picture_of(record, when)
    finally:
        record.close()
    for place in filter(None, (out, table)):
        _free(place, folder, replace=replace, is_named=bool(known))
    if out is not None:
        from seatwork.cards.class_page import class_page

        class_page(found, names=known, paper=size).save(out, private=True)
        typer.echo(f"Wrote {out}.")
    if table is not None:
        _write_table(found, table, known)
    if out is None and table is None:
        _show(found, lists=lists, projector=projector)


def _show(found: Picture, *, lists: bool, projector: bool) -> None:
    if projector:
        lines = found.projected()
    elif lists:
        lines = [*found.slip_lines(), "", *found.need_lines()]
    else:
        lines = str(found).splitlines()
    for line in lines:
        typer.echo(line)


def _write_table(found: Picture, path: Path, names: dict[str, str]) -> None:
    head, *rows = found.table(names)
    if path.suffix == ".csv":
        files.write_table(path, head, rows, mode=files.PRIVATE)
    elif path.suffix == ".xlsx":
        book = spreadsheet(f"class {found.day}", head, rows, [WIDE] * len(head))
        files.write(path, book, mode=files.PRIVATE)
    else:
        raise SeatworkError(path.name, "that is no table's name", "end it in .xlsx or .csv")
    typer.echo(f"Wrote {path}.")


def _free(place: Path, course: Path, *, replace: bool, is_named: bool) -> None:
    """Refuse to write over a file, or names into the course folder."""
    if is_named and course.resolve() in place.resolve().parents:
        fault = "names are never written into the course folder"
        raise SeatworkError(str(place), fault, "write it elsewhere, or leave --names out")
    if place.exists() and not replace:
        remedy = "name another file, or add --replace"
        raise SeatworkError(str(place), "there is something of that name already", remedy)


def report(
    learners: Annotated[list[str] | None, typer.Argument(help="Learner codes.")] = None,
    named: Course = None,
    everyone: Annotated[bool, typer.Option("--all", help="A page for each learner.")] = False,
    to: Annotated[Path | None, typer.Option(help="Folder for a PDF of each learner.")] = None,
    day: Day = "",
    names: Names = None,
    size: Size = "",
    language: Annotated[str, typer.Option(help="Of the pages: en or es.")] = "",
    replace: Replace = False,
) -> None:
    """Report one learner: theory, practical and safety as three facts, and no sum of them.

    Example: seatwork report L03, or seatwork report --all --to reports --names names.csv
    """
    folder, when = folder_of(named), day_of(day)
    codes = [learner_code(code) for code in learners or []]
    if not codes and not everyone:
        raise SeatworkError("report", "no learner was named", "name a code, or add --all")
    if language and to is None:
        raise SeatworkError(language, "the screen shows it in English", "add --to with a folder")
    voice = Voice(language) if language else voice_at(folder)
    say, known = voice.say, read_names(names, folder)
    record = open_record(folder)
    try:
        with record.reading() as connection:
            now = Class(connection, when)
    finally:
        record.close()
    for code in now.learners() if everyone else codes:
        found = report_in(now, code, say if to else str)
        if to is None:
            typer.echo("\n".join(found.lines(known.get(code, ""))) + "\n")
            continue
        from seatwork.cards.report_page import report_page

        place = to / f"{code}-report.pdf"
        _free(place, folder, replace=replace, is_named=bool(known))
        page = report_page(found, name=known.get(code, ""), paper=size, language=voice.language)
        page.save(place, private=True)
        typer.echo(f"Wrote {place}.")
