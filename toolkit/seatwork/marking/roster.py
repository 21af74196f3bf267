"""The roster: learner codes drawn at random, groups, extra tries; no names."""

from dataclasses import dataclass
from pathlib import Path
from random import Random

from seatwork import files
from seatwork.errors import SeatworkError
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
    if not 1 <= count <= MOST:
        raise SeatworkError(str(count), "that is no size of a class", f"write 1 to {MOST}")
    codes: list[str] = []
    while len(codes) < count:
        code = pick(rng, LETTERS) + "".join(pick(rng, "0123456789") for _ in range(DIGITS))
        if code not in codes:
            codes.append(code)
    files.make_folder(folder, private=True)
    with files.lock(folder):
        if path.exists():
            raise SeatworkError(str(path), "there is a roster already", "add rows to it by hand")
        files.write_table(path, HEADS, ((code, "", 0) for code in codes))
    return tuple(Learner(code=code) for code in codes)


def read(folder: Path) -> tuple[Learner, ...]:
    """Return the learners of a roster.

    Raises
    ------
    SeatworkError
        If there is none; or with all its faults at once, each with its row and column.
    """
    path = folder / ROSTER_FILE
    if not path.is_file():
        raise SeatworkError(str(path), "there is no roster", "run: seatwork roster new 12")
    faults: list[SeatworkError] = []
    rows = files.read_table(path, columns=HEADS, needed=HEADS[:1], most=MOST, faults=faults)
    seen: dict[str, int] = {}
    return tuple(files.build_each(rows, lambda row: _learner(row, seen), faults))


def _learner(row: files.Row, seen: dict[str, int]) -> Learner:
    row.needed("learner")
    code = row.read("learner", lambda text: learner_code(text.upper())) or ""
    if code in seen:
        fault = f"{code} stands in row {seen[code]} too: the roster has it twice"
        raise row.refuse("learner", fault, "keep one of the rows")
    seen[code] = row.number
    extra = row.read("extra_tries", _whole) or 0
    return Learner(code=code, group=row.text("group"), extra_tries=extra)


def _whole(text: str) -> int:
    if not (text.isascii() and text.isdigit() and len(text) <= 4):
        raise SeatworkError(text, "that is no number of tries", "write 0 or more")
    return int(text)
