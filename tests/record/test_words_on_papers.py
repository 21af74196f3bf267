"""What the record says of papers and of decisions: nothing senseless is taken, nothing unsaid."""

import pytest
from schools import School, answered, given, points_of
from seatwork.errors import SeatworkError
from seatwork.marking.submissions import Submission
from seatwork.record import Override, hand_out, override, results
from seatwork.record.choosing import count_paper
from seatwork.record.class_now import Class
from seatwork.record.deciding import excuse, lose, undo, void
from seatwork.record.giving import other_mode
from seatwork.record.history import history
from seatwork.record.marking_course import _kept
from seatwork.record.marking_told import told
from seatwork.record.piling import waiting

DAY, DUE, AFTER = "2026-09-10", "2026-09-14", "2026-09-20"


def notes(made: School, papers: list[Submission], day: str) -> tuple[str, ...]:
    """Mark a pile and return what is said of it."""
    record = made.record
    done = _kept(record, made.folder, made.plan, papers, day, day)
    record.close()
    return done.notes


def counting(made: School, learner: str = "L01") -> list[str]:
    """Return the ids of the papers that history shows as counting."""
    record = made.record
    lines = history(record, learner)
    record.close()
    return [one.id for one in lines if one.counts and one.text.startswith("paper came")]


def test_history_marks_the_paper_that_counts(school) -> None:
    """After the day the first stands, and = is beside it and its mark until another is chosen."""
    made: School = school(2, due=DUE)
    record = made.record
    made.take(record, made.papers[:1], DAY)
    (first,) = counting(made)
    late = made.other(0, c1="9")
    made.take(record, (late,), AFTER)
    assert counting(made) == [first]
    papers = [one.id for one in history(record, "L01") if one.text.startswith("paper came")]
    (second,) = set(papers) - {first}
    count_paper(record, second, "was ill on the day", AFTER)
    assert counting(made) == [second]
    marks = [one for one in history(record, "L01") if one.text.startswith("marked")]
    assert [one.text.endswith(f"(paper {second[:6]})") for one in marks if one.counts] == [True]


def test_of_two_at_once_neither_counts(school) -> None:
    """Where a person must choose, no paper has = beside it."""
    made: School = school(1)
    other = made.other(0, c1="9")
    record = made.record
    made.take(record, (made.papers[0], other), DAY)
    assert counting(made) == []


def test_points_by_hand_ask_which_of_two_forms(school) -> None:
    """With papers of the test and of the re-test in, points go to neither unsaid."""
    made: School = school(1)
    hand_out(made.folder, made.plan, ["L01"], sitting=2, day=DAY)
    record = made.record
    made.take(record, made.papers, DAY)
    override(record, Override("L01", "cones", None, "c1", 0.5, "one form is in"), DAY)
    again = answered(made.folder, "cones", "L01", 2)
    made.take(record, (again,), AFTER)
    before = points_of(record)
    with pytest.raises(SeatworkError, match="papers of the forms 1, 2 of cones are in; add --form"):
        override(record, Override("L01", "cones", None, "c1", 0.25, "which one"), AFTER)
    assert points_of(record) == before


def test_a_sheet_is_not_due_before_it_is_handed_out(school) -> None:
    """The day is refused, and no form is drawn; the day itself is right."""
    made: School = school(1)
    with pytest.raises(SeatworkError, match="before the day of handing out, 2026-09-10"):
        hand_out(made.folder, "angles", ["L01"], due="2026-09-01", day=DAY)
    record = made.record
    assert {sheet for _, sheet in points_of(record)} == {"cones"}
    assert hand_out(made.folder, "angles", ["L01"], due=DAY, day=DAY)
    with pytest.raises(SeatworkError, match="before the day of handing out, 2026-09-10"):
        hand_out(made.folder, "angles", ["L01"], due="2026-09-09", day="2026-09-08")


def test_forms_that_stay_graded_are_told(school) -> None:
    """Asking for practice where the forms were handed out graded changes nothing, and says so."""
    made: School = school(2)
    again = hand_out(made.folder, "cones", ["L01", "L02"], mode="practice", day=DAY)
    assert {one.given.mode for one in again} == {"graded"}
    assert other_mode(again, "practice").startswith("2 forms stay graded")
    assert other_mode(again, "graded") == other_mode(again, None) == ""


def test_a_paper_that_is_in_is_not_lost_and_none_is_not_void(school) -> None:
    """Each word is refused where the record speaks against it, and taken where it does not."""
    made: School = school(2)
    record = made.record
    made.take(record, made.papers[:1], DAY)
    with pytest.raises(SeatworkError, match="is in, so none is lost"):
        lose(record, "cones", "L01", "lost in the shop", AFTER)
    with pytest.raises(SeatworkError, match="nothing to void"):
        void(record, "cones", "L02", "two sheets were mixed up", AFTER)
    assert lose(record, "cones", "L02", "lost in the shop", AFTER)
    assert void(record, "cones", "L01", "two sheets were mixed up", AFTER)


@pytest.mark.parametrize(("word", "decide"), [("excused", excuse), ("void", void)])
def test_marks_call_a_sitting_by_its_word(school, word: str, decide) -> None:
    """A paper that gives no mark by decision waits for nobody."""
    made: School = school(1)
    record = made.record
    made.take(record, made.papers, DAY)
    decide(record, "cones", "L01", "court date", AFTER)
    (row,) = results(record, "cones", AFTER)["files"]
    assert (row["state"], row["points"]) == (word, None)
    assert "court date" in row["note"]


def test_what_came_after_a_choice_is_told_so(school) -> None:
    """The sentence speaks of the choice and not of the day, and names the paper to count."""
    made: School = school(1)
    record = made.record
    made.take(record, made.papers, DAY)
    (paper,) = counting(made)
    count_paper(record, paper, "seen being written", DAY)
    other = made.other(0, c1="9")
    (said,) = notes(made, given((other,)), DUE)
    assert "came after it was decided which counts; the one decided for stands" in said
    named = said.partition("count-paper ")[2][:6]
    count_paper(record, named, "after all", DUE)
    assert counting(made) != [paper]


def test_a_paper_typed_again_is_told_as_typed(school) -> None:
    """Answers typed from paper are called so, in time and after the day."""
    made: School = school(2, due=DUE)
    first = [Submission("typed.csv", one, came="paper") for one in made.papers]
    assert notes(made, first, DAY) == ()
    other = [made.papers[n].changed("c1", parts=(f"{n + 3}",)) for n in (0, 1)]
    typed = [Submission("typed.csv", one, came="paper") for one in other]
    (said,) = notes(made, typed[:1], DUE)
    assert "other answers, typed from paper, than the paper marked before; these count now" in said
    (said,) = notes(made, typed[1:], AFTER)
    assert "L02, form 1 has answers typed from paper that came after the day" in said


def test_a_paper_taken_back_that_comes_again_is_told(school) -> None:
    """It stays taken back, and how to let it count is said."""
    made: School = school(1)
    record = made.record
    made.take(record, made.papers, DAY)
    (paper,) = counting(made)
    undo(record, paper, "not theirs", DAY)
    (said,) = notes(made, given(made.papers), DUE)
    assert "was taken back before, and stays so" in said
    assert counting(made) == []


@pytest.mark.parametrize("place", ["L02/scan.json", "scan of l02.json"])
def test_a_file_that_cannot_be_read_is_its_owners(school, place: str) -> None:
    """It is settled by the learner's paper on that day or later, and not by an earlier one."""
    made: School = school(2)
    record = made.record
    came = Submission(place, None, "it is damaged")
    made.take(record, made.papers[1:], "2026-09-09")

    def open_(day: str) -> list[tuple[str, str | None]]:
        with record.reading() as connection:
            rows = waiting(Class(connection, day).rows)
        return [(one.name.partition(" of ")[2], row.learner) for row, one in rows]

    _kept(record, made.folder, made.plan, [came], DAY, DAY)
    assert open_(DAY) == [("L02", "L02")]
    other = made.other(1, c1="9")
    made.take(record, (other,), DUE)
    assert open_(DUE) == []


def test_a_file_of_nobody_is_named_as_the_class_calls_it(school) -> None:
    """A name that may be a person's is told once, with the name under which it is kept."""
    made: School = school(1)
    record = made.record
    came = Submission("Quillfeather.json", None, "it is damaged")
    done = _kept(record, made.folder, made.plan, [came], DAY, DAY)
    said = " ".join(told(made.plan, done, made.folder))
    with record.reading() as connection:
        ((row, one),) = waiting(Class(connection, DAY).rows)
    assert f"Quillfeather.json: it is damaged (the class calls it {one.name})" in said
    assert "Quillfeather" not in one.name
    undo(record, row.id, "a picture of the shop", DAY)
    with record.reading() as connection:
        assert waiting(Class(connection, DAY).rows) == []
