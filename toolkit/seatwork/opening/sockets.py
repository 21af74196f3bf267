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

LEFT = len("/sw-12345678/kernel-12345678-1234-1234-1234-123456789012-ipc-5")
TRANSPORT = {"KernelManager.transport": "ipc"}
"""What a server is told so that its kernels use sockets of files."""


def socket_folder(places: tuple[str, ...] = ()) -> Path | None:
    """Make a folder for sockets that only this account can open; it goes with the process.

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
            folder = Path(tempfile.mkdtemp(prefix="sw-", dir=place))  # 0700
            atexit.register(shutil.rmtree, folder, ignore_errors=True)
            return folder
    return None


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
