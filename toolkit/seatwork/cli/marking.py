"""``seatwork hand-out``, ``mark``, ``check``, ``why``, ``slips``, ``override``, ``roster``."""

from collections.abc import Iterable
from datetime import date
from pathlib import Path
from random import SystemRandom
from typing import Annotated

import typer

from seatwork.errors import SeatworkError
from seatwork.marking import (
    course,
    handed,
    handing_out,
    marker,
    overriding,
    results,
    roster,
    sheets,
    submissions,
    typed_back,
)
from seatwork.marking.marker import Marked
from seatwork.marking.submissions import Submission

Course = Annotated[Path, typer.Option(help="The instructor's folder.")]
HERE = Path("course")
roster_app = typer.Typer(help="The roster: learner codes, no names.", no_args_is_help=True)


def hand_out(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet, such as cones.")],
    course_folder: Annotated[Path, typer.Option("--course", help="Your own folder.")] = HERE,
    target: Annotated[
        Path | None, typer.Option("--to", help="Where each learner's folder goes.")
    ] = None,
    sitting: Annotated[int, typer.Option(min=1, max=20, help="2 for the first re-test.")] = 1,
    mode: Annotated[str | None, typer.Option(help="practice or graded.")] = None,
    paper: Annotated[bool, typer.Option("--paper", help="Print PDFs and a key.")] = False,
    size: Annotated[str, typer.Option(help="letter or a4.")] = "letter",
) -> None:
    """Give every learner on the roster an own form of a sheet.

    Example: seatwork hand-out cones --course course --to given --paper
    """
    plan = sheets.load(sheet)
    learners = [learner.code for learner in roster.read(course_folder)]
    place = target or course_folder / "given"
    given = handing_out.hand_out(
        course_folder, plan, learners, sitting=sitting, mode=mode, target=place
    )
    if paper:
        _print(plan, given, place, course_folder, size)
    typer.echo(f"{plan.title}: {len(given)} forms in {place}. Keep {course_folder} to yourself.")


def _print(
    plan: sheets.Sheet,
    given: tuple[handing_out.Handout, ...],
    place: Path,
    folder: Path,
    size: str,
) -> None:
    from seatwork.cards import paper
    from seatwork.cards.pages import PAPERS

    if size not in PAPERS:
        raise SeatworkError(size, "that paper is not known", f"write {' or '.join(PAPERS)}")
    for one in given:
        name = f"{plan.name}-{one.given.form}.pdf"
        paper.learner_sheet(place / one.given.learner / name, plan, one, size)
    paper.answer_key(folder / f"{plan.name}-key.pdf", plan, given, size)


def mark(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")],
    answers: Annotated[
        list[Path], typer.Argument(help="Folders of answer files, CSVs typed back from paper.")
    ],
    course_folder: Annotated[Path, typer.Option("--course", help="Your own folder.")] = HERE,
    day: Annotated[str, typer.Option(help="Day of marking; today if not given.")] = "",
    feedback: Annotated[bool, typer.Option("--feedback", help="Write feedback.")] = False,
    language: Annotated[str, typer.Option(help="Language of verdicts: en or es.")] = "en",
) -> None:
    """Mark what was handed in, all of a sheet in one go; nothing in it is run.

    Example: seatwork mark cones handed_in typed.csv --course course --feedback
    """
    plan, key = sheets.load(sheet), course.read_key(course_folder)
    marked = _mark(plan, answers, course_folder)
    place = course_folder / f"{plan.name}-results.json"
    before = results.read(place, key) if place.is_file() else None
    results.write(course_folder, plan, marked, key, day or date.today().isoformat())
    if feedback:
        _feedback(plan, marked, course_folder, language)
    _tell(plan, marked, course_folder)
    for who, question, old, new in _changes(before, place, key):
        typer.echo(f"  changed: {who}, {question}: {old} before, {new} now")


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
    if place.is_file():
        return typed_back.read(place, plan, handed.read(folder))
    if not place.is_dir():
        raise SeatworkError(str(place), "there is no such folder", "name the folder handed in")
    return submissions.collect(place)


def _feedback(plan: sheets.Sheet, marked: list[Marked], folder: Path, language: str) -> None:
    from seatwork.cards.feedback import feedback_sheet
    from seatwork.marking import atomic
    from seatwork.marking.feedback import feedback, page
    from seatwork.marking.languages import words_in

    record, words = handed.read(folder), words_in(language)
    for one in marked:
        if one.file is None or not one.scored:
            continue
        form = record.form(plan.name, one.file.learner, one.file.form)
        assert form is not None
        said = feedback(plan, form, one, words, language)
        place = folder / "feedback" / f"{one.file.learner}-{plan.name}-{one.file.form}.html"
        atomic.write(place, page(said).encode())
        feedback_sheet(place.with_suffix(".pdf"), said)


def _tell(plan: sheets.Sheet, marked: list[Marked], folder: Path) -> None:
    doubtful = [one for one in marked if one.needs_a_person]
    typer.echo(f"{plan.title}: {len(marked)} files, {len(marked) - len(doubtful)} marked.")
    for one in doubtful:
        reasons = [one.doubt, *(f"{item.id}: {item.doubt}" for item in one.scored if item.doubt)]
        typer.echo(f"  needs a person: {one.name}: {'; '.join(filter(None, reasons))}")
    for one in marked:
        if one.question:
            typer.echo(f"  to ask: {one.name}: {one.question}")
    typer.echo(f"Written: {folder / (plan.name + '-marks.csv')} and the results beside it.")


def _changes(
    before: dict[str, object] | None, place: Path, key: bytes
) -> list[tuple[str, str, object, object]]:
    return results.compare(before, results.read(place, key)) if before else []


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
        said = "the referee passes it." if outcome.passed else "not yet."
        typer.echo(f"{notebook}: {said}")
        for line in outcome.lines:
            typer.echo(f"  {line}")
    raise typer.Exit(not all(outcome.passed for outcome in outcomes))


def why(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")],
    learner: Annotated[str, typer.Argument(help="Learner code.")],
    question: Annotated[str, typer.Argument(help="Question, such as c1 or c3b.")],
    number: Annotated[str, typer.Argument(help="The number they wrote.")],
    course_folder: Annotated[Path, typer.Option("--course", help="Your own folder.")] = HERE,
) -> None:
    """Find out what gives a learner's number; for the instructor alone.

    Example: seatwork why cones L4711 c1 .0169
    """
    from seatwork.marking.why import reasons

    found = reasons(handed.read(course_folder), sheets.load(sheet), learner, question, number)
    for reason in found:
        typer.echo(f"  {reason.value:.5f}  {reason.how}")
    if not found:
        typer.echo("Nothing known gives this number; it is worth asking how it came about.")


def slips(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")],
    course_folder: Annotated[Path, typer.Option("--course", help="Your own folder.")] = HERE,
    learners: Annotated[bool, typer.Option("--learners", help="Name their codes too.")] = False,
) -> None:
    """Count the slips of a sheet that was marked, the most frequent first.

    Example: seatwork slips cones --course course
    """
    from seatwork.marking.slip_count import counted

    name = sheets.load(sheet).name
    place = course_folder / f"{name}-results.json"
    if not place.is_file():
        raise SeatworkError(str(place), "that sheet is not marked yet", "run: seatwork mark")
    found = results.read(place, course.read_key(course_folder))
    rows = counted(found)
    for row in rows:
        typer.echo(f"{row}" + (f" ({' '.join(row.learners)})" if learners else ""))
    unknown = [f"{one['learner']} {one['question']}" for one in found["unknown"]]
    typer.echo(f"Known slips: {len(rows)}. Wrong for no known reason: {len(unknown)}.")
    if learners and unknown:
        typer.echo(f"To ask: {', '.join(unknown)}.")


def override(
    sheet: Annotated[str, typer.Argument(help="Name of the sheet.")],
    learner: Annotated[str, typer.Argument(help="Learner code.")],
    question: Annotated[str, typer.Argument(help="Question, such as c1.")],
    points: Annotated[float, typer.Argument(help="Points you give.")],
    reason: Annotated[str, typer.Argument(help="Why, in a few words.")],
    form: Annotated[int, typer.Option(min=1, max=99, help="Form of the sheet.")] = 1,
    course_folder: Annotated[Path, typer.Option("--course", help="Your own folder.")] = HERE,
    day: Annotated[str, typer.Option(help="Day of the decision; today if not given.")] = "",
) -> None:
    """Give points yourself, with the reason; mark again to see them counted.

    Example: seatwork override cones L4711 c1 2 "working right, misread the print"
    """
    overriding.add(
        course_folder,
        overriding.Override(
            date=day or date.today().isoformat(),
            learner=learner,
            sheet=sheet,
            form=form,
            question=question,
            points=points,
            reason=reason,
        ),
    )
    typer.echo("Kept. Mark again to see it counted.")


@roster_app.command("new")
def roster_new(
    count: Annotated[int, typer.Argument(help="How many learners.")],
    course_folder: Annotated[Path, typer.Option("--course", help="Your own folder.")] = HERE,
) -> None:
    """Draw learner codes for a class.

    Example: seatwork roster new 12 --course course
    """
    learners = roster.new(course_folder, count, SystemRandom())
    typer.echo(f"{course_folder / roster.ROSTER_FILE}: " + " ".join(one.code for one in learners))


@roster_app.command("show")
def roster_show(
    course_folder: Annotated[Path, typer.Option("--course", help="Your own folder.")] = HERE,
) -> None:
    """Show the roster.

    Example: seatwork roster show
    """
    for learner in roster.read(course_folder):
        typer.echo(f"{learner.code}  {learner.group}")
