"""Leads of taps, share of thread, drills under reamers, H7: against values worked by hand."""

import pytest
from seatwork import hardware
from seatwork.hardware import share_of_thread, tap_room
from seatwork.hardware.reaming import drill_under
from seatwork.hardware.taps import pitched
from seatwork.shop import rules
from seatwork.shop.house.house_rules import HouseRules, apply

IN = 25.4


@pytest.mark.parametrize(
    ("named", "hole", "share"),
    [
        ("3/8-16", 5 / 16 * IN, 0.77),  # 100 (.375 - .3125) 16 / 1.299
        ("3/8-16", 0.332 * IN, 0.53),
        ("1/4-20", 0.201 * IN, 0.754),
        ("5/16-18", 0.257 * IN, 0.769),
        ("M8", 6.8, 0.74),
    ],
)
def test_the_share_of_thread_is_that_of_a_60_degree_thread(named, hole, share) -> None:
    """(D - d) n / 1.299 in inches: geometry of the thread, worked by hand."""
    assert share_of_thread(pitched(named), hole) == pytest.approx(share, abs=0.005)


@pytest.mark.parametrize(
    ("room", "per_inch", "tap", "verdict"),
    [
        (0.25, 16, "plug, then bottoming", "holds"),  # 4.0 pitches
        (0.26, 20, "plug", "holds"),  # 5.2: little room for chips
        (0.12, 18, "plug, then bottoming", "holds"),  # 2.2
        (0.30, 20, "plug", "holds"),  # 6.0: lead and one pitch for chips
        (0.08, 20, "bottoming after plug", "look"),  # 1.6
        (-0.05, 20, "", "stop"),  # the thread deeper than its drill
    ],
)
def test_the_room_below_a_thread_says_which_tap(room, per_inch, tap, verdict) -> None:
    """Rows of the lead's room: leads of ASME B94.9 from memory, limits common practice."""
    found = tap_room(room=room * IN, pitch=IN / per_inch, rules=rules())
    assert (found.tap, found.verdict) == (tap, verdict)
    assert found.chips is (found.pitches > 5.99)


@pytest.mark.parametrize(
    ("reamer", "system", "name"),
    [
        (0.2500 * IN, "inch", "15/64"),
        (0.3750 * IN, "inch", "23/64"),
        (0.5000 * IN, "inch", "31/64"),
        (0.7500 * IN, "inch", "23/32"),
        (0.2495 * IN, "inch", "15/64"),
        (8.0, "metric", "7.8 mm"),
        (10.0, "metric", "9.8 mm"),
    ],
)
def test_the_drill_under_a_reamer_leaves_its_cut(reamer, system, name) -> None:
    """1/64 in under to 1/2 in, 1/32 above; metric 0.2 mm: common practice, no source."""
    assert drill_under(reamer, system=system, rules=rules()).name == name


def test_the_drill_under_a_reamer_follows_the_house_rule() -> None:
    """By the textbook's list, from memory, .015 in is left at 3/8 and .010 at 1/4."""
    changed = HouseRules(apply('[ream]\nunder = "by table"', "a test"), "a test")
    assert drill_under(0.375 * IN, system="inch", rules=changed).name == "23/64"
    assert drill_under(0.250 * IN, system="inch", rules=changed).name == "B"


@pytest.mark.parametrize(
    ("diameter", "width"), [(5, 0.012), (8, 0.015), (12, 0.018), (25, 0.021), (40, 0.025)]
)
def test_h7_has_the_width_of_its_grade(diameter, width) -> None:
    """Widths of ISO 286-1 grade 7, from memory; never equal limits."""
    found = hardware.hole_limits(diameter, "H7")
    assert found.least == diameter
    assert found.greatest - found.least == pytest.approx(width, abs=1e-9)
    assert found.confirmed == "memory"
