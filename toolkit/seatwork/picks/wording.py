"""The words of every pick: its question, its choices, what is said after the bet."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from difflib import get_close_matches
from functools import lru_cache
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.marking.speaking import Speaker
from seatwork.shop.folder import find, package_text, parse_toml, read_toml

FILE = "picks.toml"
OWN = ("question", "after", "choice", "tempt")
"""What an instructor may say in other words; which bet is right stays."""
READOUT = re.compile(r"\{[^{}]*\}")
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
    """Return the words of a pick, the instructor's own where the workbook has some.

    Parameters
    ----------
    name : str
        Such as ``angle-eight``.

    Raises
    ------
    SeatworkError
        If no pick has that name, or ``shop/picks.toml`` of the workbook has a fault.

    Examples
    --------
    >>> words("angle-eight").right
    'c'
    """
    known = every()
    if name not in known:
        raise _unknown(name, known)
    home = find()
    path = home / "shop" / FILE if home else None
    own = read_toml(path).get("pick", {}) if path and path.is_file() else {}
    for other in own:
        if other not in known:
            raise _unknown(other, known)
    return reworded(known[name], own[name]) if name in own else known[name]


def _unknown(name: str, known: Mapping[str, Words]) -> SeatworkError:
    near = get_close_matches(str(name)[:60], known, n=1)
    remedy = f"perhaps {near[0]} is meant" if near else "look in picks.toml for its name"
    return SeatworkError(str(name)[:60], "no pick has that name", remedy)


def reworded(pick: Words, own: Mapping[str, Any]) -> Words:
    """Return a pick in an instructor's own words.

    Parameters
    ----------
    pick : Words
        As the package has it.
    own : mapping
        Any of ``question``, ``after``, ``choice`` and ``tempt``, the last two by letter.

    Raises
    ------
    SeatworkError
        If anything else stands there, or the words would answer the bet.
    """
    for fault, remedy in _own_faults(pick, own):
        raise SeatworkError(f"shop/{FILE}, {pick.name}", fault, remedy)
    by_letter: dict[str, Any] = {
        key: {**getattr(pick, key), **own.get(key, {})} for key in ("choice", "tempt")
    }
    said: dict[str, Any] = {key: own[key] for key in ("question", "after") if key in own}
    return replace(pick, **said, **by_letter)


def _own_faults(pick: Words, own: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    """Yield what is wrong with own words, and what would do."""
    if not isinstance(own, dict) or not set(own) <= set(OWN):
        yield "only the words of a pick can be one's own", f"write {', '.join(OWN)}"
        return
    for key in ("choice", "tempt"):
        part = own.get(key, {})
        if not isinstance(part, dict) or not set(part) <= set(pick.choice):
            yield f"{key} names another letter", f"write {', '.join(pick.choice) or 'none'}"
            return
    texts = [own.get("question", ""), own.get("after", "")]
    texts += [text for key in ("choice", "tempt") for text in own.get(key, {}).values()]
    if not all(isinstance(text, str) for text in texts):
        yield "its words are no text", 'write them between quotes, such as after = "Flush."'
        return
    if not set(READOUT.findall(texts[1])) <= (known := set(READOUT.findall(pick.after))):
        yield "after names another readout", f"write {', '.join(sorted(known)) or 'none'}"
    for word in pick.giveaway:
        if word.lower() in texts[0].lower() and word.lower() not in pick.question.lower():
            yield f"its question says {word!r}, which answers the bet", "say it in after"


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
