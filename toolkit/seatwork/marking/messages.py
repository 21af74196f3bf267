"""Answers handed in as text: the one line of a message that is an answer file."""

import json
import re

from seatwork.errors import SeatworkError

MARKS = "\u201c\u201d\u201e\u201f"
"""Quotation marks that a phone puts for plain ones."""
BEGINS = re.compile(rf'\{{["{MARKS}]format["{MARKS}]:')
AROUND = re.compile(rf"(?<=[{{\[,:])[{MARKS}]|[{MARKS}](?=[:,\]}}])|(?<=\\)[{MARKS}]")
"""Such marks where the answers' own stand: at either end of a text, or behind a backslash."""
REMEDY = "ask for the file, or for the text as the page gave it"


def in_message(raw: bytes) -> bytes:
    """Return the line of a message that holds the answers.

    Parameters
    ----------
    raw : bytes
        The message as a text file; greetings may stand above and below the line.

    Raises
    ------
    SeatworkError
        If it holds no such line, more than one, or one that was broken over several lines: where
        a line is broken a space may be lost, and 1 1/4 would become 11/4.

    Notes
    -----
    Where a phone made its quotation marks curly they are made plain again, and no other; the
    seal tells whether the answers are then as the page gave them.
    """
    try:
        lines = [line.strip() for line in raw.decode("utf-8-sig").split("\n")]
    except UnicodeDecodeError as error:
        fault = "another program changed its letters (not UTF-8)"
        raise SeatworkError("message", fault, REMEDY) from error
    found = [_plain(line) for line in lines if BEGINS.match(line)]
    if not found:
        raise SeatworkError("message", "it holds no answers copied from a page", REMEDY)
    if len(found) > 1:
        raise SeatworkError("message", "it holds the answers more than once", "keep one of them")
    if not _is_whole(found[0]):
        fault = "the answers in it are broken over several lines, or cut off"
        raise SeatworkError("message", fault, REMEDY)
    return found[0].encode("utf-8")


def _plain(line: str) -> str:
    """Return a line with plain quotation marks around its texts; as it is if it has them."""
    return line if _is_whole(line) else AROUND.sub('"', line)


def _is_whole(line: str) -> bool:
    """Tell whether a line is one whole object, and not the beginning of one."""
    try:
        return isinstance(json.loads(line), dict)
    except (ValueError, RecursionError):
        return False
