"""What to aim for: the middle of two limits, and on which side of a single bound.

Notes
-----
A note with limits is aimed at in the middle, so that error either way is still good. A size
with one bound only, MAX or MIN, is aimed one tolerance of the usual title block inside it,
its limits running from the bound to two tolerances inside; no limit ever crosses the bound.
"""

from dataclasses import fields, replace
from typing import Any

from seatwork import notes
from seatwork.notes import Feature, Size
from seatwork.plan.bounds import ANGLE, TITLE_BLOCK
from seatwork.shop import HouseRules

RULE = "limits.aim"
MIDDLE = "middle"
FROM_WEAR = 0.75  # of the band, from its low end: dull lips cut every cone smaller
SYSTEMS = {"in": "inch", "mm": "metric"}
NOT_AIMED_AT = ("left", "fillet", "also", "head")
CONES = (notes.Countersink, notes.Chamfer)


def aimed(group: tuple[Feature, ...], rules: HouseRules) -> tuple[Feature, ...]:
    """Return what a note says of one hole, each seat's sizes at what to aim for.

    Parameters
    ----------
    group : tuple of Feature
        The features of one hole, as read.
    rules : HouseRules
        The rules in force: `limits.aim` and the usual title block.

    Returns
    -------
    tuple of Feature
        The same, the sizes of seats with their limits and what to aim for between them. A
        hole, a thread and what is to be left keep what the note says: a drill is bought by
        its size, and a depth beside a thread goes by the thread. A reference size is never
        worked to.
    """
    alone = not any(isinstance(one, notes.Thread) for one in group)
    return tuple(_feature(one, rules, alone=alone) for one in group)


def aim_between(least: float, greatest: float, rules: HouseRules, *, cone: bool = False) -> float:
    """Return what to aim for between two limits, by house rule `limits.aim` [mm or deg]."""
    away = cone and rules.word(RULE) != MIDDLE
    return least + (FROM_WEAR if away else 0.5) * (greatest - least)


def _feature(feature: Feature, rules: HouseRules, *, alone: bool) -> Feature:
    if isinstance(feature, notes.Thread):
        return feature
    names = {"depth"} if isinstance(feature, notes.Hole) else {one.name for one in fields(feature)}
    if isinstance(feature, notes.Hole) and not alone:
        return feature
    changed: dict[str, Any] = {}
    for name in sorted(names - set(NOT_AIMED_AT)):
        stated = getattr(feature, name)
        if isinstance(stated, Size) and stated.value is not None and not stated.fit:
            cone = isinstance(feature, CONES) and name != "angle"
            reference = stated.bound == "ref"
            changed[name] = None if reference else _size(stated, rules, cone=cone)
    return replace(feature, **changed)


def _size(stated: Size, rules: HouseRules, *, cone: bool) -> Size:
    assert stated.value is not None
    least, greatest = stated.smallest, stated.largest
    assert least is not None
    assert greatest is not None
    if least == greatest and stated.bound in ("max", "min"):
        over = rules.number(ANGLE if stated.unit == "deg" else TITLE_BLOCK[SYSTEMS[stated.unit]])
        least, greatest = _inside(stated.value, over, stated.bound)
    if least == greatest:
        return stated
    return Size(
        value=aim_between(least, greatest, rules, cone=cone),
        unit=stated.unit,
        least=least,
        greatest=greatest,
        bound=stated.bound,
    )


def _inside(bound: float, over: float, side: str) -> tuple[float, float]:
    """Return the limits of a size with one bound, the whole of them on the good side of it."""
    return (max(bound - 2 * over, bound / 2), bound) if side == "max" else (bound, bound + 2 * over)
