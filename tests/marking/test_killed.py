"""Killed at any moment: at most the last key press is lost, and a second run is the same."""

import os
import signal
import subprocess
import sys
import time
from pathlib import Path
from random import Random

import pytest
from seatwork.marking import AnswerFile
from seatwork.marking.answers import reopen
from seatwork.record import check, open_record
from seatwork.record.tables import fact
from sqlalchemy import select

pytestmark = pytest.mark.slow

ANSWERING = """
import sys
from pathlib import Path
from seatwork.marking import AnswerFile
folder = Path(sys.argv[1])
file = AnswerFile(learner="L01", sheet="small", form=1)
for number in range(100000):
    file = file.changed("q1", parts=(f".{number:05d}",))
    print(number, flush=True)
    file.save(folder)
"""
HANDING_OUT = """
import sys
from pathlib import Path
from seatwork.marking import sheets
from seatwork.record import hand_out
folder = Path(sys.argv[1])
sheet = sheets.load("counterbores")
print("begun", flush=True)
who = [f"L{n:02d}" for n in range(1, 31)]
hand_out(folder, sheet, who, target=folder / "given", day="2026-03-02")
"""
MARKING = """
import sys
from pathlib import Path
from seatwork.marking import sheets
from seatwork.record import mark
folder = Path(sys.argv[1])
sheet = sheets.load("counterbores")
print("begun", flush=True)
mark(folder, sheet, folder / "in", day="2026-03-02")
"""


def run(code: str, folder: Path) -> None:
    """Run a script to its end."""
    subprocess.run([sys.executable, "-c", code, str(folder)], check=True, capture_output=True)


def kill_after(code: str, folder: Path, seconds: float) -> str:
    """Run a script and kill it some time after its first line; return what it printed."""
    process = subprocess.Popen(
        [sys.executable, "-c", code, str(folder)], stdout=subprocess.PIPE, text=True
    )
    assert process.stdout is not None
    first = process.stdout.readline()
    time.sleep(seconds)
    os.kill(process.pid, signal.SIGKILL)
    rest = process.stdout.read()
    process.wait()
    return first + rest


def content(folder: Path) -> dict[str, object]:
    """Read what a folder holds for people, and every fact of its record."""
    found: dict[str, object] = {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file() and path.suffix in (".json", ".csv", ".key")
    }
    kept = open_record(folder)
    assert check(kept) == []
    with kept.reading() as connection:
        found["facts"] = sorted(connection.execute(select(fact.c.id, fact.c.seal)).all())
    kept.close()
    return found


@pytest.mark.long
@pytest.mark.skipif(os.name != "posix", reason="kill -9 is POSIX")
@pytest.mark.parametrize("moment", range(70))
def test_answering_loses_at_most_the_last_key_press(tmp_path: Path, moment: int) -> None:
    """After a kill the saved answer is the last one announced, or the one before."""
    delay = Random(moment).random() * 0.3
    printed = kill_after(ANSWERING, tmp_path, delay).split()
    last = int(printed[-1])
    empty = AnswerFile(learner="L01", sheet="small", form=1)
    saved = reopen(empty, tmp_path).of("q1").parts
    allowed = {(f".{last:05d}",), (f".{last - 1:05d}",)} | ({()} if last == 0 else set())
    assert saved in allowed


@pytest.mark.long
@pytest.mark.skipif(os.name != "posix", reason="kill -9 is POSIX")
@pytest.mark.parametrize("moment", range(65))
def test_handing_out_again_after_a_kill_gives_the_same(tmp_path: Path, moment: int) -> None:
    """A second run after a kill ends where a run that was not killed would have ended."""
    first = tmp_path / "first"
    first.mkdir()
    kill_after(HANDING_OUT, first, Random(moment).random() * 0.5)
    run(HANDING_OUT, first)
    second = tmp_path / "second"
    second.mkdir()
    (second / "course.key").write_bytes((first / "course.key").read_bytes())
    (second / "course.key").chmod(0o600)
    run(HANDING_OUT, second)
    assert content(first) == content(second)


@pytest.mark.long
@pytest.mark.skipif(os.name != "posix", reason="kill -9 is POSIX")
@pytest.mark.parametrize("moment", range(65))
def test_marking_again_after_a_kill_gives_the_same(tmp_path: Path, moment: int) -> None:
    """Marks and results after a killed and a second run are those of one whole run."""
    run(HANDING_OUT, tmp_path)
    for number in range(1, 31):
        file = AnswerFile(learner=f"L{number:02d}", sheet="counterbores", form=1)
        file.changed("b1", parts=(f".{number:03d}",)).save(tmp_path / "in")
    kill_after(MARKING, tmp_path, Random(moment).random() * 0.2)
    run(MARKING, tmp_path)
    after_kill = content(tmp_path)
    run(MARKING, tmp_path)
    assert content(tmp_path) == after_kill
