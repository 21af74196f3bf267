"""The options of the JupyterLab that ``seatwork open`` starts."""

import socket
from pathlib import Path

import pytest
from seatwork.errors import SeatworkError
from seatwork.opening import lab

FOLDER = Path("cider mill")


def told_options(port: int | None = None) -> list[str]:
    """List the options for one workbook."""
    return lab.options(FOLDER, token="t0", port=port, browser=True)


def test_the_server_listens_on_this_machine_only() -> None:
    """The address is the loopback one, whatever the reader's own settings say."""
    told = told_options()
    assert "--ServerApp.ip=127.0.0.1" in told
    assert "--ServerApp.allow_remote_access=False" in told


def test_the_token_stays_on_whatever_the_readers_settings_say() -> None:
    """The token is given among the options, which win over any settings file."""
    assert "--IdentityProvider.token=t0" in told_options()


def test_jupyterlab_starts_on_the_start_page_in_the_single_document_view() -> None:
    """The page under /doc shows one document without tabs."""
    told = told_options()
    assert "--LabApp.default_url=/doc/tree/notebooks/00_start_here.ipynb" in told


def test_a_named_port_is_the_only_one_tried() -> None:
    """With --port no other port is taken instead."""
    told = told_options(9123)
    assert {"--ServerApp.port=9123", "--ServerApp.port_retries=0"} <= set(told)


def test_a_taken_port_is_told_in_a_sentence(tmp_path: Path) -> None:
    """A port that another program serves on is refused before anything starts."""
    with socket.socket() as other:
        other.bind(("127.0.0.1", 0))
        other.listen()
        port = other.getsockname()[1]
        with pytest.raises(SeatworkError, match=f"port {port}: another program uses it"):
            lab.prepare(tmp_path, port=port)
    assert not list(tmp_path.iterdir())


def test_a_free_port_is_accepted() -> None:
    """A port that was just given back can be taken."""
    with socket.socket() as trial:
        trial.bind(("127.0.0.1", 0))
        port = trial.getsockname()[1]
    lab.check_port(port)
