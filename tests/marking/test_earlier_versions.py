"""What was handed out before a question changed is marked by what it asked then."""

import json
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking import Answer, AnswerFile, Sheet, mark, sheets, typed_back
from seatwork.marking.given import read as read_given
from seatwork.marking.handed import HandedOut
from seatwork.marking.text import right_answer
from seatwork.marking.why import reasons
from seatwork.quantities import INCH
from seatwork.questions import all_types
from seatwork.questions.registry import retired_types
from seatwork.record import forms, hand_out
from seatwork.record.marking_course import mark as mark_kept
from seatwork.worksheet.desk import Desk

PADS = '{"system": "inch", "tool": "removable pilot", "order": "%s"}'
OLD_SCREW = {
    "system": "inch",
    "size": "1/4",
    "thickness": 0.25 * INCH,
    "engagement": 0.313 * INCH,
    "height": 0.153 * INCH,
}


@pytest.fixture
def two(tmp_path: Path) -> Sheet:
    """Give a sheet of the two types whose text changed."""
    path = tmp_path / "sheets" / "two.toml"
    path.parent.mkdir()
    path.write_text(
        'format = 1\ntitle = "Two"\n[[questions]]\nid = "q1"\ntype = "screw-length"\n'
        '[[questions]]\nid = "q2"\ntype = "first-cut"\n',
        encoding="utf-8",
    )
    return sheets.read(path)


def before(screw: int, pad: int, order: str) -> HandedOut:
    """Give a form of these versions; the screw's sizes are those of version 1."""
    return HandedOut(
        sitting=1,
        form=1,
        mode="practice",
        sizes={"q1": OLD_SCREW, "q2": json.loads(PADS % order)},
        versions={"q1": screw, "q2": pad},
    )


@pytest.mark.parametrize("pad", [1, 2])
def test_a_form_of_before_asks_what_it_asked(two: Sheet, pad: int) -> None:
    """Guard .250 and reach .313 made .563 in version 1; the pad had five steps up to version 2."""
    asked = before(1, pad, "01234").questions(two)
    assert "must reach 0.313 in" in asked["q1"].ask()
    assert f"{asked['q1'].main.rounded:.3f}" == "0.563"
    assert asked["q2"].answer == "abcde"
    assert asked["q1"].drawing() is not None


def test_a_cap_screw_of_before_is_asked_and_drawn_as_before() -> None:
    """Plate .813, bore .525 and reach .625 made .913 in version 1, whatever the box holds."""
    old = all_types()["cap-screw-length"].earlier[1]
    sizes = {"thickness": 0.813 * INCH, "depth": 0.525 * INCH, "engagement": 0.625 * INCH}
    question = old(size="1/2", **sizes)
    assert f"{question.main.rounded:.3f}" == "0.913"
    assert "reach into the frame 0.625 in" in question.drawing().text


def test_a_form_of_today_spots_the_slope(two: Sheet) -> None:
    """Version 3 of the pad has the spot as its second step of six."""
    question = before(1, 3, "012345").questions(two)["q2"]
    assert question.answer == "abcdef"
    assert "spot drill" in question.main.steps[1]


@pytest.mark.parametrize("version", [1, 2])
def test_a_speed_step_of_before_is_typed(version: int) -> None:
    """Wanted 657 under a cap of 300 on a mill with 80, 135, 210, 325 made 210, as a number."""
    old = all_types()["speed-step"].earlier[version]
    steps = "80, 135, 210, 325, 550, 910, 1500, 2720"
    question = old(machine="knee mill", steps=steps, wanted=657.0, limit=300.0)
    assert question.main.rounded == 210
    assert "Answer in rev/min" in question.ask()


def test_a_first_cure_of_before_is_one_of_five() -> None:
    """Version 1 had one cure among four faults: slow down."""
    old = all_types()["quieter-cut"].earlier[1]
    order = "faster,push,slower,flutes,lighter"
    question = old(flutes=6, machine="knee mill", order=order, speed=910.0)
    assert question.main.right == "slower"
    assert question.ask().count(") ") == 5


def test_what_is_drawn_today_is_of_today() -> None:
    """An earlier version is kept for marking alone: no sheet draws it."""
    for kind in all_types().values():
        assert all(before < kind.version for before in kind.earlier)
        assert all(old.id == kind.id and old is not kind for old in kind.earlier.values())


def test_a_paper_of_before_is_marked_right(
    course_folder: Path, two: Sheet, handed_in: Path
) -> None:
    """Answers that were right when the paper went out keep their points, by the whole way."""
    hand_out(course_folder, two, ("L01",))
    given = forms(course_folder)
    given.sheets["two"]["L01"] = [before(1, 2, "10234")]
    answers = {"q1": Answer(parts=(".563 in",)), "q2": Answer(parts=("bacde",))}
    AnswerFile(learner="L01", sheet="two", form=1, answers=answers).save(handed_in)
    assert [paper.points for paper in mark(given, two, handed_in)] == [pytest.approx(2)]


SHEET = 'format = 1\ntitle = "Three"\nmode = "{mode}"\n'
ASKS = '[[questions]]\nid = "{name}"\ntype = "{kind}"\npoints = {points}\n'


def sheet_of(folder: Path, *asked: tuple[str, str, int], mode: str = "graded") -> Sheet:
    """Write the sheet "three" with these questions, and read it."""
    path = folder / "sheets" / "three.toml"
    path.parent.mkdir(exist_ok=True)
    texts = [ASKS.format(name=name, kind=kind, points=points) for name, kind, points in asked]
    path.write_text(SHEET.format(mode=mode) + "".join(texts), encoding="utf-8")
    return sheets.read(path)


BEFORE = (("q1", "spotface-touch", 2), ("q2", "seat-depth", 1), ("q3", "bore-depth", 1))
AFTER = (("q1", "spotface-depth", 3), ("q2", "seat-depth", 1), ("q4", "bore-and-floor", 2))


@pytest.mark.parametrize("mode", ["graded", "practice"])
def test_a_form_keeps_its_questions_when_their_types_go(
    tmp_path: Path, course_folder: Path, handed_in: Path, mode: str
) -> None:
    """One type changed under its id, one question went, one came: the form asks what it asked."""
    (given,) = hand_out(course_folder, sheet_of(tmp_path, *BEFORE, mode=mode), ("L01",))
    after = sheet_of(tmp_path, *AFTER, mode=mode)
    place = tmp_path / "three.given.json"
    place.write_text(given.given.text(), encoding="utf-8")
    mine = read_given(place)
    page = Desk(mine.asked(after), mine, None)
    assert [item.id for item in page.plan.items] == ["q1", "q2", "q3"]
    assert {name: page.question(name) for name in given.questions} == given.questions
    again = hand_out(course_folder, after, ("L01",))[0]
    assert again.questions == given.questions
    assert again.given.text() == given.given.text()
    file = given.given.empty
    for name, question in given.questions.items():
        file = file.changed(name, parts=(right_answer(question.main),))
    file.sealed(given.given.secret).save(handed_in)
    marked = mark_kept(course_folder, after, handed_in, day="2026-03-02").marked
    assert [(one.points, one.doubt) for one in marked] == [(4.0, "")]
    head = f"{given.questions['q3'].height / INCH:.3f}"  # type: ignore[attr-defined]
    assert reasons(forms(course_folder), after, "L01", "q3", head)
    rows = "learner,question,answer\nL01,q3,.2\n"
    (tmp_path / "paper.csv").write_text(rows, encoding="utf-8")
    (paper,) = typed_back.read(tmp_path / "paper.csv", after, forms(course_folder))
    assert paper.file is not None
    assert paper.file.of("q3").parts == (".2",)


def test_a_sheet_that_names_a_type_of_before_is_asked_as_ever(tmp_path: Path) -> None:
    """A workbook laid out before keeps its sheets; the types that no sheet asks any more draw."""
    drawn = sheet_of(tmp_path, *BEFORE).draw(b"seed")
    assert [question.id for question in drawn.values()] == [kind for _, kind, _ in BEFORE]
    assert not all_types().keys() & retired_types().keys()


@pytest.mark.parametrize(
    "types",
    [{"q1": "spotface-touch"}, {"q1": 7, "q2": "seat-depth"}, {"q1": "../up", "q2": "x"}, "none"],
)
def test_types_that_are_none_are_refused(tmp_path: Path, types: object) -> None:
    """Each question that has sizes has a type, which is a word."""
    mine = {"q1": {}, "q2": {}}
    content = {
        "format": 3, "learner": "L01", "sheet": "three", "form": 1, "mode": "graded",
        "version": "1", "form_id": "K7QM-4XRD", "secret": "00" * 32, "sizes": mine,
        "versions": {"q1": 1, "q2": 1}, "types": types,
    }  # fmt: skip
    place = tmp_path / "three.given.json"
    place.write_text(json.dumps(content), encoding="utf-8")
    with pytest.raises(SeatworkError, match="not as it was handed out"):
        read_given(place)
