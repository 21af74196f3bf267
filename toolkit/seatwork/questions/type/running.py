"""Running a Python file that a person wrote: a type, a drawing, a proof."""

import hashlib
import importlib.util
import traceback
from importlib.machinery import SourceFileLoader
from pathlib import Path
from types import CodeType, ModuleType

from seatwork.errors import SeatworkError, plainly


class AsWritten(SourceFileLoader):
    """Runs what stands in the file, never a compiled copy that lies beside it.

    A compiled copy counts as current while the file's size and second of saving stay the same;
    a change of one digit may keep both, and so may a copy made by somebody else.
    """

    def get_code(self, fullname: str) -> CodeType:
        """Compile the file; nothing is kept."""
        path = self.get_filename(fullname)
        code: CodeType = self.source_to_code(self.get_data(path), path)
        return code


def fingerprint(path: Path) -> str:
    """Return the SHA-256 of a file, in hex digits; another file, or a change, gives another.

    Raises
    ------
    SeatworkError
        If it cannot be read.
    """
    try:
        return hashlib.sha256(path.read_bytes()).hexdigest()
    except OSError as error:
        reason = (error.strerror or "it cannot be opened").lower()
        raise SeatworkError(str(path), reason, "name a file that is there") from error


def run_file(path: Path, room: str) -> ModuleType:
    """Run a file and return it as a module.

    Parameters
    ----------
    path : Path
        The file; whatever stands in it is run.
    room : str
        What comes before its name in the name of the module.

    Raises
    ------
    SeatworkError
        In one sentence, with the line, if it is not there, no Python file, or fails.
    """
    if path.suffix != ".py" or not path.is_file():
        raise SeatworkError(str(path), "that is no Python file", "name a file that ends with .py")
    name = f"{room}.{path.stem}"
    loader = AsWritten(name, str(path))
    spec = importlib.util.spec_from_file_location(name, path, loader=loader)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    try:
        spec.loader.exec_module(module)
    except SyntaxError as error:
        place, fault = f"{path.name}, line {error.lineno}", f"it is no Python ({error.msg})"
        raise SeatworkError(place, fault, "mend that line") from error
    except (Exception, SystemExit) as error:  # a person's file may fail in any way
        fault = f"running it failed ({failed(error, path)})"
        raise SeatworkError(path.name, fault, "mend the file") from error
    return module


def failed(error: BaseException, *files: Path) -> str:
    """Say how a person's own code failed, and in which line of their file.

    Parameters
    ----------
    error : BaseException
        What was raised.
    *files : Path
        The files that are theirs.
    """
    frames = traceback.extract_tb(error.__traceback__)
    lines = [frame.lineno for frame in frames if Path(frame.filename) in files]
    text = f"{type(error).__name__}: {plainly(error)}"
    return f"{text}, line {lines[-1]}" if lines else text
