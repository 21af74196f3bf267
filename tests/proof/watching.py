"""Runs the outside checks and watches which formulas they call.

A formula is a public function of the rooms `seats` and `cutting`, or a number that a public class
of theirs works out. A test that says it checks one is believed only if the formula ran in it.
"""

import inspect
import sys
from collections import defaultdict
from collections.abc import Callable, Generator, Iterator
from functools import cached_property
from types import CodeType, FrameType, FunctionType
from typing import Any, get_type_hints

import pytest
import seatwork
from proof.holding import HELD, Held

ROOMS = ("seats", "cutting")
WORDS = {str, tuple[str, ...]}
"""What a property gives that is said and not reckoned."""


def reckoned(kind: type) -> Iterator[tuple[str, Callable[..., Any]]]:
    """Yield what a class works out: its public methods and properties that give no words."""
    for name, held in vars(kind).items():
        if name.startswith("_"):
            continue
        if isinstance(held, property):
            held = held.fget
        elif isinstance(held, classmethod):
            held = held.__func__
        elif isinstance(held, cached_property):
            held = held.func
        if isinstance(held, FunctionType) and not gives_words(held):
            yield name, inspect.unwrap(held)


def gives_words(function: Callable[..., Any]) -> bool:
    """Tell whether a function gives words, which no formula does."""
    return get_type_hints(inspect.unwrap(function)).get("return") in WORDS


def formulas() -> dict[str, CodeType]:
    """Name every formula of the package, and the code that works it out."""
    found = {}
    for room in ROOMS:
        package = getattr(seatwork, room)
        for name in package.__all__:
            public = getattr(package, name)
            if isinstance(public, type):
                inner = {f"{room}.{name}.{part}": code for part, code in reckoned(public)}
                found |= {label: function.__code__ for label, function in inner.items()}
            elif callable(public):
                found[f"{room}.{name}"] = inspect.unwrap(public).__code__
    return found


class Watch:
    """A plugin of pytest: keeps what was held, and what ran in each marked test."""

    def __init__(self) -> None:
        self.held: dict[str, Held] = {}
        self.ran: dict[str, set[str]] = defaultdict(set)
        self.claims: dict[tuple[str, str], set[str]] = defaultdict(set)
        self.failed: list[str] = []
        self._labels = {code: label for label, code in formulas().items()}

    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        """Leave only tests that hold something against the outside."""
        items[:] = [
            item
            for item in items
            if "outside" in getattr(item, "fixturenames", ()) or item.get_closest_marker("outside")
        ]

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_call(self, item: pytest.Item) -> Generator[None, object, object]:
        """Watch a test that says which formulas it checks."""
        marks = list(item.iter_markers("outside"))
        test = item.nodeid.partition("[")[0]
        for mark in marks:
            way, *claimed = mark.args
            for label in claimed:
                self.claims[label, way].add(test)
        if not marks:
            return (yield)
        sys.setprofile(lambda frame, event, _: self._seen(frame, event, test))
        try:
            return (yield)
        finally:
            sys.setprofile(None)

    def _seen(self, frame: FrameType, event: str, test: str) -> None:
        if event == "call" and (label := self._labels.get(frame.f_code)):
            self.ran[test].add(label)

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Keep what a test held, each value once; the larger difference where two tests did."""
        if report.failed:
            self.failed.append(report.nodeid)
        for name, value in report.user_properties if report.when == "call" else ():
            if name == HELD:
                now = Held(**value)  # type: ignore[arg-type]
                before = self.held.get(now.name)
                if before is None or now.difference > before.difference:
                    self.held[now.name] = now

    def unproven(self) -> list[str]:
        """List the claims that the run does not bear out."""
        known = set(self._labels.values())
        return sorted(
            f"{label} ({way}): {test}"
            for (label, way), tests in self.claims.items()
            for test in tests
            if label not in known or label not in self.ran[test]
        )
