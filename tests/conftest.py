"""The quick tests: which they are, and which of them no longer are quick."""

import os
import sys
from collections.abc import Callable, Generator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import settings

sys.path.insert(0, str(Path(__file__).parent))

from proof.holding import Outside

settings.register_profile("untimed", deadline=None)  # a busy machine fails no test
settings.load_profile("untimed")

OTHERS = ("slow", "browser", "long", "bench")
SPENT = "processor seconds"
MOST = 2.0  # of processor time, for a quick test
BEGUN = pytest.StashKey[float]()


def only_quick(config: pytest.Config) -> bool:
    """Tell whether the quick tests are asked for, and nothing else."""
    return config.option.markexpr.strip() == "quick"


def pytest_ignore_collect(collection_path: Path, config: pytest.Config) -> bool | None:
    """Leave notebooks unread where only quick tests run: each cell of them wants a kernel."""
    return True if only_quick(config) and collection_path.suffix == ".ipynb" else None


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Mark as quick what bears no other mark; a notebook's cells are slow."""
    for item in items:
        if item.path.suffix == ".ipynb":
            item.add_marker("slow")
        if not any(item.get_closest_marker(name) for name in OTHERS):
            item.add_marker("quick")


@pytest.fixture
def outside(record_property: Callable[[str, object], None]) -> Outside:
    """Hold values against the outside, each counted once by ``tests/outside_checks.py``."""
    return Outside(record_property)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_protocol(item: pytest.Item) -> Generator[None, object, object]:
    """Note the processor time of a quick test, its fixtures and its processes included."""
    item.stash[BEGUN] = processor_time()
    return (yield)


def processor_time() -> float:
    """Tell the processor time of this process and of those it has waited for [s]."""
    return sum(os.times()[:4])


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item,
) -> Generator[None, pytest.TestReport, pytest.TestReport]:
    """Write the time so far into the report, which reaches whoever sums up."""
    report = yield
    if item.get_closest_marker("quick"):
        report.user_properties.append((SPENT, processor_time() - item.stash[BEGUN]))
    return report


def pytest_terminal_summary(terminalreporter: Any) -> None:
    """Name the quick tests that took long; nothing fails by it."""
    seen = [report for kind in ("passed", "failed") for report in terminalreporter.getreports(kind)]
    spent = {
        report.nodeid: seconds
        for report in seen
        for name, seconds in report.user_properties
        if name == SPENT
    }
    late = [f"{name} ({seconds:.1f} s)" for name, seconds in spent.items() if seconds > MOST]
    if late:
        terminalreporter.write_line(f"Too slow for quick tests, mark them slow: {', '.join(late)}")
