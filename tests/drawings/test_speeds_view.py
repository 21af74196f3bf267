"""The picture of a spindle speed: nothing in the way, marks where they belong."""

import itertools

import numpy as np
import pytest
from seatwork.drawings.scene import Look
from seatwork.drawings.views.speeds_view import DIAMETERS, SpeedSum, SpeedsView

LINE = "by house rule speeds.countersink_diameter"
LOOKS = [Look(), Look(projector=True), Look(system="metric", projector=True)]


def total(raw=233.0, step=210.0, diameter=22.2, cap=None, misread=True):
    """Give a sum with the longest lines there are."""
    drill = raw * 1.5 * diameter / DIAMETERS
    return SpeedSum(
        heading="Too fast: the slowest of the bench drill press is 250",
        second="Allowed 143 rev/min: back gear or another machine; do not guess",
        ladder=((f"Surface speed: {1000} sfm (300 m/min)", LINE),) * 7,
        diameter=diameter,
        raw=raw,
        allowed=min(raw, cap or raw),
        step=step,
        cap=cap,
        steps=(80.0, 210.0, 660.0, 2720.0),
        drill=drill,
        wanted=drill / 1.5,
        misread=drill / 3 if misread else None,
        text=f"{raw} {step}",
    )


@pytest.mark.slow
@pytest.mark.parametrize("look", LOOKS, ids=["desk", "projector", "metric"])
def test_nothing_overlaps_or_leaves_the_page(look, faults):
    """From the slowest to the fastest cut, with a cap or without, all words stand clear."""
    scene = SpeedsView(total(), look)
    drawing = scene.draw()
    found = []
    for raw, diameter, cap in itertools.product((20.0, 300.0, 20000.0), (3.0, 60.0), (None, 300.0)):
        part = total(raw, None if raw < 50 else 80.0, diameter, cap)
        scene.move(part)
        found += [f"{part.text}: {fault}" for fault in faults(drawing)]
    assert found == []


@pytest.mark.slow
def test_moved_is_fresh():
    """A scene that was moved shows, to the pixel, what a new one shows."""
    scene = SpeedsView(total(cap=300.0, misread=False))
    drawing = scene.draw()
    other = total(raw=100.0, step=None)
    assert scene.move(other) == other.text
    assert drawing.png(0.5) == SpeedsView(other).draw().png(0.5)


def test_without_a_step_nothing_is_marked_as_set():
    """Where the machine is too fast the filled square is gone, not put at a wrong step."""
    scene = SpeedsView(total(step=None))
    scene.draw()
    assert np.isnan(scene._set.get_ydata()).all()
    scene.move(total())
    assert np.isfinite(scene._set.get_ydata()).all()
    assert scene._set.get_ydata()[0] < scene._spot.get_ydata()[0]
