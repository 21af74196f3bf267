"""The package as others get it: every kind of install holds and finds the same lessons."""

import ast
import json
import os
import re
import subprocess
import sys
import tarfile
import tomllib
import zipfile
from collections.abc import Iterable, Iterator
from importlib.metadata import packages_distributions, requires
from pathlib import Path

import pytest

pytestmark = pytest.mark.slow

PROJECT = Path(__file__).parents[1]
PACKAGE = PROJECT / "toolkit" / "seatwork"
KINDS = ("wheel", "sdist", "editable")
# leave the tests' own seatwork out: only the standard library and the install looked at
LOOK = """
import json, site, sys
site.addsitedir(sys.argv[1])
from pathlib import Path
import seatwork
from seatwork import opening
done = opening.deliver(Path(sys.argv[2]))
print(json.dumps({"package": seatwork.__file__, "source": str(opening.source()),
                  "added": done.added}))
"""


def run(*command: object, folder: Path) -> str:
    """Run a command and return what it prints; its complaint, should it fail."""
    done = subprocess.run(list(map(str, command)), cwd=folder, capture_output=True, text=True)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


def build(kind: str, project: Path, into: Path) -> Path:
    """Build a "wheel", "sdist" or "editable" of a project with the tools at hand, offline."""
    script = (
        f"import sys; from hatchling.build import build_{kind}; print(build_{kind}(sys.argv[1]))"
    )
    into.mkdir(parents=True, exist_ok=True)
    return into / run(sys.executable, "-c", script, into, folder=project).splitlines()[-1]


@pytest.fixture(scope="session")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build the wheel of this project."""
    return build("wheel", PROJECT, tmp_path_factory.mktemp("wheel"))


@pytest.fixture(scope="session")
def sdist(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build the sdist of this project."""
    return build("sdist", PROJECT, tmp_path_factory.mktemp("sdist"))


@pytest.fixture(scope="session")
def installed(
    wheel: Path, sdist: Path, tmp_path_factory: pytest.TempPathFactory
) -> dict[str, Path]:
    """Install each kind into a folder of its own: the wheel, the sdist's wheel, the editable."""
    home = tmp_path_factory.mktemp("installed")
    with tarfile.open(sdist) as packed:
        packed.extractall(home / "unpacked", filter="data")
    (unpacked,) = (home / "unpacked").iterdir()
    built = {
        "wheel": wheel,
        "sdist": build("wheel", unpacked, home / "from_sdist"),
        "editable": build("editable", PROJECT, home / "from_editable"),
    }
    for kind, path in built.items():
        with zipfile.ZipFile(path) as packed:
            packed.extractall(home / kind)
    return {kind: home / kind for kind in KINDS}


@pytest.fixture(scope="session")
def looks(installed: dict[str, Path], tmp_path_factory: pytest.TempPathFactory) -> dict[str, dict]:
    """Let each install say where it lies, where its lessons are, and what a workbook gets."""
    home = tmp_path_factory.mktemp("workbooks")
    return {
        kind: json.loads(
            run(sys.executable, "-I", "-S", "-c", LOOK, site, home / kind, folder=home)
        )
        for kind, site in installed.items()
    }


@pytest.mark.parametrize("kind", ["wheel", "sdist"])
def test_a_packed_install_finds_its_packed_lessons(
    kind: str, installed: dict[str, Path], looks: dict[str, dict]
) -> None:
    """From a wheel, and from the wheel an sdist gives, the lessons lie in the package."""
    package = installed[kind].resolve() / "seatwork"
    assert Path(looks[kind]["package"]).parent == package
    assert Path(looks[kind]["source"]) == package / "workbook"


def test_an_editable_install_finds_the_projects_lessons(looks: dict[str, dict]) -> None:
    """From an editable install the lessons are the ones being edited."""
    assert Path(looks["editable"]["package"]).parent == PACKAGE
    assert Path(looks["editable"]["source"]) == PROJECT


def test_every_install_hands_out_the_same_workbook(looks: dict[str, dict]) -> None:
    """Wheel, sdist and editable install deliver the same files, the start page among them."""
    wheel, sdist, editable = (looks[kind]["added"] for kind in KINDS)
    assert wheel == sdist == editable
    assert "notebooks/00_start_here.ipynb" in wheel
    assert "shop/house_rules.toml" in wheel
    assert [place for place in wheel if place.startswith("exercises/worked/")]


def test_the_wheel_holds_all_package_data(wheel: Path) -> None:
    """Every file of the package, tables and page parts too, is in the wheel; no test is."""
    own = {
        path.relative_to(PACKAGE.parent).as_posix()
        for path in PACKAGE.rglob("*")
        if path.is_file() and "__pycache__" not in path.parts
    }
    packed = set(zipfile.ZipFile(wheel).namelist())
    assert own <= packed
    assert not [name for name in packed if name.startswith("tests/") or "__pycache__" in name]
    assert [name for name in packed if name.endswith("licenses/LICENSE")]


def test_the_wheel_gives_the_command(wheel: Path) -> None:
    """The command ``seatwork`` leads to the program of ``seatwork.cli``."""
    packed = zipfile.ZipFile(wheel)
    (name,) = (name for name in packed.namelist() if name.endswith("entry_points.txt"))
    assert "seatwork = seatwork.cli:main" in packed.read(name).decode()


def test_no_install_touches_other_jupyter_servers(wheel: Path) -> None:
    """The wheel puts nothing into the folders that every Jupyter of the machine reads."""
    names = zipfile.ZipFile(wheel).namelist()
    assert not [name for name in names if ".data/" in name or "etc/jupyter" in name]


def test_the_sdist_holds_what_the_tests_need(sdist: Path) -> None:
    """Lessons, worksheets, tests, licence and the papers at the top are in the sdist."""
    with tarfile.open(sdist) as packed:
        names = {name.partition("/")[2] for name in packed.getnames()}
    papers = {"README.md", "DEVELOPERS.md", "LICENSE", "pyproject.toml"}
    assert papers <= names
    assert {"tests/test_packaging.py", "tests/nbval_sanitize.cfg"} <= names
    assert {"notebooks/00_start_here.ipynb", "toolkit/seatwork/__init__.py"} <= names


def test_the_packages_are_small(wheel: Path, sdist: Path) -> None:
    """Each file to download stays under 10 MB: school networks are slow."""
    assert wheel.stat().st_size < 10_000_000
    assert sdist.stat().st_size < 10_000_000


def imported(folder: Path = PACKAGE) -> Iterator[tuple[str, str]]:
    """Yield each top-level module that a file of a folder imports."""
    for path in folder.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Import):
                modules = [alias.name for alias in node.names]
            elif isinstance(node, ast.ImportFrom):
                modules = [str(node.module)]
            else:
                continue
            yield from ((module.partition(".")[0], path.name) for module in modules)


def plain(name: str) -> str:
    """Write a distribution's name the standard way."""
    return re.sub(r"[-_.]+", "-", name).lower()


def test_everything_imported_is_declared() -> None:
    """Each library that a file of the package imports is declared, for all or for a school."""
    assert undeclared(imported(), "school") == set()


def test_everything_that_tests_import_is_declared() -> None:
    """Each library of the tests is declared as well, so that no other one happens to bring it."""
    tests = PROJECT / "tests"
    own = {path.stem for path in tests.rglob("*") if path.suffix == ".py" or path.is_dir()}
    found = ((module, file) for module, file in imported(tests) if module not in {"tests", *own})
    assert undeclared(found, "test", "long") == set()


def undeclared(found: Iterable[tuple[str, str]], *extras: str) -> set[str]:
    """Return the modules, each with a file, that neither the project nor these extras declare."""
    project = tomllib.loads((PROJECT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    lines = list(project["dependencies"])
    lines += (line for extra in extras for line in project["optional-dependencies"][extra])
    declared = {plain(re.split(r"[<>=!~;\[ ]", line)[0]) for line in lines}
    homes = packages_distributions()
    return {
        f"{module} in {file}"
        for module, file in found
        if module != "seatwork" and module not in sys.stdlib_module_names
        if not {plain(home) for home in homes.get(module, [module])} & declared
    }


def test_every_dependency_is_bounded() -> None:
    """Each requirement names the oldest and the first too new version."""
    lines = requires("seatwork")
    assert lines
    assert [line for line in lines if not (">=" in line and "<" in line)] == []


@pytest.mark.long
@pytest.mark.skipif(os.name == "nt", reason="the folder of programs has another name there")
def test_a_real_install_of_the_wheel_opens(wheel: Path, tmp_path: Path) -> None:
    """Pip installs the wheel into a new environment, and its doctor finds all well."""
    run(sys.executable, "-m", "venv", tmp_path / "venv", folder=tmp_path)
    programs = tmp_path / "venv" / "bin"
    run(programs / "pip", "install", "--quiet", wheel, folder=tmp_path)
    told = run(programs / "seatwork", "doctor", folder=tmp_path)
    assert told.splitlines()[-1] == "All is well."
    assert run(programs / "seatwork", "--version", folder=tmp_path).startswith("seatwork ")
