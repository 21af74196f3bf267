"""Answer files: limits before anything is used, refusals in one sentence, nothing lost."""

import contextlib
import json
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from seatwork.errors import SeatworkError
from seatwork.marking import Answer, AnswerFile
from seatwork.marking.answers import MOST_BYTES, MOST_EARLIER, parse, read, reopen

GOOD = AnswerFile(
    learner="L07",
    sheet="cones",
    form=2,
    answers={"c1": Answer(parts=(".139 in",), tries=2, hints=1, sure=True), "c3": Answer()},
)
PLAIN = json.loads(GOOD.content())


def changed(**change: object) -> bytes:
    """Write the good file with some fields changed."""
    return json.dumps({**PLAIN, **change}).encode()


def test_an_answer_file_comes_back_as_it_was() -> None:
    """Writing and reading gives the same answers."""
    assert parse(GOOD.content(), GOOD.name) == GOOD
    assert GOOD.name == "L07-cones-2.json"


@pytest.mark.parametrize(
    ("raw", "fault"),
    [
        (b"", "damaged, cut off"),
        (b"\xff\xfe{}", "UTF-8"),
        (b"[]", "no answer file"),
        (b"null", "no answer file"),
        (b" " * (MOST_BYTES + 1), "256 kB"),
        (b"[" * 200_000, "damaged, cut off"),
        (b'{"format": 1, "format": 1}', "twice"),
        (b'{"format": NaN}', "no number"),
        (b'{"format": Infinity}', "no number"),
        (b'{"format": 1e400}', "whole number"),
        (b'{"format": ' + b"9" * 5000 + b"}", "damaged, cut off"),
        (b'{"format": true}', "format"),
        (b'{"format": "1"}', "format"),
        (b'{"format": 0}', "format"),
        (changed(extra=1), "fields"),
        (changed(learner="../../etc"), "learner code"),
        (changed(learner=7), "learner code"),
        (changed(sheet="CON"), "name of a sheet"),
        (changed(sheet="a/b"), "name of a sheet"),
        (changed(form=0), "form"),
        (changed(form=True), "form"),
        (changed(answers=[]), "list of answers"),
        (changed(answers={f"q{n}": PLAIN["answers"]["c1"] for n in range(201)}), "list of answers"),
        (changed(answers={"__class__": PLAIN["answers"]["c1"]}), "proper id"),
        (changed(answers={"c1": {"parts": ["1"]}}), "fields"),
        (changed(answers={"c1": {**PLAIN["answers"]["c1"], "parts": "1"}}), "parts"),
        (changed(answers={"c1": {**PLAIN["answers"]["c1"], "parts": [1]}}), "short text"),
        (changed(answers={"c1": {**PLAIN["answers"]["c1"], "parts": ["x" * 201]}}), "short text"),
        (changed(answers={"c1": {**PLAIN["answers"]["c1"], "parts": ["1"] * 9}}), "parts"),
        (changed(answers={"c1": {**PLAIN["answers"]["c1"], "tries": -1}}), "count"),
        (changed(answers={"c1": {**PLAIN["answers"]["c1"], "attempt": 0}}), "count"),
        (changed(answers={"c1": {**PLAIN["answers"]["c1"], "sure": 1}}), "neither"),
    ],
)
def test_a_file_beyond_a_limit_is_refused(raw: bytes, fault: str) -> None:
    """Every limit has its one sentence, with the name of the file."""
    with pytest.raises(SeatworkError, match=fault) as caught:
        parse(raw, "L07-cones-2.json")
    assert "\n" not in str(caught.value)


def test_a_newer_format_is_refused_politely() -> None:
    """A file of a later version is not damaged, and says so."""
    with pytest.raises(SeatworkError, match="newer version"):
        parse(changed(format=4), "L07-cones-2.json")


@pytest.mark.slow
@given(st.binary(max_size=300))
@settings(max_examples=200)
def test_any_bytes_are_read_or_refused(raw: bytes) -> None:
    """Bytes either are an answer file or give one sentence; nothing else is raised."""
    with contextlib.suppress(SeatworkError):
        assert isinstance(parse(raw, "x.json"), AnswerFile)


def test_saving_keeps_the_state_before_as_backup(tmp_path: Path) -> None:
    """The file holds the new answers, its backup those before."""
    GOOD.save(tmp_path)
    later = GOOD.changed("c1", parts=(".140 in",))
    later.save(tmp_path)
    assert read(tmp_path / GOOD.name) == later
    assert read(tmp_path / (GOOD.name + ".bak")) == GOOD
    assert reopen(AnswerFile(learner="L07", sheet="cones", form=2), tmp_path) == later


def test_a_file_cut_short_gives_the_backup(tmp_path: Path) -> None:
    """Whatever piece of the file is left, the state before is found."""
    GOOD.save(tmp_path)
    later = GOOD.changed("c1", parts=(".140 in",))
    later.save(tmp_path)
    whole = (tmp_path / GOOD.name).read_bytes()
    empty = AnswerFile(learner="L07", sheet="cones", form=2)
    for length in range(0, len(whole) - 1, 7):
        (tmp_path / GOOD.name).write_bytes(whole[:length])
        assert reopen(empty, tmp_path) == GOOD


def test_an_unwritable_folder_gives_one_sentence(tmp_path: Path) -> None:
    """A folder that is a file is told, and nothing is lost."""
    (tmp_path / "answers").write_text("in the way", encoding="utf-8")
    with pytest.raises(SeatworkError, match="not saved"):
        GOOD.save(tmp_path / "answers")


def test_earlier_answers_are_kept_and_files_without_them_stay_as_they_were() -> None:
    """New numbers keep what was typed before; a file without such answers is still format 1."""
    file = AnswerFile(learner="L07", sheet="cones", form=1)
    plain = file.changed("c1", parts=(".2",))
    assert b'"format":1' in plain.content()
    assert b"earlier" not in plain.content()
    renewed = plain.changed("c1", **plain.of("c1").renewed()._asdict())
    assert b'"format":2' in renewed.content()
    again = parse(renewed.content(), renewed.name).of("c1")
    assert (again.attempt, again.parts, again.earlier) == (2, (), ((".2",),))


def test_only_the_last_earlier_answers_are_kept() -> None:
    """Whoever draws new numbers all evening does not fill the file."""
    answer = Answer()
    for number in range(40):
        answer = answer._replace(parts=(str(number),)).renewed()
    assert answer.attempt == 41
    assert len(answer.earlier) == MOST_EARLIER
    assert answer.earlier[-1] == ("39",)
