"""What a cone runs into: the hole, the edge of the hole in a counterbore's floor, or its mouth."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from seatwork.errors import SeatworkError
from seatwork.notes import Countersink
from seatwork.notes.features import FLOOR
from seatwork.plan.counterbores import DIAMETER
from seatwork.plan.order import Order
from seatwork.plan.place import Place
from seatwork.plan.plans import SeatPlan
from seatwork.plan.records import Given, Reading, Stop
from seatwork.plan.stops import HOLE_EDGE
from seatwork.quantities import Length
from seatwork.seats import Counterbore

ACROSS, DEEP = "diameter at the face", "depth from the face"
AT_FLOOR, FROM_FLOOR = "diameter at the counterbore floor", "depth from the counterbore floor"
SAME = 0.01  # mm; a cone and a counterbore nearer than this are equally wide


@dataclass(frozen=True, slots=True, kw_only=True)
class Base:
    """What a cone is cut on.

    Parameters
    ----------
    hole : Given
        The finished hole that the cone runs into [mm].
    touched : Given
        The hole that is there when it is cut [mm].
    floor : Given or None
        Depth of the counterbore floor it lies in, from the face [mm].
    bore : float or None
        Diameter of that counterbore, which the cutter's body must enter [mm].
    """

    hole: Given
    touched: Given
    floor: Given | None = None
    bore: float | None = None


def base_for(
    note: Countersink | None, side: str, place: Place, flats: Sequence[SeatPlan], wanted_for: str
) -> Base:
    """Find what a cone of a note is cut on.

    Parameters
    ----------
    note : Countersink or None
        The cone; None for the mouth that a thread gets by house rule.
    side : str
        Its side of the part.
    place : Place
        The hole.
    flats : sequence of SeatPlan
        The flat seats already planned on the same side.
    wanted_for : str
        What the hole is wanted for, in an error.

    Raises
    ------
    SeatworkError
        If there is no hole, or cone and counterbore are equally wide.
    """
    hole, touched = place.hole(wanted_for), place.at_cut(side, wanted_for)
    bore = next((one for one in flats if isinstance(one.shape, Counterbore)), None)
    if bore is None or not isinstance(bore.shape, Counterbore):
        return Base(hole=hole, touched=touched)
    size = note.diameter.value if note is not None and note.diameter else None
    on_floor = note is None or note.measured_from == FLOOR or size is None
    if size is not None and not on_floor:
        if abs(size - bore.shape.diameter) <= SAME:
            raise SeatworkError(
                Length(size),
                "countersink and counterbore are equally wide: it would cut nothing at the "
                "mouth and leave no floor",
                "ask which of the two is meant, or which diameter is wrong",
            )
        on_floor = size < bore.shape.diameter
    if on_floor:
        floor = bore.size(DEEP)
        return Base(hole=hole, touched=touched, floor=floor, bore=bore.shape.diameter)
    across = bore.size(DIAMETER)
    assert across is not None
    mouth = replace(across, about="hole", source=f"the counterbore: {across.source}")
    return Base(hole=mouth, touched=mouth)


def below(order: Order, floor: Given | None) -> Order:
    """Return the order of a part as thick as it is under a counterbore's floor."""
    if floor is None or order.thickness is None:
        return order
    left = order.thickness - floor.value
    return replace(order, thickness=left) if left > 0 else order


def on_floor(plan: SeatPlan, floor: Given | None) -> SeatPlan:
    """Tell the sizes of a cone from the counterbore floor it lies in, and from the face too."""
    if floor is None:
        return plan
    return replace(
        plan,
        title=f"{plan.title}, on the counterbore floor",
        sizes=tuple(found for size in plan.sizes for found in _size(size, floor)),
        stops=tuple(_stop(one) for one in plan.stops if one.touch == HOLE_EDGE),
        readings=tuple(_reading(one) for one in plan.readings if one.instrument == "caliper"),
    )


def _size(size: Given, floor: Given) -> tuple[Given, ...]:
    if size.about == ACROSS:
        return (replace(size, about=AT_FLOOR),)
    if size.about != DEEP:
        return (size,)
    from_face = Given(
        about=DEEP,
        value=floor.value + size.value,
        source="worked out: counterbore depth and depth from its floor",
    )
    return (replace(size, about=FROM_FLOOR), from_face)


def _stop(stop: Stop) -> Stop:
    return replace(stop, touch=f"{HOLE_EDGE} inside the counterbore")


def _reading(reading: Reading) -> Reading:
    return replace(reading, about=reading.about.replace("at the face", "at the counterbore floor"))
