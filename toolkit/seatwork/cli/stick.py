"""``seatwork stick``: a copy for rooms without network and without rights."""

import platform
import sys
from pathlib import Path
from typing import Annotated

import typer

from seatwork.school.stick import make_stick
from seatwork.school.stick_targets import UNTRIED

HERE = {"Linux": "linux", "Windows": "windows", "Darwin": "mac"}


def stick(
    folder: Annotated[Path, typer.Argument(help="The stick, or a folder to copy to it.")],
    computers: Annotated[
        list[str] | None,
        typer.Option("--for", help="linux, windows, mac or mac-intel; give it once for each."),
    ] = None,
    pythons: Annotated[
        list[str] | None,
        typer.Option("--python", help="Version of Python there, such as 3.12; once for each."),
    ] = None,
) -> None:
    """Gather wheels, an install script, lessons and sheets; this needs the network once.

    Example: seatwork stick seatwork-stick --for windows --for linux --python 3.12
    """
    kinds = computers or [HERE.get(platform.system(), "linux")]
    versions = pythons or [f"{sys.version_info.major}.{sys.version_info.minor}"]
    page = make_stick(folder, kinds, versions, told=typer.echo)
    typer.echo(f"Written: {page}")
    untried = sorted(set(kinds) & set(UNTRIED))
    if untried:
        typer.echo(f"Nobody has tried such a stick on {', '.join(untried)} yet: try it first.")
    typer.echo(f'Look it over where it lies: seatwork doctor --stick "{folder}"')
