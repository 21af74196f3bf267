"""What questions about one countersink share: its sizes, the slips of its cone."""

from collections.abc import Iterator
from dataclasses import dataclass

from seatwork.questions.shared.wrong_trig import over, whole_tangent
from seatwork.questions.type.question import NumberQuestion
from seatwork.questions.type.slips import Mistake, slip
from seatwork.seats import Countersink
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatQuestion(NumberQuestion):
    """A question about one countersink.

    Parameters
    ----------
    diameter : float
        Diameter at the face [mm].
    hole_diameter : float
        Diameter of the hole [mm].
    included_angle : float
        Included angle [deg].
    """

    diameter: float
    hole_diameter: float
    included_angle: float

    def seat(self) -> Countersink:
        """Return the seat asked about."""
        return Countersink(
            diameter=self.diameter,
            hole_diameter=self.hole_diameter,
            included_angle=self.included_angle,
        )


MOVES = (
    "You took a change of diameter for a change of depth. They are not the same: at {angle:g}° "
    "the diameter moves {times:.1f} times as far."
)


def width_for_depth(value: float, included_angle: float) -> Mistake:
    """Return the slip of a diameter taken for a depth, told with the cone that counts.

    Parameters
    ----------
    value : float
        What it gives [mm].
    included_angle : float
        Included angle of that cone [deg].
    """
    times = 2 * half_tangent(included_angle)
    return slip("M14", value, MOVES.format(angle=included_angle, times=times))


def height_slips(side: float, included_angle: float) -> Iterator[Mistake]:
    """Yield the slips of a height worked from one side of a cone.

    Parameters
    ----------
    side : float
        What one side takes along the face [mm]; its height is that over the tangent.
    included_angle : float
        Included angle of the cone [deg].
    """
    yield slip("M01", over(side, whole_tangent(included_angle)))
    yield slip("M02", 2 * side / half_tangent(included_angle))
    yield slip("M04", side * half_tangent(included_angle))
