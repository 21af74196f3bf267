"""The workbook folder: how it is found, and reading the files a person edits in it."""

import re
import tomllib
from collections.abc import Callable, Hashable
from contextvars import ContextVar, Token
from functools import lru_cache, wraps
from importlib import resources
from os.path import realpath
from pathlib import Path
from typing import Any, TypeVar

from seatwork.errors import SeatworkError

FoundT = TypeVar("FoundT")

MARKER = "workbook.toml"
FORMAT = 1
LONGEST_FILE = 200_000  # bytes; a rule file is a few thousand
LONGEST_KEY = re.compile(r"""(?:(?:[\w-]+|"[^"\n]*"|'[^'\n]*')[ \t]*\.[ \t]*){20}""")
"""A key of over twenty parts; reading one of thousands takes minutes."""

MOST_LOOKS = 60
"""Times a file is read anew to find the line of a fault."""


_KEPT: ContextVar[dict[Hashable, Any] | None] = ContextVar("what was looked up once")


class AsRead:
    """The shop's rules and lists as they were first read, for whoever asks at every step.

    Inside ``with``, what a function marked `once` has found is kept: no file is opened and no
    path is asked a second time. Whoever makes a new one reads anew; `outdated` says when to.
    """

    def __init__(self) -> None:
        self._found: dict[Hashable, Any] = {}
        self._tokens: list[Token[dict[Hashable, Any] | None]] = []
        self._saved = _state()

    def __enter__(self) -> "AsRead":
        self._tokens.append(_KEPT.set(self._found))
        return self

    def __exit__(self, *_: object) -> None:
        _KEPT.reset(self._tokens.pop())

    @property
    def outdated(self) -> bool:
        """Whether a rule or a list was saved since, or another folder is the workbook now."""
        try:
            return self._saved != _state()
        except (SeatworkError, OSError):  # it cannot be read any more, so it is not what it was
            return True


def once(look: Callable[[], FoundT]) -> Callable[[], FoundT]:
    """Let a look-up be made once inside an `AsRead`, and each time outside of it."""

    @wraps(look)
    def found() -> FoundT:
        kept = _KEPT.get(None)
        if kept is None:
            return look()
        if look not in kept:
            kept[look] = look()
        known: FoundT = kept[look]
        return known

    return found


def saved(folder: Path | None) -> tuple[tuple[Path, int], ...]:
    """Return the files of a workbook's shop and when each was saved [ns]."""
    own = sorted((folder / "shop").glob("*.*")) if folder else []
    return tuple((path, path.stat().st_mtime_ns) for path in own)


def _state() -> tuple[Path | None, tuple[tuple[Path, int], ...]]:
    """Return the workbook folder and its files as they are at this moment."""
    folder = _above(Path.cwd())
    return folder, saved(folder)


def find(start: Path | None = None) -> Path | None:
    """Find the workbook folder at or above a folder.

    Parameters
    ----------
    start : Path, optional
        Where to begin; the working folder if not given.

    Returns
    -------
    Path or None
        The nearest folder that holds ``workbook.toml``; None if there is none, and then
        the package's own defaults hold. Nothing is written either way.

    Raises
    ------
    SeatworkError
        If the marker is of another format than this version knows.
    """
    return _above(Path(realpath(start))) if start else _here()


@once
def _here() -> Path | None:
    return _above(Path.cwd())


def _above(here: Path) -> Path | None:
    for folder in (here, *here.parents):
        marker = folder / MARKER
        if marker.is_file():
            stamp = marker.stat()
            _check_marker(marker, stamp.st_mtime_ns, stamp.st_size)
            return folder
    return None


@lru_cache(maxsize=8)
def _check_marker(marker: Path, _modified: int, _length: int) -> None:
    """Refuse a marker of another format; looked at again when the file was saved."""
    found = read_toml(marker).get("format")
    if found != FORMAT:
        raise SeatworkError(
            str(marker),
            f"its format is {found!r}, and this version knows format {FORMAT}",
            f"write format = {FORMAT}, or use the version that made the folder",
        )


def hand_in_folder(workbook: Path) -> Path | None:
    """Return the folder that a workbook names for handing in (``hand_in``), or None.

    A name that does not begin at the top of a disk begins in the workbook.

    Raises
    ------
    SeatworkError
        If what stands there is no name of a folder.
    """
    named = read_toml(workbook / MARKER).get("hand_in")
    if named is None:
        return None
    if not isinstance(named, str) or not named.strip() or "\0" in named:
        raise SeatworkError(
            str(workbook / MARKER),
            f"hand_in is {ascii(named)[:40]}, which names no folder",
            "write a line such as hand_in = '/srv/hand-in', or take it out",
        )
    return workbook / Path(named.strip()).expanduser()


def language_named(workbook: Path) -> str:
    """Return the code of the language that a workbook names (``language``); en where none is.

    Raises
    ------
    SeatworkError
        If what stands there is no code of two letters.
    """
    named = read_toml(workbook / MARKER).get("language", "en")
    if not isinstance(named, str) or not re.fullmatch("[a-z]{2}", named):
        raise SeatworkError(
            str(workbook / MARKER),
            f"language is {ascii(named)[:40]}, which is no code of a language",
            'write language = "es", or take the line out',
        )
    return named


def at(folder: str | Path | None) -> Path | None:
    """Return the workbook folder that is named, or the one found from the working folder."""
    return find() if folder is None else Path(folder)


def read_text(path: Path) -> str:
    """Return the text of a file that a person edits.

    Raises
    ------
    SeatworkError
        If it cannot be opened, is not UTF-8, or is far too long to be what it should be.
    """
    try:
        raw = path.read_bytes()
    except OSError as error:
        reason = error.strerror or "it cannot be opened"
        raise SeatworkError(str(path), reason.lower(), "check the file") from error
    if len(raw) > LONGEST_FILE:
        raise SeatworkError(str(path), "the file is far too long", "check what was saved there")
    try:
        return raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = raw[: error.start].count(b"\n") + 1
        raise SeatworkError(
            f"{path}, line {line}", "that is not UTF-8 text", "save the file as UTF-8"
        ) from error


def read_toml(path: Path) -> dict[str, Any]:
    """Return a TOML file that a person edits, or say which line cannot be read.

    Raises
    ------
    SeatworkError
        With file and line, if the file cannot be read as TOML.
    """
    return parse_toml(read_text(path), str(path))


def parse_toml(text: str, name: str) -> dict[str, Any]:
    """Parse TOML text; `name` is the file that an error names.

    Raises
    ------
    SeatworkError
        With file and line, if the text is no TOML.
    """
    found = LONGEST_KEY.search(text)
    if found:
        line = text.count("\n", 0, found.start()) + 1
        raise SeatworkError(
            f"{name}, line {line}", "its name has over 20 parts", "write a heading and a name"
        )
    try:
        return tomllib.loads(text)
    except (tomllib.TOMLDecodeError, RecursionError) as error:
        found = re.search(r"\(at line (\d+), column \d+\)", str(error))
        line = int(found[1]) if found else len(text.splitlines())
        reason = re.sub(r" \(at .*\)", "", str(error)).lower()
        raise SeatworkError(
            f"{name}, line {max(line, 1)}",
            f"the line cannot be read ({reason})",
            'write lines such as countersink_ratio = "1/3" under a [heading]',
        ) from error


def line_of(text: str, *keys: str) -> int:
    """Return the line where the statement of `keys` begins in TOML text that parses.

    Parameters
    ----------
    text : str
        The whole file.
    *keys : str
        The way to the value, such as ``"speeds", "countersink_cap"``.

    Returns
    -------
    int
        Line number from 1; the first line after which the value is there.
    """
    seen = _plain_lines_of(text, keys)
    if len(seen) == 1 and '"""' not in text and "'''" not in text:
        return seen[0]
    lines = text.splitlines(keepends=True)
    begins, looks = 1, 0
    for count, line in enumerate(lines, 1):
        if begins == count and keys[-1] not in line and '"' not in line and "'" not in line:
            begins = count + 1
            continue
        looks += 1
        if looks > MOST_LOOKS:
            return seen[0] if seen else begins
        try:
            so_far = tomllib.loads("".join(lines[:count]))
        except tomllib.TOMLDecodeError:
            continue
        if _holds(so_far, keys):
            return begins
        begins = count + 1
    return begins


def _plain_lines_of(text: str, keys: tuple[str, ...]) -> list[int]:
    """Return the lines that look like ``key = ...`` under the heading of `keys`."""
    found, heading = [], ""
    *above, key = keys
    for number, line in enumerate(text.splitlines(), start=1):
        header = re.match(r"\s*\[+\s*([\w.-]+)\s*\]+", line)
        heading = header[1] if header else heading
        is_key = re.match(rf"\s*{re.escape(key)}\s*=", line) and heading == ".".join(above)
        if is_key or (header and heading == ".".join(keys)):
            found.append(number)
    return found


def _holds(table: Any, keys: tuple[str, ...]) -> bool:
    for key in keys:
        if not isinstance(table, dict) or key not in table:
            return False
        table = table[key]
    return True


def package_text(name: str) -> str:
    """Return the text of a file of the package's own defaults."""
    return (resources.files("seatwork.shop") / "defaults" / name).read_text(encoding="utf-8")
