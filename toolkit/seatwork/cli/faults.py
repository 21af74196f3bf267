"""What a person is told when a command fails, and what they can send when it is our fault.

A report names the version, the kinds of the errors and the places in the code they went
through. It holds no value: no answer, no learner, no key, no path of the person's own, and no
message of an error, for a message may quote any of them.
"""

import os
import platform
import tempfile
from collections.abc import Iterator
from pathlib import Path
from traceback import walk_tb

from seatwork import __version__

PACKAGE = Path(__file__).parents[1]


def own_fault(error: BaseException, command: str) -> str:
    """Return the sentence for a fault of seatwork itself, after keeping a report of it.

    Parameters
    ----------
    error : BaseException
        What was raised.
    command : str
        The command given, without what was typed behind it.
    """
    kept = keep(report(error, command))
    send = f"send {kept}, which holds nothing of yours," if kept else "send this sentence"
    return (
        f"seatwork {command}: this is a fault of seatwork, not yours ({_named(error)}); "
        f"{send} to whoever looks after your seatwork, and say what you did."
    )


def _named(error: BaseException) -> str:
    places = list(_places(error))
    return f"{type(error).__name__} at {places[-1]}" if places else type(error).__name__


def report(error: BaseException, command: str) -> str:
    """Return what can be sent: versions, kinds of errors and places in the code, no values."""
    lines = [
        f"seatwork {__version__}, Python {platform.python_version()}, {platform.system()}",
        f"command: {command}",
    ]
    for one in _chain(error):
        lines.append(f"{type(one).__module__}.{type(one).__name__}")
        lines += [f"  {place}" for place in _places(one)]
    return "\n".join(lines) + "\n"


def _chain(error: BaseException | None) -> Iterator[BaseException]:
    """Yield an error and what it came from, the last first."""
    seen: set[int] = set()
    while error is not None and id(error) not in seen:
        seen.add(id(error))
        yield error
        error = error.__cause__ or error.__context__


def _places(error: BaseException) -> Iterator[str]:
    """Yield file, line and function of each step; a file that is not installed is not named."""
    for frame, line in walk_tb(error.__traceback__):
        code = frame.f_code
        yield f"{_installed(Path(code.co_filename))}:{line} {code.co_name}"


def _installed(path: Path) -> str:
    if path.is_relative_to(PACKAGE):
        return path.relative_to(PACKAGE.parent).as_posix()
    parts = path.parts
    for home in ("site-packages", "dist-packages"):
        if home in parts:
            return "/".join(parts[parts.index(home) + 1 :])
    standard = Path(os.__file__).parent
    return path.relative_to(standard).as_posix() if path.is_relative_to(standard) else "own file"


def keep(text: str) -> str:
    """Write a report where only the person can read it, and return its path; "" if it fails."""
    try:
        handle, name = tempfile.mkstemp(prefix="seatwork-fault-", suffix=".txt")
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(text)
    except OSError:
        return ""
    return name
