"""The text of a table as people save it: its encoding, its lines."""

import errno
import re
from contextlib import suppress
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.files.writing import refusal

MOST_BYTES = 16 * 1024 * 1024
MARKS = ((b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"), (b"\xef\xbb\xbf", "utf-8-sig"))
WORKBOOKS = (b"PK\x03\x04", b"\xd0\xcf\x11\xe0")  # how a spreadsheet's own files begin
WESTERN = re.compile(r"[\n\t -~À-ÿ€‘’“”–—\xa0§°±²³µ·¼½¾]*")
"""What an old Windows file of this trade may hold; anything else is another code page."""
PARTLY_UTF_8 = re.compile(rb"[\xc2-\xf4][\x80-\xbf]")


def text_of(path: Path, file: str) -> str:
    """Return the text of a table with plain line ends; `file` is what errors call it.

    Raises
    ------
    SeatworkError
        If it cannot be opened, is too large, no text, or in a code page that cannot be told.
    """
    try:
        if path.is_dir():
            raise IsADirectoryError(errno.EISDIR, "a folder")
        if path.exists() and not path.is_file():
            raise SeatworkError(file, "it is no plain file", "name a CSV file")
        with path.open("rb") as opened:
            raw = opened.read(MOST_BYTES + 1)
    except (OSError, ValueError) as error:
        if isinstance(error, SeatworkError):
            raise
        raise refusal(path, error) from error
    if len(raw) > MOST_BYTES:
        raise SeatworkError(file, "it is over 16 MB", "check what was saved there")
    if raw.startswith(WORKBOOKS):
        raise SeatworkError(file, "it is a spreadsheet's own file", "save it as CSV UTF-8")
    return plain_ends(_decoded(raw, file))


def _decoded(raw: bytes, file: str) -> str:
    encodings = [encoding for mark, encoding in MARKS if raw.startswith(mark)] or ["utf-8"]
    with suppress(UnicodeDecodeError):
        return raw.decode(encodings[0])
    with suppress(UnicodeDecodeError):
        text = raw.decode("cp1252")
        if WESTERN.fullmatch(plain_ends(text)) and not PARTLY_UTF_8.search(raw):
            return text
    line = raw[: _first_fault(raw)].count(b"\n") + 1
    raise SeatworkError(f"{file}, line {line}", "that is not UTF-8 text", "save it as CSV UTF-8")


def _first_fault(raw: bytes) -> int:
    try:
        raw.decode("utf-8")
    except UnicodeDecodeError as error:
        return error.start
    return 0


def plain_ends(text: str) -> str:
    """Return text without a byte-order mark, every line end as a plain one."""
    text = text.removeprefix("\N{ZERO WIDTH NO-BREAK SPACE}")
    return text.replace("\r\n", "\n").replace("\r", "\n")


def lines_of(text: str) -> list[tuple[int, str]]:
    """Return the lines that hold something, each with its number."""
    return [
        (number, line)
        for number, line in enumerate(text.split("\n"), 1)
        if line.strip(' \t,;"\xa0') and not line.lstrip().startswith(("# ", "sep="))
    ]
