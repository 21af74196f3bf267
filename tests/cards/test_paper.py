"""Worksheets on paper: one for each learner, a key, no date in the file."""

import re
from pathlib import Path

import pytest
from seatwork.cards import paper
from seatwork.errors import SeatworkError
from seatwork.marking import Sheet, sheets
from seatwork.marking.speaking import speaker
from seatwork.questions.type.parts import ChoicePart
from seatwork.record import hand_out

pytestmark = pytest.mark.slow


@pytest.fixture
def sheet() -> Sheet:
    """Give the sheet on cones: numbers, a choice and drawings."""
    return sheets.load("cones")


def leaves(path: Path) -> int:
    """Count the pages of a PDF."""
    return len(re.findall(rb"/Type /Page\b(?!s)", path.read_bytes()))


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


def test_a_class_is_printed_learner_by_learner(tmp_path: Path, sheet: Sheet) -> None:
    """Papers come in the order given, each begins a new leaf, each question has room to work."""
    given = hand_out(tmp_path / "course", sheet, ["L02", "L01"])
    printed = list(paper.for_a_class(sheet, given))
    assert [one.given.learner for one, _ in printed] == ["L02", "L01"]
    for one, pages in printed:
        assert len(pages.figures) % 2 == 0
        assert all(page[0].startswith(one.given.learner) for page in pages.words)
        assert str(pages).count("[room to work]") == len(sheet.items)


def test_a_class_is_one_file_with_one_key(tmp_path: Path, sheet: Sheet) -> None:
    """All papers are one PDF with the pages of each learner's own, for the instructor alone."""
    given = hand_out(tmp_path / "course", sheet, ["L01", "L02"])
    places = {"to": tmp_path / "given", "keep": tmp_path / "course"}
    papers, key = paper.print_class(sheet, given, **places)
    assert (papers.name, key.name) == ("cones-papers.pdf", "cones-key.pdf")
    own = [tmp_path / "given" / code / "cones-1.pdf" for code in ("L01", "L02")]
    assert leaves(papers) == sum(leaves(path) for path in own)
    assert {path.stat().st_mode & 0o077 for path in (papers, key)} == {0}
    with pytest.raises(SeatworkError, match="no form was handed out"):
        paper.print_class(sheet, [], **places)


def test_a_worksheet_in_spanish_asks_for_the_same_numbers(tmp_path: Path, sheet: Sheet) -> None:
    """Each question's text, its points and the frame are Spanish; every number stands."""
    one = hand_out(tmp_path / "course", sheet, ["L01"])[0]
    english, spanish = (str(paper.on_paper(sheet, one, language=code)) for code in ("en", "es"))
    assert "Alumno L01" in spanish
    assert "(2 puntos)" in spanish
    for question in one.questions.values():
        assert speaker("es")(question.text()).split("\n")[0] in spanish
        assert question.text().split("\n")[0] not in spanish
    assert re.findall(r"\d+\.\d+", english) == re.findall(r"\d+\.\d+", spanish)
    with pytest.raises(SeatworkError, match="no catalog"):
        paper.on_paper(sheet, one, language="tlh")
