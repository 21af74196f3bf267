"""Which seats of a plan lie on one hole: what a section shows together."""

from collections.abc import Sequence
from dataclasses import replace

from seatwork.plan.plans import SeatPlan
from seatwork.plan.sides import BACK, FAR


def at_spots(seats: Sequence[SeatPlan], holes: int) -> list[list[SeatPlan]]:
    """Part the seats of one group of the note by the holes they lie on.

    Parameters
    ----------
    seats : sequence of SeatPlan
        The seats of one group.
    holes : int
        How many holes it has.

    Returns
    -------
    list of list of SeatPlan
        One list, or two where no hole has a seat on both sides: 2 NS & 2 FS on four holes.
    """
    far = [seat for seat in seats if seat.side in (FAR, BACK)]
    near = [seat for seat in seats if seat.side not in (FAR, BACK)]
    if not (near and far):
        return [list(seats)]
    share = max(seat.count for seat in near) + max(seat.count for seat in far) > holes
    return [list(seats)] if share else [near, far]


def numbered(groups: Sequence[Sequence[Sequence[SeatPlan]]]) -> list[SeatPlan]:
    """Return the seats of all groups in order, each with the number of its spot."""
    spots = [spot for group in groups for spot in group]
    return [replace(seat, spot=number) for number, spot in enumerate(spots) for seat in spot]
