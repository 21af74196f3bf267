"""What a plan says and in which order: kinds of line, the table to set by, the page."""

import json
import re
from dataclasses import replace
from pathlib import Path

import pytest
from seatwork import plan
from seatwork.cli.plan_page import closing_sections, page, sections
from seatwork.errors import SeatworkError
from seatwork.plan.contents import HEADINGS, KINDS, NOT_YET
from seatwork.shop.house.house_rules import HouseRules, apply
from seatwork.shop.shop import Shop

SHOP = Shop.at()
PRINTS = Path(__file__).parents[1] / "notes" / "data" / "prints.jsonl"
LINES = [json.loads(line)["note"] for line in PRINTS.read_text("utf-8").splitlines()]
COMMON = (
    "DRILL #7 (.201) THRU, CSK 82° X .385 DIA, 4 PL",
    "DRILL F (.257) THRU & CSK 82° TO .477 DIA FAR SIDE",
    "2X ⌀.266 THRU\n⌵ ⌀.507 X 82°\nBOTH SIDES",
    "DRILL & CSK FOR 1/4 F.H.M.S., HEAD FLUSH, 4 PL",
    "⌀.201 THRU ⌵ FOR #10 FLAT HEAD, .005 TO .010 BELOW FLUSH",
    "DRILL 17/64 (.266) THRU, C'BORE .438 DIA X .25 DP, 4 PL",
    "⌀.281 THRU ⌴ ⌀.438 ↧ .260 FAR SIDE",
    "C'BORE FOR 3/8 S.H.C.S., 6 PL",
    "⌀.332 THRU ⌴ ⌀.531 ↧ .34 ⌵ ⌀.346 X 90°",
    "13/32 DRILL THRU, S.F. 1.00 DIA TO CLEAN UP, 4 PL",
    "DRILL F X .56 DP, BOTTOM TAP 5/16-18 UNC-2B X .44 DP",
    "⌀.3125 ↧ 1.00, 3/8-16 UNC-2B ↧ .75, ⌴ ⌀.625 ↧ .12",
    "REAM .3760/.3755 THRU, CSK 100° X .500 DIA",
    "⌀.500 THRU, CHAM .03 X 45° NEAR & FAR SIDE",
    "6× ⌀5.5 THRU ⌴ ⌀10 ↧ 5.4",
    "CSK FOR M6 ISO 10642, 4 PL",
    "BREAK EDGES .010 MAX",
)
MOST = 20
ADDRESS = re.compile(r"https?:|www\.|\w\.(?:com|org|net|cn|de|edu|gov|mil)\b", re.IGNORECASE)
MEETING = "2X ⌀.266 THRU ⌵ ⌀.507 X 82° BOTH SIDES"
FLAT = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
QUARTER = 6.35


def made(note, *, material="1018 steel", machine="knee mill", thickness=19.05, shop=SHOP):
    """Plan a note, in the package's shop if no other is given."""
    return plan.make_plan(note, material=material, machine=machine, thickness=thickness, shop=shop)


def to_set(lines):
    """Return the lines of the table, heading and all."""
    first = next(at for at, line in enumerate(lines) if line.startswith((NOT_YET, HEADINGS["set"])))
    return lines[first : first + lines[first:].index("")]


@pytest.mark.parametrize("note", COMMON)
def test_the_table_of_a_common_note_is_short(note) -> None:
    """At most 20 lines of 80 columns say what to set; a line for each operation stands there."""
    assert note in LINES
    planned = made(note)
    table = to_set(page(planned, width=80))
    assert len(table) <= MOST
    assert all(len(line) <= 80 for line in page(planned, width=80, why=True, sources=True))
    steps = [step for seat in planned.seats for step in seat.operations]
    assert len(planned.rows().of("set")) == len(steps)


@pytest.mark.parametrize("note", COMMON)
def test_what_was_assumed_names_a_rule_that_exists(note) -> None:
    """Each assumption stands under the name of a house rule in force, and says it."""
    planned = made(note)
    for row in planned.rows().of("assumed"):
        assert SHOP.rules[row.label].name == row.label
        assert row.label in row.text
    for one in planned.assumed:
        assert one.rule in ("", *(rule.name for rule in planned.rules))


@pytest.mark.parametrize("note", COMMON)
def test_no_line_sends_anybody_to_an_address(note) -> None:
    """Sums and sources too name documents, never a place in the web."""
    found = [f"{row.text} {row.source}" for row in made(note).rows()]
    assert not [text for text in found if ADDRESS.search(text)]


@pytest.mark.parametrize("note", COMMON)
def test_every_line_has_a_kind_and_kinds_keep_their_order(note) -> None:
    """Lines come as they are read: asked, to set, to look at, assumed, and only then why."""
    kinds = [row.kind for row in made(note).rows()]
    assert kinds == sorted(kinds, key=KINDS.index)


def test_a_stop_is_seen_before_anything_that_could_be_set() -> None:
    """Two seats that meet in 1/4 plate stop the plan: on the page, in print and in a notebook.

    1/4 less twice 0.1386 is under zero: worked by hand from ⌀.507, ⌀.266 and 82°.
    """
    planned = made(MEETING, thickness=QUARTER)
    lines = page(planned)
    assert lines.index(HEADINGS["stop"]) < lines.index(to_set(lines)[0])
    assert to_set(lines)[0].startswith(NOT_YET)
    assert any("Other screw, thicker plate" in line for line in lines[: lines.index("") + 8])
    for text in (str(planned), planned._repr_markdown_()):
        assert text.index("STOP AND ASK") < text.index("CS82-1")
        assert NOT_YET in text
        assert HEADINGS["set"] not in text


def test_a_stop_is_one_by_its_kind_whatever_it_says() -> None:
    """A check in calm words stops the plan; a word in capitals alone stops nothing."""
    planned = made(FLAT)
    (seat,) = planned.seats
    calm = plan.Check(name="part", verdict="stop", sentence="Something is to be settled.")
    loud = plan.Check(name="part", verdict="holds", sentence="STOP AND ASK is not meant here.")
    stopped = replace(planned, seats=(replace(seat, checks=(calm,)),))
    runs = replace(planned, seats=(replace(seat, checks=(loud,)),))
    assert HEADINGS["stop"] in page(stopped)
    assert HEADINGS["stop"] not in page(runs)
    assert [row.text for row in stopped.rows().of("stop")] == [calm.sentence]


def test_what_the_note_leaves_to_ask_stands_before_the_table() -> None:
    """An open question of the note itself comes first, and the table is not yet to be set."""
    planned = made(".201 DRILL, CSK .385 X 82° TYP")
    asked = planned.rows().of("ask")
    assert asked
    assert to_set(page(planned))[0].startswith(NOT_YET)


def test_the_table_has_the_numbers_of_the_plan() -> None:
    """Speed, feed, travel and limits in the table are those of the steps, stops and readings."""
    planned = made(FLAT, material="6061 aluminum", machine="bench drill press", thickness=QUARTER)
    drill, cut, _ = (dict(row.cells) for row in planned.rows().of("set"))
    # #7 and 2000 rev/min: plans worked by hand, 12 x 200 / (pi x .201) = 3801, the fastest step
    assert (drill["tool"], drill["rev/min"], drill["feed"]) == ("#7 (.201)", "2000", ".002")
    assert cut["rev/min"] == "250"
    # (.385 - .201) / (2 tan 41°) = .106
    assert cut["stop"].startswith(".106 ")
    assert "-.015 to .000" in cut["check"]


def test_a_metric_print_is_set_in_millimeters() -> None:
    """The table has the units of the print alone, and says which."""
    planned = made("6× ⌀5.5 THRU ⌴ ⌀10 ↧ 5.4")
    table = to_set(page(planned))
    assert "millimeters" in table[0]
    assert any("5.4 from" in line for line in table)


def test_a_tap_and_a_reamer_are_checked_where_they_cut() -> None:
    """The thread plug stands at the tap, the plug gage at the reamer, the depth at the drill."""
    tapped = made("DRILL F X .56 DP, BOTTOM TAP 5/16-18 UNC-2B X .44 DP").rows().of("set")
    by_name = {row.label.split(" ", 1)[1]: dict(row.cells) for row in tapped}
    assert "GO 7.9 turns" in by_name["tap"]["check"]
    assert by_name["tap"]["stop"] == ".440 from the face"
    assert by_name["drill"]["stop"].startswith(".637 ")
    reamed = made("REAM .3760/.3755 THRU, CSK 100° X .500 DIA").rows().of("set")
    ream = next(dict(row.cells) for row in reamed if row.label.endswith("ream"))
    assert ".3755 to .3760" in ream["check"]


def test_a_cut_without_a_stop_says_how_far_it_goes() -> None:
    """A spotface without a depth goes to clean up; a hand drill without a cage by trial."""
    faced = made("13/32 DRILL THRU, S.F. 1.00 DIA TO CLEAN UP, 4 PL", machine="lathe")
    by_name = {row.label.split(" ", 1)[1]: dict(row.cells) for row in faced.rows().of("set")}
    assert by_name["spotface"]["stop"] == "to clean up"
    by_hand = made("8X ⌀.128 THRU ⌵ ⌀.225 X 100°", machine="hand drill", thickness=1.6)
    sheet = {row.label.split(" ", 1)[1]: dict(row.cells) for row in by_hand.rows().of("set")}
    assert sheet["countersink"]["stop"] == "by trial"
    assert any("on scrap first" in row.text for row in by_hand.rows().of("note"))


def test_a_head_gage_is_named_with_its_hole() -> None:
    """The whole gage is named: the ring of a 1/4 flat head has a hole of .424 in.

    ASME B18.6.3-2013, table 3, as Machinery's Handbook, 31st edition, page 1777 prints it.
    """
    (seat,) = made("DRILL & CSK FOR 1/4 F.H.M.S., HEAD FLUSH, 4 PL").seats
    (gage,) = [one for one in seat.reading_rows() if one.label.startswith("head gage")]
    assert "hole 0.424 in" in gage.label


def test_the_nearer_looking_cutter_is_passed_over_with_its_reason() -> None:
    """A cross-hole cutter of the right angle looks near a deep cone; its rule says why not."""
    step = made(FLAT).seats[0].operations[1]
    assert step.tool == "CS82-1"
    passed = {one.tool.cutter.name: one.sentence for one in step.passed}
    assert "crosshole.greatest_leg" in passed["XH82"]
    (row,) = made(FLAT).rows().of("tool")
    assert "Passed over: " in row.text
    assert "XH82" in row.text


def test_a_metric_print_hears_of_its_tools_in_millimeters() -> None:
    """What was passed over, and what to get, is told in the system of the print first."""
    (row,) = made("4X ⌀6.6 THRU ⌵ FOR M6 COUNTERSUNK SOCKET HEAD").rows().of("tool")
    assert "leg up to 0.76 mm (0.030 in)" in row.text
    (missing,) = made("⌀13.5 THRU ⌴ ⌀20 ↧ 12.6").rows().of("tool")
    assert "Get: A counterbore of 20.00 mm (0.787 in)" in missing.text


def test_no_lead_drill_goes_past_the_tip() -> None:
    """In a blind hole the lead drill has no stop of its own, and is told where to end."""
    blind = made("5/8-11 UNC-2B X 1.25 FULL THD, 17/32 DRILL X 1.75 DP TO POINT", thickness=63.5)
    lead = dict(blind.rows().of("set")[0].cells)
    assert lead["stop"] == "not past the tip"


def stops_of(note):
    """Return the stop of each step of a note's table."""
    return [dict(row.cells)["stop"] for row in made(note, thickness=38.1).rows().of("set")]


def test_a_blind_hole_that_stands_alone_has_its_depth_in_the_table() -> None:
    """A 118° point of .375 is .3004 x .375 = .113 long: .500 full is .613 to the tip."""
    (stop,) = stops_of("DRILL .375 DIA X .50 DP")
    assert stop == ".613 to the tip, .500 full"


def test_a_blind_ream_and_a_blind_bore_have_their_depth_in_the_table() -> None:
    """The drill goes deeper than the reamer; the reamer and the bar go as deep as the note says."""
    assert stops_of("REAM .375 +.0005 -.0000 X .50 DP, DRILL 23/64 X .75 DP")[1] == (
        ".500 from the face"
    )
    assert stops_of(".5005/.5000 DIA BORE X .50 DP")[1] == ".500 from the face"


def test_limits_of_the_hole_alone_do_not_narrow_the_depth_of_a_seat() -> None:
    """.495 to .505 of the title block on .3755 to .3760: (.495 - .376)/2.3835 = .0499, .0543."""
    depth = made("REAM .3760/.3755 THRU, CSK 100° X .500 DIA").seats[0].size("depth from the face")
    assert depth.least / 25.4 == pytest.approx(0.0499, abs=1e-4)
    assert depth.greatest / 25.4 == pytest.approx(0.0543, abs=1e-4)


def test_a_cutter_at_the_low_limit_says_how_little_wear_leaves() -> None:
    """An end mill of 11 mm, .4331, for .438 - .005: it lies .0001 over the low limit."""
    planned = made("DRILL 17/64 (.266) THRU, C'BORE .438 DIA X .25 DP")
    told = [row.text for row in planned.rows().of("tool")]
    assert any("only .0001 over the low one" in text for text in told), told


def test_a_flat_bottom_is_not_left_to_a_twist_drill() -> None:
    """Its point stays in the bottom; it is cut flat by another tool (common practice)."""
    flat = made("DRILL .375 DIA X .50 DP FLAT BOTTOM")
    looked = [row.text for row in flat.rows().of("look") if row.label == "flat bottom"]
    assert "end mill" in looked[0]


@pytest.mark.parametrize(
    ("note", "drill"), [(".312 DRILL THRU", "5/16"), (".187 DRILL THRU", "3/16")]
)
def test_a_fraction_rounded_down_is_still_that_drill(note, drill) -> None:
    """Prints write 5/16, .3125, as .312 and 3/16 as .187 (common practice, no source)."""
    tool = dict(made(note).rows().of("set")[0].cells)["tool"]
    assert tool.startswith(drill)


@pytest.mark.parametrize("note", ["ISO 6411 B2.5/8", "R3.15/6.7 ISO 6411"])
def test_a_center_that_is_no_plain_cone_is_not_planned_as_one(note) -> None:
    """Form B has a guard cone outside the 60° one, form R has arcs (ISO 6411, from memory)."""
    with pytest.raises(SeatworkError, match="not planned here"):
        made(note, machine="lathe")


def test_the_pilot_in_the_note_says_which_center_drill() -> None:
    """A2.5/5.3 is cut with the drill whose pilot is 2.5, though a smaller one has room too."""
    tool = dict(made("A2.5/5.3", machine="lathe").rows().of("set")[0].cells)["tool"]
    assert "A2.5" in tool


def test_handwork_is_told_without_being_asked_for() -> None:
    """How a part is turned over, a thread tapped, a back cutter put on stands on the page."""
    turned = page(made(MEETING))
    assert any(line.startswith("  turn the part over: ") for line in turned)
    tapped = made("DRILL F X .56 DP, BOTTOM TAP 5/16-18 UNC-2B X .44 DP").rows().of("how")
    assert any("unplugged or locked out" in row.text for row in tapped)
    rules = HouseRules(apply('[far_side]\nhow = "back spotfacing"', "a test"), "a test")
    back = made("⌀.656 THRU, BACK SPOTFACE ⌀1.25", shop=replace(SHOP, rules=rules))
    assert any("locked out" in row.text for row in back.rows().of("how"))


def test_what_the_crib_lacks_is_said_with_what_to_get_or_grind() -> None:
    """No pilot of the set runs in a 5/16 hole: get a counterbore with one, or turn a pilot.

    The pilot is the hole less .002: .3125 - .002 = .3105.
    """
    planned = made("⌀.3125 ↧ 1.00, 3/8-16 UNC-2B ↧ .75, ⌴ ⌀.625 ↧ .12")
    step = planned.seats[0].operations[1]
    assert not step.in_shop
    assert "turn a pilot of 0.311 in" in step.grind
    row = planned.rows().of("tool")[0]
    assert row.text.startswith("None in the crib. Get: ")
    assert step.grind in row.text


def test_a_bent_angle_is_ground_only_where_a_grinder_would() -> None:
    """A one-flute countersink of 90° may be ground to 82°, never to 60° or for a flat seat."""
    few = replace(SHOP, cutters=tuple(one for one in SHOP.cutters if one.name == "CS90-1"))
    known = {"material": "1018 steel", "machine": "knee mill", "shop": few}
    near = plan.make_plan("⌀.201 THRU ⌵ ⌀.385 X 82°", **known).seats[0].operations[1]
    assert "CS90-1 ground to 82°" in near.grind
    far = plan.make_plan("⌀.201 THRU ⌵ ⌀.385 X 60°", **known).seats[0].operations[1]
    assert far.grind == ""
    flat = plan.make_plan("⌀.201 THRU ⌴ ⌀.375 ↧ .2", **known).seats[0].operations[1]
    assert flat.grind == ""


def test_cautions_are_one_line_each_and_of_this_plan_alone() -> None:
    """A plan without a tap says nothing of tapping; each caution is short and said once."""
    rows = made(FLAT, machine="bench drill press").rows().of("caution")
    assert "Tapping" not in {row.label for row in rows}
    assert len({row.label for row in rows}) == len(rows)
    assert all(len(row.text) <= 100 for row in rows)


def test_a_taper_shank_brings_its_caution() -> None:
    """Where the tool is held by a Morse taper, the caution of tapers stands in the plan."""
    planned = made("17/32 DR, 1-1/4 S.F., 3 HOLES", material="gray iron", machine="lathe")
    step = next(one for one in planned.seats[0].operations if one.name == "spotface")
    assert step.taper_shank is ("taper_shank" in planned.cautions)
    held = made("17/32 DR, 1-1/4 S.F.", material="gray iron", machine="bench drill press")
    assert "taper_shank" in held.cautions


def test_what_several_seats_say_alike_is_said_once() -> None:
    """Both sides of a hole share their tool: the page says so one time, the plan keeps both."""
    planned = made(MEETING)
    assert len(planned.rows().of("tool")) == 2
    said = [line for line in page(planned) if "one lip chatters least" in line]
    assert len(said) == 1


def test_why_and_sources_come_when_asked_for() -> None:
    """Sums and sources are no part of the page unless they are wanted."""
    planned = made(FLAT)
    plain = page(planned)
    whole = page(planned, why=True, sources=True)
    assert not [line for line in plain if line.startswith(("Why", "Sources"))]
    assert {line for line in whole if line.startswith(("Why", "Sources"))} >= {
        HEADINGS["size"],
        HEADINGS["why"],
        HEADINGS["source"],
    }
    assert whole[: len(plain)] == plain


def test_a_part_says_its_cautions_once() -> None:
    """Several plans on one page share their cautions; who comes first is said once, last."""
    plans = [made(FLAT), made("DRILL F X .56 DP, BOTTOM TAP 5/16-18 UNC-2B X .44 DP")]
    lines = [line for one in closing_sections(plans) for line in one.lines]
    for plan_of_one in plans:
        for row in plan_of_one.rows().of("caution"):
            assert len([line for line in lines if line.startswith(f"  {row.label}: ")]) == 1
    shown = [one.kind for one in sections(plans[0], left_out=("caution", "last"))]
    assert "caution" not in shown
    assert "set" in shown


def test_the_front_page_shows_what_the_command_prints() -> None:
    """The table in README is the one of the page, line by line."""
    readme = (Path(__file__).parents[2] / "README.md").read_text("utf-8")
    planned = plan.make_plan(FLAT, material="6061 aluminum", machine="bench drill press", shop=SHOP)
    assert "\n".join(to_set(page(planned))) in readme
