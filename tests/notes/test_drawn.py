"""Notes drawn from the ways people write each thing, read back to what they were drawn from."""

import sys
from pathlib import Path

import pytest
from seatwork.notes import read

sys.path.insert(0, str(Path(__file__).parent))

from drawn import Drawn

pytestmark = pytest.mark.slow

NOTES = 300


@pytest.mark.parametrize("seed", range(NOTES))
def test_a_drawn_note_says_what_it_was_drawn_from(seed: int) -> None:
    """However a thing is written, the same thing is read, and nothing is asked."""
    drawn = Drawn(seed)
    callout = read(drawn.note, "metric" if drawn.metric else "inch")
    assert callout.features == drawn.features, drawn.note
    assert callout.said_not_used == drawn.said
    assert callout.sizes_hold == drawn.holds
    assert {warning.code for warning in callout.warnings} <= {"inch-on-metric"}


def test_the_drawn_notes_are_many() -> None:
    """At least 250 of them are written differently."""
    assert len({Drawn(seed).note for seed in range(NOTES)}) >= 250
