"""Looking an installation over: each check says what it found, and how to mend a fault."""

import json
import os
import shlex
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from importlib.metadata import PackageNotFoundError, version
from importlib.util import find_spec
from pathlib import Path
from tempfile import TemporaryDirectory

from seatwork import __version__
from seatwork.deferred import put_off_grammars
from seatwork.errors import SeatworkError
from seatwork.files import refusal, write
from seatwork.opening import record_look, trial
from seatwork.opening.checked import Check
from seatwork.opening.shared import signs
from seatwork.opening.trial import text_of

LEAST_PYTHON = (3, 11)
SERVER_SIDE = ("jupyterlab", "jupyter_server", "jupyterlab_widgets", "anywidget")
KERNEL_SIDE = ("seatwork", "ipykernel", "ipywidgets", "anywidget", "matplotlib", "numpy")
OWN_PYTHON = ("python", "python3", f"python3.{sys.version_info.minor}")
ASK_VERSIONS = (
    "import importlib.metadata as m, json, sys\n"
    "print(json.dumps({n: m.version(n) for n in sys.argv[1:]}))"
)
LONGEST = 180  # seconds for all trials
# no seatwork is older than this [s since 1970]: 1 January 2026
EARLIEST = 1_767_225_600
REINSTALL = "install seatwork again in a fresh virtual environment"


def examine(folder: Path) -> Iterator[Check]:
    """Look at everything a lesson needs, one check after the other.

    Parameters
    ----------
    folder : Path
        Where the workbook is or would be made.
    """
    put_off_grammars()
    yield python()
    yield from packages()
    yield from kernel()
    yield looked("parts in the page", page_parts)
    yield looked("messages without delay", prompt_server)
    yield looked("the server", server)
    yield write_access(folder)
    yield privacy(folder)
    yield from record_look.records(folder)
    yield sharing(folder)
    yield fonts()
    yield clock(time.time())


def looked(name: str, look: Callable[[], Check]) -> Check:
    """Look at something; if looking itself fails, that is the fault found."""
    try:
        return look()
    except Exception as error:  # a library that does not even load
        return Check(name=name, found=text_of(error), fix=REINSTALL)


def python(found: tuple[int, ...] = sys.version_info[:3]) -> Check:
    """Look at the version of Python."""
    least = ".".join(map(str, LEAST_PYTHON))
    fix = "" if tuple(found) >= LEAST_PYTHON else f"install Python {least} or newer"
    return Check(name="Python", found=".".join(map(str, found)), fix=fix)


def packages() -> Iterator[Check]:
    """Look at the packages of the server's side."""
    for name in SERVER_SIDE:
        try:
            yield Check(name=f"{name} (server)", found=version(name))
        except PackageNotFoundError:
            yield Check(name=f"{name} (server)", found="not installed", fix=REINSTALL)


def kernel() -> Iterator[Check]:
    """Look at the kernel ``python3``: it must be there and run this installation's seatwork."""
    spec = looked("kernelspec python3", kernel_program)
    yield spec
    if spec.passed:
        yield kernel_versions(spec.found)
        yield from trials(spec.found)


def kernel_program() -> Check:
    """Look for the Python that runs the lessons."""
    from jupyter_client.kernelspec import KernelSpecManager, NoSuchKernel

    try:
        named = KernelSpecManager().get_kernel_spec("python3").argv[0]
    except NoSuchKernel:
        return Check(name="kernelspec python3", found="not found", fix=REINSTALL)
    # a bare name stands for the Python that starts the server
    return Check(name="kernelspec python3", found=sys.executable if named in OWN_PYTHON else named)


def kernel_versions(program: str) -> Check:
    """Ask the kernel's Python for its packages, and compare its seatwork with this one."""
    command = [program, "-c", ASK_VERSIONS, *KERNEL_SIDE]
    try:
        answer = subprocess.run(command, capture_output=True, timeout=60, check=True)
        found: dict[str, str] = json.loads(answer.stdout)
    except (OSError, ValueError, subprocess.SubprocessError):
        return Check(
            name="packages (kernel)",
            found=f"{program} lacks some of {', '.join(KERNEL_SIDE)}",
            fix=f"start the lessons with `{sys.executable} -m seatwork.cli open`",
        )
    text = ", ".join(f"{name} {number}" for name, number in found.items())
    same = found["seatwork"] == __version__
    fix = "" if same else f"this side is seatwork {__version__}: {REINSTALL}"
    return Check(name="packages (kernel)", found=text, fix=fix)


def trials(program: str) -> Iterator[Check]:
    """Let the kernel's Python make a plan, a drawing, a question and a bench."""
    try:
        with TemporaryDirectory() as empty:  # no workbook here: the package's own shop holds
            done = subprocess.run(
                [program, "-m", trial.__name__], capture_output=True, timeout=LONGEST, cwd=empty
            )
        ended = dict(map(json.loads, done.stdout.splitlines()))
        last = done.stderr.decode(errors="replace").strip().splitlines()[-1:]
        broken = last[0] if last else f"Python ended with {done.returncode}"
    except (OSError, ValueError, subprocess.SubprocessError) as error:
        ended, broken = {}, text_of(error)
    for name in trial.TRIALS:
        fault = ended.get(name, broken)
        yield Check(name=f"makes {name}", found=fault or "done", fix=REINSTALL if fault else "")


def page_parts() -> Check:
    """Look at the parts that run in the page: they must fit the packages they come with."""
    from jupyter_core.paths import jupyter_path

    homes = [Path(home) for home in jupyter_path("labextensions")]
    widgets = page_part(homes, "@jupyter-widgets/jupyterlab-manager")
    live = page_part(homes, "anywidget")
    text = f"widgets {widgets or 'missing'}, live pictures {live or 'missing'}"
    # version 5 of the page's widgets is the one for ipywidgets 8
    fits = widgets is not None and widgets.startswith("5.") and live == _version("anywidget")
    fix = "" if fits else f"an older copy may shadow the right one; {REINSTALL}"
    return Check(name="parts in the page", found=text, fix=fix)


def page_part(homes: list[Path], name: str) -> str | None:
    """Read the version of a part in the first folder that has it; None without one."""
    for home in homes:
        try:
            description = json.loads((home / name / "package.json").read_bytes())
        except (OSError, ValueError):
            continue
        return str(description.get("version"))
    return None


def _version(name: str) -> str | None:
    try:
        return version(name)
    except PackageNotFoundError:
        return None


def prompt_server() -> Check:
    """Look whether the installed server lets our part send kernel messages without delay."""
    from jupyter_server.serverapp import ServerApp

    name = "messages without delay"
    if ServerApp.class_traits().get("kernel_websocket_connection_class") is not None:
        return Check(name=name, found="can be switched on")
    return Check(
        name=name,
        found="this jupyter_server has no place to switch them on; sliders will lag",
        fix="pip install 'jupyter_server>=2'",
    )


def server() -> Check:
    """Load the server, as ``open`` does."""
    from jupyterlab import labapp

    return Check(name="the server", found=f"{labapp.LabApp.name} loads")


def write_access(folder: Path) -> Check:
    """Write a small file where the workbook is or would be, and take it away again."""
    place = next(up for up in (folder.absolute(), *folder.absolute().parents) if up.is_dir())
    trial = place / ".seatwork-trial"
    try:
        write(trial, b"trial")
        trial.unlink()
    except (SeatworkError, OSError) as error:
        refused = error if isinstance(error, SeatworkError) else refusal(trial, error)
        return Check(name="write access", found=f"{place}: {refused.fault}", fix=refused.remedy)
    return Check(name="write access", found=str(place))


def privacy(folder: Path) -> Check:
    """Look whether other accounts can open the course folder.

    Parameters
    ----------
    folder : Path
        The workbook; a course folder in it holds ``course.key``.
    """
    courses = [key.parent for key in sorted(folder.glob("*/course.key"))]
    is_posix = os.name == "posix"
    open_ones = [place for place in courses if is_posix and place.stat().st_mode & 0o077]
    if open_ones:
        names = ", ".join(map(str, open_ones))
        fix = f"run: chmod 700 {' '.join(shlex.quote(str(place)) for place in open_ones)}"
        return Check(name="privacy", found=f"other accounts can open {names}", fix=fix)
    return Check(name="privacy", found="no course folder here is open to other accounts")


def fonts() -> Check:
    """Look for the font of the drawings, which comes with matplotlib."""
    spec = find_spec("matplotlib")
    if spec is None or spec.origin is None:
        return Check(name="fonts", found="matplotlib is not installed", fix=REINSTALL)
    font = Path(spec.origin).parent / "mpl-data" / "fonts" / "ttf" / "DejaVuSans.ttf"
    fix = "" if font.is_file() else REINSTALL
    return Check(name="fonts", found=font.name if not fix else "DejaVu Sans is missing", fix=fix)


def sharing(folder: Path) -> Check:
    """Look for signs that the workbook or the course beside it is synchronized or shared."""
    places = (folder.absolute(), Path("course").absolute())
    seen = list(dict.fromkeys(sign for place in places for sign in signs(place)))
    found = "no sign that it is synchronized or shared"
    if seen:
        found = (
            f"this looks like a folder that is synchronized or shared ({'; '.join(seen)}); "
            "keep a course folder, with its answers and keys, out of such a one"
        )
    return Check(name="sharing", found=found)


def clock(now: float) -> Check:
    """Look at the date: records carry it.

    Parameters
    ----------
    now : float
        The computer's clock [s since 1970].
    """
    text = time.strftime("%Y-%m-%d", time.localtime(now))
    fix = "" if now >= EARLIEST else "set the computer's date: records would carry a wrong one"
    return Check(name="clock", found=text, fix=fix)
