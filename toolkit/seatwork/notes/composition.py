"""Whole notes put together: hole by hole, counts once where one count holds."""

from collections.abc import Sequence
from dataclasses import replace

from seatwork.errors import SeatworkError
from seatwork.notes.composing import Composer
from seatwork.notes.features import (
    Chamfer,
    Counterbore,
    Countersink,
    Feature,
    Hole,
    Spotface,
    Thread,
)
from seatwork.notes.tally import INHERIT


def compose(
    groups: Sequence[Sequence[Feature]],
    style: str,
    *,
    show_units: bool = False,
    stated: Sequence[str] = (),
) -> str:
    """Return note text, one line or more for each group of features.

    Parameters
    ----------
    groups : sequence of sequences of Feature
        Features hole by hole.
    style : {"symbols", "words", "iso"}
        How it is written.
    show_units : bool
        Whether each length carries its unit.
    stated : sequence of str
        What else was said and is not cut, each on a line of its own.

    Raises
    ------
    SeatworkError
        If ISO form has no way to say it.
    """
    composer = Composer(style, show_units=show_units)
    line = {"symbols": _symbols, "words": _words, "iso": _iso}[style]
    many = len(groups) > 1 and any(f.count > 1 for group in groups for f in group)
    return "\n".join([*(line(group, composer, many) for group in groups), *stated])


def _symbols(group: Sequence[Feature], composer: Composer, many: bool) -> str:
    """Return one line for each hole or thread, the seats behind it as ASME Y14.5 has them."""
    text = ""
    for feature, counted in zip(group, _counted(group, composer, many), strict=True):
        own_line = text and not isinstance(feature, Countersink | Counterbore | Spotface)
        text += ("\n" if own_line else " " if text else "") + counted
    return text


def _words(group: Sequence[Feature], composer: Composer, many: bool) -> str:
    count = group[0].count
    if count > 1 and all(isinstance(f, INHERIT) and f.count == count for f in group):
        return ", ".join([*map(composer.feature, group), f"{count} PLACES"])
    return ", ".join(_counted(group, composer, many))


def _counted(group: Sequence[Feature], composer: Composer, many: bool) -> list[str]:
    """Return the features with their counts: once if one count holds for the hole.

    A count of 1 is written only where other counts in the note could be taken for it.
    """
    heirs = [feature for feature in group if isinstance(feature, INHERIT)]
    one_count = len({feature.count for feature in heirs}) < 2
    found = []
    for feature in group:
        text = composer.feature(feature)
        if feature in heirs:
            first = feature is heirs[0] and (many or feature.count > 1)
            shown = first or not one_count
        else:
            shown = feature.count > 1
        found.append(f"{feature.count}X {text}" if shown else text)
    return found


def _iso(group: Sequence[Feature], composer: Composer, many: bool) -> str:
    """Return the lines of ISO 15786: seats above, the hole or thread below them."""
    count = f"{group[0].count}× " if many or group[0].count > 1 else ""
    if len(group) == 1 and isinstance(group[0], Chamfer):
        return count + _iso_chamfer(group[0], composer)
    seats = [_iso_seat(seat, composer) for seat in group if not isinstance(seat, Hole | Thread)]
    below = [feature for feature in group if isinstance(feature, Hole | Thread)]
    if not below or len({feature.count for feature in group}) > 1:
        raise _no_iso("a seat needs its hole, and one count for both")
    return "\n".join([*seats, count + _iso_hole(below, composer)])


def _iso_seat(seat: Feature, composer: Composer) -> str:
    if isinstance(seat, Countersink) and seat.diameter and seat.angle and not seat.depth:
        _check_plain(seat, seat.head)
        return f"{composer.size(seat.diameter)} × {composer.size(seat.angle)}"
    if isinstance(seat, Counterbore) and seat.diameter and seat.depth:
        _check_plain(seat, seat.head)
        bottom = f" {seat.bottom}" if seat.bottom else ""
        return f"{composer.size(seat.diameter)} × {composer.size(seat.depth)}{bottom}"
    raise _no_iso("a seat there is diameter × angle or diameter × depth")


def _iso_hole(below: Sequence[Feature], composer: Composer) -> str:
    for feature in below:
        _check_plain(feature, None)
    first = below[0]
    if isinstance(first, Thread):
        return _iso_thread(first, below[1:], composer)
    hole = first
    if len(below) > 1 or not isinstance(hole, Hole) or hole.process or hole.depth_to:
        raise _no_iso("a hole there is diameter × depth")
    if hole.diameter is None or (hole.bottom and not hole.depth):
        raise _no_iso("a hole there is diameter × depth")
    depth = f" × {composer.size(hole.depth)}" if hole.depth else ""
    bottom = f" {hole.bottom}" if hole.bottom else ""
    through = " THRU" if hole.through else ""
    return f"⌀{composer.size(hole.diameter)}{depth}{bottom}{through}"


def _iso_thread(thread: Thread, holes: Sequence[Feature], composer: Composer) -> str:
    text = composer.feature(replace(thread, count=1, depth=None, through=False))
    if thread.through:
        text += " THRU"
    if not holes:
        return text if thread.depth is None else f"{text} × {composer.size(thread.depth)}"
    hole = holes[0]
    plain = isinstance(hole, Hole) and Hole(count=hole.count, depth=hole.depth) == hole
    if not isinstance(hole, Hole) or not plain or not thread.depth or not hole.depth:
        raise _no_iso("a tapped hole there is thread × depth of thread / depth of hole")
    return f"{text} × {composer.size(thread.depth)}/{composer.size(hole.depth)}"


def _iso_chamfer(chamfer: Chamfer, composer: Composer) -> str:
    _check_plain(chamfer, None)
    if chamfer.leg is None or chamfer.angle is None or chamfer.diameter is not None:
        raise _no_iso("a chamfer there is leg × angle")
    return composer.feature(chamfer).removeprefix("CHAM ").replace(" X ", " × ")


def _check_plain(feature: Feature, head: object) -> None:
    if feature.side or feature.scope or feature.screw or head:
        raise _no_iso("sides, screws, heads and TYP have no sign there")


def _no_iso(why: str) -> SeatworkError:
    return SeatworkError("ISO form", why, "write the note in symbols or words")
