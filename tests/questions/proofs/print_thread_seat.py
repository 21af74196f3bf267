"""Proof of print-thread-seat: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Read two depths, order the work, and take one side of the chamfer, as deep as wide."""
    side = q.mouth / 2 - q.drill / 2
    return [
        (q.drilled, {"M44": q.threaded}),
        (q.threaded, {"M44": q.drilled}),
        (
            ("drill", "chamfer", "tap"),
            {"M51": ("chamfer", "drill", "tap"), "M51b": ("drill", "tap", "chamfer")},
        ),
        (
            side,
            {
                "M02": 2 * side,
                "M19": q.mouth / 2 - q.major / 2,
                "M03": q.mouth / 2,
            },
        ),
    ]
