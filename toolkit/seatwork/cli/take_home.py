"""``seatwork take-home``: lessons, sheets and the planner as pages that need no server."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork import files
from seatwork.cli.course_folder import Course, Questions, folder_of, sheet_of
from seatwork.errors import SeatworkError
from seatwork.marking.lesson_pages import notebooks
from seatwork.takehome.graded import graded_page
from seatwork.takehome.handed_forms import papers
from seatwork.takehome.lesson import lesson_page
from seatwork.takehome.practice import planner_page, practice_page
from seatwork.takehome.python_blocks import BESIDE, runtime_script
from seatwork.takehome.runtime import Runtime, runtime

PLANNER = "planner"
PLAYS = "The page plays the main slider of each bench, and no other."


def take_home(
    sheet: Annotated[str, typer.Argument(help="Name of a lesson or of a sheet, or planner.")],
    named: Course = None,
    target: Annotated[
        Path | None, typer.Option("--to", help="Folder for the pages; given, in the course.")
    ] = None,
    sitting: Annotated[int, typer.Option(min=1, max=20, help="2 for the first re-test.")] = 1,
    only: Annotated[
        list[str] | None, typer.Option(help="This learner alone; give it once for each.")
    ] = None,
    plain: Annotated[
        bool, typer.Option("--plain", help="Small pages, which do not say how an entry is read.")
    ] = False,
    practice: Annotated[
        bool, typer.Option("--practice", help="One page to practice on, checked as you go.")
    ] = False,
    python: Annotated[
        Path | None, typer.Option("--python", help="The file with Python for pages.")
    ] = None,
    beside: Annotated[
        bool,
        typer.Option("--beside", help="Python as one file beside the pages, not in each of them."),
    ] = False,
    language: Annotated[
        str, typer.Option(help="Language seen first, en or es; a page has both.")
    ] = "en",
    questions: Questions = None,
) -> None:
    """Write a lesson, a graded sheet as one page a learner, a practice sheet, or the planner.

    A page is opened by double click on any device with a browser; it asks the network for nothing.

    Example: seatwork take-home 02_angle_standards --to pages
    Example: seatwork take-home cones --course course --to pages
    Example: seatwork take-home cones --practice --to pages
    """
    lesson = _lesson(sheet)
    if lesson:
        _write_lesson(lesson, target or Path("pages"), python, beside=beside)
        return
    if practice or sheet == PLANNER:
        folder, made = target or Path("pages"), runtime(python)
        page = (
            planner_page(made, language, beside=beside)
            if sheet == PLANNER
            else practice_page(
                sheet_of(sheet, None, questions), made,
                planner=True, language=language, beside=beside,
            )
        )  # fmt: skip
        path = folder / f"{sheet}-practice.html" if sheet != PLANNER else folder / "planner.html"
        files.write(path, page)
        typer.echo(f"Written: {path}")
        _lay_beside(folder, made, wanted=beside)
        return
    plan, course_folder = sheet_of(sheet, named, questions), folder_of(named)
    folder = target or course_folder / "given"
    every = papers(course_folder, plan, sitting, only or [])
    made_for = None if plain else _reader(python)
    for paper in every:
        path = folder / f"{paper.learner}-{plan.name}-{paper.form}.html"
        files.write(path, graded_page(paper, made_for, language, beside=beside))
    typer.echo(f"{plan.title}: {len(every)} pages in {folder}, each for one learner.")
    _lay_beside(folder, made_for, wanted=beside)


def _lesson(name: str) -> Path | None:
    """Return the notebook that is meant: a file, or a page of the workbook; None if neither."""
    path = Path(name) if name.endswith(".ipynb") else notebooks() / f"{name}.ipynb"
    return path if path.is_file() or name.endswith(".ipynb") else None


def _write_lesson(lesson: Path, folder: Path, python: Path | None, *, beside: bool) -> None:
    """Write a lesson; where no Python for pages is found, its main sliders play and no more."""
    made, path = _reader(python, PLAYS), folder / f"{lesson.stem}.html"
    doubts = lesson_page(lesson, path, made, beside=beside)
    typer.echo(f"Written: {path}")
    for doubt in doubts:
        typer.echo(f"  {doubt}", err=True)
    _lay_beside(folder, made, wanted=beside)


def _lay_beside(folder: Path, made: Runtime | None, *, wanted: bool) -> None:
    """Write the runtime beside the pages, and say that both go together."""
    if made is None or not wanted:
        return
    files.write(folder / BESIDE, runtime_script(made))
    typer.echo(f"Beside them: {folder / BESIDE}. Hand it on with the pages, in the same folder.")


def _reader(python: Path | None, then: str = "Plain pages are written.") -> Runtime | None:
    """Return Python for pages; where none is found, say what would do and go on without it."""
    try:
        return runtime(python)
    except SeatworkError as error:
        if python is not None:
            raise
        typer.echo(f"{error} {then}", err=True)
        return None
