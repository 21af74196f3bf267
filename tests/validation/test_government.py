"""What government and training manuals say of seats, sheet, spacing and slope."""

from seatwork import hardware, tables
from seatwork.seats import Countersink, bolting

DATA = "government"
INCH = 25.4


def test_angle_of_machine_countersinks(angle_check) -> None:
    """TC 9-524 and the seat angle of inch flat heads agree on 82°."""
    assert angle_check.agrees(hardware.screw("#10 flat head").seat_angle)
    rules = [row["value_deg"] for row in tables.rows("operation_speed_rules") if row["value_deg"]]
    assert rules == [angle_check.value]


def test_least_sheet_for_a_rivet(sheet_check) -> None:
    """TM 9-2320-363-34-2 Table 4 is one of the rules for the least sheet."""
    found = hardware.least_thickness(
        countersink_depth=1, head_height=1, rivet=sheet_check.inputs["rivet"]
    )
    (named,) = [each for each in found if each.rule.startswith("TM 9-2320-363-34-2")]
    assert sheet_check.agrees(named.length / INCH)


def test_no_knife_edge_at_the_least_sheet(knife_check) -> None:
    """The cone of the least countersink ends inside the least sheet."""
    inputs = knife_check.inputs
    seat = Countersink(
        diameter=inputs["dc_in"] * INCH, hole_diameter=inputs["dh_in"] * INCH, included_angle=100
    )
    assert knife_check.agrees(seat.depth / INCH)
    assert seat.depth < inputs["sheet_in"] * INCH


def test_spacing_of_rivets(spacing_check) -> None:
    """The least spacing is in shank diameters, the least of the rules that differ."""
    assert spacing_check.agrees(hardware.edge_distances(1.0, what="spacing")[0].length)


def test_edge_distance_of_rivets(distance_check) -> None:
    """AC 43.13-1B asks for its distance by name."""
    (named,) = [each for each in hardware.edge_distances(1.0) if each.rule.startswith("AC 43.13")]
    assert distance_check.agrees(named.length)


def test_slope_that_wants_a_bevelled_washer(slope_check) -> None:
    """1 in 20 is 2.862°: a structural-steel rule."""
    assert slope_check.agrees(bolting.slope_angle(bolting.STRUCTURAL_SLOPE))
