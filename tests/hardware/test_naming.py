"""Names of screws, as spoken and written."""

import csv
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.hardware import other_heads, screw
from seatwork.hardware.vocabulary import DOCUMENTS, SHORT, WORDS

DATA = Path(__file__).with_name("data")


def corpus(name: str) -> list[dict[str, str]]:
    """Read a list of names that an instructor can extend."""
    with (DATA / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@pytest.mark.parametrize("row", corpus("screw_names.csv"), ids=lambda row: row["text"])
def test_a_name_is_read(row) -> None:
    """Kind, thread and length are those a person at the counter would hand out."""
    found = screw(row["text"])
    assert (found.kind, found.thread.name) == (row["kind"], row["thread"])
    expected = float(row["length_mm"]) if row["length_mm"] else None
    assert found.length == (None if expected is None else pytest.approx(expected))


@pytest.mark.parametrize("row", corpus("refused_names.csv"), ids=lambda row: row["text"])
def test_a_name_that_is_none_is_asked_about_or_refused(row) -> None:
    """The sentence starts with what was typed, and says what would do."""
    with pytest.raises(SeatworkError) as caught:
        screw(row["text"])
    told = str(caught.value)
    assert row["says"] in told
    assert told.startswith(row["text"])
    assert caught.value.remedy


@pytest.mark.parametrize("text", ["", "   ", "\x00M6", "M6 " + "x" * 200, "M6\u202e SHCS"])
def test_what_is_no_name_at_all_is_refused_at_once(text) -> None:
    """Empty, too long, and characters that do not print get one sentence."""
    with pytest.raises(SeatworkError):
        screw(text)


@pytest.mark.parametrize("value", [None, 6, 6.0, ["M6"], b"M6"])
def test_only_text_names_a_screw(value) -> None:
    """Anything but text is refused in words, not with a foreign error."""
    with pytest.raises(SeatworkError, match="not text"):
        screw(value)


def test_a_number_size_flat_head_is_assumed_to_be_a_machine_screw() -> None:
    """A #10 flat head is read as a machine screw, and says that this was assumed."""
    assert "machine screw" in screw("#10 flat head").assumptions[0]
    assert screw("#10 FHMS").assumptions == ()


def test_old_names_say_how_they_were_read() -> None:
    """DIN 912 is read as ISO 4762, an inch hex bolt as a hex cap screw, and both say so."""
    assert "DIN 912" in screw("DIN 912 M8").assumptions[0]
    assert "hex bolt" in screw("1/2 hex bolt").assumptions[0]
    assert "17 mm" in screw("M10 hex bolt").assumptions[0]
    assert screw("M8 hex bolt").assumptions == ()


PIECES = ["#10", "10-32", "1/4-20", "1/4", "M6", "M8x1", "x 20", "82°", "100 deg", "UNC-2B"]
VOCABULARY = [*PIECES, *WORDS, *SHORT, *other_heads.WORDS, *(name.upper() for name in DOCUMENTS)]


@pytest.mark.slow
@given(st.lists(st.sampled_from(VOCABULARY), min_size=1, max_size=6).map(" ".join))
def test_any_mix_of_shop_words_is_read_or_refused(text) -> None:
    """No mix of the words raises anything but the one error, and none is read two ways."""
    with suppress(SeatworkError):
        found = screw(text)
        assert screw(text) == found
        assert found.source
        assert found.confirmed in ("two-source", "one-source", "memory")


@pytest.mark.slow
@given(st.text(max_size=100))
@example("⅜-16 hex cap")
@example("²")
@example("M६")
def test_any_text_is_read_or_refused(text) -> None:
    """No text raises anything but the one error."""
    with suppress(SeatworkError):
        assert screw(text).thread.diameter > 0
