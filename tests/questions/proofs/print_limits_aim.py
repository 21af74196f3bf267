"""Proof of print-limits-aim: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Write all three forms as least and greatest, and halve their sum."""
    low, high = {
        "limits": (q.second, q.first),
        "one way": (q.first, q.first + q.second),
        "both ways": (q.first - q.second, q.first + q.second),
    }[q.form]
    wide, middle = high - low, (high + low) / 2
    return [
        (low, {"M49": high, "M63": low - wide / 2}),
        (high, {"M49": low, "M63": high + wide / 2}),
        (
            middle,
            {
                "M49": low,
                "M49b": high,
                "M63": wide,
                "M63b": wide / 2,
                "M63c": middle + wide,
            },
        ),
    ]
