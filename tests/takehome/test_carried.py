"""What a page carries is what it asks for: followed from its entries, through every door."""

import ast
import json
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from importlib import import_module
from pathlib import Path

import pytest
import seatwork
from seatwork.takehome.package_block import Files, practice_files, reader_files
from seatwork.takehome.python_blocks import DESK, READER

HOME = Path(seatwork.__file__).parent
ABOVE = ("seatwork.benches", "seatwork.deferred", "seatwork.drawings", "seatwork.live",
         "seatwork.record")  # fmt: skip
"""Rooms that draw, and that of a course: a page has neither pictures to make nor a class."""


def place(module: str) -> Path | None:
    """Return the file of a module of the package; None for what is no module of it."""
    folder = HOME.parent / module.replace(".", "/")
    file, package = folder.with_suffix(".py"), folder / "__init__.py"
    return package if package.is_file() else file if file.is_file() else None


@cache
def homes(module: str) -> dict[str, str]:
    """Return in which module each name lives that a package hands out at its door."""
    names = getattr(import_module(module), "NAMES", {})
    if place(module) != HOME.parent / module.replace(".", "/") / "__init__.py":
        return {}
    return {
        name: inner if inner.startswith("seatwork.") else f"{module}.{inner}"
        for inner, listed in dict(names).items()
        for name in listed.split()
    }


def asked(module: str) -> Iterator[str]:
    """Yield the modules that a module asks for, at its head or anywhere in it."""
    path = place(module)
    assert path is not None
    bound: dict[str, str] = {}
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (one.name for one in node.names)
        elif isinstance(node, ast.ImportFrom) and (node.module or "").startswith("seatwork"):
            for one in node.names:
                full = f"{node.module}.{one.name}"
                yield from (node.module, full, homes(node.module).get(one.name, full))
                bound[one.asname or one.name] = full
    for node in ast.walk(tree):
        if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
            room = bound.get(node.value.id, "")
            if room and place(room):
                yield from (f"{room}.{node.attr}", homes(room).get(node.attr, room))


def reached(entry: str, *more: str) -> set[str]:
    """Return every module of the package that may be loaded, from an entry on."""
    found: set[str] = set()
    waiting = [entry, *more]
    while waiting:
        module = waiting.pop()
        if module in found or module.startswith(ABOVE) or not place(module):
            continue
        found.add(module)
        waiting += [module.rpartition(".")[0], *asked(module)]
    return found


def missing(files: Files, modules: set[str]) -> list[str]:
    """Name the modules that a page has not with it."""
    wanted = {str(place(one).relative_to(HOME.parent).as_posix()): one for one in modules}
    return sorted(module for name, module in wanted.items() if name not in files)


@pytest.mark.slow
def test_a_page_carries_every_module_that_it_may_ask_for() -> None:
    """From the desk and every question type on, and from the reader of entries."""
    types = [
        f"seatwork.questions.{room}.{path.stem}"
        for room in ("bank", "retired")
        for path in (HOME / "questions" / room).glob("[a-z]*.py")
    ]
    wanted = reached(DESK, *types)
    assert {"seatwork.plan.holes", "seatwork.seats.measuring", "seatwork.notes.reading"} <= wanted
    assert missing(practice_files(), wanted) == []
    lacking = missing(reader_files(), reached(READER))
    # a disk's refusal is told by the room of files; the reader opens no file
    assert [one for one in lacking if not one.startswith("seatwork.files")] == []
    assert missing(reader_files(), {DESK}) == [DESK]


FIRST = """
import json, sys
from seatwork.takehome.inside import desk
told = json.loads(desk.call("open", json.dumps({"sheet": "cones"})))
desk.call("check", json.dumps({"id": told["items"][0]["id"], "parts": [".139 in"]}))
print(json.dumps(sorted(sys.modules)))
"""
SLOW_TO_LOAD = ("lark", "seatwork.notes", "seatwork.plan", "seatwork.shop.shop")
TYPES = {"seat_depth", "seat_diameter", "wrong_angle"}
"""What the sheet asks, as its file says."""


@pytest.mark.slow
def test_a_first_verdict_loads_the_sheet_s_own_types_and_no_planner(tmp_path: Path) -> None:
    """What takes longest to start waits until it is asked for."""
    done = subprocess.run(
        [sys.executable, "-c", FIRST], capture_output=True, text=True, check=True, cwd=tmp_path
    )
    loaded = json.loads(done.stdout)
    bank = "seatwork.questions.bank."
    assert {name.removeprefix(bank) for name in loaded if name.startswith(bank)} == TYPES
    slow = tuple(f"{one}." for one in SLOW_TO_LOAD)
    assert [name for name in loaded if f"{name}.".startswith(slow)] == []
    assert len([name for name in loaded if name.startswith("seatwork")]) < 130
