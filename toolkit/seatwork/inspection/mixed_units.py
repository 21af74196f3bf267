"""A reading that is no size of its seat in its unit, and would be one in the other."""

from seatwork.inspection.findings import PartVerdict
from seatwork.inspection.records import REJECT, Judged
from seatwork.quantities import EXACT_INCH
from seatwork.units import show_length

INCH = float(EXACT_INCH)
NEAR = 0.2
"""How far beyond its limits a size in the other unit may be, as a share of the limit."""
ACROSS_AND_DEEP = ("diameter", "depth")


def mixed_unit(part: PartVerdict) -> str:
    """Name the cell of a reading whose unit must be a slip, and what would do; empty if none is.

    Parameters
    ----------
    part : PartVerdict
        A part as judged.

    Notes
    -----
    A seat 25 times too wide or too deep was not cut: the unit was. Heights that stand about zero
    are left out, since there both units may be meant.
    """
    for one in part.judged:
        if one.key not in ACROSS_AND_DEEP or one.verdict != REJECT or one.value is None:
            continue
        for meant, wrote, other in (
            (one.value / INCH, "inch", "metric"),
            (one.value * INCH, "metric", "inch"),
        ):
            if _fits(meant, one):
                shown, would = show_length(one.value, wrote), show_length(meant, other)
                return (
                    f"column {one.key}: {shown} is far from any size of this seat, and {would}"
                    f" is not; write the value with its unit in the cell, such as {would}."
                )
    return ""


def _fits(size: float, one: Judged) -> bool:
    least, greatest = one.least, one.greatest
    if least is None or greatest is None:
        return False
    return least * (1 - NEAR) <= size <= greatest * (1 + NEAR)
