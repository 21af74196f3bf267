"""Whole writes, and one writer at a time."""

import errno
import os
import stat
import subprocess
import sys
from pathlib import Path

import pytest
from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.files import lock, refusal, write

HOLD = """
import sys, time
from pathlib import Path
from seatwork.files import lock
with lock(Path(sys.argv[1])):
    print("held", flush=True)
    time.sleep(float(sys.argv[2]))
"""


def modes(path: Path) -> int:
    """Return the permissions of a file or folder."""
    return stat.S_IMODE(path.stat().st_mode)


def test_a_file_is_whole_and_keeps_its_backup(tmp_path: Path) -> None:
    """The new content stands there, the one before beside it, and nothing else."""
    path = tmp_path / "made" / "marks.csv"
    write(path, "one")
    write(path, "two", backup=True)
    write(path, "two", backup=True)
    assert path.read_text(encoding="utf-8") == "two"
    assert sorted(one.name for one in path.parent.iterdir()) == ["marks.csv", "marks.csv.bak"]
    assert path.with_name("marks.csv.bak").read_text(encoding="utf-8") == "one"


@pytest.mark.skipif(os.name != "posix", reason="permissions of this kind are POSIX")
def test_private_files_are_for_their_owner_alone(tmp_path: Path) -> None:
    """0600 in a folder of 0700, also where it was open before, and so is its backup."""
    path = tmp_path / "course" / "key"
    write(path, "one", mode=files.PRIVATE)
    path.chmod(0o644)
    write(path, "two", mode=files.PRIVATE, backup=True)
    assert modes(path) == modes(path.with_name("key.bak")) == 0o600
    assert modes(path.parent) == 0o700


def test_a_full_disk_leaves_the_old_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The sentence says so, the old file is whole, and nothing is left beside it."""
    path = tmp_path / "marks.csv"
    write(path, "one")

    def full(_handle: int) -> None:
        raise OSError(errno.ENOSPC, "full")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(SeatworkError, match="the disk is full; free some space"):
        write(path, "two")
    assert [one.name for one in tmp_path.iterdir()] == ["marks.csv"]
    assert path.read_text(encoding="utf-8") == "one"


@pytest.mark.parametrize("place", ["folder", "file/below", "x" * 300, "a\0b"])
def test_a_wrong_place_is_one_sentence(tmp_path: Path, place: str) -> None:
    """A folder, a file for a folder, a name too long and no name at all are refused."""
    (tmp_path / "folder").mkdir()
    (tmp_path / "file").touch()
    with pytest.raises(SeatworkError):
        write(tmp_path / place, "one")


def test_the_system_is_told_in_plain_words() -> None:
    """A number of the system that is not known reads as a lack of right."""
    assert "cannot be opened or written here" in str(refusal("a.csv", OSError(errno.EACCES, "no")))
    assert "leads back to itself" in str(refusal("a.csv", OSError(errno.ELOOP, "loop")))


@pytest.mark.slow
def test_a_second_writer_waits_and_is_told(tmp_path: Path) -> None:
    """While another process holds the folder, one sentence says so; then it is free."""
    holder = subprocess.Popen(
        [sys.executable, "-c", HOLD, str(tmp_path), "30"], stdout=subprocess.PIPE, text=True
    )
    assert holder.stdout is not None
    assert holder.stdout.readline() == "held\n"
    told = f"another command is writing there .process {holder.pid}.; wait until it is done"
    with pytest.raises(SeatworkError, match=told), lock(tmp_path, wait=0.2):
        pytest.fail("two writers at once")
    holder.kill()
    holder.wait()
    with lock(tmp_path, wait=5):
        assert (tmp_path / files.LOCK).is_file()


def test_one_process_takes_a_lock_again(tmp_path: Path) -> None:
    """A command that calls another within itself does not wait for itself."""
    with lock(tmp_path, wait=0.2), lock(tmp_path, wait=0.2):
        pass


def test_a_folder_that_is_not_there_is_not_made(tmp_path: Path) -> None:
    """A mistyped folder is told, and no folder stands there after."""
    with pytest.raises(SeatworkError, match="there is no such"), lock(tmp_path / "cuorse"):
        pass
    assert list(tmp_path.iterdir()) == []
