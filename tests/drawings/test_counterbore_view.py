"""The two sections of a counterbore: the plate's outline, and what is in it."""

from dataclasses import replace

import numpy as np
import pytest
from matplotlib.path import Path
from seatwork.drawings.parts.tightening import Bolt, Ring
from seatwork.drawings.scene import Look
from seatwork.drawings.views.counterbore_view import FACE, TIGHTENING, CounterboreView, Tightened
from seatwork.seats import Counterbore
from seatwork.seats.pilots import Pilot, RaisedBoss

PART = Tightened(
    bore=Counterbore(diameter=28.0, depth=6.4, hole_diameter=10.3),
    thickness=25.0,
    edge_distance=25.0,
    floor_left=18.6,
    web=11.0,
    bolt=Bolt(head=16.5, height=6.2, shank=9.5),
    amount=-0.2,
    pilot=Pilot(diameter=10.25, kind="removable", clearance=0.05),
    washer=None,
    boss=None,
    socket=27.2,
    rests_at=-6.4,
    heading="heading",
    second="second",
    cutting=("one", "two"),
    tightening=("three", "four"),
    text="text",
)
BOSS = RaisedBoss(diameter=21.0, height=6.0, spotface_diameter=18.0, grip_gain=11.4)
ON_BOSS = replace(
    PART,
    bore=Counterbore(diameter=18.0, depth=1.0, hole_diameter=10.3),
    boss=BOSS,
    amount=11.2,
    rests_at=6.0,
)


def metal(scene, number: int, x: float, y: float) -> bool:
    """Tell whether a spot [mm from axis and face] is metal: not under the paper's cover."""
    plate = scene._plates[number]
    cover = plate.cover.get_path()
    scale = 205.0 / scene.part.thickness
    scale = min(scale, 225.0 / scene.part.edge_distance)
    axis = (340.0, TIGHTENING)[number]
    spot = (axis + scale * x, FACE + scale * y)
    rings = [Path(ring) for ring in cover.to_polygons()]
    return sum(ring.contains_point(spot) for ring in rings) == 2


@pytest.mark.parametrize("number", [0, 1])
def test_metal_is_where_it_should_be(number):
    """Metal lies beside the bore and under its floor, not in bore or hole, above or below."""
    scene = CounterboreView(PART)
    scene.draw()
    for side in (-1, 1):
        assert metal(scene, number, side * 16.0, -3.0)
        assert metal(scene, number, side * 8.0, -10.0)
        assert not metal(scene, number, side * 12.0, -3.0)
        assert not metal(scene, number, side * 4.0, -10.0)
        assert not metal(scene, number, side * 16.0, 1.0)
        assert not metal(scene, number, side * 8.0, -25.5)


def test_the_plate_ends_at_its_edge():
    """On the right the plate ends where it does: 25 mm from the axis, and no metal beyond."""
    scene = CounterboreView(replace(PART, edge_distance=18.0, thickness=60.0))
    drawing = scene.draw()
    assert drawing.text == "text"
    ends = scene._plates[1].edges.get_xdata()
    scale = 205.0 / 60.0
    assert np.nanmax(ends) == pytest.approx(TIGHTENING + 18.0 * scale)


def test_a_boss_stands_above_the_face():
    """On a boss there is metal above the face out to its side, and none beyond."""
    scene = CounterboreView(ON_BOSS)
    scene.draw()
    assert metal(scene, 1, 10.0, 5.5)
    assert metal(scene, 1, 8.0, 4.5)
    assert not metal(scene, 1, 8.0, 5.5)
    assert not metal(scene, 1, 11.0, 3.0)


@pytest.mark.slow
@pytest.mark.parametrize("palette", ["light", "dark", "print"])
def test_moved_is_fresh(palette):
    """A scene that was moved shows, to the pixel, what a new one shows."""
    look = Look(palette=palette)
    key = replace(
        PART,
        socket=None,
        bolt=Bolt(head=14.3, height=6.0, shank=9.5, key=8.0),
        washer=Ring(outside=20.0, hole=10.5, thickness=1.6),
        pilot=Pilot(diameter=10.2, kind="solid", clearance=0.1),
    )
    scene = CounterboreView(PART, look)
    drawing = scene.draw()
    for part in (key, ON_BOSS, PART):
        assert scene.move(part) == "text"
        assert drawing.png(0.5) == CounterboreView(part, look).draw().png(0.5)


def test_the_face_is_marked_where_it_stops_the_socket():
    """Where the socket stands on the face that face is marked, and nowhere else."""
    scene = CounterboreView(PART)
    scene.draw()
    assert np.isnan(scene._solids.stopped.get_xdata()).all()
    scene.move(replace(PART, bore=Counterbore(diameter=17.0, depth=6.4, hole_diameter=10.3),
                       rests_at=0.0))  # fmt: skip
    marked = scene._solids.stopped
    assert np.nanmax(marked.get_xdata()) > TIGHTENING
    assert np.nanmax(np.abs(np.array(marked.get_ydata()) - FACE)) == 0
    scene.move(replace(ON_BOSS))
    assert np.isnan(marked.get_xdata()).all()
