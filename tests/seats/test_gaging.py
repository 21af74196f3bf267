"""Gaging: inverse pairs, guards, and what a measured height is worth."""

from math import cos, radians, sin, sqrt

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.seats import (
    Countersink,
    angle_from_two_balls,
    ball_top,
    diameter_from_ball,
    protrusion,
)
from seatwork.seats.gaging import ball_contact, ball_range
from seatwork.seats.head_gaging import dial_reading, plate_hole, sharp_from_protrusion
from seatwork.seats.measuring import decide, flushness, uncertainty

INCH = 25.4
QUICK = settings(max_examples=80, deadline=None)
SEAT = Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=82)
ANGLES = st.floats(30, 150)


@QUICK
@given(hole=st.floats(2, 20), wide=st.floats(1.1, 3), angle=ANGLES, part=st.floats(0.01, 1))
def test_a_ball_gives_the_diameter_back(
    hole: float, wide: float, angle: float, part: float
) -> None:
    """The height of a ball in a seat gives the seat's diameter."""
    seat = Countersink(diameter=hole * wide, hole_diameter=hole, included_angle=angle)
    smallest, largest = ball_range(seat)
    ball = smallest + part * (largest - smallest)
    assume(smallest < ball <= largest)
    found = diameter_from_ball(ball, ball_top(ball, seat), angle)
    assert found == pytest.approx(seat.diameter, rel=1e-11)


@QUICK
@given(angle=ANGLES, small=st.floats(1, 10), larger=st.floats(1.05, 3), datum=st.floats(-50, 50))
def test_two_balls_give_the_angle_back(
    angle: float, small: float, larger: float, datum: float
) -> None:
    """Two balls in one cone give its angle, from any datum."""
    large = small * larger
    seat = Countersink(
        diameter=3 * large, hole_diameter=small * cos(radians(angle / 2)) / 2, included_angle=angle
    )
    tops = [ball_top(ball, seat) + datum for ball in (small, large)]
    assert angle_from_two_balls(small, large, *tops) == pytest.approx(angle, rel=1e-8)


@QUICK
@given(part=st.floats(0.02, 1))
def test_a_ball_touches_the_cone_at_its_contact_circle(part: float) -> None:
    """On the contact circle the ball's surface lies on the cone, and elsewhere above it."""
    smallest, largest = ball_range(SEAT)
    ball = smallest + part * (largest - smallest)
    top = ball_top(ball, SEAT)
    contact = ball_contact(ball_diameter=ball, included_angle=82)
    for width in (contact, contact * 0.9, contact * 1.1):
        low = top - ball / 2 - sqrt((ball / 2) ** 2 - (min(width, ball) / 2) ** 2)
        cone = -(SEAT.diameter - width) / 2 / SEAT.tangent
        gap = (low - cone) * sin(radians(41))
        assert gap == pytest.approx(0, abs=1e-9) if width == contact else gap > 0


def test_the_balls_that_gage_a_quarter_inch_seat() -> None:
    """On .507/.266 at 82° balls of .352 to .672 gage; .353 does, .250 falls through (worked)."""
    smallest, largest = ball_range(SEAT)
    assert smallest / INCH == pytest.approx(0.352, abs=5e-4)
    assert largest / INCH == pytest.approx(0.672, abs=5e-4)
    assert ball_top(0.353 * INCH, SEAT) < 0.353 * INCH
    with pytest.raises(SeatworkError, match="falls through"):
        ball_top(0.250 * INCH, SEAT)
    with pytest.raises(SeatworkError, match="on the rim"):
        ball_top(0.700 * INCH, SEAT)


@pytest.mark.outside("sum worked by hand", "seats.angle_from_two_balls")
def test_balls_three_and_five_eighths() -> None:
    """3/8 and 5/8 balls, tops .3155 apart: 82.0°; .001 more: 81.5° (worked)."""
    balls = (0.375 * INCH, 0.625 * INCH)
    assert angle_from_two_balls(*balls, 0, 0.3155 * INCH) == pytest.approx(82.0, abs=0.05)
    assert angle_from_two_balls(*balls, 0, 0.3165 * INCH) == pytest.approx(81.5, abs=0.05)


def test_a_ball_resting_on_the_rim_is_not_read_as_a_seat() -> None:
    """A top so high that the ball rests on the rim gives no diameter."""
    with pytest.raises(SeatworkError, match="rests on the rim"):
        diameter_from_ball(12, 12, 90)


def test_balls_that_no_cone_holds_are_refused() -> None:
    """Tops no farther apart than the balls' diameters differ mean a ball off the cone."""
    with pytest.raises(SeatworkError, match="no cone holds"):
        angle_from_two_balls(10, 16, 0, 6)
    with pytest.raises(SeatworkError, match="smaller ball"):
        angle_from_two_balls(16, 10, 0, 6)


@QUICK
@given(sharp=st.floats(3, 40), part=st.floats(0.3, 0.99), angle=ANGLES)
def test_protrusion_plate_and_sharp_diameter_are_one_triangle(
    sharp: float, part: float, angle: float
) -> None:
    """Protrusion over a hole gives the sharp diameter and the hole back."""
    gage = sharp * part
    stands = protrusion(sharp, gage, angle)
    assert sharp_from_protrusion(stands, gage, angle) == pytest.approx(sharp, rel=1e-12)
    assert plate_hole(sharp, stands, angle) == pytest.approx(gage, rel=1e-10)


@pytest.mark.parametrize(("angle", "stands"), [(80, 0.0495), (82, 0.0477)])
def test_heads_are_a_range_of_angles(angle: float, stands: float) -> None:
    """.507 over .424 stands .0495 at 80°, .0477 at 82° (worked)."""
    found = protrusion(0.507 * INCH, 0.424 * INCH, angle) / INCH
    assert found == pytest.approx(stands, abs=5.1e-5)


@pytest.mark.parametrize(
    ("name", "spread"),
    [(("0.225", "0.172", "0.019"), 0.013), (("0.507", "0.424", "0.029"), 0.021)],
)
def test_the_gage_column_spreads_more_than_the_flush_rule(
    name: tuple[str, str, str], spread: float
) -> None:
    """Protrusion of one size spreads .013 (#4) to .021 (1/4), against .015 allowed (worked)."""
    sharp, gage, least = map(float, name)
    assert protrusion(sharp, gage, 80) - least == pytest.approx(spread, abs=8e-4)


def test_a_head_that_falls_through_the_gage_is_refused() -> None:
    """A gage hole as wide as the head shows no protrusion, nor is a block taller than the cone."""
    with pytest.raises(SeatworkError, match="gage diameter must be smaller"):
        protrusion(10, 10, 82)
    with pytest.raises(SeatworkError, match="not as high as that"):
        plate_hole(10, 6, 90)


def test_a_dial_gage_reads_true_only_if_it_is_the_flatter() -> None:
    """A flatter or equal plunger touches the rim and reads true; a steeper one reads small."""
    assert dial_reading(SEAT, 82) == SEAT.diameter
    assert dial_reading(SEAT, 100) == SEAT.diameter
    read = dial_reading(SEAT, 60)
    # it stands on the hole edge: its cone, carried up to the face, is that wide there
    steep = Countersink.from_depth(
        depth=SEAT.depth, hole_diameter=SEAT.hole_diameter, included_angle=60
    )
    assert read == pytest.approx(steep.diameter)
    assert SEAT.hole_diameter < read < SEAT.diameter


def test_a_thou_of_height_is_half_a_degree() -> None:
    """With two balls .001 in of height is worth about half a degree: 82 from 90, not 80 from 82."""
    found = uncertainty(
        angle_from_two_balls,
        {"small_diameter": 9.525, "large_diameter": 15.875, "small_top": 0.0,
         "large_top": 0.3155 * INCH},
        {"small_top": 0.001 * INCH, "large_top": 0.001 * INCH},
    )  # fmt: skip
    assert found.value == pytest.approx(82, abs=0.05)
    assert abs(found.slopes["large_top"]) * 0.001 * INCH == pytest.approx(0.5, abs=0.05)
    assert found.worst == pytest.approx(found.combined * sqrt(2), rel=1e-6)


@QUICK
@given(angle=ANGLES)
def test_slopes_are_those_of_the_formula(angle: float) -> None:
    """A ball's height error goes into the diameter 2 T times, known from the derivation."""
    tangent = sin(radians(angle / 2)) / cos(radians(angle / 2))
    top = ball_top(12, Countersink(diameter=16, hole_diameter=0.5, included_angle=angle)) if (
        12 * cos(radians(angle / 2)) <= 16
    ) else 0.0  # fmt: skip
    found = uncertainty(
        diameter_from_ball,
        {"ball_diameter": 12.0, "ball_top": top - 1.0, "included_angle": angle},
        {"ball_top": 0.01},
    )
    assert found.slopes["ball_top"] == pytest.approx(-2 * tangent, rel=1e-6)
    assert found.combined == pytest.approx(0.02 * tangent, rel=1e-6)


def test_an_uncertainty_of_nothing_known_is_refused() -> None:
    """An uncertainty must belong to a size of the formula."""
    with pytest.raises(SeatworkError, match="not there"):
        uncertainty(protrusion, {"sharp_diameter": 12.0, "gage_diameter": 10.0,
                                 "included_angle": 82.0}, {"edge": 0.1})  # fmt: skip


@pytest.mark.parametrize(
    ("value", "verdict"),
    [
        (12.1, "inside"), (12.02, "inside"), (12.18, "inside"), (12.01, "cannot be told"),
        (12.0, "cannot be told"), (11.99, "cannot be told"), (11.97, "outside"),
        (12.23, "outside"), (12.21, "cannot be told"),
    ],
)  # fmt: skip
def test_decisions_at_the_limit(value: float, verdict: str) -> None:
    """Uncertainty counts against whoever wants to prove something (ISO 14253-1, from memory)."""
    found = decide(value, lower=12.0, upper=12.2, uncertainty=0.0195)
    assert found.verdict == verdict


def test_flushness_over_a_head_that_is_tipped() -> None:
    """A head .02 below on the mean may stand proud at one side, and that is kept apart."""
    found = flushness(face=[0.01, -0.01, 0.0], head=[0.03, -0.07])
    assert found.amount == pytest.approx(-0.02)
    assert found.state == "below"
    assert (found.least, found.greatest) == (pytest.approx(-0.07), pytest.approx(0.03))


@pytest.mark.parametrize(
    ("face", "head", "says"),
    [([], [1.0], "no reading on the face"), ([1.0], [], "no reading on the head"),
     ([1.0], [float("nan")], "reading on the head")],
)  # fmt: skip
def test_missing_readings_are_asked_for(face: list[float], head: list[float], says: str) -> None:
    """Without readings on face and head there is no flushness."""
    with pytest.raises(SeatworkError, match=says):
        flushness(face=face, head=head)


def test_an_exact_measurement_always_decides() -> None:
    """Without uncertainty the limits themselves are good, and nothing is left open."""
    verdicts = [
        decide(value, lower=1, upper=2, uncertainty=0).verdict for value in (0.999, 1, 2, 2.001)
    ]
    assert verdicts == ["outside", "inside", "inside", "outside"]
    with pytest.raises(SeatworkError, match="above the upper"):
        decide(1, lower=2, upper=1, uncertainty=0)
