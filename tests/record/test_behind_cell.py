"""What lies behind a cell: the paper as asked, typed and marked, and every fact of it."""

from collections.abc import Callable

import pytest
from schools import School
from seatwork.errors import SeatworkError
from seatwork.marking import sheets
from seatwork.marking.text import right_answer
from seatwork.record import Override, cell_facts, forms, hand_out, override
from seatwork.record.deciding import undo
from seatwork.record.history import history
from seatwork.record.taking_in import take_in

pytestmark = pytest.mark.slow
DAY = "2026-09-22"


def test_a_cell_shows_what_was_asked_typed_and_right(school: Callable[..., School]) -> None:
    """Each question of the paper in the order of the sheet, with this learner's own numbers."""
    made = school(2, due="2026-09-21")
    record = made.record
    made.take(record, made.papers, "2026-09-23")
    (one,) = cell_facts(record, "L02", "cones", "2026-09-24").sittings
    form = forms(made.folder).form("cones", "L02", 1)
    assert form is not None
    asked = form.questions(sheets.load("cones"))
    assert [row.name for row in one.asked] == list(asked)
    assert [row.text for row in one.asked] == [question.text() for question in asked.values()]
    assert [row.typed for row in one.asked] == [made.papers[1].of(name).parts for name in asked]
    for row, question in zip(one.asked, asked.values(), strict=True):
        for said, part in zip(row.right, question.parts, strict=True):
            assert said.startswith(right_answer(part))
    assert one.late
    assert one.due == "2026-09-21"
    record.close()


def test_points_by_hand_and_their_undo_stand_in_the_history(school: Callable[..., School]) -> None:
    """Facts follow as they came: form, paper, mark, points; an undo comes with its sheet."""
    made = school(2)
    record = made.record
    made.take(record, made.papers, "2026-09-14")
    before = cell_facts(record, "L01", "cones", DAY).sittings[0]
    worth = before.asked[0]
    other = 0.0 if worth.points else worth.of
    given = override(record, Override("L01", "cones", 1, worth.name, other, "aloud"), DAY)
    after = cell_facts(record, "L01", "cones", DAY).sittings[0]
    assert after.asked[0].points == other
    assert "points given by hand" in after.asked[0].said
    undo(record, given[:8], "talked it over", DAY)
    found = cell_facts(record, "L01", "cones", DAY)
    assert found.sittings == (before,)
    said = [line.text.split()[0] for line in found.history]
    assert said == ["handed", "paper", "marked", f"{worth.name}:", "takes"]
    assert [line.stands for line in found.history] == [True, True, True, False, True]
    record.close()


def test_no_paper_is_no_zero_and_other_sheets_stay_out(school: Callable[..., School]) -> None:
    """Without a paper there are no questions, and the history tells of this sheet alone."""
    made = school(2)
    hand_out(made.folder, "angles", ["L01"], day="2026-09-14")
    record = made.record
    take_in(record, sheets.load("angles"), [], day=DAY)
    found = cell_facts(record, "L01", "angles", DAY)
    assert found.sittings[0].asked == ()
    assert found.sittings[0].points is None
    assert {line.about for line in found.history} == {"L01/angles/1"}
    assert {line.about for line in history(record, "L01")} > {"L01/cones/1"}
    with pytest.raises(SeatworkError, match="angles was not handed out"):
        cell_facts(record, "L02", "angles", DAY)
    with pytest.raises(SeatworkError, match="nobody of that code"):
        cell_facts(record, "L77", "cones", DAY)
    record.close()
