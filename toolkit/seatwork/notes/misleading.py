"""Words that mean another cut than any a note is read for: each gets a question of its own."""

import re

from seatwork.notes.callout import NoteError

WASHER = (
    "(?:FLAT|PLAIN|LOCK|SPLIT|SPRING|NARROW|WIDE|SAE|USS|HARDENED|STEEL|TYPE [AB]|INTERNAL|STAR)"
)
FACES = "SLOT|PAD|BOSS|PADS|BOSSES|FLANGE|SURFACE|END|ENDS|TOP|OFF"
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
        r"CORED?",
        "a cored hole is cast, and no drill makes it: which size is cut, and how?",
        "write the hole that is cut as DRILL or BORE, and the seat behind it",
    ),
    (
        r"SLOTS?(?! *(?:FLAT|PAN|CHEESE|OVAL|HD|HEAD|SCR))|SLOTTED(?= +(?:HOLES?|⌀|\.?\d))",
        "a slot is milled: not planned here, nor a seat along it",
        "plan its ends as holes if they are, and the slot on a card of its own",
    ),
    (
        rf"(?:MILL|FACE|FACED|FACING|MACHINE)(?= +(?:{FACES})(?![A-Z]))",
        "a face that is milled is no seat: not planned here",
        "write S.F. with its diameter for a pad that is spot-faced",
    ),
    (
        r"STEP[ -]?DRILL(?:ED)?|PILOT +(?:DRILL|HOLES?)",
        "a step or a pilot is one of two holes on one place: which is cut how deep?",
        "write each as DRILL with its own diameter and depth, in notes of their own",
    ),
    (
        rf"(?:(?:W/|WITH|AND|&|ON|PLUS|UNDER) *)?(?:AN? +)?(?:{WASHER}[ -]+)*(?:LOCK|SPRING)?[ -]?"
        r"WASHERS?(?! *(?:HEAD|HD|FACE))|(?:W/|WITH|AND|&|ON|PLUS) *(?:FLAT|LOCK) *WSHRS?",
        "a washer under the head sets how wide the seat must be, and how deep a counterbore",
        "write the seat's diameter, and a counterbore's depth, with the washer reckoned in",
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
