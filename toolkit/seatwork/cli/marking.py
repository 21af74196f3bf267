"""``seatwork hand-out``, ``mark``, ``check``, ``roster``."""

import os
from collections.abc import Iterable
from pathlib import Path
from random import SystemRandom
from typing import Annotated, Any

import typer

from seatwork import files
from seatwork.cli.course_folder import Course, Questions, day_of, folder_of, sheet_of
from seatwork.errors import SeatworkError
from seatwork.marking import (
    course,
    handed,
    handing_out,
    marker,
    results,
    roster,
    sheets,
    submissions,
    typed_back,
)
from seatwork.marking.marker import Marked
from seatwork.marking.merging import Tally
from seatwork.marking.submissions import Submission

MOST_NAMED = 30
"""Learners named in one line."""
EVEN = 1e-9
"""Points that the last digit of a sum may lack."""
roster_app = typer.Typer(help="The roster: learner codes, no names.", no_args_is_help=True)


def hand_out(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet, such as cones.")],
    named: Course = None,
    target: Annotated[
        Path | None, typer.Option("--to", help="Where each learner's folder goes.")
    ] = None,
    sitting: Annotated[int, typer.Option(min=1, max=20, help="2 for the first re-test.")] = 1,
    mode: Annotated[str | None, typer.Option(help="practice or graded.")] = None,
    paper: Annotated[bool, typer.Option("--paper", help="Print PDFs and a key.")] = False,
    size: Annotated[
        str, typer.Option(help="letter or a4; by house rule display.paper if not given.")
    ] = "",
    questions: Questions = None,
) -> None:
    """Give every learner on the roster an own form of a sheet.

    Example: seatwork hand-out cones --course course --to given --paper
    """
    plan, course_folder = sheet_of(sheet, named, questions), folder_of(named)
    learners = [learner.code for learner in roster.read(course_folder)]
    if paper:
        from seatwork.cards.papers import page_size

        page_size(size)  # refused before anything is handed out
    place = target or course_folder / "given"
    with files.lock(course_folder):
        given = handing_out.hand_out(
            course_folder, plan, learners, sitting=sitting, mode=mode, target=place
        )
        if paper:
            key = f"{plan.name}-key{f'-{sitting}' if sitting > 1 else ''}.pdf"
            _print(plan, given, place, course_folder / key, size)
    typer.echo(f"{plan.title}: {len(given)} forms in {place}. Keep {course_folder} to yourself.")


def _print(
    plan: sheets.Sheet,
    given: tuple[handing_out.Handout, ...],
    place: Path,
    key: Path,
    size: str,
) -> None:
    from seatwork.cards import paper

    for one in given:
        name = f"{plan.name}-{one.given.form}.pdf"
        paper.learner_pages(place / one.given.learner / name, plan, one, size)
    paper.answer_key(key, plan, given, size)


def mark(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")],
    answers: Annotated[
        list[Path], typer.Argument(help="Folders of answer files, CSVs typed back from paper.")
    ],
    named: Course = None,
    day: Annotated[str, typer.Option(help="Day of marking; today if not given.")] = "",
    feedback: Annotated[bool, typer.Option("--feedback", help="Write feedback.")] = False,
    language: Annotated[str, typer.Option(help="Language of verdicts: en or es.")] = "en",
    questions: Questions = None,
) -> None:
    """Mark what was handed in, all of a sheet in one go; nothing in it is run.

    Example: seatwork mark cones handed_in typed.csv --course course --feedback
    """
    course_folder = folder_of(named)
    when = day_of(day)
    key, plan = course.read_key(course_folder), sheet_of(sheet, named, questions)
    with files.lock(course_folder):
        marked = _mark(plan, answers, course_folder)
        place = results.place_of(course_folder, plan.name)
        before = results.read(place, key) if place.is_file() else None
        tally = results.write(course_folder, plan, marked, key, when)
        if feedback:
            write_feedback(plan, marked, course_folder, language)
        after = results.read(place, key)
    _report(plan, marked, course_folder)
    _report_added(tally, after)
    _report_passed(plan, after)
    for who, question, old, new in results.compare(before, after) if before else []:
        typer.echo(f"  changed: {who}, {question}: {_points(old)} before, {_points(new)} now")
    _report_missing(results.missing(after, handed.read(course_folder)))
    if feedback:
        typer.echo(f"Feedback: {course_folder / 'feedback'}, a page and a PDF for each paper.")


def _report_added(tally: Tally, after: dict[str, Any]) -> None:
    """Say what a run added to what was marked before."""
    papers = sum(bool(one["questions"]) for one in after["files"])
    typer.echo(
        f"  {tally.new} new, {tally.known} known already, {tally.changed} changed;"
        f" papers in the marks now: {papers}."
    )
    for line in tally.notes:
        typer.echo(f"  {line}.")


def _report_passed(plan: sheets.Sheet, after: dict[str, Any]) -> None:
    """Say how many papers reach the pass mark of the sheet, of those that have all their points."""
    settled = [one for one in after["files"] if one["questions"] and one["points"] is not None]
    passed = sum(one["points"] >= plan.pass_mark * one["of"] - EVEN for one in settled)
    typer.echo(f"  pass mark {plan.pass_mark:.0%}: reached by {passed} of {len(settled)} papers.")


def _report_missing(missing: list[str]) -> None:
    """Name who was given the sheet and has no paper in the marks."""
    more = f" and {len(missing) - MOST_NAMED} more" if len(missing) > MOST_NAMED else ""
    if missing:
        typer.echo(f"  no paper in the marks yet: {', '.join(missing[:MOST_NAMED])}{more}.")


def _points(value: float | None) -> str:
    return "a person" if value is None else f"{value:g}"


def _mark(plan: sheets.Sheet, answers: list[Path], folder: Path) -> list[Marked]:
    from rich.progress import Progress

    given = [one for place in answers for one in _submissions(plan, place, folder)]
    with Progress(transient=True) as progress:
        bar = progress.add_task("marking", total=len(given))
        return marker.Marker(folder, plan).mark(
            given, lambda done: progress.update(bar, completed=done)
        )


def _submissions(plan: sheets.Sheet, place: Path, folder: Path) -> Iterable[Submission]:
    """Read a folder of answer files, or a CSV typed back from paper."""
    if os.path.isfile(place):  # noqa: PTH113 - never raises, whoever may not look there
        return typed_back.read(place, plan, handed.read(folder))
    if not os.path.isdir(place):  # noqa: PTH112 - likewise
        raise SeatworkError(str(place), "there is no such folder", "name the folder handed in")
    return submissions.collect(place)


def write_feedback(plan: sheets.Sheet, marked: list[Marked], folder: Path, language: str) -> None:
    """Write the feedback of each paper, as a page and on paper, for its owner's eyes only."""
    from seatwork.cards.feedback import feedback_page
    from seatwork.marking.languages import words_in
    from seatwork.marking.learner_words import feedback, page

    record, words = handed.read(folder), words_in(language)
    for one in marked:
        form = record.form(plan.name, one.file.learner, one.file.form) if one.file else None
        if form is None or not one.scored:
            continue
        written = feedback(plan, form, one, words, language)
        place = _feedback_place(folder, plan.name, form.form, one)
        files.write(place, page(written), mode=files.PRIVATE)
        feedback_page(place.with_suffix(".pdf"), written)


def _feedback_place(folder: Path, sheet: str, form: int, one: Marked) -> Path:
    assert one.file is not None
    return folder / "feedback" / f"{one.file.learner}-{sheet}-{form}.html"


def _report(plan: sheets.Sheet, marked: list[Marked], folder: Path) -> None:
    doubtful = [one for one in marked if one.needs_a_person]
    twice = [one for one in marked if one.same_as]
    done = len(marked) - len(doubtful) - len(twice)
    count = "1 file" if len(marked) == 1 else f"{len(marked)} files"
    typer.echo(f"{plan.title}: {count}, {done} marked.")
    for one in doubtful:
        waits = [item for item in one.scored if item.points is None]
        reasons = [one.doubt, *(f"{item.id}: {item.doubt}" for item in waits)]
        typer.echo(f"  needs a person: {one.name}: {'; '.join(filter(None, reasons))}")
    _report_what_to_do(plan.name, doubtful)
    for one in twice:
        typer.echo(
            f"  the same paper twice: {one.name} is the same as {one.same_as}; it counts once"
        )
    for one in marked:
        if one.question:
            typer.echo(f"  to ask: {one.name}: {one.question}")
    typer.echo(f"Written: {folder / (plan.name + '-marks.csv')} and the results beside it.")


def _report_what_to_do(sheet: str, doubtful: list[Marked]) -> None:
    if any(one.scored for one in doubtful):
        line = f'seatwork override {sheet} CODE QUESTION POINTS "reason"'
        typer.echo(f"  Read each answer that needs a person, then give its points: {line}")
    if any(not one.scored for one in doubtful):
        typer.echo("  A file that cannot be marked: ask for it again and mark what comes.")


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


@roster_app.command("new")
def roster_new(
    count: Annotated[int, typer.Argument(help="How many learners.")],
    named: Course = None,
) -> None:
    """Draw learner codes for a class.

    Example: seatwork roster new 12 --course course
    """
    course_folder = folder_of(named)
    learners = roster.new(course_folder, count, SystemRandom())
    typer.echo(f"{course_folder / roster.ROSTER_FILE}: " + " ".join(one.code for one in learners))


@roster_app.command("show")
def roster_show(
    named: Course = None,
) -> None:
    """Show the roster.

    Example: seatwork roster show
    """
    for learner in roster.read(folder_of(named)):
        typer.echo(f"{learner.code}  {learner.group}")
