"""From words to things: the screw a note names, its hole, and sizes with their source."""

from seatwork import hardware
from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.hardware.other_heads import seat_of
from seatwork.hardware.rivets import is_rivet
from seatwork.notes import Counterbore, Countersink, Feature, Hole, Size, Thread
from seatwork.plan.drilled import drilled, listed
from seatwork.plan.records import Given
from seatwork.shop import HouseRules

NOTE = "print note"
TOLERANCE = {
    "in": "note.inch_tolerance",
    "mm": "note.metric_tolerance",
    "deg": "note.angle_tolerance",
}


def screw_for(group: tuple[Feature, ...], named: str | None) -> Screw | None:
    """Find the one screw that a note and the caller name between them for a hole.

    Parameters
    ----------
    group : tuple of Feature
        What the note says of one hole; it keeps a screw's name as text.
    named : str or None
        The screw as the caller names it.

    Returns
    -------
    Screw or None
        The screw; None where nobody names one, for a rivet, which has lists of its own, and for
        a head that no table holds where the note gives the seat's own sizes.

    Raises
    ------
    SeatworkError
        If two different screws are named, or a name cannot be read.
    """
    texts = [*(one.screw for one in group if one.screw), *([named] if named else [])]
    texts = [text for text in texts if not is_rivet(text) and not _by_sizes(text, group)]
    screws = [hardware.screw(text) for text in dict.fromkeys(texts)]
    found = {screw.name: text for screw, text in zip(screws, dict.fromkeys(texts), strict=True)}
    if len(found) > 1:
        first, second = list(found)[:2]
        raise SeatworkError(
            f"{found[first]} and {found[second]}",
            f"one hole cannot be for different screws, {first} and {second}",
            "ask which one goes in, and name that one",
        )
    return max(screws, key=lambda screw: screw.length is not None, default=None)


def _by_sizes(text: str, group: tuple[Feature, ...]) -> bool:
    """Tell whether a seat for a head that no table holds is given by its sizes."""
    seats = [one for one in group if one.screw == text and not isinstance(one, Hole)]
    return seat_of(text) is not None and bool(seats) and all(map(_is_sized, seats))


def _is_sized(seat: Feature) -> bool:
    if getattr(seat, "diameter", None) is None:
        return False
    if isinstance(seat, Countersink):
        return seat.angle is not None
    return not isinstance(seat, Counterbore) or seat.depth is not None or seat.left is not None


def screw_named(text: str) -> Screw:
    """Find the screw that a text names.

    Raises
    ------
    SeatworkError
        If the lists have none of that name.
    """
    return hardware.screw(text)


def stated(size: Size, about: str) -> Given:
    """Return a size of the note with its limits; a drill's name is looked up.

    Raises
    ------
    SeatworkError
        If the note names a drill that no list has.
    """
    if size.value is None:
        drill = hardware.drill(size.name)
        return Given(
            about=about,
            value=drill.diameter,
            source=f"{NOTE}, drill {drill.name}: {drill.source}",
            confirmed=drill.confirmed,
            name=drill.name,
            noted=True,
        )
    kind = "angle" if size.unit == "deg" else "length"
    bounded = size.smallest != size.largest
    return Given(
        about=about,
        value=size.value,
        least=_fitted(size)[0] if size.fit else (size.smallest if bounded else None),
        greatest=_fitted(size)[1] if size.fit else (size.largest if bounded else None),
        kind=kind,
        source=_who_says(size, bounded=bounded),
        noted=True,
    )


def _who_says(size: Size, *, bounded: bool) -> str:
    """Name the house rules that a size with limits, or with one bound, is aimed at by."""
    if not bounded or size.fit:
        return NOTE
    if size.bound in ("max", "min"):
        return f"{NOTE}, {size.bound.upper()}: inside it by house rule {TOLERANCE[size.unit]}"
    return f"{NOTE}, between its limits by house rule limits.aim"


def by_rule(rules: HouseRules, name: str, about: str, *, kind: str = "length") -> Given:
    """Return a size that a house rule gives."""
    return Given(
        about=about,
        value=rules.number(name),
        kind=kind,
        source=f"house rule {name}",
        confirmed=rules[name].confirmed,
    )


def hole_for(
    feature: Hole | None, screw: Screw | None, thread: Thread | None, rules: HouseRules
) -> Given | None:
    """Find the hole: what the note says, the tap drill, or the screw's clearance hole.

    Returns
    -------
    Given or None
        The hole with its source; None where neither note nor screw tells.
    """
    if feature and feature.diameter:
        return drilled(stated(feature.diameter, "hole"), feature.diameter)
    if thread:
        tap = hardware.tap_drill(thread_name(thread))
        return Given(
            about="hole",
            value=tap.diameter,
            source=f"tap drill {tap.name}: {tap.source}",
            confirmed=tap.confirmed,
            name=tap.name,
        )
    if screw is None:
        return None
    rule = "hole.inch_fit" if screw.thread.system == "inch" else "hole.metric_fit"
    hole = hardware.clearance_hole(screw.thread, fit=rules.word(rule))
    given = Given(
        about="hole",
        value=hole.diameter,
        least=hole.least,
        greatest=hole.greatest,
        source=f"{hole.label}, house rule {rule}",
        confirmed=hole.confirmed,
        name=hole.drill or "",
    )
    return given if given.name else listed(given)


def thread_name(thread: Thread) -> str:
    """Write a note's thread the way the hardware lists read it."""
    if thread.threads_per_inch is not None:
        return f"{thread.size}-{thread.threads_per_inch:g}"
    return f"{thread.size}x{thread.pitch:g}" if thread.pitch else thread.size


def _fitted(size: Size) -> tuple[float, float]:
    assert size.value is not None
    limits = hardware.hole_limits(size.value, size.fit)
    return limits.least, limits.greatest
