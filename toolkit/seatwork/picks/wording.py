"""The words of every pick: its question, its choices, what is said after the bet."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from difflib import get_close_matches
from functools import lru_cache
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.speaking import Speaker
from seatwork.shop.folder import package_text, parse_toml

FILE = "picks.toml"
LETTERS = "abcdefgh"
KINDS = ("one", "several", "letter", "number")


@dataclass(frozen=True, slots=True, kw_only=True)
class Tempt:
    """Why a number tempts.

    Parameters
    ----------
    least, most : float
        The bets that this is said of, both ends included [-].
    says : str
        Why one bets so.
    """

    least: float
    most: float
    says: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Ask:
    """One number that a pick asks for.

    Parameters
    ----------
    label : str
        What stands before its box.
    least, most : float
        What may be bet [-].
    right : tuple of float
        The band that counts as right, both ends included [-].
    tempt : tuple of Tempt
        Why other numbers tempt.
    """

    label: str
    least: float
    most: float
    right: tuple[float, float]
    tempt: tuple[Tempt, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Words:
    """What one pick asks and says.

    Parameters
    ----------
    name : str
        Such as ``angle-eight``: the page's word and the pick's own.
    page : str
        File of its page, without number and ending.
    kind : {"one", "several", "letter", "number"}
        One choice, several ticks, the letter of a thing in the picture, or numbers.
    question : str
        What is asked.
    right : str
        The letter, or letters, that are right; empty for numbers.
    after : str
        What is said once the bet is locked. ``{Head}`` stands for that readout of the bench.
    giveaway : tuple of str
        Words that would answer the bet; none of them may be seen on the page before it.
    choice, tempt : mapping of str to str
        By letter the choices, and why one bets so.
    ask : tuple of Ask
        The numbers asked for; empty for choices.
    opens : mapping
        ``bench`` and the values it opens with after the bet; empty where nothing opens.
    shows : mapping
        The same of what is seen before the bet; empty where the picture is covered.
    drawn : mapping of str to mapping
        By letter the values that draw that bet, dashed, on the bench that opens.
    """

    name: str
    page: str
    kind: str
    question: str
    after: str
    giveaway: tuple[str, ...]
    right: str = ""
    choice: Mapping[str, str] = field(default_factory=dict)
    tempt: Mapping[str, str] = field(default_factory=dict)
    ask: tuple[Ask, ...] = ()
    opens: Mapping[str, Any] = field(default_factory=dict)
    shows: Mapping[str, Any] = field(default_factory=dict)
    drawn: Mapping[str, Any] = field(default_factory=dict)

    def __repr__(self) -> str:
        return f"Words of the pick {self.name}"

    @property
    def choices(self) -> tuple[tuple[str, str], ...]:
        """Letter and words of each choice, in order; none for numbers."""
        return tuple(self.choice.items())


def words(name: str) -> Words:
    """Return the words of a pick.

    Parameters
    ----------
    name : str
        Such as ``angle-eight``.

    Raises
    ------
    SeatworkError
        If no pick has that name.

    Examples
    --------
    >>> words("angle-eight").right
    'c'
    """
    known = every()
    if name in known:
        return known[name]
    near = get_close_matches(str(name)[:60], known, n=1)
    remedy = f"perhaps {near[0]} is meant" if near else "look in picks.toml for its name"
    raise SeatworkError(str(name)[:60], "no pick has that name", remedy)


@lru_cache(maxsize=1)
def every() -> dict[str, Words]:
    """Return the words of every pick, by name, in the order of the pages."""
    read = parse_toml(package_text(FILE), FILE)
    return {name: _built(name, row) for name, row in read["pick"].items()}


def spoken(pick: Words, say: Speaker) -> Words:
    """Return a pick in a language; what is right and what is kept of a bet stay.

    Parameters
    ----------
    pick : Words
        As it stands in the list; what is said after the bet stays so until its numbers are in.
    say : callable
        Says a text in that language.
    """
    asks = tuple(
        replace(
            ask,
            label=say(ask.label),
            tempt=tuple(replace(one, says=say(one.says)) for one in ask.tempt),
        )
        for ask in pick.ask
    )
    return replace(
        pick,
        question=say(pick.question),
        choice={letter: say(text) for letter, text in pick.choice.items()},
        tempt={letter: say(text) for letter, text in pick.tempt.items()},
        ask=asks,
    )


def place_of(name: str) -> tuple[int, int]:
    """Tell the how-manieth pick of its page one is, and of how many."""
    page = words(name).page
    beside = [one.name for one in every().values() if one.page == page]
    return beside.index(name) + 1, len(beside)


def _built(name: str, row: dict[str, Any]) -> Words:
    """Make one pick, and say which lacks what."""
    try:
        found = Words(
            **{
                **row,
                "name": name,
                "giveaway": tuple(row["giveaway"]),
                "ask": tuple(_asked(one) for one in row.get("ask", ())),
            }
        )
    except (KeyError, TypeError) as error:
        raise SeatworkError(FILE, f"the pick {name} is not whole ({error})", "mend it") from error
    _check(found)
    return found


def _asked(row: dict[str, Any]) -> Ask:
    low, high = row["right"]
    tempt = tuple(Tempt(**one) for one in row.get("tempt", ()))
    return Ask(label=row["label"], least=row["least"], most=row["most"], right=(low, high),
               tempt=tempt)  # fmt: skip


def _check(pick: Words) -> None:
    """Refuse a pick that could not be answered."""
    letters = "".join(pick.choice)
    faults = {
        "its kind is none of " + ", ".join(KINDS): pick.kind not in KINDS,
        "numbers want ask, choices none": (pick.kind == "number") != bool(pick.ask),
        "its choices are not a, b, c ...": letters != LETTERS[: len(letters)],
        "its right letter is none of its choices": not set(pick.right.split()) <= set(letters),
        "it has no right choice": pick.kind != "number" and not pick.right,
        "a temptation is none of its choices": not set(pick.tempt) <= set(letters),
        "it has no giveaway words": not pick.giveaway,
    }
    for fault, found in faults.items():
        if found:
            raise SeatworkError(FILE, f"the pick {pick.name}: {fault}", "mend it")
