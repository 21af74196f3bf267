"""Wheels for a kind of computer: those that seatwork needs there, and no others."""

import subprocess
import sys
import zipfile
from collections.abc import Iterator, Mapping
from email.parser import Parser
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name, parse_wheel_filename

from seatwork.errors import SeatworkError
from seatwork.school.own_wheel import metadata
from seatwork.school.stick_targets import Computer

LEFT_OUT = frozenset({"debugpy", "jedi", "parso", "widgetsnbextension"})
"""Not needed where nobody programs: a debugger, guesses beside plain completion, a part for
another page than the one that opens."""

ROUNDS = 6
INSTALLER = "pip"


def gather(folder: Path, machine: Computer, python: str) -> list[Path]:
    """Fetch the wheels for a kind of computer, and return those it needs.

    pip judges some requirements by the computer it runs on. What that leaves out is found in what
    the wheels say of themselves, and fetched after.

    Parameters
    ----------
    folder : Path
        Where they are kept.
    machine : Computer
        The kind of computer.
    python : str
        Version of its Python, such as "3.12".

    Raises
    ------
    SeatworkError
        If something cannot be fetched, such as a wheel that nobody has made for that computer.
    """
    top = Requirement("seatwork").name
    _fetch(folder, machine, python, [INSTALLER, *_direct(machine, python)])
    for _ in range(ROUNDS):
        there = wheels_in(folder)
        needed, missing = closure(top, there, machine, python)
        if not missing:
            return [there[name] for name in sorted(needed | {INSTALLER})]
        _fetch(folder, machine, python, missing)
    raise SeatworkError("wheels", "what they need never ends", "name other versions of Python")


def wheels_in(folder: Path) -> dict[str, Path]:
    """Return the wheels of a folder by the name of what they hold."""
    return {str(parse_wheel_filename(path.name)[0]): path for path in sorted(folder.glob("*.whl"))}


def closure(
    top: str, there: Mapping[str, Path], machine: Computer, python: str
) -> tuple[set[str], list[str]]:
    """Follow requirements from seatwork on; return what is needed, and what is not there.

    Parameters
    ----------
    top : str
        Where to begin: seatwork, whose requirements are those of the one that runs.
    there : mapping of str to Path
        Wheels by name.
    machine : Computer
        By which markers are judged.
    python : str
        Version of its Python.
    """
    seen: set[tuple[str, str]] = set()
    missing: dict[str, str] = {}
    todo = [(top, "")]
    while todo:
        name, extra = todo.pop()
        if (name, extra) in seen:
            continue
        seen.add((name, extra))
        if name != top and name not in there:
            continue
        text = metadata() if name == top else _said(there[name])
        for need in _needs(text, machine.environment(python, extra)):
            other = canonicalize_name(need.name)
            if other not in there:
                missing[other] = str(Requirement(f"{need.name}{need.specifier}"))
            todo += [(str(other), one) for one in ("", *need.extras)]
    return {name for name, _ in seen} - {top}, sorted(missing.values())


def _direct(machine: Computer, python: str) -> list[str]:
    return [
        f"{one.name}{one.specifier}" for one in _needs(metadata(), machine.environment(python, ""))
    ]


def _needs(text: str, environment: dict[str, str]) -> Iterator[Requirement]:
    for line in Parser().parsestr(text).get_all("Requires-Dist", []):
        need = Requirement(line)
        wanted = need.marker is None or need.marker.evaluate(environment)
        if wanted and canonicalize_name(need.name) not in LEFT_OUT:
            yield need


def _said(wheel: Path) -> str:
    with zipfile.ZipFile(wheel) as inside:
        name = next(one for one in inside.namelist() if one.endswith(".dist-info/METADATA"))
        return inside.read(name).decode("utf-8", "replace")


def _fetch(folder: Path, machine: Computer, python: str, what: list[str]) -> None:
    """Let pip fetch wheels, and what they need, at the versions that are there already."""
    folder.mkdir(parents=True, exist_ok=True)
    held = [parse_wheel_filename(path.name) for path in folder.glob("*.whl")]
    limits = folder / "limits.txt"
    limits.write_text("".join(f"{one[0]}=={one[1]}\n" for one in held), encoding="utf-8")
    tags = [word for tag in machine.tags for word in ("--platform", tag)]
    command = [
        *installer(), "download", "--quiet", "--disable-pip-version-check", "--only-binary=:all:",
        *tags, "--python-version", python, "--implementation", "cp", "--find-links", str(folder),
        "--constraint", str(limits), "--dest", str(folder), *what,
    ]  # fmt: skip
    done = subprocess.run(command, capture_output=True, text=True)
    limits.unlink()
    if done.returncode:
        lines = [line for line in done.stderr.splitlines() if line.startswith("ERROR")]
        raise SeatworkError(
            f"Python {python} on {machine.system}",
            f"its wheels could not be fetched ({(lines or ['no network'])[-1][:160]})",
            "look at the network, or name other computers",
        )


def installer() -> list[str]:
    """Return the words that start pip: this Python's own, else the one that Python brings.

    Raises
    ------
    SeatworkError
        If there is none.
    """
    from importlib.util import find_spec

    if find_spec("pip"):
        return [sys.executable, "-m", "pip"]
    spec = find_spec("ensurepip")
    home = Path(spec.origin or "").parent / "_bundled" if spec else Path()
    found = sorted(home.glob("pip-*.whl")) if spec else []
    if not found:
        raise SeatworkError("pip", "there is none to fetch wheels with", "install pip first")
    return [sys.executable, f"{found[-1]}/pip"]
