"""The workbook folder: what it gets, and that a reader's work is never overwritten."""

import errno
import json
import os
import sys
import tomllib
from pathlib import Path

import pytest
from seatwork import shop
from seatwork.errors import SeatworkError
from seatwork.opening import deliver, workbook
from seatwork.opening.delivered import RECORD
from seatwork.shop.folder import hand_in_folder, language_named
from seatwork.shop.marker import name_in_marker

LESSON = "notebooks/02_angle_standards.ipynb"
RULES = "shop/house_rules.toml"


def lesson(source: str, output: str = "2", count: int = 1) -> bytes:
    """Write a notebook of one code cell."""
    result = {
        "output_type": "execute_result",
        "data": {"text/plain": [output]},
        "execution_count": count,
        "metadata": {},
    }
    cell = {
        "cell_type": "code",
        "id": "a",
        "source": [source],
        "execution_count": count,
        "metadata": {},
        "outputs": [result],
    }
    document = {"cells": [cell], "metadata": {}, "nbformat": 4, "nbformat_minor": 5}
    return json.dumps(document).encode()


@pytest.fixture
def given(monkeypatch: pytest.MonkeyPatch) -> dict[str, bytes]:
    """Deliver a small set of files; a test changes it as a new version of seatwork would."""
    files = {LESSON: lesson("1 + 1"), RULES: b"format = 1\n"}
    monkeypatch.setattr(workbook, "originals", files.items)
    return files


def test_a_new_workbook_has_its_folders_marker_and_files(given, tmp_path: Path) -> None:
    """A new folder gets the marker, five folders of its own, and every file."""
    done = deliver(tmp_path / "new")
    marker = tomllib.loads((done.folder / "workbook.toml").read_text())
    assert marker == {"format": 1}
    folders = {path.name for path in done.folder.iterdir() if path.is_dir()}
    assert folders == {"notebooks", "exercises", "shop", "questions", "answers", ".seatwork"}
    assert set(done.added) == set(given)
    assert {place: (done.folder / place).read_bytes() for place in given} == given


def test_the_shop_finds_the_workbook_from_within(given, tmp_path: Path) -> None:
    """``shop.find`` walks up from a notebook's folder to the marker that was written."""
    done = deliver(tmp_path / "Åsa's cider mill, class 2")
    assert shop.find(done.folder / "notebooks") == done.folder.resolve()


def test_opening_again_writes_nothing(given, tmp_path: Path) -> None:
    """An unchanged workbook stays as it is, to the minute of every file."""
    first = deliver(tmp_path / "w")
    before = {path: path.stat().st_mtime_ns for path in first.folder.rglob("*")}
    again = deliver(tmp_path / "w")
    assert (again.added, again.updated, again.left_alone) == ((), (), ())
    assert before == {path: path.stat().st_mtime_ns for path in first.folder.rglob("*")}


def test_an_untouched_file_is_brought_up_to_date(given, tmp_path: Path) -> None:
    """A file nobody changed takes the new version."""
    deliver(tmp_path / "w")
    given[LESSON] = lesson("1 + 2", "3")
    done = deliver(tmp_path / "w")
    assert done.updated == (LESSON,)
    assert (tmp_path / "w" / LESSON).read_bytes() == given[LESSON]


def test_running_a_lesson_does_not_count_as_a_change(given, tmp_path: Path) -> None:
    """Outputs and counts may differ: a lesson that was only run is brought up to date."""
    deliver(tmp_path / "w")
    (tmp_path / "w" / LESSON).write_bytes(lesson("1 + 1", output="two", count=7))
    given[LESSON] = lesson("1 + 2", "3")
    assert deliver(tmp_path / "w").updated == (LESSON,)


def test_a_lesson_that_was_run_keeps_its_outputs(given, tmp_path: Path) -> None:
    """Without a new version the reader's own outputs stay."""
    deliver(tmp_path / "w")
    own = lesson("1 + 1", output="two", count=7)
    (tmp_path / "w" / LESSON).write_bytes(own)
    done = deliver(tmp_path / "w")
    assert (done.updated, done.left_alone) == ((), ())
    assert (tmp_path / "w" / LESSON).read_bytes() == own


@pytest.mark.parametrize(
    ("place", "own"), [(LESSON, lesson("my own note")), (RULES, b"format = 1\n[speeds]\n")]
)
def test_a_changed_file_is_never_overwritten(given, tmp_path: Path, place, own) -> None:
    """What the reader changed stays, and is named as long as a newer version waits."""
    deliver(tmp_path / "w")
    (tmp_path / "w" / place).write_bytes(own)
    given[LESSON], given[RULES] = lesson("new"), b"format = 1\n# new\n"
    for _ in range(3):
        done = deliver(tmp_path / "w")
        assert done.left_alone == (place,)
        assert (tmp_path / "w" / place).read_bytes() == own


def test_a_changed_file_without_a_newer_version_is_no_news(given, tmp_path: Path) -> None:
    """A house rule that was edited is not mentioned at every start."""
    deliver(tmp_path / "w")
    (tmp_path / "w" / RULES).write_bytes(b"format = 1\n[speeds]\n")
    assert deliver(tmp_path / "w").left_alone == ()


def test_a_file_of_the_reader_in_the_place_of_a_new_one_stays(given, tmp_path: Path) -> None:
    """A notebook of that name that was never delivered belongs to the reader."""
    deliver(tmp_path / "w")
    given["notebooks/my_own.ipynb"] = lesson("delivered")
    (tmp_path / "w" / "notebooks" / "my_own.ipynb").write_bytes(lesson("mine"))
    assert deliver(tmp_path / "w").left_alone == ("notebooks/my_own.ipynb",)


def test_a_removed_file_comes_back(given, tmp_path: Path) -> None:
    """A lesson that was deleted is delivered again."""
    deliver(tmp_path / "w")
    (tmp_path / "w" / LESSON).unlink()
    assert deliver(tmp_path / "w").added == (LESSON,)


def test_line_ends_of_another_system_are_no_change(given, tmp_path: Path) -> None:
    """An editor that writes CRLF does not make a file the reader's own."""
    deliver(tmp_path / "w")
    (tmp_path / "w" / RULES).write_bytes(b"format = 1\r\n")
    given[RULES] = b"format = 1\n# new\n"
    assert deliver(tmp_path / "w").updated == (RULES,)


@pytest.mark.parametrize("spoiled", [b"", b"{", b"[]", b"\xff"])
def test_a_spoiled_record_loses_nothing(given, tmp_path: Path, spoiled: bytes) -> None:
    """Without a record every file that differs counts as the reader's."""
    deliver(tmp_path / "w")
    (tmp_path / "w" / RECORD).write_bytes(spoiled)
    given[LESSON] = lesson("new")
    assert deliver(tmp_path / "w").left_alone == (LESSON,)


def test_a_notebook_that_is_none_any_more_is_left_alone(given, tmp_path: Path) -> None:
    """A damaged notebook is compared by its bytes and stays."""
    deliver(tmp_path / "w")
    (tmp_path / "w" / LESSON).write_bytes(b"<<<<<<< conflict")
    given[LESSON] = lesson("new")
    assert deliver(tmp_path / "w").left_alone == (LESSON,)


def test_a_folder_with_other_things_is_refused(given, tmp_path: Path) -> None:
    """Nothing is poured into a folder that is in use for something else."""
    (tmp_path / "holiday.txt").touch()
    with pytest.raises(SeatworkError, match="holds other things already; name a new or an empty"):
        deliver(tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == ["holiday.txt"]


def test_a_lost_marker_is_written_again(given, tmp_path: Path) -> None:
    """A workbook whose marker was deleted is known by its record."""
    deliver(tmp_path / "w")
    (tmp_path / "w" / "workbook.toml").unlink()
    deliver(tmp_path / "w")
    assert (tmp_path / "w" / "workbook.toml").is_file()


@pytest.mark.parametrize("text", ["format = 2\n", "", "format = 'one'\n"])
def test_a_workbook_of_another_format_is_refused(given, tmp_path: Path, text: str) -> None:
    """A newer or unreadable marker is refused in a sentence, and nothing is written."""
    (tmp_path / "workbook.toml").write_text(text)
    with pytest.raises(SeatworkError, match="this version knows format 1"):
        deliver(tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == ["workbook.toml"]


def test_a_file_in_the_place_of_the_folder_is_told(given, tmp_path: Path) -> None:
    """A file of the folder's name is named in a sentence, and stays."""
    (tmp_path / "w").write_text("mine")
    with pytest.raises(SeatworkError, match="a file stands where a folder is needed"):
        deliver(tmp_path / "w")
    assert (tmp_path / "w").read_text() == "mine"


@pytest.mark.parametrize(
    ("number", "sentence"),
    [
        (errno.ENOSPC, "the disk is full; free some space"),
        (errno.EDQUOT, "your share of the disk is full"),
        (errno.EACCES, "it cannot be opened or written here"),
        (errno.EROFS, "nothing can be written on that disk"),
    ],
)
def test_a_disk_that_refuses_is_told_and_loses_nothing(
    given, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, number: int, sentence: str
) -> None:
    """When writing fails the old file is whole, no fragment stays, and a later try completes."""
    deliver(tmp_path / "w")
    old = given[LESSON]
    given[LESSON] = lesson("new")

    before = sorted((tmp_path / "w").rglob("*"))

    def refuse(handle: int) -> None:
        raise OSError(number, os.strerror(number))

    with monkeypatch.context() as full:
        full.setattr(os, "fsync", refuse)
        with pytest.raises(SeatworkError, match=sentence):
            deliver(tmp_path / "w")
    assert (tmp_path / "w" / LESSON).read_bytes() == old
    assert sorted((tmp_path / "w").rglob("*")) == before
    assert deliver(tmp_path / "w").updated == (LESSON,)


@pytest.mark.skipif(sys.platform != "linux", reason="needs the system's own read-only folder")
def test_an_unwritable_folder_is_told_in_a_sentence(given) -> None:
    """A place where nobody may write, root included, gives one sentence."""
    with pytest.raises(SeatworkError, match=r"/proc/seatwork-workbook: .*name "):
        deliver(Path("/proc/seatwork-workbook"))


def test_the_folder_for_handing_in_is_written_into_the_marker(given, tmp_path: Path) -> None:
    """It is read back as it was named; another name takes its place, other lines stay."""
    done = deliver(tmp_path / "w")
    marker = done.folder / "workbook.toml"
    for named in ("/srv/in/l07", r"\\server\share \"Räume\"", str(tmp_path / "in")):
        name_in_marker(done.folder, "hand_in", named)
        found = tomllib.loads(marker.read_text(encoding="utf-8"))
        assert found == {"format": 1, "hand_in": named}
    assert "Keep this file" in marker.read_text(encoding="utf-8")
    assert language_named(done.folder) == "en"
    name_in_marker(done.folder, "language", "es")
    deliver(tmp_path / "w")
    assert hand_in_folder(done.folder) == tmp_path / "in"
    assert language_named(done.folder) == "es"
