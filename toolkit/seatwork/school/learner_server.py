"""A learner's own server on a hub: lays out the workbook as that learner, then serves it.

It runs as the learner, never as the hub, since it reads and writes a folder in which a learner
may have planted links. ``python -m seatwork.school.learner_server`` is what the hub starts.
"""

import json
import os
import sys
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files import PRIVATE, write
from seatwork.marking.given import LONGEST
from seatwork.marking.names import LEARNER
from seatwork.opening import deliver, sockets
from seatwork.opening.lab import HOME, PAGE, SETTINGS, is_root
from seatwork.opening.workbook import START
from seatwork.shop.marker import name_in_marker

WORKBOOK = "seatwork-workbook"
GIVEN, HAND_IN, USER = "SEATWORK_GIVEN", "SEATWORK_HAND_IN", "JUPYTERHUB_USER"
IDLE, LOOK = 1800, 300
"""A kernel left alone for so long is ended; how often that is looked at [s]."""
MOST_GIVEN = 200
NOT_FOR_OTHERS = 0o027
"""The hub's own mask closes new files to the instructors' group too: none could mark what came."""


def lay_out(home: Path, user: str, given: Path | None, box: Path | None) -> Path:
    """Lay a learner's workbook out, with what was handed out to that learner.

    Parameters
    ----------
    home : Path
        The learner's home folder.
    user : str
        The name on the hub, which is written small: l07 is learner L07.
    given, box : Path or None
        Where what was handed out lies, a folder for each code, and where answers are handed in,
        a folder for each name.

    Returns
    -------
    Path
        The workbook folder.
    """
    done = deliver(home / WORKBOOK)
    learner = user.upper()
    if not LEARNER.fullmatch(learner):  # an instructor, who is given nothing
        return done.folder
    for name, content in _given(given / learner) if given else ():
        write(done.folder / name, content, mode=PRIVATE)
    if box:
        name_in_marker(done.folder, "hand_in", str(box / user))
    return done.folder


def _given(folder: Path) -> list[tuple[str, bytes]]:
    found = sorted(folder.glob("*.given.json"))[:MOST_GIVEN] if folder.is_dir() else []
    return [(path.name, path.read_bytes()[: LONGEST + 1]) for path in found]


def options(folder: Path) -> dict[str, object]:
    """Return what the learner's server is told.

    Parameters
    ----------
    folder : Path
        The workbook.
    """
    return {
        "ServerApp.root_dir": folder,
        "ServerApp.jpserver_extensions": "seatwork.live.server=True",
        "ServerApp.kernel_websocket_connection_class": "seatwork.live.server.PromptChannels",
        "ServerApp.answer_yes": True,
        "ServerApp.allow_root": is_root(),
        "ServerApp.terminals_enabled": False,
        "ServerApp.default_url": f"/doc/tree/{START}",
        "LabApp.app_settings_dir": folder / HOME / "settings",
        "LabApp.workspaces_dir": folder / HOME / "workspaces",
        "LabApp.extension_manager": "readonly",
        "LabApp.news_url": None,
        "LabApp.check_for_updates_class": "jupyterlab.NeverCheckForUpdate",
        "MappingKernelManager.cull_idle_timeout": IDLE,
        "MappingKernelManager.cull_interval": LOOK,
    }


def kernels_apart() -> dict[str, str]:
    """Return the options that keep other accounts from listening to kernels.

    Raises
    ------
    SeatworkError
        Where the system cannot keep them apart: on a machine with many accounts nothing starts.
    """
    found = sockets.use(sockets.socket_folder())
    if not found:
        raise SeatworkError(
            "this machine",
            "kernels would talk where every account of it can listen",
            "use a system with sockets of files, and a TMPDIR of at most 30 letters",
        )
    return found


def main() -> None:
    """Lay the workbook out, then become the server of JupyterHub for one user."""
    os.umask(NOT_FOR_OTHERS)
    places = (Path(os.environ[name]) if os.environ.get(name) else None for name in (GIVEN, HAND_IN))
    folder = lay_out(Path.home(), os.environ[USER], *places)
    for name, settings in {"overrides": SETTINGS, "page_config": PAGE}.items():
        write(folder / HOME / "settings" / f"{name}.json", json.dumps(settings))
    os.environ["JUPYTER_PREFER_ENV_PATH"] = "1"
    os.environ.setdefault("JUPYTERHUB_SINGLEUSER_APP", "jupyter_server.serverapp.ServerApp")
    told = [f"--{name}={value}" for name, value in (options(folder) | kernels_apart()).items()]
    os.chdir(folder)
    server = [sys.executable, "-m", "jupyterhub.singleuser", *told, *sys.argv[1:]]
    os.execv(sys.executable, server)


if __name__ == "__main__":
    try:
        main()
    except SeatworkError as error:
        raise SystemExit(str(error)) from error
