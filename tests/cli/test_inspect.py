"""Plan, inspect and the demonstration from the command line."""

import subprocess
import sys
from pathlib import Path

import pytest
from seatwork.plan.examples import measured_file, part_files

pytestmark = pytest.mark.slow

HOPPER = str(part_files()[1])


def seatwork(folder: Path, *words: str) -> subprocess.CompletedProcess[str]:
    """Run a command in a folder."""
    return subprocess.run(
        [sys.executable, "-m", "seatwork.cli", *words],
        capture_output=True,
        text=True,
        encoding="utf-8",
        cwd=folder,
        timeout=120,
        check=False,
    )


def test_measured_parts_are_judged_and_bad_rows_told(tmp_path: Path) -> None:
    """Good rows are judged though one holds a formula; the exit says that something is left."""
    parts = [word for path in part_files() for word in ("--part", str(path))]
    done = seatwork(tmp_path, "inspect", str(measured_file()), *parts, "--to", "found.csv")
    assert done.returncode == 1
    assert "11 parts: 5 accept, 4 reject, 2 cannot tell" in done.stdout
    assert "measured.csv, row 8, column diameter: =0.397" in done.stderr
    assert "Traceback" not in done.stderr
    first = (tmp_path / "found.csv").read_bytes()
    again = seatwork(tmp_path, "inspect", str(measured_file()), *parts, "--to", "found.csv")
    assert "already" in again.stderr
    assert (tmp_path / "found.csv").read_bytes() == first


def test_a_part_file_brings_its_own_material_and_machine(tmp_path: Path) -> None:
    """``seatwork plan`` on a file needs no material where every row names one."""
    done = seatwork(tmp_path, "plan", HOPPER)
    assert done.returncode == 0, done.stderr
    assert "hopper_plate, lid screws" in done.stdout
    assert "House rule: speeds.countersink_cap = 300 rev/min" in done.stdout


def test_a_missing_material_is_one_sentence(tmp_path: Path) -> None:
    """A note without a material is refused without a traceback."""
    done = seatwork(tmp_path, "plan", "⌀.201 THRU", "--machine", "knee mill")
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    assert "1018 steel" in done.stderr


@pytest.mark.long
def test_the_demonstration_writes_what_it_names_and_nothing_over(tmp_path: Path) -> None:
    """Plans, cards and verdicts of the cider mill lie where the paths say; a second run refuses."""
    done = seatwork(tmp_path, "demo", "mill")
    assert done.returncode == 0, done.stderr
    named = [line.split(" ", 1)[1] for line in done.stdout.splitlines() if line.startswith("Wrote")]
    assert len(named) == 10
    assert all((tmp_path / name).stat().st_size > 100 for name in named)
    assert {path.name for path in (tmp_path / "mill").iterdir()} == {Path(n).name for n in named}
    again = seatwork(tmp_path, "demo", "mill")
    assert again.returncode == 1
    assert "already" in again.stderr
