"""Writes the page of outside checks from what a run has held and seen."""

import re
import tomllib
from collections import defaultdict
from collections.abc import Iterable, Iterator
from decimal import ROUND_HALF_UP, Decimal
from functools import cache
from pathlib import Path

from proof.holding import BY_HAND, LISTS, PUBLISHED, Held

HERE = Path(__file__).parent
ITSELF = "proof of the second method"
KINDS = {
    PUBLISHED: "a number of a standard, a handbook, a paper or a maker",
    LISTS: "two documents that print one value",
    "value by a second method": "a method that shares no formula, run once and kept",
    "closed form": "geometry or an integral, worked out for this project",
    BY_HAND: "plans worked by hand, each figure with its sum and where its numbers come from",
    ITSELF: "what is published of delay equations, against the tests' own second method",
}
"""The kinds of checks, in the order of the page, and what each is."""

TITLE = """# Outside checks

Written by `python tests/outside_checks.py`, which runs every check again; change the tests.

A check holds what the package says against what somebody else says: a standard, a handbook, a
paper, a maker, a solid modeler, a search, a sum by hand. What the package wrote itself is none.
A value counts once, however many tests hold it. No printed standard was open while the lists were
typed: a row is right as far as one or two reachable places are, and *from memory* says that none
was at hand.
"""
SECOND = """## The second reading, apart

`tests/tables/test_second_reading.py` (`pytest -m long`, with a network) reads the data files of an
openly licensed general parts library and holds every row that both have: {columns} columns, at
least {values} values. They share sources with some tables, so agreement finds slips of typing, and
they are not counted above. Where the library is known to differ from the standard,
`tests/tables/data/known_errors.csv` says how, and the test holds that it still does.
"""


@cache
def documents() -> list[tuple[re.Pattern[str], str, str]]:
    """Read how sources are called on the page: what they match, their name, their kind."""
    listed = tomllib.loads((HERE / "documents.toml").read_text("utf-8"))["document"]
    return [(re.compile(one["match"]), one["name"], one.get("kind", "")) for one in listed]


def document(source: str, kind: str = PUBLISHED) -> tuple[str, str]:
    """Name the document of a source, and the kind of its checks; LookupError where none fits."""
    if kind in (LISTS, BY_HAND):
        return source, kind
    for match, name, other in documents():
        if match.search(source):
            return name, other or kind
    raise LookupError(f"no entry of documents.toml fits the source {source!r}")


def digits(value: float) -> str:
    """Write a difference in two digits that are the same on every machine."""
    settled = Decimal(repr(round(value, 9)))
    if settled < Decimal("1e-8"):
        return "none"
    place = Decimal(1).scaleb(settled.adjusted() - 1)
    return f"{settled.quantize(place, rounding=ROUND_HALF_UP).normalize():f}"


def farthest(held: Iterable[Held]) -> str:
    """Tell the largest difference of some checks, beside what the printed value allows."""
    share = {one: one.difference / max(one.within, 1e-9) for one in held}
    worst = max(share, key=lambda one: (round(share[one], 6), one.name))
    found = digits(worst.difference)
    if found == "none":
        return "none"
    unit = "" if worst.unit in ("-", "1") else f" {worst.unit}"
    return f"{found}{unit} of {worst.within:g} allowed"


def table(head: str, rows: Iterable[Iterable[object]]) -> Iterator[str]:
    """Write a table of Markdown."""
    yield head
    yield "|" + "---|" * (head.count("|") - 1)
    for row in rows:
        yield "| " + " | ".join(str(cell).replace("|", "/") for cell in row) + " |"
    yield ""


def sorted_out(held: Iterable[Held]) -> dict[str, dict[str, list[Held]]]:
    """Sort checks by kind and document."""
    found: dict[str, dict[str, list[Held]]] = {kind: defaultdict(list) for kind in KINDS}
    for one in held:
        name, kind = document(one.source, one.kind)
        found[kind][name].append(one)
    return found


def from_memory(held: Iterable[Held]) -> int:
    """Count the checks whose value is from memory."""
    return sum(one.confirmed == "memory" for one in held)


def summary(kinds: dict[str, dict[str, list[Held]]]) -> Iterator[str]:
    """Write how many checks there are of each kind."""
    each = {kind: [one for held in named.values() for one in held] for kind, named in kinds.items()}
    rows: list[tuple[object, ...]] = [
        (kind, len(held), from_memory(held), KINDS[kind]) for kind, held in each.items()
    ]
    printed = [*each[PUBLISHED], *each[LISTS]]
    package = [one for kind, held in each.items() if kind != ITSELF for one in held]
    rows.append(("**printed by others**", len(printed), from_memory(printed), "the first two"))
    rows.append(("**all of the package**", len(package), from_memory(package), "the first five"))
    yield from table("| kind | values | from memory | what it is |", rows)


def by_source(kinds: dict[str, dict[str, list[Held]]]) -> Iterator[str]:
    """Write the checks of each document."""
    yield "## By source\n"
    yield (
        "The largest difference is that which lies nearest to, as a share, what the printed "
        "value allows.\n"
    )
    for kind, named in kinds.items():
        rows = [
            (name, len(held), from_memory(held) or "", farthest(held))
            for name, held in sorted(named.items())
        ]
        yield f"### Kind: {kind}\n"
        yield from table("| source | values | from memory | largest difference |", rows)


def by_formula(claims: dict[tuple[str, str], set[str]], formulas: Iterable[str]) -> Iterator[str]:
    """Write what checks each formula, then the formulas that nothing outside checks."""
    ways: dict[str, list[str]] = defaultdict(list)
    for (label, way), tests in sorted(claims.items()):
        files = sorted({test.partition("::")[0].removeprefix("tests/") for test in tests})
        ways[label].append(f"{way} ({', '.join(files)})")
    yield "## By formula\n"
    yield "The run has seen each formula at work in the tests named beside it, under `tests/`.\n"
    checked = [(f"`{name}`", "; ".join(ways[name])) for name in sorted(ways)]
    yield from table("| formula | what checks it |", checked)
    bare = [name for name in sorted(formulas) if name not in ways]
    yield f"## Formulas that no outside source checks: {len(bare)} of {len(bare) + len(ways)}\n"
    yield "Tests of their own hold them (refusals, inverse pairs, limits), and nothing else does.\n"
    yield from (f"- `{name}`" for name in bare)
    yield ""


def page(
    held: Iterable[Held],
    claims: dict[tuple[str, str], set[str]],
    formulas: Iterable[str],
    second: tuple[int, int],
) -> str:
    """Write the page."""
    kinds = sorted_out(held)
    columns, values = second
    lines = [
        TITLE,
        *summary(kinds),
        *by_source(kinds),
        *by_formula(claims, formulas),
        SECOND.format(columns=columns, values=values),
    ]
    return "\n".join(lines)
