"""Outlines of cutters: the angle, body, nose and pilot that they are drawn with are theirs."""

import numpy as np
import pytest
from seatwork.drawings.parts.cutter_shapes import CutterShape, _around, _outline, add_end
from seatwork.drawings.scene import Look
from seatwork.drawings.strokes.style import PALETTES, page, style

SCALE, TIP = 10.0, (100.0, 50.0)


def outline(shape, top=400.0):
    """Give the corners of a cutter, in mm from its tip, curve of the break left out."""
    points = np.array(_outline(shape, TIP, top, SCALE).vertices)[:-6]
    return (points - np.array(TIP)) / SCALE


@pytest.mark.parametrize(("angle", "body", "nose"), [(82, 15.9, 1.6), (60, 12.7, 2.4), (90, 25, 0)])
def test_the_cone_has_its_angle(angle, body, nose):
    """Between the lips of the outline lies the included angle, from the nose to the body."""
    shape = CutterShape(included_angle=angle, body=body, nose=nose, lips=(360.0,))
    right = [point for point in outline(shape) if point[0] > 0]
    low, high = sorted(right, key=lambda point: point[1])[:2]
    lean = np.degrees(np.arctan2(high[0] - low[0], high[1] - low[1]))
    assert 2 * lean == pytest.approx(angle)
    assert 2 * high[0] == pytest.approx(body)
    assert 2 * low[0] == pytest.approx(max(nose, 0.02 * body))


def test_a_flat_cutter_has_a_floor_and_a_pilot():
    """A counterbore's body ends flat at its floor; below it stands the pilot."""
    shape = CutterShape(included_angle=180, body=20, nose=0, lips=(120.0,) * 3, pilot=10, shank=12)
    points = outline(shape)
    assert shape.cone == 0
    assert any(np.allclose(point, (10, 0)) for point in points)
    assert any(np.allclose(point, (5, 0)) for point in points)
    assert points[:, 1].min() == pytest.approx(-shape.below)
    assert 2 * np.abs(points[points[:, 1] == points[:, 1].min()][:, 0]).max() == pytest.approx(10)


def test_the_shank_is_as_thick_as_it_is():
    """A straight shank of 3/8 is drawn 3/8 thick; a Morse taper narrows upward."""
    straight = CutterShape(included_angle=82, body=15.9, nose=1.6, lips=(360.0,), shank=9.525)
    top = outline(straight)
    assert np.abs(top[top[:, 1] == top[:, 1].max()][:, 0]).max() == pytest.approx(15.9 / 2)
    assert any(np.isclose(point[0], 9.525 / 2) for point in top)
    taper = CutterShape(included_angle=90, body=25, nose=3.8, lips=(120.0,) * 3, tapered=True)
    whole = np.array(_outline(taper, TIP, 800.0, SCALE).vertices)
    upper = whole[whole[:, 1] > 790.0]
    assert np.abs(upper[:, 0] - TIP[0]).max() < 17.8 / 2 * SCALE


def test_lips_stand_where_their_spacing_says():
    """Uneven spacing of 50, 65, 55, 70, 60, 60 puts the lips at the running sums."""
    shape = CutterShape(
        included_angle=82, body=19, nose=3, lips=(50.0, 65.0, 55.0, 70.0, 60.0, 60.0)
    )
    first = shape.places[0]
    assert [round(place - first) for place in shape.places] == [0, 50, 115, 170, 240, 300]


@pytest.mark.parametrize("lips", [(360.0,), (180.0,) * 2, (120.0,) * 3, (60.0,) * 6])
def test_seen_from_the_tip_every_lip_shows(lips):
    """Going round the view from the tip, the outline comes out to the body once for each lip."""
    shape = CutterShape(included_angle=90, body=12, nose=2, lips=lips)
    out = np.hypot(*(_around(shape, (0.0, 0.0), 60.0)).T) > 59.0
    assert np.count_nonzero(np.diff(out.astype(int)) == 1) == len(lips)


def test_a_cross_hole_cutter_is_round_and_has_its_hole():
    """Seen from the tip it is a whole circle with a nose and one hole in it."""
    _, axes = page(PALETTES["light"])
    shape = CutterShape(included_angle=90, body=12, nose=2, lips=(360.0,), cross_hole=True)
    add_end(axes, style(Look()), shape, (300.0, 300.0), SCALE)
    assert len(axes.patches) == 3
