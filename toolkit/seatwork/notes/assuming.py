"""What a note leaves open, filled by house rules and named as assumed."""

from collections.abc import Iterator
from dataclasses import dataclass

from seatwork.hardware.taps import METRIC_MOUTH, mouth_diameter
from seatwork.notes.callout import Assumption, Callout
from seatwork.notes.fastening import has_cone, is_metric
from seatwork.notes.features import (
    Chamfer,
    Counterbore,
    Countersink,
    EdgeBreak,
    Feature,
    Hole,
    Spotface,
    Thread,
)
from seatwork.notes.grouping import major_diameter
from seatwork.shop import HouseRules


@dataclass(frozen=True, slots=True)
class Group:
    """One hole's features with what decides between inch and metric rules."""

    features: tuple[Feature, ...]
    system: str
    screw: str

    def thread(self) -> Thread | None:
        """Return the group's thread, if it has one."""
        return next((f for f in self.features if isinstance(f, Thread)), None)

    def depth_said(self) -> bool:
        """Tell whether the note gives any depth of hole or thread, or says THRU."""
        return any(
            f.depth is not None or f.through for f in self.features if isinstance(f, Hole | Thread)
        )

    def is_reamed(self) -> bool:
        """Tell whether the hole is reamed after it is drilled."""
        return any(isinstance(f, Hole) and f.process == "ream" for f in self.features)

    def has_hole(self) -> bool:
        """Tell whether the note gives the hole itself."""
        return any(isinstance(feature, Hole) for feature in self.features)


def assumptions(callout: Callout, rules: HouseRules) -> tuple[Assumption, ...]:
    """Return what has to be assumed to cut what a note says.

    Parameters
    ----------
    callout : Callout
        The note as read.
    rules : HouseRules
        The house rules in force.
    """
    found: list[Assumption] = []
    place = 0
    for features in callout.groups():
        screw = next((f.screw for f in features if f.screw), "")
        group = Group(features, _system(screw, callout.system), screw)
        for feature in features:
            found += _of(feature, place, group, rules)
            place += 1
        found += _missing_hole(place - len(features), group, rules)
    return tuple(found)


def _system(screw: str, system: str) -> str:
    """Return the system of the screw where one is named, else that of the note."""
    if not screw:
        return system
    return "metric" if is_metric(screw) else "inch"


def _of(feature: Feature, place: int, group: Group, rules: HouseRules) -> Iterator[Assumption]:
    for name, rule, why in _open_points(feature, group):
        yield _assume(place, name, rule, why, rules)
    if isinstance(feature, Countersink) and group.thread() and feature.diameter is None:
        yield from _tapped_diameter(place, group, rules)


def _open_points(feature: Feature, group: Group) -> Iterator[tuple[str, str, str]]:
    """Yield field, house rule and reason for each open point of a feature."""
    if isinstance(feature, Hole):
        yield from _hole_points(feature, group)
    elif isinstance(feature, Countersink):
        yield from _countersink_points(feature, group)
    elif isinstance(feature, Counterbore):
        yield from _counterbore_points(feature, group)
    elif isinstance(feature, Spotface):
        if feature.depth is None and feature.left is None:
            yield "depth", "spotface.no_depth", "the spotface has no depth"
    elif isinstance(feature, Chamfer):
        if feature.leg is None and feature.diameter is None:
            yield "leg", f"chamfer.{group.system}_leg", "the chamfer has no size"
        if feature.angle is None:
            yield "angle", "chamfer.included_angle", "the chamfer has no angle"
    elif isinstance(feature, Thread):
        yield from _thread_points(feature, group)
    elif isinstance(feature, EdgeBreak) and feature.size is None and feature.edges:
        yield "size", f"edge.{group.system}_break", "the edge break has no size"


def _hole_points(hole: Hole, group: Group) -> Iterator[tuple[str, str, str]]:
    if hole.process == "drill" and group.is_reamed():
        return
    if hole.diameter is None and group.thread():
        yield "diameter", "tapped_hole.drill", "the tap drill is not in the note"
    elif hole.diameter is None and group.screw:
        yield "diameter", f"hole.{group.system}_fit", f"the hole is for {group.screw}"
    if hole.depth is None and not hole.through and not group.depth_said():
        yield "through", "hole.no_depth", "neither a depth nor THRU is given"
    if hole.depth is not None and not hole.depth_to:
        yield "depth_to", "hole.depth", "the note does not say what the depth counts"


def _thread_points(thread: Thread, group: Group) -> Iterator[tuple[str, str, str]]:
    if thread.size.startswith("M") and thread.pitch is None:
        yield "pitch", "tapped_hole.pitch", f"{thread.size} is given without its pitch"
    if not group.has_hole() and not group.depth_said():
        yield "through", "hole.no_depth", "neither a depth nor THRU is given"


def _countersink_points(seat: Countersink, group: Group) -> Iterator[tuple[str, str, str]]:
    if seat.angle is None and has_cone(group.screw) is None:
        if group.thread():
            yield "angle", "tapped_hole.chamfer_angle", "the chamfer of the thread has no angle"
        else:
            yield "angle", f"countersink.{group.system}_angle", "the countersink has no angle"
    if group.screw and seat.head is None:
        why = f"the note does not say how the head of {group.screw} sits"
        yield "head", "flush.greatest_below", why
    elif group.screw and seat.head is not None and seat.head.state == "flush or below":
        yield "head", "flush.greatest_below", "the note does not say how far below flush"


def _counterbore_points(seat: Counterbore, group: Group) -> Iterator[tuple[str, str, str]]:
    if not group.screw:
        return
    depth = {"inch": "counterbore.inch_below_face", "metric": "counterbore.metric_depth"}
    if seat.diameter is None:
        diameter = {"inch": "counterbore.inch_list", "metric": "counterbore.metric_depth"}
        yield "diameter", diameter[group.system], f"the counterbore is for {group.screw}"
    if seat.depth is None and (seat.head is None or seat.head.window is None):
        yield "depth", depth[group.system], f"the depth follows the head of {group.screw}"


def _missing_hole(place: int, group: Group, rules: HouseRules) -> Iterator[Assumption]:
    if group.has_hole():
        return
    if group.thread():
        why = "the tap drill is not in the note"
        yield _assume(place, "hole", "tapped_hole.drill", why, rules)
    elif group.screw:
        rule = f"hole.{group.system}_fit"
        why = f"the note gives no hole; it is for {group.screw}"
        yield _assume(place, "hole", rule, why, rules)


def _tapped_diameter(place: int, group: Group, rules: HouseRules) -> Iterator[Assumption]:
    thread = group.thread()
    major = major_diameter(thread.size) if thread else None
    if thread is None or major is None:
        return
    across, name = mouth_diameter(major, metric=thread.size.startswith("M"), house=rules)
    rule = rules[name]
    taken = rule.shown if name == METRIC_MOUTH else f"{thread.size} and {rule.shown}"
    yield Assumption(
        feature=place,
        field="diameter",
        value=across,
        rule=rule.name,
        sentence=f"The chamfer of the thread has no diameter: taken as {taken}, "
        f"house rule {rule.name} ({rule.source}).",
    )


def _assume(place: int, name: str, rule_name: str, why: str, rules: HouseRules) -> Assumption:
    rule = rules[rule_name]
    sentence = f"{why[0].upper()}{why[1:]}: {rule.shown}, house rule {rule_name} ({rule.source})."
    return Assumption(
        feature=place, field=name, value=rule.value, rule=rule_name, sentence=sentence
    )
