"""Proof of choose-seat: right answer and slips, from nothing of the package."""

from typing import Any

CONE, BORE, RING, EDGE = "countersink", "counterbore", "spotface", "only break the edge"


def parts(q: Any) -> list[Any]:
    """Give a cone a cone; a flat a floor below, a ring on rough, nothing on milled."""
    if "flat head screw" in q.told:
        return [(CONE, {"M17": BORE, "M17b": RING, "M23": EDGE})]
    if "below the machined face" in q.told:
        return [(BORE, {"M17": CONE, "M23": RING, "M23b": EDGE})]
    if "out of the sand" in q.told:
        return [(RING, {"M17": CONE, "M66": BORE, "M26": EDGE})]
    assert "milled" in q.told
    return [(EDGE, {"M17": CONE, "M66": BORE, "M66b": RING})]
