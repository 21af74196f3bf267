"""Dimension lines end where they say, with an arrowhead at each end."""

import numpy as np
import pytest
from seatwork.drawings.strokes.linework import BEYOND, OFFSET, Linework, joined
from seatwork.drawings.strokes.style import PROJECTOR


@pytest.fixture
def work():
    """Begin linework in projector size."""
    return Linework(PROJECTOR)


def tips(work):
    """Give the first corner of every arrowhead, its point."""
    corners = np.asarray(work.heads.vertices).reshape(-1, 4, 2)
    return corners[:, 0]


def test_a_dimension_has_a_head_at_both_ends(work):
    """Both arrowheads touch the extension lines and point outward."""
    work.dimension((0.0, 0.0), (300.0, 0.0))
    heads = np.asarray(work.heads.vertices).reshape(-1, 4, 2)
    assert tips(work).tolist() == [[0.0, 0.0], [300.0, 0.0]]
    assert (heads[0, 1:3, 0] > 0).all()
    assert (heads[1, 1:3, 0] < 300).all()


def test_arrowheads_are_three_times_as_long_as_wide(work):
    """The proportion drafting standards ask of a filled arrowhead (common practice)."""
    work.dimension((0.0, 0.0), (0.0, 200.0))
    head = np.asarray(work.heads.vertices)[:3]
    length = abs(head[0, 1] - head[1, 1])
    assert length / abs(head[1, 0] - head[2, 0]) == pytest.approx(3.0)


def test_a_short_dimension_is_pointed_at_from_outside(work):
    """Where two heads find no room they stand outside and point at each other."""
    work.dimension((0.0, 0.0), (0.0, 20.0))
    heads = np.asarray(work.heads.vertices).reshape(-1, 4, 2)
    assert tips(work).tolist() == [[0.0, 0.0], [0.0, 20.0]]
    assert (heads[0, 1:3, 1] < 0).all()
    assert (heads[1, 1:3, 1] > 20).all()


def test_extension_lines_keep_off_the_part(work):
    """An extension line leaves a gap at the part and runs a little past the dimension line."""
    work.extension((10.0, 50.0), (10.0, 200.0))
    assert np.asarray(work.lines.vertices).tolist() == [[10.0, 50.0 + OFFSET], [10.0, 200 + BEYOND]]


@pytest.mark.parametrize("half", [30.0, 41.0, 45.0, 60.0])
def test_an_angle_ends_on_both_sides(work, half):
    """The arc's heads lie on its radius, as far to the left of the axis as to the right."""
    work.angle((100.0, 50.0), 300.0, half)
    ends = tips(work) - (100.0, 50.0)
    assert np.hypot(*ends.T) == pytest.approx([300.0, 300.0])
    assert ends[0] * (-1, 1) == pytest.approx(ends[1])
    assert np.degrees(np.arctan2(ends[1, 0], ends[1, 1])) == pytest.approx(half)


def test_a_leader_points_at_its_last_point(work):
    """A leader carries one head, at the spot it speaks of."""
    work.leader((0.0, 0.0), (20.0, 0.0), (60.0, 30.0))
    assert tips(work).tolist() == [[60.0, 30.0]]


def test_joined_lines_are_broken_between():
    """Lines joined into one have exactly one gap between any two."""
    line = np.array([(0.0, 0.0), (1.0, 0.0)])
    assert np.isnan(joined([line, line, line])).any(axis=1).sum() == 2
