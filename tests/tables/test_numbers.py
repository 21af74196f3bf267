"""Numbers as tables print them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.tables.numbers import number


@pytest.mark.parametrize(
    ("printed", "value"),
    [(".0470", 0.047), ("0.5", 0.5), ("13", 13.0), ("5/32", 0.15625), ("1-3/16", 1.1875)],
)
def test_printed_forms_are_read(printed, value) -> None:
    """Decimals with and without leading zero, fractions and mixed numbers are numbers."""
    assert number(printed) == value


def test_a_blank_cell_is_not_zero() -> None:
    """What a document leaves out is None."""
    assert number("  ") is None


@pytest.mark.parametrize("printed", ["about 5", "5-10", "1/0", "nan", "1e3", "5 mm", "²"])
def test_anything_else_is_refused(printed) -> None:
    """A cell that is no printed number is refused, never guessed."""
    with pytest.raises(SeatworkError):
        number(printed)


@given(st.decimals(min_value=0, max_value=9999, places=4, allow_nan=False))
def test_every_decimal_comes_back(value) -> None:
    """A decimal as printed is the float nearest to it."""
    assert number(str(value)) == float(value)
