"""The corpus: notes as people write them, read right field by field.

The readings were written down from the notes by hand, as a machinist reads them.
"""

import re
from collections.abc import Callable
from typing import Any

import pytest
from seatwork.errors import SeatworkError
from seatwork.notes import NoteError, read
from seatwork.notes.reading import LONGEST


def test_note_is_read_field_by_field(
    entry: dict[str, Any], tell: Callable, expect: Callable
) -> None:
    """Each note gives the features written beside it: every field said, and no other."""
    callout = read(entry["note"], entry.get("system"))
    assert [tell(f) for f in callout.features] == [expect(text) for text in entry["reads"]]


def test_note_names_its_assumptions(assuming_entry: dict[str, Any]) -> None:
    """What a note leaves open is named with the house rule that fills it."""
    callout = read(assuming_entry["note"], assuming_entry.get("system"))
    assert sorted(a.rule for a in callout.assumptions) == sorted(assuming_entry["assumes"])
    assert all(a.rule in a.sentence for a in callout.assumptions)


def test_note_keeps_what_is_only_said(entry: dict[str, Any]) -> None:
    """Words that do not bear on the cut are kept as typed, and no others are."""
    callout = read(entry["note"], entry.get("system"))
    assert callout.sizes_hold == entry.get("holds", "")
    assert list(callout.said_not_used) == entry.get("said", [])


def test_note_warns_of_what_to_ask(entry: dict[str, Any]) -> None:
    """A note warns of exactly what the corpus says has to be asked about."""
    callout = read(entry["note"], entry.get("system"))
    assert sorted({w.code for w in callout.warnings}) == sorted(entry.get("warns", []))


def test_what_must_be_asked_is_asked(asked_entry: dict[str, Any]) -> None:
    """A note that says too little or two things of one is never read without a question."""
    try:
        callout = read(asked_entry["note"], asked_entry.get("system"))
    except SeatworkError as error:
        told = str(error)
    else:
        told = " ".join(warning.sentence for warning in callout.warnings)
    assert re.search(asked_entry["asks"], told), told


def test_malformed_note_gives_place_and_sentence(bad_entry: dict[str, Any]) -> None:
    """A note that cannot be read gives the exact place and a sentence that helps."""
    with pytest.raises(NoteError) as caught:
        read(bad_entry["note"], bad_entry.get("system"))
    error = caught.value
    assert error.text[error.start : error.end].strip() == bad_entry["at"]
    assert error.column == bad_entry.get("column", error.column)
    assert error.line == bad_entry.get("line", 1)
    assert all(words in str(error) for words in bad_entry["says"]), str(error)


def test_malformed_note_keeps_what_was_understood(
    understood_entry: dict[str, Any], tell: Callable, expect: Callable
) -> None:
    """What stands before the place is kept and told, and nothing that is a guess."""
    with pytest.raises(NoteError) as caught:
        read(understood_entry["note"], understood_entry.get("system"))
    wanted = [expect(text) for text in understood_entry["understood"]]
    assert [tell(feature) for feature in caught.value.understood] == wanted
    assert "Understood before it" in str(caught.value)


def test_corpus_is_large_enough(good_notes: list[str], bad_notes: list[str]) -> None:
    """The corpus holds at least 150 notes and 60 malformed ones, none of them twice."""
    assert len(good_notes) == len(set(good_notes)) >= 150
    assert len(bad_notes) == len(set(bad_notes)) >= 60


def test_note_too_long_is_refused_at_once() -> None:
    """A note over 2,000 characters is refused before the grammar sees it."""
    with pytest.raises(SeatworkError, match="more than 2,000"):
        read("⌀.281 THRU " * 182)
    assert LONGEST == 2000
