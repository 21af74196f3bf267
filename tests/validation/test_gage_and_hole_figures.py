"""The figures of the pages on gaging and on the hole, worked by hand and held to the package.

Every expected value is plane geometry written out here, or the standard or practice named beside
it; none is copied from the package. Seat ⌀.507 on a hole of .266 at 82°, the frame's.
"""

from math import atan, cos, degrees, radians, sin, tan

import pytest
from seatwork import benches
from seatwork.errors import SeatworkError
from seatwork.seats import Countersink, Head, ball_top, diameter_from_ball, fit
from seatwork.seats.blind_holes import point_length
from seatwork.seats.both_sides import BothSides
from seatwork.seats.gaging import ball_range
from seatwork.seats.measuring import decide
from seatwork.seats.off_center import off_center
from seatwork.seats.on_hole import lean_from_chip, on_hole
from seatwork.seats.touching_off import diameter_error

INCH = 25.4
HALF = radians(41)
SEAT = Countersink(diameter=0.507 * INCH, hole_diameter=0.266 * INCH, included_angle=82)
HEAD = Head(sharp_diameter=0.507 * INCH, included_angle=82)
SCREW, BALL, CALIPER, GAGE = (
    "the screw and an indicator",
    "one ball",
    "caliper across the rim",
    "head gage, on the screw itself",
)
FIVE = {
    f"benches.gaging(shown=True, way={SCREW!r})": "out",
    f"benches.gaging(shown=True, way={BALL!r})": "out",
    "benches.gaging(shown=True)": "out",
    f"benches.gaging(shown=True, way={CALIPER!r})": "in",
    f"benches.gaging(shown=True, way={GAGE!r})": "in",
}
"""One seat in five ways, each opened by one literal call: two pass it and three reject it."""


@pytest.mark.parametrize("call", FIVE)
def test_one_seat_in_five_ways(call: str) -> None:
    """Each call opens the bench on its gage and its verdict, on the frame and on the plate."""
    bench = eval(call, {"benches": benches})
    assert dict(bench.readouts())["Verdict"] == FIVE[call]
    assert bench.code() == call
    plate = bench.set(job="#10 flat head 82° (hopper plate)")
    assert dict(plate.readouts())["Verdict"] == FIVE[call]


def test_the_head_is_proud_by_what_a_seat_of_90_makes_of_it() -> None:
    """A .507 head of 82° in ⌀.511 X 90°, on its hole of .266: carried by the edge of the hole.

    (.507 - .266) / 2 / tan 41° less (.511 - .266) / 2 / tan 45° = .1386 - .1225 = .0161.
    """
    found = (0.507 - 0.266) / 2 / tan(HALF) - (0.511 - 0.266) / 2
    assert benches.gaging(shown=True, way=SCREW).result.value / INCH == pytest.approx(
        found, abs=1e-4
    )
    assert round(found, 3) == 0.016


def test_one_ball_reads_the_cone_as_if_it_were_82() -> None:
    """A .500 ball in ⌀.511 X 90° stands .348 high; read as 82° that is ⌀.492.

    Top: r (1 + 1 / sin a) less D / (2 tan a), at a = 45°, then solved for D at a = 41°.
    """
    top = 0.25 * (1 + 1 / sin(radians(45))) - 0.511 / 2
    wide = 2 * tan(HALF) * (0.25 * (1 + 1 / sin(HALF)) - top)
    assert (round(top, 3), round(wide, 3)) == (0.348, 0.492)
    bench = benches.gaging(shown=True, way=BALL)
    assert bench.result.reading / INCH == pytest.approx(top, abs=1e-4)
    assert bench.result.value / INCH == pytest.approx(wide, abs=2e-4)


def test_the_diameter_falls_by_two_sides_of_the_slope() -> None:
    """Raised by .010 the ball means .010 x 2 tan 41° = .0174 less of diameter."""
    low, high = (diameter_from_ball(0.5 * INCH, top * INCH, 82) for top in (0.348, 0.358))
    assert (low - high) / INCH == pytest.approx(0.010 * 2 * tan(HALF), abs=1e-9)


def test_two_balls_reject_and_never_pass() -> None:
    """Balls of 13/32 and 19/32 are sure to about one degree, and the limits are one degree wide.

    sin a = (R - r) / (h - R + r) with R = .2969, r = .2031 and h the reading: .236 makes 82.5°, and
    .237 makes 81.8°. Two heights doubted by .001 each, squared and added, come to 1.4 x .7 = 1°.
    """
    bench, verdicts = benches.gaging(shown=True), {}
    for thousandths in range(218, 244):
        try:
            bench.set(rise=f".{thousandths} in")
        except SeatworkError:
            continue  # no cone holds the balls so
        verdicts[thousandths] = dict(bench.readouts())["Verdict"]
    assert "in" not in verdicts.values()
    assert verdicts[233] == "out"
    assert verdicts[234] == "too near a limit to tell"
    assert bench.set(rise=".237 in").result.decision.uncertainty == pytest.approx(1.0, abs=0.1)


def test_a_flush_m6_hides_its_angle() -> None:
    """In the M6 plate the screw and the caliper say in; both ball gages say out."""
    job = "M6 socket flat 90° (hopper plate)"
    found = {}
    for way in (SCREW, CALIPER, BALL, "two balls"):
        bench = benches.gaging(shown=True, job=job, way=way)
        found[way] = dict(bench.readouts())["Verdict"]
    assert found == {SCREW: "in", CALIPER: "in", BALL: "out", "two balls": "out"}
    with pytest.raises(SeatworkError, match="no head gage"):
        benches.gaging(shown=True, job=job, way=GAGE)


def test_which_balls_touch() -> None:
    """Hole / cos 41° to face / cos 41°: .352 to .672; a .250 ball is smaller than the hole."""
    expected = (0.266 / cos(HALF), 0.507 / cos(HALF))
    assert [round(one, 3) for one in expected] == [0.352, 0.672]
    assert [one / INCH for one in ball_range(SEAT)] == pytest.approx(expected, rel=1e-9)
    with pytest.raises(SeatworkError, match="falls through"):
        ball_top(0.250 * INCH, SEAT)


@pytest.mark.outside("sum worked by hand", "seats.Countersink.diameter_at")
def test_the_pin() -> None:
    """(.507 - .375) / 2 / tan 41° = .0759, and .375 + 1.74 x .076 = .507."""
    down = (0.507 - 0.375) / 2 / tan(HALF)
    assert round(down, 3) == 0.076
    assert SEAT.diameter_at(down * INCH) / INCH == pytest.approx(0.375, rel=1e-9)
    assert round(0.375 + 1.74 * 0.076, 3) == 0.507


def test_the_plate_s_limits() -> None:
    """ASME B18.6.3, table 3, as printed in Machinery's Handbook, 31st edition, page 1777."""
    found = benches.gaging(shown=True, way=GAGE).result
    sizes = (found.least, found.greatest, found.job.screw.facts["gage_diameter"].value)
    assert [size / INCH for size in sizes] == pytest.approx([0.029, 0.050, 0.424])


def test_what_a_caliper_may_pass() -> None:
    """Limits .385 to .411 and a doubt of .002: from .387 to .409 (ISO 14253-1, from memory)."""
    for reading, verdict in (
        (0.3869, "cannot be told"),
        (0.3871, "inside"),
        (0.4089, "inside"),
        (0.4091, "cannot be told"),
        (0.3829, "outside"),
    ):
        found = decide(reading, lower=0.385, upper=0.411, uncertainty=0.002)
        assert found.verdict == verdict


@pytest.mark.parametrize(("offset", "proud"), [(0.005, 0.006), (0.0155, 0.018), (0.001, 0.001)])
def test_off_center_is_proud_by_the_slope(offset: float, proud: float) -> None:
    """The offset by tan 41°: .005 is .006; a pilot .031 under, .0155 and .018; .002 under, .001."""
    assert round(offset / tan(HALF), 3) == proud
    found = off_center(HEAD, SEAT, offset=offset * INCH).amount / INCH
    assert found == pytest.approx(offset / tan(HALF), rel=1e-9)


def test_a_chip_and_a_degree_over_a_seat() -> None:
    """.005 over 2 in leans .385 by .001; one degree leans it by .385 sin 1° = .007."""
    lean = lean_from_chip(chip=0.005 * INCH, width=2 * INCH)
    assert lean == pytest.approx(degrees(atan(0.005 / 2)), rel=1e-4)
    small = Countersink(diameter=0.385 * INCH, hole_diameter=0.201 * INCH, included_angle=82)
    head = Head(sharp_diameter=0.385 * INCH, included_angle=82)
    for angle, across in ((lean, 0.001), (1.0, 0.007)):
        found = on_hole(head, small, offset=0, lean=angle)
        assert round((found.high - found.low) / INCH, 3) == across


def test_both_sides_of_a_quarter_inch_plate() -> None:
    """(.385 - .201) / 2 / tan 41° = .106; twice that leaves .038 of .250, and meets in 3/16."""
    deep = (0.385 - 0.201) / 2 / tan(HALF)
    assert (round(deep, 3), round(0.25 - 2 * deep, 3), round(0.25 - deep, 3)) == (
        0.106,
        0.038,
        0.144,
    )
    cone = Countersink(diameter=0.385 * INCH, hole_diameter=0.201 * INCH, included_angle=82)
    plate = BothSides(first=cone, second=cone, thickness=0.25 * INCH)
    assert plate.land / INCH == pytest.approx(0.25 - 2 * deep, rel=1e-9)
    thin = BothSides(first=cone, second=cone, thickness=3 / 16 * INCH)
    assert thin.meet
    assert thin.throat is not None
    assert thin.throat > cone.hole_diameter


def test_the_point_of_a_drill() -> None:
    """Half of .201 by tan 59° is .060 for a point of 118°."""
    assert round(0.201 / 2 / tan(radians(59)), 3) == 0.060
    found = point_length(diameter=0.201 * INCH, point_angle=118) / INCH
    assert found == pytest.approx(0.201 / 2 / tan(radians(59)), rel=1e-9)


def test_head_and_stop_move_together() -> None:
    """.006 deeper lets the head down .006 and widens the seat by .006 x 2 tan 41° = .010."""
    wider = diameter_error(depth_error=0.006 * INCH, included_angle=82) / INCH
    assert wider == pytest.approx(0.006 * 2 * tan(HALF), rel=1e-9)
    assert round(wider, 3) == 0.010
    cut = Countersink(
        diameter=SEAT.diameter + wider * INCH,
        hole_diameter=SEAT.hole_diameter,
        included_angle=82,
    )
    assert (fit(HEAD, SEAT).amount - fit(HEAD, cut).amount) / INCH == pytest.approx(0.006)
