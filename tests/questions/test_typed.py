"""Numbers as typed: the quick way and the shop-text reader agree, and places are kept."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import units
from seatwork.entries.measures import ANGLE, LENGTH, SPINDLE_SPEED, SURFACE_SPEED, Measure
from seatwork.entries.typed import read
from seatwork.errors import SeatworkError


@pytest.mark.slow
@given(
    st.integers(0, 99999),
    st.integers(0, 5),
    st.sampled_from(["", " in", '"', " mm", "mm", " thou", " inches"]),
    st.sampled_from(["inch", "metric"]),
)
def test_the_quick_way_agrees_with_the_shop_text_reader(
    digits: int, places: int, unit: str, system: str
) -> None:
    """Plain decimals with any unit give what ``seatwork.units.length`` gives."""
    text = f"{Decimal(digits).scaleb(-places):f}{unit}"
    quick = read(text, LENGTH, system)
    slow = units.length(text, system)
    assert LENGTH.inside(quick.value, system) == pytest.approx(slow, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "measure", "system", "value", "place"),
    [
        (".139", LENGTH, "inch", "0.139", "0.001"),
        ("0,139 in", LENGTH, "inch", "0.139", "0.001"),
        ("9/64", LENGTH, "inch", "0.140625", "0.001"),
        ("1-1/4 in", LENGTH, "inch", "1.25", "0.001"),
        ("3.5", LENGTH, "metric", "3.5", "0.1"),
        ("15 thou", LENGTH, "inch", "0.015", "0.001"),
        ("82°", ANGLE, "inch", "82", "1"),
        ("82.1 deg", ANGLE, "inch", "82.1", "0.1"),
        ("688 rpm", SPINDLE_SPEED, "inch", "688", "1"),
        ("90 sfm", SURFACE_SPEED, "inch", "90", "1"),
        ("30 m/min", SURFACE_SPEED, "metric", "30", "1"),
    ],
)
def test_shop_text_is_read_with_its_places(
    text: str, measure: Measure, system: str, value: str, place: str
) -> None:
    """Value and last place come out exact; a fraction counts as thousandths."""
    typed = read(text, measure, system)
    assert typed.value == pytest.approx(Decimal(value))
    assert float(typed.place) == pytest.approx(float(place))


def test_the_unit_typed_carries_its_places() -> None:
    """Two places of mm typed for an answer in inches are four tenths of a thousandth."""
    typed = read("3.53 mm", LENGTH, "inch")
    assert typed.value == Decimal("3.53") / Decimal("25.4")
    assert float(typed.place) == pytest.approx(0.01 / 25.4)


@pytest.mark.parametrize(
    "text", ["two", "1,250", "#7", "M6", "1 mil", "-0.1", "9**9", "1e400", "0.1.2", "x" * 200, "٣"]
)
def test_what_is_no_number_gives_one_sentence(text: str) -> None:
    """The refusal is that of the shop-text reader."""
    with pytest.raises(SeatworkError):
        read(text, LENGTH, "inch")
