"""The picture of the triangle: nothing in the way, nothing given away, moved equals fresh."""

import itertools
import re

import pytest
from seatwork.drawings import Look, triangle
from seatwork.drawings.parts.triangle_part import HOLDS, STEPS, TrianglePart
from seatwork.drawings.scene import GhostScene
from seatwork.drawings.views.triangle_view import TriangleView
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink
from seatwork.seats.triangles import SLIPS

INCH = 25.4
LOOKS = [Look(), Look(projector=True), Look(system="metric", projector=True)]
HELD = {"nothing": None, "a pin": 0.375 * INCH, "a ball": 0.5 * INCH, "a head": 0.535 * INCH}
"""What lies in the frame's seat, .507 on .266 at 82°."""


def seat(diameter=0.507 * INCH, share=0.525, angle=82.0):
    """Give a cone on a hole that is a share of its diameter."""
    return Countersink(diameter=diameter, hole_diameter=share * diameter, included_angle=angle)


def parts():
    """Yield small and large, steep and flat, every step, all the slips and none."""
    grid = itertools.product((4.5, 26.0), (0.02, 0.3, 0.9), (60, 82, 100, 120), range(1, STEPS + 1))
    for diameter, share, angle, step in grid:
        for slips, find in (((), "down"), (SLIPS, "down"), ((), "diameter"), ((), "angle")):
            cone = seat(diameter, share, angle)
            yield TrianglePart(seat=cone, step=step, slips=slips, find=find)


def beside_parts():
    """Yield every other angle beside a cone, small holes and large, at every step."""
    for angle, other, share in itertools.product((60, 82, 120), (60, 90, 100), (0.05, 0.5, 0.9)):
        for step in range(1, STEPS + 1):
            yield TrianglePart(seat=seat(12.0, share, angle), step=step, beside=other)


def held_parts():
    """Yield what a cone can hold, at every step."""
    for holds, step in itertools.product(HOLDS[1:], range(1, STEPS + 1)):
        yield TrianglePart(seat=seat(), step=step, holds=holds, held=HELD[holds])
    for head in (0.36, 0.45, 0.495, 0.52, 0.6, 0.8):
        yield TrianglePart(seat=seat(), holds="a head", held=head * INCH)
    for ball in (0.36, 0.42, 0.67):
        yield TrianglePart(seat=seat(), holds="a ball", held=ball * INCH)


@pytest.mark.parametrize(
    "every", [pytest.param(5, marks=pytest.mark.slow), pytest.param(1, marks=pytest.mark.long)]
)
@pytest.mark.parametrize("look", LOOKS, ids=["desk", "projector", "metric"])
def test_nothing_overlaps_or_leaves_the_page(look, every, faults):
    """Over steps of small and large cones, or over every one, words stand clear and whole."""
    scene = TriangleView(TrianglePart(seat=seat()), look)
    drawing = scene.draw()
    found = []
    shown = itertools.chain(parts(), held_parts(), beside_parts())
    for part in itertools.islice(shown, LOOKS.index(look), None, every):
        scene.move(part)
        found += [f"{part}: {fault}" for fault in faults(drawing) if "crosses" not in fault]
    assert found == []


@pytest.mark.slow
def test_moved_is_fresh():
    """A scene that was moved shows, to the pixel, what a new one shows."""
    scene = TriangleView(TrianglePart(seat=seat(angle=100)))
    drawing = scene.draw()
    free, held = itertools.islice(parts(), 0, None, 61), itertools.islice(held_parts(), 0, None, 4)
    for part in [*free, *held]:
        text = scene.move(part)
        again = TriangleView(part).draw()
        assert drawing.png(0.5) == again.png(0.5), part
        assert text == again.text


def test_each_step_tells_its_own_number_and_no_later_one():
    """.241, .1205, 41° and .139 of the frame seat come one by one, worked by hand."""
    numbers = ["0.241", "0.1205", "41°", "0.139"]
    for step in range(1, STEPS + 1):
        drawing = triangle(0.507 * INCH, 0.266 * INCH, 82, step=step)
        words = drawing.text + " ".join(t.get_text() for t in drawing.figure.axes[0].texts)
        assert [number in words for number in numbers] == [step > n for n in range(1, STEPS)]


@pytest.mark.parametrize(("find", "number"), [("diameter", "13.44"), ("angle", "90°")])
def test_what_is_looked_for_comes_last(find, number):
    """The M6 seat of ISO 10642, 3.42 deep on 6.6: diameter or angle stands in no earlier step."""
    for step in range(1, STEPS + 1):
        drawing = triangle(13.44, 6.6, 90, step=step, find=find, look=Look(system="metric"))
        words = drawing.text + " ".join(t.get_text() for t in drawing.figure.axes[0].texts)
        assert (number in words) is (step == STEPS)
        assert "3.42" in words


def test_every_number_of_the_picture_is_in_its_text():
    """Slips and all: whoever hears the text has all the numbers."""
    drawing = triangle(0.507 * INCH, 0.266 * INCH, 82, slips=SLIPS)
    words = " ".join(t.get_text() for t in drawing.figure.axes[0].texts)
    for number in re.findall(r"\d*\.\d+|\d+°", words):
        assert number in drawing.text


def test_slips_are_told_with_the_number_they_give():
    """.277, .017 and .292 of the frame seat, worked by hand; from 90° on one gives none."""
    text = triangle(0.507 * INCH, 0.266 * INCH, 82, slips=SLIPS).text
    for slip, number in zip(SLIPS, ("0.277", "0.017", "0.292"), strict=True):
        assert f"Slip, {slip}: down would be {number} in" in text
    assert "no number comes of it" in triangle(12, 6, 100, slips="whole angle").text


def test_a_slip_can_be_drawn_before_down_is_known():
    """A wrong answer is shown at its step without the right answer beside it."""
    text = triangle(0.507 * INCH, 0.266 * INCH, 82, step=3, slips="whole difference").text
    assert "0.277" in text
    assert "0.139" not in text


def test_another_angle_stands_beside_it():
    """Steep is deep: the M6 seat of ISO 10642 is 3.42 down at 90°, and 3.93 at 82°, by hand."""
    text = triangle(13.44, 6.6, 82, beside=90, look=Look(system="metric")).text
    assert "Down 3.93 mm" in text
    assert "at 90°: down 3.42 mm" in text
    assert "0.139" not in triangle(0.507 * INCH, 0.266 * INCH, 82, beside=90, step=3).text


def test_half_the_angle_is_half_the_answer_where_the_angle_is_asked():
    """Neither 82° nor 41° stands in a step before the last; the tangent does in the fourth."""
    for step in range(1, STEPS):
        drawing = triangle(0.507 * INCH, 0.266 * INCH, 82, step=step, find="angle")
        words = drawing.text + " ".join(t.get_text() for t in drawing.figure.axes[0].texts)
        assert "41°" not in words
        assert "82°" not in words
        assert ("0.869" in words) is (step == 4)


def test_a_pin_stops_where_the_cone_is_as_wide():
    """A .375 pin lies .066 / .8693 = .076 deep in the frame's seat, worked by hand."""
    text = triangle(0.507 * INCH, 0.266 * INCH, 82, holds="a pin", held=0.375 * INCH).text
    assert "0.076 in" in text


def test_a_ball_stands_over_the_face():
    """.250 / .6561 + .250 - .2535 / .8693 = .339, worked by hand."""
    text = triangle(0.507 * INCH, 0.266 * INCH, 82, holds="a ball", held=0.5 * INCH).text
    assert "0.339 in" in text
    assert "over the face" in text


@pytest.mark.parametrize(
    ("held", "said"), [(0.535, "0.016 in (0.41 mm), proud"), (0.450, "0.033 in (0.83 mm), below")]
)
def test_a_head_stands_by_half_its_difference_to_the_seat(held, said):
    """.028 and .057 halved and divided by .8693: .016 proud, .033 below, worked by hand."""
    assert said in triangle(0.507 * INCH, 0.266 * INCH, 82, holds="a head", held=held * INCH).text


@pytest.mark.parametrize(
    ("given", "said"),
    [
        ({"step": 0}, "take 1 to 5"),
        ({"step": True}, "take 1 to 5"),
        ({"slips": "half"}, "take one of whole difference"),
        ({"holds": "a nut"}, "take one of nothing"),
        ({"find": "speed"}, "take one of down"),
        ({"holds": "a pin"}, "give it"),
        ({"holds": "a pin", "held": 6.0}, "drops through"),
        ({"holds": "a pin", "held": 13.0}, "does not go into it"),
        ({"holds": "a head", "held": 12.0}, "lies flush"),
        ({"holds": "a ball", "held": 6.0}, "falls through"),
        ({"holds": "a ball", "held": 10.0, "slips": SLIPS[0]}, "leave it out"),
        ({"holds": "a pin", "held": 8.0, "find": "angle"}, "only down"),
        ({"beside": 82, "slips": SLIPS[0]}, "not drawn together with slips"),
        ({"beside": 82, "holds": "a ball", "held": 10.0}, "not drawn together with a ball"),
        ({"beside": 200}, "angle"),
    ],
)
def test_what_cannot_be_drawn_is_refused_in_a_sentence(given, said):
    """No such step or slip, what drops through or does not go in, and a head that lies flush."""
    with pytest.raises(SeatworkError, match=said):
        triangle(12.0, 6.5, 90, **given)


def test_the_wall_may_stay_behind():
    """The scene can show a former cone beside the present one."""
    scene = TriangleView(TrianglePart(seat=seat()))
    scene.draw()
    assert isinstance(scene, GhostScene)
    assert len(scene.ghosts) == 1
