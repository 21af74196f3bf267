"""Whether a folder looks synchronized or shared, so that others may come to read what is in it.

Only signs are looked at: names of folders, files that synchronizing programs leave, the kind of
disk, and the rights of other accounts. A folder without a sign may be shared all the same.
"""

from collections.abc import Iterator
from pathlib import Path

LEFT_BEHIND = (".sync", ".stfolder", ".dropbox")
"""What synchronizing programs leave in the topmost folder they look after."""

NAMES = ("sync", "cloud", "dropbox", "onedrive", "my drive")
"""Parts of the names that such programs give their folders."""

ACROSS = ("nfs", "nfs4", "cifs", "smb3", "fuse.sshfs", "9p", "vboxsf", "davfs", "fuse.davfs2")
"""Kinds of disks that lie on another machine."""

MOUNTS = Path("/proc/self/mounts")


def signs(folder: Path, mounts: Path = MOUNTS) -> list[str]:
    """Return the signs that a folder is synchronized or shared, each in a few words.

    Parameters
    ----------
    folder : Path
        The folder; it need not be there yet.
    mounts : Path
        The system's list of disks, where it has one.
    """
    return [*_named(folder), *_across(folder, mounts), *_open_to_others(folder)]


def _named(folder: Path) -> Iterator[str]:
    for place in (folder, *folder.parents):
        if any(word in place.name.casefold() for word in NAMES):
            yield f"{place.name} is a usual name of a synchronized folder"
        for name in LEFT_BEHIND:
            if (place / name).exists() and place != Path.home():
                yield f"{place} holds {name}, as synchronized folders do"


def _across(folder: Path, mounts: Path) -> Iterator[str]:
    if str(folder).startswith("\\\\"):
        yield "it lies on another machine"
        return
    try:
        lines = [line.split() for line in mounts.read_text("utf-8", "replace").splitlines()]
    except OSError:
        return
    above = [words for words in lines if len(words) > 2 and folder.is_relative_to(words[1])]
    if above and max(above, key=lambda words: len(words[1]))[2] in ACROSS:
        yield "it lies on another machine"


def _open_to_others(folder: Path) -> Iterator[str]:
    try:
        mode = folder.stat().st_mode
    except OSError:
        return
    if mode & 0o022:
        yield "other accounts may write in it"
