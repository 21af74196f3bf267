"""What stands at a room's door says its units, and a formula says where it comes from."""

import inspect
import re
import sys
from collections.abc import Callable, Iterator
from importlib import import_module
from pathlib import Path
from typing import Any

import pytest
import seatwork

PACKAGE = Path(seatwork.__file__).parent
ROOMS = sorted(
    path.parent.name for path in PACKAGE.glob("*/__init__.py") if "NAMES" in path.read_text("utf-8")
)
FORMULAS = ("cutting", "seats")
MEASURED = re.compile(r"\bfloat\b|ndarray|NDArray")
OTHER = re.compile(r"\bstr\b|bool")
"""What may hold words or yes and no beside numbers: a cell of a table, a mask."""

UNIT = re.compile(r"\[[^\]]+\]")
GROUNDS = re.compile(r"^\s*(Notes|References)\n\s*-{4,}$", re.MULTILINE)
SAID_BY_NAME = re.compile(
    r"(^|_)(mm|deg|degrees|in|inches|px|watts|newton_meters|mm_per_rev|rev_per_minute|"
    r"metres_per_minute)$"
)
"""Names that say their unit themselves."""

BY_CONTROL = "work_out"
"""What a bench reckons from its controls, each with its own unit."""

BY_MEASURE = "questions"
"""The room whose numbers are in the unit that a question's measure names."""


def own(kind: type) -> Iterator[tuple[str, Callable[..., Any]]]:
    """Yield the methods and properties that a class of ours has of its own."""
    for name, held in vars(kind).items():
        held = held.fget if isinstance(held, property) else held
        held = getattr(held, "func", None) or getattr(held, "__func__", None) or held
        if inspect.isfunction(held) and held.__module__.startswith("seatwork"):
            yield name, held


def doors() -> Iterator[tuple[str, Any]]:
    """Yield every function that people reach through a room's door, those of classes too."""
    for room in ROOMS:
        package = import_module(f"seatwork.{room}")
        for name in package.__all__:
            found = getattr(package, name)
            if inspect.isclass(found):
                public = [(part, held) for part, held in own(found) if not part.startswith("_")]
                yield from ((f"{room}.{name}.{part}", held) for part, held in public)
            elif callable(found):
                yield f"{room}.{name}", found


def kinds(function: Any) -> dict[str, str]:
    """Return what a function takes and returns, as text."""
    told = inspect.unwrap(function).__annotations__
    return {name: kind if isinstance(kind, str) else str(kind) for name, kind in told.items()}


def section(docstring: str, name: str) -> str:
    """Return the text of a numpydoc section; empty where there is none."""
    found = re.search(rf"^{name}\n-+\n(.*?)(?=^\w[\w ]*\n-+$|\Z)", docstring, re.M | re.S)
    return found[1] if found else ""


def entry(docstring: str, name: str) -> str:
    """Return what a docstring says of a parameter; empty where it says nothing."""
    told = section(docstring, "Parameters")
    found = re.search(rf"^[\w, ]*\b{name}\b[\w, ]* :.*?\n((?:[ \n].*\n?)*)", told, re.M)
    return found[0] if found else ""


def is_measured(kind: str) -> bool:
    """Tell whether a kind is numbers that have a unit."""
    return bool(MEASURED.search(kind)) and not OTHER.search(kind)


def sentence(docstring: str) -> str:
    """Return what a docstring says before its first section."""
    return re.split(r"\n\w[\w ]*\n-+\n", docstring)[0]


def measured() -> Iterator[tuple[str, str, dict[str, str]]]:
    """Yield what takes or gives a measured number: its name, its docstring, its kinds."""
    for name, function in doors():
        if name.startswith(BY_MEASURE) or name.endswith(BY_CONTROL):
            continue
        told = kinds(function)
        if any(is_measured(kind) for kind in told.values()):
            yield name, inspect.getdoc(function) or "", told


def test_a_measured_argument_says_its_unit():
    """By its entry, by its own name, or by a bracket in the sentence of a short docstring."""
    silent = [
        f"{name}({argument})"
        for name, doc, told in measured()
        for argument, kind in told.items()
        if argument != "return" and is_measured(kind) and not SAID_BY_NAME.search(argument)
        if not UNIT.search(entry(doc, argument) or sentence(doc))
    ]
    assert silent == []


def test_a_measured_result_says_its_unit():
    """In its section Returns, or in the sentence where there is none."""
    silent = [
        name
        for name, doc, told in measured()
        if is_measured(told.get("return", ""))
        and not UNIT.search(section(doc, "Returns") or sentence(doc))
    ]
    assert silent == []


@pytest.mark.parametrize("room", FORMULAS)
def test_a_formula_says_where_it_comes_from(room):
    """It has Notes or References of its own, or its class or module has."""
    bare = []
    for name, function in doors():
        if name.startswith(room) and is_measured(kinds(function).get("return", "")):
            plain = inspect.unwrap(function)
            module = sys.modules[plain.__module__]
            holder = getattr(seatwork, room).__dict__.get(name.split(".")[1])
            told = (plain.__doc__, module.__doc__, inspect.getdoc(holder) if holder else "")
            if not any(GROUNDS.search(doc or "") for doc in told):
                bare.append(f"{module.__name__}: {name}")
    assert bare == []


def test_the_look_sees_much():
    """The doors hold hundreds of measured functions; a pattern that misses them would be seen."""
    names = {name for name, _, _ in measured()}
    assert len(names) > 150
    assert {"seats.protrusion", "cutting.spindle_speed", "units.show_both"} <= names
