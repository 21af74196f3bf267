"""Values are shown rounded half away from zero, in both systems, without drift."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.quantities import Angle, Length


@pytest.mark.parametrize(
    ("value", "places", "shown"),
    [
        (0.1385, 3, "0.139"),  # half away from zero, though the float lies below the half
        (2.675, 2, "2.68"),
        (-2.675, 2, "-2.68"),
        (-0.0004, 3, "0.000"),
        (1e-300, 3, "0.000"),
    ],
)
def test_rounding_is_half_away_from_zero(value: float, places: int, shown: str) -> None:
    """The shortest decimal of the float is what is rounded, and zero has no sign."""
    assert f"{units.rounded(value, places):f}" == shown


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_what_is_not_finite_is_refused(value: float) -> None:
    """NaN and infinity are never shown."""
    for show in (units.show_length, units.show_angle, units.show_feed, units.show_speed):
        with pytest.raises(SeatworkError):
            show(value)


def test_both_systems_are_shown_to_the_shop_s_places() -> None:
    """Inches to .001, millimeters to 0.01; the reader's own system comes first."""
    assert units.show_both(12.8778) == "0.507 in (12.88 mm)"
    assert units.show_both(12.8778, "metric") == "12.88 mm (0.507 in)"
    assert units.show_length(12.8778, "inch", 4) == "0.5070 in"


def test_print_notes_drop_the_leading_zero_in_inches_only() -> None:
    """ASME Y14.5 notes write .385 in inches and 0.4 in millimeters (from memory)."""
    assert units.show_note(0.385 * 25.4) == ".385"
    assert units.show_note(1.25 * 25.4) == "1.250"
    assert units.show_note(0.4, "metric") == "0.4"
    assert units.show_note(11, "metric") == "11"


def test_speeds_feeds_and_angles_are_written_as_the_shop_writes_them() -> None:
    """Whole sfm, m/min and rev/min; feeds to a tenth of a thousandth; angles to 0.1."""
    assert units.show_speed(27.432) == "90 sfm"
    assert units.show_speed(27.432, "metric") == "27 m/min"
    assert units.show_spindle(687.55) == "688 rev/min"
    assert units.show_feed(0.1016) == "0.004 in/rev"
    assert units.show_feed(0.1016, "metric") == "0.102 mm/rev"
    assert units.show_angle(81.46) == "81.5°"


@given(st.decimals("0.001", "40", places=3))
def test_inches_to_millimeters_and_back_a_hundred_times_do_not_drift(inches: Decimal) -> None:
    """A size typed in inches still reads the same after 100 trips through mm."""
    text = f"{inches} in"
    for _ in range(100):
        mm = units.length(text)
        text = units.show_length(units.length(f"{mm!r} mm" if mm >= 1e-4 else "0 mm"))
    assert text == f"{inches:.3f} in"


def test_an_error_is_told_in_the_reader_s_units() -> None:
    """Lengths and angles inside a sentence follow the reader's system."""
    error = SeatworkError(
        Length(12.7), "not over the hole, {hole}", "turn to {a}", hole=Length(6.35), a=Angle(82)
    )
    assert units.explain(error) == "0.500 in: not over the hole, 0.250 in; turn to 82°."
    assert units.explain(error, "metric") == "12.70 mm: not over the hole, 6.35 mm; turn to 82°."


def test_an_unknown_system_is_refused() -> None:
    """Only inch and metric are unit systems."""
    with pytest.raises(SeatworkError, match="imperial"):
        units.show_length(1, "imperial")
