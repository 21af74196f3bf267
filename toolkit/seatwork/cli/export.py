"""``seatwork export``: notebooks as pages that need no network and no kernel."""

from pathlib import Path
from typing import Annotated

import typer

from seatwork.errors import SeatworkError
from seatwork.opening.export import export
from seatwork.takehome.moving import Moving


def export_pages(
    notebook: Annotated[Path, typer.Argument(help="A notebook, or a folder of them.")],
    to: Annotated[Path, typer.Argument(help="Folder for the HTML pages.")],
    replace: Annotated[bool, typer.Option("--replace", help="Over pages that are there.")] = False,
) -> None:
    """Write notebooks as HTML pages with every picture and text inside.

    The main slider of each bench moves, recorded at every step; no cell is run.

    Example: seatwork export notebooks pages
    """
    found = sorted(notebook.glob("*.ipynb")) if notebook.is_dir() else [notebook]
    if not found:
        raise SeatworkError(str(notebook), "it holds no notebook", "name another folder")
    pages = [to / f"{path.stem}.html" for path in found]
    there = next((page for page in pages if page.exists()), None)
    if there and not replace:
        raise SeatworkError(
            str(there), "that page is there already", "name another folder, or add --replace"
        )
    to.mkdir(parents=True, exist_ok=True)
    for path, page in zip(found, pages, strict=True):
        moving = Moving()
        export(path, page, [other.stem for other in found], moving)
        typer.echo(f"Written: {page}")
        for doubt in moving.doubts:
            typer.echo(f"  {doubt}", err=True)
