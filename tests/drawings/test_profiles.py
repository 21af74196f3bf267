"""Drawn outlines obey the geometry they stand for: heads touch their seats and never cut in."""

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from matplotlib.path import Path
from seatwork.drawings.parts.seat_view import contact_points
from seatwork.drawings.strokes import profiles
from seatwork.errors import SeatworkError
from seatwork.seats import Chamfer, Counterbore, Countersink, Head, Spotface, fit

angles = st.floats(60.0, 120.0)


def half_width(outline, height):
    """Give how far right of the axis an outline reaches at `height` [mm], by interpolation."""
    points = outline.to_polygons()[0] if isinstance(outline, Path) else outline
    right = points[points[:, 0] > 0.0]
    order = np.argsort(right[:, 1], kind="stable")
    return np.interp(height, right[order, 1], right[order, 0])


@pytest.mark.slow
@given(
    head_angle=angles,
    seat_angle=angles,
    sharp=st.floats(3.0, 30.0),
    edge=st.floats(0.8, 1.0),
    wide=st.floats(0.6, 1.4),
    hole=st.floats(0.2, 0.7),
)
def test_heads_touch_and_never_cut_in(head_angle, seat_angle, sharp, edge, wide, hole):
    """At every height below the face the drawn screw stays inside its seat, and touches once."""
    head = Head(sharp_diameter=sharp, included_angle=head_angle, edge_diameter=sharp * edge)
    try:
        seat = Countersink(
            diameter=sharp * wide, hole_diameter=sharp * hole, included_angle=seat_angle
        )
        found = fit(head, seat)
    except SeatworkError:
        assume(False)
    bottom = -2.0 * max(seat.depth, head.apex_depth)
    screw = profiles.head_outline(head, seat, found.amount, bottom)
    heights = np.linspace(bottom, min(found.amount, 0.0) - 1e-9, 400)
    room = [seat.diameter_at(-h) / 2 for h in np.minimum(heights, 0.0)]
    assert (half_width(screw, heights) <= np.array(room) + 1e-6 * sharp + 0.0011).all()
    x, y = contact_points(seat, found)[0]
    assert half_width(screw, y) == pytest.approx(x, abs=1e-6 * sharp + 0.0011)
    assert seat.diameter_at(-y) / 2 == pytest.approx(x, abs=1e-6 * sharp)


def test_the_real_rim_is_drawn():
    """An M6 head of least edge is 11.34 across, 1.05 below its theoretical sharp corner.

    Sharp diameter 13.44 and edge 11.34: ISO 10642:2004 table 1 (edge from memory); at 90° the
    edge lies (13.44 - 11.34)/2 below the top.
    """
    head = Head(sharp_diameter=13.44, included_angle=90, edge_diameter=11.34)
    seat = Countersink(diameter=13.44, hole_diameter=6.6, included_angle=90)
    outline = profiles.head_outline(head, seat, fit(head, seat).amount, -20.0)
    assert outline.to_polygons()[0][:, 0].max() == pytest.approx(5.67)
    assert half_width(outline, -1.05 - 1.0) == pytest.approx(4.67, abs=1e-6)
    corner = half_width(outline, -1e-9)
    assert corner < 5.67 - 0.3


def test_a_known_height_ends_in_its_neck():
    """A 1/4 head .153 high ends in a neck of .507 - 2 x .153 tan 41° = .241 (B18.6.3 sizes)."""
    head = Head(sharp_diameter=12.8778, included_angle=82, height=3.8862)
    seat = Countersink(diameter=12.8778, hole_diameter=6.7564, included_angle=82)
    outline = profiles.head_outline(head, seat, fit(head, seat).amount, -20.0)
    assert half_width(outline, -15.0) * 2 / 25.4 == pytest.approx(0.241, abs=5e-4)


def test_outlines_are_symmetric():
    """The left half of a whole outline mirrors the right half."""
    wall = profiles.counterbore_wall(Counterbore(diameter=11, depth=6.4, hole_diameter=6.6), -20)
    outline = profiles.whole(wall)
    assert outline[::-1] * (-1, 1) == pytest.approx(outline)


def test_a_spotface_is_as_deep_as_it_was_cut():
    """The floor of a spotface lies at the depth cut, and is as wide as the cutter."""
    wall = profiles.spotface_wall(Spotface(diameter=31.75, hole_diameter=13.5), 0.8, -20.0)
    assert wall[1].tolist() == [15.875, -0.8]


def test_a_chamfer_grows_the_hole_by_two_legs():
    """A .020 chamfer on a .266 hole shows .306 at the face (worked by hand: .266 + 2 x .020)."""
    wall = profiles.chamfer_wall(Chamfer(leg=0.508), 6.7564, -20.0)
    assert wall[0, 0] * 2 / 25.4 == pytest.approx(0.306)
