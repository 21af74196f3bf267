"""What was handed out before a question changed is marked by what it asked then."""

import json
from pathlib import Path

import pytest
from seatwork.marking import Answer, AnswerFile, Sheet, mark, sheets
from seatwork.marking.handed import HandedOut
from seatwork.quantities import INCH
from seatwork.questions import all_types
from seatwork.record import forms, hand_out

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
