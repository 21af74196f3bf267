"""The recipe of a hub: its configuration, its service file, its learners, and one page to read."""

import re
import shutil
import sys
from importlib import resources
from pathlib import Path
from string import Template

from seatwork import files
from seatwork.arguments import explained
from seatwork.errors import SeatworkError
from seatwork.marking.names import learner_code

CONFIG, SERVICE, PAGE, LEARNERS = (
    "jupyterhub_config.py",
    "seatwork-hub.service",
    "README.md",
    "learners.txt",
)
SOURCES = {CONFIG: "config.txt", SERVICE: "service.txt", PAGE: "page.txt"}
PROXIES = ("configurable-http-proxy",)
INSTRUCTOR = re.compile(r"[a-z][a-z0-9]{0,15}", re.ASCII)
READ_OTHERWISE = re.compile(r"""["'$%\\`\x00-\x1f\x7f]""")
"""What a service file or a shell would read as something else than a part of a name."""


@explained
def write_recipe(
    folder: Path, learners: list[str], *, instructor: str = "i1", replace: bool = False
) -> list[Path]:
    """Write what a machine needs to serve a class with JupyterHub.

    Parameters
    ----------
    folder : Path
        Where the files go.
    learners : list of str
        Codes of the class, such as L07; on the hub they are written small, l07.
    instructor : str
        The instructor's name on the hub.
    replace : bool
        Whether files that are there may be written over.

    Returns
    -------
    list of Path
        The files written.

    Raises
    ------
    SeatworkError
        If a code or a name is wrong, the folder's name holds a sign that a service file or a
        shell reads otherwise, a file is there already, or cannot be written.
    """
    home = _plain_name(folder.absolute())
    if not INSTRUCTOR.fullmatch(instructor):
        fault = "that is no name on a hub"
        raise SeatworkError(ascii(instructor)[:40], fault, "write small letters and digits, as i1")
    texts = _texts([learner_code(code) for code in learners], instructor, home)
    there = next((folder / name for name in texts if (folder / name).exists()), None)
    if there and not replace:
        raise SeatworkError(str(there), "it is there already", "add --replace, or name another")
    for name, text in texts.items():
        files.write(folder / name, text)
    return [folder / name for name in texts]


def _plain_name(folder: Path) -> Path:
    """Return the folder; refuse a name that does not mean itself in a service file or a shell."""
    odd = READ_OTHERWISE.search(str(folder))
    if odd:
        fault = f"a folder with {odd[0]!a} in its name is read as another by the service file"
        remedy = "name one without quotes, backslash, and the signs $ % `"
        raise SeatworkError(str(folder), fault, remedy)
    return folder


def _texts(codes: list[str], instructor: str, folder: Path) -> dict[str, str]:
    words = {
        "folder": str(folder),
        "instructor": instructor,
        "python": sys.executable,
        "proxy": next(filter(None, map(shutil.which, PROXIES)), PROXIES[0]),
    }
    found = {name: Template(_source(source)).substitute(words) for name, source in SOURCES.items()}
    return found | {LEARNERS: "".join(f"{code.lower()}\n" for code in codes)}


def _source(name: str) -> str:
    return (resources.files("seatwork.school") / "recipe" / name).read_text(encoding="utf-8")
