"""How much ``import seatwork`` adds to the start of Python.

Run with ``python -m pytest tests/bench -m bench`` on a quiet machine.
"""

import statistics
import subprocess
import sys
import time

import pytest

RUNS = 21
# how long a start with the import may take, beside one with what it names [-]
MOST = 1.5


def start(statement: str) -> float:
    """Time one new Python that runs a statement [s]."""
    begun = time.perf_counter()
    subprocess.run([sys.executable, "-c", statement], check=True)
    return time.perf_counter() - begun


def medians(*statements: str) -> list[float]:
    """Time the statements in turn, so that all see the same machine; medians [s]."""
    rounds = [[start(statement) for statement in statements] for _ in range(RUNS)]
    return [statistics.median(column) for column in zip(*rounds, strict=True)]


@pytest.mark.bench
def test_the_import_is_hardly_more_than_what_it_names(capsys: pytest.CaptureFixture[str]) -> None:
    """Beside a start with the modules of Python that it names, taken in turn, it adds half."""
    bare, whole = medians("import typing, importlib", "import seatwork")
    with capsys.disabled():
        adds, ratio = 1000 * (whole - bare), whole / bare
        sys.stdout.write(f"\nimport seatwork adds {adds:.1f} ms, {ratio:.2f} x the bare start\n")
    assert whole / bare <= MOST


@pytest.mark.bench
def test_the_import_is_a_small_part_of_numpys() -> None:
    """In one run the package's import takes under a fifth of numpy's."""
    bare, ours, numpy = medians("pass", "import seatwork", "import numpy")
    assert (ours - bare) / (numpy - bare) < 0.2
