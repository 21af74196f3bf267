"""The record of a course folder: found, made at the first write, copied before a day's first."""

import json
import re
from datetime import date
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking import course
from seatwork.record import lines
from seatwork.record.copying import FOLDER, copy_for_day
from seatwork.record.keeping import NAME, TAKEN_OVER, Record
from seatwork.shop.folder import read_toml

SETTINGS = "course.toml"
AUTHOR = re.compile(r"I\d{1,3}", re.ASCII)
ONE = "I1"
"""The instructor of a course with one."""
OLD = ("handed_out.json", "overrides.csv", "*-results.json")
"""Files in which courses were kept before there was a record."""
NOTHING = "no sheet was handed out here"
GIVE_ONE = "run: seatwork hand-out SHEET, or name the right folder with --course"


def day_of(day: str = "") -> str:
    """Return a day as year-month-day: the one given, else today.

    Raises
    ------
    SeatworkError
        If it is no day.
    """
    try:
        return (date.fromisoformat(day) if day else date.today()).isoformat()
    except ValueError as error:
        raise SeatworkError(day, "that is no day", "write one such as 2026-03-02") from error


def author_of(folder: Path) -> str:
    """Return the code of the instructor who decides in a course folder, I1 if none is set."""
    path = folder / SETTINGS
    if not path.is_file():
        return ONE
    return author_code(read_toml(path).get("instructor", ONE))


def author_code(text: object) -> str:
    """Return an instructor's code: I and a number.

    Raises
    ------
    SeatworkError
        For anything else; names are kept out of the record.
    """
    if isinstance(text, str) and AUTHOR.fullmatch(text):
        return text
    raise SeatworkError(text, "that is no instructor's code", "write one such as I2, no name")


def set_author(folder: Path, author: str) -> None:
    """Keep the code of the instructor who decides in a course folder."""
    text = f'format = 1\ninstructor = "{author_code(author)}"\n'
    server = server_of(folder)
    if server:
        text += f"server = {json.dumps(server)}\n"
    files.write(folder / SETTINGS, text, mode=files.PRIVATE)


def server_of(folder: Path) -> str:
    """Return the address of the server that keeps a course's record; empty if a file does.

    Raises
    ------
    SeatworkError
        If ``course.toml`` says something else than text.
    """
    path = folder / SETTINGS
    said = read_toml(path).get("server", "") if path.is_file() else ""
    if not isinstance(said, str):
        remedy = "write its address as text, or leave the line out"
        raise SeatworkError(said, "that is no address of a server", remedy)
    return said


def has_record(folder: Path) -> bool:
    """Whether a course folder holds a record."""
    if server_of(folder):
        return (folder / course.KEY_FILE).is_file()
    return (folder / NAME).is_file()


def has_old_files(folder: Path) -> bool:
    """Whether a course folder was kept in files, as before there was a record."""
    return any(True for name in OLD for _ in folder.glob(name))


def open_record(folder: Path) -> Record:
    """Open the record of a course to read it.

    A course that is kept in old files gets a record first.

    Raises
    ------
    SeatworkError
        If there is none, it is gone, damaged, or of a newer version.
    """
    if not has_record(folder):
        _refuse_if_gone(folder)
        if not has_old_files(folder):
            raise SeatworkError(str(folder), NOTHING, GIVE_ONE)
        return _made(folder, "")
    return _there(folder, "")


def writable_record(folder: Path, day: str) -> Record:
    """Open the record of a course to add to it; made, with a course key, if there is none.

    What a kill left out of the decision lines is written, and the day's copy is made.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    day : str
        Year-month-day.

    Raises
    ------
    SeatworkError
        As `open_record`, or if the folder cannot be written.
    """
    if not has_record(folder):
        _refuse_if_gone(folder)
        record = _made(folder, day)
    else:
        record = _there(folder, day)
    record.complete_lines()
    copy_for_day(record, day)
    return record


def _made(folder: Path, day: str) -> Record:
    """Make the record of a course, from its old files if it has some."""
    files.make_folder(folder, private=True)
    with files.lock(folder, wait=20):
        course.make_key(folder)
        record = _there(folder, day)
        if record.server and record.count():
            (folder / course.KEY_FILE).unlink()
            remedy = "copy course.key here from the computer where the record was begun"
            raise SeatworkError("course.key", "the record on the server has one already", remedy)
        return record


def _there(folder: Path, day: str) -> Record:
    key, author = course.read_key(folder), author_of(folder)
    record = Record(folder / NAME, key, author, server_of(folder))
    if has_old_files(folder) and record.note(TAKEN_OVER) is None:  # also if that was killed
        from seatwork.record.old_files import take_over

        with files.lock(folder, wait=20):
            take_over(record, folder, day_of(day))
    return record


def _refuse_if_gone(folder: Path) -> None:
    """Never begin anew where a record was: its copies and lines bring it back."""
    left = lines.place_of(folder / NAME).exists() or any((folder / FOLDER).glob("record-*.db"))
    if left:
        remedy = f"run: seatwork record bring-back --course {folder}"
        raise SeatworkError(str(folder / NAME), "the record is gone", remedy)
