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
        If a code or a name is wrong, a file is there already, or cannot be written.
    """
    if not INSTRUCTOR.fullmatch(instructor):
        fault = "that is no name on a hub"
        raise SeatworkError(ascii(instructor)[:40], fault, "write small letters and digits, as i1")
    texts = _texts([learner_code(code) for code in learners], instructor, folder.absolute())
    there = next((folder / name for name in texts if (folder / name).exists()), None)
    if there and not replace:
        raise SeatworkError(str(there), "it is there already", "add --replace, or name another")
    for name, text in texts.items():
        files.write(folder / name, text)
    return [folder / name for name in texts]


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
