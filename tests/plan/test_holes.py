"""Sides, threads, blind holes and reamers: what a whole print asks of one hole."""

from dataclasses import fields, replace

import pytest
from seatwork import plan
from seatwork.errors import SeatworkError
from seatwork.notes import (
    Callout,
    Chamfer,
    Counterbore,
    Counterdrill,
    Countersink,
    Head,
    Hole,
    Size,
    Spotface,
    Thread,
)
from seatwork.notes.features import FLOOR
from seatwork.shop.house.house_rules import HouseRules, apply
from seatwork.shop.shop import Shop

SHOP = Shop.at()
IN = 25.4


def inches(value: float, **said) -> Size:
    """Write an inch size of a note."""
    return Size(value=value * IN, **said)


def under(text: str) -> Shop:
    """Return the shop with other house rules."""
    return replace(SHOP, rules=HouseRules(apply(text, "a test"), "a test"))


def made(*features, material="1018 steel", machine="knee mill", thickness=1.0, shop=SHOP):
    """Plan what a note says of one hole, in a part so many inches thick."""
    thick = None if thickness is None else thickness * IN
    callout = Callout(features=features)
    return plan.make(callout, material=material, machine=machine, shop=shop, thickness=thick)


def steps(planned) -> list[list[str]]:
    """Name the operations, seat by seat."""
    return [[step.name for step in seat.operations] for seat in planned.seats]


def looked(planned) -> dict[str, str]:
    """Return the verdicts of all seats by what was looked at."""
    return {check.name: check.verdict for seat in planned.seats for check in seat.checks}


def said(planned) -> str:
    """Return every sentence that was looked at."""
    return " ".join(check.sentence for seat in planned.seats for check in seat.checks)


def quarter(**more) -> Thread:
    """Return a 1/4-20 thread."""
    return Thread(size="1/4", threads_per_inch=20, series="UNC", thread_class="2B", **more)


THRU = Hole(diameter=inches(0.266), through=True)
CSK = Countersink(diameter=inches(0.507), angle=Size(value=82, unit="deg"))
BORE = Counterbore(diameter=inches(0.438), depth=inches(0.25))


# -- both sides ---------------------------------------------------------------------------


def test_counterbores_on_both_sides_leave_a_floor_between() -> None:
    """Floor between = t - z1 - z2: .750 - 2 x .250 = .250; none in 1/2: stop."""
    planned = made(THRU, replace(BORE, side="both"), thickness=0.75)
    assert planned.seats[0].size("floor between").value / IN == pytest.approx(0.25)
    assert looked(planned)["floor between"] == "look"
    planned = made(THRU, replace(BORE, side="both"), thickness=0.5)
    assert looked(planned)["floor between"] == "stop"
    assert "Other screw, thicker plate, or is one side meant?" in planned.questions[0]


def test_a_floor_between_is_held_against_half_the_screw() -> None:
    """Under half the screw's diameter is asked about: a judgement, house rule."""
    both = replace(BORE, side="both", screw="1/4 SHCS")
    assert looked(made(THRU, both, thickness=0.75))["floor between"] == "holds"
    planned = made(THRU, both, thickness=0.6)
    assert looked(planned)["floor between"] == "look"
    assert "both_sides.least_floor" in {rule.name for rule in planned.rules}


def test_two_seats_on_each_face_of_four_holes_share_no_hole() -> None:
    """2 NS & 2 FS: two seats a side, nothing between them in any one hole."""
    hole = replace(THRU, count=4)
    near, far = (replace(BORE, count=2, side=side) for side in ("near", "far"))
    planned = made(hole, near, far, thickness=0.5)
    assert [seat.count for seat in planned.seats] == [2, 2]
    assert "floor between" not in looked(planned)


def test_mouths_on_both_sides_shorten_the_thread() -> None:
    """Full thread = t - Z1 - Z2: .500 - 2 x .0345 = .431; the tap comes after both mouths."""
    csk = Countersink(diameter=inches(0.270), angle=Size(value=90, unit="deg"), side="both")
    planned = made(Hole(diameter=Size(name="#7")), quarter(through=True), csk, thickness=0.5)
    left = planned.seats[0].size("full thread between the mouths")
    assert left.value / IN == pytest.approx(0.431)
    assert [names.count("tap") for names in steps(planned)] == [0, 1]
    assert steps(planned)[1][-1] == "tap"


def test_spotfaces_on_both_faces_ask_for_the_flange() -> None:
    """What is left is what both cuts leave."""
    face = Spotface(diameter=inches(0.94), clean_up=True, side="both")
    planned = made(Hole(diameter=inches(13 / 32), through=True), face)
    assert looked(planned)["flange between"] == "look"


@pytest.mark.parametrize(
    ("depth", "left", "verdict"),
    [(0.06, 0.88, "holds"), (0.06, 0.90, "stop"), (0.06, None, "look"), (None, 0.95, "stop")],
)
def test_both_faces_together_must_leave_the_flange(depth, left, verdict) -> None:
    """1.000 less 2 x .060 is .880, less 2 x 1/32 of scale .9375: .900 and .950 are not left."""
    face = Spotface(
        diameter=inches(1.12),
        depth=None if depth is None else inches(depth),
        left=None if left is None else inches(left, bound="min"),
        side="both",
    )
    planned = made(Hole(diameter=inches(9 / 16), through=True), face)
    assert looked(planned)["flange between"] == verdict
    assert "least flange" not in looked(planned)
    assert any("May it be less" in one for one in planned.questions) is (verdict == "stop")


# -- far side -----------------------------------------------------------------------------


def test_every_side_has_its_setup() -> None:
    """One line a setup; a new one where the part is turned over; FS is scribed at layout."""
    planned = made(THRU, replace(CSK, side="both"), machine="bench drill press")
    first, second = planned.setups
    assert (first.face, second.face) == ("near face up", "far face up")
    assert "scribe FS" in first.zero
    assert "touched off anew" in second.zero
    assert second.steps == ("turn the part over", "find the hole again", "countersink")
    assert len(planned.setup_rows()) == 2
    assert "turn_over" in planned.cautions


def test_work_that_turns_has_nothing_under_it() -> None:
    """A shaft between centers lies on no parallels, whichever end is cut (common practice)."""
    planned = plan.make("CENTER DRILL #3 BOTH ENDS", material="1018 steel", machine="lathe")
    assert [setup.face for setup in planned.setups] == ["near end", "far end"]
    assert {setup.under for setup in planned.setups} == {"nothing: the work turns"}


def test_a_seat_on_one_side_has_one_setup() -> None:
    """Nothing is turned over for the near side."""
    planned = made(THRU, replace(CSK, side="near"))
    assert [setup.face for setup in planned.setups] == ["near face up"]
    assert "turn_over" not in planned.cautions


def test_one_clamping_from_the_far_side_is_a_mirror_image() -> None:
    """By the other house rule hole and seat are cut from the far face, nothing turned."""
    shop = under('[far_side]\nhow = "one clamping from the far side"')
    planned = made(THRU, replace(CSK, side="far"), shop=shop)
    (names,) = steps(planned)
    assert names == ["drill", "lay out on the far face", "countersink", "deburr the near side"]
    assert [setup.face for setup in planned.setups] == ["far face up"]


def test_back_spotfacing_has_no_stop_and_wants_a_drawbar() -> None:
    """The cut pulls the bar down: the mill holds it, the drill press does not."""
    shop = under('[far_side]\nhow = "back spotfacing"')
    face = Spotface(diameter=inches(1.25), depth=inches(0.06), side="far")
    hole = Hole(diameter=inches(17 / 32), through=True)
    planned = made(hole, face, shop=shop)
    (seat,) = planned.seats
    assert [step.name for step in seat.operations] == ["lead drill", "drill", "back spotface"]
    assert seat.stops == ()
    assert "locked out" in seat.operations[-1].why
    assert "back_spotface" in planned.cautions
    press = made(hole, face, shop=shop, machine="bench drill press")
    assert looked(press)["hold of the bar"] == "stop"


def test_a_seat_on_the_far_side_of_a_blind_hole_is_asked_about() -> None:
    """A hole that does not go through has no far side."""
    blind = Hole(diameter=inches(0.266), depth=inches(0.5))
    planned = made(blind, replace(CSK, side="far"))
    assert looked(planned)["side"] == "stop"


@pytest.mark.parametrize(
    ("seat", "asks"),
    [
        (replace(CSK, side="other"), "Other side than which?"),
        (replace(BORE, measured_from="bottom"), "From the bottom: depth, or height of the floor?"),
    ],
)
def test_a_side_that_can_be_two_things_is_asked_about(seat, asks) -> None:
    """The questions are the shop's own."""
    planned = made(THRU, seat)
    assert planned.must_ask
    assert asks in planned.questions


def test_from_the_far_side_is_the_far_side() -> None:
    """FROM FAR SIDE names the face the cut starts from; a named plate is said."""
    planned = made(THRU, replace(BORE, measured_from="far side"))
    assert "turn the part over" in steps(planned)[0]
    planned = made(THRU, replace(BORE, measured_from="top plate"))
    assert "Starts from the top plate" in said(planned)


# -- threads and blind holes -----------------------------------------------------------------


def test_a_thread_as_deep_as_its_hole_stops() -> None:
    """A thread .50 deep on a drill .45 deep has -1 pitch of room: one yields."""
    planned = made(Hole(diameter=Size(name="#7"), depth=inches(0.45)), quarter(depth=inches(0.50)))
    assert looked(planned)["room for the tap's lead"] == "stop"
    assert "The thread is deeper than its drill: which yields?" in planned.questions


def test_a_blind_thread_without_a_drill_depth_gets_one() -> None:
    """Six pitches below the full thread, a lead of 5 and one for chips: .50 + .30 = .80."""
    planned = made(quarter(depth=inches(0.50)))
    depth = planned.seats[0].size("drill depth, full diameter")
    assert depth.value / IN == pytest.approx(0.80)
    assert "worked out" in depth.source
    thin = made(quarter(depth=inches(0.50)), thickness=0.8)
    assert looked(thin)["drill point"] == "stop"


def test_a_greatest_drill_depth_and_a_least_thread_leave_a_window() -> None:
    """⌀.422 1.06 MAX, 1/2-13 .75 MIN: from .75 + 3 p = .981 to 1.06, aim 1.02."""
    hole = Hole(diameter=inches(0.422), depth=inches(1.06, bound="max"))
    thread = Thread(size="1/2", threads_per_inch=13, depth=inches(0.75, bound="min"))
    depth = made(hole, thread, thickness=2).seats[0].size("drill depth, full diameter")
    found = [size / IN for size in (depth.least, depth.value, depth.greatest)]
    assert found == pytest.approx([0.9808, 1.0204, 1.06], abs=6e-5)


def test_a_depth_to_the_point_leaves_less_for_the_tap() -> None:
    """17/32 X 1.75 TO POINT: 1.75 - .1596 = 1.590 at full diameter."""
    hole = Hole(diameter=inches(17 / 32), depth=inches(1.75), depth_to="point")
    thread = Thread(size="5/8", threads_per_inch=11, depth=inches(1.25))
    (seat,) = made(hole, thread, thickness=2).seats
    assert seat.size("drill depth, full diameter").value / IN == pytest.approx(1.5904, abs=6e-5)
    assert seat.size("deepest, at the point").value / IN == pytest.approx(1.75)


def test_a_blind_hole_in_unknown_stock_says_the_sum_to_do() -> None:
    """Unknown thickness is a look that names the sum, never holds."""
    planned = made(Hole(diameter=inches(0.25), depth=inches(0.5)), thickness=None)
    assert looked(planned)["drill point"] == "look"
    assert "Left under the point = thickness - 0.575 in" in said(planned)


def test_little_metal_under_a_point_is_looked_at() -> None:
    """Under 1/16 in or a quarter of the drill: a judgement, house rule."""
    hole = Hole(diameter=inches(0.5), depth=inches(0.75))
    planned = made(hole, thickness=1.0)  # 1.0 - .75 - .150 = .0998, under .125
    assert looked(planned)["drill point"] == "look"
    assert made(hole, thickness=1.1).must_ask is False


def test_a_thin_thread_is_looked_at() -> None:
    """3/8-16 on Q (.332): 53 %, under house rule."""
    thread = Thread(size="3/8", threads_per_inch=16, through=True)
    planned = made(Hole(diameter=Size(name="Q")), thread)
    assert looked(planned)["percent of thread"] == "look"
    assert "53 % of full thread" in said(planned)


def test_a_plug_tap_without_its_room_is_looked_at() -> None:
    """The note's plug tap does not cut full with 2.2 pitches below the thread."""
    hole = Hole(diameter=Size(name="F"), depth=inches(0.56))
    thread = Thread(size="5/16", threads_per_inch=18, depth=inches(0.44), tap="plug")
    assert looked(made(hole, thread))["kind of tap"] == "look"


def test_a_pipe_thread_is_said_to_be_not_planned() -> None:
    """NPT is no seat for a head, and not unreadable either."""
    with pytest.raises(SeatworkError, match="not planned here: pipe thread"):
        made(Thread(size="1/8", threads_per_inch=27, series="NPT"))


def test_a_leg_under_the_major_diameter_is_looked_at() -> None:
    """3/8-16 CHAM .03: .3125 + .06 = .3725 at the face, under .375."""
    thread = Thread(size="3/8", threads_per_inch=16, through=True)
    chamfer = Chamfer(leg=inches(0.03), angle=Size(value=90, unit="deg"))
    planned = made(thread, chamfer)
    assert looked(planned)["mouth of the thread"] == "look"
    assert steps(planned)[0][:3] == ["drill", "chamfer", "tap"]


def test_a_counterbore_that_takes_the_whole_thread_stops() -> None:
    """Both depths count from the face: .25 of thread under .38 of counterbore is none."""
    bore = Counterbore(diameter=inches(0.5), depth=inches(0.38))
    hole = Hole(diameter=Size(name="#7"), depth=inches(0.88))
    planned = made(hole, quarter(depth=inches(0.25)), bore)
    assert looked(planned)["full thread in the metal"] == "stop"


def test_a_flat_head_named_for_a_thread_still_stops() -> None:
    """A countersink on a thread is its mouth; the named screw is a question."""
    csk = Countersink(screw="1/4-20 FLAT HEAD MACHINE SCREW")
    planned = made(quarter(through=True), csk)
    assert looked(planned)["screw in a tapped hole"] == "stop"
    assert steps(planned)[0][1:3] == ["chamfer", "tap"]


def test_a_hand_tap_under_a_quarter_inch_has_its_wrench() -> None:
    """Taps under 1/4 in go by a wrench, not in the chuck; left hand is said."""
    small = Thread(size="#10", threads_per_inch=32, through=True, left_hand=True)
    (seat,) = made(small).seats
    tap = next(step for step in seat.operations if step.name == "tap")
    assert tap.why.count("in the chuck") == 0
    assert tap.tool.endswith("LH")
    assert "tapping" in made(small).cautions


# -- countersink and counterbore ---------------------------------------------------------------


def test_a_countersink_wider_than_its_counterbore_is_at_the_mouth() -> None:
    """The cone runs into the counterbore there: (.900 - .810)/2 deep at 90°, not from the hole."""
    bore = Counterbore(diameter=inches(0.81), depth=inches(0.5))
    cone = Countersink(diameter=inches(0.9), angle=Size(value=90, unit="deg"))
    planned = made(Hole(diameter=inches(0.531), through=True), bore, cone)
    depth = planned.seats[1].size("depth from the face")
    assert depth.value / IN == pytest.approx(0.045)


def test_a_countersink_as_wide_as_its_counterbore_is_refused() -> None:
    """It would cut nothing at the mouth and leave no floor."""
    bore = Counterbore(diameter=inches(0.5), depth=inches(0.25))
    cone = Countersink(diameter=inches(0.5), angle=Size(value=90, unit="deg"))
    with pytest.raises(SeatworkError, match="equally wide"):
        made(THRU, bore, cone)


def test_a_cutter_for_the_floor_must_go_into_the_counterbore() -> None:
    """A body of 9/16 in or more does not enter .531; the 12.4 mm one does."""
    bore = Counterbore(diameter=inches(0.531), depth=inches(0.34))
    cone = Countersink(
        diameter=inches(0.346), angle=Size(value=90, unit="deg"), measured_from=FLOOR
    )
    hole = Hole(diameter=inches(0.332), through=True)
    cut = made(hole, bore, cone, thickness=0.75).seats[1].operations[0]
    assert cut.tool == "CS90-1"


# -- rivets ------------------------------------------------------------------------------------


def test_a_rivet_is_looked_up_in_its_own_list() -> None:
    """MS20426AD4 is 4/32 = 1/8 in, head .225 in 100°, from memory; it is no screw."""
    angle = Size(value=100, unit="deg")
    hole = Hole(diameter=Size(name="#30"), through=True)
    csk = Countersink(
        diameter=Size.limits(least=0.222 * IN, greatest=0.228 * IN, unit="in"),
        angle=angle,
        screw="MS20426AD4 RIVET",
    )
    (seat,) = made(hole, csk, machine="hand drill", material="6061 aluminum").seats
    assert "1/8 rivet" in seat.title
    assert looked(made(hole, csk))["head of the rivet"] == "look"


def test_a_flush_window_that_a_rivet_cannot_meet_stops() -> None:
    """A head of .225 in .240 sits .0063 below; FLUSH +.002 -.000 wants it at the face or over."""
    head = Head(state="flush", amount=Size(value=0.0, upper=0.002 * IN, lower=0.0))
    csk = Countersink(
        diameter=inches(0.240), angle=Size(value=100, unit="deg"), screw="1/8 rivet", head=head
    )
    planned = made(Hole(diameter=Size(name="#30"), through=True), csk)
    assert looked(planned)["head of the rivet"] == "stop"


# -- reamers -------------------------------------------------------------------------------------

REAM = Hole(
    diameter=Size(value=0.25 * IN, upper=0.0005 * IN, lower=0.0), through=True, process="ream"
)


def test_a_reamed_hole_alone_is_drilled_under_and_reamed_once() -> None:
    """A plan that lists a ream lists the reamer, and the drill under it."""
    assert steps(made(REAM)) == [["drill", "ream", "deburr the far side"]]
    assert made(REAM).seats[0].size("drill under the reamer").name


def test_ream_first_touches_the_reamed_edge() -> None:
    """By the other house rule travel and depth are one: (.507 - .250)/1.73857 = .148."""
    shop = under('[order]\nream_and_seat = "ream first"')
    planned = made(Hole(diameter=inches(15 / 64), process="drill"), REAM, CSK, shop=shop)
    assert steps(planned)[0][:3] == ["drill", "ream", "countersink"]
    assert planned.seats[0].stops[0].travel / IN == pytest.approx(0.1478, abs=6e-5)


def test_a_far_seat_is_cut_on_the_reamed_hole() -> None:
    """The hole is reamed in the clamping of its drill, before the part is turned over."""
    drill = Hole(diameter=inches(15 / 64), process="drill")
    planned = made(drill, REAM, replace(CSK, side="far"))
    (names,) = steps(planned)
    assert names.index("ream") < names.index("turn the part over")
    assert planned.seats[0].stops[0].travel / IN == pytest.approx(0.1478, abs=6e-5)


@pytest.mark.parametrize("drill", [0.2485, 0.2, 0.26])
def test_a_drill_that_leaves_too_little_or_too_much_is_asked_about(drill) -> None:
    """A machine reamer takes .003 to 1/32: common practice, no source."""
    planned = made(Hole(diameter=inches(drill), process="drill"), REAM)
    assert looked(planned)["left for the reamer"] == "stop"


def test_limits_of_a_fit_are_never_equal() -> None:
    """10 H7 is 10 to 10.015 by ISO 286-1; a grade no table holds is told to be looked up."""
    reamed = Hole(diameter=Size(value=10, unit="mm", fit="H7"), through=True, process="ream")
    hole = made(reamed).seats[0].size("hole")
    assert (hole.least, hole.greatest) == (10, pytest.approx(10.015))
    other = replace(reamed, diameter=Size(value=10, unit="mm", fit="H8"))
    planned = made(other)
    assert planned.seats[0].size("hole").least is None
    assert "Limits of H8: from your table" in said(planned)


def test_a_blind_ream_wants_room_below_it() -> None:
    """.94 - .75 = .19 holds; .80 - .75 is under 1/8 in; no drill depth gets 1/8 in more."""
    ream = Hole(diameter=inches(0.5), depth=inches(0.75), process="ream")
    drill = Hole(diameter=inches(31 / 64), depth=inches(0.94), process="drill")
    name = "room below the reamer"
    assert looked(made(drill, ream, thickness=2))[name] == "holds"
    assert looked(made(replace(drill, depth=inches(0.80)), ream, thickness=2))[name] == "look"
    assert looked(made(replace(drill, depth=inches(0.70)), ream, thickness=2))[name] == "stop"
    alone = made(ream, thickness=2).seats[0].size("drill depth, full diameter")
    assert alone.value / IN == pytest.approx(0.875)


def test_a_center_with_a_thread_is_not_planned_as_a_center() -> None:
    """The center hole of a shaft stands alone; beside a thread it only spots the drill."""
    with pytest.raises(SeatworkError, match="only spots the drill"):
        made(Counterdrill(meaning="center drill", diameter=Size(name="#3")), quarter(through=True))


def test_a_diameter_and_a_depth_that_do_not_belong_together_are_asked_about() -> None:
    """20 on 10 at 90 degrees is 5 deep: 3 is asked about, 5 and 5.1 with 0.2 either way are not."""
    hole = Hole(diameter=Size(value=10, unit="mm"), through=True)
    seat = Countersink(diameter=Size(value=20, unit="mm"), angle=Size(value=90, unit="deg"))
    for deep, asked in ((3, True), (5, False), (5.1, False), (6, True)):
        planned = made(hole, replace(seat, depth=Size(value=deep, unit="mm")))
        assert (looked(planned).get("diameter against depth") == "stop") is asked
        assert any("Which of the two holds?" in one for one in planned.questions) is asked
    reference = replace(seat, depth=Size(value=3, unit="mm", bound="ref"))
    assert "diameter against depth" not in looked(made(hole, reference))


@pytest.mark.parametrize(
    ("length", "verdict"), [("1/2", "holds"), ("5/8", "stop"), ("9/16", "look")]
)
def test_a_screw_into_a_blind_thread_must_not_bottom(length, verdict) -> None:
    """Grip .25 and .40 of thread on 20: .25 + .40 - .05 = .60 at most; 5/8 bottoms, U6."""
    seat = Counterbore(diameter=inches(0.438), depth=inches(0.25), screw=f"1/4-20 x {length} SHCS")
    hole = Hole(diameter=inches(9 / 32), through=True)
    wanted = (0.20 if verdict != "look" else 0.36) * IN
    callout = Callout(features=(hole, seat))
    planned = plan.make(
        callout,
        material="1018 steel",
        machine="knee mill",
        shop=SHOP,
        thickness=0.5 * IN,
        engagement=wanted,
        thread_below=0.40 * IN,
    )
    assert looked(planned)["end of the screw"] == verdict
    advice = " ".join(planned.seats[0].advice)
    assert "0.600 in (15.24 mm) at most" in advice
    if verdict == "stop":
        assert "bottoms and clamps nothing" in said(planned)
        assert any("A shorter screw, or a deeper thread?" in one for one in planned.questions)


def test_a_drill_is_not_started_on_a_steep_pad() -> None:
    """Over 3 degrees a drill wanders: a LOOK, by house rule; at 3 degrees and below none."""
    face = Spotface(diameter=inches(1.25), clean_up=True)
    callout = Callout(features=(Hole(diameter=inches(17 / 32), through=True), face))
    for slope, found in ((2.0, None), (3.0, None), (5.0, "look")):
        planned = plan.make(
            callout,
            material="gray iron",
            machine="knee mill",
            shop=SHOP,
            thickness=0.6 * IN,
            slope=slope,
        )
        assert looked(planned).get("start of the drill") == found


def test_a_metric_mouth_and_run_out_follow_their_standard_where_the_house_does() -> None:
    """M8: 1.05 x 8 = 8.4; 16 and 6.2 of run-out make 22.2 (DIN 76-1, from memory)."""
    tapped = (Thread(size="M8", pitch=1.25, depth=Size(value=16, unit="mm")),)
    metric = "1.05 x major diameter"
    shop = under(f'[tapped_hole]\nmetric_mouth = "{metric}"\n[thread]\nmetric_room = "DIN 76-1"')
    seat = made(*tapped, thickness=2, shop=shop).seats[0]
    assert seat.size("diameter at the face").value == pytest.approx(8.4)
    assert seat.size("drill depth, full diameter").value == pytest.approx(22.2)
    usual = made(*tapped, thickness=2).seats[0]
    assert usual.size("diameter at the face").value == pytest.approx(8 + 0.020 * IN)
    assert usual.size("drill depth, full diameter").value == pytest.approx(16 + 6 * 1.25)


def test_a_head_that_no_table_holds_is_planned_by_the_seats_own_sizes() -> None:
    """A button head's counterbore with both sizes is cut as said, and the head asked about."""
    for name in ("M8 BHCS", "M8 ISO 7380"):
        planned = plan.make(
            f"⌀9 THRU ⌴ ⌀15 ↧5 FOR {name}",
            material="1018 steel",
            machine="knee mill",
            shop=SHOP,
            thickness=25.4,
        )
        assert planned.seats[0].size("counterbore diameter").value == 15
        assert "measure the head across" in planned.questions[0]
        with pytest.raises(SeatworkError, match="measure the head across"):
            made(Hole(diameter=Size(value=9, unit="mm"), through=True), Counterbore(screw=name))


def test_a_rivets_head_is_held_against_the_house_where_flush_has_no_number() -> None:
    """A .344 seat holds the .353 head .004 to .005 proud: FLUSH and FLUSH OR BELOW ask."""
    hole = Hole(diameter=Size(name="#11"), through=True)
    seat = Countersink(
        diameter=Size.limits(least=0.340 * IN, greatest=0.344 * IN, unit="in"),
        angle=Size(value=100, unit="deg"),
        screw="3/16 FLUSH RIVET",
    )
    name = "head of the rivet"
    for state in ("flush", "flush or below"):
        assert looked(made(hole, replace(seat, head=Head(state=state))))[name] == "stop"
    assert looked(made(hole, seat))[name] == "look"


# -- beside the cut -----------------------------------------------------------------------


@pytest.mark.parametrize(("angle", "lost"), [(82, 0.91), (90, 0.83), (100, 0.73)])
def test_plating_is_said_with_what_it_takes_off(angle, lost) -> None:
    """A cone loses 2p (1 - sin)/cos of half its angle at the face, a hole 2p: geometry."""
    csk = replace(CSK, angle=Size(value=angle, unit="deg"))
    callout = Callout(features=(THRU, csk), sizes_hold="after plating")
    planned = plan.make(callout, material="1018 steel", machine="knee mill", shop=SHOP)
    assert looked(planned)["sizes after plating"] == "look"
    assert f"loses 2 p in diameter, a countersink {lost} p" in said(planned)
    assert "how thick is it on a side?" in planned.questions[0]
    before = plan.make(
        replace(callout, sizes_hold="before plating"),
        material="1018 steel",
        machine="knee mill",
        shop=SHOP,
    )
    assert "The sizes here are those to cut" in said(before)
    assert not before.questions


def test_a_tap_after_the_finish_is_asked_about() -> None:
    """AFTER PLATING behind a tapped hole may say when it is tapped."""
    callout = Callout(
        features=(Hole(diameter=Size(name="#7"), through=True), quarter(through=True)),
        sizes_hold="after plating",
    )
    planned = plan.make(callout, material="1018 steel", machine="knee mill", shop=SHOP)
    assert "Or is the hole tapped after it?" in planned.questions[0]


def test_another_note_of_the_print_is_looked_at_by_its_number() -> None:
    """SEE NOTE 3 is a LOOK that names note 3; the frame beside it is only kept."""
    kept = ("SEE NOTE 3", "ON BOSS", "(PER DETAIL B)")
    callout = Callout(features=(THRU, CSK), said_not_used=kept)
    planned = plan.make(callout, material="1018 steel", machine="knee mill", shop=SHOP)
    assert looked(planned)["note 3"] == looked(planned)["detail B"] == "look"
    assert "Read note 3 of the print before cutting" in said(planned)
    assert "on boss" not in said(planned).lower()


def test_an_iso_grade_on_an_inch_size_is_remarked_on() -> None:
    """H7 on .500 in is read, and asked whether it is meant; on 10 mm nothing is said."""
    inch = Hole(diameter=inches(0.5, fit="H7"), through=True, process="ream")
    assert looked(made(inch))["grade H7"] == "look"
    metric = replace(inch, diameter=Size(value=10, unit="mm", fit="H7"))
    assert "grade H7" not in looked(made(metric))


def test_flush_or_below_is_never_proud_whatever_the_house_lets_stand() -> None:
    """The print's upper limit is the face; how far below is the house's .015 in."""
    loose = under('[flush]\ngreatest_proud = "0.003 in"')
    hole = Hole(diameter=Size(name="#7"), through=True)
    seat = Countersink(
        screw="#10 FLAT HEAD",
        diameter=inches(0.382),
        angle=Size(value=82, unit="deg"),
        head=Head(state="flush or below"),
    )
    proud = (0.385 - 0.382) / (2 * 0.86929)  # .0017 in over the face
    assert 0 < proud < 0.003
    assert looked(made(hole, seat, shop=loose))["greatest head"] == "stop"
    assert looked(made(hole, replace(seat, head=None), shop=loose))["greatest head"] == "holds"


# -- nothing that is said may be dropped without a word ----------------------------------------

WHOLE = {
    "both sides": (THRU, replace(CSK, side="both")),
    "far side": (THRU, replace(BORE, side="far")),
    "from": (THRU, replace(BORE, measured_from="far side")),
    "floor": (
        Hole(diameter=inches(0.332), through=True),
        Counterbore(diameter=inches(0.531), depth=inches(0.34)),
        Countersink(diameter=inches(0.346), angle=Size(value=90, unit="deg")),
    ),
    "thread": (
        Hole(diameter=Size(name="#7"), depth=inches(0.95), depth_to="point"),
        quarter(depth=inches(0.62), tap="bottoming", left_hand=True),
        Countersink(diameter=inches(0.270), angle=Size(value=90, unit="deg")),
    ),
    "ream": (
        Hole(diameter=inches(15 / 64), depth=inches(0.9), process="drill"),
        replace(REAM, through=False, depth=inches(0.6)),
        CSK,
    ),
    "limits": (
        Hole(diameter=Size.limits(least=0.264 * IN, greatest=0.27 * IN, unit="in"), through=True),
        Countersink(
            diameter=Size.limits(least=0.5 * IN, greatest=0.51 * IN, unit="in"),
            angle=Size(value=82, unit="deg"),
        ),
    ),
    "flush or below": (
        Hole(diameter=Size(name="#7"), through=True),
        Countersink(screw="#10 FLAT HEAD", head=Head(state="flush or below")),
    ),
    "below": (
        Hole(diameter=Size(name="#7"), through=True),
        Countersink(
            screw="#10 FLAT HEAD",
            head=Head(state="below", amount=Size.limits(least=0.127, greatest=0.254, unit="in")),
        ),
    ),
    "one-sided": (
        replace(THRU, diameter=inches(0.266, upper=0.1, lower=0.0)),
        replace(CSK, diameter=inches(0.507, upper=0.0, lower=-0.2)),
    ),
    "graded": (Hole(diameter=inches(0.5, fit="H7"), through=True, process="ream"),),
}
QUIET = {"through", "process", "series", "scope", "size"}


PARTS_OF_A_SIZE = {"upper": None, "lower": None, "least": None, "greatest": None, "fit": ""}


def without(features, at, name):
    """Return the features with one field left out."""
    default = next(one.default for one in fields(features[at]) if one.name == name)
    return (*features[:at], replace(features[at], **{name: default}), *features[at + 1 :])


def dropped():
    """List every field that a note of the set says, with its place."""
    for name, features in WHOLE.items():
        for at, feature in enumerate(features):
            for one in fields(feature):
                if one.name not in QUIET and getattr(feature, one.name) != one.default:
                    yield pytest.param(name, at, one.name, id=f"{name}-{at}-{one.name}")


@pytest.mark.parametrize(
    ("name", "at", "field"), [case for case in dropped() if "size" not in case.values]
)
def test_no_field_of_a_note_can_be_dropped_unseen(name, at, field) -> None:
    """Leaving out any one thing that is said changes what the plan tells, or is refused."""
    whole = str(made(*WHOLE[name]))
    try:
        less = str(made(*without(WHOLE[name], at, field)))
    except SeatworkError:
        return
    assert less != whole


@pytest.mark.parametrize("name", ["limits", "one-sided", "graded"])
def test_no_limit_of_a_size_can_be_dropped_unseen(name) -> None:
    """Limits, deviations and a grade change what is printed; the bare size is another plan."""
    whole = str(made(*WHOLE[name]))
    for at, feature in enumerate(WHOLE[name]):
        bare = replace(feature, diameter=replace(feature.diameter, **PARTS_OF_A_SIZE))
        less = (*WHOLE[name][:at], bare, *WHOLE[name][at + 1 :])
        assert str(made(*less)) != whole


@pytest.mark.parametrize("held", ["after plating", "before plating", "after heat treatment"])
def test_when_the_sizes_hold_cannot_be_dropped_unseen(held) -> None:
    """A finish and the other note of the print that is named are seen in the plan."""
    bare = Callout(features=(THRU, CSK))
    known = {"material": "1018 steel", "machine": "knee mill", "shop": SHOP}
    plain = str(plan.make(bare, **known))
    assert str(plan.make(replace(bare, sizes_hold=held), **known)) != plain
    assert str(plan.make(replace(bare, said_not_used=("SEE NOTE 3",)), **known)) != plain


def test_leaving_out_the_reamer_or_the_thread_is_seen() -> None:
    """A plan that lost its reamer or its tap is another plan."""
    for name, word in (("ream", "ream"), ("thread", "tap")):
        assert any(word in step for names in steps(made(*WHOLE[name])) for step in names)
        kept = tuple(
            one
            for one in WHOLE[name]
            if not isinstance(one, Thread) and getattr(one, "process", "") != "ream"
        )
        assert not any(word in names for names in steps(made(*kept)))
