"""What a callout says, written as the fields of ``data/prints.jsonl``."""

from typing import Any

from seatwork import hardware
from seatwork.hardware.rivets import is_rivet
from seatwork.notes import Callout, Counterdrill, EdgeBreak, Feature, Hole, Size, Thread

KINDS = {EdgeBreak: "edge_break", Counterdrill: "counterdrill"}
LENGTHS = {"diameter": "diameter", "depth": "depth", "leg": "size", "size": "size", "left": "left"}


def reading(callout: Callout) -> list[dict[str, Any]]:
    """Return the features of a callout; a hole that says nothing but DRILL is left out."""
    found = []
    for group in callout.groups():
        through = any(getattr(feature, "through", False) for feature in group)
        for feature in group:
            if feature != Hole(count=feature.count, process="drill", screw=feature.screw):
                found.append(_said(feature, through))
    return sorted(found, key=lambda said: said["kind"])


def expected(line: dict[str, Any]) -> list[dict[str, Any]]:
    """Return the features a line of the file holds, what is not said left out."""
    found = []
    for one in line["features"]:
        said = {name: value for name, value in one.items() if value is not None}
        if said.get("drill", "").replace("/", "").replace("-", "").isdigit():
            del said["drill"]  # a fraction is its own size
        if said["kind"] != "hole" or set(said) - {"kind", "count", "screw"}:
            found.append(said)
    return sorted(found, key=lambda said: said["kind"])


def _said(feature: Feature, through: bool) -> dict[str, Any]:
    said: dict[str, Any] = {"kind": _kind(feature), "count": feature.count}
    for name, label in LENGTHS.items():
        _add_size(said, label, "mm", getattr(feature, name, None))
    _add_size(said, "included_angle", "deg", getattr(feature, "angle", None))
    said |= {name: getattr(feature, name) for name in ("side", "scope", "measured_from")}
    said |= {name: getattr(feature, name, None) for name in ("bottom", "depth_to", "tap", "burrs")}
    said |= {name: getattr(feature, name, None) for name in ("clean_up", "wrench_room")}
    said["screw"] = fastener(feature.screw) if feature.screw else ""
    if isinstance(feature, Hole | Thread):
        said["through"] = True if through else (False if feature.depth else None)
    if isinstance(feature, Thread):
        said["thread"] = _designation(feature)
    if isinstance(feature, Hole) and feature.also:
        said["diameter_also_mm"] = _value(feature.also)
    head = getattr(feature, "head", None)
    if head is not None:
        said["flush_mm"] = list(head.window or (0.0, 0.0))
    for name, label in (("fillet", "fillet_max_mm"), ("pilot", "pilot_diameter_mm")):
        if getattr(feature, name, None) is not None:
            said[label] = getattr(feature, name).value
    if feature.count > 1:
        said.pop("scope")  # TYP with a count says nothing more
    kept = {name: value for name, value in said.items() if value}
    return kept | ({"through": False} if said.get("through") is False else {})


def _kind(feature: Feature) -> str:
    if isinstance(feature, Hole):
        return "ream" if feature.process == "ream" else "hole"
    if isinstance(feature, Counterdrill) and feature.meaning == "center drill":
        return "center"
    return KINDS.get(type(feature), type(feature).__name__.lower())


def _add_size(said: dict[str, Any], label: str, unit: str, size: object) -> None:
    """Add a size, its limits and its bound."""
    if not isinstance(size, Size):
        return
    if size.name:
        said["drill"] = size.name
    if size.least is None and not (size.name and said["kind"] == "center"):
        said[f"{label}_{unit}"] = _value(size)
    if size.smallest != size.largest:
        name = "angle_limits_deg" if unit == "deg" else f"{label}_limits_mm"
        said[name] = [size.smallest, size.largest]
    if size.fit:
        said["fit"] = size.fit
    if size.bound == "ref":
        said["reference"] = label
    elif size.bound and "bound_of" not in said:
        said |= {"max_or_min": size.bound, "bound_of": label}


def _value(size: Size) -> float | None:
    return hardware.drill(size.name).diameter if size.name else size.value


def fastener(text: str) -> str:
    """Return the one name of a screw or rivet, however it is spelled."""
    if is_rivet(text):
        return f"rivet {hardware.rivet(text).name}"
    return hardware.screw(text).name


def _designation(thread: Thread) -> str:
    pitch = f"×{thread.pitch:g}" if thread.pitch else ""
    pitch += f"-{thread.threads_per_inch:g}" if thread.threads_per_inch else ""
    series = f" {thread.series}" if thread.series else ""
    last = f"-{thread.thread_class}" if thread.thread_class else ""
    return f"{thread.size}{pitch}{series}{last}{' LH' if thread.left_hand else ''}"
