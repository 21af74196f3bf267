"""A stick for a room without network: wheels, an install script, lessons and sheets as pages."""

import hashlib
import shutil
from collections.abc import Callable, Sequence
from multiprocessing import get_context
from pathlib import Path
from tempfile import TemporaryDirectory

from seatwork.arguments import explained
from seatwork.errors import SeatworkError
from seatwork.files import refusal, write
from seatwork.school.own_wheel import make_wheel
from seatwork.school.stick_pages import cards, first_page, lessons
from seatwork.school.stick_targets import computer, python_version
from seatwork.school.wheels import gather

WHEELS = "wheels"


@explained
def make_stick(
    folder: Path,
    computers: Sequence[str],
    pythons: Sequence[str],
    *,
    told: Callable[[str], None] = lambda _: None,
) -> Path:
    """Gather a copy of seatwork that installs without network and without rights.

    Parameters
    ----------
    folder : Path
        The stick, or a folder to be copied to it; new or empty.
    computers : sequence of str
        Kinds: linux, windows, mac, mac-intel.
    pythons : sequence of str
        Versions of Python, such as "3.12".
    told : callable
        Given a line for each step.

    Returns
    -------
    Path
        The page it begins with, written last: without it the stick is not whole.

    Raises
    ------
    SeatworkError
        If the folder holds other things, a wheel cannot be fetched, or the disk refuses.
    """
    kinds = [(name, computer(name), python_version(one)) for name in computers for one in pythons]
    if folder.is_dir() and any(folder.iterdir()):
        raise SeatworkError(str(folder), "it holds other things", "name a new or an empty folder")
    try:
        (folder / WHEELS).mkdir(parents=True, exist_ok=True)
        with get_context("spawn").Pool(1) as beside:  # pages cost work, wheels wait for the network
            pages = beside.apply_async(write_pages, (folder,))
            own = make_wheel(folder / WHEELS)
            for name, machine, python in kinds:
                with TemporaryDirectory() as place:
                    found = [*gather(Path(place), machine, python), own]
                    _keep(folder / WHEELS, f"{name}-{python}", found)
                told(f"{name}, Python {python}: {len(found)} wheels")
            told("{} lessons and {} sheets".format(*pages.get()))
        return first_page(folder, [f"{name}-{python}" for name, _, python in kinds])
    except OSError as error:
        raise refusal(folder, error) from error


def write_pages(folder: Path) -> tuple[int, int]:
    """Write lessons and sheets, and return how many of each.

    Parameters
    ----------
    folder : Path
        The stick.
    """
    return len(lessons(folder)), len(cards(folder))


def _keep(folder: Path, name: str, wheels: Sequence[Path]) -> None:
    """Put wheels on the stick, and list them with what tells a damaged one."""
    lines = []
    for wheel in wheels:
        if wheel.parent != folder:
            shutil.copyfile(wheel, folder / wheel.name)
        lines.append(f"{hashlib.sha256(wheel.read_bytes()).hexdigest()}  {wheel.name}\n")
    write(folder / f"{name}.txt", "".join(lines))
