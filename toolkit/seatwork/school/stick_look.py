"""Looking a stick over: its wheels whole, its pages without network, its script in place."""

import hashlib
import re
from collections.abc import Iterator
from pathlib import Path

from seatwork.opening.checked import Check
from seatwork.school.stick import WHEELS
from seatwork.school.stick_pages import CARDS, FIRST, FOLDER_OF_PAGES, INSTALL

AGAIN = "make the stick anew: seatwork stick FOLDER"
ASKS = re.compile(r"""<(?:script|img|link|iframe)\b[^>]*\b(?:src|href)=["']?(?:https?:)?//""", re.I)
MOST_NAMED = 4


def examine(folder: Path) -> Iterator[Check]:
    """Look at everything on a stick, one check after the other.

    Parameters
    ----------
    folder : Path
        The stick.
    """
    lists = sorted((folder / WHEELS).glob("*.txt"))
    if not lists:
        yield Check(name="wheels", found=f"no list of wheels in {folder}", fix=AGAIN)
    for listed in lists:
        yield wheels(listed)
    yield pages(folder)
    yield start(folder)


def wheels(listed: Path) -> Check:
    """Hold the wheels of one list against what they were when they were gathered."""
    spoiled, size = [], 0
    lines = listed.read_text(encoding="utf-8", errors="replace").splitlines()
    for mark, _, name in (line.partition("  ") for line in lines):
        path = listed.parent / Path(name).name
        content = path.read_bytes() if path.is_file() else b""
        size += len(content)
        if hashlib.sha256(content).hexdigest() != mark:
            spoiled.append(path.name)
    name = f"wheels for {listed.stem}"
    if spoiled or not lines:
        told = ", ".join(spoiled[:MOST_NAMED]) or "the list is empty"
        return Check(name=name, found=f"missing or damaged: {told}", fix=AGAIN)
    return Check(name=name, found=f"{len(lines)} whole, {size / 1e6:.0f} MB")


def pages(folder: Path) -> Check:
    """Look whether any page would ask the network for something."""
    found = [folder / FIRST, *sorted((folder / FOLDER_OF_PAGES).glob("*.html"))]
    there = [path for path in found if path.is_file()]
    asking = [p.name for p in there if ASKS.search(p.read_text(encoding="utf-8", errors="replace"))]
    if asking:
        told = f"{', '.join(asking[:MOST_NAMED])} would ask the network"
        return Check(name="pages", found=told, fix=AGAIN)
    if len(there) < 2:
        return Check(name="pages", found="no lessons as pages", fix=AGAIN)
    return Check(name="pages", found=f"{len(there)} need no network")


def start(folder: Path) -> Check:
    """Look for the first page, the script and the sheets."""
    missing = [name for name in (FIRST, INSTALL) if not (folder / name).is_file()]
    missing += [] if any((folder / CARDS).glob("*.pdf")) else [CARDS]
    if missing:
        return Check(name="start", found=f"missing: {', '.join(missing)}", fix=AGAIN)
    return Check(name="start", found=f"{FIRST} and {INSTALL}")
