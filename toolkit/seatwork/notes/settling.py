"""What a feature is can hang on the ones beside it: settled once all of a note is read."""

import re
from itertools import pairwise

from seatwork import hardware
from seatwork.errors import SeatworkError
from seatwork.notes.callout import NoteError
from seatwork.notes.drafts import Draft
from seatwork.notes.features import Chamfer, Counterbore, Countersink, EdgeBreak, Hole, Thread
from seatwork.notes.grouping import major_diameter
from seatwork.notes.parsing import Phrase
from seatwork.notes.sizes import Size

SIDE_ANGLES = (40.0, 50.0)  # deg; no cutter has such an included angle, a chamfer's side may
INCLUDED = (90.0, 100.0, 120.0)  # deg; no chamfer has a side of so much
OF = re.compile(r"(?<![A-Z])(?:OF|ON|IN|AT)(?: +(?:THE|AN?|EACH))? *(?:⌀|Ø|DIA\.?)? *$")
WIDEST_LEG = 3.175  # mm, 1/8 in; a wider leg of a countersink's mouth is asked about


def settle(text: str, drafts: list[Draft]) -> None:
    """Settle stacked sizes and countersinks by a leg and 45°; the drafts are changed.

    Parameters
    ----------
    text : str
        The note, for errors.
    drafts : list of Draft
        All features of the note, in its order.

    Raises
    ------
    NoteError
        Where the note must be asked about.
    """
    for first, second in pairwise(drafts):
        _stack(text, first, second)
        first.of_next = _of(text, first, second)
    for draft in drafts:
        if draft.kind in (Countersink, Chamfer, EdgeBreak):
            _side_angle(text, draft, drafts)


def _stack(text: str, first: Draft, second: Draft) -> None:
    """Make the wider of two stacked diameters the counterbore of the other, ISO 15786."""
    if second.joined not in ("/", "new line") or not (_is_bare(first) and _is_bare(second)):
        return
    widths = [width(draft) for draft in (first, second)]
    if None in widths or widths[0] == widths[1]:
        return
    wide, narrow = (first, second) if widths[0] > widths[1] else (second, first)  # type: ignore[operator]
    depths = [_value(draft.stated.get("depth")) for draft in (wide, narrow)]
    shallow = depths[0] is not None and (depths[1] is None or depths[0] < depths[1])
    if shallow and wide.by_depth == "X" and "through" not in wide.stated:
        wide.kind, wide.above = Counterbore, True
    elif second.joined == "/":
        raise _fault(
            text,
            second,
            "which of the two is the counterbore, and how deep is it?",
            "write the wider one with its depth, as ⌀15 × 8.6",
        )


def _of(text: str, first: Draft, second: Draft) -> bool:
    """Tell whether a chamfer stands before its own hole: ``CHAM BOTH ENDS OF 1.500 BORE``."""
    if first.kind not in (Chamfer, Countersink) or second.kind is not Hole:
        return False
    return OF.search(text[first.start : second.start].upper()) is not None


def _is_bare(draft: Draft) -> bool:
    return draft.kind is Hole and draft.bare and "process" not in draft.stated


def _side_angle(text: str, draft: Draft, drafts: list[Draft]) -> None:
    """Take ``CSK 1/32 X 45°`` for a chamfer; ask about a seat's diameter by a bare 45°."""
    angle, phrase = draft.stated.get("angle"), draft.phrases.get("angle")
    if angle is None or phrase is None or phrase.marks & {"included", "per_side"}:
        return
    degrees = angle.value or 0.0
    if draft.is_side_angle():
        if draft.kind is Chamfer and degrees in INCLUDED and _to_diameter(draft, drafts):
            return
        if not (angle.largest or 0.0) < 90:
            raise _ask_which(text, phrase, degrees)
        return
    if not SIDE_ANGLES[0] <= degrees <= SIDE_ANGLES[1]:
        return
    if draft.kind is Countersink and _is_leg(draft, drafts) and degrees == 45:
        draft.kind, draft.at_mouth = Chamfer, True
        draft.stated["leg"] = draft.stated.pop("diameter")
        return
    raise _ask_which(text, phrase, degrees)


def _to_diameter(draft: Draft, drafts: list[Draft]) -> bool:
    """Take ``CHAM 90° X .21`` for a cone at its hole, where it is wider than that hole."""
    across = _value(draft.stated.get("leg"))
    holes = [width(one) for one in drafts if one.kind is Hole]
    holes += [major_diameter(one.stated["size"]) for one in drafts if one.kind is Thread]
    known = [one for one in holes if one is not None]
    if across is None or not known or across <= max(known):
        return False
    draft.stated["diameter"] = draft.stated.pop("leg")
    draft.phrases["diameter"] = draft.phrases.pop("leg")
    return True


def _ask_which(text: str, phrase: Phrase, degrees: float) -> NoteError:
    ways = (f"{degrees:g}° PER SIDE", f"{degrees:g}° INCL")
    return NoteError(
        text,
        start=phrase.start,
        end=phrase.end,
        fault=f"{degrees:g}° a side, or included? Which angle?",
        remedy=f"write {' or '.join(ways)}",
        options=ways,
    )


def _is_leg(draft: Draft, drafts: list[Draft]) -> bool:
    """Tell whether the size of a countersink can only be the leg of a chamfer."""
    phrase, size = draft.phrases.get("diameter"), draft.stated.get("diameter")
    if (
        phrase is None
        or phrase.kind != "plain"
        or "depth" in draft.stated
        or draft.stated.get("head")
    ):
        return False
    leg = _value(size)
    hole = next((width(one) for one in drafts if one.kind is Hole), None)
    return leg is not None and leg <= (WIDEST_LEG if hole is None else min(hole, WIDEST_LEG))


def width(draft: Draft) -> float | None:
    """Return a feature's diameter, a drill's name looked up [mm]; None if it is not said."""
    size = draft.stated.get("diameter")
    if size is None or size.value is not None:
        return _value(size)
    try:
        return hardware.drill(size.name).diameter
    except SeatworkError:
        return None


def _value(size: Size | None) -> float | None:
    return None if size is None else size.value


def _fault(text: str, draft: Draft, fault: str, remedy: str) -> NoteError:
    return NoteError(text, start=draft.start, end=draft.end, fault=fault, remedy=remedy)
