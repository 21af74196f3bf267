"""The page of what tests reach: sums by hand, and reasons that name what is there."""

import ast
import re
from pathlib import Path

import pytest
import seatwork
from proof.reaching import ALL, REASONS, page, read, reasons, share, unlooked

PACKAGE = Path(seatwork.__file__).parent
PAGE = PACKAGE.parent / "proof" / "coverage.md"


def report(**functions: tuple[int, int]) -> dict:
    """Give a report of one file as coverage writes it."""
    held = {
        name: {"summary": {"num_statements": lines, "missing_lines": missed}}
        for name, (lines, missed) in functions.items()
    }
    return {"files": {"toolkit/seatwork/plan/faces.py": {"functions": held}, "tests/x.py": {}}}


def test_a_function_nobody_looked_at_is_named() -> None:
    """One with a reason, one without, one that ran whole; other folders do not count."""
    found = read(report(cut=(10, 2), face=(5, 1), stop=(5, 0)))
    known = {("plan/faces.py", "cut"): "A kill is needed."}
    assert unlooked(found, known) == ["plan/faces.py: face"]
    told = page(found, known)
    assert "| plan | 20 | 3 | 85 % |" in told
    assert "**A kill is needed.** 2 lines:" in told
    assert unlooked(found, {("plan/faces.py", ALL): "All of it."}) == []


@pytest.mark.parametrize(("missed", "lines", "told"), [(1, 1000, "99 %"), (0, 3, "100 %")])
def test_a_missing_line_is_never_rounded_away(missed: int, lines: int, told: str) -> None:
    """999 of 1,000 are not all."""
    assert share(missed, lines) == told


def test_every_reason_names_what_is_there() -> None:
    """Files and functions exist, and a reason is a sentence."""
    for (file, function), why in reasons(REASONS).items():
        assert re.fullmatch(r"[A-Z`].{20,}\.", why), (file, why)
        tree = ast.parse((PACKAGE / file).read_text("utf-8"))
        named = {node.name for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)}
        assert function in {"", ALL} or function.rpartition(".")[2] in named, (file, function)


def test_the_page_tells_every_room() -> None:
    """Rooms and files at the floor stand there once."""
    rows = re.findall(r"^\| (\w+) \| \d+ \|", PAGE.read_text("utf-8"), re.MULTILINE)
    rooms = {path.stem for path in PACKAGE.iterdir() if path.suffix == ".py" or path.is_dir()}
    assert set(rows) >= {room for room in rooms if (PACKAGE / room / "__init__.py").exists()}
    assert len(rows) == len(set(rows))
