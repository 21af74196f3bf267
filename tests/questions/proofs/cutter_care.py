"""Proof of cutter-care: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """All lips together; shank clean; dry and oiled; each in its own marked place."""
    if "bright line" in q.seen:
        slips = {"M46": "more feed", "M46b": "more speed", "M65": "bright lip alone"}
        return [("three lips sharpened together", slips)]
    if "off-round" in q.seen:
        slips = {"M51": "chuck tighter", "M46": "run it slower", "M65": "cuts most"}
        return [("wipe shank and chuck clean", slips)]
    if "coolant" in q.seen:
        slips = {"M51": "put it away", "M65": "lay it in the drawer", "M51b": "for tomorrow"}
        return [("oil it lightly", slips)]
    assert "clean and oiled" in q.seen
    slips = {"M65": "one drawer", "M07": "smallest first", "M65b": "one tin"}
    return [("the angle written beside it", slips)]
