"""Decision lines: what a person decided, a second time as plain lines beside the record.

Papers come back from what was handed in, forms from the day's copy; decisions come back from
nowhere else.
"""

import json
import os
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from seatwork import files
from seatwork.files.writing import BINARY
from seatwork.record.facts import text_of

NAME = ".decisions.jsonl"
Line = dict[str, dict[str, Any]]
"""A decision: its head and its body, column by column."""


def place_of(record: Path) -> Path:
    """Return where the lines of a record are."""
    return record.with_name(record.stem + NAME)


def add(record: Path, decisions: Iterable[Line]) -> None:
    """Write decisions behind those that are there, and force them to the disk."""
    text = b"".join(text_of(one) + b"\n" for one in decisions)
    if not text:
        return
    place = place_of(record)
    try:
        handle = os.open(place, os.O_WRONLY | os.O_APPEND | os.O_CREAT | BINARY, files.PRIVATE)
        with os.fdopen(handle, "ab") as file:
            file.write(text)
            file.flush()
            os.fsync(file.fileno())
    except OSError as error:
        raise files.refusal(place, error) from error


def read(record: Path) -> Iterator[Line]:
    """Yield the decisions of a record's lines; a line that was cut off is passed over."""
    place = place_of(record)
    for raw in place.read_bytes().splitlines() if place.is_file() else ():
        try:
            one = json.loads(raw)
            right = isinstance(one["head"]["id"], str) and isinstance(one["body"], dict)
        except (ValueError, TypeError, KeyError, RecursionError):
            continue
        if right:
            yield one


def known(record: Path) -> set[str]:
    """Return the ids of the decisions that stand in the lines."""
    return {one["head"]["id"] for one in read(record)}


def rewrite(record: Path, decisions: Iterable[Line]) -> None:
    """Write the lines anew, whole: for taking a learner out of them."""
    text = b"".join(text_of(one) + b"\n" for one in decisions)
    files.write(place_of(record), text, mode=files.PRIVATE)
