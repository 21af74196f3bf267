"""The wall of a hole with its seats: a 90° cone is as deep as it is wide on one side."""

import numpy as np
from seatwork.drawings.strokes.hole_walls import CutHole, SeatCut, outline, side_wall, thickness_of
from seatwork.seats import Counterbore, Countersink

CONE = Countersink(diameter=12.0, hole_diameter=6.0, included_angle=90.0)
BORE = Counterbore(diameter=12.0, hole_diameter=6.0, depth=4.0)


def hole(*seats: SeatCut, **given: float) -> CutHole:
    """Return a 6 mm hole with some seats."""
    return CutHole(heading="", hole="", hole_diameter=6.0, seats=seats, **given)


def test_a_cone_runs_from_the_face_to_the_hole() -> None:
    """From a radius of 6 mm at the face to the hole's 3 mm, 3 mm down."""
    wall = side_wall([SeatCut(shape=CONE)], 6.0)
    assert np.allclose([wall[0], wall[-1]], [(6.0, 0.0), (3.0, 3.0)])


def test_a_counterbore_has_an_upright_wall_and_a_floor() -> None:
    """The widest radius holds to the floor, 4 mm down."""
    wall = side_wall([SeatCut(shape=BORE)], 6.0)
    assert np.allclose(wall[[0, -1]], [(6.0, 0.0), (3.0, 4.0)])
    assert (6.0, 4.0) in [tuple(np.round(one, 9)) for one in wall]


def test_seats_on_both_faces_mirror_each_other() -> None:
    """The same cone on both faces of a 10 mm plate leaves 4 mm of plain hole between them."""
    line = outline(hole(SeatCut(shape=CONE), SeatCut(shape=CONE, far=True), thickness=10.0))
    assert np.allclose(line[[0, -1]], [(6.0, 0.0), (6.0, -10.0)])
    plain = line[line[:, 0] < 3.001]
    assert np.allclose([plain[0, 1], plain[-1, 1]], [-3.0, -7.0])


def test_cones_that_meet_leave_the_wider_radius() -> None:
    """In a 4 mm plate two 3 mm cones meet in the middle: at 2 mm each is 4 mm in radius."""
    line = outline(hole(SeatCut(shape=CONE), SeatCut(shape=CONE, far=True), thickness=4.0))
    assert np.isclose(line[:, 0].min(), 4.0)


def test_a_blind_hole_ends_at_its_point() -> None:
    """The wall ends on the axis, at the depth of the drill's point, and no plate is thinner."""
    part = hole(blind=8.0, tip=9.8)
    assert np.allclose(outline(part)[-1], (0.0, -9.8))
    assert thickness_of(part) > 9.8
