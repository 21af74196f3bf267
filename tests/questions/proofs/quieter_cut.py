"""Proof of quieter-cut: right answer and slips, from nothing of the package."""

from typing import Any

# The order of the shop, as the lesson on chatter lists it: common practice, no source.
ORDER = ("clamp", "slower", "feed", "flutes", "sharpen")
CURE = {
    "clamp": "lock the quill",
    "slower": "spindle slower",
    "feed": "enough to make a chip",
    "flutes": "fewer flutes",
    "sharpen": "sharpen the cutter",
}
WHY = {
    "clamp": "hangs loose",
    "slower": "waves are short",
    "feed": "without a chip",
    "flutes": "fewer lips",
    "sharpen": "dull lip",
}


def parts(q: Any) -> list[Any]:
    """Hold first, then speed, then feed, then another cutter, then the stone."""
    first, *others = sorted(q.cures.split(","), key=ORDER.index)
    assert sorted(q.reasons.split(",")) == sorted(q.cures.split(","))
    names = ("M46", "M46b")
    return [
        (said[first], dict(zip(names, (said[other] for other in others), strict=True)))
        for said in (CURE, WHY)
    ]
