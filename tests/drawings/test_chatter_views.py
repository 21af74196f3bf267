"""The pictures of chatter, at the settings its bench gives them: nothing in the way."""

import pytest
from seatwork import benches
from seatwork.benches.bank.chatter_shown import CONES, CURES, MAP, TRACE

pytestmark = pytest.mark.slow

FRAME, CRANK, HOPPER = (
    "1/4 flat head 82° (frame)",
    "1/4 flat head 82° (crank arm)",
    "M6 socket flat 90° (hopper plate)",
)
VIEWS = {CONES: {}, MAP: {"on_map": True}, TRACE: {"in_time": True}, CURES: {"cures": True}}


@pytest.mark.parametrize("view", VIEWS)
def test_nothing_overlaps_or_leaves_the_page(view, faults):
    """Over speeds, flutes, widths and seats, words stand clear and whole."""
    found = []
    for projector, system in ((False, "inch"), (True, "metric")):
        look = {"projector": projector, "system": system}
        for job, width, speed in (
            (FRAME, 0.508, 1000), (HOPPER, 0.127, 100), (CRANK, 4.5, 3000), (FRAME, 1.5, 640),
            (CRANK, 2.0, 2400), (FRAME, 0.127, 210),
        ):  # fmt: skip
            bench = benches.chatter(
                shown=True, **VIEWS[view], job=job, width=width, speed=speed, **look
            )
            found += [f"{job} {speed}: {fault}" for fault in faults(bench.drawing)]
    assert found == []
