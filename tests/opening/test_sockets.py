"""Kernels talk through files of the account's own, where the system has such sockets."""

import os
import stat
import subprocess
import sys
import tempfile
from pathlib import Path

import pytest
from seatwork.opening import sockets

pytestmark = pytest.mark.skipif(os.name != "posix", reason="this system has no such sockets")


def test_the_folder_is_for_this_account_alone(tmp_path: Path) -> None:
    """Nobody else may look into it."""
    folder = sockets.socket_folder((f"{tmp_path}",)) or sockets.socket_folder()
    assert folder is not None
    assert stat.S_IMODE(folder.stat().st_mode) == 0o700


@pytest.mark.slow
def test_a_folder_left_by_another_program_goes_at_the_next_start() -> None:
    """A process that becomes another keeps its folder while it runs; later it is taken away."""
    make = (
        "import os, sys; from seatwork.opening import sockets\n"
        "print(sockets.socket_folder((sys.argv[1],)), flush=True)\n"
        "os.execv(sys.executable, [sys.executable, '-c', 'input()'])"
    )
    with tempfile.TemporaryDirectory(dir="/tmp") as place:
        command = [sys.executable, "-c", make, place]
        with subprocess.Popen(command, stdin=-1, stdout=-1, text=True) as other:
            left = Path(other.stdout.readline().strip())
            sockets.sweep(Path(place))
            assert left.is_dir()
            other.communicate("\n")
        sockets.sweep(Path(place))
        assert not left.exists()


def test_a_place_with_too_long_a_name_is_passed_over(tmp_path: Path) -> None:
    """A socket's name has about a hundred letters; a longer place would stop every kernel."""
    long = tmp_path / ("n" * 100)
    long.mkdir()
    assert sockets.socket_folder((str(long),)) is None
    short = sockets.socket_folder((str(long), "/tmp"))
    assert short is not None
    assert len(str(short)) + len("/kernel-12345678-1234-1234-1234-123456789012-ipc-5") <= 103


def test_without_a_folder_nothing_changes(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where there are no such sockets kernels go on as they did."""
    monkeypatch.delenv("JUPYTER_RUNTIME_DIR", raising=False)
    assert sockets.use(None) == {}
    assert "JUPYTER_RUNTIME_DIR" not in os.environ


@pytest.mark.slow
def test_a_kernel_answers_through_the_folder_and_opens_no_port(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """A kernel with these options lies behind sockets in the folder and answers."""
    from jupyter_client.manager import KernelManager

    folder = sockets.socket_folder()
    assert folder is not None
    monkeypatch.setenv("JUPYTER_RUNTIME_DIR", str(folder))
    options = {name.split(".")[1]: value for name, value in sockets.TRANSPORT.items()}
    kernel = KernelManager(
        connection_file=str(folder / "kernel-12345678-1234-1234-1234-123456789012.json"), **options
    )
    kernel.start_kernel()
    client = kernel.client()
    try:
        client.start_channels()
        client.wait_for_ready(timeout=120)
        found = [path for path in folder.iterdir() if stat.S_ISSOCK(path.stat().st_mode)]
        assert len(found) == 5
    finally:
        client.stop_channels()
        kernel.shutdown_kernel(now=True)
