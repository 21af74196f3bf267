"""Wording: texts an instructor may change, with their braces kept."""

from pathlib import Path

import pytest
from seatwork import shop
from seatwork.errors import SeatworkError
from seatwork.shop.house.wording import apply, defaults


def test_text_can_be_changed(tmp_path: Path) -> None:
    """A changed text is in force; the others stay."""
    (tmp_path / "shop").mkdir()
    (tmp_path / "shop" / "wording.toml").write_text('[words]\nproud = "high"\n', encoding="utf-8")
    texts = shop.wording(tmp_path)
    assert texts["words.proud"] == "high"
    assert texts["words.flush"] == "flush"


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ('[words]\nprude = "high"', "line 2: there is no text"),
        ("[words]\nproud = 3", "line 2: words.proud is no short text"),
        ('[words]\nproud = ""', "line 2: words.proud is no short text"),
        ('[marking]\nmatches = "That is it."', "keep these braces: {slip}"),
        ('[marking]\nmatches = "{slip} {other}"', "keep these braces: {slip}"),
        ('[marking]\nmatches = "{slip.__class__}"', "keep these braces: {slip}"),
        ('[marking]\nmatches = "{slip"', "a brace is not closed"),
    ],
)
def test_text_that_cannot_stand_is_told(text: str, says: str) -> None:
    """A text with other braces, or none there is, is told with its line."""
    with pytest.raises(SeatworkError) as caught:
        apply(text, "wording.toml")
    assert says in str(caught.value)


def test_defaults_can_be_filled_in() -> None:
    """Every default text takes its own placeholders."""
    assert "a slip" in defaults()["marking.matches"].format(slip="a slip")
