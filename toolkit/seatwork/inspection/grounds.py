"""What a verdict rests on: nothing is accepted on readings that nobody took."""

from collections.abc import Iterator

from seatwork.inspection.cuts import readings_of
from seatwork.inspection.fights import FIGHTING
from seatwork.inspection.judging import ANSWERS, SIZED, worst
from seatwork.inspection.measured import QUANTITIES, Measured
from seatwork.inspection.records import ACCEPT, UNKNOWN, Judged
from seatwork.plan import SeatPlan
from seatwork.seats import Countersink

ANY_SIZE = ("diameter", "depth", "stand", "ball_top")
BY_SCREW = ("stand", "tried")
HOLE = {
    "go": "Not accepted: the thread was not tried with its GO plug to the full depth.",
    "not_go": "Not accepted: the thread was not tried with its NOT GO plug.",
    "hole": "Not accepted: the hole, which has limits on the print, was not tried with its plug "
    "gage.",
}
NOTHING = "Nothing was measured that the plan gives a limit for."


def verdict_of(
    measured: Measured, seat: SeatPlan, judged: tuple[Judged, ...], *, fighting: bool = False
) -> str:
    """Return the verdict of a part: the worst of its values, and open where a ground is missing.

    Parameters
    ----------
    measured : Measured
        The part's values.
    seat : SeatPlan
        What it should be.
    judged : tuple of Judged
        Value by value.
    fighting : bool
        Whether diameter, angle and ball cannot all be true: then none of them counts.

    Notes
    -----
    A screw whose own head is off says nothing of the seat: what was found with it counts for
    nothing.
    """
    off = screw_is_off(judged)
    silent = ("protrusion", *(BY_SCREW if off else ()), *(FIGHTING if fighting else ()))
    verdict = worst(tuple(one for one in judged if one.key not in silent))
    open_yet = off or fighting or measured.burr or any(missing(seat, judged))
    return UNKNOWN if verdict == ACCEPT and open_yet else verdict


def screw_is_off(judged: tuple[Judged, ...]) -> bool:
    """Tell whether the screw that was tried is not good itself."""
    return any(one.key == "protrusion" and one.verdict != ACCEPT for one in judged)


def missing(seat: SeatPlan, judged: tuple[Judged, ...]) -> Iterator[str]:
    """Yield what was not measured and no seat is accepted without, one sentence each.

    Notes
    -----
    A seat for a flat head wants its angle and one size; a bore diameter and depth; a spotface its
    diameter and a look whether it is clean all round; a thread both of its plugs, a hole with
    limits of the print its plug gage. Common practice, no source.
    """
    found = {one.key for one in judged}
    takes: list[str] = [one.key for one in readings_of(seat)]
    if not found:
        yield NOTHING
        return
    wanted: list[str] = [key for key in ("diameter", "depth", "cleaned") if key in takes]
    if isinstance(seat.shape, Countersink):
        wanted = ["angle"] if seat.screw is not None else []
        if not found.intersection(ANY_SIZE):
            yield "No size of the seat was measured: nothing is accepted without one."
    for key in (*wanted, *(key for key in HOLE if key in takes)):
        if key not in found:
            yield _wanted(key)


def _wanted(key: str) -> str:
    if key == "angle":
        return "The angle was not measured: flush alone is not enough."
    if key in HOLE:
        return HOLE[key]
    if key == "cleaned":
        return "Nobody wrote whether the spotface is clean all round: look, and write it."
    return f"The {QUANTITIES[key].about} was not measured: nothing is accepted without it."


def not_judged(measured: Measured, seat: SeatPlan) -> Iterator[str]:
    """Yield what was written down and this seat has no limit for, one sentence each."""
    takes = {one.key for one in readings_of(seat)}
    for key in (*SIZED, *ANSWERS):
        one = QUANTITIES[key]
        if getattr(measured, key) is not None and key not in takes:
            yield f"Not judged: {one.column}; the plan of this seat has no limit for it."
