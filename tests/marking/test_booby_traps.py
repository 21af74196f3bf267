"""Submissions that try something: nothing runs, nothing hangs, everything is listed."""

import errno
import json
import os
import socket
import tarfile
import time
import zipfile
from collections.abc import Callable
from pathlib import Path
from random import Random

import pytest
from seatwork import record
from seatwork.marking import AnswerFile, Sheet, mark
from seatwork.marking.submissions import collect
from seatwork.record import forms

Right = Callable[[str], AnswerFile]
SLOWEST = 1.0  # seconds for any one file
CODE = (
    "__import__('os').system('touch {canary}')",
    "$(touch {canary})",
    "`touch {canary}`",
    "{canary}; import os",
    "=cmd|' /C touch {canary}'!A0",
    "<script>fetch('{canary}')</script>",
    "%s%n%x{canary}",
    "{{7*7}}{canary}",
    "../../{canary}",
    "9**9**9",
    "1e400",
    "nan",
    "\u202e.139",
    "٣.١٤",
    "1" * 190,
)


@pytest.fixture
def canary(tmp_path: Path) -> Path:
    """Give a file that must not come into being."""
    return tmp_path / "canary"


def test_code_in_every_field_stays_text(
    course_folder: Path,
    sheet: Sheet,
    handed_in: Path,
    right_file: Right,
    canary: Path,
    tmp_path: Path,
) -> None:
    """Code typed as an answer never runs; what cannot be read is left to a person, no zero."""
    for number, code in enumerate(CODE):
        text = code.replace("{canary}", str(canary))[:200]
        file = right_file("L01").changed("q1", parts=(text,)).changed("q3", parts=(text, text))
        file.save(handed_in / str(number))
        one = next(iter(mark(forms(course_folder), sheet, handed_in / str(number))))
        first, second, _ = one.scored
        assert not first.verdicts[0].is_right, code
        assert second.points == pytest.approx(1), code
        unread = first.verdicts[0].kind == "unreadable" or not text.isprintable()
        assert (first.points is None) == unread, code
    record.mark(course_folder, sheet, handed_in)
    for line in (course_folder / "small-marks.csv").read_text(encoding="utf-8").splitlines():
        assert not line.startswith(("=", "+", "-", "@"))
    assert not canary.exists()


def test_code_in_every_key_is_refused(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right, canary: Path
) -> None:
    """Each field of the file in turn holds code; the file goes to a person."""
    plain = json.loads(right_file("L01").content())
    for number, key in enumerate((*plain, "extra")):
        for place, code in enumerate(CODE):
            text = code.replace("{canary}", str(canary))
            folder = handed_in / f"{number}-{place}"
            folder.mkdir()
            (folder / "L01-small-1.json").write_text(json.dumps({**plain, key: text}))
    marked = mark(forms(course_folder), sheet, handed_in)
    assert len(marked) == 6 * len(CODE)
    assert all(one.needs_a_person for one in marked)
    assert not canary.exists()


def test_notebooks_archives_links_and_pipes_are_listed_and_left_closed(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right, canary: Path
) -> None:
    """Whatever is no answer file is named once with the reason; the good one is marked."""
    cell = {"cell_type": "code", "source": f"open({str(canary)!r}, 'w')", "outputs": []}
    notebook = json.dumps({"cells": [cell], "nbformat": 4, "nbformat_minor": 5, "metadata": {}})
    (handed_in / "L01-small-1.ipynb").write_text(notebook)
    (handed_in / "L02-small-1.json").write_text(notebook)
    with zipfile.ZipFile(handed_in / "L03-small-1.json", "w") as archive:
        archive.writestr("../../canary", "x")
    with tarfile.open(handed_in / "many.tar", "w") as archive:
        archive.add(__file__, arcname=str(canary))
    secret = handed_in.parent / "L04-small-1.json"
    secret.write_bytes(right_file("L04").content())
    (handed_in / "L04-small-1.json").symlink_to(secret)
    (handed_in / "loop").symlink_to(handed_in)
    os.mkfifo(handed_in / "L05-small-1.json")
    address = socket.socket(socket.AF_UNIX)
    address.bind(os.path.relpath(handed_in / "L06-small-1.json"))
    (handed_in / "L07-small-1.json").symlink_to("/dev/zero")
    right_file("L01").save(handed_in)
    began = time.monotonic()
    marked = mark(forms(course_folder), sheet, handed_in)
    assert time.monotonic() - began < SLOWEST
    address.close()
    good = [one.name for one in marked if not one.needs_a_person]
    assert good == ["L01-small-1.json"]
    assert len(marked) == len(list(handed_in.iterdir())) == 10
    assert all(one.doubt for one in marked if one.needs_a_person)
    assert not canary.exists()


def test_a_huge_file_is_not_read_whole(handed_in: Path) -> None:
    """A sparse file of 10 GB is refused at once."""
    path = handed_in / "L01-small-1.json"
    with path.open("wb") as file:
        file.truncate(10 * 1024**3)
    began = time.monotonic()
    found = list(collect(handed_in))
    assert time.monotonic() - began < SLOWEST
    assert "256 kB" in found[0].doubt


def test_folders_too_deep_are_listed_not_entered(handed_in: Path) -> None:
    """A well of folders ends at a depth, and is named."""
    deep = handed_in.joinpath(*"abcdefgh")
    deep.mkdir(parents=True)
    (deep / "L01-small-1.json").write_bytes(b"{}")
    found = list(collect(handed_in))
    assert len(found) == 1
    assert found[0].file is None


ODD_TEXTS = (
    *("\\ud800", "\\udfff.139", ".1\\u000739", "\\u0000"),
    *("\\u202e931.", "\\u200f.139", "\\u2066\\ufeff"),
)
"""Half characters, control characters and right-to-left marks, as JSON writes them."""


def fuzzed(rng: Random, good: bytes) -> bytes:
    """Damage a good file in one of several ways."""
    way, raw = int(rng.random() * 8), bytearray(good)
    place = int(rng.random() * len(raw))
    if way == 0:
        return bytes(raw[:place])
    if way == 1:
        raw[place] = int(rng.random() * 256)
        return bytes(raw)
    if way == 2:
        return bytes(raw[:place] + raw[place // 2 :])
    if way == 3:
        return bytes(int(rng.random() * 256) for _ in range(place))
    if way == 4:
        return bytes(raw[:place]) + b"[" * int(rng.random() * 100_000)
    if way == 5:
        return (
            bytes(raw[:place]) + b'"' + "🙂".encode() * int(rng.random() * 50) + bytes(raw[place:])
        )
    odd = ODD_TEXTS[int(rng.random() * len(ODD_TEXTS))].encode()
    if way == 6:
        return good.replace(b'"parts":["', b'"parts":["' + odd, 1)
    return bytes(raw[:place]) + odd + bytes(raw[place:])


def mark_fuzzed(
    count: int, course_folder: Path, sheet: Sheet, handed_in: Path, good: bytes
) -> None:
    """Mark damaged files in one folder each hundred; all are listed, none is slow."""
    rng = Random(4)
    for start in range(0, count, 100):
        folder = handed_in / str(start)
        for number in range(start, min(start + 100, count)):
            (folder / str(number)).mkdir(parents=True)
            (folder / str(number) / "L01-small-1.json").write_bytes(fuzzed(rng, good))
        (folder / "round").mkdir()
        (folder / "round" / "again").symlink_to(folder, target_is_directory=True)
        (folder / "self").symlink_to("self")
        (folder / "closed").mkdir()
        began = time.monotonic()
        marked = mark(forms(course_folder), sheet, folder)
        assert len(marked) == min(100, count - start) + 3
        assert time.monotonic() - began < 100 * SLOWEST
        told = {one.name: one.doubt for one in marked}
        assert "cannot be read" in told["closed/"]
        assert all(told[name] for name in ("round/again", "self"))
        kept = record.mark(course_folder, sheet, folder).results
        assert all(one["state"] for one in kept["files"])


@pytest.fixture
def closed(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let no folder called ``closed`` be opened, whoever runs the tests."""
    scan = os.scandir

    def scandir(place: str) -> object:
        if Path(place).name == "closed":
            raise PermissionError(errno.EACCES, "permission denied", place)
        return scan(place)

    monkeypatch.setattr(os, "scandir", scandir)


@pytest.mark.usefixtures("closed")
def test_a_folder_that_cannot_be_read_is_named(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """It needs a person, and the papers beside it are marked."""
    right_file("L01").save(handed_in)
    right_file("L02").save(handed_in / "closed")
    first, second = mark(forms(course_folder), sheet, handed_in)
    assert first.points == pytest.approx(7)
    assert second.name == "closed/"
    assert "the folder cannot be read: it cannot be opened" in second.doubt


@pytest.mark.slow
@pytest.mark.usefixtures("closed")
def test_fuzzed_files_never_crash_marking(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Five hundred damaged files are each listed once."""
    mark_fuzzed(500, course_folder, sheet, handed_in, right_file("L01").content())


@pytest.mark.long
@pytest.mark.usefixtures("closed")
def test_ten_thousand_fuzzed_files(
    course_folder: Path, sheet: Sheet, handed_in: Path, right_file: Right
) -> None:
    """Ten thousand damaged files: no crash, no hang, memory bounded, all listed."""
    import resource

    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    mark_fuzzed(10_000, course_folder, sheet, handed_in, right_file("L01").content())
    grown = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before
    assert grown < 200 * 1024, f"memory grew by {grown} kB"
