"""Answers typed back from paper get the same marking as those from a notebook."""

from collections.abc import Callable
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking import AnswerFile, Marker, Sheet, typed_back
from seatwork.record import forms

HEAD = "learner,question,answer\n"


def test_paper_and_notebook_are_marked_alike(
    course_folder: Path, sheet: Sheet, right_file: Callable[[str], AnswerFile], tmp_path: Path
) -> None:
    """Right answers typed back, parts by letter, earn all points."""
    rows = [
        f"L01,{name}{'ab'[number] if len(answer.parts) > 1 else ''},{text}"
        for name, answer in right_file("L01").answers.items()
        for number, text in enumerate(answer.parts)
    ]
    path = tmp_path / "typed.csv"
    path.write_text(HEAD + "\n".join(rows), encoding="utf-8")
    found = typed_back.read(path, sheet, forms(course_folder))
    assert [one.file for one in found] == [right_file("L01")]
    assert Marker(sheet, forms(course_folder)).mark(found)[0].points == pytest.approx(7)


@pytest.mark.parametrize(
    ("row", "fault"),
    [
        ("L01,q9,1", "row 2.*no such question"),
        ("name,q1,1", "row 2.*learner code"),
        ("L77,q1,1", "row 2.*no form"),
    ],
)
def test_a_wrong_row_is_named(
    course_folder: Path,
    sheet: Sheet,
    right_file: Callable[[str], AnswerFile],
    tmp_path: Path,
    row: str,
    fault: str,
) -> None:
    """The row's number and what would do are said."""
    path = tmp_path / "typed.csv"
    path.write_text(HEAD + row, encoding="utf-8")
    with pytest.raises(SeatworkError, match=fault):
        typed_back.read(path, sheet, forms(course_folder))


@pytest.mark.parametrize(
    ("rows", "open_"),
    [
        ("L01,q1,1\n", {"q2": "the file has no row for it", "q3": "the file has no row for it"}),
        ("L01,q1,\nL01,q2,\nL01,q3,\n", {}),
        ("L01,q1,1\nL01,q2,1\nL01,q3a,1\n", {"q3": "only 1 of its 2 parts stood in the file"}),
        ("L01,q1,1\nL01,q2,1\nL01,q3,1\n", {"q3": "only 1 of its 2 parts stood in the file"}),
        ("L01,q1,1\nL01,q2,1\nL01,q3,;1\n", {}),
    ],
)
def test_what_was_not_typed_is_no_blank(
    course_folder: Path, sheet: Sheet, handouts, tmp_path: Path, rows: str, open_: dict[str, str]
) -> None:
    """A question without a row waits for a person; a row without an answer is a blank."""
    path = tmp_path / "typed.csv"
    path.write_text(HEAD + rows, encoding="utf-8")
    handed_out = forms(course_folder)
    (paper,) = typed_back.read(path, sheet, handed_out)
    assert paper.doubts == open_
    (marked,) = Marker(sheet, handed_out).mark([paper])
    assert {one.id for one in marked.scored if one.points is None} == set(open_)
