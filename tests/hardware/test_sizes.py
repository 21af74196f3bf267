"""One size from a length, a drill or a screw."""

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.hardware import size


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("#7", 0.201 * 25.4),
        ("H", 0.266 * 25.4),
        ("#10 drill", 0.1935 * 25.4),
        ("#10 screw", 0.190 * 25.4),
        ("no. 10 screw", 0.190 * 25.4),
        ("#0", 0.060 * 25.4),
        ("M6", 6.0),
        ("M8x1", 8.0),
        ("1/4-20", 6.35),
        ("10-32", 0.190 * 25.4),
        ("1-1/4-7", 31.75),
        ("1-1/4", 31.75),
        ("17/64", 6.746875),
        ("6.6 mm", 6.6),
        (".266 in", 0.266 * 25.4),
    ],
)
def test_sizes_and_names_are_read(text, mm) -> None:
    """Drills by ASME B94.11M, screws by ASME B1.1 and ISO 261, lengths as typed."""
    assert size(text) == pytest.approx(mm, abs=1e-9)


@pytest.mark.parametrize("number", [1, 2, 3, 4, 5, 6, 8, 10, 12])
def test_a_number_that_is_both_is_asked_about(number) -> None:
    """#1 to #6, #8, #10 and #12 name a drill and a screw."""
    with pytest.raises(SeatworkError, match="a drill or a screw"):
        size(f"#{number}")


def test_bare_numbers_follow_the_system() -> None:
    """.266 is asked about until a system is named; a number passes the same door."""
    with pytest.raises(SeatworkError, match="in or mm"):
        size(".266")
    assert size(".266", "inch") == pytest.approx(6.7564)
    assert size(6.6, "metric") == 6.6


@pytest.mark.slow
@given(st.text(max_size=40), st.sampled_from(["inch", "metric", None]))
def test_any_text_is_read_or_refused(text, system) -> None:
    """No text raises anything but the one error, and no size is below zero."""
    with suppress(SeatworkError):
        assert size(text, system) >= 0
