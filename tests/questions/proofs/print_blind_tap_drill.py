"""Proof of print-blind-tap-drill: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Add the lead and one thread more below the full thread."""
    one, full = 25.4 / q.threads, q.threaded
    slips = {
        "M23": full,
        "M15": full - q.lead * one - one,
        "M33": full + one,
        "M28": full + full,
    }
    if q.threads != 16:
        slips["M50"] = full + (q.lead + 1) * 25.4 / 16
    return [(full + q.lead * one + one, slips)]
