"""Limits, flushness, heads, raw pads, stops, names and centers of plans worked by hand.

Each figure stands with the sum that gives it and where the numbers of the sum come from;
none was read off the program. Notes are given as what they say, so that no reading stands
between. Sources: N the note; F house rules (title block .005 in and 0.2 mm, pilot .002 under,
scale 1/32 in); K the shop's own machines and cutters; A ANSI B18.6.3-1972; H ASME B18.3
appendix, from memory; I ISO 10642 and ISO 4762; L ASME B94.11M, from memory.
"""

import math
from typing import Any

import pytest
from proof.holding import BY_HAND, Outside
from seatwork import notes, plan
from seatwork.errors import SeatworkError
from seatwork.notes import (
    Callout,
    Counterbore,
    Counterdrill,
    Countersink,
    Feature,
    Head,
    Hole,
    Size,
    Spotface,
)
from seatwork.plan import SeatPlan
from seatwork.shop.shop import Shop

SHEET = "limits, heads, pads and centers, worked by hand"
SHOP = Shop.at()
IN = 25.4
CLOSE = {"in": 6e-5, "mm": 1e-3, "rpm": 0.06, "clicks": 0.5}
SUMS = {"pi": math.pi, "tan": lambda degrees: math.tan(math.radians(degrees))}


def inches(value: float, **said: Any) -> Size:
    """Write an inch size of a note."""
    return Size(value=value * IN, **said)


def between(least: float, greatest: float) -> Size:
    """Write inch limits of a note."""
    return Size.limits(least=least * IN, greatest=greatest * IN, unit="in")


def metric(value: float, **said: Any) -> Size:
    """Write a size of a note in millimeters."""
    return Size(value=value, unit="mm", **said)


def degrees(value: float) -> Size:
    """Write an included angle of a note."""
    return Size(value=value, unit="deg")


def made(
    *features: Feature,
    material: str = "1018 steel",
    machine: str = "knee mill",
    system: str = "inch",
    **known: float,
) -> SeatPlan:
    """Plan what a note says, and return its first seat."""
    callout = Callout(features=features, system=system)
    planned = plan.make(callout, material=material, machine=machine, shop=SHOP, **known)
    return planned.seats[0]


def verdicts(seat: SeatPlan) -> dict[str, str]:
    """Return the verdict of each check."""
    return {check.name: check.verdict for check in seat.checks}


def told(seat: SeatPlan) -> str:
    """Return all that was looked at, in one text."""
    return " ".join(f"{check.sentence} {check.question}" for check in seat.checks)


def figure(seat: SeatPlan, what: str, unit: str) -> float:
    """Read a figure: a size, a stop's travel, or a step's speed."""
    kind, _, rest = what.partition(": ")
    if unit == "clicks":
        return getattr(seat.stops[0], rest) / seat.stops[0].step
    per = IN if unit == "in" else 1.0
    if kind == "stop":
        return getattr(seat.stops[0], rest) / per
    if kind in ("set", "raw"):
        (step,) = [step for step in seat.operations if step.name == rest]
        return step.spindle.step.spindle_speed if kind == "set" else step.spindle.raw
    return getattr(seat.size(rest), kind) / per


def check_figures(
    outside: Outside, seat: SeatPlan, figures: list[tuple[str, float, str, str, str]]
) -> None:
    """Hold each figure to its sum, and the plan to the figure."""
    for what, value, unit, work, source in figures:
        assert source, what
        summed = eval(work, {"__builtins__": {}}, SUMS)
        assert summed == pytest.approx(value, abs=CLOSE[unit]), (what, work)
        name, found = f"limits: {work}: {what}", figure(seat, what, unit)
        assert outside(
            name, found, value, within=CLOSE[unit], unit=unit, source=SHEET, kind=BY_HAND
        ), what


# -- worked plan: flush rivet in sheet, hand drill with a cage --------------------------------


def rivet_seat(thickness: float) -> SeatPlan:
    """Plan DRILL #11 (.191), CSK 100° X .356/.350 DIA FOR 3/16 FLUSH RIVET."""
    return made(
        Hole(diameter=Size(name="#11"), also=inches(0.191), process="drill"),
        Countersink(angle=degrees(100), diameter=between(0.350, 0.356), screw="3/16 FLUSH RIVET"),
        material="6061 aluminum",
        machine="hand drill",
        thickness=thickness * IN,
    )


def test_a_rivet_seat_is_cut_in_clicks_of_the_cage(outside) -> None:
    """A flush rivet's seat: middle, limits, clicks and speeds; the cage is the only stop."""
    seat = rivet_seat(0.125)
    check_figures(
        outside,
        seat,
        [
            ("value: diameter at the face", 0.3530, "in", "(.350+.356)/2", "N"),
            ("least: diameter at the face", 0.3500, "in", ".350", "N"),
            ("greatest: diameter at the face", 0.3560, "in", ".356", "N"),
            ("value: depth from the face", 0.0680, "in", "(.353-.191)/(2*tan(50))", "N"),
            ("least: depth from the face", 0.0667, "in", "(.350-.191)/(2*tan(50))", "N"),
            ("greatest: depth from the face", 0.0692, "in", "(.356-.191)/(2*tan(50))", "N"),
            ("stop: travel", 68, "clicks", "1000*(.353-.191)/(2*tan(50))", "N K: click .001"),
            ("stop: least", 67, "clicks", "1000*(.350-.191)/(2*tan(50))", "N K"),
            ("stop: greatest", 69, "clicks", "1000*(.356-.191)/(2*tan(50))", "N K"),
            ("stop: effect", 0.0024, "in", "2*tan(50)*.001", "N K"),
            ("raw: drill", 3999.7, "rpm", "12*200/(pi*.191)", "NAVEDTRA 14345, slow end"),
            ("set: drill", 1200, "rpm", "1200", "K: 100 to 1200 without steps"),
            ("raw: countersink", 1082.1, "rpm", "12*200/(pi*.353)/2", "NAVEDTRA 14345, F"),
            ("set: countersink", 300, "rpm", "300", "F: cap"),
        ],
    )
    assert {stop.device for stop in seat.stops} == {"stop cage"}
    (step,) = [step for step in seat.operations if step.name == "countersink"]
    assert step.tool == "CS100-1P + CAGE"
    found = verdicts(seat)
    assert found["play of the pilot"] == "look"  # .191 less .187 is .004, over .003
    assert (found["knife edge"], found["depth stop"]) == ("holds", "holds")


@pytest.mark.parametrize(
    ("sheet", "edge", "least"),
    [(0.125, "holds", "holds"), (0.072, "look", "look"), (0.063, "stop", "look")],
)
def test_thin_sheet_looks_and_then_stops(sheet, edge, least) -> None:
    """.068 of .125 holds; at the listed least, .072, LOOK; .063 is a knife edge of .203: STOP."""
    seat = rivet_seat(sheet)
    found = verdicts(seat)
    assert (found["knife edge"], found["least sheet for the rivet"]) == (edge, least)
    if edge == "stop":
        # .353 less .063 times 2 tan 50°
        assert "0.203 in" in told(seat)
        assert "dimple" in told(seat)


def test_a_hand_drill_without_a_cage_has_no_travel_and_no_bare_lips() -> None:
    """90° in the hand drill: no cage fits, so trial and gage; never three bare lips."""
    seat = made(
        Hole(diameter=metric(6.6)),
        Countersink(diameter=metric(12), angle=degrees(90)),
        machine="hand drill",
        system="metric",
        thickness=12.0,
    )
    assert seat.stops == ()
    assert verdicts(seat)["depth stop"] == "look"
    assert "try the screw" in told(seat)
    assert "CS90-3" not in " ".join(step.tool for step in seat.operations)


def test_one_stop_decides_on_each_machine() -> None:
    """Quill on press and mill, tailstock on a lathe: one device on a card, never two."""
    for machine, device in (
        ("bench drill press", "quill"),
        ("knee mill", "quill"),
        ("lathe", "tailstock"),
    ):
        seat = made(
            Hole(diameter=inches(0.266)),
            Countersink(diameter=inches(0.5), angle=degrees(82)),
            machine=machine,
        )
        assert {stop.device for stop in seat.stops} == {device}


# -- worked plan: spotface on a casting, least flange ------------------------------------------


def pad(low_side: float, **known: Any) -> SeatPlan:
    """Plan 17/32 DRILL THRU, SPOTFACE 1-1/4 DIA TO CLEAN UP, .38 MIN FLANGE on a 3° pad."""
    return made(
        Hole(diameter=inches(17 / 32), through=True, process="drill"),
        Spotface(diameter=inches(1.25), left=inches(0.38, bound="min"), clean_up=True),
        **{"material": "gray iron", "thickness": low_side * IN, "slope": 3.0, **known},
    )


def test_a_sloped_pad_has_two_limits_of_one_stop(outside) -> None:
    """First touch to full ring, with scale, and the least flange, on one stop."""
    seat = pad(0.450)
    check_figures(
        outside,
        seat,
        [
            ("value: first touch to full ring", 0.0655, "in", "1.25*tan(3)", "N geometry"),
            ("value: full ring at the axis", 0.0328, "in", "1.25*tan(3)/2", "N geometry"),
            ("value: full ring and scale", 0.0968, "in", "1.25*tan(3)+1/32", "N F"),
            ("value: flange left at the low side", 0.4188, "in", ".450-1/32", "N F"),
            ("value: deepest under the raw low side", 0.0700, "in", ".450-.380", "N"),
            ("stop: travel", 0.0968, "in", "1.25*tan(3)+1/32", "N F"),
            ("stop: least", 0.0655, "in", "1.25*tan(3)", "N"),
            ("stop: greatest", 0.1355, "in", "1.25*tan(3)+.450-.380", "N"),
        ],
    )
    assert verdicts(seat)["least flange"] == "holds"
    assert "0.039 in" in told(seat)  # .419 less .380


def test_too_thin_a_flange_is_asked_about_before_cutting() -> None:
    """.405 at the low side leaves .374, less than .38: STOP."""
    seat = pad(0.405)
    assert verdicts(seat)["least flange"] == "stop"
    assert "0.374 in" in told(seat)


def test_a_press_that_is_too_fast_stops_the_plan() -> None:
    """143 rev/min wanted, 250 the slowest (12*70/(pi*1.25)*2/3): another machine."""
    assert verdicts(pad(0.450, machine="bench drill press"))["spindle speed"] == "stop"


def test_a_flange_of_unknown_thickness_is_no_flange_that_holds() -> None:
    """Without the thickness the least flange is to be measured, not taken."""
    seat = made(
        Hole(diameter=inches(17 / 32), through=True),
        Spotface(diameter=inches(1.25), left=inches(0.38, bound="min")),
        material="gray iron",
    )
    assert verdicts(seat)["least flange"] == "look"


# -- worked plan: 100° aircraft flush screw ----------------------------------------------------


def aircraft(head: Head) -> SeatPlan:
    """Plan ⌀.190-.196 THRU ⌵ ⌀.385-.395 X 100° for a #10 100° head."""
    return made(
        Hole(diameter=between(0.190, 0.196), through=True),
        Countersink(
            diameter=between(0.385, 0.395),
            angle=degrees(100),
            screw="#10 100° flat head machine screw",
            head=head,
        ),
        material="6061 aluminum",
        thickness=0.125 * IN,
    )


def test_the_aircraft_screw_looks_at_box_and_stop(outside) -> None:
    """Window .005 against a spread of .013; the band for every hole is under two steps."""
    seat = aircraft(Head(state="flush to below", amount=inches(0.005)))
    check_figures(outside, seat, [("value: hole", 0.1930, "in", "(.190+.196)/2", "N")])
    assert seat.size("hole").name == "#11"  # #10 (.1935) is over the middle
    found = verdicts(seat)
    assert found["every head of this size"] == "look"
    assert "0.013 in" in told(seat)  # gage .034 less .021, ANSI 1972 table
    assert (found["greatest head"], found["depth stop"]) == ("holds", "look")
    (drill,) = [step for step in seat.operations if step.name == "drill"]
    assert drill.spindle.raw == pytest.approx(12 * 200 / (math.pi * 0.191), abs=0.06)


def test_a_print_against_itself_is_asked_about() -> None:
    """FLUSH +.002 -.000 wants .3802 to .385, the note .385 to .395: it asks which governs."""
    tolerance = Size.limits(least=0.0, greatest=0.002 * IN, unit="in")
    seat = aircraft(Head(state="proud", amount=tolerance))
    assert verdicts(seat)["greatest head"] == "stop"
    assert "which governs?" in told(seat)


# -- worked plan: ISO 10642 --------------------------------------------------------------------


def test_a_metric_head_is_not_said_to_hold_beyond_its_flushness(outside) -> None:
    """M8 in 17.92: greatest head flush, least 0.40 below by F, over the house's .38 (15 thou)."""
    note = notes.read("⌀9 THRU ⌵ FOR M8 ISO 10642, 4 PL")
    planned = plan.make(note, material="1018 steel", machine="knee mill", shop=SHOP, thickness=12.0)
    (seat,) = planned.seats
    assert verdicts(seat)["every head of this size"] == "look"
    assert "every head flush" not in told(seat)
    assert "from memory" in told(seat)
    assert "0.40 mm" in told(seat)
    check_figures(
        outside,
        seat,
        [
            ("value: diameter at the face", 17.92, "mm", "17.92", "I"),
            ("greatest: diameter at the face", 18.682, "mm", "17.92+2*.381", "I F"),
            ("value: depth from the face", 4.46, "mm", "(17.92-9)/2", "I N"),
            ("stop: effect", 0.04, "mm", "2*tan(45)*.02", "geometry"),
        ],
    )
    assert "body at least" in next(step.tool for step in seat.operations if not step.in_shop)


def test_a_head_whose_least_is_not_held_is_only_tried() -> None:
    """ISO 7721 heads: the greatest is known, of the least nothing is said."""
    note = notes.read("⌀5.5 THRU ⌵ FOR M5 ISO 2009")
    planned = plan.make(note, material="1018 steel", machine="knee mill", shop=SHOP)
    (seat,) = planned.seats
    assert verdicts(seat)["every head of this size"] == "look"
    assert "least head is not known" in told(seat)


# -- limits with one bound, and what stands between two ----------------------------------------


@pytest.mark.parametrize(
    ("size", "aim", "least", "greatest"),
    [
        (inches(0.562, bound="max"), 0.557, 0.552, 0.562),
        (inches(0.500, bound="min"), 0.505, 0.500, 0.510),
        (inches(0.438, upper=0.010 * IN, lower=0.0), 0.443, 0.438, 0.448),
        (between(0.375, 0.385), 0.380, 0.375, 0.385),
    ],
)
def test_the_aim_is_the_middle_and_never_past_a_bound(size, aim, least, greatest) -> None:
    """MAX and MIN are aimed at one title-block tolerance (.005) inside; limits in the middle."""
    seat = made(Hole(diameter=inches(0.266)), Countersink(diameter=size, angle=degrees(82)))
    across = seat.size("diameter at the face")
    found = [value / IN for value in (across.value, across.least, across.greatest)]
    assert found == pytest.approx([aim, least, greatest], abs=1e-6)
    rule = "note.inch_tolerance" if size.bound else "limits.aim"
    assert across.source.endswith(f"house rule {rule}")


def test_a_least_depth_of_a_counterbore_is_aimed_over() -> None:
    """⌴ ⌀.812 ↧ .510 MIN: aim .515, never under .510."""
    seat = made(
        Hole(diameter=inches(0.531), through=True),
        Counterbore(diameter=inches(0.812), depth=inches(0.510, bound="min")),
    )
    deep = seat.size("depth from the face")
    assert (deep.value / IN, deep.least / IN) == pytest.approx((0.515, 0.510), abs=1e-6)


def test_a_reference_depth_is_never_worked_to(outside) -> None:
    """(.139 DP REF) beside a diameter: the travel is reckoned from the diameter."""
    seat = made(
        Hole(diameter=inches(0.266)),
        Countersink(diameter=inches(0.507), angle=degrees(82), depth=inches(0.150, bound="ref")),
    )
    check_figures(outside, seat, [("stop: travel", 0.1386, "in", "(.507-.266)/(2*tan(41))", "N")])


@pytest.mark.parametrize(
    ("machine", "verdict"), [("bench drill press", "look"), ("knee mill", "holds")]
)
def test_the_band_is_held_against_the_step_of_the_stop(machine, verdict) -> None:
    """.385/.375 at 82° leaves .0058: a press of .010 cannot hold it, a mill of .001 does."""
    seat = made(
        Hole(diameter=inches(0.201)),
        Countersink(diameter=between(0.375, 0.385), angle=degrees(82)),
        machine=machine,
    )
    assert verdicts(seat)["depth stop"] == verdict


def test_holes_that_differ_more_than_their_seats_send_the_touch_to_the_face() -> None:
    """Hole .190 to .204, seat .385 to .395: no one travel from the edge does for all."""
    seat = made(
        Hole(diameter=between(0.190, 0.204)),
        Countersink(diameter=between(0.385, 0.395), angle=degrees(82)),
    )
    assert seat.stops[0].any_hole is None
    assert "no one travel" in told(seat)


def test_wear_is_told_with_where_it_goes() -> None:
    """A cone goes small and its head high; a dull drill cuts over (common practice)."""
    seat = made(Hole(diameter=inches(0.266)), Countersink(diameter=inches(0.5), angle=degrees(82)))
    assert any("head high" in one for one in seat.advice)
    alone = made(Hole(diameter=inches(0.266), through=True))
    assert any("high limit" in one for one in alone.advice)


# -- under the head ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("screw", "hole", "clear", "leg"),
    [
        # ASME B18.3 appendix, from memory: C; leg (C - d)/2
        ("1/4 SHCS", inches(17 / 64), 0.278, 0.006),
        ("1/4 SHCS", inches(9 / 32), 0.278, 0.0),
        ("5/16 SHCS", inches(21 / 64), 0.346, 0.009),
        ("3/8 SHCS", inches(25 / 64), 0.415, 0.012),
        ("3/8 SHCS", inches(13 / 32), 0.415, 0.004),
        ("1/2 SHCS", inches(17 / 32), 0.552, 0.010),
    ],
)
def test_the_fillet_is_held_against_the_hole(screw, hole, clear, leg) -> None:
    """A hole under C is broken to it at the floor, 90°; one over C needs nothing."""
    seat = made(Hole(diameter=hole, through=True), Counterbore(screw=screw))
    assert seat.size("diameter that clears the fillet").value / IN == pytest.approx(clear, abs=1e-6)
    assert verdicts(seat)["fillet under the head"] == ("look" if leg else "holds")
    assert (f"{leg:.3f} in" in told(seat)) or not leg
    (edge,) = [step for step in seat.operations if step.name == "break the edge"]
    assert ("the floor too" in edge.why) is (leg > 0)


def test_the_metric_fillet_needs_a_tenth() -> None:
    """M6 in 6.6: da 6.8 wants a break of 0.1 (ISO 4762, one source)."""
    seat = made(
        Hole(diameter=metric(6.6), through=True), Counterbore(screw="M6 SHCS"), system="metric"
    )
    assert "0.10 mm" in told(seat)
    assert verdicts(seat)["fillet under the head"] == "look"


@pytest.mark.parametrize(("broken", "verdict"), [(0.346, "holds"), (0.440, "look")])
def test_too_big_a_break_eats_the_ring(broken, verdict) -> None:
    """5/16 head .469 on ⌀.332: broken to .346 at most .0615 is left of .0685; to .440 .0145."""
    seat = made(
        Hole(diameter=inches(0.332), through=True),
        Counterbore(diameter=inches(0.531), depth=inches(0.34), screw="5/16 SHCS"),
        Countersink(diameter=inches(broken), angle=degrees(90)),
    )
    assert verdicts(seat)["ring under the head"] == verdict
    # .0615 and .0145, the last place either way
    assert any(f"0.0{last} in" in told(seat) for last in ((61, 62) if broken < 0.4 else (14, 15)))
    assert verdicts(seat)["fillet under the head"] == "holds"


@pytest.mark.parametrize(
    ("bore", "radius", "verdict"), [(0.635, 0.02, "holds"), (0.620, 0.03, "look")]
)
def test_a_corner_at_the_floor_stays_outside_the_head(bore, radius, verdict) -> None:
    """3/8 head .562: room (D - .562)/2, less the play of the screw in ⌀.380, (.380-.375)/2."""
    seat = made(
        Hole(diameter=inches(0.380), through=True),
        Counterbore(
            diameter=inches(bore),
            depth=inches(0.390),
            fillet=inches(radius, bound="max"),
            screw="3/8 SHCS",
        ),
    )
    assert verdicts(seat)["corner at the floor"] == verdict


def test_a_head_below_the_face_sets_the_depth_of_its_counterbore() -> None:
    """5/16 SHCS, HEAD .030 BELOW: .3125 and .030 deep, the title block either way."""
    seat = made(
        Counterbore(screw="5/16 SHCS", head=Head(state="below", amount=inches(0.030))),
    )
    deep = seat.size("depth from the face")
    assert deep.value / IN == pytest.approx(0.3425, abs=6e-4)
    assert (deep.greatest - deep.least) / IN == pytest.approx(0.010, abs=1e-6)


# -- names of drills and centers ---------------------------------------------------------------


@pytest.mark.parametrize(
    ("size", "name", "beside"),
    [
        (inches(0.266), "17/64", "H is 0.0004 in over"),  # ASME B94.11M sizes
        (inches(0.281), "9/32", "K is 0.0003 in under"),
        (inches(0.250), "1/4", "E"),
        (Size(name="K"), "K", ""),
    ],
)
def test_the_fraction_is_named_first_and_a_named_drill_kept(size, name, beside) -> None:
    """.281 is 9/32 with K beside it; DRILL K stays K."""
    hole = made(Hole(diameter=size, through=True)).size("hole")
    assert (hole.name, hole.beside) == (name, beside)


def test_a_center_drill_travels_from_its_pilots_touch(outside) -> None:
    """#3: mouth .200 proposed, travel .188; speed at the mouth, feed by the pilot."""
    seat = made(
        Counterdrill(meaning="center drill", diameter=Size(name="#3")),
        machine="lathe",
        edge=0.375 * IN,
    )
    check_figures(
        outside,
        seat,
        [
            ("value: mouth of the center hole", 0.2000, "in", ".250*4/5", "L F"),
            ("stop: travel", 0.1879, "in", "7/64+(.2-7/64)/(2*tan(30))", "L geometry"),
            ("raw: center drill", 1527.9, "rpm", "12*80/(pi*.2)", "NAVEDTRA 14345"),
            ("set: center drill", 1200, "rpm", "1200", "K"),
        ],
    )
    (step,) = [step for step in seat.operations if step.name == "center drill"]
    assert step.feed / IN == pytest.approx(0.001)
    assert verdicts(seat)["mouth"] == "look"
    assert verdicts(seat)["point of the center"] == "holds"


def test_a_proud_head_without_a_number_is_asked_about() -> None:
    """PROUD alone says nothing of how far; nothing is planned for it."""
    with pytest.raises(SeatworkError, match="how far"):
        made(
            Hole(diameter=inches(0.201)),
            Countersink(screw="#10 flat head machine screw", head=Head(state="proud")),
        )
