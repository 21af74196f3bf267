"""``seatwork record``: begun, looked over, copied, brought back, combined; a learner erased."""

import json
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Annotated

import typer

from seatwork.cli.course_folder import Course, day_of, folder_of
from seatwork.errors import SeatworkError
from seatwork.marking.names import learner_code
from seatwork.record import resealing
from seatwork.record.bringing_back import bring_back as bring_it_back
from seatwork.record.copying import copy_for_day, copy_key, copy_to
from seatwork.record.course_record import open_record, set_author, writable_record
from seatwork.record.erasing import counted, facts_about, may_show
from seatwork.record.erasing import erase as erase_learner
from seatwork.record.keeping import TAKEN_OVER, Record
from seatwork.record.looking_over import look_over, mend_modes, names_found
from seatwork.record.merging import combine as combine_records
from seatwork.record.merging import disagreements
from seatwork.record.naming import read_names
from seatwork.record.tables_out import write_all_marks

app = typer.Typer(
    help="The record of a term: what was handed out, marked and decided.", no_args_is_help=True
)
Day = Annotated[str, typer.Option(help="The day, such as 2026-09-07; today if not given.")]


NAMED = (
    "A name in the record, its lines, copies or tables stands in a reason that was given; it goes"
    " with the learner alone: seatwork record erase CODE. Take it out of any other file by hand."
)


@contextmanager
def opened(record: Record) -> Iterator[Record]:
    """Give an open record, and let go of its file at the end."""
    try:
        yield record
    finally:
        record.close()


@app.command("new")
def new(
    named: Course = None,
    by: Annotated[str, typer.Option(help="Code of the instructor here, such as I2.")] = "I1",
    day: Day = "",
) -> None:
    """Begin a record, or say who decides here; a course kept in files is taken over.

    Example: seatwork record new --course course
    """
    folder, when = folder_of(named), day_of(day)
    there = (folder / "record.db").exists()
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    set_author(folder, by)
    with opened(writable_record(folder, when)) as record:
        typer.echo(f"{record.place}: {record.count()} facts; decisions here are by {by}.")
        told = json.loads(record.note(TAKEN_OVER) or "{}").get("told", [])
        if not there:
            write_all_marks(record, folder, when)
    for line in told:
        typer.echo(f"  to look at, from the old files: {line}")


@app.command("check")
def check(
    named: Course = None,
    names: Annotated[
        Path | None, typer.Option(help="Your list of names: none may be in the course folder.")
    ] = None,
) -> None:
    """Look the record over: its file, every fact and seal, lines, copies, who may read it.

    Example: seatwork record check --names names.csv
    """
    folder = folder_of(named)
    known = read_names(names, folder)
    with opened(open_record(folder)) as record:
        faults, named_in = look_over(record, folder), names_found(folder, known)
        count = record.count()
    for place in mend_modes(folder):
        typer.echo(f"  others could read {place}; now it is yours alone.")
    for line in [*faults, *named_in]:
        typer.echo(f"  {line}")
    if faults:
        typer.echo("What is damaged comes back: seatwork record bring-back")
    if named_in:
        typer.echo(NAMED)
    if faults or named_in:
        raise typer.Exit(1)
    typer.echo(f"All is well: {count} facts, each as it was written.")


@app.command("copy")
def copy(
    target: Annotated[
        Path | None, typer.Argument(help="A file, or a folder such as a stick.")
    ] = None,
    named: Course = None,
    with_key: Annotated[
        bool, typer.Option("--with-key", help="The course key, too: it opens every answer.")
    ] = False,
    day: Day = "",
) -> None:
    """Copy the record while it is in use; the copy is whole.

    Example: seatwork record copy stick
    """
    folder, when = folder_of(named), day_of(day)
    if with_key and target is None:
        fault = "a copy of the key beside the key saves nothing"
        raise SeatworkError("--with-key", fault, "name a folder elsewhere, such as a stick")
    with opened(open_record(folder)) as record:
        made = copy_to(record, target) if target else copy_for_day(record, when, again=True)
        key = copy_key(folder, made) if with_key and made is not None else None
    typer.echo(f"Copied to {made}. It names no learner but by code; keep it to yourself.")
    if key is not None:
        typer.echo(f"The course key lies beside it: {key}. Whoever has it knows every answer.")


@app.command("bring-back")
def bring_back(
    named: Course = None,
    copy_file: Annotated[
        Path | None,
        typer.Option("--from", help="A copy, or a folder of copies; else the fullest sound one."),
    ] = None,
) -> None:
    """Bring the record back from a copy, with all that can be saved of the damaged one.

    Example: seatwork record bring-back --course course
    """
    folder = folder_of(named)
    done = bring_it_back(folder, copy_file)
    typer.echo(f"Brought back from {done.copy}.")
    if done.aside is not None:
        typer.echo(f"  what was there before lies at {done.aside}; from it: {done.facts}.")
    typer.echo(f"  decision lines: {done.decisions}.")
    typer.echo("Papers that are missing come back: seatwork mark SHEET FOLDER, all handed in.")


@app.command("reseal")
def reseal(
    named: Course = None,
    stolen: Annotated[
        bool, typer.Option("--new-key", help="The key is here, and somebody else has it.")
    ] = False,
    yes: Annotated[bool, typer.Option("--yes", help="Do not ask.")] = False,
) -> None:
    """Seal the record anew where the course key is lost for good, or was stolen.

    Example: seatwork record reseal
    """
    folder = folder_of(named)
    refused = resealing.why_not(folder, stolen=stolen)
    if refused:
        raise SeatworkError(str(folder), refused, "seatwork record check looks it over")
    typer.echo(resealing.WARNING)
    if not yes and not typer.confirm("Seal it anew?"):
        raise typer.Exit(1)
    done = resealing.reseal(folder, stolen=stolen)
    typer.echo(f"Sealed anew: {done.facts} facts, {done.copies} copies. Keep a copy of the key.")
    if done.erased:
        count = "1 learner" if done.erased == 1 else f"{done.erased} learners"
        typer.echo(f"  {count} {resealing.ERASED}.")
    typer.echo("Whoever else keeps a record of this course needs the key, and reseals theirs.")


@app.command("combine")
def combine(
    other: Annotated[Path, typer.Argument(help="The other instructor's record.db.")],
    named: Course = None,
    day: Day = "",
) -> None:
    """Add what another instructor's record holds; nothing is doubled, nothing is chosen.

    Example: seatwork record combine stick/record.db
    """
    folder, when = folder_of(named), day_of(day)
    with opened(writable_record(folder, when)) as record:
        done = combine_records(record, other)
        write_all_marks(record, folder, when)
        with record.reading() as connection:
            told = disagreements(connection)
    typer.echo(f"{done}.")
    for line in told:
        typer.echo(f"  {line}")


@app.command("erase")
def erase(
    learner: Annotated[str, typer.Argument(help="Learner code.")],
    named: Course = None,
    day: Day = "",
    yes: Annotated[bool, typer.Option("--yes", help="Do not ask.")] = False,
) -> None:
    """Take a learner out of the record, its lines and its copies, for good.

    Example: seatwork record erase L10
    """
    folder, when = folder_of(named), day_of(day)
    learner_code(learner)
    with opened(open_record(folder)) as record:
        found = facts_about(record, learner)
        listed = ", ".join(counted(kind, count) for kind, count in found.items())
        typer.echo(f"{learner}: {listed}. This cannot be undone.")
        if not yes and not typer.confirm("Erase them?"):
            raise typer.Exit(1)
        left = erase_learner(record, folder, learner, when)
    typer.echo(f"Erased. The code is in {len(left)} files of {folder} still.")
    for place in left:
        damaged = "damaged" in place
        what = (
            "delete it if nothing more is to be saved" if damaged else "take the code out by hand"
        )
        typer.echo(f"  {place}: look at it, and {what}")
    for place in may_show(folder, learner):
        typer.echo(f"  {place}: printed before, it may show the code: print it again, or delete it")
    typer.echo("A copy on a stick or elsewhere is yours to erase, and so is what was printed.")
