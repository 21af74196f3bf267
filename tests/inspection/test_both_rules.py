"""One range that meets the print and never proud, readings that fight, holes nobody gaged."""

from math import hypot, radians, sin, tan

import pytest
from seatwork import plan
from seatwork.inspection import Measured, inspect
from seatwork.seats.gaging import angle_from_ball
from seatwork.shop.shop import Shop

SHOP = Shop.at()
IN = 25.4
T41, S41 = tan(radians(41)), sin(radians(41))
BORE = "17/64 THRU, C'BORE 7/16 X 1/4 DP FOR 1/4-20 SHCS"
CONE = "17/64 DRILL THRU, CSK 82° X .531 FOR 1/4-20 FHSCS"
FLUSH = "17/64 DRILL THRU, CSK FOR 1/4-20 FHSCS, FLUSH"
FINE = {"diameter": "optical", "angle": "optical", "depth": "depth micrometer"}
WITH = {**FINE, "stand": "depth micrometer", "ball_top": "depth micrometer"}
# ASME B18.3 (from memory): a 1/4 socket head cap screw's head is .250 high at most, and the
# greatest head of its flat head socket screw .531 across its theoretical sharp diameter.
HEIGHT, SHARP = 0.250, 0.531


def planned(note):
    """Plan a note in steel on the mill."""
    return plan.make(note, material="1018 steel", machine="knee mill", thickness=IN, shop=SHOP)


def judged(note, **values):
    """Judge one part with fine instruments, burr off."""
    values = {"burr": False, "instruments": WITH, **values}
    (part,) = inspect([Measured(part="L07-1", **values)], {"": planned(note)}, shop=SHOP).parts
    return part


def ends(one):
    """Return the limits of a value in inches."""
    return pytest.approx((one.least / IN, one.greatest / IN), abs=1e-6)


def test_a_counterbores_band_holds_no_proud_head() -> None:
    """1/4 deep by the title block is .245 to .255; a .250 head leaves .250 to .255 of it."""
    part = judged(BORE, diameter=0.438 * IN, depth=0.246 * IN)
    assert ends(part.value_of("depth")) == (HEIGHT, 0.255)
    assert part.verdict == "reject"
    assert judged(BORE, diameter=0.438 * IN, depth=0.2525 * IN).verdict == "accept"
    made = planned(BORE).seats[0]
    assert (made.stops[0].least, made.stops[0].greatest) == pytest.approx((0.25 * IN, 0.255 * IN))
    reading = next(one for one in made.readings if one.instrument == "depth micrometer")
    assert reading.least == pytest.approx(0.25 * IN)


def test_a_proud_socket_head_is_judged_and_corrected_inside_both() -> None:
    """.003 proud is a reject; from .246, the middle of .250 to .255 is .0065 down."""
    stand = {"stand": 0.003 * IN, "tried": True}
    part = judged(BORE, diameter=0.438 * IN, depth=0.246 * IN, **stand)
    assert part.value_of("stand").verdict == "reject"
    assert not any(reason.startswith("Not judged") for reason in part.reasons)
    assert "(0.17 mm)" in part.changes[0]
    assert pytest.approx(0.0065 * IN, abs=0.005) == 0.17
    alone = judged(BORE, diameter=0.438 * IN, **stand)
    assert alone.changes == ("Measure the depth, too, before the stop is touched.",)


def test_a_head_that_is_too_high_for_its_depth_is_told() -> None:
    """.252 deep and .003 proud is a head of .255, and none is over .250."""
    part = judged(BORE, diameter=0.438 * IN, depth=0.252 * IN, stand=0.003 * IN)
    assert any(reason.startswith("Depth and stand fight") for reason in part.reasons)


def test_a_stated_cone_has_one_range_for_print_and_never_proud() -> None:
    """.531 by the title block is .526 to .536; the .531 head is flush from .531 on."""
    part = judged(CONE, diameter=0.527 * IN, angle=82.0)
    assert ends(part.value_of("diameter")) == (SHARP, 0.536)
    assert part.verdict == "reject"
    assert judged(CONE, diameter=0.5335 * IN, angle=82.0).verdict == "accept"
    head = next(one for one in planned(CONE).seats[0].readings if one.quantity == "stand")
    assert pytest.approx((head.greatest, head.least), abs=1e-6) == (0.0, -0.005 / 2 / T41 * IN)


@pytest.mark.parametrize("diameter", [None, 0.527 * IN])
def test_a_correction_stays_inside_the_prints_diameter(diameter) -> None:
    """.002 proud at .527: down by .0023 to .0052 keeps the seat at .531 to .536."""
    part = judged(CONE, diameter=diameter, angle=82.0, stand=0.002 * IN)
    down = float(part.changes[0].partition("(")[2].partition(" mm")[0]) / IN
    assert part.changes[0].startswith("Move the stop down by")
    assert SHARP <= 0.527 + 2 * T41 * down <= 0.536


def test_no_move_is_advised_that_spoils_another_size() -> None:
    """.0305 below in a seat of .531 for a .531 head: up brings the head in, the seat out."""
    part = judged(FLUSH, diameter=0.531 * IN, angle=82.0, stand=-0.0305 * IN)
    assert part.changes[0].startswith("No one setting of the stop")


def test_a_print_whose_head_stands_proud_keeps_its_own_limits() -> None:
    """A seat of .500 for the .531 head is asked about by the plan; its limits are the print's."""
    made = planned("17/64 DRILL THRU, CSK 82° X .500 FOR 1/4-20 FHSCS")
    assert made.must_ask
    (part,) = inspect([Measured(part="a", diameter=0.5 * IN)], {"": made}, shop=SHOP).parts
    assert ends(part.value_of("diameter")) == (0.495, 0.505)


def top_of(ball, across):
    """Return a ball's top above the face of an 82° cone, by the triangle [in]."""
    return ball / 2 / S41 + ball / 2 - across / 2 / T41


def test_an_angle_comes_from_ball_and_diameter() -> None:
    """In an 82° cone of .535 a 17/32 ball's top stands .3628; a right angle's r(1 + √2) - D/2."""
    ball = 17 / 32 * IN
    assert top_of(17 / 32, 0.535) == pytest.approx(0.3628, abs=5e-5)
    found = angle_from_ball(ball, top_of(17 / 32, 0.535) * IN, 0.535 * IN)
    assert found == pytest.approx(82.0, abs=1e-6)
    square = ball / 2 * (1 + hypot(1, 1)) - 0.535 / 2 * IN
    assert angle_from_ball(ball, square, 0.535 * IN) == pytest.approx(90.0, abs=1e-6)
    coarse = {**WITH, "diameter": "caliper"}
    part = judged(FLUSH, diameter=0.535 * IN, ball=ball, ball_top=0.363 * IN, instruments=coarse)
    assert part.value_of("angle").verdict == "cannot tell with this instrument"
    assert not any("not measured" in reason for reason in part.reasons)
    other = judged(FLUSH, diameter=0.535 * IN, ball=ball, ball_top=0.374 * IN)
    assert other.value_of("angle").verdict == "reject"
    assert "Measure the angle by itself" in other.changes[0]


def test_readings_that_fight_are_measured_again() -> None:
    """At .545 and 82° a 17/32 ball must read .357: with .390 nothing is judged good or bad."""
    assert top_of(17 / 32, 0.545) == pytest.approx(0.357, abs=5e-4)
    values = {"diameter": 0.545 * IN, "angle": 82.0, "ball": 17 / 32 * IN}
    part = judged(FLUSH, **values, ball_top=0.390 * IN)
    assert part.verdict == "cannot tell with this instrument"
    assert "0.357 in" in part.reasons[0]
    assert part.changes == ("Measure again before the stop or the cutter is touched.",)
    assert judged(FLUSH, **values, ball_top=0.357 * IN).verdict == "accept"


TAPPED = "#10-24 TAP 3/8 DP, DRILL 1/2 DP"
FITTED = "Ø10 H7 THRU, CHAMFER 0.5 X 45°"


@pytest.mark.parametrize(
    ("note", "diameter", "gages"),
    [(TAPPED, 0.210 * IN, ("go", "not_go")), (FITTED, 11.0, ("hole",))],
)
def test_no_hole_is_accepted_on_its_chamfer_alone(note, diameter, gages) -> None:
    """A thread wants both plugs, a hole with limits of the print its plug gage."""
    alone = judged(note, diameter=diameter)
    assert alone.verdict == "cannot tell with this instrument"
    assert sum(reason.startswith("Not accepted: the ") for reason in alone.reasons) == len(gages)
    assert judged(note, diameter=diameter, **dict.fromkeys(gages, True)).verdict == "accept"
    for gage in gages:
        answers = {**dict.fromkeys(gages, True), gage: False}
        assert judged(note, diameter=diameter, **answers).verdict == "reject"
