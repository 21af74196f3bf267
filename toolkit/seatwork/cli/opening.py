"""``seatwork open`` and ``seatwork doctor``."""

from collections.abc import Iterable
from pathlib import Path
from typing import Annotated, NoReturn

import typer

from seatwork.opening import Delivery, deliver
from seatwork.opening.checked import Check
from seatwork.shop import find
from seatwork.shop.marker import name_in_marker

DEFAULT = Path("seatwork-workbook")
MANY = 5


def open_workbook(
    folder: Annotated[
        Path | None,
        typer.Argument(help=f"The workbook folder.  [default: {DEFAULT}]", show_default=False),
    ] = None,
    no_browser: Annotated[
        bool, typer.Option("--no-browser", help="Print the address and open no web browser.")
    ] = False,
    port: Annotated[
        int | None, typer.Option(min=1, max=65535, help="Serve on this port and no other.")
    ] = None,
    hand_in: Annotated[
        str, typer.Option(help="Folder that the button Hand in copies to, such as a share.")
    ] = "",
    language: Annotated[
        str, typer.Option(help="Language that questions are asked in first: en or es.")
    ] = "",
) -> None:
    """Make the workbook folder, or bring it up to date, and open it in JupyterLab."""
    from seatwork.marking.languages import translator
    from seatwork.opening import lab

    if language:
        translator(language)  # refuses a language that is not there, before anything is written
    delivery = deliver(folder or find() or DEFAULT)
    if hand_in:
        place = str(Path(hand_in).expanduser().absolute())
        name_in_marker(delivery.folder, "hand_in", place)
    if language:
        name_in_marker(delivery.folder, "language", language)
    report(delivery)
    if lab.is_root():
        typer.secho(
            "Warning: this runs as root, so anything run in the notebooks does too. "
            "That is fine in a container; elsewhere use an account of your own.",
            err=True,
            fg=typer.colors.YELLOW,
        )
    server = lab.prepare(delivery.folder, port=port, browser=not no_browser)
    lab.serve(server, report_address)


def report_address(address: str) -> None:
    """Say where JupyterLab answers, and how to stop it."""
    typer.echo(f"JupyterLab is ready: {address}")
    typer.echo("Leave this window open while you work; Ctrl+C here stops it.")


def report(delivery: Delivery) -> None:
    """Say what was laid out, and which files were left alone because the reader changed them."""
    typer.echo(f"Workbook: {delivery.folder}")
    if delivery.updated:
        typer.echo(f"Brought up to date: {listed(delivery.updated)}.")
    if delivery.left_alone:
        typer.echo(f"You changed these, so they stay as they are: {listed(delivery.left_alone)}.")
    if delivery.moved:
        typer.echo(f"These pages have a new number: {listed(_moves(delivery.moved))}.")
    if delivery.kept_beside:
        typer.echo(
            "These pages have a new number, and you changed the former file, so it stays beside "
            f"the new one: {listed(_moves(delivery.kept_beside))}."
        )


def _moves(pairs: tuple[tuple[str, str], ...]) -> tuple[str, ...]:
    """Name former and new file of each page."""
    return tuple(f"{Path(former).stem}, now {Path(now).stem}" for former, now in pairs)


def listed(places: tuple[str, ...]) -> str:
    """Name a few files and count the rest."""
    more = len(places) - MANY
    return ", ".join(places[:MANY]) + (f" and {more} more" if more > 0 else "")


def doctor(
    folder: Annotated[
        Path | None, typer.Argument(help="The workbook folder.", show_default=False)
    ] = None,
    hub: Annotated[
        Path | None, typer.Option("--hub", help="Look at a hub instead: the recipe's folder.")
    ] = None,
    stick: Annotated[
        Path | None, typer.Option("--stick", help="Look at a stick instead: its folder.")
    ] = None,
) -> None:
    """Look the installation over; each fault is told with its fix."""
    if stick is not None:
        from seatwork.school import stick_look

        _tell(stick_look.examine(stick))
    if hub is not None:
        from seatwork.school import hub_look

        _tell(hub_look.examine(hub))
    from seatwork.opening.doctor import examine

    _tell(examine(folder or find() or DEFAULT))


def _tell(checks: Iterable[Check]) -> NoReturn:
    """Tell each check, and end with 1 if there is something to mend."""
    faults = 0
    for check in checks:
        typer.echo(f"{'ok   ' if check.passed else 'FAULT'}  {check.name}: {check.found}")
        if not check.passed:
            faults += 1
            typer.echo(f"       fix: {check.fix}.")
    typer.echo("All is well." if not faults else f"To mend: {faults}.")
    raise typer.Exit(min(faults, 1))
