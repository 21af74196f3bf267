"""All question types: those of the package and an instructor's own."""

import importlib
import importlib.util
import pkgutil
from functools import cache
from pathlib import Path
from types import ModuleType

from seatwork.errors import SeatworkError
from seatwork.questions import bank
from seatwork.questions.type.question import Question


@cache
def all_types() -> dict[str, type[Question]]:
    """Return the question types of the package by their id, in the order of their files."""
    found: dict[str, type[Question]] = {}
    for module in sorted(pkgutil.iter_modules(bank.__path__), key=lambda item: item.name):
        kind = defined_in(importlib.import_module(f"{bank.__name__}.{module.name}"))
        found[kind.id] = kind
    return found


def named(name: str, own: dict[str, type[Question]] | None = None) -> type[Question]:
    """Return the question type called `name`.

    Raises
    ------
    SeatworkError
        If there is none.
    """
    kind = (own or {}).get(name) or all_types().get(name)
    if kind is None:
        raise SeatworkError(name, "there is no question type of that name", "check its spelling")
    return kind


def defined_in(module: ModuleType) -> type[Question]:
    """Return the one question type that `module` defines."""
    kinds = [
        item
        for item in vars(module).values()
        if isinstance(item, type)
        and issubclass(item, Question)
        and item.__module__ == module.__name__
    ]
    if len(kinds) != 1:
        raise SeatworkError(
            module.__name__, f"it defines {len(kinds)} question types", "define one type in a file"
        )
    return kinds[0]


def own_types(folder: Path) -> dict[str, type[Question]]:
    """Return the question types an instructor added, by their id.

    Parameters
    ----------
    folder : Path
        The folder ``questions/`` of the instructor's workbook; its files are run.
    """
    found: dict[str, type[Question]] = {}
    for path in sorted(folder.glob("*.py")):
        kind = load(path)
        if kind.id in all_types() or kind.id in found:
            raise SeatworkError(kind.id, "two question types have this name", "rename yours")
        found[kind.id] = kind
    return found


def load(path: Path) -> type[Question]:
    """Return the question type that an instructor's file defines."""
    spec = importlib.util.spec_from_file_location(f"seatwork_own_questions.{path.stem}", path)
    if spec is None or spec.loader is None:
        raise SeatworkError(str(path.name), "that is no Python file", "name it with .py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    kind = defined_in(module)
    kind.folder = path.parent
    return kind
