"""Proof of decide: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Look at the reading with the doubt taken off and added, both against both limits."""
    low, high = q.reading - q.doubt, q.reading + q.doubt
    accept, reject, neither = "accept", "reject", "cannot tell"
    if low >= q.least_diameter and high <= q.greatest_diameter:
        verdict, slips = accept, {"M60": reject, "M60b": neither}
    elif high < q.least_diameter or low > q.greatest_diameter:
        verdict, slips = reject, {"M60": accept, "M60b": neither}
    else:
        verdict, slips = neither, {"M60": accept, "M60b": reject}
    return [
        (verdict, slips),
        (
            q.least_diameter + q.doubt,
            {
                "M60": q.least_diameter,
                "M15": q.least_diameter - q.doubt,
                "M24": q.least_diameter + q.doubt + q.doubt,
                "M49": q.least_diameter + (q.greatest_diameter - q.least_diameter) / 2,
            },
        ),
    ]
