"""Form ids and seals: what a paper that does not fit is told as, and what is marked anyway."""

import hashlib
import hmac
import json
from dataclasses import replace
from pathlib import Path

import pytest
from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import (
    AnswerFile,
    Handout,
    Marked,
    Marker,
    examples,
    form_id,
    form_secret,
    given,
    seal_of,
    typed_back,
)
from seatwork.marking.answers import parse
from seatwork.marking.marker import CHANGED, NO_SEAL, UNKNOWN_ID
from seatwork.marking.sealing import SIGNS
from seatwork.marking.submissions import Submission
from seatwork.record import forms, hand_out
from seatwork.worksheet.desk import Desk

KEY = examples.KEY


@pytest.fixture
def marked(course_folder, sheet, handouts):
    """Give a function that marks one paper of the class."""

    def one(file: AnswerFile, came: str = "screen") -> Marked:
        marker = Marker(sheet, forms(course_folder), key=KEY)
        return marker.mark([Submission(file.name, file, came=came)])[0]

    return one


def saved(one: Handout, file: AnswerFile) -> AnswerFile:
    """Return a paper as the form's own page saves it."""
    return replace(file, form_id=one.given.form_id).sealed(one.given.secret)


def test_a_seal_is_a_keyed_hash_that_any_program_can_work_out() -> None:
    """HMAC with SHA-256 over JSON with sorted keys: worked out here with the standard library."""
    secret = form_secret(KEY, "K7QM-4XRD")
    assert len(secret) == 32
    said = {"b": "⌀", "a": [1, True]}
    text = '{"a":[1,true],"b":"⌀"}'
    assert seal_of(said, secret) == hmac.new(secret, text.encode(), hashlib.sha256).hexdigest()


def test_a_form_id_changes_with_all_it_is_made_of() -> None:
    """Key, learner, sheet, number and sizes give another id; no sign is taken for another."""
    sizes = {"c1": {"diameter": 9.1}}
    mine = form_id(KEY, "L07", "cones", 1, sizes)
    others = [
        form_id(bytes(32), "L07", "cones", 1, sizes),
        form_id(KEY, "L08", "cones", 1, sizes),
        form_id(KEY, "L07", "angles", 1, sizes),
        form_id(KEY, "L07", "cones", 2, sizes),
        form_id(KEY, "L07", "cones", 1, {"c1": {"diameter": 9.2}}),
    ]
    assert len({mine, *others}) == 6
    assert not set("0O1I2Z5S") & set(SIGNS)


def test_a_page_seals_what_it_saves(tmp_path: Path, sheet, handouts, marked) -> None:
    """What is saved after each answer has a seal that fits, and is marked without a word."""
    desk = Desk(sheet, handouts["L02"].given, tmp_path)
    for number in (1, 2):
        desk.ask("q1", answer=f".{number}00 in")
        found = parse((tmp_path / "L02-small-1.json").read_bytes(), "it")
        assert found.has_seal(handouts["L02"].given.secret)
        one = marked(found)
        assert (one.doubt, one.question, one.points) == ("", "", 0)


def test_what_does_not_fit_waits_for_a_person_and_is_marked(handouts, right_file, marked) -> None:
    """Changed after saving, forged for another, with another's id or none of the course's."""
    five, seven = handouts["L02"], handouts["L03"]
    honest = saved(five, right_file("L02"))
    changed = replace(honest, answers={**honest.answers, "q1": honest.of("q2")})
    whose = "its form belongs to L02, form 1 of small"
    forged = right_file("L03")
    for file, doubt in (
        (changed, CHANGED),
        (saved(five, forged), whose),
        (replace(forged, form_id=seven.given.form_id).sealed(five.given.secret), CHANGED),
        (replace(honest, form_id="AAAA-AAAA").sealed(bytes(32)), UNKNOWN_ID),
        (replace(honest, seal="ü"), CHANGED),
    ):
        one = marked(file)
        assert one.doubt == doubt
        assert one.points is None
        assert len(one.scored) == 3
    assert marked(honest).points == 7


def test_an_old_form_renumbered_as_the_re_test_is_told(
    course_folder: Path, sheet, handouts, right_file, marked
) -> None:
    """The id says the form that it was, whatever number stands in the file."""
    hand_out(course_folder, sheet, ["L02"], sitting=2)
    file = saved(handouts["L02"], replace(right_file("L02"), form=2))
    assert marked(file).doubt == "its form belongs to L02, form 1 of small"


def test_a_paper_without_a_seal_waits_for_a_person_and_is_marked(right_file, marked) -> None:
    """Each page seals what it saves; paper typed by the instructor needs no seal."""
    one = marked(right_file("L02"))
    assert (one.doubt, one.points, len(one.scored)) == (NO_SEAL, None, 3)
    on_paper = marked(right_file("L02"), came="paper")
    assert (on_paper.doubt, on_paper.question, on_paper.points) == ("", "", 7)


def test_where_pages_taken_home_did_not_seal_it_is_asked_about_and_counts(
    course_folder: Path, sheet, handouts, right_file
) -> None:
    """Forms handed out before all pages sealed: one without a seal counts, a wrong one waits."""
    before = forms(course_folder)
    assert all(one.sealed for own in before.sheets["small"].values() for one in own)
    for own in before.sheets["small"].values():
        own[:] = [replace(one, sealed=False) for one in own]
    marker, file = Marker(sheet, before, key=KEY), right_file("L02")
    changed = replace(saved(handouts["L02"], file), seal="0" * 64)
    one, two = marker.mark([Submission(file.name, file), Submission(file.name, changed)])
    assert (one.question, one.doubt, one.points) == (NO_SEAL, "", 7)
    assert (two.doubt, two.points) == (CHANGED, None)


def test_a_form_without_an_id_marks_as_before(
    course_folder: Path, sheet, handouts, right_file
) -> None:
    """Forms of a time without ids: no seal is missed, and the given file is as it was."""
    before = forms(course_folder)
    learners = before.sheets["small"]
    before.sheets["small"] = {
        code: [replace(one, form_id="") for one in own] for code, own in learners.items()
    }
    file = right_file("L02")
    one = Marker(sheet, before, key=KEY).mark([Submission(file.name, file)])[0]
    assert (one.question, one.doubt, one.points) == ("", "", 7)
    assert given.Given(
        learner="L02", sheet="small", form=1, mode="graded", seed=bytes(32)
    ).text().startswith('{\n "format": 2,')  # fmt: skip


def test_a_practice_form_keeps_its_seed(tmp_path: Path, course_folder: Path, sheet) -> None:
    """New numbers are drawn as often as they are asked for; it has an id and a secret, too."""
    (one,) = hand_out(course_folder, sheet, ["L01"], mode="practice", target=tmp_path / "to")
    mine = given.read(tmp_path / "to" / "L01" / "small.given.json")
    assert mine == one.given
    assert mine.question(sheet, "q1") == one.questions["q1"]
    assert mine.question(sheet, "q1", 2) != one.questions["q1"]
    assert mine.secret == form_secret(one_key(course_folder), mine.form_id)


def one_key(folder: Path) -> bytes:
    """Read the course key as it stands in its file."""
    return bytes.fromhex((folder / "course.key").read_text(encoding="ascii"))


@pytest.mark.parametrize(
    "change",
    [
        {"secret": "00"},
        {"secret": None},
        {"form_id": ""},
        {"form_id": "<b>"},
        {"sizes": {}},
        {"sizes": {"q1": 3}},
        {"versions": {"q1": "1"}},
        {"sheet_seed": "00" * 32},
        {"format": True},
    ],
)
def test_a_given_file_that_was_changed_is_told(tmp_path: Path, handouts, change) -> None:
    """One sentence for whatever is not as it was handed out."""
    whole = json.loads(handouts["L02"].given.text()) | change
    files.write(tmp_path / "given.json", json.dumps(whole))
    with pytest.raises(SeatworkError, match="not as it was handed out"):
        given.read(tmp_path / "given.json")


def test_sizes_that_are_none_of_a_question_are_told(sheet, handouts) -> None:
    """A size that is missing, and a question that the form does not ask."""
    mine = handouts["L02"].given
    with pytest.raises(SeatworkError, match="small, q1: it is not as it was handed out"):
        replace(mine, sizes={"q1": {}}).question(sheet, "q1")
    with pytest.raises(SeatworkError, match="without this question"):
        replace(mine, sizes={"q1": {}}).question(sheet, "q2")


def test_the_id_on_a_paper_may_be_typed_for_its_number(
    tmp_path: Path, course_folder: Path, sheet, handouts
) -> None:
    """As printed, in small letters too; another learner's id is told."""
    hand_out(course_folder, sheet, ["L02"], sitting=2)
    printed = handouts["L02"].given.form_id
    path = tmp_path / "typed.csv"
    path.write_text(
        f"learner,question,answer,form\nL02,q1,.1,{printed.lower()}\n", encoding="utf-8"
    )
    (paper,) = typed_back.read(path, sheet, forms(course_folder))
    assert paper.file is not None
    assert paper.file.form == 1
    path.write_text(f"learner,question,answer,form\nL03,q1,.1,{printed}\n", encoding="utf-8")
    with pytest.raises(SeatworkError, match="that form is L02's, small, not L03's"):
        typed_back.read(path, sheet, forms(course_folder))
