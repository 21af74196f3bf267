"""Count the outside checks: run them, and write ``toolkit/proof/outside_checks.md``.

``python tests/outside_checks.py`` writes the page; with ``--check`` it writes nothing and says
whether the page is as the run has it.
"""

import ast
import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parent))

from proof.page import page
from proof.watching import Watch, formulas

PROJECT = Path(__file__).parents[1]
PAGE = PROJECT / "toolkit" / "proof" / "outside_checks.md"
ROOMS = ("validation", "seats", "cutting", "tables")
ASKED = (
    "-q", "--import-mode=importlib", "--strict-markers", "-p", "no:cacheprovider",
    "-o", "addopts=", "-m", "not long and not bench",
)  # fmt: skip


def second_reading() -> tuple[int, int]:
    """Count the columns of the second reading, and the values it must hold at least."""
    text = (PROJECT / "tests/tables/test_second_reading.py").read_text("utf-8")
    tree = ast.parse(text)
    (compared,) = (
        node.value
        for node in tree.body
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "COMPARED"
    )
    least = [row.elts[-1].value for row in compared.elts]
    return len(least), sum(least)


def run() -> tuple[str, list[str]]:
    """Run the checks; return the page, and what is wrong."""
    watch = Watch()
    rooms = [str(PROJECT / "tests" / room) for room in ROOMS]
    pytest.main([*ASKED, *rooms], plugins=[watch])
    wrong = [f"failed: {name}" for name in watch.failed]
    wrong += [f"not seen at work: {claim}" for claim in watch.unproven()]
    written = page(watch.held.values(), watch.claims, formulas(), second_reading())
    return written, wrong


def main() -> int:
    """Write the page, or check it."""
    written, wrong = run()
    if "--check" in sys.argv[1:]:
        as_run = PAGE.is_file() and PAGE.read_text("utf-8") == written
        wrong += [] if as_run else [f"{PAGE.relative_to(PROJECT)} is not as the run has it"]
    elif not wrong:
        PAGE.parent.mkdir(exist_ok=True)
        PAGE.write_text(written, "utf-8")
    sys.stdout.write("\n".join([*wrong, ""]))
    return bool(wrong)


if __name__ == "__main__":
    sys.exit(main())
