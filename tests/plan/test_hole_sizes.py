"""Holes as they come out: too wide for the head or the rivet, closer than a drill, bored."""

import pytest
from seatwork import hardware, plan
from seatwork.errors import SeatworkError
from seatwork.shop.shop import Shop

SHOP = Shop.at()
IN = 25.4
MILL, PRESS = "knee mill", "bench drill press"


def made(note: str, machine: str = MILL, material: str = "1018 steel", thick: float = 0.75):
    """Plan a note in a part so many inches thick."""
    return plan.make(note, material=material, machine=machine, thickness=thick * IN, shop=SHOP)


def verdicts(planned, name: str) -> list[str]:
    """Return the verdicts of what was looked at under a name."""
    return [check.verdict for seat in planned.seats for check in seat.checks if check.name == name]


def first_steps(planned) -> list[str]:
    """Name the steps of the first seat."""
    return [step.name for step in planned.seats[0].operations]


# Heads, from memory of ASME B18.3 and B18.2.1: 1/4 socket head .375, 3/8 hexagon 9/16 across
# flats; #8 flat head edge .292 at least (ASME B18.6.3). Loose holes of ASME B18.2.8: 1/4 19/64
# to .311, 3/8 27/64 to .438, #8 #3 to .225; ISO 273 coarse M6 7.0.
@pytest.mark.parametrize(
    ("note", "verdict"),
    [
        ("3/8 DRILL THRU, C'BORE FOR 1/4 SHCS", ["stop"]),
        ("19/32 DRILL THRU, SPOTFACE 1 DIA FOR 3/8 HEX CAP SCREW", ["stop"]),
        ("9/32 DRILL THRU, CSK FOR #8 FLAT HEAD", ["stop"]),
        ("5/16 DRILL THRU, C'BORE FOR 1/4 SHCS", ["look"]),
        ("19/64 DRILL THRU, C'BORE FOR 1/4 SHCS", []),
        ("9/32 DRILL THRU, C'BORE FOR 1/4 SHCS", []),
        ("13/32 DRILL THRU, SPOTFACE 1 DIA FOR 3/8 HEX CAP SCREW", []),
        ("#15 DRILL THRU, CSK FOR #8 FLAT HEAD", []),
        ("Ø7 THRU, C'BORE Ø11 X 6.8 DP FOR M6 SHCS", []),
        ("Ø10.5 THRU, C'BORE Ø11 X 6.8 DP FOR M6 SHCS", ["stop"]),
    ],
)
def test_a_head_must_not_fall_through_its_hole(note, verdict) -> None:
    """A hole as wide as the head stops; one wider than the loosest listed is looked at."""
    planned = made(note)
    assert verdicts(planned, "head over the hole") == verdict
    assert bool(planned.questions) is (verdict == ["stop"])


# Usual drills of solid rivets, from memory: 1/8 #30 .1285, 5/32 #21 .159.
@pytest.mark.parametrize(
    ("note", "verdict"),
    [
        ("5/32 DRILL THRU, CSK FOR 1/8 FLUSH RIVET", ["stop"]),
        ("1/8 DRILL THRU, CSK FOR 1/8 FLUSH RIVET", ["stop"]),
        ("#30 DRILL THRU, CSK FOR 1/8 FLUSH RIVET", []),
        ("#21 DRILL THRU, CSK FOR 5/32 FLUSH RIVET", []),
    ],
)
def test_a_rivet_must_go_in_and_fill_its_hole(note, verdict) -> None:
    """A hole of the next rivet is asked about, and one that the shank does not enter."""
    planned = made(note, PRESS, "6061 aluminum", 0.25)
    assert verdicts(planned, "rivet in the hole") == verdict
    assert bool(planned.questions) is (verdict == ["stop"])


# ISO 286-1: H7 over 6 to 10 mm is 15 micrometers, H13 220; a drill cuts .002 to .005 in over
# (common practice, no source).
@pytest.mark.parametrize(
    ("note", "step"),
    [
        ("Ø10 H7 THRU, CHAMFER 0.5 X 45°", "ream"),
        ("⌀.500 +.0005/-.0000 THRU, CHAM 1/32 X 45°", "ream"),
        ("1.250 +.001/-.000 DIA THRU, CHAM 1/32 X 45°", "bore"),
        ("Ø10 H13 THRU, CHAMFER 0.5 X 45°", "chamfer"),
        ("⌀.500 +.010/-.000 THRU, CHAM 1/32 X 45°", "chamfer"),
    ],
)
def test_limits_closer_than_a_drill_are_reamed_or_bored(note, step) -> None:
    """The drill goes under, and what follows brings the hole to size."""
    planned = made(note)
    names = first_steps(planned)
    assert names[names.index("drill") + 1] == step
    assert verdicts(planned, "hole to size") == ([] if step == "chamfer" else ["look"])
    gages = [one for one in planned.seats[0].readings if one.instrument == "plug gage"]
    assert bool(gages) is (step != "chamfer")


def test_bore_is_drilled_under_and_bored() -> None:
    """BORE on a lathe is a single point's work, behind a drill under size (common practice)."""
    planned = made("1.000 BORE, CHAMFER .06 X 45°", "lathe")
    steps = {step.name: step for step in planned.seats[0].operations}
    assert list(steps)[:4] == ["lead drill", "drill", "bore", "chamfer"]
    assert planned.seats[0].size("drill under the bore").value < IN
    assert "boring bar" in steps["bore"].tool
    assert planned.seats[0].size("hole").value == pytest.approx(IN)


def test_a_drill_press_does_not_bore() -> None:
    """A reamer follows the drill's place; only a lathe or a mill makes the hole true."""
    planned = made("1/2 BORE, CHAMFER .06 X 45°", PRESS)
    assert verdicts(planned, "boring") == ["look"]
    assert "ream" in first_steps(planned)


# -- what is cut there --------------------------------------------------------------------


def test_a_flat_head_that_falls_through_is_refused_in_the_print_s_inches() -> None:
    """1/4 socket flat head: .531 sharp at most (ASME B18.3); 17/32 is .531."""
    with pytest.raises(SeatworkError, match=r"0\.531 in .*falls through this hole"):
        made("17/32 DRILL THRU, CSK FOR 1/4-20 FHSCS", PRESS)


def test_an_error_of_an_inch_print_is_told_in_inches() -> None:
    """.386 and .201 turned round are asked about as the print has them."""
    with pytest.raises(SeatworkError, match=r"^0\.201 in .*its hole, 0\.386 in"):
        made("⌀.386 CSK 82° ⌀.201 THRU", PRESS)


def test_a_cutter_inside_the_limits_is_taken() -> None:
    """7/8 is .875, and .88 with ± .005 is .875 to .885 (common practice for two places)."""
    planned = made("13/32 THRU, SPOTFACE .88 X .06 DP", material="gray iron")
    step = next(one for one in planned.seats[0].operations if one.name == "spotface")
    assert step.tool.startswith("A-7/8")
    assert "lies inside the limits" in step.tool_reason


def test_a_spotface_without_a_size_is_at_least_the_room() -> None:
    """Room for the wrench is a least size: the crib's next wider cutter does it."""
    planned = made("13/32 THRU, SPOTFACE FOR 3/8 HEX CAP SCREW", material="gray iron")
    step = next(one for one in planned.seats[0].operations if one.name == "spotface")
    across = planned.seats[0].size("spotface diameter")
    assert step.tool.startswith("A-1-1/4")
    assert across.value == pytest.approx(1.25 * IN)
    assert across.least < across.value


@pytest.mark.parametrize("size", [("M5", 3.65), ("M8", 5.45), ("M12", 7.68), ("M20", 12.715)])
def test_the_greatest_hexagon_head_is_not_the_nominal_one(size) -> None:
    """ISO 4014 and 4017, grade A, greatest k, from memory: nominal and half of IT14."""
    assert hardware.screw(f"{size[0]} hex head screw").head_height == pytest.approx(size[1])


def test_a_shallow_counterbore_lets_the_greatest_hexagon_stand_proud() -> None:
    """M12: k 7.5 nominal, 7.68 at most (ISO 4014, from memory) in 7.5 deep."""
    planned = made("Ø33 C'BORE 7.5 DP, Ø13.5 THRU, FOR M12 HEX HEAD SCREW", thick=1.5)
    assert verdicts(planned, "head below the face") == ["look"]


@pytest.mark.parametrize(
    ("note", "machine"),
    [("DRILL 13/64 C'SINK 3/8 DIA", PRESS), ("⌀.438 THRU, C'BORE 1.00 X 1/32 DP", MILL)],
)
def test_the_first_line_counts_what_is_asked(note, machine) -> None:
    """A plan that asks never begins with 0 to ask."""
    planned = made(note, machine)
    assert len(planned.questions) == 1
    assert ": 1 to ask first" in str(planned).splitlines()[0]


@pytest.mark.parametrize(
    ("note", "unused"),
    [
        (
            "9/32 DRILL C'BORE FOR 1/4-20 SOC HD CAP SCREW, HEAD 1/32 BELOW",
            "counterbore.inch_below_face",
        ),
        (
            "Ø13.5 THRU, C'BORE FAR SIDE FOR M12 HEX HEAD BOLT, 8 DEEP",
            "counterbore.metric_depth",
        ),
    ],
)
def test_nothing_is_assumed_that_is_not_used(note, unused) -> None:
    """What the note gives needs no rule; a hexagon's width is of no socket head's list."""
    planned = made(note)
    assert unused not in {one.rule for one in planned.assumed}
    assert unused not in {rule.name for rule in planned.rules}


def test_a_ball_over_an_inch_is_named_as_the_drawer_does() -> None:
    """1-1/2, never 3/2 (common practice)."""
    planned = made("1.000 BORE, CHAMFER .06 X 45°", "lathe")
    assert "1-1/2 in ball" in [one.instrument for one in planned.seats[0].readings]
