"""Proof of print-drill-name: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Read the row of the chart; a number or a fraction is no size."""
    slips = {"M50": q.row_above, "M50b": q.row_below}
    if q.name[0] == "#":
        number = 25.4 * int(q.name[1:])
        slips |= {"M38": number / 64, "M38b": number / 1000, "M38c": number / 32}
    elif "/" in q.name:
        count = 25.4 * int(q.name.split("/")[0])
        slips |= {"M38": count / 32, "M38b": count / 100}
    return [(q.row_size, slips)]
