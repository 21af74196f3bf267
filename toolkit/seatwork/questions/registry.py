"""All question types: those of the package and an instructor's own."""

import importlib
import pkgutil
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from types import ModuleType

from seatwork.errors import SeatworkError
from seatwork.questions import bank, retired
from seatwork.questions.type.question import Question
from seatwork.questions.type.running import fingerprint, run_file

DRAWINGS = "drawings"
"""Folder of the drawings beside an instructor's own types."""


@cache
def all_types() -> dict[str, type[Question]]:
    """Return the question types of the package by their id, in the order of their files."""
    return _types_of(bank)


@cache
def retired_types() -> dict[str, type[Question]]:
    """Return the types that no sheet of the package asks any more, by their id.

    Papers handed out before are asked and marked by them, and so are sheets of a workbook that
    still name them.
    """
    return _types_of(retired)


def is_ours(name: str) -> bool:
    """Tell whether the package has a type of that name, asked today or before."""
    return name in _ids(bank) or name in _ids(retired)


def _types_of(room: ModuleType) -> dict[str, type[Question]]:
    return {name: _type_of(room, name) for name in _ids(room)}


@cache
def _ids(room: ModuleType) -> tuple[str, ...]:
    """Return the ids of a room's types: a file is named as its type, with underscores."""
    modules = sorted(module.name for module in pkgutil.iter_modules(room.__path__))
    return tuple(module.replace("_", "-") for module in modules)


@cache
def _type_of(room: ModuleType, name: str) -> type[Question]:
    """Return one type of a room, of those in `_ids`; the others are not loaded for it."""
    return defined_in(importlib.import_module(f"{room.__name__}.{name.replace('-', '_')}"))


def named(name: str, own: dict[str, type[Question]] | None = None) -> type[Question]:
    """Return the question type called `name`.

    Raises
    ------
    SeatworkError
        If there is none.
    """
    kind = (own or {}).get(name)
    if kind is not None:
        return kind
    for room in (bank, retired):
        if name in _ids(room):
            return _type_of(room, name)
    raise SeatworkError(name, "there is no question type of that name", "check its spelling")


def defined_in(module: ModuleType, file: str = "") -> type[Question]:
    """Return the one question type that `module` defines; errors call it `file`."""
    kinds = [
        item
        for item in vars(module).values()
        if isinstance(item, type)
        and issubclass(item, Question)
        and item.__module__ == module.__name__
    ]
    if len(kinds) != 1:
        raise SeatworkError(
            file or module.__name__,
            f"it defines {len(kinds)} question types",
            "define one type in a file",
        )
    return kinds[0]


class NotAllowed(SeatworkError):
    """A question file that may not be run: its fingerprint is not on the course's list."""


def own_types(
    folder: Path,
    faults: list[SeatworkError] | None = None,
    allowed: Mapping[str, str] | None = None,
) -> dict[str, type[Question]]:
    """Return the question types an instructor added, by their id.

    Parameters
    ----------
    folder : Path
        A folder that the instructor named; its files are run.
    faults : list of SeatworkError, optional
        Where the faults of files go that are left out; the others come back. Without it the
        first fault is raised.
    allowed : mapping of str to str, optional
        Fingerprints of the files that may be run, each with its name; a type whose file, or
        the drawing beside it, is not among them is left out. Without it all are run.
    """
    found: dict[str, type[Question]] = {}
    for path in sorted(folder.glob("*.py")):
        try:
            refuse_others(path, allowed)
            kind = load(path)
            refuse_others(drawing_file(path.parent, kind.id), allowed)
            if is_ours(kind.id) or kind.id in found:
                place = f"{path.name}, {kind.id}"
                raise SeatworkError(place, "two question types have this name", "rename yours")
        except SeatworkError as error:
            if faults is None:
                raise
            faults.append(error)
        else:
            found[kind.id] = kind
    return found


def drawing_file(folder: Path, name: str) -> Path:
    """Return where the drawing of an instructor's own type lies, if it has one."""
    return folder / DRAWINGS / f"{name.replace('-', '_')}.py"


def listed_name(path: Path) -> str:
    """Return what a question file is called on a list; a drawing with its folder."""
    return f"{DRAWINGS}/{path.name}" if path.parent.name == DRAWINGS else path.name


def refuse_others(path: Path, allowed: Mapping[str, str] | None) -> None:
    """Refuse a file whose fingerprint is not among those that may be run.

    Parameters
    ----------
    path : Path
        The file; one that is not there is no matter.
    allowed : mapping of str to str, optional
        Names of files by fingerprint; None allows all.

    Raises
    ------
    NotAllowed
        If it may not be run.
    """
    if allowed is None or not path.is_file() or fingerprint(path) in allowed:
        return
    changed = listed_name(path) in allowed.values()
    fault = "it was changed since it was allowed" if changed else "it is not allowed in this course"
    remedy = f"look it through, then run: seatwork question allow {path}"
    raise NotAllowed(listed_name(path), fault, remedy)


def load(path: Path) -> type[Question]:
    """Return the question type that an instructor's file defines; the file is run.

    Raises
    ------
    SeatworkError
        If there is no such file, or running it fails in any way.
    """
    module = run_file(path, "seatwork_own_questions")
    kind = defined_in(module, path.name)
    kind.folder = path.resolve().parent
    return kind
