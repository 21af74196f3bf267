"""``seatwork take-home``: sheets and the planner as pages that need no server."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork import files
from seatwork.cli.course_folder import Course, Questions, folder_of, sheet_of
from seatwork.errors import SeatworkError
from seatwork.takehome.graded import graded_page
from seatwork.takehome.handed_forms import papers
from seatwork.takehome.practice import planner_page, practice_page
from seatwork.takehome.runtime import Runtime, runtime

PLANNER = "planner"


def take_home(
    sheet: Annotated[str, typer.Argument(help="Name of a sheet, or planner.")],
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
    language: Annotated[
        str, typer.Option(help="Language seen first, en or es; a page has both.")
    ] = "en",
    questions: Questions = None,
) -> None:
    """Write a graded sheet as one page a learner, a practice sheet, or the planner.

    A page is opened by double click on any device with a browser; it asks the network for nothing.

    Example: seatwork take-home cones --course course --to pages
    Example: seatwork take-home cones --practice --to pages
    """
    if practice or sheet == PLANNER:
        folder, made = target or Path("pages"), runtime(python)
        page = (
            planner_page(made, language)
            if sheet == PLANNER
            else practice_page(
                sheet_of(sheet, None, questions), made, planner=True, language=language
            )
        )
        path = folder / f"{sheet}-practice.html" if sheet != PLANNER else folder / "planner.html"
        files.write(path, page)
        typer.echo(f"Written: {path}")
        return
    plan, course_folder = sheet_of(sheet, named, questions), folder_of(named)
    folder = target or course_folder / "given"
    every = papers(course_folder, plan, sitting, only or [])
    made_for = None if plain else _reader(python)
    for paper in every:
        path = folder / f"{paper.learner}-{plan.name}-{paper.form}.html"
        files.write(path, graded_page(paper, made_for, language))
    typer.echo(f"{plan.title}: {len(every)} pages in {folder}, each for one learner.")


def _reader(python: Path | None) -> Runtime | None:
    """Return Python for pages; where none is found, say what would do and go on without it."""
    try:
        return runtime(python)
    except SeatworkError as error:
        if python is not None:
            raise
        typer.echo(f"{error} Plain pages are written.", err=True)
        return None
