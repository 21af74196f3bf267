"""Touching off and travel, what a stop error does, and the one stop that decides.

Notes
-----
One stop decides: the quill's on a drill press or mill, the tailstock's on a lathe, the cage's
with a cutter that runs in one. A hand drill without a cage has none; then no travel is given,
and the depth is found by trial with the screw.
"""

from dataclasses import replace

from seatwork.errors import SeatworkError
from seatwork.notes import Spotface
from seatwork.plan.bounds import Bounds, bounds_of
from seatwork.plan.order import Order
from seatwork.plan.records import Given, Stop
from seatwork.plan.resolving import stated
from seatwork.seats import Counterbore, Countersink
from seatwork.seats.touching_off import Limits, diameter_error
from seatwork.seats.travels import travel_for_every_hole, travel_limits
from seatwork.shop.choosing.choosing import Choice

STOP_ERROR = {"inch": 0.0254, "metric": 0.02}  # mm: one thousandth, or two hundredths
HOLE_EDGE = "the lips touch the hole edge"
SOLID_FACE = "the nose touches a solid face (scrap without a hole)"
FACE = "the lips touch the face"
SHORT = {HOLE_EDGE: "from the hole edge", SOLID_FACE: "from a solid face", FACE: "from the face"}
CAGE = "stop cage"
DEVICES = {"lathe": "tailstock"}


def stop_device(order: Order, best: Choice | None) -> tuple[str, float | None] | None:
    """Return what stops the cut and its smallest step [mm]; None where nothing does.

    Parameters
    ----------
    order : Order
        With the machine.
    best : Choice or None
        The tool chosen.
    """
    holder = best.tool.holder if best else None
    if holder is not None and holder.kind == CAGE:
        return CAGE, holder.click
    if order.machine.kind == "hand drill":
        return None
    return DEVICES.get(order.machine.kind, "quill"), order.machine.depth_stop


def cone_stops(
    seat: Countersink, sizes: tuple[Given, ...], *, order: Order, best: Choice | None
) -> tuple[Stop, ...]:
    """Return the touch-offs of a countersink, on the hole edge first.

    Parameters
    ----------
    seat : Countersink
        The seat to cut.
    sizes : tuple of Given
        Hole, diameter at the face and depth, with their limits.
    order : Order
        Machine, rules and system.
    best : Choice or None
        The tool chosen; a nose is touched only where no pilot goes ahead of its lips.
    """
    device = stop_device(order, best)
    if device is None:
        return ()
    bounds = _diameters(seat, sizes, order)
    hole, error = _about(sizes, "hole"), STOP_ERROR[order.system]
    every = _any_hole(seat, bounds, hole)
    least, greatest = _ends(seat, bounds, seat.hole_diameter)
    at_hole = Stop(
        touch=HOLE_EDGE,
        travel=seat.travel_from_hole_edge(),
        error=error,
        effect=diameter_error(depth_error=error, included_angle=seat.included_angle),
        any_hole=every,
        wanders=_bounded(hole) and every is None and least is not None,
        device=device[0],
        step=device[1],
        least=least,
        greatest=greatest,
        short=SHORT[HOLE_EDGE],
    )
    nose = _nose(best)
    if nose is None or not nose < seat.hole_diameter:
        return (at_hole,)
    least, greatest = _ends(seat, bounds, nose)
    at_face = replace(
        at_hole,
        touch=SOLID_FACE,
        travel=seat.travel_from_face(nose),
        any_hole=None,
        wanders=False,
        least=least,
        greatest=greatest,
        short=SHORT[SOLID_FACE],
    )
    return (at_hole, at_face)


def flat_stops(
    seat: Counterbore, deep: Given, *, order: Order, best: Choice | None
) -> tuple[Stop, ...]:
    """Return the touch-off of a counterbore: the lips on the face."""
    return _flat(seat.depth, deep, order, best)


def depth_stop(note: Spotface, *, order: Order, best: Choice | None) -> tuple[Stop, ...]:
    """Return the touch-off of a spotface whose note gives a depth."""
    if note.depth is None or note.depth.value is None or not note.depth.value > 0:
        return ()
    return _flat(note.depth.value, stated(note.depth, "depth from the face"), order, best)


def _flat(travel: float, deep: Given, order: Order, best: Choice | None) -> tuple[Stop, ...]:
    device = stop_device(order, best)
    if device is None:
        return ()
    bounds = bounds_of(deep, system=order.system, rules=order.shop.rules)
    return (
        Stop(
            touch=FACE,
            travel=travel,
            error=STOP_ERROR[order.system],
            effect=0.0,
            least=max(bounds.least, 0.0),
            greatest=bounds.greatest,
            device=device[0],
            step=device[1],
            short=SHORT[FACE],
        ),
    )


def _nose(best: Choice | None) -> float | None:
    blunt = best is not None and best.tool.pilot_diameter is None
    return best.tool.cutter.nose_diameter if best and blunt else None


def _diameters(seat: Countersink, sizes: tuple[Given, ...], order: Order) -> Limits | None:
    """Return the limits of the diameter at the face, from the depth's where the note gives it."""
    system, rules = order.system, order.shop.rules
    across, deep = _about(sizes, "diameter at the face"), _about(sizes, "depth from the face")
    if deep is not None and deep.noted:
        return _from_depths(seat, bounds_of(deep, system=system, rules=rules))
    if across is None:
        return None
    bounds = bounds_of(across, system=system, rules=rules)
    least = max(bounds.least, seat.hole_diameter)
    return Limits(least=least, greatest=max(bounds.greatest, least))


def _from_depths(seat: Countersink, deep: Bounds) -> Limits:
    def across(depth: float) -> float:
        return Countersink.from_depth(
            depth=depth, hole_diameter=seat.hole_diameter, included_angle=seat.included_angle
        ).diameter

    least = across(deep.least) if deep.least > 0 else seat.hole_diameter
    return Limits(least=least, greatest=across(deep.greatest))


def _ends(
    seat: Countersink, bounds: Limits | None, touched: float
) -> tuple[float | None, float | None]:
    """Return least and greatest travel from the touch on a diameter [mm]."""
    if bounds is None or not bounds.least > touched:
        return None, None
    found = travel_limits(
        diameter=bounds, hole_diameter=touched, included_angle=seat.included_angle
    )
    return found.least, found.greatest


def _bounded(hole: Given | None) -> bool:
    return hole is not None and hole.smallest != hole.largest


def _any_hole(seat: Countersink, bounds: Limits | None, hole: Given | None) -> Limits | None:
    if bounds is None or hole is None or not _bounded(hole):
        return None
    try:
        return travel_for_every_hole(
            diameter=bounds,
            hole_diameter=Limits(least=hole.smallest, greatest=hole.largest),
            included_angle=seat.included_angle,
        )
    except SeatworkError:
        return None


def _about(sizes: tuple[Given, ...], about: str) -> Given | None:
    return next((size for size in sizes if size.about == about), None)
