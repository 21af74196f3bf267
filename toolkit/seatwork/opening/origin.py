"""Where the lessons come from: the project folder, or the copy packed with the package."""

from collections.abc import Iterator
from pathlib import Path

import seatwork
from seatwork.arguments import explained
from seatwork.shop.folder import package_text
from seatwork.shop.house import house_rules

PACKAGE = Path(seatwork.__file__).resolve().parent
WORDING, GLOSSARY = "wording.toml", "glossary.toml"


@explained
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


@explained
def shop_defaults(package: Path = PACKAGE) -> Path:
    """Find the folder of the shop's default lists; package data in every install."""
    return package / "shop" / "defaults"


def originals() -> Iterator[tuple[str, bytes]]:
    """Yield every file a workbook gets: its place in the workbook, and its content."""
    for name in ("notebooks", "exercises"):
        yield from _files(source(), name)
    for name, text in _shop_files().items():
        yield f"shop/{name}", text.encode()


def _files(home: Path, name: str) -> Iterator[tuple[str, bytes]]:
    for path in sorted((home / name).rglob("*")):
        inside = path.relative_to(home)
        if path.is_file() and not any(part[0] in "._" for part in inside.parts):
            yield inside.as_posix(), path.read_bytes()


def _shop_files() -> dict[str, str]:
    lists = sorted(shop_defaults().glob("*.csv"))
    return {
        house_rules.FILE: house_rules.template(),
        **{name: package_text(name) for name in (WORDING, GLOSSARY)},
    } | {path.name: path.read_text(encoding="utf-8") for path in lists}
