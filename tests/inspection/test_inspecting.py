"""Verdicts: what an instrument can tell, flush with a wrong angle, causes and what to change."""

from dataclasses import replace
from math import radians, tan

import pytest
from seatwork import notes, plan
from seatwork.errors import SeatworkError
from seatwork.inspection import Measured, inspect, inspect_file
from seatwork.inspection.results import write_results
from seatwork.inspection.rubric import rubric
from seatwork.inspection.series import RunChart, histogram, run_chart
from seatwork.plan.examples import example_parts, example_readings
from seatwork.plan.part_files import parts
from seatwork.shop.house.house_rules import HouseRules, apply
from seatwork.shop.shop import Shop

SHOP = Shop.at()
IN = 25.4
T41 = tan(radians(41))
GOOD = {
    "diameter": 0.397 * IN,
    "depth": 0.1127 * IN,
    "stand": -0.007 * IN,
    "angle": 82.0,
    "tried": True,
}


def planned(note="4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW", **known):
    """Plan a note in the package's shop."""
    known = {"material": "6061 aluminum", "machine": "bench drill press", **known}
    return plan.make(notes.read(note), shop=SHOP, **known)


def verdict(made=None, **values):
    """Judge one part."""
    values = {"instruments": {"angle": "two balls"}, **values}
    found = inspect([Measured(part="L07-1", **values)], {"plate": made or planned()}, shop=SHOP)
    assert found.faults == ()
    return found.parts[0]


def test_a_good_part_is_accepted_with_nothing_to_change() -> None:
    """A part inside its limits by more than the uncertainty is accepted."""
    part = verdict(**GOOD)
    assert part.verdict == "accept"
    assert part.reasons == part.changes == ()


def test_flush_over_a_wrong_angle_is_rejected() -> None:
    """A head that lies flush in a 90° seat is a reject: angle and contact are separate checks."""
    part = verdict(**{**GOOD, "angle": 90.0})
    assert part.value_of("stand").verdict == "accept"
    assert part.verdict == "reject"
    assert part.reasons[0].startswith("Flush, and still wrong")
    assert part.changes[0].startswith("Change the cutter")


def test_flush_without_an_angle_is_not_accepted() -> None:
    """Flush is not enough: without the angle nothing is signed."""
    part = verdict(**{**GOOD, "angle": None})
    assert part.verdict == "cannot tell with this instrument"
    assert any("angle was not measured" in reason for reason in part.reasons)


def test_a_value_nearer_to_its_limit_than_the_caliper_is_sure_cannot_be_told() -> None:
    """A caliper good to .002 cannot tell .386 from .385; an optical reading can."""
    doubtful = verdict(**{**GOOD, "diameter": 0.386 * IN})
    assert doubtful.value_of("diameter").verdict == "cannot tell with this instrument"
    sure = verdict(**{**GOOD, "diameter": 0.386 * IN}, instruments={"diameter": "optical"})
    assert sure.value_of("diameter").verdict == "accept"


def test_two_balls_tell_82_from_90_and_not_80_from_82() -> None:
    """With half a degree and more, two balls reject 90° and leave 81.2° open."""
    assert verdict(**{**GOOD, "angle": 90.0}).value_of("angle").verdict == "reject"
    assert verdict(**{**GOOD, "angle": 81.2}).value_of("angle").mark == "?"


def test_a_proud_head_lowers_the_stop_by_as_much_as_it_must_go() -> None:
    """From .009 proud to .0075 below, the middle of the rule, is .0165 of travel."""
    part = verdict(**{**GOOD, "stand": 0.009 * IN, "diameter": 0.369 * IN, "depth": 0.0966 * IN})
    assert part.changes == ("Move the stop down by 0.017 in (0.42 mm).",)


def test_a_head_too_far_below_raises_the_stop() -> None:
    """From .0305 below to .0075 below is .0230 up; a .385 head lies so in .385 + .0610 tan 41°."""
    across = 0.385 + 2 * T41 * 0.0305
    seat = {"diameter": across * IN, "depth": (across - 0.201) / 2 / T41 * IN}
    part = verdict(**{**GOOD, **seat, "stand": -0.0305 * IN})
    assert part.changes == ("Move the stop up by 0.023 in (0.58 mm).",)


def test_a_large_seat_without_a_screw_raises_the_stop_by_its_cone() -> None:
    """.020 over in diameter at 82° is .020/(2 tan 41°) = .0115 of travel."""
    made = planned("4X ⌀.201 THRU ⌵ ⌀.385 X 82°")
    part = verdict(made, diameter=0.405 * IN, angle=82.0)
    assert pytest.approx(0.0115, abs=5e-5) == 0.020 / (2 * T41)
    assert part.changes == ("Move the stop up by 0.012 in (0.29 mm).",)


def test_face_touch_with_hole_edge_travel_is_recognized() -> None:
    """Touching the nose on the face and using .1058 leaves the seat small by hole less nose."""
    made = planned()
    edge, solid = (stop.travel for stop in made.seats[0].stops)
    small = 0.385 * IN - 2 * T41 * (solid - edge)
    part = verdict(made, diameter=small, angle=82.0, stand=0.008 * IN)
    assert any("stop is set on the face" in reason for reason in part.reasons)
    large = 0.385 * IN + 2 * T41 * (solid - edge) + 0.05
    part = verdict(planned("4X ⌀.201 THRU ⌵ ⌀.385 X 82°"), diameter=large, angle=82.0)
    assert any("travel for the face is used" in reason for reason in part.reasons)


def test_another_screw_than_the_prints_is_named() -> None:
    """A screw written on the sheet that is not the print's is told."""
    part = verdict(**{**GOOD, "screw": "M6 socket flat", "tried": False})
    assert any("M6 socket" in reason for reason in part.reasons)
    assert part.verdict == "reject"


def test_a_head_that_stands_as_no_such_screw_would_is_told() -> None:
    """In a .397 seat a #10 head stands .007 below (greatest) and deeper, never .010 proud."""
    part = verdict(**{**GOOD, "stand": 0.010 * IN})
    assert any("another screw than the" in reason for reason in part.reasons)


def test_a_burr_under_the_caliper_is_told() -> None:
    """A diameter over what the depth makes it is a burr; left on, nothing is signed."""
    part = verdict(**{**GOOD, "diameter": 0.412 * IN})
    assert any("burr under the caliper" in reason for reason in part.reasons)
    part = verdict(**{**GOOD, "burr": True})
    assert part.verdict != "accept"
    assert part.changes == ("Take the burr off and measure again before the stop is touched.",)


def test_a_spotface_not_clean_all_round_is_rejected() -> None:
    """An unclean ring is a reject, whatever its diameter."""
    made = planned("17/32 THRU, ⌀1-1/4 S.F.", material="gray iron", machine="knee mill")
    assert verdict(made, diameter=1.25 * IN, cleaned=True).verdict == "accept"
    part = verdict(made, diameter=1.25 * IN, cleaned=False)
    assert part.verdict == "reject"
    assert "until the ring is whole" in part.changes[0]


def test_a_counterbore_is_judged_in_diameter_and_depth() -> None:
    """A 3/8 counterbore .385 deep that measures .400 wants the stop up by .015."""
    made = planned("DRILL & C'BORE FOR 3/8 SHCS", material="1018 steel", machine="knee mill")
    assert verdict(made, diameter=0.626 * IN, depth=0.386 * IN).verdict == "accept"
    part = verdict(made, diameter=0.626 * IN, depth=0.400 * IN)
    assert part.verdict == "reject"
    assert part.changes == ("Move the stop up by 0.015 in (0.38 mm).",)


def test_the_prints_own_flushness_stands_over_the_house_rule() -> None:
    """A note that allows .005 below rejects .010 below, which the house rule allows."""
    made = planned("⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD MACHINE SCREW, FLUSH TO .005 BELOW")
    part = verdict(made, angle=82.0, stand=-0.010 * IN)
    assert part.value_of("stand").verdict == "reject"


def test_a_part_of_no_plan_is_told_and_the_others_judged() -> None:
    """One unknown feature spoils no other part."""
    found = inspect(
        [Measured(part="L01-1", feature="lid{}"), Measured(part="L02-1", feature="plate", **GOOD)],
        {"plate": planned(), "other": planned()},
        shop=SHOP,
    )
    assert [part.measured.part for part in found.parts] == ["L02-1"]
    assert "L01-1" in found.faults[0]
    assert "feature" in found.faults[0]


def test_a_sheet_is_read_and_judged_in_one_go() -> None:
    """The cider mill's own sheet: eleven parts judged, the formula told, a part found by mark."""
    plans, faults = parts(example_parts(), shop=SHOP)
    assert faults == ()
    found = inspect_file(example_readings(), plans, shop=SHOP)
    assert len(found.parts) == 11
    assert "row 8" in found.faults[0]
    assert found.part("L05-1").verdict == "reject"
    with pytest.raises(SeatworkError, match="no part has that mark"):
        found.part("L99-1")


@pytest.mark.parametrize(
    "values",
    [
        {"diameter": float("nan")},
        {"depth": -1.0},
        {"stand": float("inf")},
        {"angle": 180.0},
        {"angle": float("nan")},
    ],
)
def test_impossible_values_are_refused(values) -> None:
    """No part is judged on a value that cannot be."""
    with pytest.raises(SeatworkError):
        Measured(part="L01-1", **values)


def test_rows_carry_the_verdict_in_word_and_sign() -> None:
    """Verdicts show without color: OK, X or ? beside the word."""
    head, *_ = verdict(**{**GOOD, "angle": 90.0}).rows()
    assert head.text == "[X] reject"


def test_results_open_without_a_formula(tmp_path) -> None:
    """A part's mark that looks like a formula is written as text."""
    with_balls = {**GOOD, "instruments": {"angle": "two balls"}}
    found = inspect(
        [Measured(part="=1+1", feature="plate", **with_balls)], {"plate": planned()}, shop=SHOP
    )
    write_results(found, tmp_path / "results.csv")
    assert "\n'=1+1" in (tmp_path / "results.csv").read_text(encoding="utf-8-sig")
    assert found.summary.startswith("1 part: 1 accept")


def test_results_never_overwrite_without_saying_so(tmp_path) -> None:
    """A file that is there stays, unless asked; and replacing is said."""
    found = inspect([Measured(part="L01-1", **GOOD)], {"plate": planned()}, shop=SHOP)
    path = tmp_path / "results.csv"
    assert write_results(found, path).startswith("Wrote")
    before = path.read_bytes()
    with pytest.raises(SeatworkError, match="already"):
        write_results(found, path)
    assert path.read_bytes() == before
    assert write_results(found, path, replace=True).startswith("Replaced")
    assert [one.name for one in tmp_path.iterdir()] == ["results.csv"]


def test_results_are_not_written_through_a_link(tmp_path) -> None:
    """A link of that name is left alone, and so is what it points at."""
    target = tmp_path / "roster.csv"
    target.write_text("keep", encoding="utf-8")
    link = tmp_path / "results.csv"
    link.symlink_to(target)
    found = inspect([Measured(part="L01-1", **GOOD)], {"plate": planned()}, shop=SHOP)
    with pytest.raises(SeatworkError, match="already"):
        write_results(found, link, replace=True)
    assert target.read_text(encoding="utf-8") == "keep"


def test_seven_in_a_row_on_one_side_say_that_the_stop_moved() -> None:
    """Seven heads in the low half are a signal; six are none, nor seven near flush, the aim."""
    stands = [-0.010 * IN] * 7
    found = inspect(
        [Measured(part=f"L{n:02}-1", stand=s, angle=82.0) for n, s in enumerate(stands)],
        {"plate": planned()},
        shop=SHOP,
    )
    assert "Seven in a row under" in run_chart(found.parts, "stand").signal
    assert run_chart(found.parts[:6], "stand").signal == ""
    with pytest.raises(SeatworkError):
        run_chart(found.parts, "depth")


@pytest.mark.parametrize(
    ("aim", "value", "said"),
    [
        (0.5, 0.6, "over the middle of the limits"),
        (0.5, 0.4, "under the middle of the limits"),
        (0.75, 0.6, "under what was aimed at"),
        (0.75, 0.8, "over what was aimed at"),
        (0.0, 0.4, ""),
        (0.0, 0.6, "over the middle of the limits"),
        (1.0, 0.6, ""),
        (1.0, 0.4, "under the middle of the limits"),
        (None, 0.4, "under the middle of the limits"),
    ],
)
def test_a_chart_goes_by_what_the_plan_aims_at(aim, value, said) -> None:
    """Between 0 and 1: parts cut to the plan's own aim never say that the stop has moved."""
    chart = RunChart(
        about="it",
        parts=tuple("abcdefg"),
        values=(value,) * 7,
        least=0.0,
        greatest=1.0,
        uncertainty=0.0,
        aim=aim,
    )
    assert (said in chart.signal) if said else chart.signal == ""


def test_flush_or_below_is_judged_without_the_houses_leave_to_stand_proud() -> None:
    """A house that lets heads stand .003 proud accepts .002, but not where the note says never."""
    said = apply('[flush]\ngreatest_proud = "0.003 in"', "a test")
    loose = replace(SHOP, rules=HouseRules(said, "a test"))
    verdicts = {}
    for words in ("", ", FLUSH OR BELOW"):
        note = f"⌀.201 THRU ⌵ FOR #10 FLAT HEAD{words}"
        made = plan.make(note, material="1018 steel", machine="knee mill", shop=loose)
        part = Measured(part="L01-1", stand=0.002 * IN, angle=82.0)
        (found,) = inspect([part], {"plate": made}, shop=loose).parts
        verdicts[words] = (found.value_of("stand").greatest, found.value_of("stand").verdict)
    assert verdicts[""][0] == pytest.approx(0.003 * IN)
    assert verdicts[", FLUSH OR BELOW"][0] == 0.0
    assert verdicts[", FLUSH OR BELOW"][1] != "accept"


def test_a_histogram_counts_every_value_once() -> None:
    """Counts add up to the number of values, and bins stay few."""
    values = [0.001 * n * n for n in range(200)]
    found = histogram(values, width=0.01)
    assert sum(found.counts) == len(values)
    assert len(found.edges) == len(found.counts) + 1 <= 14


def test_the_rubric_leaves_what_a_person_must_judge_open() -> None:
    """Diameter, depth and stand are filled in; finish, burrs and safety are not."""
    lines = {line.name: line.found for line in rubric(verdict(**GOOD))}
    assert lines["Diameter"] == "OK"
    assert lines["Finish"] == lines["Burrs"] == lines["Safety"] == ""
    assert len(rubric()) == 6


def test_an_instrument_that_is_not_named_counts_as_the_coarsest() -> None:
    """An 82° angle of unknown making may be a protractor's, good to two degrees: it stays open."""
    part = verdict(**GOOD, instruments={})
    assert part.value_of("angle").verdict == "cannot tell with this instrument"
    assert part.value_of("angle").uncertainty == 2.0
    assert any("none is named" in row.text for row in part.rows())


BORE = "DRILL & C'BORE FOR 3/8 SHCS"
FACE = "17/32 THRU, ⌀1-1/4 S.F."


@pytest.mark.parametrize(
    ("note", "values", "reason"),
    [
        (BORE, {"diameter": 0.626 * IN}, "depth from the face was not measured"),
        (BORE, {"depth": 0.386 * IN}, "diameter at the face was not measured"),
        (BORE, {"tried": True}, "was not measured"),
        (FACE, {"diameter": 1.25 * IN}, "clean all round"),
        (FACE, {"cleaned": True}, "diameter at the face was not measured"),
        ("4X ⌀.201 THRU ⌵ ⌀.385 X 82°", {"angle": 82.0}, "No size of the seat"),
    ],
)
def test_nothing_is_accepted_on_readings_nobody_took(note, values, reason) -> None:
    """A good reading alone accepts no seat that has more to it; what is missing is named."""
    made = planned(note, material="1018 steel", machine="knee mill")
    part = verdict(made, **values)
    assert part.verdict == "cannot tell with this instrument"
    assert any(reason in one for one in part.reasons)


def test_a_reading_that_the_plan_has_no_limit_for_is_told() -> None:
    """A depth of a spotface whose note gives none is not judged, and that is said."""
    made = planned(FACE, material="gray iron", machine="knee mill")
    part = verdict(made, diameter=1.25 * IN, cleaned=True, depth=2.0)
    assert part.verdict == "accept"
    assert part.reasons == ("Not judged: depth; the plan of this seat has no limit for it.",)


def test_a_ball_in_the_cone_is_judged_by_the_height_of_its_top() -> None:
    """In a 90° cone of 12 mm a 10 mm ball's top stands 10/2 (1 + √2) - 6 = 6.071 above the face.

    The title block allows 11.8 to 12.2 in diameter, which is 0.1 in height, by the triangle.
    """
    made = planned("4X ⌀6 THRU ⌵ ⌀12 X 90°")
    top = 5 * (1 + 2**0.5) - 6
    good = verdict(made, angle=90.0, ball=10.0, ball_top=top)
    assert good.verdict == "accept"
    one = good.value_of("ball_top")
    assert (one.least + one.greatest) / 2 == pytest.approx(top)
    assert verdict(made, angle=90.0, ball=10.0, ball_top=top + 0.5).verdict == "reject"


def test_a_ball_that_misses_the_cone_is_asked_about() -> None:
    """A 2 mm ball falls through a 6 mm hole: no height of it says anything."""
    plans = {"plate": planned("4X ⌀6 THRU ⌵ ⌀12 X 90°")}
    part = Measured(part="L07-1", ball=2.0, ball_top=1.0, place="measured.csv, row 2")
    (fault,) = inspect([part], plans, shop=SHOP).faults
    assert fault.startswith("measured.csv, row 2, column ball: ")
    assert "falls through" in fault


def test_a_screw_that_fails_its_own_gage_rejects_no_seat() -> None:
    """A head proud in the seat and off on the head gage accuses the screw, not the seat."""
    off = {**GOOD, "stand": 0.010 * IN, "diameter": 0.390 * IN, "protrusion": 0.060 * IN}
    part = verdict(**off)
    assert part.verdict == "cannot tell with this instrument"
    assert any("screw's own head" in reason for reason in part.reasons)
    assert part.changes == (
        "Try a screw that is good on the head gage before the stop is touched.",
    )


def test_a_note_with_two_seats_asks_which_one_is_meant() -> None:
    """Readings of a counterbore are not held against the countersink of the same hole."""
    made = planned("⌀.531 THRU ⌴ ⌀.81 ↧.5 ⌵ ⌀.9 X 90°", machine="knee mill")
    values = {"diameter": 0.81 * IN, "depth": 0.5 * IN}
    (fault,) = inspect([Measured(part="a", **values)], {"cap": made}, shop=SHOP).faults
    assert "cap, counterbore" in fault
    assert "cap, countersink" in fault
    part = Measured(part="a", feature="cap, counterbore", **values)
    assert inspect([part], {"cap": made}, shop=SHOP).parts[0].verdict == "accept"
