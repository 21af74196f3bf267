"""Sizes as they are said aloud: ``quarter-twenty``, ``ten thirty-two``, ``three-eighths``."""

import re

ONES = {
    **{"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4},
    **{"five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9},
}
TEENS = {
    **{"ten": 10, "eleven": 11, "twelve": 12, "thirteen": 13, "fourteen": 14},
    **{"fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19},
}
TENS = {
    **{"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50},
    **{"sixty": 60, "seventy": 70, "eighty": 80},
}
PARTS = {"half": 2, "quarter": 4, "eighth": 8, "sixteenth": 16, "thirty-second": 32}

ONE = "|".join(ONES)
COUNT = rf"(?:(?:{'|'.join(TENS)})(?:[ -](?:{ONE}))?|{'|'.join(TEENS)}|{ONE})"
FRACTION = rf"(?:(?:({ONE})[ -])?({'|'.join(PARTS)})s?(?: inch)?)"
STATED = re.compile(rf"(?:{FRACTION}|(?:number )?({COUNT}))(?:[ -]({COUNT}))?(?![\w-])")


def digits(plain: str) -> str:
    """Write a size said in words at the start of tidy text in figures.

    Text that starts with no such words comes back as it is.

    Examples
    --------
    >>> digits("quarter-twenty socket flat"), digits("ten thirty-two flat head")
    ('1/4-20 socket flat', '#10-32 flat head')
    """
    stated = STATED.match(plain)
    if not stated:
        return plain
    top, part, number, count = stated.groups()
    size = f"{ONES[top] if top else 1}/{PARTS[part]}" if part else f"#{_value(number)}"
    thread = f"-{_value(count)}" if count else ""
    return size + thread + plain[stated.end() :]


def _value(words: str) -> int:
    """Return the number that words such as thirty-two say."""
    known = ONES | TEENS | TENS
    return sum(known[word] for word in re.split("[ -]", words))
