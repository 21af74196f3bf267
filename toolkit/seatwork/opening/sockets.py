"""A place for the sockets of kernels, where the system has sockets with a file's rights.

A kernel that listens on ports of the machine is heard by every account of it, without any key.
Sockets in a folder of one's own are not.
"""

import atexit
import os
import shutil
import tempfile
from pathlib import Path

LONGEST = 103
"""Letters that systems allow in the name of a socket; some allow four more."""

BEGIN, HELD = "sw-", "held"
"""How the folders are called, and the file in each that its process holds locked."""

LEFT = len("/sw-12345678/kernel-12345678-1234-1234-1234-123456789012-ipc-5")
TRANSPORT = {"KernelManager.transport": "ipc"}
"""What a server is told so that its kernels use sockets of files."""


def socket_folder(places: tuple[str, ...] = ()) -> Path | None:
    """Make a folder for sockets that only this account can open; it goes with the process.

    Where the process became another program, or was killed, it goes when the next one is made.

    Parameters
    ----------
    places : tuple of str
        Where it may be made, the best first; the system's own places if not given.

    Returns
    -------
    Path or None
        None where the system has no such sockets, or every place has too long a name.
    """
    if os.name != "posix":
        return None
    for place in places or (tempfile.gettempdir(), "/tmp"):
        if len(place) + LEFT <= LONGEST and os.access(place, os.W_OK):
            sweep(Path(place))
            folder = Path(tempfile.mkdtemp(prefix=BEGIN, dir=place))  # 0700
            held = _held(folder)
            if held is not None:
                os.set_inheritable(held, True)  # kept open, also by a program put in its place
            atexit.register(shutil.rmtree, folder, ignore_errors=True)
            return folder
    return None


def sweep(place: Path) -> None:
    """Take away folders for sockets of this account whose process is gone.

    Parameters
    ----------
    place : Path
        Where they lie.
    """
    for folder in place.glob(f"{BEGIN}????????"):
        try:
            is_own = not folder.is_symlink() and folder.stat().st_uid == os.getuid()
            held = _held(folder) if is_own and (folder / HELD).is_file() else None
        except OSError:
            continue
        if held is not None:
            shutil.rmtree(folder, ignore_errors=True)
            os.close(held)


def _held(folder: Path) -> int | None:
    """Lock a folder's file for this process; None if another holds it."""
    import fcntl

    held = os.open(folder / HELD, os.O_RDWR | os.O_CREAT | os.O_NOFOLLOW, 0o600)
    try:
        fcntl.flock(held, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError:
        os.close(held)
        return None
    return held


def use(folder: Path | None) -> dict[str, str]:
    """Let servers started by this process keep their sockets in a folder.

    Returns
    -------
    dict of str to str
        The server's options for it; none without a folder.
    """
    if folder is None:
        return {}
    os.environ["JUPYTER_RUNTIME_DIR"] = str(folder)
    return TRANSPORT
