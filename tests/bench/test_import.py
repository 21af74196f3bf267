"""How much ``import seatwork`` adds to the start of Python.

Run with ``python -m pytest tests/bench -m bench`` on a quiet machine.
"""

import statistics
import subprocess
import sys
import time

import pytest

RUNS = 21
# what the import may add to Python's start on a quiet machine [s]
MOST = 0.060


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
def test_the_import_adds_at_most_60_ms(capsys: pytest.CaptureFixture[str]) -> None:
    """Bare starts and starts with the import, taken in turn, differ by at most 60 ms."""
    bare, whole = medians("pass", "import seatwork")
    with capsys.disabled():
        sys.stdout.write(f"\nimport seatwork adds {1000 * (whole - bare):.1f} ms\n")
    assert whole - bare <= MOST


@pytest.mark.bench
def test_the_import_is_a_small_part_of_numpys() -> None:
    """In one run the package's import takes under a fifth of numpy's."""
    bare, ours, numpy = medians("pass", "import seatwork", "import numpy")
    assert (ours - bare) / (numpy - bare) < 0.2
