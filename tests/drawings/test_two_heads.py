"""Two heads from above and cut open."""

import pytest
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.scene import Look
from seatwork.drawings.views.two_heads import CutOpen, FromAbove, Pair
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head

HEAD = Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34)


def pair(angle=82, hole=6.6, diameter=13.44, heading="Both flush by the shop's rule. Which one?"):
    """Seat the same M6 head in a 90° seat and in one of another angle."""
    own, other = (
        SeatedHead(
            head=HEAD,
            seat=Countersink(diameter=diameter, hole_diameter=hole, included_angle=cone),
        )
        for cone in (90, angle)
    )
    return Pair(first=own, second=other, heading=heading)


@pytest.mark.slow
@pytest.mark.parametrize("scene", [FromAbove, CutOpen])
@pytest.mark.parametrize("system", ["inch", "metric"])
def test_nothing_overlaps(scene, system, faults):
    """For every cutter from 60° to 120°, and wide or narrow holes, no words touch."""
    begun = scene(pair(), Look(system=system, projector=True))
    drawing = begun.draw()
    for angle in range(60, 121, 6):
        for hole, diameter in ((6.6, 13.44), (2.0, 13.44), (8.0, 9.0), (6.6, 25.0)):
            begun.move(pair(angle, hole, diameter))
            assert faults(drawing) == []


def test_from_above_nothing_is_given_away():
    """Seen from above there is no angle and no number on the page, and none in the text."""
    drawing = FromAbove(pair()).draw()
    page = " ".join(text.get_text() for text in drawing.figure.axes[0].texts)
    for said in (page, drawing.text):
        assert "°" not in said
        assert " in " not in said.replace("in their", "")
        assert "mm" not in said
    assert "1" in page
    assert "2" in page


def test_from_above_both_look_alike():
    """The two views from above differ in nothing but their place."""
    scene = FromAbove(pair())
    scene.draw()
    left, right = (head.get_xy() for head in scene._heads)
    assert right - left == pytest.approx((right - left)[0] + 0 * left)


def test_cut_open_tells_both():
    """Cut open, one bears on its cone and one on a line at its rim, .16 mm below."""
    assert CutOpen(pair(), Look(system="metric")).draw().text == (
        "Two heads cut open. Number 1, a 90° head in a 90° seat, is flush with the face and bears "
        "on the cone, 11.34 mm (0.446 in) across. Number 2, a 90° head in an 82° seat, lies "
        "0.16 mm (0.006 in) below the face and touches at the rim, 11.34 mm (0.446 in) across."
    )


@pytest.mark.parametrize("scene", [FromAbove, CutOpen])
def test_moving_equals_drawing_anew(scene):
    """A moved scene shows exactly what a fresh one shows."""
    moved = scene(pair())
    drawing = moved.draw()
    moved.move(pair(120, 3.0, 25.0))
    moved.move(pair(100))
    assert drawing.png(0.5) == scene(pair(100)).draw().png(0.5)


def test_proud_is_said():
    """If a head stands proud, the text of the view from above does not call both alike."""
    assert "number 2 stands proud" in FromAbove(pair(100)).draw().text


def test_impossible_pairs_leave_the_picture():
    """A head that drops through raises a sentence and changes nothing."""
    scene = CutOpen(pair())
    drawing = scene.draw()
    before = drawing.png(0.5)
    with pytest.raises(SeatworkError, match="drops through"):
        scene.move(pair(hole=12.0))
    assert drawing.png(0.5) == before
