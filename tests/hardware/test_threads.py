"""Screw sizes and threads."""

from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st
from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware import thread


@pytest.mark.parametrize(
    ("text", "name", "series"),
    [
        ("#10", "#10", None),
        ("10-24", "#10-24", "UNC"),
        ("No. 8-32", "#8-32", "UNC"),
        ("1/4-20 UNC-2B", "1/4-20", "UNC"),
        ("1/4-20-2B", "1/4-20", "UNC"),
        ("1/4 UNF", "1/4-28", "UNF"),
        ("1-12", "1-12", "UNF"),
        ("1-72", "#1-72", "UNF"),
        ("1-1/8-7", "1-1/8-7", "UNC"),
        ("1 1/8-12", "1-1/8-12", "UNF"),
        (".3125-18", "5/16-18", "UNC"),
        ("0.190-32", "#10-32", "UNF"),
        ("M6", "M6", None),
        ("M6x1", "M6x1", "coarse"),
        ("M8 x 1", "M8x1", "fine"),
        ("M10-1.25", "M10x1.25", "fine"),
        ("M8x1.25-6H", "M8x1.25", "coarse"),
        ("m12 × 1,75", "M12x1.75", "coarse"),
    ],
)
def test_threads_are_read(text, name, series) -> None:
    """Size, pitch and series as prints and people give them."""
    found = thread(text)
    assert (found.name, found.series) == (name, series)


def test_number_one_and_one_inch_are_told_apart_by_their_count() -> None:
    """1-8 is one inch, 1-64 a number 1; a bare 1 is asked about, 1 in is not."""
    assert thread("1-8").diameter == 25.4
    assert thread("1-64").size == "#1"
    assert thread("1 in").size == "1"
    with pytest.raises(SeatworkError, match="#1 or 1 in"):
        thread("1")


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("#7", "no size in the unified thread table"),
        ("1/4-21", "20 \\(UNC\\) and 28 \\(UNF\\)"),
        ("M6x0.5", "it has 1"),
        ("M11", "no such row"),
        ("#0 UNC", "no UNC thread"),
        ("1/4-20 flat", "'flat'"),
    ],
)
def test_what_is_no_thread_is_refused(text, says) -> None:
    """The sentence names the sizes or counts there are."""
    with pytest.raises(SeatworkError, match=says):
        thread(text)


def test_every_inch_thread_of_the_table_comes_back() -> None:
    """Each size with each of its counts is read as itself, pitch one over the count."""
    for row in tables.rows("threads_inch_unc_unf"):
        for series in ("unc", "unf"):
            count = row[f"{series}_threads_per_inch"]
            if count:
                found = thread(f"{row['size']}-{count:g}")
                assert found.name == f"{row['size']}-{count:g}"
                assert found.series == series.upper()
                assert found.pitch == pytest.approx(25.4 / count)


def test_every_metric_thread_of_the_table_comes_back() -> None:
    """Each size with each of its pitches is read as itself."""
    for row in tables.rows("threads_metric_iso_262"):
        for column in ("coarse_pitch_mm", "fine_pitch_1_mm", "fine_pitch_2_mm"):
            if row[column]:
                found = thread(f"{row['size']}x{row[column]:g}")
                assert (found.size, found.pitch) == (row["size"], row[column])
                assert found.diameter == row["d_mm"]


@given(st.text(alphabet='#0123456789/-.,xXmM unfcUNF"°ab', max_size=24))
def test_any_text_is_read_or_refused(text) -> None:
    """No mix of the characters of threads raises anything but the one error."""
    with suppress(SeatworkError):
        assert 0 < thread(text).diameter < 100
