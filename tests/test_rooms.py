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

pytestmark = pytest.mark.slow

PROJECT = Path(__file__).parents[1]
PACKAGE = PROJECT / "toolkit" / "seatwork"
HEAD = "| room | may import | libraries |"
INNER_HEAD = "| inside | first to last |"


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


def inner_table() -> dict[str, list[list[str]]]:
    """Read the order inside rooms from DEVELOPERS.md: groups of files or folders."""
    lines = (PROJECT / "DEVELOPERS.md").read_text(encoding="utf-8").splitlines()
    found: dict[str, list[list[str]]] = {}
    for line in lines[lines.index(INNER_HEAD) + 2 :]:
        if not line.startswith("|"):
            break
        room, order = (cell.strip() for cell in line.strip("|").split("|"))
        found[room] = [group.split() for group in order.split("·")]
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


INNER = inner_table()


def inner_imports(room: str) -> dict[str, set[str]]:
    """Return, by its place in a room, which other files of the room each file imports."""
    files = {
        "seatwork." + path.relative_to(PACKAGE).with_suffix("").as_posix().replace("/", "."): path
        for path in FILES
        if room_of(path) == room and path.name != "__init__.py"
    }
    return {
        within(name): {within(one) for one in imported(path) & files.keys() - {name}}
        for name, path in files.items()
    }


def within(module: str) -> str:
    """Return the place of a module inside its room."""
    return module.split(".", 2)[2] if module.count(".") > 1 else module


def circle(imports: dict[str, set[str]]) -> list[str]:
    """Name the files that lie in circles, or hang on one; none if there is no circle."""
    left = dict(imports)
    while ready := [name for name, wanted in left.items() if not wanted & left.keys()]:
        for name in ready:
            del left[name]
    return sorted(left)


def uphill(imports: dict[str, set[str]], order: list[list[str]]) -> list[str]:
    """Name the files that no group has, and imports of a group that does not stand before."""
    groups = {name: place for place, group in enumerate(order) for name in group}
    ranks = {name: groups.get(name.partition(".")[0]) for name in imports}
    lost = [f"{name} stands in no group" for name, rank in ranks.items() if rank is None]
    return lost + [
        f"{name} imports {other}"
        for name, wanted in imports.items()
        for other in sorted(wanted)
        if ranks[name] is not None and ranks[other] is not None and is_uphill(name, other, ranks)
    ]


def is_uphill(name: str, other: str, ranks: dict[str, int | None]) -> bool:
    """Tell whether one file may not import another: of a later group, or its equal."""
    same_folder = "." in name and name.partition(".")[0] == other.partition(".")[0]
    first, second = ranks[name] or 0, ranks[other] or 0
    return second > first or (second == first and not same_folder)


@pytest.mark.parametrize("room", INNER)
def test_imports_run_one_way_inside_a_room(room: str) -> None:
    """Each file of the room stands in a group and imports only from groups before its own."""
    assert uphill(inner_imports(room), INNER[room]) == []


@pytest.mark.parametrize("room", sorted({room_of(path) for path in FILES} - {"__init__"}))
def test_no_circle_among_the_files_of_a_room(room: str) -> None:
    """No file comes back to itself by imports, ``TYPE_CHECKING`` ones counted."""
    assert not circle(inner_imports(room))


def test_a_circle_and_an_arrow_uphill_are_found() -> None:
    """Both checks see what they are made for."""
    ring = {"a": {"b"}, "b": {"c"}, "c": {"a"}, "d": set()}
    assert circle(ring) == ["a", "b", "c"]
    tree = {"low": {"page.view"}, "page.view": {"page.rows"}, "page.rows": set(), "odd": set()}
    order = [["low"], ["page"]]
    assert uphill(tree, order) == ["odd stands in no group", "low imports page.view"]


def test_no_bench_imports_another() -> None:
    """A file of the bank imports only files of its own bench."""
    for name, wanted in inner_imports("benches").items():
        if name.startswith("bank."):
            own = name.rpartition("_")[0]
            assert {one for one in wanted if one.startswith("bank.")} <= {
                one for one in wanted if one.rpartition("_")[0] == own
            }, name


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
    """``seats`` and ``cutting`` may import the error, the refusals and what an inch is alone."""
    assert ROOMS["seats"].below == ROOMS["cutting"].below == {"errors", "quantities", "checks"}


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
