"""Imports run one way only, as the table in DEVELOPERS.md says; each library has its rooms."""

import ast
import inspect
import pkgutil
import re
import sys
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from pathlib import Path

import pytest
import seatwork

PROJECT = Path(__file__).parents[1]
PACKAGE = PROJECT / "toolkit" / "seatwork"
HEAD = "| room | may import | libraries |"


@dataclass(frozen=True, kw_only=True)
class Room:
    """One line of the table."""

    below: frozenset[str]
    libraries: frozenset[str]


def table() -> dict[str, Room]:
    """Read the table of rooms from DEVELOPERS.md."""
    lines = (PROJECT / "DEVELOPERS.md").read_text(encoding="utf-8").splitlines()
    found: dict[str, Room] = {}
    for line in lines[lines.index(HEAD) + 2 :]:
        if not line.startswith("|"):
            break
        name, below, libraries = (cell.strip() for cell in line.strip("|").split("|"))
        found[name] = Room(below=rooms(below, found), libraries=words(libraries))
    return found


def words(text: str) -> frozenset[str]:
    """Read the names in a cell; a dash stands for none."""
    return frozenset(text.split()) - {"-"}


def rooms(text: str, above: dict[str, Room]) -> frozenset[str]:
    """Read the cell of rooms; `all` and `all of the above` stand for the lines read so far."""
    return frozenset(above) if text.startswith("all") else words(text)


@cache
def parsed(path: Path) -> ast.Module:
    """Parse a file, once."""
    return ast.parse(path.read_text(encoding="utf-8"))


def imported(path: Path) -> set[str]:
    """List every module a file imports, inside functions too."""
    found = set()
    for node in ast.walk(parsed(path)):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: imports are absolute here"
            inner = {f"seatwork.{alias.name}" for alias in node.names}
            outer = {str(node.module), *(f"{node.module}.{alias.name}" for alias in node.names)}
            found |= inner if node.module == "seatwork" else outer
    return found


ROOMS = table()
FILES = sorted(PACKAGE.rglob("*.py"))
# facts of the package itself, not rooms
FACTS = {"seatwork", "seatwork.__version__"}
# what every package's first file hands its names out with
FACE = {"seatwork.doors", "seatwork.doors.doors"}
# the only ways up: methods whose work is done in a room above, and whose they are
UPWARD = {
    "seatwork.cards:job_card": "Plan",
    "seatwork.inspection:inspect_parts": "Plan",
    "seatwork.plan:make_plan": "Callout",
}
# wrong on purpose: the trigonometry of a learner's slips
SLIPS = "questions/shared/wrong_trig.py"


def room_of(path: Path) -> str:
    """Name the room a file lies in; the package's own first file lies in none."""
    return path.relative_to(PACKAGE).parts[0].removesuffix(".py")


def faults(room: str, modules: set[str]) -> list[str]:
    """Name the imports a room may not have."""
    allowed = ROOMS[room].below | {room}
    wrong = []
    for module in sorted(modules - FACTS):
        top, _, rest = module.partition(".")
        if top == "seatwork" and rest.split(".")[0] not in allowed:
            wrong.append(f"{room} may not import {module}")
    others = {module.partition(".")[0] for module in modules} - sys.stdlib_module_names
    strangers = sorted(others - ROOMS[room].libraries - {"seatwork"})
    return wrong + [f"{room} is no home of {library}" for library in strangers]


def test_every_room_is_in_the_table() -> None:
    """Each folder and module of the package has a line, except the package's first file."""
    assert {room_of(path) for path in FILES} - {"__init__"} <= set(ROOMS)


def test_the_first_file_imports_nothing() -> None:
    """``import seatwork`` loads no room."""
    assert imported(PACKAGE / "__init__.py") == FACE


@pytest.mark.parametrize("room", sorted({room_of(path) for path in FILES} - {"__init__"}))
def test_imports_run_one_way(room: str) -> None:
    """No file of the room imports a room or a library that its line does not name."""
    wrong = {
        path.name: faults(room, imported(path) - (FACE if path.name == "__init__.py" else set()))
        for path in FILES
        if room_of(path) == room
    }
    assert not {name: fault for name, fault in wrong.items() if fault}


def test_the_ways_up_are_the_three_that_are_named() -> None:
    """A door leads up only where it is written down, to a function that takes the object first."""
    found = {
        str(node.args[0].value)
        for path in FILES
        for node in ast.walk(parsed(path))
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "door"
        if isinstance(node.args[0], ast.Constant)
    }
    assert found == set(UPWARD)
    for target, kind in UPWARD.items():
        module, _, name = target.partition(":")
        function = getattr(import_module(module), name)
        first = next(iter(inspect.signature(function).parameters.values()))
        assert kind in re.findall(r"\w+", str(first.annotation)), target


def test_no_public_name_is_a_module() -> None:
    """A name that is also a module of its package would be hidden once the module is loaded."""
    for room in ("", *(f".{room}" for room in seatwork.ROOMS.split())):
        package = import_module(f"seatwork{room}")
        modules = {found.name for found in pkgutil.iter_modules(package.__path__)}
        names = {name for said in package.NAMES.values() for name in said.split()}
        assert not names & modules, room


def test_the_table_itself_has_no_circle() -> None:
    """A room names only rooms of lines above its own."""
    names = list(ROOMS)
    for place, name in enumerate(names):
        assert ROOMS[name].below <= set(names[:place]), name


def test_formulas_know_no_tables_units_or_each_other() -> None:
    """``seats`` and ``cutting`` may import the error and the refusals alone."""
    assert ROOMS["seats"].below == ROOMS["cutting"].below == {"errors", "checks"}


@pytest.mark.parametrize(
    ("room", "module", "fault"),
    [
        ("seats", "seatwork.units", "seats may not import seatwork.units"),
        ("seats", "pint", "seats is no home of pint"),
        ("marking", "seatwork.benches.bench", "marking may not import seatwork.benches.bench"),
        ("cutting", "seatwork.seats", "cutting may not import seatwork.seats"),
    ],
)
def test_a_wrong_import_is_found(room: str, module: str, fault: str) -> None:
    """The check refuses imports that the design rules out."""
    assert faults(room, {module}) == [fault]


def test_pyplot_is_nowhere() -> None:
    """No file of the package imports matplotlib's pyplot, whose figures are global."""
    assert not [path for path in FILES if "matplotlib.pyplot" in imported(path)]


def test_no_formula_above_the_formula_rooms() -> None:
    """A ``tan`` in a drawing, question, bench or card is a formula in the wrong room."""
    above = {"drawings", "questions", "benches", "cards", "worksheet", "marking", "cli"}
    users = [
        path.relative_to(PACKAGE).as_posix()
        for path in FILES
        if room_of(path) in above and "tan" in called(path)
    ]
    assert set(users) <= {SLIPS}


def called(path: Path) -> set[str]:
    """List the names a file calls, without what they hang on."""
    calls = [n.func for n in ast.walk(parsed(path)) if isinstance(n, ast.Call)]
    return {c.attr if isinstance(c, ast.Attribute) else getattr(c, "id", "") for c in calls}
