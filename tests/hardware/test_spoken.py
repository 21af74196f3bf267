"""Sizes said aloud."""

import pytest
from seatwork.hardware.spoken import digits


@pytest.mark.parametrize(
    ("said", "written"),
    [
        ("quarter-twenty", "1/4-20"),
        ("quarter inch twenty", "1/4-20"),
        ("ten thirty-two", "#10-32"),
        ("ten twenty-four flat head", "#10-24 flat head"),
        ("six thirty two", "#6-32"),
        ("four forty", "#4-40"),
        ("two fifty-six", "#2-56"),
        ("three-eighths sixteen", "3/8-16"),
        ("five sixteenths eighteen", "5/16-18"),
        ("half thirteen", "1/2-13"),
        ("number eight", "#8"),
        ("three quarters ten", "3/4-10"),
    ],
)
def test_words_become_figures(said, written) -> None:
    """Sizes and counts in words are written in figures; what follows is kept."""
    assert digits(said) == written


@pytest.mark.parametrize("text", ["1/4-20", "m6", "flat head", "tension", "oneness", ""])
def test_other_text_stays_as_it_is(text) -> None:
    """Text that starts with no spoken size is not touched."""
    assert digits(text) == text
