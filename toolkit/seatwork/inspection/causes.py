"""Why a seat is off: what each slip at the machine or the bench leaves behind."""

from collections.abc import Iterator

from seatwork.errors import SeatworkError
from seatwork.inspection.fights import BY_BALL
from seatwork.inspection.grounds import screw_is_off
from seatwork.inspection.measured import Measured
from seatwork.inspection.records import ACCEPT, REJECT, Judged
from seatwork.plan import SeatPlan
from seatwork.plan.resolving import screw_named
from seatwork.seats import Counterbore, Countersink, fit
from seatwork.seats.cones import half_tangent

TRIED = {
    "go": "The GO thread plug does not go in to the full depth: the thread is small, short, or "
    "full of chips. Clean it and try again; then look at the tap.",
    "not_go": "The NOT GO thread plug enters farther than it may: the thread is too wide.",
    "hole": "The hole is not good by its plug gage.",
}
ALIKE = 0.1  # mm; a size this near to what a slip gives is put down to it


def causes(measured: Measured, seat: SeatPlan, judged: tuple[Judged, ...]) -> Iterator[str]:
    """Yield why a part is off, or why it cannot be told, one sentence each.

    Parameters
    ----------
    measured : Measured
        The part's values.
    seat : SeatPlan
        What it should be.
    judged : tuple of Judged
        Value by value.
    """
    found = {one.key: one for one in judged}
    yield from _angle(seat, found)
    yield from _other_screw(measured, seat)
    if screw_is_off(judged):
        yield (
            "The screw's own head is not good on the head gage: how it stands says nothing of the"
            " seat."
        )
    if isinstance(seat.shape, Countersink):
        yield from _touch_off(measured, seat, seat.shape, found)
        yield from _burr(measured, seat.shape)
        if not measured.burr:
            yield from _unlike_head(measured, seat, seat.shape)
    elif isinstance(seat.shape, Counterbore):
        yield from _over_height(measured, seat)
    yield from (words for key, words in TRIED.items() if getattr(measured, key) is False)
    if measured.tried is False:
        yield "The job's own screw was tried and does not go in."
    if measured.cleaned is False:
        yield "The spotface is not clean all round: the head would sit uneven and bend the bolt."


def _angle(seat: SeatPlan, found: dict[str, Judged]) -> Iterator[str]:
    angle, stand = found.get("angle"), found.get("stand")
    flush = stand is not None and stand.verdict == ACCEPT
    if angle is not None and angle.verdict == REJECT and angle.instrument == BY_BALL:
        yield (
            "Ball and diameter together do not fit the print's angle: another cutter than the "
            "print's, or one of the two was read wrong."
        )
    elif angle is not None and angle.verdict == REJECT:
        yield (
            "Flush, and still wrong: the angle is off, so the head bears on a line only."
            if flush
            else "The angle is off: another cutter than the print's."
        )


def _other_screw(measured: Measured, seat: SeatPlan) -> Iterator[str]:
    if not measured.screw or seat.screw is None:
        return
    try:
        tried = screw_named(measured.screw)
    except SeatworkError:
        yield f"The screw tried, {measured.screw}, is none the lists know: try the print's."
        return
    if tried.name != seat.screw.name:
        yield f"Another screw than the print's was tried: {tried.name}, not {seat.screw.name}."


def _touch_off(
    measured: Measured, seat: SeatPlan, cone: Countersink, found: dict[str, Judged]
) -> Iterator[str]:
    """Recognize a travel that was used after the other touch-off."""
    across = found.get("diameter")
    if across is None or across.verdict == ACCEPT or len(seat.stops) < 2:
        return
    edge, solid = seat.stops[0].travel, seat.stops[1].travel
    change = 2 * half_tangent(cone.included_angle) * (solid - edge)
    off = (measured.diameter or 0.0) - cone.diameter
    if abs(off + change) <= ALIKE and measured.touch != "hole edge":
        yield (
            "The seat is small by just what it is when the stop is set on the face and the travel"
            " for the hole edge is used."
        )
    elif abs(off - change) <= ALIKE and measured.touch != "face":
        yield (
            "The seat is large by just what it is when the stop is set on the hole edge and the"
            " travel for the face is used."
        )


def _burr(measured: Measured, cone: Countersink) -> Iterator[str]:
    """Compare the diameter with the one that the depth gives."""
    if measured.burr:
        yield "The burr was left on: the caliper reads too much. Take it off and measure again."
        return
    if measured.diameter is None or measured.depth is None:
        return
    tangent = half_tangent(measured.angle or cone.included_angle)
    by_depth = cone.hole_diameter + 2 * tangent * measured.depth
    unsure = measured.uncertainty("diameter") + 2 * tangent * measured.uncertainty("depth")
    if measured.diameter - by_depth > unsure:
        yield (
            "The diameter is more than the depth makes it: a burr under the caliper, or the depth"
            " was not taken from the face."
        )


def _unlike_head(measured: Measured, seat: SeatPlan, cone: Countersink) -> Iterator[str]:
    """Find a head that stands where no head of this screw would in the seat as measured."""
    screw = seat.screw
    if measured.diameter is None or measured.stand is None or screw is None:
        return
    if not measured.diameter > cone.hole_diameter:
        return
    cut = Countersink(
        diameter=measured.diameter,
        hole_diameter=cone.hole_diameter,
        included_angle=measured.angle or cone.included_angle,
    )
    try:
        heads = (screw.steepest_head, screw.head, screw.least_head)
        stands = [fit(head, cut).amount for head in heads]
    except SeatworkError:
        return
    unsure = measured.uncertainty("stand") + measured.uncertainty("diameter") / 2 / cut.tangent
    if not min(stands) - unsure <= measured.stand <= max(stands) + unsure:
        yield (
            f"No {screw.name} stands so in a seat of this diameter: another screw than the"
            " print's, or a chip or burr under the head."
        )


def _over_height(measured: Measured, seat: SeatPlan) -> Iterator[str]:
    """Find a head that stands higher over its counterbore's floor than any head is high."""
    height = seat.screw.head_height if seat.screw else None
    if height is None or measured.stand is None or measured.depth is None:
        return
    unsure = measured.uncertainty("stand") + measured.uncertainty("depth")
    if measured.stand + measured.depth > height + unsure:
        yield (
            "Depth and stand fight: no head of this screw is so high. Another screw than the "
            "print's, a chip under the head, or one of the two was read wrong."
        )
