"""A screw head, the countersink it lies in, and the plate: what a section is told."""

from dataclasses import dataclass, replace

from seatwork.seats import Countersink, Fit, Head, fit


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatedHead:
    """A screw head lying in a countersink.

    Parameters
    ----------
    head : Head
        The screw's head.
    seat : Countersink
        The seat it lies in.
    thickness : float or None
        Of the plate [mm]; None where it plays no part.
    """

    head: Head
    seat: Countersink
    thickness: float | None = None

    @property
    def broken_through(self) -> bool:
        """Whether the cone comes out at the far side."""
        return self.thickness is not None and self.thickness < self.seat.depth

    @property
    def in_plate(self) -> Countersink:
        """The seat as the plate leaves it: where the cone breaks through, its hole is wider."""
        if self.thickness is None or not self.broken_through:
            return self.seat
        return replace(self.seat, hole_diameter=self.seat.diameter_at(self.thickness))

    @property
    def lies(self) -> Fit:
        """How the head lies in what the plate leaves of the seat.

        Raises
        ------
        SeatworkError
            If the head cannot lie in it.
        """
        return fit(self.head, self.in_plate)
