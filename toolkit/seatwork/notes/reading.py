"""Read a print note: what it says, what is assumed by which house rule, what to ask about."""

import re
from difflib import get_close_matches
from typing import TYPE_CHECKING

from seatwork.errors import SeatworkError
from seatwork.notes.apart import Apart, set_apart
from seatwork.notes.assembly import Assembler
from seatwork.notes.assuming import assumptions
from seatwork.notes.bare_angles import assumed_angles, with_bare_angles
from seatwork.notes.callout import Assumption, Callout, NoteError
from seatwork.notes.characters import plain
from seatwork.notes.composition import compose
from seatwork.notes.doubting import warnings
from seatwork.notes.evidence import Decision, decide
from seatwork.notes.fastening import with_screws
from seatwork.notes.features import Feature
from seatwork.notes.marking import marked
from seatwork.notes.misleading import check
from seatwork.notes.parsing import Phrase, phrases
from seatwork.notes.pitches import with_thread_numbers
from seatwork.notes.repeats import with_both_units
from seatwork.notes.sizing import Sizer
from seatwork.shop import HouseRules
from seatwork.shop import rules as rules_in_force

if TYPE_CHECKING:
    from lark import UnexpectedInput

LONGEST = 2000  # characters
MOST_FEATURES = 40  # holes, seats and edges of one note
CUTS = 3  # how often a note that cannot be read is shortened to find what was understood
CLOSE = 0.74  # how much of a word must be right for another to be offered in its place
WANTED = "name it as #10-32 flat head, 3/8 SHCS, M6 ISO 10642 or 1/8 flush rivet"
VOCABULARY = """
DRILL REAM BORE PUNCH TAP THREAD HOLE HOLES PLACES THRU THROUGH DEEP DEPTH DIA CSK COUNTERSINK
C'SINK CBORE C'BORE COUNTERBORE SF SPOTFACE SFACE CDRILL COUNTERDRILL CENTER CHAM CHAMFER CHFR
BREAK EDGES CORNERS SHARP DEBURR BURRS REMOVE TYP TYPICAL NEAR FAR BOTH OTHER SIDE SIDES MAX MIN
REF INCL FLUSH PROUD BELOW FLANGE EQUALLY SPACED BOLT CIRCLE FOR UNLESS OTHERWISE SPECIFIED FULL
POINT UNC UNF
"""


def read(text: str, system: str | None = None, rules: HouseRules | None = None) -> Callout:
    """Read a print note.

    Parameters
    ----------
    text : str
        The note, on one line or several, in symbols or words; at most 2,000 characters.
    system : {"inch", "metric"}, optional
        What the print is in. Without it the note itself has to show it.
    rules : HouseRules, optional
        House rules; those in force if not given.

    Returns
    -------
    Callout
        What was said; beside it what was assumed, by which house rule, and what to ask about.

    Raises
    ------
    NoteError
        At the place that cannot be read, with what was understood before it.
    SeatworkError
        If `text` is no text or too long, or `system` is no unit system.

    Examples
    --------
    >>> callout = read("4X ⌀.201 THRU ⌵ ⌀.385 X 82°")
    >>> hole, seat = callout.features
    >>> hole.count, round(seat.diameter.value, 3), seat.angle.value
    (4, 9.779, 82.0)
    """
    _check(text, system)
    try:
        return _read(text, system, rules_in_force() if rules is None else rules)
    except NoteError as error:
        if error.understood:
            groups = Callout(features=error.understood).groups()
            error.understood_text = compose(groups, "words").replace("\n", "; ")
        raise


def _read(text: str, system: str | None, rules: HouseRules) -> Callout:
    apart = set_apart(plain(text))
    as_parsed = _parsed(text, apart)
    bare = with_bare_angles(text, as_parsed, rules)
    decision = decide(text, as_parsed, system, rules)
    sizer = Sizer(text, decision.system)
    features = Assembler(text, sizer).run(marked(text, as_parsed))
    if len(features) > MOST_FEATURES:
        raise SeatworkError(
            f"{text[:20]}…",
            f"the note asks for {len(features)} things, more than {MOST_FEATURES}",
            "write a note for each hole",
        )
    stated = Callout(features=features, system=decision.system, text=text)
    return Callout(
        features=features,
        said_not_used=apart.stated(text),
        sizes_hold=apart.sizes_hold,
        assumptions=(
            *_about_system(decision, rules),
            *assumed_angles(features, bare, rules),
            *assumptions(stated, rules),
        ),
        warnings=warnings(stated, as_parsed, decision, sizer.differing, rules),
        system=decision.system,
        text=text,
    )


def _check(text: object, system: str | None) -> None:
    if not isinstance(text, str):
        raise SeatworkError(type(text).__name__, "that is not text", "write the note as text")
    if len(text) > LONGEST:
        raise SeatworkError(
            f"{text[:20]}…",
            f"the note has {len(text):,} characters, more than {LONGEST:,}",
            "write one note at a time",
        )
    if system not in (None, "inch", "metric"):
        raise SeatworkError(system, "that is no unit system", 'write "inch" or "metric"')


def _parsed(text: str, apart: Apart) -> list[Phrase]:
    from lark.exceptions import UnexpectedInput

    check(text, apart.text)
    try:
        return _prepared(text, apart)
    except UnexpectedInput as error:
        raise _cannot_read(text, error) from error


def _prepared(text: str, apart: Apart) -> list[Phrase]:
    """Return the phrases with the names of screws, and what is said twice as one."""
    return with_thread_numbers(text, with_screws(text, with_both_units(phrases(apart.text))))


def _cannot_read(text: str, error: "UnexpectedInput") -> NoteError:
    """Return the error at a word or sign that the grammar does not know there."""
    start, settled = _place(text, error)
    word = re.match(r"[^\W\d_]['\w/]*|\S?", text[start:])
    end = start + len(word[0] if word else "")
    fault, remedy = _why(plain(text[start:end]), start >= len(text.rstrip()))
    return NoteError(
        text, start=start, end=end, fault=fault, remedy=remedy, understood=_before(text[:settled])
    )


def _place(text: str, error: "UnexpectedInput") -> tuple[int, int]:
    """Return where the note cannot be read, and up to where it may have been understood."""
    end = len(text.rstrip())
    found = getattr(error, "pos_in_stream", None)
    if getattr(getattr(error, "token", None), "type", "") == "$END":
        return end, min(found or 0, end)
    return (end, 0) if found is None else (min(found, end), min(found, end))


def _why(word: str, at_the_end: bool) -> tuple[str, str]:
    if at_the_end:
        return "the note stops in the middle", "write the size or word that is missing"
    if word == "FOR":
        return "no screw that I know is named behind FOR", WANTED
    near = get_close_matches(word, VOCABULARY.split(), n=1, cutoff=CLOSE)
    if word[:1].isalpha():
        if near and near[0] == word:
            return "that word cannot stand here", "write the size or sign that belongs before it"
        meant = f"{near[0]} may be meant" if near else "ask what it means before it is cut"
        return (
            "that is no word of a note here",
            f"{meant}; known are CSK, C'BORE, S.F., DRILL, THRU",
        )
    return "that cannot stand here", "write sizes as .25, 1/4 or 6.6, and join them by X"


def _before(text: str) -> tuple[Feature, ...]:
    """Return what can be understood of the text before a place that cannot be read."""
    from lark.exceptions import UnexpectedInput

    for _ in range(CUTS):
        try:
            found = _prepared(text, set_apart(plain(text)))
            system = decide(text, found, None, rules_in_force()).system
            return Assembler(text, Sizer(text, system)).run(marked(text, found))
        except UnexpectedInput as error:
            text = text[: _place(text, error)[1]]
        except NoteError as error:
            return error.understood
    return ()


def _about_system(decision: Decision, rules: HouseRules) -> tuple[Assumption, ...]:
    if not decision.by_rule:
        return ()
    rule = rules["note.bare_numbers"]
    unit = "inches" if decision.system == "inch" else "millimeters"
    return (
        Assumption(
            feature=0,
            field="system",
            value=decision.system,
            rule=rule.name,
            sentence=f"Nothing in the note shows inches or millimeters: its numbers are taken in "
            f"{unit}, house rule {rule.name} ({rule.shown}; {rule.source}).",
        ),
    )
