"""Tap drills, thread chamfers, center drills, washers, rivets, sheet and edges."""

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.hardware import (
    center_drill,
    edge_distances,
    hole_limits,
    least_thickness,
    rivet,
    tap_drill,
    tapped_hole_chamfer,
    washer,
)


@pytest.mark.parametrize(
    ("thread", "drill"),
    [("1/4-20", "#7"), ("10-32", "#21"), ("3/8-16", "5/16"), ("M6", "5 mm"), ("M8x1", "7 mm")],
)
def test_tap_drills_as_listed(thread, drill) -> None:
    """The usual list, from memory and a second public list: as listed, not the nearest."""
    assert tap_drill(thread).name == drill


def test_share_of_thread_of_a_quarter_twenty() -> None:
    """A #7 hole leaves 75 % of a 1/4-20 thread: (.250 - .201) / (1.299 / 20).

    Source: geometry of the 60° thread; the list is named for 75 %.
    """
    assert tap_drill("1/4-20").share_of_thread == pytest.approx(0.754, abs=0.001)


def test_an_inch_tap_drill_needs_its_pitch() -> None:
    """1/4 alone is asked about; M60 is not in the list."""
    with pytest.raises(SeatworkError, match="coarse or fine"):
        tap_drill("1/4")
    with pytest.raises(SeatworkError, match="no such row"):
        tap_drill("M60")


def test_a_tapped_hole_is_chamfered_past_its_major_diameter() -> None:
    """3/8-16: 90° to .375 + .020 in by the house rules. Source: common practice, no source."""
    found = tapped_hole_chamfer("3/8-16")
    assert found.diameter / 25.4 == pytest.approx(0.395)
    assert found.included_angle == 90
    assert found.rules == ("tapped_hole.chamfer_over", "tapped_hole.chamfer_angle")


@pytest.mark.parametrize(
    ("name", "drill", "body"),
    [("#3", 7 / 64, 1 / 4), ("3", 7 / 64, 1 / 4), ("center drill #5", 3 / 16, 7 / 16)],
)
def test_center_drills_by_number(name, drill, body) -> None:
    """#3 is 7/64 on a 1/4 body. Source: ASME B94.11M, from memory; the #3 also in trade notes."""
    found = center_drill(name)
    assert found.drill_diameter / 25.4 == pytest.approx(drill)
    assert found.body_diameter / 25.4 == pytest.approx(body)
    assert found.caution == "from memory: check your copy"


def test_metric_center_drills_go_by_type_and_drill() -> None:
    """A2.5 has a 6.3 mm body. Source: ISO 866, from memory."""
    assert center_drill("a2.5").body_diameter == 6.3
    with pytest.raises(SeatworkError, match="no such row"):
        center_drill("#12")


@pytest.mark.parametrize(
    ("text", "name", "inches"),
    [
        ("1/4 narrow", "1/4 narrow washer", 0.625),
        ("1/4N", "1/4 narrow washer", 0.625),
        ("1/4 SAE flat washer", "1/4 narrow washer", 0.625),
        ("1/4 wide", "1/4 wide washer", 0.734),
        ("3/8 USS", "3/8 wide washer", 1.000),
        ("3/4 type B regular", "3/4 regular washer", 2.000),
        ("3/4 type B narrow", "3/4 narrow washer", 1.375),
        ("1 in type B", "1 regular washer", 2.500),
        ("1/4 lock washer", "1/4 lock washer", 0.487),
    ],
)
def test_inch_washers(text, name, inches) -> None:
    """ASME B18.21.1 Type A and B; lock washers from memory."""
    found = washer(text)
    assert found.name == name
    assert found.outside_diameter / 25.4 == pytest.approx(inches)


def test_metric_washers() -> None:
    """M6: 12 mm over 1.6 mm, at most 1.8 thick. Source: ISO 7089:2000."""
    found = washer("M6")
    sizes = (found.outside_diameter, found.hole_diameter, found.thickness, found.greatest_thickness)
    assert sizes == (12.0, 6.4, 1.6, 1.8)
    assert washer("M6 lock").caution == "from memory: check your copy"


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("1/4", "narrow or wide"),
        ("1/4 regular", "narrow or wide"),
        ("1/4 narrow wide", "two series"),
        ("M6 wide", "no wide series"),
        ("M7", "no such row"),
        ("1/4 rubber", "cannot read 'rubber'"),
    ],
)
def test_washers_that_are_none_are_asked_about_or_refused(text, says) -> None:
    """A fractional size comes narrow and wide: it is asked about."""
    with pytest.raises(SeatworkError, match=says):
        washer(text)


def test_a_rivet_brings_head_drill_and_seat() -> None:
    """5/32: head .286, 100°, drill #21, seat .283 to .289.

    Source: MS20426 from memory; TM 9-2320-363-34-2 Table 3.
    """
    found = rivet("5/32")
    assert found.head.sharp_diameter / 25.4 == pytest.approx(0.286)
    assert found.drill.name == "#21"
    assert [size / 25.4 for size in found.seat_limits] == pytest.approx([0.283, 0.289])
    assert rivet("3/32").seat_limits is None


def test_sheet_rules_stand_thinnest_first_with_their_document() -> None:
    """Each rule names its document; a rivet's own table is added to them."""
    found = least_thickness(countersink_depth=1.3, head_height=1.4, rivet="5/32")
    lengths = [each.length for each in found]
    assert lengths == sorted(lengths)
    assert len(found) == 6
    assert any("TM 9-2320-363-34-2" in each.rule for each in found)
    twice = next(each for each in found if "twice" in each.rule)
    assert twice.length == pytest.approx(2.6)


@pytest.mark.parametrize("wrong", [0.0, -1.0, float("nan"), float("inf")])
def test_lengths_that_are_none_are_refused(wrong) -> None:
    """Zero, minus, NaN and infinite lengths get a sentence."""
    with pytest.raises(SeatworkError):
        least_thickness(countersink_depth=wrong, head_height=1)
    with pytest.raises(SeatworkError):
        edge_distances(wrong)
    with pytest.raises(SeatworkError):
        hole_limits(wrong, "H13")


@pytest.mark.parametrize("grade", ["H8", "h13", "", None, 13])
def test_grades_that_are_not_held_are_refused(grade) -> None:
    """Only H7, H12, H13 and H14 are held."""
    with pytest.raises(SeatworkError, match="H7, H12, H13 or H14"):
        hole_limits(10, grade)


@pytest.mark.slow
@given(st.text(max_size=30))
def test_any_text_is_read_or_refused(text) -> None:
    """No text raises anything but the one error, whichever thing is asked for."""
    for ask in (washer, center_drill, tap_drill, rivet):
        with suppress(SeatworkError):
            assert ask(text).source
