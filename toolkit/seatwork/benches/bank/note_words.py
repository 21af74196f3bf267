"""What a print note says, feature by feature, in words and both unit systems."""

from seatwork.notes import (
    Assumption,
    Chamfer,
    Counterbore,
    Counterdrill,
    Countersink,
    EdgeBreak,
    Feature,
    Hole,
    Size,
    Spotface,
    Thread,
)
from seatwork.units import show_angle, show_both

BOUNDS = {"max": "at most", "min": "at least", "ref": "for reference"}
HEADS = {
    "flush": "head flush {amount}",
    "flush or below": "head flush or below, never proud",
    "flush to below": "head flush to {amount} below",
    "flush to proud": "head flush to {amount} proud",
    "below": "head {amount} below",
    "proud": "head {amount} proud",
}
MARKED = {
    "through": "through",
    "clean_up": "only to clean up",
    "wrench_room": "with room for the wrench socket",
}
FIELDS = {
    "diameter": "diameter",
    "depth_to": "the depth counts",
    "head": "how far below the head may sit",
    "hole": "hole",
    "angle": "included angle",
    "through": "hole",
    "system": "bare numbers",
}


def size_words(size: Size, system: str) -> str:
    """Tell a size with its tolerance.

    Examples
    --------
    >>> size_words(Size(value=82.0, unit="deg"), "inch")
    '82°'
    """
    if size.value is None:
        return size.name

    def show(value: float) -> str:
        return show_angle(value) if size.unit == "deg" else show_both(value, system)

    if size.least is not None and size.greatest is not None:
        text = f"{show(size.least)} to {show(size.greatest)}"
    elif size.upper or size.lower:
        text = f"{show(size.value)}, from {show(size.smallest or 0)} to {show(size.largest or 0)}"
    else:
        text = show(size.value)
    return " ".join(part for part in (BOUNDS.get(size.bound, ""), text, size.fit) if part)


def feature_words(feature: Feature, system: str) -> str:
    """Tell one feature of a note."""
    name, sizes = _name(feature), _sizes(feature, system)
    count = f"{feature.count} times: " if feature.count > 1 else ""
    parts = [name, *sizes]
    if feature.screw:
        parts.append(f"for {feature.screw}")
    if feature.side:
        parts.append(f"{feature.side} {'sides' if feature.side == 'both' else 'side'}")
    if feature.measured_from:
        parts.append(f"from the {feature.measured_from}")
    if feature.scope:
        parts.append(feature.scope)
    return count + ", ".join(parts)


def assumed_words(assumption: Assumption, feature: Feature, system: str) -> str:
    """Tell in short what was assumed.

    The long sentence, with the house rule's name and source, is the assumption's own.
    """
    value = assumption.value
    if isinstance(value, float | int):
        degrees = "angle" in assumption.field
        value = show_angle(value) if degrees else show_both(value, system)
    if isinstance(feature, Hole) and assumption.field == "diameter":
        return f"hole for the screw: {value}"
    about = FIELDS.get(assumption.field, assumption.field)
    name = "" if about.startswith(("hole", "bare", "how")) else f"{_name(feature)}, "
    return f"{name}{about}: {value}"


def _name(feature: Feature) -> str:
    match feature:
        case Hole():
            return f"hole, {feature.process}ed" if feature.process == "drill" else "hole"
        case Countersink():
            return "countersink"
        case Counterbore():
            return "counterbore"
        case Spotface():
            return "spotface"
        case Chamfer():
            return "chamfer"
        case EdgeBreak():
            return "edges to be broken" if feature.edges else "burrs to be taken off"
        case Counterdrill():
            return {"ask": "C'DRILL, which can mean two things"}.get(
                feature.meaning, feature.meaning
            )
        case Thread():
            return _thread(feature)
    return "feature"


def _thread(thread: Thread) -> str:
    pitch = f"x{thread.pitch:g}" if thread.pitch else ""
    per_inch = f"-{thread.threads_per_inch:g}" if thread.threads_per_inch else ""
    parts = (f"{thread.size}{pitch}{per_inch}", thread.series, thread.thread_class)
    hand = " left hand" if thread.left_hand else ""
    return f"thread {' '.join(part for part in parts if part)}{hand}"


def _sizes(feature: Feature, system: str) -> list[str]:
    """Tell every size that a feature carries, in the order a print gives them."""
    lines = []
    for name, shown in (
        ("diameter", "⌀{}"),
        ("leg", "leg {}"),
        ("size", "{}"),
        ("depth", "{} deep"),
        ("angle", "{} included"),
        ("left", "left under it {}"),
        ("fillet", "corner at the floor {}"),
        ("pilot", "pilot {}"),
        ("also", "the same drill also called {}"),
    ):
        size = getattr(feature, name, None)
        if isinstance(size, Size):
            sign = shown if size.value is not None else shown.replace("⌀", "")
            lines.append(sign.format(size_words(size, system)))
    lines += [text for name, text in MARKED.items() if getattr(feature, name, False) is True]
    if getattr(feature, "tap", ""):
        lines.append(f"{feature.tap} tap")  # type: ignore[attr-defined]
    head = getattr(feature, "head", None)
    if head is not None:
        amount = size_words(head.amount, system) if head.amount else ""
        lines.append(" ".join(HEADS[head.state].format(amount=amount).split()))
    return lines
