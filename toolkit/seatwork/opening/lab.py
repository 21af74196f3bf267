"""JupyterLab for one workbook: on this machine only, quiet, offline, one document at a time."""

import json
import os
import secrets
import socket
from collections.abc import Callable
from pathlib import Path
from typing import Any

from seatwork.deferred import put_off_grammars
from seatwork.errors import SeatworkError
from seatwork.files import write
from seatwork.opening import sockets
from seatwork.opening.workbook import START

LOOPBACK = "127.0.0.1"
HOME = ".seatwork/lab"
SETTINGS = {
    "@jupyterlab/apputils-extension:notification": {
        "fetchNews": "false",
        "checkForUpdates": False,
    },
    # every cell stays in the page, so that a live picture scrolled away keeps its place
    "@jupyterlab/notebook-extension:tracker": {"windowingMode": "none"},
}
# a lesson needs no debugger (it complains when a kernel is shut down early) and no shop for parts
PAGE = {
    "disabledExtensions": {
        "@jupyterlab/debugger-extension": True,
        "@jupyterlab/extensionmanager-extension": True,
    }
}


def options(folder: Path, *, token: str, port: int | None, browser: bool) -> list[str]:
    """List the options JupyterLab is started with; they win over the reader's own settings.

    Parameters
    ----------
    folder : Path
        The workbook, absolute.
    token : str
        What lets the reader in.
    port : int or None
        Port to serve on; None takes the first free one from 8888.
    browser : bool
        Whether to open the reader's web browser.
    """
    ports = {"ServerApp.port": port, "ServerApp.port_retries": 0} if port else {}
    values = ports | {
        "ServerApp.ip": LOOPBACK,
        "ServerApp.allow_remote_access": False,
        "ServerApp.allow_root": is_root(),
        "ServerApp.answer_yes": True,
        "IdentityProvider.token": token,
        "ServerApp.log_level": "WARN",
        "LabApp.log_level": "WARN",
        "ServerApp.open_browser": browser,
        "ServerApp.root_dir": folder,
        "ServerApp.jpserver_extensions": "seatwork.live.server=True",
        "ServerApp.kernel_websocket_connection_class": "seatwork.live.server.PromptChannels",
        "LabApp.app_settings_dir": folder / HOME / "settings",
        "LabApp.workspaces_dir": folder / HOME / "workspaces",
        "LabApp.default_url": f"/doc/tree/{START}",
        "LabApp.extension_manager": "readonly",
        "LabApp.custom_css": True,
        "LabApp.news_url": None,
        "LabApp.check_for_updates_class": "jupyterlab.NeverCheckForUpdate",
    }
    return [f"--{name}={value}" for name, value in values.items()]


def is_root() -> bool:
    """Say whether the command runs as root (never so on Windows)."""
    return hasattr(os, "geteuid") and os.geteuid() == 0


def check_port(port: int) -> None:
    """Refuse a port that another program holds or that cannot be taken."""
    with socket.socket() as trial:
        if os.name != "nt":  # there the option would let two programs share a port
            trial.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            trial.bind((LOOPBACK, port))
        except OSError as error:
            raise SeatworkError(
                f"port {port}",
                "another program uses it, or it is not yours to take",
                "leave --port out, or name another",
            ) from error


def prepare(folder: Path, *, port: int | None = None, browser: bool = True) -> Any:
    """Set a JupyterLab server up for a workbook; it listens once it is started.

    Parameters
    ----------
    folder : Path
        The workbook, absolute, as ``deliver`` made it.
    port : int, optional
        Port to serve on; without it the first free one from 8888.
    browser : bool
        Whether starting opens the reader's web browser.

    Returns
    -------
    ServerApp
        The server; ``serve`` starts it.

    Raises
    ------
    SeatworkError
        If the port is taken or the settings cannot be written.
    """
    if port:
        check_port(port)
    for name, settings in {"overrides": SETTINGS, "page_config": PAGE}.items():
        write(folder / HOME / "settings" / f"{name}.json", json.dumps(settings, indent=1).encode())
    # the kernel of this very installation comes first, whoever owns the environment
    os.environ["JUPYTER_PREFER_ENV_PATH"] = "1"
    put_off_grammars()
    from jupyterlab.labapp import LabApp

    token = secrets.token_hex(24)
    more = [f"--{name}={value}" for name, value in sockets.use(sockets.socket_folder()).items()]
    return LabApp.initialize_server(
        [*options(folder, token=token, port=port, browser=browser), *more]
    )


def address(server: Any) -> str:
    """Tell the page to visit, with the token that lets the reader in."""
    token = server.identity_provider.token
    return f"http://{LOOPBACK}:{server.port}{server.default_url}?token={token}"


def serve(server: Any, report: Callable[[str], None]) -> None:
    """Serve until stopped; `report` is given the address as soon as it answers."""
    server.io_loop.add_callback(lambda: report(address(server)))
    server.start()
