"""Touching off and quill travel, and what a stop error does."""

from seatwork.notes import Spotface
from seatwork.plan.records import Stop
from seatwork.seats import Counterbore, Countersink
from seatwork.seats.touching_off import diameter_error

STOP_ERROR = {"inch": 0.0254, "metric": 0.02}  # mm: one thousandth, or two hundredths
HOLE_EDGE = "the lips touch the hole edge"
SOLID_FACE = "the nose touches a solid face (scrap without a hole)"
FACE = "the lips touch the face"


def cone_stops(seat: Countersink, *, nose_diameter: float | None, system: str) -> tuple[Stop, ...]:
    """Return the touch-offs of a countersink, on the hole edge first.

    Parameters
    ----------
    seat : Countersink
        The seat to cut.
    nose_diameter : float or None
        Flat on the end of the cutter [mm]; None where no cutter was found, or where a pilot
        goes ahead of its lips.
    system : {"inch", "metric"}
        Whose smallest step the stop error is.
    """
    error = STOP_ERROR[system]
    effect = diameter_error(depth_error=error, included_angle=seat.included_angle)
    at_hole = Stop(touch=HOLE_EDGE, travel=seat.travel_from_hole_edge(), error=error, effect=effect)
    if nose_diameter is None or not nose_diameter < seat.hole_diameter:
        return (at_hole,)
    travel = seat.travel_from_face(nose_diameter)
    return (at_hole, Stop(touch=SOLID_FACE, travel=travel, error=error, effect=effect))


def flat_stops(seat: Counterbore, *, system: str) -> tuple[Stop, ...]:
    """Return the touch-off of a counterbore: the lips on the face."""
    return (Stop(touch=FACE, travel=seat.depth, error=STOP_ERROR[system], effect=0.0),)


def depth_stop(note: Spotface, system: str) -> tuple[Stop, ...]:
    """Return the touch-off of a spotface whose note gives a depth."""
    if note.depth is None or note.depth.value is None or not note.depth.value > 0:
        return ()
    return (Stop(touch=FACE, travel=note.depth.value, error=STOP_ERROR[system], effect=0.0),)
