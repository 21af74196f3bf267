"""Looking a stick over: its wheels whole, its pages without network, its script in place."""

import hashlib
import re
from collections.abc import Iterator
from pathlib import Path

from packaging.utils import parse_wheel_filename

from seatwork import __version__
from seatwork.errors import SeatworkError
from seatwork.opening.checked import Check
from seatwork.school.stick import WHEELS
from seatwork.school.stick_pages import CARDS, FIRST, FOLDER_OF_PAGES, INSTALL
from seatwork.school.stick_targets import computer
from seatwork.school.wheels import INSTALLER, closure

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
        found = wheels(listed)
        yield found
        if found.passed:
            yield complete(listed)
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


def complete(listed: Path) -> Check:
    """Look whether the wheels of one list are all that is needed, of the seatwork that looks."""
    name, (kind, _, python) = f"needed by {listed.stem}", listed.stem.rpartition("-")
    lines = listed.read_text(encoding="utf-8").splitlines()
    paths = [listed.parent / line.partition("  ")[2] for line in lines]
    try:
        there = {str(parse_wheel_filename(path.name)[0]): path for path in paths}
        own = there.get("seatwork")
        _, missing = closure("seatwork", there, computer(kind), python)
    except (SeatworkError, ValueError, OSError) as error:
        return Check(name=name, found=f"cannot be worked out: {str(error)[:160]}", fix=AGAIN)
    missing += [one for one in (INSTALLER, "seatwork") if one not in there]
    if missing:
        told = ", ".join(sorted(missing)[:MOST_NAMED])
        return Check(name=name, found=f"no wheel for {told}", fix=AGAIN)
    version = str(parse_wheel_filename(own.name)[1]) if own else ""
    if version != __version__:
        told = f"seatwork {version} is on the stick, this is {__version__}"
        return Check(name=name, found=told, fix=AGAIN)
    return Check(name=name, found=f"nothing is missing, seatwork {version}")


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
