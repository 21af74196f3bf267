"""The live picture keeps up with the hand: ratios within one run, in a real browser.

Run with ``python -m pytest tests/bench -m bench`` on a quiet machine; the table alone is printed
by ``python tests/bench/live_picture.py``.
"""

import asyncio
import importlib.util
import sys
from pathlib import Path

import pytest

# the picture against a bare label and against plain interact [-]
MOST_TO_LABEL, LEAST_TO_INTERACT, LEAST_PAINT_TO_INTERACT = 1.6, 6.0, 3.0
# frames a second while dragged, and the kernel's work of a move [ms]
LEAST_FRAMES, MOST_WORK = 45.0, 2.0
# where a map or a casting is worked out anew: key press to change [ms], frames a second
MOST_WAIT, LEAST_HEAVY_FRAMES = 100.0, 12.0


def harness():
    """Load the harness that lies beside this file."""
    path = Path(__file__).with_name("live_picture.py")
    spec = importlib.util.spec_from_file_location("live_picture", path)
    module = importlib.util.module_from_spec(spec)
    sys.modules["live_picture"] = module
    spec.loader.exec_module(module)
    return module


@pytest.mark.bench
def test_the_picture_follows_nearly_as_quickly_as_a_label(capsys):
    """Beside a label at most 1.6 times, beside interact at least 6 times (paint 3) as quick."""
    live = harness()
    found = asyncio.run(live.measure_all(list(live.VARIANTS), live.ROUNDS))
    with capsys.disabled():
        sys.stdout.write(f"\n{live.table(found)}\n")
    ours, label, interact = found["ours"], found["label"], found["interact"]
    assert live.middle(ours.change) <= MOST_TO_LABEL * live.middle(label.change)
    assert LEAST_TO_INTERACT * live.middle(ours.change) <= live.middle(interact.change)
    assert LEAST_PAINT_TO_INTERACT * live.middle(ours.paint) <= live.middle(interact.paint)
    assert live.middle(ours.fps) >= LEAST_FRAMES
    assert live.middle(ours.work) <= MOST_WORK


@pytest.mark.bench
def test_the_benches_of_the_course_keep_up(capsys):
    """Sections: at most 1.6 times a label, 45 frames, 2 ms; a new map: 100 ms, 12 frames."""
    live = harness()
    found = asyncio.run(live.measure_all(["label", *live.BENCHES], live.ROUNDS))
    with capsys.disabled():
        sys.stdout.write(f"\n{live.table(found)}\n")
    label = live.middle(found["label"].change)
    for name in live.BENCHES:
        change, fps, work = (
            live.middle(getattr(found[name], c)) for c in ("change", "fps", "work")
        )
        if name in live.HEAVY:
            assert change <= MOST_WAIT, name
            assert fps >= LEAST_HEAVY_FRAMES, name
        else:
            assert change <= MOST_TO_LABEL * label, name
            assert fps >= LEAST_FRAMES, name
            assert work <= MOST_WORK, name
