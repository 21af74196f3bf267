"""Countersunk rivets, 100°: head, drill and the seat a manual gives them."""

from dataclasses import dataclass

from seatwork import tables
from seatwork.hardware.drill_list import Drill, drill
from seatwork.hardware.facts import Sourced, fact, needed
from seatwork.hardware.spelling import as_typed, size_name, tidy
from seatwork.seats import Head
from seatwork.units import show_both

HEADS, SEATS = "rivet_heads_ms20426", "rivet_countersinks"


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Rivet(Sourced):
    """A countersunk rivet.

    Parameters
    ----------
    name : str
        Nominal shank, ``5/32``.
    diameter : float
        Shank diameter [mm].
    head : Head
        Its head, 100°.
    drill : Drill
        The usual drill.
    seat_limits : tuple of float, optional
        Least and greatest countersink diameter at the face [mm], where a manual gives them.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    name: str
    diameter: float
    head: Head
    drill: Drill
    seat_limits: tuple[float, float] | None

    def _line(self) -> str:
        return f"{self.name}: {show_both(self.diameter)} shank, {self.document}"


def rivet(text: str) -> Rivet:
    """Find a countersunk rivet by its shank.

    Parameters
    ----------
    text : str
        ``3/32``, ``1/8``, ``5/32`` or ``3/16``.

    Raises
    ------
    SeatworkError
        If the table has no such rivet.

    Examples
    --------
    >>> rivet("5/32").drill.name
    '#21'
    """
    with as_typed(text):
        name = size_name(tidy(text, "a rivet such as 5/32").removesuffix(" rivet"))
        row = tables.row(HEADS, name)
    head = Head(
        sharp_diameter=needed(HEADS, row, "head_dia_in").value,
        included_angle=needed(HEADS, row, "included_angle_deg").value,
        height=needed(HEADS, row, "head_height_in").value,
    )
    return Rivet(
        name=name,
        diameter=needed(HEADS, row, "basic_dia_in").value,
        head=head,
        drill=drill(str(row["drill"])),
        seat_limits=_seat(name),
        source=str(row["source"]),
        confirmed=str(row["confirmed"]),
    )


def _seat(name: str) -> tuple[float, float] | None:
    for row in tables.rows(SEATS):
        least = fact(SEATS, row, "countersink_dia_min_in")
        greatest = fact(SEATS, row, "countersink_dia_max_in")
        if row["rivet"] == name and least and greatest:
            return least.value, greatest.value
    return None
