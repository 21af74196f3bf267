"""Functions: none over 40 lines of code, and none takes a quantity without saying its unit."""

import ast
import inspect
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
import seatwork
from proof.watching import formulas

PACKAGE = Path(seatwork.__file__).parent
PAGE = PACKAGE.parent / "proof" / "outside_checks.md"
MOST = 40
ROOMS = ("units", "seats", "cutting", "hardware", "notes", "plan", "inspection")
"""Rooms that reckon with quantities; a bench's controls say their unit in what they show."""

QUANTITY = re.compile(r"\bfloat\b(?!.*\bMapping\b)|\bndarray\b(?!.*\bint)")
UNIT = re.compile(r"\[[^\]\n]+\]")
NAMES_A_UNIT = {
    "mm", "degrees", "watts", "newton_meters", "rev_per_minute", "metres_per_minute", "mm_per_rev",
}  # fmt: skip


def lines_of_code(function: ast.FunctionDef, text: list[str]) -> int:
    """Count the lines of a function's body that are neither blank, comment nor docstring."""
    body = function.body[1:] if ast.get_docstring(function) else function.body
    if not body:
        return 0
    lines = text[body[0].lineno - 1 : body[-1].end_lineno]
    return sum(bool(line.strip()) and not line.lstrip().startswith("#") for line in lines)


def long_ones(text: str) -> list[str]:
    """Name the functions of a module with more lines of code than `MOST`."""
    return [
        node.name
        for node in ast.walk(ast.parse(text))
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
        if lines_of_code(node, text.splitlines()) > MOST
    ]


def test_no_function_is_over_40_lines_of_code() -> None:
    """Docstrings, comments and blank lines apart; an inner function counts within its outer one."""
    found = {
        path.relative_to(PACKAGE).as_posix(): named
        for path in sorted(PACKAGE.rglob("*.py"))
        if (named := long_ones(path.read_text("utf-8")))
    }
    assert found == {}


@pytest.mark.parametrize(("count", "named"), [(40, []), (41, ["long"])])
def test_lines_of_code_are_counted_by_hand(count: int, named: list[str]) -> None:
    """40 statements pass and 41 do not; docstring, comment and blank line count for nothing."""
    lines = ['    """Say."""', "", "    # why", *["    x = 1"] * count]
    assert long_ones("\n".join(["def long():", *lines])) == named


def public() -> Iterator[tuple[str, Callable[..., Any]]]:
    """Yield the public functions and methods of the rooms that reckon."""
    for room in ROOMS:
        package = getattr(seatwork, room)
        for name in package.__all__:
            found = getattr(package, name)
            if inspect.isfunction(found):
                yield f"{room}.{name}", found
            for part, held in vars(found).items() if inspect.isclass(found) else ():
                inner = held.__func__ if isinstance(held, classmethod) else held
                if not part.startswith("_") and inspect.isfunction(inner):
                    yield f"{room}.{name}.{part}", inner


def without_unit(function: Callable[..., Any]) -> list[str]:
    """Name the quantities of a function whose unit its docstring does not say."""
    told = inspect.getdoc(function) or ""
    first = told.partition("\n\n")[0]
    missing = []
    for name, taken in inspect.signature(function).parameters.items():
        if not QUANTITY.search(str(taken.annotation)) or name in NAMES_A_UNIT:
            continue
        entry = re.search(rf"(?m)^[\w, ]*\b{name}\b[\w, ]* : .*\n(?:    .*\n?)*", told)
        words = entry[0] if entry else first
        if not UNIT.search(words):
            missing.append(name)
    return missing


def test_whoever_takes_a_quantity_says_its_unit() -> None:
    """In its entry under Parameters, or in the first sentence of a function without entries."""
    missing = {name: bare for name, function in public() if (bare := without_unit(function))}
    assert missing == {}


def test_the_look_sees_a_missing_unit() -> None:
    """A float without a unit is named, one with a unit is not."""

    def bare(depth: float, wide: float) -> float:
        """Say how deep.

        Parameters
        ----------
        depth : float
            The depth.
        wide : float
            The width [mm].
        """
        return depth + wide

    assert without_unit(bare) == ["depth"]


def test_a_formula_says_its_source_or_is_checked_from_outside() -> None:
    """What the page of outside checks lists as unchecked takes no bare quantity of its own."""
    bare = set(re.findall(r"^- `([\w.]+)`$", PAGE.read_text("utf-8"), re.MULTILINE))
    functions = dict(public())
    assert bare < set(formulas())
    unsaid = [
        name
        for name in sorted(bare & functions.keys())
        if any(
            QUANTITY.search(str(taken.annotation))
            for taken in inspect.signature(functions[name]).parameters.values()
        )
        if not re.search(r"(?i)source|references|notes|from memory", functions[name].__doc__ or "")
    ]
    assert unsaid == []
