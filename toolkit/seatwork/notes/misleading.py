"""Words that mean another cut than any a note is read for: each gets a question of its own."""

import re

from seatwork.notes.callout import NoteError

OTHERS: tuple[tuple[str, str, str], ...] = (
    (
        r"DIMPLED?",
        "a dimple is formed, not cut: is a machined countersink meant?",
        "write CSK for one that is cut",
    ),
    (
        r"S\.?T\.?I\.?|(?:WIRE|THREAD(?:ED)?|SCREW)\s+(?:THREAD\s+)?INSERTS?|INSERTS?",
        "a thread for an insert is larger than its name, and so is its drill: not planned here",
        "give the maker's drill and tap to whoever plans it",
    ),
    (
        r"TAPER\s+(?:PINS?|REAM(?:ED)?)",
        "a taper pin's hole is reamed to a taper: not planned here",
        "plan it by the pin's own table",
    ),
    (
        r"BOTH\s+(?:FLANGES|BOSSES|LUGS|PADS|EARS)",
        "is the count of one of them, or how many places in both?",
        "write the count of all places, such as 8X",
    ),
    (
        r"(?:CENTER|CENTRE|PRICK)\s*PUNCH(?:ED)?",
        "a punch mark is layout, no cut of a note",
        "write what is drilled or cut there",
    ),
    (
        r"SPOT(?:[ -]?DRILL(?:ED)?)(?![A-Z])|SPOT(?=\s+(?:⌀|\.?\d))",
        "a spot drill comes before the drill and makes no seat; is a chamfer to be left?",
        "write CHAM with its diameter and angle for one that is left",
    ),
    (
        r"(?:FORM|ROLL)(?:ING)?[ -]TAP(?:PED)?|THREAD[ -]FORM(?:ING)?",
        "a formed thread wants another drill: not planned here",
        "give the tap's own drill to whoever plans it",
    ),
)
WORDS = re.compile("|".join(f"(?P<w{at}>{one[0]})" for at, one in enumerate(OTHERS)))
APART = re.compile(rf"(?<![A-Z'])(?:{WORDS.pattern})(?![A-Z])")


def check(text: str, plain: str) -> None:
    """Refuse a note with a word that means another cut.

    Parameters
    ----------
    text : str
        The note as typed, for the error.
    plain : str
        The note in the grammar's characters, what is only said set apart.

    Raises
    ------
    NoteError
        At the word, with the question to ask.
    """
    found = APART.search(plain)
    if not found:
        return
    _, fault, remedy = OTHERS[int(str(found.lastgroup)[1:])]
    raise NoteError(text, start=found.start(), end=found.end(), fault=fault, remedy=remedy)
