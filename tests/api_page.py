"""Write the API page, ``toolkit/API.md``, and the stubs beside the lazy packages.

Run ``python tests/api_page.py`` after a public name or its docstring has changed; with
``--check`` it writes nothing and names the files that are not as they should be.
"""

import inspect
import re
import sys
from collections.abc import Iterator, Mapping
from importlib import import_module
from pathlib import Path
from typing import Any

import seatwork
from seatwork.doors import full_name

PROJECT = Path(__file__).parents[1]
PACKAGE = PROJECT / "toolkit" / "seatwork"
PAGE = PROJECT / "toolkit" / "API.md"
SECTIONS = ("Parameters", "Returns", "Raises", "Notes", "References")
MADE = "Written by `python tests/api_page.py` from the docstrings; change those.\n"
# how numpy writes the type of an array changes from version to version
ARRAY = re.compile(
    r"numpy\.ndarray\[[^\]]*?(?:\]?, )numpy\.dtype\[numpy\.([a-z]+)\d*(?:\[[^\]]*\])?\]\]"
)


def rooms() -> list[str]:
    """Name the rooms that hand out names, in the order of the front door."""
    return seatwork.ROOMS.split()


def names_of(package: Any) -> dict[str, str]:
    """Return the module of each public name of a package."""
    named: Mapping[str, str] = package.NAMES
    return {name: module for module, said in named.items() for name in said.split()}


def stub(package: Any, inner: tuple[str, ...] = ()) -> str:
    """Return the stub of a package: what editors and type checkers know of its names."""
    homes, name = names_of(package), package.__name__
    lines = [f"from {name} import {room} as {room}" for room in inner]
    order = sorted(homes, key=lambda one: (full_name(name, homes[one]), not one.isupper(), one))
    told = {one: getattr(package, one).__name__ for one in order if is_told(package, one)}
    shown = {one: told.get(one, one) for one in order}
    lines += [
        f"from {full_name(name, homes[one])} import {kind} as {kind}" for one, kind in shown.items()
    ]
    lines += [""] if told else []
    lines += [line for one in told for line in called(one, getattr(package, one))]
    facts = ["", "NAMES: dict[str, str]", "__all__: list[str]"]
    facts += ["__version__: str", "ROOMS: str"] if inner else []
    return "\n".join([*lines, *facts]) + "\n"


def is_told(package: Any, name: str) -> bool:
    """Tell whether a name is a class that says itself how it is called, as a bench does."""
    return "__signature__" in getattr(getattr(package, name), "__dict__", {})


def called(name: str, kind: Any) -> list[str]:
    """Return the lines of a stub for such a class, written as a function."""
    taken = inspect.signature(kind).parameters.values()
    each = [f"    {str(one).partition(' = ')[0]} = ...," for one in taken]
    return [f"def {name}(", "    *,", *each, f") -> {kind.__name__}: ..."]


def entry(name: str, thing: Any) -> Iterator[str]:
    """Yield the lines of the page for one public name."""
    yield f"### `{name}{signature(thing)}`\n"
    text = inspect.getdoc(thing) or ""
    first, _, rest = text.partition("\n")
    yield first + "\n"
    told = sections(rest)
    if told:
        yield "<details><summary>details</summary>\n"
        yield f"```text\n{told}\n```\n"
        yield "</details>\n"


def signature(thing: Any) -> str:
    """Return how a thing is called; nothing for what is not called."""
    if not callable(thing):
        return ""
    try:
        said = ARRAY.sub(r"NDArray[\1]", str(inspect.signature(thing)))
    except (TypeError, ValueError):
        return ""
    return said.partition(" -> ")[0] if inspect.isclass(thing) else said


def sections(rest: str) -> str:
    """Return the sections of a docstring that say units, errors and sources."""
    kept: list[str] = []
    lines = rest.splitlines()
    starts = [n for n, line in enumerate(lines) if n + 1 < len(lines) and is_rule(lines[n + 1])]
    for start, end in zip(starts, [*starts[1:], len(lines)][: len(starts)], strict=True):
        if lines[start] in SECTIONS:
            kept += lines[start:end]
    return "\n".join(kept).strip()


def is_rule(line: str) -> bool:
    """Tell whether a line underlines the heading of a section."""
    return bool(line) and set(line) == {"-"}


def page() -> str:
    """Return the API page."""
    parts = ["# The names of seatwork\n", MADE]
    parts.append(
        "`import seatwork as sw` gives the everyday names: "
        + ", ".join(f"`sw.{name}`" for name in sorted(names_of(seatwork)))
        + ".\n"
    )
    for room in rooms():
        package = import_module(f"seatwork.{room}")
        parts.append(f"## {room}\n")
        parts.append(inspect.getdoc(package).splitlines()[0] + "\n")
        for name in package.__all__:
            parts += entry(name, getattr(package, name))
    return "\n".join(parts)


def files() -> dict[Path, str]:
    """Return every file this writes, with what belongs in it."""
    found = {PACKAGE / "__init__.pyi": stub(seatwork, tuple(rooms())), PAGE: page()}
    for room in rooms():
        found[PACKAGE / room / "__init__.pyi"] = stub(import_module(f"seatwork.{room}"))
    return found


def main() -> int:
    """Write the files, or name those that are not current."""
    stale = [
        path
        for path, text in files().items()
        if not path.is_file() or path.read_text(encoding="utf-8") != text
    ]
    for path in stale:
        if "--check" in sys.argv:
            place = path.relative_to(PROJECT).as_posix()
            sys.stdout.write(f"{place} is not current: run python tests/api_page.py\n")
        else:
            path.write_text(files()[path], encoding="utf-8")
    return bool(stale) and "--check" in sys.argv


if __name__ == "__main__":
    sys.exit(main())
