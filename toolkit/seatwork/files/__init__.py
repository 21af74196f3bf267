"""The one way to files: whole writes, tables as people save them, one writer at a time."""

from seatwork.files.locking import HOLDER, LOCK, lock
from seatwork.files.rows import Row, build_each
from seatwork.files.tables import plain, read_table, write_table
from seatwork.files.writing import PRIVATE, PRIVATE_FOLDER, make_folder, refusal, write

__all__ = [
    "HOLDER",
    "LOCK",
    "PRIVATE",
    "PRIVATE_FOLDER",
    "Row",
    "build_each",
    "lock",
    "make_folder",
    "plain",
    "read_table",
    "refusal",
    "write",
    "write_table",
]
