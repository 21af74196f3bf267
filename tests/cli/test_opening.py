"""``seatwork open`` and ``seatwork doctor`` as typed in a terminal."""

import os
import re
import signal
import socket
import subprocess
import sys
from pathlib import Path
from urllib.request import urlopen

import pytest
from seatwork.cli import opening
from seatwork.opening import Delivery

OPEN = [sys.executable, "-m", "seatwork.cli", "open"]


def private(home: Path) -> dict[str, str]:
    """Keep the user's own Jupyter settings out."""
    names = ("JUPYTER_CONFIG_DIR", "JUPYTER_RUNTIME_DIR", "JUPYTER_DATA_DIR", "IPYTHONDIR")
    return os.environ | {name: str(home / name) for name in names}


def refused(folder: Path, *arguments: str) -> str:
    """Give ``seatwork open`` something it must refuse, and return its sentence."""
    done = subprocess.run(
        [*OPEN, *arguments],
        cwd=folder,
        env=private(folder.parent / "jupyter"),
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        timeout=60,
    )
    assert done.returncode == 1
    assert "Traceback" not in done.stderr
    lines = [line for line in done.stderr.splitlines() if not line.startswith("Warning: this runs")]
    assert len(lines) == 1
    return lines[0]


@pytest.mark.slow
def test_a_file_in_the_place_of_the_workbook_is_one_sentence(tmp_path: Path) -> None:
    """The default name, taken by a file, is refused by name."""
    (tmp_path / "seatwork-workbook").touch()
    told = refused(tmp_path, "--no-browser")
    assert re.search("seatwork-workbook: a file stands where a folder is needed; name ", told)


@pytest.mark.slow
def test_a_taken_port_is_one_sentence(tmp_path: Path) -> None:
    """A port in use is named with what would do."""
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        port = other.getsockname()[1]
        told = refused(tmp_path, "--no-browser", "--port", str(port))
    assert told == (
        f"port {port}: another program uses it, or it is not yours to take; "
        "leave --port out, or name another."
    )


@pytest.mark.skipif(
    not hasattr(os, "geteuid") or os.geteuid() == 0, reason="root may write anywhere"
)
def test_an_unwritable_folder_is_one_sentence(tmp_path: Path) -> None:
    """A folder without write permission is refused."""
    locked = tmp_path / "locked"
    locked.mkdir(mode=0o555)
    assert "it cannot be written here" in refused(locked, "--no-browser")


@pytest.mark.slow
@pytest.mark.skipif(os.name == "nt", reason="Windows sends no interrupt to one process")
def test_open_serves_the_start_page_until_interrupted(tmp_path: Path) -> None:
    """The address told answers, a stranger without the token is refused, Ctrl+C ends it well."""
    command = [*OPEN, "class 2", "--no-browser"]
    with subprocess.Popen(
        command,
        cwd=tmp_path,
        env=private(tmp_path / "jupyter"),
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        text=True,
    ) as server:
        try:
            told = next(line for line in server.stdout if "ready: " in line)
            address = told.partition("ready: ")[2].strip()
            with urlopen(address, timeout=30) as page:
                assert page.status == 200
            with pytest.raises(OSError, match="403"):
                urlopen(re.sub("/doc/.*", "/api/contents", address), timeout=30)
            server.send_signal(signal.SIGINT)
            assert server.wait(30) == 0
        finally:
            server.kill()
    assert "/doc/tree/notebooks/00_start_here.ipynb?token=" in address
    assert (tmp_path / "class 2" / "workbook.toml").is_file()


def test_many_files_left_alone_are_counted(capsys: pytest.CaptureFixture[str]) -> None:
    """Five files are named, the others counted."""
    places = tuple(f"notebooks/{n:02}.ipynb" for n in range(8))
    opening.report(Delivery(folder=Path("w"), added=(), updated=(), left_alone=places))
    told = capsys.readouterr().out.splitlines()[1]
    assert told.startswith("You changed these, so they stay as they are: notebooks/00.ipynb, ")
    assert told.endswith("notebooks/04.ipynb and 3 more.")


@pytest.mark.slow
def test_doctor_ends_well_here(tmp_path: Path) -> None:
    """Where the tests run the installation has no fault."""
    done = subprocess.run(
        [sys.executable, "-m", "seatwork.cli", "doctor"],
        cwd=tmp_path,
        env=private(tmp_path / "jupyter"),
        capture_output=True,
        text=True,
        timeout=120,
    )
    assert done.returncode == 0, done.stdout
    assert done.stdout.splitlines()[-1] == "All is well."
