"""Shop text is read as the shop means it, and nothing else is."""

import contextlib
import math
import string

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import units
from seatwork.errors import SeatworkError

# 25.4 mm = 1 in is exact by definition (1959 international yard and pound agreement)
SHOP_TEXT = [
    ('0.266"', 0.266 * 25.4),
    ("17/64", 17 / 64 * 25.4),
    ("1-1/4 in", 31.75),
    ('1 3/8"', 34.925),
    ("1½ in", 38.1),
    ("6.6 mm", 6.6),
    ("6,6 mm", 6.6),
    ("6.6mm", 6.6),
    ("15 thou", 0.381),
    ("0 in", 0.0),
    ("2 cm", 20.0),
]


@pytest.mark.parametrize(("text", "mm"), SHOP_TEXT)
def test_a_size_is_read_as_written(text: str, mm: float) -> None:
    """Each form of shop text gives its length in mm."""
    assert units.length(text) == pytest.approx(mm, rel=1e-15)


@pytest.mark.parametrize(
    ("text", "system", "mm"),
    [(".266", "inch", 6.7564), ("6.6", "metric", 6.6), ("17/64", "metric", 6.746875)],
)
def test_a_bare_number_is_read_in_the_system_named(text: str, system: str, mm: float) -> None:
    """A bare number follows the system; a fraction is in inches always."""
    assert units.length(text, system) == pytest.approx(mm, rel=1e-15)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        (".266", "in or mm?"),
        ("1,250", "1250 or 1.250"),
        ("1,250 mm", "1250 or 1.250"),
        ("5 mil", "thou"),
        ("", "no value was typed"),
        ("   ", "no value was typed"),
        ("nan", "cannot be read"),
        ("inf mm", "cannot be read"),
        ("1e400", "cannot be read"),
        ("9**9**9", "cannot be read"),
        ("9" * 10_000, "too long"),
        ("6.6\x00mm", "do not print"),
        ("6.6\nmm", "do not print"),
        ("#10", "names a drill or a screw"),
        ("H", "names a drill or a screw"),
        ("M6", "names a drill or a screw"),
        ("10-32", "names a drill or a screw"),
        ('1/4"-20', "names a drill or a screw"),
        ("17/64 mm", "read in inches"),
        ("1/3 in", "halves to 1/128"),
        ("1/0", "halves to 1/128"),
        ("-.003 in", "proud or below"),
        ("٣ mm", "cannot be read"),
        ("1.2.3 mm", "cannot be read"),
        ("12 furlong", "furlong"),
        ("__import__('os')", "cannot be read"),
    ],
)
def test_what_is_no_size_gets_one_sentence(text: str, says: str) -> None:
    """Each unusable text is answered with what is wrong, in one line that names a remedy."""
    with pytest.raises(SeatworkError) as error:
        units.length(text)
    assert says in str(error.value)
    assert "\n" not in str(error.value)
    assert str(error.value).endswith(".")
    assert len(str(error.value)) < 300


@pytest.mark.parametrize("value", [None, b"6 mm", True, ["6 mm"], 6j])
def test_what_is_no_text_is_refused_by_its_kind(value: object) -> None:
    """Objects that are neither text nor number are named by their type."""
    with pytest.raises(SeatworkError, match=type(value).__name__):
        units.length(value)


@given(st.text(max_size=80) | st.text(alphabet=string.printable, max_size=80))
def test_no_text_raises_anything_else(text: str) -> None:
    """Any text is a finite size or a SeatworkError, in both systems."""
    for read in (units.length, units.cutting_speed, units.feed):
        for system in (None, "inch", "metric"):
            with contextlib.suppress(SeatworkError):
                assert 0 <= read(text, system) < math.inf


@pytest.mark.parametrize(
    ("text", "degrees"), [("82", 82), ("82°", 82), ("82 deg", 82), ("59,5°", 59.5)]
)
def test_angles_are_read(text: str, degrees: float) -> None:
    """An angle needs no unit and accepts the degree sign."""
    assert units.angle(text) == degrees


@pytest.mark.parametrize("text", ["400", "-1", "1/2", "82 grad", ""])
def test_angles_out_of_range_are_refused(text: str) -> None:
    """Nothing outside 0 to 360 degrees is an angle."""
    with pytest.raises(SeatworkError):
        units.angle(text)


def test_speeds_and_feeds_are_read() -> None:
    """One foot is 304.8 mm exactly, so 100 sfm is 30.48 m/min and .004 ipr is 0.1016 mm/rev."""
    assert units.cutting_speed("100 sfm") == 30.48
    assert units.cutting_speed("100 ft/min") == 30.48
    assert units.cutting_speed("100", "inch") == 30.48
    assert units.cutting_speed("30 m/min") == 30
    assert units.feed(".004 ipr") == pytest.approx(0.1016, rel=1e-15)
    assert units.feed("0.1", "metric") == 0.1


@pytest.mark.parametrize("text", ["90", "0 sfm", "-90 sfm", "90 rpm", "1/2 sfm"])
def test_speeds_need_a_unit_and_a_positive_number(text: str) -> None:
    """A bare, zero, negative or fractional speed, or one in rev/min, is refused."""
    with pytest.raises(SeatworkError):
        units.cutting_speed(text)


def test_a_quantity_is_taken_at_the_door() -> None:
    """A pint quantity of the right dimension is read; another is refused."""
    registry = pint.UnitRegistry()
    assert units.length(registry.Quantity(1, "inch")) == pytest.approx(25.4)
    assert units.cutting_speed(registry.Quantity(100, "ft/min")) == pytest.approx(30.48)
    assert units.feed(registry.Quantity(0.004, "inch/turn")) == pytest.approx(0.1016)
    assert units.angle(registry.Quantity(82, "deg")) == pytest.approx(82)
    with pytest.raises(SeatworkError):
        units.length(registry.Quantity(1, "second"))


@pytest.mark.parametrize(("text", "wrong"), [("1 1/4 in", 0.25 * 25.4), ("1-1/4 in", -0.25 * 25.4)])
def test_mixed_fractions_escape_the_known_trap(text: str, wrong: float) -> None:
    """A units library reads "1 1/4 in" as a quarter inch; this door reads one and a quarter."""
    assert units.length(text) == 31.75 != wrong
