"""The term of twelve, rehearsed by one command and held against the design of the record."""

from pathlib import Path

import pytest
import rehearse_term as rehearsal
from seatwork.record import open_record, picture

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Give the folder of the term."""
    return tmp_path_factory.mktemp("term")


@pytest.fixture(scope="module")
def gone_through(home: Path) -> list[tuple[rehearsal.Step, str]]:
    """Give every command with what it said; the record stays as small as the design asks."""
    found, _, size = rehearsal.rehearse(home)
    assert size <= rehearsal.BYTES
    return found


def test_each_command_says_what_became_of_it(gone_through) -> None:
    """Where words differ from the design's, the step says why."""
    lacks = {
        (step.words, words)
        for step, told in gone_through
        for words in step.seen
        if words not in told
    }
    assert lacks == set()


def test_the_class_stands_as_designed(home: Path, gone_through) -> None:
    """Cell by cell, but for L10, who was erased at the end; each other word has its reason."""
    record = open_record(home / "course")
    lines = {line.learner: line.cells for line in picture(record, "2026-10-15").lines}
    record.close()
    assert "L10" not in lines
    seen = {
        place: lines[place[0]].get(place[1], "") for place in rehearsal.PICTURE if place[0] != "L10"
    }
    assert seen == {place: said for place, (_, said, _) in rehearsal.PICTURE.items()
                    if place[0] != "L10"}  # fmt: skip
    assert all(why or designed == said for designed, said, why in rehearsal.PICTURE.values())


def test_no_name_is_in_the_course_and_names_are_on_paper(home: Path, gone_through) -> None:
    """After class, report and check with names, no byte of the course holds one."""
    for path in (home / "course").rglob("*"):
        if path.is_file():
            content = path.read_bytes()
            assert not any(name.encode() in content for name in rehearsal.NAMES.values()), path
    assert len(list((home / "out").glob("*-report.pdf"))) == 12
