"""The two pictures of a chamfer: nothing in the way, moved equals fresh, the extremes marked."""

import itertools

import numpy as np
import pytest
from seatwork.drawings.scene import Look
from seatwork.drawings.views.edges_view import EdgesView, TwoReadings
from seatwork.drawings.views.rim_view import AllRound, RimView
from seatwork.seats import Chamfer
from seatwork.seats.rims import rim
from seatwork.seats.surfaces import Flat, Round, Tilted

pytestmark = pytest.mark.slow

LOOKS = [Look(), Look(projector=True), Look(system="metric", projector=True)]
IDS = ["desk", "projector", "metric"]
LONG_NOTE = "The print says BREAK EDGES, no size: by house rule 0.031 in, at most 0.062 in"


def readings(width=0.762, angle=90.0, hole=6.7564, share=0.7071):
    """Read one width in two ways."""
    return TwoReadings(
        along_face=Chamfer(leg=width, included_angle=angle),
        across_bevel=Chamfer(leg=width * share, included_angle=angle),
        width=width,
        hole_diameter=hole,
        note=LONG_NOTE,
    )


def around(surface=None, width=0.762, angle=90.0, hole=6.0):
    """Cut one chamfer on some face."""
    chamfer = Chamfer(leg=width, included_angle=angle)
    return AllRound(
        rim=rim(chamfer.at_hole(hole), surface or Tilted(tilt=3.0), points=72),
        hole_diameter=hole,
        leg=width,
        included_angle=angle,
        noted_width=chamfer.slant_width,
        face="some face",
        caption="the face rises to the right",
        note=LONG_NOTE,
    )


@pytest.mark.parametrize("look", LOOKS, ids=IDS)
def test_nothing_overlaps_on_the_corners(look, faults):
    """Over widths, holes and tool angles all words of the two corners stand clear and whole."""
    scene = EdgesView(readings(), look)
    drawing = scene.draw()
    found = []
    for width, angle, hole in itertools.product((0.1, 3.2), (60, 82, 90, 120), (1.0, 20.0)):
        part = readings(width, angle, hole, share=width / Chamfer(
            leg=width, included_angle=angle).slant_width)  # fmt: skip
        scene.move(part)
        found += [f"{part}: {fault}" for fault in faults(drawing)]
    assert found == []


@pytest.mark.parametrize("look", LOOKS, ids=IDS)
def test_nothing_overlaps_all_round(look, faults):
    """Over widths, tool angles and faces all words beside the rim and its chart stand clear."""
    scene = RimView(around(), look)
    drawing = scene.draw()
    faces = (Flat(), Tilted(tilt=0.5), Tilted(tilt=20.0), Round(diameter=25.4),
             Round(diameter=80.0, inside=True))  # fmt: skip
    found = []
    for width, angle, face in itertools.product((0.1, 0.762, 3.2), (60, 90, 120), faces):
        part = around(face, width, angle)
        scene.move(part)
        found += [f"{part}: {fault}" for fault in faults(drawing)]
    assert found == []


def test_moved_is_fresh():
    """Both scenes, moved, show to the pixel what new ones show."""
    for build, first, second in (
        (EdgesView, readings(), readings(2.0, 120)),
        (RimView, around(), around(Round(diameter=30.0))),
        (RimView, around(), around(Flat())),
    ):
        scene = build(first)
        drawing = scene.draw()
        text = scene.move(second)
        fresh = build(second).draw()
        assert text == fresh.text
        assert drawing.png(0.5) == fresh.png(0.5)


def test_the_marks_stand_at_the_extremes():
    """On a tilted face the widest place is at the high side, the narrowest opposite."""
    scene = RimView(around())
    scene.draw()
    assert np.argmax(scene._wide.get_xdata()) == 1
    wide, narrow = scene._wide.get_xdata(), scene._narrow.get_xdata()
    assert wide[0] > 300 > narrow[0]
    assert scene._narrow.get_ydata()[1] < scene._wide.get_ydata()[1]


def test_an_edge_not_broken_all_round_is_said():
    """Where the cone misses part of the edge, heading and text say so."""
    drawing = RimView(around(Tilted(tilt=20.0), width=0.3)).draw()
    words = [text.get_text() for text in drawing.figure.axes[0].texts]
    assert "This chamfer does not break the edge all round" in words
    assert drawing.text.endswith("It does not break the edge all round.")
