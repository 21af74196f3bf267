"""Doubts about where a seat lies: on which face, at which edge."""

from collections.abc import Iterator

from seatwork.notes.callout import NoteWarning
from seatwork.notes.features import (
    Chamfer,
    Counterbore,
    Countersink,
    Feature,
    Hole,
    Spotface,
    Thread,
    kind_of,
)

SEATS = (Countersink, Counterbore, Spotface, Chamfer)


def of_place(place: int, feature: Feature, group: list[Feature]) -> Iterator[NoteWarning]:
    """Yield what to ask about the place of one feature.

    Parameters
    ----------
    place : int
        The feature's place among all of the note.
    feature : Feature
        A feature.
    group : list of Feature
        All features of its hole.
    """
    yield from _side_of_hole(place, feature, group)
    yield from _which_edge(place, feature, group)


def _side_of_hole(place: int, feature: Feature, group: list[Feature]) -> Iterator[NoteWarning]:
    """Ask where a side stands by the hole and its seat has none."""
    if not isinstance(feature, Hole | Thread) or not feature.side or feature.side == "other":
        return
    if feature.depth is not None:
        return
    seat = next((one for one in group if isinstance(one, SEATS)), None)
    if seat is None or any(one.side for one in group if isinstance(one, SEATS)):
        return
    words = f"{feature.side.upper()} SIDE{'S' * (feature.side == 'both')}"
    yield NoteWarning(
        code="side-of-hole",
        feature=place,
        sentence=f"{words} stands by the hole, and its {kind_of(seat)} has no side: on which face "
        "is it cut?",
    )


def _which_edge(place: int, feature: Feature, group: list[Feature]) -> Iterator[NoteWarning]:
    """Ask about a chamfer by its leg where a counterbore gives its hole two edges on one side."""
    if not isinstance(feature, Chamfer) or feature.leg is None or feature.diameter is not None:
        return
    bores = [one for one in group if isinstance(one, Counterbore) and _one_face(one, feature)]
    if bores and not feature.measured_from:
        yield NoteWarning(
            code="chamfer-edge",
            feature=place,
            sentence="Which edge is chamfered, the mouth of the counterbore or the hole on its "
            "floor? The note gives the leg and no diameter; AT C'BORE FLOOR would say the floor.",
        )


def _one_face(bore: Feature, chamfer: Feature) -> bool:
    faces = {"both"} & {bore.side, chamfer.side}
    return bool(faces) or (bore.side or "near") == (chamfer.side or "near")
