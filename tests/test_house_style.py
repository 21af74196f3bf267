"""House style that a machine can hold: sizes, names, docstrings, units, nothing of one place."""

import ast
import inspect
import re
import subprocess
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

pytestmark = pytest.mark.slow

PROJECT = Path(__file__).parents[1]
PACKAGE = PROJECT / "toolkit" / "seatwork"
MODULES = sorted(PACKAGE.rglob("*.py"))
TESTS = sorted((PROJECT / "tests").rglob("*.py"))
MOST_LINES = 400
NAMELESS = {"utils.py", "helpers.py", "common.py", "misc.py"}
ENTRY = re.compile(r"^(?P<names>\w[\w, ]*) : (?P<kind>.+)$")
MEASURED = re.compile(r"\bfloat\b|\bndarray\b(?! of int)")
UNIT = re.compile(r"\[[^\]]+\]")
TEXT_FILES = {".py", ".md", ".toml", ".csv", ".cfg", ".ipynb", ".txt", ".js", ".css", ""}
# written in pieces, so that this file does not hold what it looks for
PLACES = ["/" + place for place in ("work/", "root/", "tmp/", "home/", "Users/", "opt/", "mnt/")]
REGISTRIES = [
    ".".join(parts)
    for parts in (
        ("pypi", "org"),
        ("pythonhosted", "org"),
        ("npmjs", "com"),
        ("npmjs", "org"),
        ("anaconda", "org"),
        ("conda", "io"),
        ("crates", "io"),
    )
]


def place(path: Path) -> str:
    """Name a file as people do."""
    return path.relative_to(PROJECT).as_posix()


@cache
def tree(path: Path) -> ast.Module:
    """Parse a module."""
    return ast.parse(path.read_text(encoding="utf-8"))


def public(path: Path) -> Iterator[ast.FunctionDef | ast.ClassDef]:
    """Yield the functions, methods and classes that others may call."""
    stack = list(tree(path).body)
    while stack:
        node = stack.pop()
        if isinstance(node, ast.FunctionDef | ast.ClassDef) and not node.name.startswith("_"):
            yield node
            stack += node.body if isinstance(node, ast.ClassDef) else []


def described(docstring: str, section: str) -> dict[str, str]:
    """Read a numpydoc section: each entry's line with the words below it."""
    lines = inspect.cleandoc(docstring).splitlines()
    rules = [n for n, line in enumerate(lines) if line and set(line) == {"-"}]
    begin = next((n for n in rules if lines[n - 1] == section), None)
    if begin is None:
        return {}
    end = next((n - 1 for n in rules if n > begin), len(lines))
    entries: dict[str, str] = {}
    for line in lines[begin + 1 : end]:
        if line and not line.startswith(" "):
            entries[line] = ""
        elif entries:
            entries[list(entries)[-1]] += f" {line.strip()}"
    return entries


def test_modules_stay_small() -> None:
    """No module of the package has 400 lines."""
    sizes = {place(path): len(path.read_text("utf-8").splitlines()) for path in MODULES}
    assert {name: size for name, size in sizes.items() if size >= MOST_LINES} == {}


def test_modules_have_names_that_say_something() -> None:
    """There is no utils.py and no helpers.py, and names are plain lower case."""
    assert not [path for path in [*MODULES, *TESTS] if path.name in NAMELESS]
    assert not [path for path in MODULES if not re.fullmatch(r"[a-z0-9_]+\.py", path.name)]


def test_what_others_may_call_says_what_it_does() -> None:
    """Module, public classes and public functions have a docstring."""
    assert [place(path) for path in MODULES if not ast.get_docstring(tree(path))] == []
    bare = [
        f"{place(path)}: {node.name}"
        for path in MODULES
        for node in public(path)
        if not ast.get_docstring(node)
    ]
    assert bare == []


def documented() -> Iterator[tuple[str, ast.FunctionDef | ast.ClassDef, str, str]]:
    """Yield every documented parameter: where, of what, its line, the words below it."""
    for path in MODULES:
        for node in public(path):
            told = described(ast.get_docstring(node) or "", "Parameters")
            for entry, words in told.items():
                yield f"{place(path)}: {node.name}", node, entry, words


def test_every_measured_argument_has_its_unit() -> None:
    """A float among the documented parameters has its unit in brackets, `[-]` for a bare number."""
    missing = [
        f"{where}: {entry}"
        for where, _, entry, words in documented()
        if (found := ENTRY.match(entry)) and MEASURED.search(found["kind"])
        if not UNIT.search(words)
    ]
    assert missing == []


def test_every_documented_argument_is_there() -> None:
    """A function's docstring names no parameter that the function does not take."""
    strangers = []
    for where, node, entry, _ in documented():
        if isinstance(node, ast.FunctionDef):
            taken = {arg.arg for arg in ast.walk(node.args) if isinstance(arg, ast.arg)}
            named = re.findall(r"\w+", entry.partition(" : ")[0])
            strangers += [f"{where}: {name}" for name in named if name not in taken]
    assert strangers == []


def test_every_test_states_a_fact() -> None:
    """Each test has a docstring, and it ends as a sentence does."""
    bare = [
        f"{place(path)}: {node.name}"
        for path in TESTS
        for node in ast.walk(tree(path))
        if isinstance(node, ast.FunctionDef) and node.name.startswith("test_")
        if not (ast.get_docstring(node) or "").rstrip().endswith((".", "?"))
    ]
    assert bare == []


def stored() -> list[Path]:
    """List the text files of the project as git would store them, or as they were unpacked."""
    ask = ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
    told = subprocess.run(ask, cwd=PROJECT, capture_output=True, text=True)
    if told.returncode == 0 and told.stdout:
        paths = [PROJECT / name for name in told.stdout.split("\0") if name]
    else:
        homes = ("toolkit", "tests", "notebooks", "exercises")
        paths = [path for home in homes for path in (PROJECT / home).rglob("*")]
    return [path for path in paths if path.is_file() and path.suffix in TEXT_FILES]


def holders(words: list[str]) -> list[str]:
    """Name the files that hold one of the words, with the word."""
    return [
        f"{place(path)}: {word}"
        for path in stored()
        for word in words
        if word in path.read_text(encoding="utf-8", errors="replace")
    ]


def test_no_file_holds_a_registrys_address() -> None:
    """Where packages come from is the affair of whoever installs."""
    assert holders(REGISTRIES) == []


def test_no_file_holds_a_path_of_one_machine() -> None:
    """Nothing depends on, or tells of, the folder it was written in."""
    assert holders(PLACES) == []


def test_the_look_sees_the_whole_project() -> None:
    """The files looked at include this one and the package's first."""
    assert {Path(__file__), PACKAGE / "__init__.py"} <= set(stored())


def test_the_inch_stands_in_one_place() -> None:
    """No module but ``quantities`` writes what an inch is; examples in docstrings may."""
    users = [
        place(path)
        for path in MODULES
        if path.name != "quantities.py"
        for node in ast.walk(tree(path))
        if isinstance(node, ast.Constant) and node.value in (25.4, "25.4")
    ]
    assert users == []
