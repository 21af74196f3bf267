"""The roster: learner codes drawn at random, groups, extra tries; no names."""

from dataclasses import dataclass
from pathlib import Path
from random import Random

from seatwork.errors import SeatworkError
from seatwork.marking import spreadsheet
from seatwork.marking.names import learner_code
from seatwork.questions.type.draws import pick

ROSTER_FILE = "roster.csv"
HEADS = ("learner", "group", "extra_tries")
LETTERS = "ABCDEFGHJKLMNPRTUVWXY"  # no letter that is taken for a digit or for another
DIGITS = 4
MOST = 2000


@dataclass(frozen=True, slots=True, kw_only=True)
class Learner:
    """A learner on the roster.

    Parameters
    ----------
    code : str
        A letter and 2 to 6 digits.
    group : str
        Group or bench, may be empty.
    extra_tries : int
        Tries beyond those of a sheet.
    """

    code: str
    group: str = ""
    extra_tries: int = 0


def new(folder: Path, count: int, rng: Random) -> tuple[Learner, ...]:
    """Draw codes for a new class and write the roster.

    Parameters
    ----------
    folder : Path
        The instructor's folder.
    count : int
        How many learners.
    rng : random.Random
        Where the codes come from; a command gives the system's own randomness.

    Raises
    ------
    SeatworkError
        If there is a roster already, or `count` is out of range.
    """
    path = folder / ROSTER_FILE
    if path.exists():
        raise SeatworkError(str(path), "there is a roster already", "add rows to it by hand")
    if not 1 <= count <= MOST:
        raise SeatworkError(str(count), "that is no size of a class", f"write 1 to {MOST}")
    codes: list[str] = []
    while len(codes) < count:
        code = pick(rng, LETTERS) + "".join(pick(rng, "0123456789") for _ in range(DIGITS))
        if code not in codes:
            codes.append(code)
    spreadsheet.write(path, HEADS, ((code, "", 0) for code in codes))
    return tuple(Learner(code=code) for code in codes)


def read(folder: Path) -> tuple[Learner, ...]:
    """Return the learners of a roster.

    Raises
    ------
    SeatworkError
        If there is none, a code is wrong or stands there twice: row and what would do.
    """
    path = folder / ROSTER_FILE
    if not path.is_file():
        raise SeatworkError(str(path), "there is no roster", "run: seatwork roster new 12")
    learners = tuple(
        _learner(row, number) for number, row in enumerate(spreadsheet.read(path, HEADS[:1]), 2)
    )
    codes = [learner.code for learner in learners]
    for code in codes:
        if codes.count(code) > 1:
            raise SeatworkError(code, "the roster has this code twice", "keep one of the rows")
    return learners


def _learner(row: dict[str, str], number: int) -> Learner:
    try:
        code = learner_code(row["learner"].strip())
        extra = int(row.get("extra_tries") or 0)
    except SeatworkError as error:
        raise error.of(f"roster row {number}") from error
    except ValueError as error:
        fault = "extra_tries is no number"
        raise SeatworkError(f"roster row {number}", fault, "write 0 or more") from error
    return Learner(code=code, group=row.get("group", ""), extra_tries=max(extra, 0))
