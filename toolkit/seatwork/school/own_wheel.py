"""A wheel of the seatwork that runs here, with its lessons, made without any build tool."""

import base64
import hashlib
import zipfile
from collections.abc import Iterator
from importlib.metadata import distribution
from pathlib import Path

from seatwork import __version__
from seatwork.errors import SeatworkError
from seatwork.files import refusal
from seatwork.opening import source
from seatwork.opening.origin import PACKAGE

NAME = f"seatwork-{__version__}-py3-none-any.whl"
INFO = f"seatwork-{__version__}.dist-info"
WHEEL = "Wheel-Version: 1.0\nGenerator: seatwork\nRoot-Is-Purelib: true\nTag: py3-none-any\n"
LESSONS = ("notebooks", "exercises")


def metadata() -> str:
    """Return what this seatwork says of itself, its requirements among it.

    Raises
    ------
    SeatworkError
        If it runs without being installed.
    """
    found = distribution("seatwork").read_text("METADATA")
    if not found:
        raise SeatworkError("seatwork", "it does not say what it needs", "install it with pip")
    return found


def make_wheel(folder: Path) -> Path:
    """Write the wheel into a folder and return its place.

    Parameters
    ----------
    folder : Path
        Where it goes.
    """
    path, record = folder / NAME, []
    try:
        with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as wheel:
            for name, content in (*_package(), *_lessons(), *_info()):
                wheel.writestr(name, content)
                record.append(f"{name},sha256={_hash(content)},{len(content)}")
            record.append(f"{INFO}/RECORD,,")
            wheel.writestr(f"{INFO}/RECORD", "\n".join(record) + "\n")
    except OSError as error:
        raise refusal(path, error) from error
    return path


def _package() -> Iterator[tuple[str, bytes]]:
    for path in sorted(PACKAGE.rglob("*")):
        inside = path.relative_to(PACKAGE)
        skipped = "__pycache__" in inside.parts or inside.parts[0] == "workbook"
        if path.is_file() and not skipped:
            yield f"seatwork/{inside.as_posix()}", path.read_bytes()


def _lessons() -> Iterator[tuple[str, bytes]]:
    for name in LESSONS:
        for path in sorted((source() / name).rglob("*")):
            inside = path.relative_to(source())
            if path.is_file() and not any(part[0] in "._" for part in inside.parts):
                yield f"seatwork/workbook/{inside.as_posix()}", path.read_bytes()


def _info() -> Iterator[tuple[str, bytes]]:
    yield f"{INFO}/METADATA", metadata().encode()
    yield f"{INFO}/WHEEL", WHEEL.encode()
    yield f"{INFO}/entry_points.txt", b"[console_scripts]\nseatwork = seatwork.cli:main\n"


def _hash(content: bytes) -> str:
    return base64.urlsafe_b64encode(hashlib.sha256(content).digest()).rstrip(b"=").decode()
