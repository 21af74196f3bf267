"""The lines of a CSV of unknown making: any usual encoding and separator, each line alone."""

import csv
from dataclasses import dataclass
from pathlib import Path

from seatwork.errors import SeatworkError

LARGEST = 16 * 1024 * 1024  # bytes
LONGEST = 10_000  # characters a line
MARKS = ((b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"), (b"\xef\xbb\xbf", "utf-8-sig"))
OLD = "cp1252"


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One line that is not blank.

    Parameters
    ----------
    number : int
        As an editor counts it, from 1.
    text : str
        The line as written.
    cells : tuple of str
        Its cells as written.
    fault : str
        Why it cannot be read; empty if it can.
    """

    number: int
    text: str = ""
    cells: tuple[str, ...] = ()
    fault: str = ""


def lines_of(path: Path) -> tuple[list[Line], list[str]]:
    """Read the lines of a file that hold something; one that begins with ``# `` is a remark.

    Parameters
    ----------
    path : Path
        The file.

    Returns
    -------
    tuple
        The lines, and what is to be said of the file as a whole.

    Raises
    ------
    SeatworkError
        If it cannot be opened, is no plain file, or is over 16 MB.
    """
    text, told = _text(path)
    written = [
        (number, line)
        for number, line in enumerate(text.replace("\r\n", "\n").replace("\r", "\n").split("\n"), 1)
        if line.strip(" \t,;") and not line.lstrip().startswith("# ")
    ]
    if not written:
        return [], told
    separator = _separator(written[0][1])
    return [_line(number, line, separator) for number, line in written], told


def _text(path: Path) -> tuple[str, list[str]]:
    try:
        if not path.is_file():
            raise SeatworkError(path.name, "there is no such file", "check its name and folder")
        if path.stat().st_size > LARGEST:
            raise SeatworkError(path.name, "it is over 16 MB", "split it")
        raw = path.read_bytes()
    except (OSError, ValueError) as error:
        if isinstance(error, SeatworkError):
            raise
        raise SeatworkError(path.name, "it cannot be opened", "check its name") from error
    return _decoded(raw)


def _decoded(raw: bytes) -> tuple[str, list[str]]:
    for mark, encoding in MARKS:
        if raw.startswith(mark):
            return raw.decode(encoding, errors="replace"), []
    try:
        return raw.decode("utf-8"), []
    except UnicodeDecodeError:
        told = "it is not UTF-8; read as an old Windows file. Save it as CSV UTF-8."
        return raw.decode(OLD, errors="replace"), [told]


def _separator(heading: str) -> str:
    """Take the separator that the heading has most of."""
    return max(",;\t", key=heading.count)


def _line(number: int, text: str, separator: str) -> Line:
    if len(text) > LONGEST:
        return Line(number=number, fault="it is far too long for one part")
    try:
        cells = next(csv.reader([text], delimiter=separator, strict=True), [])
    except csv.Error as error:
        return Line(number=number, text=text, fault=f"it is no row of a CSV ({error})")
    return Line(number=number, text=text, cells=tuple(cells))
