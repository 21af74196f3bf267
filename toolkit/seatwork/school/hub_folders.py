"""Folders of a hub: what was handed out to a learner, and what that learner hands in.

The hub runs this as root before it starts a learner's server. It changes nothing inside a folder
that a learner may write in, where a link could stand for another's file.
"""

import shutil
import stat
from pathlib import Path

GIVEN_FOLDER, GIVEN_FILE = 0o2750, 0o640
"""Owner the instructor, group the learner's own: the learner reads, no other learner does."""
BOX = 0o2750
"""Owner the learner, group the instructors; files in it get that group."""


def prepare(
    user: str, given: str | Path, box: str | Path, instructor: str = "", instructors: str = ""
) -> None:
    """Make a learner's two folders, readable by those who may read them alone.

    Parameters
    ----------
    user : str
        The name on the hub and of the system account, such as l07.
    given : str or Path
        Holds a folder for each code, such as L07, as ``seatwork hand-out --to`` writes them.
    box : str or Path
        Holds a folder for each name, such as l07, for what is handed in.
    instructor, instructors : str
        The instructor's system account, and the group that reads what is handed in; empty
        without system accounts.
    """
    mine, own = Path(given) / user.upper(), Path(box) / user
    for folder in (mine, own):
        folder.mkdir(parents=True, exist_ok=True)
        if not stat.S_ISDIR(folder.lstat().st_mode):
            raise PermissionError(f"{folder} is no folder")
    if instructor:
        shutil.chown(own, user, instructors)
        _close_given(mine, instructor, user)
    own.chmod(BOX)


def _close_given(folder: Path, owner: str, group: str) -> None:
    """Let a learner read what was handed out to that learner, and write nothing there."""
    shutil.chown(folder, owner, group)
    folder.chmod(GIVEN_FOLDER)
    for path in folder.iterdir():
        if stat.S_ISREG(path.lstat().st_mode):
            shutil.chown(path, owner, group)
            path.chmod(GIVEN_FILE)
