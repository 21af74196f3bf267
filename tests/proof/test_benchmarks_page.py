"""The page of benchmarks tells of a machine in general words, and its sums are right by hand."""

import importlib.util
import platform
import re
import sys
from pathlib import Path
from types import ModuleType

import pytest
from bench import timed

PROJECT = Path(__file__).parents[2]


@pytest.fixture(scope="module")
def table() -> ModuleType:
    """Load the command that measures."""
    spec = importlib.util.spec_from_file_location("bench_table", PROJECT / "tests/bench/table.py")
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


def test_the_machine_is_told_without_its_name(table) -> None:
    """Cores, memory, Python and load; no name of a host and no place."""
    told, name = table.machine(), platform.node()
    assert re.match(r"\d+ cores of \S+, \d+ GiB of memory, ", told)
    assert not name or name not in told
    assert "/" not in told


@pytest.mark.parametrize(
    ("seconds", "words"), [(2.5, "2.5 s"), (0.0123, "12.3 ms"), (4.76e-7, "0.476 µs")]
)
def test_times_have_three_digits_and_a_unit(seconds, words) -> None:
    """By hand: 12.3 ms is .0123 s."""
    assert timed.shown(seconds) == words


def test_ratios_and_growth_go_by_the_middle_run() -> None:
    """Runs of 1, 2 and 9 s have the median 2 s: twice 1 s, and a fifth of 10 s."""
    ours, other = timed.Timed("ours", (1.0, 9.0, 2.0)), timed.Timed("others", (10.0,))
    assert timed.beside(ours, other) == "0.2 of others"
    assert timed.grown(timed.Timed("few", (1.0,)), ours, 10) == "2 times for 10 times as many"
    assert ours.row() == "| ours | 1 s | 2 s | 9 s |  |"
