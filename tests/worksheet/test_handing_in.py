"""Handing in: the answer file is in the named folder whole, or not there and that is said."""

import os
import stat
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.marking import answers, sheets
from seatwork.record import hand_out, mark
from seatwork.worksheet import Desk, sheet

NAME = "L07-cones-1.json"


@pytest.fixture
def box(tmp_path: Path) -> Path:
    """Give the folder that answers are handed in to."""
    (tmp_path / "box").mkdir()
    return tmp_path / "box"


@pytest.fixture
def desk(tmp_path: Path, box: Path, monkeypatch: pytest.MonkeyPatch) -> Desk:
    """Give L07's graded sheet in a workbook that names the folder."""
    home = tmp_path / "workbook"
    (home / "exercises").mkdir(parents=True)
    (home / "workbook.toml").write_text("format = 1\nhand_in = '../box'\n", encoding="utf-8")
    given = tmp_path / "given"
    cones, day = sheets.load("cones"), "2026-09-14"
    hand_out(tmp_path / "course", cones, ("L07",), mode="graded", target=given, day=day)
    (home / "cones.given.json").write_bytes((given / "L07" / "cones.given.json").read_bytes())
    monkeypatch.chdir(home / "exercises")
    return sheet("cones")


def test_what_is_handed_in_can_be_marked(desk: Desk, box: Path) -> None:
    """The file is there, the same as in the workbook, for its owner and the folder's group."""
    desk.ask("c1", answer=".2 in")
    assert repr(desk.hand_in()).startswith(f"Handed in: {NAME}.")
    handed = box / NAME
    assert answers.read(handed).of("c1").parts == (".2 in",)
    assert [path.name for path in box.iterdir()] == [NAME]
    if os.name == "posix":
        assert stat.S_IMODE(handed.stat().st_mode) & 0o007 == 0
    done = mark(box.parent / "course", sheets.load("cones"), box, day="2026-09-21")
    assert done.new == 1


def test_the_button_says_what_happened_and_what_changed(desk: Desk, box: Path) -> None:
    """Not handed in, handed in, changed since: each is said; a change is seen at once."""
    form = desk.finish()
    assert "0 of 3 answered" in repr(form)
    assert "Not handed in yet." in form.said.value
    form.hand_in()
    assert "nothing is answered" in form.said.value
    assert not list(box.iterdir())
    desk.keep("c1", [".2 in"])
    assert "1 of 3 answered" in form.answered.value
    form.hand_in()
    assert f"Handed in: {NAME}." in form.said.value
    assert "Nothing changed since." in desk.finish().said.value
    form = desk.finish()
    desk.keep("c1", [".3 in"])
    assert "changed since you handed in" in form.said.value
    form.hand_in()
    assert answers.read(box / NAME).of("c1").parts == (".3 in",)
    assert answers.parse((box / f"{NAME}.bak").read_bytes(), NAME).of("c1").parts == (".2 in",)


def test_a_folder_that_is_not_there_is_not_made(desk: Desk, box: Path) -> None:
    """A share that is away is told; nothing is written in its place, and the answers stay."""
    desk.ask("c1", answer=".2 in")
    box.rmdir()
    with pytest.raises(SeatworkError, match=r"nothing was handed in, since that folder is not"):
        desk.hand_in()
    assert not box.exists()
    assert sheet("cones").answers.of("c1").parts == (".2 in",)


@pytest.mark.skipif(
    not hasattr(os, "geteuid") or os.geteuid() == 0, reason="the superuser may write anywhere"
)
def test_a_folder_without_the_right_to_write_is_told(desk: Desk, box: Path) -> None:
    """What the system refuses is said, and nothing half is left."""
    desk.ask("c1", answer=".2 in")
    box.chmod(0o500)
    with pytest.raises(SeatworkError, match="nothing was handed in, since it cannot be"):
        desk.hand_in()
    box.chmod(0o700)
    assert not list(box.iterdir())


def test_a_full_disk_is_told(desk: Desk, box: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The earlier hand-in stays whole, and the sentence says that nothing was handed in."""
    desk.ask("c1", answer=".2 in")
    desk.hand_in()
    desk.keep("c1", [".3 in"])

    def full(_handle: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(SeatworkError, match="nothing was handed in, since the disk is full"):
        desk.hand_in()
    assert answers.read(box / NAME).of("c1").parts == (".2 in",)
    assert [path.name for path in box.iterdir()] == [NAME]


def test_a_damaged_answer_file_is_not_handed_in(desk: Desk, box: Path) -> None:
    """What cannot be marked is told to the learner, not found out by the instructor."""
    desk.ask("c1", answer=".2 in")
    assert desk.kept.folder is not None
    (desk.kept.folder / NAME).write_bytes(b'{"format": 1')
    with pytest.raises(SeatworkError, match="damaged"):
        desk.hand_in()
    assert not list(box.iterdir())


def test_everybodys_practice_numbers_are_not_handed_in(desk: Desk, box: Path) -> None:
    """Without a hand-out there is no button, and the call says why."""
    practice = sheet("flushness")
    practice.ask("f1", answer="1 in")
    with pytest.raises(SeatworkError, match="no folder is named to hand it in"):
        practice.hand_in()
    assert not list(box.iterdir())


@pytest.mark.parametrize("named", ["3", "''", "[]", "true", '"\\u0000"'])
def test_what_names_no_folder_is_refused(desk: Desk, named: str) -> None:
    """The line of the workbook is told, with one that would do."""
    assert desk.kept.folder is not None
    marker = desk.kept.folder.parent / "workbook.toml"
    marker.write_text(f"format = 1\nhand_in = {named}\n", encoding="utf-8")
    with pytest.raises(SeatworkError, match="names no folder"):
        desk.finish()
