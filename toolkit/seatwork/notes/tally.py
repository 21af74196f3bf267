"""Counts and order: drafts of one note put hole by hole, each with its number of places."""

from seatwork.notes.drafts import SEATS, Draft
from seatwork.notes.features import FLOOR, Chamfer, Counterbore, Countersink, Feature, Hole, Thread
from seatwork.notes.grouping import Part, grouped, major_diameter, width_of
from seatwork.notes.parsing import Phrase

INHERIT = (*SEATS, Chamfer, Hole, Thread)


def features_of(
    drafts: list[Draft], trailing: list[tuple[int, int, Phrase]]
) -> tuple[Feature, ...]:
    """Return the finished features.

    Parameters
    ----------
    drafts : list of Draft
        As read; changed in order only.
    trailing : list of (int, int, Phrase)
        Counts such as ``3 HOLES``: number of drafts before it, the count, its phrase.
    """
    groups = _groups(_holes_first(drafts))
    for before, number, _ in trailing:
        group = next(group for group in groups if drafts[before - 1] in group)
        for draft in group:
            if draft.count is None:
                draft.count = number
    for group in groups:
        _lay_on_floors(group)
    return tuple(draft.build(_count(draft, group)) for group in groups for draft in group)


def _lay_on_floors(group: list[Draft]) -> None:
    """Lay a countersink that is narrower than the counterbore before it on its floor."""
    bore: Draft | None = None
    for draft in group:
        if draft.kind is Counterbore:
            bore = draft
        elif draft.kind is Countersink and bore is not None and _narrower(draft, bore):
            draft.stated.setdefault("measured_from", FLOOR)


def _narrower(sink: Draft, bore: Draft) -> bool:
    widths = [width_of(draft.stated.get("diameter")) for draft in (sink, bore)]
    one_face = sink.stated.get("side", "") in ("", bore.stated.get("side", ""))
    return one_face and None not in widths and widths[0] < widths[1]  # type: ignore[operator]


def _holes_first(drafts: list[Draft]) -> list[Draft]:
    """Return the drafts with each hole before seats that were written ahead of it."""
    ordered: list[Draft] = []
    for draft in drafts:
        place = _place_of(draft, ordered) if draft.kind is Hole else len(ordered)
        ordered.insert(place, draft)
    return ordered


def _place_of(hole: Draft, before: list[Draft]) -> int:
    place = len(before)
    if before and before[-1].of_next:
        return place - 1
    while place and _is_ahead(before[place - 1], hole):
        place -= 1
    owned = place > 0 and before[place - 1].kind in (Hole, Thread)
    above = all(seat.above for seat in before[place:])
    return len(before) if owned and not above else place


def _is_ahead(seat: Draft, hole: Draft) -> bool:
    return (seat.kind in SEATS or seat.at_mouth) and (seat.line == hole.line or seat.above)


def _groups(drafts: list[Draft]) -> list[list[Draft]]:
    places = grouped([_part(draft) for draft in drafts])
    return [[drafts[place] for place in group] for group in places]


def _part(draft: Draft) -> Part:
    width = None
    if draft.kind is Hole:
        width = width_of(draft.stated.get("diameter"))
    elif draft.kind is Thread:
        width = major_diameter(draft.stated["size"])
    process = draft.stated.get("process", "")
    return Part(kind=draft.kind, count=draft.count, width=width, process=process)


def _count(draft: Draft, group: list[Draft]) -> int:
    if draft.count is not None:
        return draft.count
    if draft.kind not in INHERIT:
        return 1
    return next((d.count for d in group if d.kind in INHERIT and d.count is not None), 1)
