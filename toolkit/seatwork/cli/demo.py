"""``seatwork demo``: the cider mill planned, carded and inspected from the package's own files."""

import contextlib
import io
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Annotated

import typer

from seatwork import files
from seatwork.cards import part_card
from seatwork.cli import inspect as inspecting
from seatwork.cli import plan as planning
from seatwork.cli.cards import Paper
from seatwork.errors import SeatworkError
from seatwork.inspection import Inspection, inspect_file
from seatwork.inspection.results import write_results
from seatwork.plan.examples import example_parts, example_readings
from seatwork.plan.part_files import Part, parts, plan_part
from seatwork.shop.shop import Shop


def demo(
    folder: Annotated[Path, typer.Argument(help="Where to write; made if need be.")] = Path(
        "cider_mill"
    ),
    replace: Annotated[bool, typer.Option("--replace", help="Over files that are there.")] = False,
    paper: Paper = "",
) -> None:
    """Plan the cider mill, print its cards, inspect its parts; tell where everything lies."""
    shop = Shop.at()
    made = _folder(folder)
    planned = [plan_part(path, shop=shop) for path in example_parts()]
    for part in planned:
        _write(made / f"{part.name}_plan.txt", _plan_text(part), replace)
        _card(part, made / f"{part.name}_cards.pdf", replace, paper)
    plans, _ = parts(example_parts(), shop=shop)
    found = inspect_file(example_readings(), plans, shop=shop)
    typer.echo(write_results(found, made / "inspection.csv", replace=replace))
    _write(made / "inspection.txt", _inspection_text(found), replace)
    typer.echo(found.summary)


def _folder(folder: Path) -> Path:
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise SeatworkError(str(folder), "it cannot be made a folder", "name another") from error
    return folder


def _card(part: Part, path: Path, replace: bool, paper: str) -> None:
    pages = part_card(
        part.name,
        part.plans,
        paper=paper,
        date=date.today().isoformat(),
        left_out=part.faults,
    )
    there = _free(path, replace)
    pages.save(path)
    typer.echo(f"{there} {path}")


def _write(path: Path, text: str, replace: bool) -> None:
    there = _free(path, replace)
    files.write(path, text)
    typer.echo(f"{there} {path}")


def _free(path: Path, replace: bool) -> str:
    """Refuse a name that is taken; say whether a file gets replaced."""
    there = path.exists() or path.is_symlink()
    if there and (not replace or path.is_symlink() or not path.is_file()):
        raise SeatworkError(
            str(path),
            "there is something of that name already",
            "name another folder, or --replace",
        )
    return "Replaced" if there else "Wrote"


def _plan_text(part: Part) -> str:
    with _printed() as out:
        planning.show_part(part)
        for fault in part.faults:
            typer.echo(fault)
    return out.getvalue()


def _inspection_text(found: Inspection) -> str:
    with _printed() as out:
        inspecting.show(found)
        for fault in found.faults:
            typer.echo(fault)
    return out.getvalue()


@contextlib.contextmanager
def _printed() -> Iterator[io.StringIO]:
    """Catch what the commands print, for a file."""
    out = io.StringIO()
    with contextlib.redirect_stdout(out):
        yield out
