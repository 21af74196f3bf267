"""Worksheets on paper: one for each learner, a key, no date in the file."""

from pathlib import Path

import pytest
from seatwork.cards import paper
from seatwork.marking import Sheet, sheets
from seatwork.questions.type.parts import ChoicePart
from seatwork.record import hand_out

pytestmark = pytest.mark.slow


@pytest.fixture
def sheet() -> Sheet:
    """Give the sheet on cones: numbers, a choice and drawings."""
    return sheets.load("cones")


@pytest.mark.parametrize("size", ["letter", "a4"])
def test_a_learners_sheet_is_the_same_file_each_time(
    tmp_path: Path, sheet: Sheet, size: str
) -> None:
    """The PDF depends on the form and the paper alone, and carries no date."""
    one = hand_out(tmp_path / "course", sheet, ["L01"])[0]
    paper.learner_pages(tmp_path / "a.pdf", sheet, one, size)
    paper.learner_pages(tmp_path / "b.pdf", sheet, one, size)
    first = (tmp_path / "a.pdf").read_bytes()
    assert first == (tmp_path / "b.pdf").read_bytes()
    assert first.startswith(b"%PDF")
    assert b"CreationDate" not in first


def test_learners_get_different_sheets(tmp_path: Path, sheet: Sheet) -> None:
    """Two learners' papers differ, and the key is a file of its own."""
    given = hand_out(tmp_path / "course", sheet, ["L01", "L02"])
    for one in given:
        paper.learner_pages(tmp_path / f"{one.given.learner}.pdf", sheet, one)
    assert (tmp_path / "L01.pdf").read_bytes() != (tmp_path / "L02.pdf").read_bytes()
    paper.answer_key(tmp_path / "key.pdf", sheet, given)
    assert (tmp_path / "key.pdf").stat().st_size > 1000


def test_the_key_says_the_letter_of_an_option(tmp_path: Path, sheet: Sheet) -> None:
    """A choice stands in the key with the letter that a learner writes in the box."""
    one = hand_out(tmp_path / "course", sheet, ["L01"])[0]
    chosen = one.questions["c3"].parts[0]
    assert isinstance(chosen, ChoicePart)
    letter = "abc"[[word for word, _ in chosen.options].index(chosen.right)]
    said = " ".join(str(paper.key_on_paper(sheet, [one])).split())
    assert f"c3a {letter}) {dict(chosen.options)[chosen.right]}" in said
