"""A first `open` that the disk stops midway is finished by the next one."""

import errno
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.files import writing
from seatwork.opening import deliver
from seatwork.opening.shared import signs


@pytest.mark.parametrize("written", [0, 1, 2, 30])
def test_what_a_full_disk_stopped_is_finished_later(
    written: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Whichever file found no room, the next call lays out what one call would have."""
    put, left = writing._put, [written]

    def full(path: Path, content: bytes, mode: int) -> None:
        if not left[0]:
            path.with_name(f".0{writing.UNDONE}").write_bytes(content[:3])
            raise OSError(errno.ENOSPC, "No space left on device", str(path))
        left[0] -= 1
        put(path, content, mode)

    monkeypatch.setattr(writing, "_put", full)
    with pytest.raises(SeatworkError, match="the disk is full"):
        deliver(tmp_path / "begun")
    monkeypatch.setattr(writing, "_put", put)
    deliver(tmp_path / "begun")
    deliver(tmp_path / "whole")
    assert laid_out(tmp_path / "begun") == laid_out(tmp_path / "whole")


def laid_out(folder: Path) -> dict[str, bytes]:
    """Return every file of a workbook with its content, half-written ones left aside."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in folder.rglob("*")
        if path.is_file() and path.suffix != writing.UNDONE
    }


def test_a_folder_of_others_is_still_refused(tmp_path: Path) -> None:
    """A folder that holds anything of another's is left as it is."""
    (tmp_path / "letter.txt").write_text("dear", encoding="utf-8")
    with pytest.raises(SeatworkError, match="holds other things"):
        deliver(tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == ["letter.txt"]


def test_signs_of_a_shared_folder(tmp_path: Path) -> None:
    """A name, a file left behind, another machine's disk and others' rights are each told."""
    mounts = tmp_path / "mounts"
    mounts.write_text(f"server:/x {tmp_path}/far nfs4 rw 0 0\n", encoding="utf-8")
    for name in ("My Cloud Files", "marked", "far", "open"):
        (tmp_path / name).mkdir(mode=0o700)
    (tmp_path / "marked" / ".stfolder").mkdir()
    (tmp_path / "open").chmod(0o777)
    found = {place.name: signs(place, mounts) for place in tmp_path.iterdir() if place.is_dir()}
    assert "usual name" in found["My Cloud Files"][0]
    assert "holds .stfolder" in found["marked"][0]
    assert found["far"] == ["it lies on another machine"]
    assert found["open"] == ["other accounts may write in it"]


def test_a_folder_of_ones_own_has_no_sign(tmp_path: Path) -> None:
    """A plain folder for its owner alone is told of as nothing."""
    (tmp_path / "plain").mkdir(mode=0o700)
    assert signs(tmp_path / "plain", tmp_path / "no list") == []
