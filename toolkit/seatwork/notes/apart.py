"""What is set apart in a note before the grammar reads it: screws, and what is only said.

A name keeps its place: it becomes a row of one sign as long as itself, so that an error can
still point into the text as typed.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from seatwork.hardware.spans import name_end

SCREW, ASIDE = "\ue000", "\ue001"

NUMBER = (
    r"(?<![\d.,/])(?:\d{1,3}[- ]\d{1,2}/\d{1,2}|\d{1,3}/\d{1,2}|\d{0,4}[.,]\d{1,4}|\d{1,4})(?!\d)"
)
END = r"(?![A-Z])\.?"
EQUAL = (
    r"(?:EQ(?:UAL(?:LY)?)?\.?[ -]*(?:LY )?SP(?:ACED|ACING|CD)?|EQUI-?SPACED|EQUI-?DISTANT)" + END
)
CIRCLE = r"(?:B\.?C\.?D?|BOLT +CIR(?:CLE)?|P\.?C\.?D?|(?:PITCH +)?CIRCLE|BHC)" + END
ON_CIRCLE = (
    rf"(?:(?:ON|AT|@|ABOUT) +(?:AN? +)?)?⌀? *{NUMBER}(?: *(?:IN(?:CH)?\b\.?|MM|\"))?"
    rf"(?: *± *{NUMBER})?(?: *DIA(?:METER)?{END})? *{CIRCLE}"
    rf"|(?:ON +)?(?:AN? +)?{CIRCLE}(?: *⌀? *{NUMBER})?(?: *DIA{END})?"
)
MATERIAL_CONDITION = r"(?: *(?:[Ⓜ-Ⓢ]|\((?:M|L|S|MMC|LMC|RFS)\)))?"
FRAME = (
    rf"[|\[]? *[⌖⏥⏤⌭⌓⟂⊥∥◎↗⌰⌒∠⏊] *\|? *⌀? *{NUMBER}{MATERIAL_CONDITION}"
    rf"(?:[ |]+[A-Z](?:-[A-Z])?(?![A-Z0-9'./]){MATERIAL_CONDITION})* *[|\]]?"
)
WORDED_FRAME = (
    rf"(?:TRUE +POS(?:ITION|N)?{END}|T\.P\.) *(?:WITHIN +)?⌀? *{NUMBER}{MATERIAL_CONDITION}"
    rf"(?: +(?:TO +)?(?:DATUMS? +)?[A-Z](?![A-Z0-9'./]){MATERIAL_CONDITION})*"
    rf"|(?:CONC(?:ENTRIC)?|SQ(?:UARE)?|PERP(?:ENDICULAR)?|PAR(?:ALLEL)?){END} +WITHIN +{NUMBER}"
    r"(?: +(?:T\.?I\.?R|F\.?I\.?M)\b\.?)?(?: +TO +(?:DATUM +)?[A-Z](?![A-Z0-9'./]))?"
)
PIECES = (
    r"(?:BOSS(?:ES)?|PADS?|FLANGES?|LUGS?|RIBS?|CASTINGS?|FRAME|BASE|PLATES?|BRACKETS?|COVER|BODY"
    r"|FEET|FOOT|EARS?|HUB|ARM|RIM|RING|BLOCK|HOUSING|SHAFT|PARTS?|PIECES?|SHEETS?)(?![A-Z])"
)
PLACES = (
    rf"(?:ON|IN|AT|EACH)(?: +(?:THE|EACH|RAW|ROUGH|CAST))? +{PIECES}"
    r"|BOTH +(?:PLATES|PARTS|PIECES|MEMBERS|SHEETS|LEGS)(?![A-Z])"
)
PINS = (
    rf"FOR +(?:AN? +)?(?:⌀? *{NUMBER} *(?:DIA{END} *)?)?"
    r"(?:(?:DOWEL|LOCATING|ROLL|SPRING|COTTER|GUIDE) +PINS?|DOWELS?|PINS?|BUSHINGS?|BEARINGS?)"
    r"(?![A-Z])"
)
WHAT = {
    **{"PLATE": "PLATING", "FINISHING": "FINISH", "ANODIZE": "ANODIZING", "ANODISE": "ANODIZING"},
    **{"ANODISING": "ANODIZING", "PAINT": "PAINTING", "HEAT TREAT": "HEAT TREATMENT"},
    **{"HEAT TREATING": "HEAT TREATMENT", "GALVANISING": "GALVANIZING"},
    **dict.fromkeys(("HARD COAT", "HARDCOAT", "HARD COATING", "HARDCOATING"), "COATING"),
}
REFERRED = (
    r"\(? *(?:SEE|PER|REFER +TO) +(?:GENERAL +|FLAG +)?"
    rf"(?:NOTES?|DETAIL|DET|VIEW|SECTION|SECT|SHEET|SHT|DWG|DRAWING){END} *(?:NO\.? *)?"
    r"[A-Z0-9]{1,4}(?![A-Z0-9'])(?: *(?:&|AND) *\d{1,2}(?= *(?:$|[,;.\n)])))?(?: *\))?"
)
FINISH = re.compile(
    r"(?<![A-Z'])(?:(?:ALL +)?(?:DIM(?:ENSION)?S?|SIZES?|DIAS?(?:METERS)?)\.? +"
    r"(?:(?:TO +)?(?:APPLY|HOLD|BE|ARE|SHOWN|ARE +SHOWN) +)?)?"
    r"(?P<when>AFTER|BEFORE|PRIOR +TO) +(?P<what>PLATING|PLATE|FINISH(?:ING)?|ANODI[ZS](?:ING|E)"
    r"|COATING|PAINT(?:ING)?|HEAT[ -]TREAT(?:MENT|ING)?|HARD[ -]?COAT(?:ING)?|PHOSPHATING"
    r"|GALVANI[ZS]ING)(?![A-Z])"
)
"""Words that say whether the sizes hold before or after the part gets its finish."""

ASIDES = (
    REFERRED,
    FRAME,
    WORDED_FRAME,
    rf"{EQUAL}(?: +{ON_CIRCLE})?",
    ON_CIRCLE,
    rf"(?:SPACED +)?{NUMBER} *(?:°|DEG{END})? *APART(?![A-Z])",
    rf"ON +{NUMBER} *(?:CENTERS|CTRS|C/C)(?![A-Z])",
    r"(?:AS|WHERE) +(?:SHOWN|INDICATED|DIMENSIONED)(?![A-Z])",
    r"ON +(?:CENTER ?LINE|C/L|℄)|IN[ -]?LINE(?![A-Z])",
    r"(?:BEFORE|AFTER|PRIOR +TO) +(?:TAPPING|DRILLING|REAMING|ASSEMBLY)(?![A-Z])",
    r"ONE +(?:END|SIDE)(?: +ONLY)?(?![A-Z])",
    r"(?<!SOCKET )(?<!WRENCH )(?<!SKT )(?:FOR +)?(?:CLEARANCE|CLR)(?: +(?:HOLES?|FIT))?"
    r"(?![A-Z])\.?",
    r"SPOT(?:[ -]?DRILL(?:ED)?)?(?= *(?:(?:,|;|&|AND(?![A-Z])|THEN(?![A-Z])) *)?(?:TAP +)?DRILL)",
    PINS,
    PLACES,
)
APART = re.compile(rf"(?<![A-Z'])(?:{'|'.join(rf'(?:{one})' for one in ASIDES)})")
FOR = re.compile(r"(?<![A-Z'])(?:FOR|(?:TO +)?SUIT|TO +(?:FIT|ACCEPT|TAKE)|F/) *(?:(?:AN?|THE) +)?")
NAMED_ALONE = re.compile(
    r"(?<![\w./#°-])(?=(?:#\d|\d+(?:-\d+)?/\d|\d{1,2}-\d\d|M\d))(?! *[\d#M][^ ]* +(?:DRILL|TAP))"
)
SURE = r"(?:[SFH]\.?H\.?C\.?S|F\.?H\.?M\.?S|F\.?H\.?S\.?C\.?S|SCREWS?|SCRS?|RIVETS?)\.?$"


@dataclass(frozen=True, slots=True)
class Apart:
    """A note with what was set apart.

    Parameters
    ----------
    text : str
        The note in the grammar's characters, screws and asides as rows of their signs.
    asides : tuple of (int, int)
        Where in the note something is only said.
    sizes_hold : str
        Whether the sizes hold "before ..." or "after ..." a finish; empty if it is not said.
    """

    text: str
    asides: tuple[tuple[int, int], ...]
    sizes_hold: str = ""

    def stated(self, note: str) -> tuple[str, ...]:
        """Return the asides as typed, with single blanks."""
        found = (" ".join(note[start:end].split()) for start, end in self.asides)
        return tuple(dict.fromkeys(found))


def set_apart(plain: str) -> Apart:
    """Set the names of screws apart, and what a note says beside the cut.

    Parameters
    ----------
    plain : str
        The note in the grammar's characters.

    Examples
    --------
    >>> set_apart("6 HOLES EQ SP ON 3.00 B.C.").stated("6 holes eq sp on 3.00 b.c.")
    ('eq sp on 3.00 b.c.',)
    """
    asides = []
    finish = FINISH.search(plain)
    if finish:
        plain = plain[: finish.start()] + ASIDE * len(finish[0]) + plain[finish.end() :]
    for found in APART.finditer(plain):
        start, end = _trimmed(plain, *found.span())
        asides.append((start, end))
        plain = plain[:start] + ASIDE * (end - start) + plain[end:]
    for pattern, sure in ((FOR, ""), (NAMED_ALONE, SURE)):
        for start, end in _screws(plain, pattern, sure):
            plain = plain[:start] + SCREW * (end - start) + plain[end:]
    return Apart(_lines_of_asides_closed(plain), tuple(asides), _hold(finish))


def _hold(finish: re.Match[str] | None) -> str:
    """Return when the sizes hold, in lower case: ``after plating``."""
    if finish is None:
        return ""
    what = finish["what"].replace("-", " ")
    return f"{'after' if finish['when'] == 'AFTER' else 'before'} {WHAT.get(what, what).lower()}"


def _trimmed(text: str, start: int, end: int) -> tuple[int, int]:
    stated = text[start:end]
    return start + len(stated) - len(stated.lstrip()), start + len(stated.rstrip())


def _screws(plain: str, before: re.Pattern[str], last: str) -> Iterator[tuple[int, int]]:
    """Yield where a screw or rivet is named behind a pattern, the word FOR with it."""
    lower, past = plain.lower(), 0
    for found in before.finditer(plain):
        start, end = found.start(), name_end(lower, found.end())
        if end > found.end() and start >= past and re.search(last, plain[start:end]):
            past = end
            yield start, end


def _lines_of_asides_closed(plain: str) -> str:
    """Take the line break off a line that holds nothing but an aside."""
    return re.sub(rf"\n(?= *{ASIDE}+ *(?:{ASIDE}+ *)*(?:\n|$))", ASIDE, plain)
