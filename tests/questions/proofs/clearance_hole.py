"""Proof of clearance-hole: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Take the column of the fit; tap drill, screw size and the other columns are slips."""
    columns = {"close": q.close, "normal": q.normal, "loose": q.loose}
    right = columns.pop(q.fit)
    first, second = columns.values()
    return [(right, {"M19": q.tap_drill, "M20": q.diameter, "M50": first, "M50b": second})]
