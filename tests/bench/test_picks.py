"""What a pick adds to a cell, beside the bench that stood there before it.

Run by hand: ``python -m pytest tests/bench/test_picks.py -m bench -s``.
"""

import sys
import time
from collections.abc import Callable
from statistics import median

import pytest
from seatwork import benches
from seatwork.benches.page.view import BenchView
from seatwork.picks import pick
from seatwork.picks.view import PickView

pytestmark = pytest.mark.bench

MOST = 0.005  # s of processor time that a pick may add
TURNS = 9


def spent(deed: Callable[[], None]) -> float:
    """Return the processor time that something usually takes [s]; the first time is left out."""
    deed()
    times = []
    for _ in range(TURNS):
        began = time.process_time()
        deed()
        times.append(time.process_time() - began)
    return median(times)


def asked(name: str) -> Callable[[], None]:
    """Give what the cell of a pick does: its living form and its still."""

    def show() -> None:
        shown = pick(name)
        view = PickView(shown.words, room=False, is_open=shown.is_open)
        shown.still()
        view.close()

    return show


def bench() -> None:
    """Show a bench as its cell did: the live view and the still."""
    made = benches.angles(screw="1/4 flat head 82° (frame)", cutter_angle=90, measure=True)
    view = BenchView(made)
    made.drawing.markdown()
    view.close()


def test_a_pick_adds_five_milliseconds_at_most(capsys: pytest.CaptureFixture[str]) -> None:
    """A question alone takes under 5 ms; one that covers a bench takes less than the bench did."""
    alone, covering, before = spent(asked("angle-box")), spent(asked("angle-eight")), spent(bench)
    with capsys.disabled():
        told = (
            f"\npick alone {1000 * alone:.1f} ms; covering a bench {covering / before:.2f} of it\n"
        )
        sys.stdout.write(told)
    assert alone < MOST
    assert covering < before + MOST
