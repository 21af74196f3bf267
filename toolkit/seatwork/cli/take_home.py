"""``seatwork take-home``: a sheet as one page a learner, answered without a server."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork import files
from seatwork.cli.course_folder import Course, Questions, folder_of, sheet_of
from seatwork.takehome.graded import plain_page
from seatwork.takehome.handed_forms import papers


def take_home(
    sheet: Annotated[str, typer.Argument(help="Name of a sheet that was handed out.")],
    named: Course = None,
    target: Annotated[
        Path | None, typer.Option("--to", help="Folder for the pages; given, in the course.")
    ] = None,
    sitting: Annotated[int, typer.Option(min=1, max=20, help="2 for the first re-test.")] = 1,
    only: Annotated[
        list[str] | None, typer.Option(help="This learner alone; give it once for each.")
    ] = None,
    questions: Questions = None,
) -> None:
    """Write a graded sheet as one page a learner, to be answered on any device with a browser.

    Example: seatwork take-home cones --course course --to pages
    """
    plan, course_folder = sheet_of(sheet, named, questions), folder_of(named)
    folder = target or course_folder / "given"
    written = []
    for paper in papers(course_folder, plan, sitting, only or []):
        path = folder / f"{paper.learner}-{plan.name}-{paper.form}.html"
        files.write(path, plain_page(paper))
        written.append(path)
    typer.echo(f"{plan.title}: {len(written)} pages in {folder}, each for one learner.")
