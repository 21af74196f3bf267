"""Where the name of a screw or a rivet ends in running text, such as a print note.

The words are those of `seatwork.hardware.vocabulary`, which `seatwork.hardware.screw` reads
too: a word that it does not know is never part of a name.
"""

import re

from seatwork.hardware import other_heads
from seatwork.hardware.vocabulary import DOCUMENT, RIVET_WORDS, SHORT, STRENGTH, WORDS

SIZE = re.compile(
    r"(?:#\s?\d{1,2}|no\.?\s?\d{1,2}|\d{1,2}[- ]\d{1,2}/\d{1,2}|\d{1,2}/\d{1,2}"
    r"|\d?\.\d{3}(?=\s?-\s?\d)|\d{1,2}(?=\s?-\s?\d|\s+[a-z]))"
    r'(?:\s?"|\s?in\b\.?)?(?:\s?-\s?\d{1,2}(?![\d/.]))?(?:[ -]*u?n[cf]\b(?:[ -]*[123][ab]\b)?)?'
    r"|m\s?\d{1,2}(?:[.,]\d)?(?![\d])(?:\s?x\s?[0-3]?[.,]\d{1,2}(?![\d])|\s?x\s?[1-6](?![\d.,]))?"
    r"(?:\s?-\s?\d[gh]\b)?|ms\s?20426\s?[abd]{1,2}\s?\d(?:-\d{1,2})?\b"
)
WORD = re.compile(r"[a-z](?:\.[a-z]\b)+\.?|[a-z][a-z']*(?:-[a-z]+)?\.?")
INITIALS = re.compile(r"[a-z](?:\. ?[a-z](?=\.))+\.")
ANGLE = re.compile(r"(?:82|90|100|110|120)\s?(?:°|deg\b\.?)")
LENGTH = re.compile(
    r'x\s?(?:\d+-)?\d*[./]?\d+(?:/\d+)?(?:\s?(?:"|in\b\.?|mm\b))?(\s?(?:lg|long)\b)?'
)
GRADE = re.compile(STRENGTH)
CLOSED = re.compile(r"\s*(?:$|[,;:\n)|]|\.(?!\d))")
OF_THE_HEAD = re.compile(r"heads?\s+(?:to\s+be\s+)?(?:flush|proud|below|under)")
SEAT = re.compile(r"flush|csk|c'sunk|countersunk|countersink")
PLACES = {"flange", "flanged", "flg", "square", "sq", "fill", "drive"}
"""Words of a head's name that in a note mostly speak of the part."""
NAMED = {**WORDS, **SHORT, **dict.fromkeys((*other_heads.WORDS.keys() - PLACES, *RIVET_WORDS), "")}


def name_end(text: str, start: int) -> int:
    """Return where a fastener's name that starts at a place of a text ends.

    Parameters
    ----------
    text : str
        The text, in lower case and with plain marks.
    start : int
        Where a name may start.

    Returns
    -------
    int
        The place behind the name's last word; `start` if no name stands there.

    Examples
    --------
    >>> note = "csk for #10 f.h. mach. scr. far side"
    >>> note[8 : name_end(note, 8)]
    '#10 f.h. mach. scr.'
    """
    place = end = start
    sized = whole = False
    while True:
        found, firm, is_size = _next(text, place, sized, whole)
        if not found:
            return end if sized else start
        sized = sized or is_size
        whole = whole or _plain(text[place:found]) in SHORT
        end = found if firm else end
        place = _past_blanks(text, found)


def _plain(word: str) -> str:
    return word.replace(".", "").replace(" ", "")


def _past_blanks(text: str, place: int) -> int:
    while place < len(text) and text[place] == " ":
        place += 1
    return place


def _next(text: str, place: int, sized: bool, whole: bool) -> tuple[int, bool, bool]:
    """Return the end of the next word of a name or 0, whether it stands firm, whether a size.

    A length or an angle is part of the name only where another word of it follows.
    """
    document = DOCUMENT.match(text, place)
    if document:
        return document.end(), True, False
    grade = GRADE.match(text, place) if sized else None
    if grade:
        return grade.end(), True, False
    size = None if sized else SIZE.match(text, place)
    if size and not (size[0].isdigit() and not _named(text, size.end())):
        return size.end(), True, True
    for pattern in (ANGLE, LENGTH):
        found = pattern.match(text, place) if sized else None
        if found:
            return found.end(), bool(found.lastindex and found[1]), False
    for pattern in (WORD, INITIALS):
        word = pattern.match(text, place)
        if word and _is_word(text, word, whole):
            return word.end(), True, False
    return 0, False, False


def _is_word(text: str, word: re.Match[str], whole: bool) -> bool:
    """Tell whether a word speaks of a fastener here, and not of a seat or of where heads lie."""
    plain = _plain(word[0])
    if plain not in NAMED or OF_THE_HEAD.match(text, word.start()):
        return False
    if not SEAT.fullmatch(plain):
        return True
    if whole or (plain != "flush" and CLOSED.match(text, word.end())):
        return not whole
    return _named(text, word.end())


def _named(text: str, place: int) -> bool:
    """Tell whether the word behind a place is one of a fastener's name."""
    word = WORD.match(text, _past_blanks(text, place))
    return word is not None and _plain(word[0]) in NAMED
