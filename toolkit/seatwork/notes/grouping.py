"""Which features of a note belong to one hole."""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.notes.features import EdgeBreak, Feature, Hole, Thread
from seatwork.notes.sizes import Size

SLIP = 1.6  # mm; a drill this little over its reamer is one hole, and a fault to ask about


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """What grouping looks at in a feature.

    Parameters
    ----------
    kind : type of Feature
        What it is.
    count : int or None
        Places; None where the note gives none for this feature.
    width : float or None
        Diameter of a hole, major diameter of a thread [mm].
    process : str
        How a hole is made, if the note says so.
    """

    kind: type[Feature]
    count: int | None
    width: float | None = None
    process: str = ""


def part_of(feature: Feature) -> Part:
    """Return what grouping looks at in a finished feature."""
    width, process = None, ""
    if isinstance(feature, Hole):
        width, process = width_of(feature.diameter), feature.process
    elif isinstance(feature, Thread):
        width = major_diameter(feature.size)
    return Part(kind=type(feature), count=feature.count, width=width, process=process)


def width_of(size: Size | None) -> float | None:
    """Return a size's value where it has one [mm]."""
    return None if size is None else size.value


def grouped(parts: Sequence[Part]) -> list[list[int]]:
    """Return the places of the parts, hole by hole."""
    groups: list[list[int]] = []
    for place, part in enumerate(parts):
        if not groups or _starts(part, [parts[other] for other in groups[-1]]):
            groups.append([])
        groups[-1].append(place)
    return groups


def _starts(part: Part, group: list[Part]) -> bool:
    """Tell whether a part begins a new hole after those of a group."""
    if EdgeBreak in (part.kind, group[-1].kind):
        return True
    if part.kind not in (Hole, Thread):
        return False
    same = [other for other in group if other.kind is part.kind]
    if len(same) == 1 and _drilled_and_reamed(part, same[0]):
        return False
    partner = next((other for other in group if other.kind in (Hole, Thread)), None)
    if same:
        return True
    if partner is None:
        return part.kind is Hole
    return not _can_be_one(part, partner)


def _differ(first: int | None, second: int | None) -> bool:
    return None not in (first, second) and first != second


def _can_be_one(part: Part, partner: Part) -> bool:
    """Tell whether a hole and a thread can be one tapped hole."""
    if _differ(part.count, partner.count):
        return False
    hole, thread = (part, partner) if part.kind is Hole else (partner, part)
    return hole.width is None or thread.width is None or hole.width < thread.width


def _drilled_and_reamed(part: Part, other: Part) -> bool:
    """Tell whether two holes are one, drilled and then reamed."""
    if _differ(part.count, other.count):
        return False
    reamed, drilled = (part, other) if part.process == "ream" else (other, part)
    if reamed.process != "ream" or drilled.process not in ("", "drill"):
        return False
    if drilled.width is None or reamed.width is None:
        return True
    return drilled.width < reamed.width + SLIP


def major_diameter(size: str) -> float | None:
    """Return the nominal major diameter of a thread size [mm], None if it is no size.

    Examples
    --------
    >>> round(major_diameter("#10"), 3), major_diameter("1/4"), major_diameter("M8")
    (4.826, 6.35, 8.0)

    Notes
    -----
    A number size is .060 in and .013 in for each number (ASME B1.1).
    """
    if size.startswith("M"):
        return float(size[1:])
    numbered = re.fullmatch(r"#(\d+)", size)
    written = f"{60 + 13 * int(numbered[1])} thou" if numbered else size
    try:
        return units.length(written, "inch")
    except SeatworkError:
        return None
