"""The picture of two plunges at one stop setting: nothing in the way, moved equals fresh."""

import itertools
from dataclasses import replace

import pytest
from seatwork.drawings.scene import GhostScene, Look
from seatwork.drawings.views.depth_view import DepthView, Plunge, SameStop
from seatwork.seats import Countersink

INCH = 25.4


def plunge(diameter, hole, angle, nose, touched):
    """Cut one seat, its travel counted from the touch-off."""
    seat = Countersink(diameter=diameter, hole_diameter=hole, included_angle=angle)
    travel = seat.depth if touched == "hole edge" else seat.travel_from_face(nose)
    return Plunge(seat=seat, nose_diameter=nose, travel=travel)


def pair(diameter=0.507 * INCH, share=0.525, angle=82, nose=1.524, wider=0.762, cut=True,
         touched="face", stop_error=0.0):  # fmt: skip
    """Give two plunges; the second comes out `wider`."""
    hole = share * diameter
    return SameStop(
        first=plunge(diameter, hole, angle, nose, touched),
        second=plunge(diameter + wider, hole, angle, nose * 1.5, touched),
        touched=touched,
        wider=wider,
        stop_error=stop_error,
        cut=cut,
    )


LOOKS = [Look(), Look(projector=True), Look(system="metric", projector=True)]


@pytest.mark.slow
@pytest.mark.parametrize("look", LOOKS, ids=["desk", "projector", "metric"])
def test_nothing_overlaps_or_leaves_the_page(look, faults):
    """Over small and large, sharp and blunt, both touch-offs, words stand clear and whole."""
    scene = DepthView(pair(), look)
    drawing = scene.draw()
    found = []
    grid = itertools.product((4.5, 13.0, 25.9), (0.3, 0.85), (60, 120), (-0.4, 3.0))
    for diameter, share, angle, wider in grid:
        for touched, cut in itertools.product(("face", "hole edge"), (True, False)):
            part = pair(diameter, share, angle, 0.2 * share * diameter, wider, cut, touched, 0.5)
            scene.move(part)
            found += [f"{part}: {fault}" for fault in faults(drawing)]
    assert found == []


@pytest.mark.slow
@pytest.mark.parametrize("cut", [True, False])
def test_moved_is_fresh(cut):
    """A scene that was moved shows, to the pixel, what a new one shows."""
    scene = DepthView(pair(angle=100, touched="hole edge", cut=not cut))
    drawing = scene.draw()
    text = scene.move(pair(cut=cut))
    fresh = DepthView(pair(cut=cut)).draw()
    assert text == fresh.text
    assert drawing.png(0.5) == fresh.png(0.5)


def test_the_question_keeps_the_answer():
    """Before number 2 is cut neither picture nor text tells its diameter."""
    drawing = DepthView(pair(cut=False)).draw()
    words = [text.get_text() for text in drawing.figure.axes[0].texts]
    assert not any("0.537" in word for word in [*words, drawing.text])
    assert any(word.endswith("?") and len(word) < 4 for word in words)


def test_the_dashed_line_is_there_only_where_the_seats_differ():
    """Number 1 is dashed into number 2 where it was another seat, and named so."""
    scene = DepthView(pair())
    drawing = scene.draw()

    def named():
        return any("dashed: number 1" in t.get_text() for t in drawing.figure.axes[0].texts)

    assert named()
    same = pair(wider=0.0)
    scene.move(replace(same, second=replace(same.second, seat=same.first.seat)))
    assert not named()


def test_it_leaves_a_ghost():
    """The wall of number 2 may stay behind for comparison."""
    scene = DepthView(pair())
    scene.draw()
    assert isinstance(scene, GhostScene)
    assert len(scene.ghosts) == 1
