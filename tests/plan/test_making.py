"""Plans as a whole: order, screws, conflicts, what is named, and nothing foreign raised."""

from types import SimpleNamespace

import pytest
from hypothesis import event, given, settings
from hypothesis import strategies as st
from seatwork import notes, plan
from seatwork.errors import SeatworkError
from seatwork.shop.shop import Shop

SHOP = Shop.at()
MATERIALS = [one.name for one in SHOP.materials]
MACHINES = [one.name for one in SHOP.machines]


def made(note, *, material="1018 steel", machine="knee mill", **known):
    """Plan a note in the package's shop."""
    return plan.make(notes.read(note), material=material, machine=machine, shop=SHOP, **known)


def steps(seat):
    """Name the operations of a seat."""
    return [step.name for step in seat.operations]


def verdicts(planned):
    """Map what was looked at to its verdict, over all seats."""
    return {check.name: check.verdict for seat in planned.seats for check in seat.checks}


def test_a_socket_head_above_its_counterbore_is_asked_about() -> None:
    """A 3/8 head is .375 high (ASME B18.3): .35 deep leaves it .025 proud, never without asking."""
    shallow = made("⌀.406 THRU, CBORE ⌀5/8 X .35 DP", screw="3/8-16 SHCS")
    assert verdicts(shallow)["head below the face"] == "stop"
    deep = made("⌀.406 THRU, CBORE ⌀5/8 X .38 DP", screw="3/8-16 SHCS")
    assert verdicts(deep)["head below the face"] == "holds"


def test_a_center_hole_speaks_of_no_head_and_has_its_end_faced_first() -> None:
    """No head lies in a center hole; the second end is faced before it (common practice)."""
    planned = made("CENTER DRILL #4 BOTH ENDS", machine="lathe")
    assert "head high" not in str(planned)
    assert "Face the second end to length" in str(planned)


def test_a_hole_as_large_as_its_screw_has_no_clearance() -> None:
    """A 3/8 hole for a 3/8 screw is looked at (common practice, no source); 13/32 is not."""
    tight = made("⌀3/8 THRU, CBORE ⌀5/8 X .38 DP", screw="3/8-16 SHCS")
    assert verdicts(tight)["screw in the hole"] == "look"
    free = made("⌀13/32 THRU, CBORE ⌀5/8 X .38 DP", screw="3/8-16 SHCS")
    assert "screw in the hole" not in verdicts(free)


def test_plating_that_may_use_up_the_limits_is_settled_first() -> None:
    """Reamed to .0005 in, a hole is scrap by .0003 of plating a side; a loose seat is looked at."""
    reamed = made("REAM ⌀.3750 +.0005/-.0000 THRU AFTER PLATING, CSK 82° X ⌀.42")
    assert verdicts(reamed)["sizes after plating"] == "stop"
    plain = made("⌀.406 THRU, CSK 82° X ⌀.75 AFTER PLATING")
    assert verdicts(plain)["sizes after plating"] == "look"


def test_a_face_is_cut_before_the_hole_with_an_unpiloted_tool() -> None:
    """A spotface that only an end mill of the list cuts comes before its hole."""
    (seat,) = made("⌀1/4 THRU, ⌀1/2 S.F.").seats
    assert steps(seat)[:2] == ["spotface", "drill"]
    assert "Before the hole" in seat.operations[0].why


def test_a_face_is_cut_after_the_hole_with_a_piloted_tool() -> None:
    """A spotface with a pilot needs its hole first."""
    (seat,) = made("17/32 THRU, ⌀1-1/4 S.F.", material="gray iron").seats
    assert steps(seat)[:3] == ["lead drill", "drill", "spotface"]
    assert "pilot" in seat.operations[2].why


@pytest.mark.parametrize(("face", "verdict"), [(".75", "stop"), (".875", "holds")])
def test_a_spotface_takes_the_whole_head(face, verdict) -> None:
    """A 1/2 in hex head is .866 in over its corners (3/4 in flats over cos 30 degrees)."""
    (seat,) = made(f"⌀.531 THRU, SF ⌀{face}", screw="1/2-13 hex cap screw").seats
    found = {check.name: check for check in seat.checks}["head on the spotface"]
    assert found.verdict == verdict
    assert "0.866 in" in found.sentence


def test_a_hex_head_larger_than_its_counterbore_is_said_before_the_wrench() -> None:
    """A 3/8 in hex head, .650 in over its corners (9/16 in flats), is no wrench's trouble first."""
    (seat,) = made("⌀.406 THRU, CBORE ⌀.62 ↧.25", screw="3/8-16 hex cap screw").seats
    found = {check.name: check for check in seat.checks}["wrench room"]
    assert found.verdict == "stop"
    assert found.sentence.startswith("The head itself does not go in: 0.650 in")
    (wide,) = made("⌀.406 THRU, CBORE ⌀.75 ↧.25", screw="3/8-16 hex cap screw").seats
    assert "head itself" not in {check.name: check for check in wide.checks}["wrench room"].sentence


def test_a_lead_drill_that_is_planned_is_not_advised_again() -> None:
    """Where a lead drill goes first, a machine that may stall wants another way out."""
    (seat,) = made("1-1/32 DRILL THRU", machine="bench drill press").seats
    assert steps(seat)[0] == "lead drill"
    found = {check.name: check.sentence for check in seat.checks}["torque of the drill"]
    assert "lead hole" not in found


def test_the_mouth_of_a_center_hole_is_measured_and_kept_under_the_body() -> None:
    """The body of a #4 center drill is 5/16 in (ASME B94.11M, from memory): .310 + .005 is over."""
    for mouth, verdict in ((".25", "holds"), (".31", "look")):
        seat = made(f"#4 CENTER DRILL, ⌀{mouth}", machine="lathe").seats[0]
        assert {check.name: check.verdict for check in seat.checks}["mouth"] == verdict
        (reading,) = seat.readings
        assert reading.value == pytest.approx(float(mouth) * 25.4)


def test_a_tap_is_stopped_from_the_face_not_from_the_counterbore_floor() -> None:
    """The depth of a thread counts from the part's face (ASME Y14.5, from memory)."""
    planned = made("1/4-20 UNC-2B ↧.62, DRILL ↧.80, CBORE ⌀.438 ↧.25")
    (tap,) = [step for seat in planned.seats for step in seat.operations if step.name == "tap"]
    assert tap.deep == ".620 from the face"


@pytest.mark.parametrize(("hole", "stops"), [(".350", True), (".397", False)])
def test_a_hole_smaller_than_its_screw_is_stopped(hole, stops) -> None:
    """A 3/8 in screw, .375 in over its thread, does not go through .350."""
    (seat,) = made(f"⌀{hole} THRU, CBORE ⌀.625 ↧.38", screw="3/8-16 SHCS").seats
    assert ("screw in the hole" in {check.name for check in seat.checks}) is stops


def test_a_blind_hole_has_no_far_side() -> None:
    """Nothing is deburred on a side the drill does not reach."""
    (seat,) = made("M8X1.25 ↧16").seats
    assert "deburr the far side" not in steps(seat)


def test_two_seats_on_one_hole_are_drilled_once() -> None:
    """The hole is drilled with its first seat; the far seat takes the drill's burr with it."""
    first, second = made("⌀.266 THRU ⌵ ⌀.5 X 82°, ⌵ ⌀.4 X 90° FAR SIDE").seats
    assert [*steps(first), *steps(second)].count("drill") == 1
    assert steps(first)[-1] == "break the rims"
    assert steps(second) == ["turn the part over", "find the hole again", "countersink"]
    assert second.title.endswith("far side")


def test_two_holes_of_a_note_may_have_two_screws() -> None:
    """A screw belongs to its hole, not to the whole note."""
    planned = made(
        "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW\n2X ⌀13/32 THRU ⌴ FOR 3/8 SHCS"
    )
    assert [seat.screw.thread.size for seat in planned.seats] == ["#10", "3/8"]


def test_a_flat_head_in_a_tapped_hole_is_asked_about() -> None:
    """A countersink on a thread is its chamfer; a flat head named there is a question."""
    planned = made("1/4-20 UNC-2B THRU, CSK FOR 1/4-20 FLAT HEAD MACHINE SCREW")
    assert planned.must_ask
    assert any("tapped hole" in question for question in planned.questions)


def test_the_system_follows_the_screw_where_the_note_has_no_size() -> None:
    """A note of words alone for an M10 screw is told in millimeters first."""
    assert made("C'BORE FOR M10 HEX").callout.system == "metric"


def test_every_house_rule_a_plan_rests_on_is_named() -> None:
    """Speeds, cap, feed, flushness and gage limits name their rules."""
    planned = made("⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW", thickness=6.35, edge=10.0)
    named = {rule.name for rule in planned.rules}
    assert named >= {
        "speeds.countersink_ratio",
        "speeds.range_end",
        "speeds.step",
        "feeds.seat_share",
        "flush.greatest_below",
        "countersink.sheet_share",
        "edge.rivet_distance",
        "tapped_hole.engagement",
    }
    assert "speeds.counterbore_ratio" not in named


def test_a_changed_house_rule_is_followed() -> None:
    """A plan goes by the rules of the shop it is given, not by the package's."""
    rules = dict(SHOP.rules)
    rule = rules["flush.greatest_below"]
    changed = SimpleNamespace(
        **{name: getattr(rule, name) for name in ("name", "about", "kind", "text", "source")}
    )
    changed.value, changed.confirmed = 0.1, "shop"
    rules["flush.greatest_below"] = changed
    shop = Shop(
        cutters=SHOP.cutters,
        machines=SHOP.machines,
        materials=SHOP.materials,
        rules=type(SHOP.rules)(rules, "changed"),
    )
    callout = notes.read("⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW")
    planned = plan.make(callout, material="brass", machine="knee mill", shop=shop)
    depth = planned.seats[0].size("depth from the face")
    assert depth.greatest - depth.least == pytest.approx(0.1)


@pytest.mark.parametrize("name", ["thickness", "edge", "engagement"])
@pytest.mark.parametrize("size", [0.0, -1.0, float("nan"), float("inf")])
def test_sizes_of_the_part_are_checked(name, size) -> None:
    """A thickness, edge or engagement that is no length is refused by its name."""
    with pytest.raises(SeatworkError, match=name):
        made("⌀.201 THRU", **{name: size})


def test_a_screw_that_does_not_come_out_stops_the_plan() -> None:
    """A flat head is measured overall: a 1 in screw does not leave a 1-1/4 in part."""
    screw = "#10-32 x 1 flat head machine screw"
    planned = made("⌀.201 THRU ⌵ ⌀.385 X 82°", screw=screw, thickness=31.75)
    assert {check.name: check.verdict for check in planned.seats[0].checks}[
        "screw length"
    ] == "stop"


def test_a_print_that_wants_its_head_proud_stands_over_the_house_rule() -> None:
    """HEAD .005 PROUD of a print is cut as it says, the usual title block either way.

    82°: seat .385 less 2 tan 41° times .005, and 0 to .010 proud (common practice, no source).
    """
    (seat,) = made("⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW, HEAD .005 PROUD").seats
    across = seat.size("diameter at the face")
    assert across.value / 25.4 == pytest.approx(0.385 - 1.73857 * 0.005, abs=1e-5)
    assert across.greatest / 25.4 == pytest.approx(0.385, abs=1e-5)
    assert {check.name: check.verdict for check in seat.checks}["greatest head"] == "holds"


def test_a_head_wanted_proud_and_no_further_word_is_asked_about() -> None:
    """PROUD alone is no place of a head: nothing is planned flush for it."""
    with pytest.raises(SeatworkError, match="how far"):
        made("⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW, HEAD PROUD")


def test_a_clearance_hole_gets_a_drill_within_its_limits() -> None:
    """A hole given by two limits is drilled with a drill that lies between them."""
    (seat,) = made("⌀.250-.255 THRU").seats
    hole = seat.size("hole")
    assert hole.name
    assert hole.least <= hole.value <= hole.greatest


def test_torque_and_power_are_told_in_both_systems() -> None:
    """Loads are written in lb·in and N·m, hp and W."""
    planned = made("DRILL & C'BORE FOR 3/8 SHCS")
    rows = [row for step in planned.seats[0].operation_rows("inch") for row in step]
    told = next(row.text for row in rows if row.label == "torque")
    assert all(unit in told for unit in ("lb·in", "N·m", "hp", "W"))


DIGITS = st.decimals(min_value="0.02", max_value="1.5", places=3).map(
    lambda n: "⌀" + str(n).lstrip("0")
)
HOLES = st.one_of(
    st.just(""),
    DIGITS.map(lambda size: f"{size} THRU "),
    st.sampled_from(
        ["#7 DRILL ", "4X 17/64 THRU ", "⌀6.6 THRU ", "1/4-20 UNC-2B THRU ", "M6 ↧12 "]
    ),
)
SEATS = st.one_of(
    st.builds(
        "⌵ {} X {}°".format, DIGITS, st.sampled_from(["60", "82", "90", "100", "120", "179"])
    ),
    st.builds("⌴ {} ↧{}".format, DIGITS, st.sampled_from([".02", ".385", "1", "9.999"])),
    st.builds("{} S.F.".format, DIGITS),
    st.sampled_from(
        [
            "⌵",
            "CSK",
            "CHAM .03 X 45°",
            "CHAMFER",
            "C'DRILL #3",
            "CENTER DRILL #5",
            "C'BORE",
            "BREAK ALL SHARP EDGES .005-.015",
            "REMOVE BURRS",
            "⌵ X 82°",
            "",
        ]
    ),
)
SCREWS = st.sampled_from(
    [
        "",
        "",
        "",
        "",
        " FOR #10-32 FLAT HEAD MACHINE SCREW",
        " FOR M6 SOCKET FLAT",
        " FOR 3/8 SHCS",
        " FOR M10 HEX",
        " FOR 1/2-13 HEX CAP",
        " FOR M8 DIN 7991",
        " FOR M24 SOCKET FLAT",
        " FOR #0-80 FLAT HEAD MACHINE SCREW",
        " FOR A NICE SCREW",
    ]
)


@pytest.mark.slow
@settings(max_examples=150, deadline=None)
@given(
    hole=HOLES,
    seat=SEATS,
    screw=SCREWS,
    material=st.sampled_from(MATERIALS),
    machine=st.sampled_from(MACHINES),
    thickness=st.sampled_from([None, 0.5, 3.0, 25.0]),
    edge=st.sampled_from([None, 1.0, 20.0]),
)
def test_no_foreign_error_leaves_a_plan(hole, seat, screw, material, machine, thickness, edge):
    """Whatever the reader reads is planned, or refused in one sentence; and it can be told."""
    try:
        planned = made(
            f"{hole}{seat}{screw}",
            material=material,
            machine=machine,
            thickness=thickness,
            edge=edge,
        )
    except SeatworkError:
        event("refused")
        return
    event("planned")
    for one in planned.seats:
        for system in ("inch", "metric"):
            one.size_rows(system)
            one.operation_rows(system)
            one.stop_rows(system)
            one.reading_rows(system)
        one.check_rows()
        assert all(check.question for check in one.checks if check.verdict == "stop")
        assert all(r.least <= r.value <= r.greatest for r in one.readings)
        for size in one.sizes:
            assert size.smallest <= size.value <= size.largest
    planned.rows()
