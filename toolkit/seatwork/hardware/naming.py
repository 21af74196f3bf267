"""The name of a screw, as spoken and written, read into its kind and size."""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from seatwork.errors import SeatworkError
from seatwork.hardware import other_heads
from seatwork.hardware.kinds import KINDS
from seatwork.hardware.screws import Screw
from seatwork.hardware.spelling import as_typed, tidy
from seatwork.hardware.spoken import digits
from seatwork.hardware.threads import Thread, read_thread
from seatwork.hardware.vocabulary import (
    ANGLE,
    DOCUMENT,
    DOCUMENTS,
    GRADE,
    INITIALS,
    LENGTH,
    READ_AS,
    SAME_WORDS,
    SHORT,
    SIZE_STARTS,
    WANTED,
    WORDED,
    WORDS,
)
from seatwork.units import length


@dataclass(slots=True, kw_only=True)
class _Stated:
    """What was found in the name so far."""

    thread: Thread
    document: str | None
    angle: int | None
    length: float | None
    words: set[str]
    assumptions: list[str] = field(default_factory=list)


def screw(text: str) -> Screw:
    """Find the screw that a name stands for.

    Parameters
    ----------
    text : str
        Size first or last, as spoken and written: ``#10-32 flat head``, ``10-32 FHMS``,
        ``1/4-20 socket flat``, ``M6 csk socket``, ``M6x1 SHCS``, ``3/8-16 hex cap``,
        ``ISO 10642 M6``, ``#8 flat head 100°``. A length is kept: ``M6x20 SHCS``.

    Returns
    -------
    Screw
        ``.head`` is its `seatwork.seats.Head` where the head is a cone.

    Raises
    ------
    SeatworkError
        If the name is no screw held here, or could be two: then it asks which.

    Examples
    --------
    >>> found = screw("#10-32 flat head")
    >>> found.name
    '#10-32 flat head machine screw, 82°'
    >>> found.head.sharp_diameter, found.edge_diameter, found.rounded_edge_diameter
    (9.779, 9.1948, 8.4582)
    """
    with as_typed(text):
        stated = _take_apart(tidy(text, WANTED))
        kind = _kind(stated)
        found = KINDS[kind].screw(kind, stated.thread, length=stated.length)
        assumed = (*stated.assumptions, *_cautions_about_heads(stated, found))
    return replace(found, assumptions=assumed)


def _cautions_about_heads(stated: _Stated, found: Screw) -> Iterator[str]:
    """Name what the head may be instead, where shops meet both."""
    if stated.document in READ_AS:
        yield READ_AS[stated.document]
    if found.kind == "hex inch" and "bolt" in stated.words:
        yield "read as a hex cap screw; the head of a hex bolt has another height"
    flats, old = found.across_flats, found.value("across_flats_old")
    if flats and old and old != flats:
        yield f"width across flats {flats:g} mm by ISO; an old DIN head has {old:g} mm: measure"


def _take_apart(plain: str) -> _Stated:
    """Take document, angle, thread and length out of the name; what is left are words."""
    document, rest = _document(INITIALS.sub(r"\1.", plain))
    angle, rest = _taken(ANGLE, rest)
    thread, rest = read_thread(digits(_size_first(rest)))
    found = LENGTH.match(rest)
    stated = _length(thread, found) if found else None
    rest = GRADE.sub(" ", rest[found.end() :] if found else rest)
    words = _words(plain, rest) | ({"socket"} if document == "b 18.3" else set())
    return _Stated(
        thread=thread,
        document=document,
        angle=int(angle) if angle else None,
        length=stated,
        words=words,
    )


def _size_first(rest: str) -> str:
    """Bring the size to the front: ``shcs m6`` becomes ``m6 shcs``."""
    rest = rest.strip(" -,:")
    start = SIZE_STARTS.search(rest)
    if not start or digits(rest) != rest:
        return rest
    return f"{rest[start.start() :]} {rest[: start.start()]}".strip()


def _document(plain: str) -> tuple[str | None, str]:
    found = DOCUMENT.search(plain)
    if not found:
        return None, plain
    body, number = found.groups()
    name = f"{'b' if body.endswith('b') else body} {number}"
    rest = " ".join((plain[: found.start()] + " " + plain[found.end() :]).split())
    if name in other_heads.DOCUMENTS:
        raise other_heads.refuse(plain, other_heads.DOCUMENTS[name])
    if name not in DOCUMENTS and name not in ("b 18.3", "b 18.6.3"):
        raise SeatworkError(
            plain, f"{found.group().upper()} is no document held here", f"write {WANTED}"
        )
    return name, rest


def _taken(pattern: re.Pattern[str], text: str) -> tuple[str | None, str]:
    """Take the first match out of the text; return its group, and the text without it."""
    found = pattern.search(text)
    if not found:
        return None, text
    return found[1], " ".join((text[: found.start()] + " " + text[found.end() :]).split())


def _length(thread: Thread, found: re.Match[str]) -> float:
    amount, unit, _ = found.groups()
    system_unit = "in" if thread.system == "inch" else "mm"
    return length(f"{amount} {(unit or '').strip() or system_unit}")


def _words(plain: str, rest: str) -> set[str]:
    """Return what the remaining words say of the head."""
    stated: set[str] = set()
    bare = rest.replace("(", " ").replace(")", " ").strip(" ,.-")
    words = [word.replace(".", "") for word in re.split(r"[ ,/&-]+", bare)]
    other = other_heads.head_of(words)
    if other:
        raise other_heads.refuse(plain, other)
    for word in words:
        if word and word not in WORDS and word not in SHORT:
            raise SeatworkError(plain, f"I cannot read {word!r}", f"write {WANTED}")
        stated |= set((WORDS.get(word) or SHORT.get(word, "")).split())
    if "socket" in stated:
        stated.discard("hex")  # a hex socket
    return stated


def _kind(stated: _Stated) -> str:
    """Return the kind the words and the document agree on, or ask."""
    worded = _worded(stated)
    documented = DOCUMENTS.get(stated.document or "")
    if documented:
        _refuse_disagreement(stated, worded, documented)
        kind = documented
    else:
        kind = _settled(stated, worded)
    return _with_angle(stated, kind)


def _worded(stated: _Stated) -> str | None:
    """Return ``flat socket``, ``flat machine``, ``socket cap``, ``hex`` or None."""
    words = stated.words
    if "flat" in words:
        both = words & {"socket", "machine"}
        return f"flat {both.pop()}" if len(both) == 1 else None
    if "hex" in words and "machine" not in words:
        return "hex"
    return "socket cap" if "socket" in words else None


def _refuse_disagreement(stated: _Stated, worded: str | None, documented: str) -> None:
    system = KINDS[documented].system
    if stated.thread.system != system:
        raise SeatworkError(
            stated.thread.name,
            f"{KINDS[documented].standard} holds {system} screws",
            "name another",
        )
    same = SAME_WORDS.get(documented, documented)
    meant = WORDED[worded][system] if worded else None
    loose = stated.words and not worded and "flat" in stated.words and "socket cap" in same
    if loose or (meant and meant != same and documented != "flat machine 100"):
        raise SeatworkError(
            stated.thread.name,
            f"the words say one screw, {KINDS[documented].standard} another"
            f" ({KINDS[documented].title})",
            "leave one of them out",
        )


def _settled(stated: _Stated, worded: str | None) -> str:
    """Return the kind where no document settles it, or ask."""
    name, system = stated.thread.name, stated.thread.system
    if worded:
        return WORDED[worded][system]
    cap = stated.words >= {"flat", "cap"}  # it has a slot or a hex socket, and two heads
    numbered = "flat" in stated.words and not cap and _is_numbered(stated.thread)
    if stated.document == "b 18.6.3" or numbered:
        if stated.document is None:
            stated.assumptions.append("flat head without the word socket read as a machine screw")
        return "flat machine 82"
    two = cap or stated.words >= {"socket", "machine"}
    if "flat" in stated.words and system == "inch" and not two:
        stated.assumptions.append(
            "flat head without the word socket read as a machine screw; the head of a socket"
            " flat of this size is wider"
        )
        return "flat machine 82"
    if "flat" in stated.words:
        other = "machine" if system == "inch" else "slotted"
        both = (f"{name} flat head {other} screw", f"{name} socket flat")
        raise SeatworkError(
            f"{name} flat head",
            f"{'machine or socket' if system == 'inch' else 'slotted, recessed or socket'}?"
            " Their heads differ",
            f"write {both[0]} or {both[1]}",
            options=both,
        )
    heads = tuple(f"{name} {head}" for head in ("flat head", "SHCS", "hex cap"))
    raise SeatworkError(
        name, "which head?", f"write {heads[0]}, {heads[1]} or {heads[2]}", options=heads
    )


def _is_numbered(thread: Thread) -> bool:
    return thread.size.startswith("#")


def _with_angle(stated: _Stated, kind: str) -> str:
    """Hold the angle in the name against the kind; 100° makes another machine screw."""
    if stated.angle == 100 and kind == "flat machine 82":
        return "flat machine 100"
    if stated.angle is None:
        return kind
    held = {"inch": {82}, "metric": {90}}[KINDS[kind].system]
    if kind == "flat machine 100":
        held = {100}
    if kind == "din 7991":
        held = {60, 90}
    if KINDS[kind].main in ("head_diameter", "across_flats") or stated.angle not in held:
        text = " or ".join(f"{angle}°" for angle in sorted(held))
        raise SeatworkError(
            stated.thread.name,
            f"a {KINDS[kind].title} has no {stated.angle}° head",
            f"leave the angle out; flat heads of this kind go in {text} seats",
        )
    return kind
