"""What the tests reach of the package: read from coverage's own report, and told by room."""

import tomllib
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

REASONS = Path(__file__).parent / "unreached.toml"
PACKAGE = "toolkit/seatwork/"
ALL = "*"

TITLE = """# What the tests reach

Written by `python tests/coverage_page.py`, which runs the everyday tests again, but those in the
browser and the cells of the notebooks, and sees which lines of the package ran; change the tests,
or the reasons in `tests/proof/unreached.toml`. A line that ran is not yet a line that is right:
that is what [outside checks](outside_checks.md) count.
"""


@dataclass(frozen=True, slots=True)
class Reached:
    """What ran of one function.

    Parameters
    ----------
    file : str
        The module, from the package's folder.
    function : str
        Its name, with its class; "" for lines outside of functions.
    lines, missed : int
        Lines of code, and those that did not run [-].
    """

    file: str
    function: str
    lines: int
    missed: int


def read(report: Mapping[str, Any]) -> list[Reached]:
    """Read coverage's JSON report, function by function."""
    return [
        Reached(
            path.partition(PACKAGE)[2],
            name,
            held["summary"]["num_statements"],
            held["summary"]["missing_lines"],
        )
        for path, found in sorted(report["files"].items())
        if PACKAGE in path
        for name, held in found["functions"].items()
    ]


def reasons(path: Path = REASONS) -> dict[tuple[str, str], str]:
    """Read why a function, or all of a file, is not reached, by file and name."""
    looked = tomllib.loads(path.read_text("utf-8"))["looked"]
    return {(one["file"], name): one["why"] for one in looked for name in one["functions"]}


def why(one: Reached, known: Mapping[tuple[str, str], str]) -> str | None:
    """Return the reason that stands for a function, if somebody looked."""
    return known.get((one.file, one.function), known.get((one.file, ALL)))


def unlooked(found: list[Reached], known: Mapping[tuple[str, str], str]) -> list[str]:
    """Name the functions with lines that did not run and that nobody has looked at."""
    missed = [one for one in found if one.missed and why(one, known) is None]
    return [f"{one.file}: {one.function or 'outside of functions'}" for one in missed]


def page(found: list[Reached], known: Mapping[tuple[str, str], str]) -> str:
    """Write the page."""
    return "\n".join(
        [TITLE, *_rooms(found), *_open(unlooked(found, known)), *_looked(found, known), ""]
    )


def share(missed: int, lines: int) -> str:
    """Say a part in whole percent; never 100 while a line is missing, rounded down.

    Examples
    --------
    >>> share(1, 1000), share(0, 7), share(0, 0)
    ('99 %', '100 %', '100 %')
    """
    return f"{100 if not lines else (lines - missed) * 100 // lines} %"


def _rooms(found: list[Reached]) -> Iterator[str]:
    lines, missed = Counter[str](), Counter[str]()
    for one in found:
        room = one.file.partition("/")[0].removesuffix(".py")
        lines[room] += one.lines
        missed[room] += one.missed
    yield "| room | lines of code | did not run | reached |"
    yield "|---|---|---|---|"
    for room in sorted(lines):
        yield _row(room, lines[room], missed[room])
    yield _row("**all**", lines.total(), missed.total())


def _row(name: str, lines: int, missed: int) -> str:
    return f"| {name} | {lines} | {missed} | {share(missed, lines)} |"


def _open(names: list[str]) -> Iterator[str]:
    yield "\n## Not looked at yet\n"
    yield from ([f"- {name}" for name in names] or ["Nothing: each has its reason below."])


def _looked(found: list[Reached], known: Mapping[tuple[str, str], str]) -> Iterator[str]:
    yield "\n## Looked at, and why\n"
    by_reason: dict[str, list[Reached]] = {}
    for one in found:
        reason = why(one, known)
        if one.missed and reason is not None:
            by_reason.setdefault(reason, []).append(one)
    for reason, held in sorted(by_reason.items()):
        lines = sum(one.missed for one in held)
        yield f"\n**{reason}** {lines} line{'s' * (lines != 1)}:\n"
        for one in held:
            yield f"- `{one.file}`, {one.function or 'outside of functions'}: {one.missed}"
