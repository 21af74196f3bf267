"""What a learner bets: read from the page, judged, and told."""

import re
from collections.abc import Sequence
from typing import NamedTuple

from seatwork.errors import SeatworkError
from seatwork.marking.speaking import Speaker
from seatwork.picks.wording import Ask, Words

NO_IDEA = "?"
NOW_LOOK = "Now look."
YOU_BET = "You bet {bet}. Look again."
YOU_BET_RIGHT = "You bet {bet}. Right bet."
NUMBER = re.compile(r"[-−]?\d{1,6}(?:[.,]\d{1,4})?|[.,]\d{1,4}")


class Why(NamedTuple):
    """Why a bet tempts: the bet as it is named, and the reason."""

    bet: str
    says: str


def read(pick: Words, given: Sequence[str]) -> str:
    """Return a bet as it is kept: letters or numbers with spaces between.

    Parameters
    ----------
    pick : Words
        What was asked.
    given : sequence of str
        The letters chosen, or what was typed into each box.

    Raises
    ------
    SeatworkError
        If nothing was chosen, or a number cannot be read or is out of range.
    """
    if pick.kind == "number":
        boxes = [*given, *[""] * len(pick.ask)]
        return " ".join(_number(ask, text) for ask, text in zip(pick.ask, boxes, strict=False))
    letters = sorted({letter for letter in given if letter in pick.choice})
    if not letters:
        raise SeatworkError("your bet", "nothing is chosen", "choose, or press No idea, show me")
    return " ".join(letters if pick.kind == "several" else letters[:1])


def fits(pick: Words, bet: str) -> bool:
    """Tell whether a bet kept before is one on this pick as it is asked today."""
    try:
        return bet == NO_IDEA or read(pick, bet.split()) == bet
    except SeatworkError:
        return False


def _number(ask: Ask, text: str) -> str:
    """Return a number as it is kept."""
    typed = text.strip()[:20]
    if not NUMBER.fullmatch(typed):
        fault = "a box is empty" if not typed else "that is no number"
        raise SeatworkError(typed or ask.label, fault, "write a number such as 40")
    value = float(typed.replace(",", ".").replace("−", "-"))
    if not ask.least <= value <= ask.most:
        fault = f"the bet goes from {ask.least:g} to {ask.most:g}"
        raise SeatworkError(typed, fault, "bet again")
    return f"{value:.4f}".rstrip("0").rstrip(".")


def is_right(pick: Words, bet: str) -> bool:
    """Tell whether a bet is right; a number is where it lies in its band."""
    if bet == NO_IDEA:
        return False
    if pick.kind != "number":
        return bet.split() == sorted(pick.right.split())
    numbers = [float(text) for text in bet.split()]
    pairs = zip(numbers, pick.ask, strict=False)
    return len(numbers) == len(pick.ask) and all(
        ask.right[0] <= number <= ask.right[1] for number, ask in pairs
    )


def said(pick: Words, bet: str, say: Speaker = str) -> str:
    """Return the one short sentence that answers a bet; never "wrong"."""
    if bet == NO_IDEA:
        return say(NOW_LOOK)
    told = YOU_BET_RIGHT if is_right(pick, bet) else YOU_BET
    return say(told).format(bet=named(pick, bet, say))


def named(pick: Words, bet: str, say: Speaker = str) -> str:
    """Name a bet as people do: ``c``, ``a and c``, ``73 and 10``, ``B``."""
    parts = bet.split()
    if pick.kind == "letter":
        parts = [pick.choice.get(letter, letter) for letter in parts]
    if len(parts) == 1:
        return parts[0]
    return say("{first} and {last}").format(first=", ".join(parts[:-1]), last=parts[-1])


def whys(pick: Words, bet: str) -> tuple[Why, ...]:
    """Return why the bet tempts; after a right bet or none, why the others do."""
    if pick.kind == "number":
        return _number_whys(pick, bet)
    chosen, right = set(bet.split()), set(pick.right.split())
    told = set(pick.tempt) if is_right(pick, bet) or bet == NO_IDEA else chosen ^ right
    return tuple(
        Why(named(pick, letter), says) for letter, says in pick.tempt.items() if letter in told
    )


def _number_whys(pick: Words, bet: str) -> tuple[Why, ...]:
    """Return what is to be said of the numbers bet, as far as anything is known."""
    if bet == NO_IDEA or is_right(pick, bet):
        return ()
    pairs = zip(bet.split(), pick.ask, strict=False)
    several = len(pick.ask) > 1
    return tuple(
        Why(f"{ask.label}, {text}:" if several else text, tempt.says)
        for text, ask in pairs
        for tempt in ask.tempt
        if tempt.least <= float(text) <= tempt.most
    )
