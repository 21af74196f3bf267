"""Speed of reading notes: a usual note in under 2 ms, and its ratio to plain Python.

Run by hand: ``python -m pytest tests/bench/test_notes.py -m bench -s``.
"""

import sys
from collections.abc import Callable
from time import perf_counter

import pytest
from seatwork.notes import read, write

pytestmark = pytest.mark.bench

USUAL = (
    "4X ⌀.201 THRU ⌵ ⌀.385 X 82°",
    "DRILL .281 C'BORE .438 X .25 DP",
    "17/32 DR, 1-1/4 S.F., 3 HOLES",
    "#7 X .75 DP, 1/4-20 UNC-2B X .50 DP, CSK ⌀.28 X 90°",
    "2X M8X1.25-6H ↧16 / ⌀6.8 ↧20 ⌵ ⌀8.4 X 90°",
)
LIMIT = 2.0  # ms for a usual note


def best(work: Callable[[], object], tries: int = 40) -> float:
    """Time the quickest of some tries [ms]."""
    times = []
    for _ in range(tries):
        start = perf_counter()
        work()
        times.append(perf_counter() - start)
    return 1000 * min(times)


@pytest.mark.parametrize("note", USUAL)
def test_usual_note_reads_in_two_milliseconds(note: str) -> None:
    """A note as prints have them is read, with assumptions and warnings, in under 2 ms."""
    read(note)
    took = best(lambda: read(note))
    sys.stdout.write(f"{took:.2f} ms  {note}\n")
    assert took < LIMIT


def test_writing_costs_little_more_than_reading() -> None:
    """Writing a note, which reads it back for proof, takes at most four readings."""
    callout = read(USUAL[3])
    reading, writing = best(lambda: read(USUAL[3])), best(lambda: write(callout))
    sys.stdout.write(f"writing / reading {writing / reading:.1f}\n")
    assert writing < 4 * reading


@pytest.mark.parametrize("piece", ["⌀.281 THRU ", "FOR A ", "1-", "( ", "4X ", "X 1 "])
def test_longest_note_grows_about_linearly(piece: str) -> None:
    """Ten times the text takes well under the hundredfold of a quadratic reader."""
    short, long = (piece * 200)[:200], (piece * 2000)[:2000]
    ratio = best(lambda: tried(long), 3) / best(lambda: tried(short), 10)
    sys.stdout.write(f"10 x text, {ratio:.0f} x time  {piece!r}\n")
    assert ratio < 60


def tried(text: str) -> str:
    """Read a text, whatever comes of it."""
    try:
        return str(read(text))
    except ValueError as error:
        return str(error)
