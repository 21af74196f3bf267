"""How long cards take, in seconds of this machine's own time.

Run by hand: ``python -m pytest tests/bench/test_cards.py -m bench -s``.
"""

import sys
import time

import pytest
from seatwork import notes
from seatwork.cards import job_card, part_card
from seatwork.plan import Plan, make

pytestmark = pytest.mark.bench

NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
ONE, HUNDRED = 1.0, 60.0  # s


def plan() -> Plan:
    """Plan the hopper plate's rim."""
    return make(
        notes.read(NOTE), material="6061 aluminum", machine="bench drill press", thickness=6.35
    )


def test_a_card_takes_under_a_second(capsys: pytest.CaptureFixture[str]) -> None:
    """A plan set on pages and written as PDF takes under a second, the first one too."""
    times = []
    for _ in range(4):
        began = time.process_time()
        job_card(plan()).pdf()
        times.append(time.process_time() - began)
    with capsys.disabled():
        sys.stdout.write(f"\nfirst card {times[0]:.2f} s, then {min(times[1:]):.2f} s\n")
    assert max(times) < ONE


def test_a_hundred_cards_take_under_a_minute(capsys: pytest.CaptureFixture[str]) -> None:
    """A part of a hundred features is set and written in under 60 s, told as it goes."""
    made, seen = plan(), []
    began = time.process_time()
    pages = part_card("frame", {f"F{n}": made for n in range(100)}, progress=seen.append)
    pages.pdf()
    taken = time.process_time() - began
    with capsys.disabled():
        sys.stdout.write(f"\n100 cards, {len(pages.figures)} pages: {taken:.1f} s\n")
    assert seen == list(range(1, 101))
    assert taken < HUNDRED
