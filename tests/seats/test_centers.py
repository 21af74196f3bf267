"""Center seats in bar and tube."""

from math import cos, radians, sin

import pytest
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink
from seatwork.seats.centers import CenterDrill, CenterSeat

INCH = 25.4
PIPE = Countersink.from_depth(depth=INCH / 16, hole_diameter=1.049 * INCH, included_angle=60)
NUMBER_3 = CenterDrill(
    body_diameter=0.25 * INCH, pilot_diameter=7 / 64 * INCH, pilot_length=7 / 64 * INCH
)


def test_a_pipe_mouth_a_sixteenth_deep() -> None:
    """Pipe 1.315/1.049 with a 60° mouth 1/16 deep: ⌀1.121, wall .097 (worked)."""
    seat = CenterSeat(cone=PIPE, outside_diameter=1.315 * INCH)
    assert seat.cone.diameter / INCH == pytest.approx(1.121, abs=5e-4)
    assert seat.wall_at_mouth / INCH == pytest.approx(0.097, abs=5e-4)
    assert seat.land == pytest.approx(INCH / 16 / 0.8660254, rel=1e-6)


def test_a_number_3_center_drill_with_a_200_mouth() -> None:
    """#3 center drill, pilot 7/64, mouth .200: the cone is .0785 deep (worked)."""
    assert NUMBER_3.cone(0.200 * INCH).depth / INCH == pytest.approx(0.0785, abs=5e-5)
    assert NUMBER_3.travel(0.200 * INCH) / INCH == pytest.approx(0.0785 + 7 / 64, abs=5e-5)


@pytest.mark.parametrize("mouth", [0.25, 0.26])
def test_a_mouth_as_wide_as_the_body_is_too_far(mouth: float) -> None:
    """A cone that reaches the body of the drill has been taken too far."""
    with pytest.raises(SeatworkError, match="ends at the body of the drill"):
        NUMBER_3.cone(mouth * INCH)


@pytest.mark.parametrize(
    ("seat_angle", "where", "inner", "outer"),
    [(60, "cone", 4, 10), (82, "hole edge", 4, 4), (45, "rim", 10, 10)],
)
def test_a_center_of_another_angle_touches_on_a_ring(
    seat_angle: float, where: str, inner: float, outer: float
) -> None:
    """A 60° center fills a 60° seat, sits on the small end of an 82° one, the mouth of a 45°."""
    cone = Countersink(diameter=10, hole_diameter=4, included_angle=seat_angle)
    found = CenterSeat(cone=cone, outside_diameter=25).contact()
    assert (found.where, found.inner_diameter, found.outer_diameter) == (where, inner, outer)
    assert found.mean_diameter == (inner + outer) / 2


@pytest.mark.parametrize("center_angle", [45, 59, 60, 61, 82])
def test_the_gap_of_a_wrong_center_is_that_of_two_turned_lines(center_angle: float) -> None:
    """The far end of the land stands off a center's side, turned about the end that touches."""
    cone = Countersink(diameter=10, hole_diameter=4, included_angle=60)
    seat = CenterSeat(cone=cone, outside_diameter=25)
    half = radians(center_angle / 2)
    # from the end that touches, the far end of the seat's side; its distance from the center's
    along, out = cone.depth, (10 - 4) / 2
    distance = abs(along * sin(half) - out * cos(half))
    assert seat.contact(center_angle).gap == pytest.approx(distance, abs=1e-12)


def test_a_mouth_as_wide_as_the_bar_is_refused() -> None:
    """There must be wall left round the mouth."""
    with pytest.raises(SeatworkError, match="mouth of the center seat"):
        CenterSeat(cone=PIPE, outside_diameter=PIPE.diameter)
