"""Formulas that no book prints an example of, each held to a sum written out beside it."""

from math import pi, radians, sqrt, tan

import pytest
from proof.holding import BY_HAND
from seatwork import cutting
from seatwork.seats import Counterbore, Countersink, Head, Spotface, Triangle

SHEET = "formulas held to a sum written out beside them"
SEAT = Countersink(diameter=12.0, hole_diameter=6.0, included_angle=90)
HEAD = Head(sharp_diameter=12.0, included_angle=82, edge_diameter=11.0, height=3.0)
BORE = Counterbore(diameter=11.0, depth=6.0, hole_diameter=6.6)
SPOT = Spotface(diameter=30.0, hole_diameter=10.0)
CONE = Triangle(wide=12.0, narrow=6.0, included_angle=82)
MACHINE = cutting.Machine(stiffness=8e6, natural_frequency=250, damping_ratio=0.04)
CUTTER = cutting.Cutter(flutes=3, included_angle=90, spacing=(110, 120, 130))
T41 = 0.869287  # tangent of 41°, any table
SUMS = [
    # formula, unit, found, by hand, to
    ("seats.Countersink.tangent", "-", lambda: SEAT.tangent, 1.0, 1e-12),
    ("seats.Countersink.lower_by", "mm", lambda: SEAT.lower_by(2.0), 2.0, 1e-12),
    ("seats.Head.tangent", "-", lambda: HEAD.tangent, T41, 1e-6),
    ("seats.Head.edge", "mm", lambda: HEAD.edge, 11.0, 0),
    ("seats.Head.apex_depth", "mm", lambda: HEAD.apex_depth, 6 / T41, 1e-5),
    ("seats.Head.rim_depth", "mm", lambda: HEAD.rim_depth, 0.5 / T41, 1e-5),
    ("seats.Head.neck_diameter", "mm", lambda: HEAD.neck_diameter, 12 - 6 * T41, 1e-5),
    ("seats.Counterbore.ring_width", "mm", lambda: BORE.ring_width, 2.2, 1e-12),
    ("seats.Counterbore.floor_area", "mm2", lambda: BORE.floor_area, 60.82, 0.005),
    ("seats.Spotface.ring_width", "mm", lambda: SPOT.ring_width, 10.0, 1e-12),
    ("seats.Spotface.bearing_area", "mm2", lambda: SPOT.bearing_area, 628.32, 0.005),
    ("seats.Triangle.tangent", "-", lambda: CONE.tangent, T41, 1e-6),
    ("seats.Triangle.to_the_point", "mm", lambda: CONE.to_the_point, 6 / T41, 1e-5),
    # 250 Hz is 1570.8 rad/s; k / w² and 2 z k / w
    ("cutting.Machine.angular_frequency", "rad/s", lambda: MACHINE.angular_frequency, 1570.8, 0.01),
    ("cutting.Machine.mass", "kg", lambda: MACHINE.mass, 8e6 / 1570.796**2, 1e-5),
    ("cutting.Machine.damping", "N s/m", lambda: MACHINE.damping, 0.64e6 / 1570.796, 1e-3),
    ("cutting.Cutter.half_angle", "rad", lambda: CUTTER.half_angle, pi / 4, 1e-12),
    ("cutting.Cutter.shares", "-", lambda: CUTTER.shares[0], 110 / 360, 1e-12),
    ("cutting.Cutter.places", "-", lambda: CUTTER.places[2], 230 / 360, 1e-12),
    # a lip .5 in across at 611 rev/min runs 80 ft/min, 24.38 m/min: TC 9-524's own example
    (
        "cutting.cutting_speed", "m/min",
        lambda: cutting.cutting_speed(spindle_speed=611.15, diameter=12.7), 24.384, 0.001,
    ),
    # 17 marks at 1000 rev/min are 17 x 16.667 Hz
    (
        "cutting.frequency_from_marks", "Hz",
        lambda: cutting.frequency_from_marks(marks=17, spindle_speed=1000, direction="axial")[0],
        283.33, 0.01,
    ),
    # half the indentation constant by the square of the land
    (
        "cutting.land_damping", "N/m",
        lambda: cutting.land_damping(indentation=4e13, wear_land=0.1), 4e13 * 0.1e-3**2 / 2, 1e-3,
    ),
]  # fmt: skip


@pytest.mark.parametrize(
    ("formula", "unit", "found", "by_hand", "within"),
    [
        pytest.param(*one, id=one[0], marks=pytest.mark.outside("sum worked by hand", one[0]))
        for one in SUMS
    ],
)
def test_a_formula_gives_the_sum_written_beside_it(
    formula, unit, found, by_hand, within, outside
) -> None:
    """Each number is worked out above from the definition, with none of the package."""
    said = {"unit": unit, "source": SHEET, "kind": BY_HAND}
    assert outside(f"sum: {formula}", found(), by_hand, within=within, **said)


def test_the_tables_of_the_sums_are_right() -> None:
    """The written-out tangent and areas are what plain arithmetic gives."""
    assert pytest.approx(tan(radians(41)), abs=1e-6) == T41
    assert pi / 4 * (11**2 - 6.6**2) == pytest.approx(60.82, abs=0.005)
    assert pi / 4 * (30**2 - 10**2) == pytest.approx(628.32, abs=0.005)
    assert sqrt(8e6 / (8e6 / 1570.796**2)) == pytest.approx(2 * pi * 250, abs=0.001)
