"""Speed of reading notes: 5 ms at most, told as a share of a plain sum on the same machine.

Run by hand: ``python -m pytest tests/bench/test_notes.py -m bench -s``.
"""

import json
import sys
from collections.abc import Callable
from pathlib import Path
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
READ = 5.0  # ms at most, on a machine that does the plain sum in PLAIN
PLAIN = 45.0  # ms for a million squares, where these limits were set
PRINTS = Path(__file__).parents[1] / "notes" / "data" / "prints.jsonl"


def best(work: Callable[[], object], tries: int = 40) -> float:
    """Time the quickest of some tries [ms]."""
    times = []
    for _ in range(tries):
        start = perf_counter()
        work()
        times.append(perf_counter() - start)
    return 1000 * min(times)


def plain_sum() -> int:
    """Add a million squares: a measure of the machine itself."""
    return sum(n * n for n in range(1_000_000))


@pytest.fixture(scope="module")
def share() -> float:
    """Return how long 5 ms of the limits' machine are here [ms]."""
    return READ * best(plain_sum, 5) / PLAIN


@pytest.mark.parametrize("note", USUAL)
def test_usual_note_is_read_quickly(note: str, share: float) -> None:
    """A note as prints have them is read, with assumptions and warnings, in under 5 ms."""
    read(note)
    took = best(lambda: read(note))
    sys.stdout.write(f"{took:.2f} ms, {took / share:.2f} of the limit  {note}\n")
    assert took < share


def test_every_print_note_is_read_quickly(share: float) -> None:
    """Of 163 ordinary notes none takes over 5 ms once warm, read or asked about."""
    notes = [json.loads(line)["note"] for line in PRINTS.read_text("utf-8").splitlines()]
    times = sorted((best(lambda one=note: tried(one), 5), note) for note in notes)
    middle, (worst, slowest) = times[len(times) // 2][0], times[-1]
    sys.stdout.write(
        f"middle {middle:.2f} ms, worst {worst:.2f} ms, limit {share:.2f}  {slowest}\n"
    )
    assert worst < share


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
