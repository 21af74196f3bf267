"""Handing in: the answer file is copied to the folder that the workbook names, whole or not."""

from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.answers import read
from seatwork.marking.names import PRACTICE_LEARNER
from seatwork.shop import find
from seatwork.shop.folder import hand_in_folder
from seatwork.worksheet.answered import Answered

FOR_THE_INSTRUCTOR = 0o640
"""The learner may change what was handed in, the folder's group may read it."""


def place_of(desk: Answered) -> Path | None:
    """Return where the answers of a sheet are to be handed in; None if no place is named.

    Raises
    ------
    SeatworkError
        If what the workbook names is no folder's name.
    """
    if desk.mine.learner == PRACTICE_LEARNER or desk.kept.folder is None:
        return None
    workbook = find(desk.kept.folder)
    named = hand_in_folder(workbook) if workbook else None
    return named / desk.answers.name if named else None


def standing(desk: Answered, place: Path) -> str:
    """Say whether the answers were handed in, and whether they changed since."""
    words = desk.voice.words
    try:
        there = place.read_bytes()
    except FileNotFoundError:
        return words["form.not_handed_in"]
    except OSError:  # a folder that takes files in and shows none
        return ""
    return words["form.handed_in_same" if there == _own(desk) else "form.handed_in_before"]


def hand_in(desk: Answered) -> str:
    """Copy the answer file of a sheet to where it is handed in, and say what happened.

    What was handed in before stays beside it as a backup; it is the learner's own.

    Raises
    ------
    SeatworkError
        If no place is named, it is not there or cannot be written, or nothing is answered.
    """
    place = place_of(desk)
    if place is None:
        remedy = "hand in the file in the folder answers, or ask your instructor"
        raise SeatworkError(desk.plan.title, "no folder is named to hand it in", remedy)
    content = _own(desk)
    if not content:
        raise SeatworkError(
            desk.plan.title, "nothing was handed in, since nothing is answered", "answer first"
        )
    if not place.parent.is_dir():
        raise SeatworkError(
            str(place.parent),
            "nothing was handed in, since that folder is not there",
            "tell your instructor; your answers are saved here",
        )
    _copy(place, content)
    return desk.voice.words["form.handed_in"].format(file=place.name)


def _copy(place: Path, content: bytes) -> None:
    try:
        files.write(place, content, mode=FOR_THE_INSTRUCTOR, backup=_can_be_read(place))
    except SeatworkError as error:
        why = error.fault.removeprefix("it was not saved: ")
        remedy = "tell your instructor; your answers are saved here"
        raise SeatworkError(error.value, f"nothing was handed in, since {why}", remedy) from error


def _can_be_read(place: Path) -> bool:
    try:
        return bool(place.read_bytes())
    except OSError:
        return False


def _own(desk: Answered) -> bytes:
    """Return the answer file as it lies in the workbook; empty without one."""
    assert desk.kept.folder is not None
    path = desk.kept.folder / desk.answers.name
    if not path.is_file():
        return b""
    read(path)  # what is damaged is not handed in
    return path.read_bytes()
