"""The file of a learner's bets: what was bet first on each pick; it is no mark and enters none."""

import json
import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, NamedTuple, NoReturn

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.answers import DECODER
from seatwork.marking.names import learner_code

FORMAT = 1
MOST_BYTES = 64 * 1024
MOST_PICKS = 500
KEYS = {"format", "learner", "picks"}
END = "-picks.json"
NAME = re.compile(r"[a-z][a-z0-9]*(?:-[a-z0-9]+)*")
BET = re.compile(r"\?|[a-h](?: [a-h]){0,7}|-?[0-9]+(?:\.[0-9]+)?(?: -?[0-9]+(?:\.[0-9]+)?){0,3}")
LONGEST = 60
MEND = "move it out of the folder answers, and bets are kept again"


class Bet(NamedTuple):
    """What was bet on one pick, the first time.

    Parameters
    ----------
    bet : str
        A letter; several letters or numbers with spaces between; ``?`` for "no idea".
    sure : bool or None
        Fairly sure, or guessing; None if it was not said.
    """

    bet: str
    sure: bool | None = None


@dataclass(frozen=True, slots=True)
class PickFile:
    """All bets of one learner."""

    learner: str
    bets: dict[str, Bet] = field(default_factory=dict)

    @property
    def name(self) -> str:
        """Name of the file."""
        return self.learner + END

    def with_bet(self, pick: str, bet: Bet) -> "PickFile":
        """Return the file with one bet more; the first bet on a pick stays."""
        return PickFile(self.learner, {pick: bet, **self.bets})

    def save(self, folder: Path) -> None:
        """Write the file at once."""
        picks = {name: _written(bet) for name, bet in sorted(self.bets.items())}
        whole = {"format": FORMAT, "learner": self.learner, "picks": picks}
        content = json.dumps(whole, ensure_ascii=False, separators=(",", ":")) + "\n"
        files.write(folder / self.name, content)


def _written(bet: Bet) -> dict[str, Any]:
    return {"bet": bet.bet} if bet.sure is None else {"bet": bet.bet, "sure": bet.sure}


def reopen(learner: str, folder: Path) -> PickFile:
    """Return the bets kept in a folder; none where there is no file yet.

    Raises
    ------
    SeatworkError
        If the file is damaged or a newer version wrote it; it is not to be written over.
    """
    path = folder / (learner + END)
    if not path.is_file():
        return PickFile(learner)
    try:
        with path.open("rb") as file:
            raw = file.read(MOST_BYTES + 1)
    except OSError as error:
        raise files.refusal(path.name, error) from error
    found = parse(raw, path.name)
    if found.learner != learner:
        _refuse(path.name, f"inside it says {found.learner}")
    return found


def parse(raw: bytes, name: str) -> PickFile:
    """Return the bets that `raw` holds; `name` is what an error calls the file."""
    if len(raw) > MOST_BYTES:
        _refuse(name, "it is larger than 64 kB")
    try:
        whole = DECODER.decode(raw.decode("utf-8-sig"))
    except (ValueError, RecursionError, SeatworkError):
        _refuse(name, "it is damaged, cut off, or not from a pick")
    if type(whole) is not dict or type(whole.get("format")) is not int:
        _refuse(name, "it does not say its format")
    if whole["format"] > FORMAT:
        raise SeatworkError(name, "a newer version wrote it", "use that version")
    if whole.keys() != KEYS or type(whole["picks"]) is not dict:
        _refuse(name, "its fields are not those of a file of bets")
    if len(whole["picks"]) > MOST_PICKS:
        _refuse(name, "it holds more bets than there are picks")
    bets = {_pick(key, name): _bet(value, name) for key, value in whole["picks"].items()}
    return PickFile(learner_code(whole["learner"]), bets)


def is_pick_file(name: str, raw: bytes) -> bool:
    """Tell whether a file handed in is one of bets, by its name and by what is in it."""
    if not name.endswith(END):
        return False
    try:
        parse(raw, name)
    except SeatworkError:
        return False
    return True


def handed_in(folder: Path) -> Iterator[PickFile]:
    """Yield the bets of every learner in a folder and the folders in it.

    Raises
    ------
    SeatworkError
        For a file that cannot be read: it is named, so that no learner is left out unsaid.
    """
    for path in sorted(folder.rglob("*" + END)):
        if path.is_file() and not path.is_symlink():
            yield reopen(path.name.removesuffix(END), path.parent)


def _pick(key: str, name: str) -> str:
    if len(key) > LONGEST or not NAME.fullmatch(key):
        _refuse(name, "a pick in it has no proper name")
    return key


def _bet(value: Any, name: str) -> Bet:
    if type(value) is not dict or not {"bet"} <= value.keys() <= {"bet", "sure"}:
        _refuse(name, "a bet in it has other fields than it should")
    bet, sure = value["bet"], value.get("sure")
    if type(bet) is not str or len(bet) > LONGEST or not BET.fullmatch(bet):
        _refuse(name, "a bet in it is no letter and no number")
    if "sure" in value and type(sure) is not bool:
        _refuse(name, "a mark in it is neither true nor false")
    return Bet(bet, sure)


def _refuse(name: str, fault: str) -> NoReturn:
    raise SeatworkError(name, fault, MEND)
