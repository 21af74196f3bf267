"""Drills by name, and the next one in a direction."""

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.hardware import drill, drills, next_drill
from seatwork.hardware.drill_names import beside, drills_of


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("#7", "#7"),
        ("No. 7", "#7"),
        ("number 7 drill", "#7"),
        ("h", "H"),
        ("letter F", "F"),
        ("17/64", "17/64"),
        ("1-1/4", "1-1/4"),
        ("1 3/32", "1-3/32"),
        ('17/64"', "17/64"),
        ("6.6", "6.6 mm"),
        ("6,6 mm", "6.6 mm"),
        (".201", "#7"),
        ("0.257 in", "F"),
        (".266", "17/64"),
        (".250", "1/4"),
        ("33 mm", "33 mm"),
        ("0.5 mm", "0.5 mm"),
        (".5", "1/2"),
        ("0.257", "F"),
    ],
)
def test_drills_are_found_by_name_and_by_size(text, name) -> None:
    """Number, letter, fraction, decimal inch and millimeter drills."""
    assert drill(text).name == name


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("7", "number or millimeters"),
        ("#99", "no drill has this name"),
        ("6.63", "beside it are"),
        ("0.5", "in or mm"),
        (".2000", "beside it are"),
        ("900 mm", "small or large"),
        ("blue", "cannot be read"),
        ("", "no name was typed"),
    ],
)
def test_what_is_no_drill_is_refused(text, says) -> None:
    """A bare whole number is asked about; a size between drills names both neighbors."""
    with pytest.raises(SeatworkError, match=says):
        drill(text)


@pytest.mark.parametrize(
    ("inches", "direction", "name"),
    [
        (0.2656, "up", "17/64"),
        (0.2657, "up", "H"),
        (0.250, "up", "1/4"),
        (0.250, "down", "1/4"),
        (0.250, "under", "D"),
        (0.250, "over", "F"),
        (0.2010, "up", "#7"),
        (0.2011, "up", "13/64"),
    ],
)
def test_next_drill_has_a_direction(inches, direction, name) -> None:
    """Clearance next up, reamer next under: never the nearest. Source: ASME B94.11M sizes."""
    assert next_drill(inches * 25.4, direction, "inch").name == name


def test_two_names_of_one_size_give_the_fraction() -> None:
    """E and 1/4 are one size; the fraction is said first (common practice), up and down."""
    for direction in ("up", "down"):
        assert next_drill(6.35, direction, "inch").name == "1/4"


@pytest.mark.parametrize(
    ("inches", "first", "told"),
    [
        # ASME B94.11M sizes, rounded to three places: pairs within .0005 in
        (0.281, "9/32", "K is 0.0003 in under"),  # .28125 and .2810
        (0.266, "17/64", "H is 0.0004 in over"),  # .265625 and .2660
        (0.250, "1/4", "E"),
        (0.201, "#7", ""),
        (0.257, "F", ""),
        (0.332, "Q", ""),
        (0.1495, "#25", ""),  # four places: #25 alone
    ],
)
def test_a_size_of_a_print_names_every_drill_it_can_mean(inches, first, told) -> None:
    """The fraction first, then how the number or letter beside it lies to it."""
    named = drills_of(inches * 25.4, "inch")
    assert (named[0].name, beside(named)) == (first, told)


def test_each_fraction_with_a_near_namesake_is_said_first() -> None:
    """Ten fractions have a number or letter within .0005 in. Source: ASME B94.11M sizes."""
    pairs = {"1/64": "#78", "1/32": "#68", "3/64": "#56", "5/64": "#47", "3/32": "#42"}
    pairs |= {"9/64": "#28", "15/64": "A", "1/4": "E", "17/64": "H", "9/32": "K"}
    for fraction, other in pairs.items():
        apart = abs(drill(fraction).diameter - drill(other).diameter) / 25.4
        assert apart < 0.0006, (fraction, other)


@pytest.mark.parametrize("diameter", [0.0, -1.0, float("nan"), float("inf")])
def test_a_size_that_is_none_is_refused(diameter) -> None:
    """Zero, minus, NaN and infinite sizes get a sentence."""
    with pytest.raises(SeatworkError, match="no drill size"):
        next_drill(diameter, "up")


def test_beyond_the_list_there_is_no_next_drill() -> None:
    """Past either end the answer says so; an unknown direction or drill set too."""
    with pytest.raises(SeatworkError, match="no drill in the list"):
        next_drill(500, "up")
    with pytest.raises(SeatworkError, match="no drill in the list"):
        next_drill(0.01, "under")
    with pytest.raises(SeatworkError, match="direction"):
        next_drill(6, "nearest")
    with pytest.raises(SeatworkError, match="drill set"):
        next_drill(6, "up", "english")


@given(st.floats(min_value=0.4, max_value=70), st.sampled_from(["inch", "metric", None]))
def test_next_drills_enclose_the_size(diameter, system) -> None:
    """Up is not under the size, down is not over it, and no drill of the set lies between."""
    up, down = next_drill(diameter, "up", system), next_drill(diameter, "down", system)
    assert down.diameter <= diameter + 1e-6
    assert up.diameter >= diameter - 1e-6
    between = [d for d in drills(system) if down.diameter < d.diameter < up.diameter]
    assert between == []


def test_every_drill_is_found_by_its_own_name() -> None:
    """Names are unique, and each finds its drill."""
    for each in drills():
        assert drill(each.name) == each


@pytest.mark.slow
@given(st.text(max_size=40))
def test_any_text_is_read_or_refused(text) -> None:
    """No text raises anything but the one error."""
    with suppress(SeatworkError):
        assert drill(text).diameter > 0
