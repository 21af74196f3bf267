"""Which drill makes a hole, and by which name to say it.

Notes
-----
A decimal that is no drill's name is said by its fraction first, the number or letter beside
it; a name that stands in the note stays. A drill cuts .002 to .005 in over its size (common
practice, no source), so a hole with limits is reckoned with at their middle, and its drill is
the largest that is not over it.
"""

from dataclasses import replace

from seatwork import hardware
from seatwork.hardware import Drill
from seatwork.hardware.drill_names import beside, drills_of
from seatwork.notes import Size
from seatwork.plan.records import Given
from seatwork.units import show_length

EVEN = 1e-6  # mm; two sizes nearer than this are the same
SYSTEMS = {"in": "inch", "mm": "metric"}


def drilled(hole: Given, stated: Size) -> Given:
    """Name the drill of a hole that the note gives by its size.

    Parameters
    ----------
    hole : Given
        The hole as the note says it.
    stated : Size
        Its size in the note: the drills of its own unit come first, and that of a nominal
        size before any other within the limits.
    """
    if hole.name:
        return hole
    system = SYSTEMS[stated.unit]
    named = drills_of(hole.value, system) if stated.least is None else ()
    if hole.least is not None and hole.greatest is not None:
        own = (one for one in named if one.system == system)
        inside = [one for one in own if hole.least - EVEN <= one.diameter <= hole.greatest]
        return _in_limits(hole, inside[0] if inside else None, system)
    if not named:
        return hole
    near = f", nearest drill held here, an {named[0].system} one"
    others = beside(named)
    foreign = named[0].system != system
    return replace(
        hole, name=named[0].name, beside=others, source=hole.source + (near if foreign else "")
    )


def listed(hole: Given) -> Given:
    """Name the drill of a listed hole's own size; the list means that one, not the middle."""
    found = hardware.next_drill(hole.value, "down")
    if hole.value - found.diameter < EVEN:
        return replace(hole, name=found.name)
    return _in_limits(hole, None, "metric") if hole.least is not None else hole


def _in_limits(hole: Given, nominal: Drill | None, system: str) -> Given:
    """Return a hole at the middle of its limits, with the drill that leaves it there."""
    assert hole.least is not None
    assert hole.greatest is not None
    middle = (hole.least + hole.greatest) / 2
    found = nominal or hardware.next_drill(middle, "down", system)
    if not found.diameter >= hole.least - EVEN:
        return replace(hole, value=middle)
    why = "the drill of its size" if nominal else "largest drill not over the middle"
    own = show_length(found.diameter, system)
    apart = abs(found.diameter - middle) > EVEN
    return replace(
        hole,
        value=middle,
        name=found.name,
        beside=f"{own}, it cuts over" if apart else "",
        source=f"{hole.source}; {why}: {found.source}",
    )
