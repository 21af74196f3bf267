"""Several seats on one hole: drilled once, deburred once, the face cut first where it must be."""

from dataclasses import replace

from seatwork.plan.plans import SeatPlan

ONCE_FIRST = ("drill",)
ONCE_LAST = ("deburr the far side",)


def in_sequence(seats: list[SeatPlan]) -> list[SeatPlan]:
    """Return the seats of one hole in the order to cut them, no operation twice.

    Parameters
    ----------
    seats : list of SeatPlan
        Each planned as if it were alone on its hole.

    Returns
    -------
    list of SeatPlan
        A face that is cut before the hole first; drilling with the first, far side with the last.
    """
    ordered = sorted(seats, key=_drills_first)
    last = len(ordered) - 1
    return [
        _without(seat, (*(ONCE_FIRST if n else ()), *(ONCE_LAST if n < last else ())))
        for n, seat in enumerate(ordered)
    ]


def _drills_first(seat: SeatPlan) -> bool:
    """Tell whether a seat waits for its hole; False sorts before True."""
    return not seat.operations or seat.operations[0].name in ONCE_FIRST


def _without(seat: SeatPlan, names: tuple[str, ...]) -> SeatPlan:
    kept = tuple(step for step in seat.operations if step.name not in names)
    return replace(seat, operations=kept)
