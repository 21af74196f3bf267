"""The picture of a box of screws: nothing in the way, moved equals fresh, bars counted right."""

import itertools

import numpy as np
import pytest
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Look
from seatwork.drawings.views.flush_view import BoxOfScrews, FlushView, heading
from seatwork.seats import Countersink, Head

LOOKS = [Look(), Look(projector=True), Look(system="metric", projector=True)]


def box(heights, seats=(12.8, 12.95), sharp=(12.05, 12.98), angle=82.0):
    """Give a box of heads with its two worst."""
    heights = np.asarray(heights, dtype=float)
    deep, proud = np.mean(heights < -0.381), np.mean(heights > 0.005)
    worst = [
        SeatedHead(
            head=Head(sharp_diameter=size, included_angle=82.0),
            seat=Countersink(diameter=seat, hole_diameter=6.75, included_angle=angle),
        )
        for size, seat in zip(sharp[::-1], seats, strict=True)
    ]
    return BoxOfScrews(
        heights=heights,
        deep=float(deep),
        flush=float(1 - deep - proud),
        proud=float(proud),
        below=0.381,
        above=0.005,
        highest=worst[0],
        lowest=worst[1],
        second="No one seat fits them all: heads 0.021 in apart, 0.015 in allowed",
        text=f"{heights.sum()} {seats}",
    )


@pytest.mark.slow
@pytest.mark.parametrize("look", LOOKS, ids=["desk", "projector", "metric"])
def test_nothing_overlaps_or_leaves_the_page(look, faults):
    """All proud, all deep, all right or mixed, in seats of any size, all words stand clear."""
    scene = FlushView(box([0.0]), look)
    drawing = scene.draw()
    found = []
    spreads = (np.linspace(-3, -2, 50), np.linspace(-0.6, 0.2, 50), np.linspace(1, 2, 50), [0.0])
    for heights, seat, angle in itertools.product(spreads, (9.0, 12.9, 15.0), (60, 120)):
        part = box(heights, (seat, seat + 0.5), angle=angle)
        scene.move(part)
        found += [f"{part.text}: {fault}" for fault in faults(drawing)]
    assert found == []


@pytest.mark.slow
def test_moved_is_fresh():
    """A scene that was moved shows, to the pixel, what a new one shows."""
    scene = FlushView(box(np.linspace(-2, 2, 99)))
    drawing = scene.draw()
    other = box(np.linspace(-0.3, 0.0, 99))
    assert scene.move(other) == other.text
    assert drawing.png(0.5) == FlushView(other).draw().png(0.5)


def test_a_bar_is_as_high_as_its_heads_are_many():
    """Of 30 heads too deep and 10 proud, the higher bar is three times as high as the other."""
    scene = FlushView(box([-0.6] * 30 + [0.1] * 10))
    scene.draw()
    tops = {name: bar.get_path().vertices[:, 1].max() - 150.0 for name, bar in scene._bars.items()}
    assert tops["deep"] == pytest.approx(3 * tops["proud"])
    assert tops["flush"] == 0.0


def test_the_heading_counts_what_breaks_the_rule():
    """Heads too deep and heads proud both break the rule; none of them is said in words."""
    assert heading(box([-0.6, 0.0, 0.0, 0.1])).endswith("50 % of the heads break the rule")
    assert heading(box([0.0, -0.1])) == "Every head of this box lies within the rule"
