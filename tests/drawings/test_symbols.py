"""Hole signs: their shape, and how they stand in a line of a print note."""

import numpy as np
import pytest
from matplotlib.font_manager import FontProperties
from matplotlib.textpath import TextPath
from seatwork.drawings.scene import Look
from seatwork.drawings.strokes.style import FONT, page, style
from seatwork.drawings.strokes.symbols import CAPITAL, DRAWN, STROKE, SignedLine


def extents(sign):
    """Give the box round a sign at type size 1."""
    return DRAWN[sign]().get_extents()


@pytest.fixture
def line():
    """Make a line of lettering on a page of its own, baseline at (40, 100)."""
    its = style(Look(projector=True))
    _, axes = page(its.colors)
    return SignedLine(axes, its, x=40.0, y=100.0)


def test_capital_height():
    """The height that signs are drawn to is the height of the font's own capital H."""
    h = TextPath((0, 0), "H", prop=FontProperties(family=FONT, size=100.0)).get_extents()
    assert h.height / 100.0 == pytest.approx(CAPITAL, abs=0.005)


def test_countersink_sign_is_a_right_angle():
    """⌵ opens at 90° whatever the cutter's angle, and stands as high as a capital (Y14.5)."""
    points = np.asarray(DRAWN["⌵"]().vertices)
    legs = points[1] - points[0], points[2] - points[1]
    assert np.dot(*legs) == pytest.approx(0.0, abs=1e-9)
    assert extents("⌵").y1 == pytest.approx(CAPITAL, abs=0.04)


def test_counterbore_sign_is_twice_as_wide_as_high():
    """⌴ is two capitals wide and one high (ASME Y14.5, from memory)."""
    box = extents("⌴")
    assert box.width / box.height == pytest.approx(2.0)
    assert box.y0 == pytest.approx(0.0)


def test_spotface_sign_holds_its_letters():
    """The spotface is the counterbore's bracket with SF inside it (ASME Y14.5, from memory)."""
    bracket, *letters = sorted(DRAWN["⌴SF"]().to_polygons(), key=lambda shape: -np.ptp(shape[:, 0]))
    assert np.ptp(bracket[:, 0]) == pytest.approx(extents("⌴").width)
    assert len(letters) == 2
    for shape in letters:
        assert STROKE < shape[:, 1].min() < shape[:, 1].max() < CAPITAL
        assert STROKE < shape[:, 0].min() < shape[:, 0].max() < 2 * CAPITAL - STROKE


def test_depth_sign_points_down():
    """↧ has its bar on top and its point on the baseline."""
    box, points = extents("↧"), np.asarray(DRAWN["↧"]().vertices)
    assert (box.y0, box.y1) == pytest.approx((0.0, CAPITAL))
    assert points[:, 1].argmin() == points[:, 1].tolist().index(0.0)
    assert points[points[:, 1] == box.y0][0, 0] == pytest.approx(box.x0 + box.width / 2)


def test_diameter_sign_is_no_filled_disk():
    """⌀ is a ring with a stroke: by the non-zero rule its inner circle runs the other way."""
    areas = []
    for shape in DRAWN["⌀"]().to_polygons():
        x, y = shape.T
        areas.append(float(np.sum(x[:-1] * y[1:] - x[1:] * y[:-1])))
    ring, inside, stroke = areas
    assert ring * stroke > 0 > ring * inside
    assert abs(inside) < abs(ring)


def test_letters_and_signs_follow_each_other(line):
    """Signs and letters stand from left to right in the order of the note, without overlap."""
    line.set("⌀.266 THRU ⌵ ⌀.507 X 82°")
    texts = [text for text in line.texts if text.get_text()]
    assert [text.get_text() for text in texts] == [".266 THRU", ".507 X 82°"]
    signs = line.signs.get_path().to_polygons(closed_only=False)
    rights = sorted(sign[:, 0].max() for sign in signs)
    assert 40.0 < rights[0] < texts[0].get_position()[0] + 1.0
    assert rights[-1] < texts[1].get_position()[0] + 1.0


def test_a_new_angle_leaves_the_signs_alone(line):
    """Where only the angle changes, the outline of the signs is not set again."""
    line.set("⌀.266 THRU ⌵ ⌀.507 X 82°")
    before = line.signs.get_path()
    line.set("⌀.266 THRU ⌵ ⌀.507 X 90°")
    assert line.signs.get_path() is before


def test_a_line_without_signs(line):
    """A plain line is one text and no sign."""
    line.set("FLUSH")
    assert [text.get_text() for text in line.texts if text.get_text()] == ["FLUSH"]
    assert len(line.signs.get_path()) == 1
