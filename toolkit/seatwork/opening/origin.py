"""Where the lessons come from: the project folder, or the copy packed with the package."""

from collections.abc import Iterator
from pathlib import Path

import seatwork

PACKAGE = Path(seatwork.__file__).resolve().parent


def source(package: Path = PACKAGE) -> Path:
    """Find the folder that holds ``notebooks/`` and ``exercises/`` as delivered.

    Parameters
    ----------
    package : Path
        Folder of the installed package.

    Returns
    -------
    Path
        The project folder when the package runs from it, else ``workbook`` in the package.
    """
    if len(package.parents) > 1:
        project = package.parents[1]
        if (project / "pyproject.toml").is_file() and (project / "notebooks").is_dir():
            return project
    return package / "workbook"


def shop_defaults(package: Path = PACKAGE) -> Path:
    """Find the folder of the shop's default lists; package data in every install."""
    return package / "shop" / "defaults"


def originals() -> Iterator[tuple[str, Path]]:
    """Yield every file a workbook gets: its place in the workbook, and the original."""
    homes = {
        "notebooks": source() / "notebooks",
        "exercises": source() / "exercises",
        "shop": shop_defaults(),
    }
    for place, home in homes.items():
        for path in sorted(home.rglob("*")):
            inside = path.relative_to(home)
            if path.is_file() and not any(part[0] in "._" for part in inside.parts):
                yield f"{place}/{inside.as_posix()}", path
