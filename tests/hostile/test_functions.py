"""Every public function with wrong arguments: a right value, or one sentence, and nothing else."""

from collections.abc import Callable
from inspect import isclass
from math import inf, nan
from pathlib import Path
from random import Random
from typing import Any

import numpy as np
import pytest
from hostile_calls import CALLS, Ground, functions, public
from seatwork.errors import SeatworkError

pytestmark = pytest.mark.slow

NEVER: tuple[Any, ...] = (
    None, True, "", "abc", "x" * 3000, "a\x00b", "\ud800", b"1", nan, inf, -inf, 1e308, -1e308,
    5e-324, 10**400, 0, -1, 1.5, 1j, [], {}, [None], ["abc"], [inf], (), {1: 2}, object(),
    Path("nowhere") / "x", Path(), np.array([1.0, 2.0]), np.float64("nan"),
    1_000_000,
)  # fmt: skip
LONGEST = 2500
SLOW = (
    "benches", "cards", "worksheet", "questions.lacks", "plan", "tables.load", "takehome.graded",
    "takehome.p", "takehome.record",
)  # fmt: skip
"""Calls that draw or plan; the quick walk gives each a few wrong arguments."""


def make(found: Callable[..., Any], given: dict[str, Any]) -> Any:
    """Call with everything by name, but for what is starred."""
    starred = next((name for name in ("rows", "operations") if name in given), None)
    if starred is None or found.__name__ == "table":
        return found(**given)
    rest = {name: value for name, value in given.items() if name != starred}
    values = given[starred]
    return found(*(values if isinstance(values, list | tuple) else (values,)), **rest)


def spoiled(call: Callable[..., Any], given: dict[str, Any]) -> str:
    """Make a call with a wrong argument; return what is wrong with how it ended, or ""."""
    try:
        make(call, given)
    except SeatworkError as error:
        told = str(error)
        plain = told.isprintable() and len(told) < LONGEST
        return "" if plain else f"no plain sentence: {told[:80]!r}"
    except Exception as error:
        return f"{type(error).__name__}: {str(error)[:60]!r}"
    return ""


def walk(name: str, folder: Path, values: Callable[[str], tuple[Any, ...]]) -> list[str]:
    """Put wrong values in the place of each argument in turn; return what leaked."""
    found, ground, leaks = dict(public())[name], Ground(folder), []
    for argument in CALLS[name](ground):
        for value in values(argument):
            given = CALLS[name](ground)
            given[argument] = value
            if leak := spoiled(found, given):
                leaks.append(f"{argument}={repr(value)[:30]}: {leak}")
    return leaks


def test_every_public_function_has_a_right_call() -> None:
    """The table knows every function that a room hands out, and nothing that is gone."""
    names = {name for name, _ in public()}
    assert [name for name in functions() if name not in CALLS] == []
    assert [name for name in CALLS if name not in names] == []


@pytest.mark.parametrize("name", [name for name in CALLS if not name.startswith("worksheet")])
def test_the_right_call_is_right(
    name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Each call of the table works, so that what is refused later is the wrong argument."""
    monkeypatch.chdir(tmp_path)
    found = dict(public())[name]
    make(found, CALLS[name](Ground(tmp_path)))
    assert callable(found) or isclass(found)


@pytest.mark.slow
@pytest.mark.parametrize("name", CALLS)
def test_wrong_arguments_end_in_one_sentence(
    name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """No wrong kind, no size and no text lets anything but the one error out."""
    monkeypatch.chdir(tmp_path)
    few = Random(name)

    def values(argument: str) -> tuple[Any, ...]:
        return tuple(few.sample(NEVER, 3)) if name.startswith(SLOW) else NEVER

    assert walk(name, tmp_path, values) == []


@pytest.mark.long
@pytest.mark.parametrize("name", [name for name in CALLS if name.startswith(SLOW)])
def test_all_wrong_arguments_of_slow_calls_end_in_one_sentence(
    name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What draws or plans is given every wrong argument, too."""
    monkeypatch.chdir(tmp_path)
    assert walk(name, tmp_path, lambda argument: NEVER) == []
