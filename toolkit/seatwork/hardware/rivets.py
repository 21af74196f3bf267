"""Countersunk rivets, 100°: head, drill and the seat a manual gives them."""

import re
from dataclasses import dataclass
from fractions import Fraction

from seatwork import tables
from seatwork.hardware.drill_list import Drill, drill
from seatwork.hardware.facts import Sourced, fact, needed
from seatwork.hardware.spelling import as_typed, size_name, tidy
from seatwork.hardware.vocabulary import RIVET, RIVET_WORDS
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
        ``3/32``, ``1/8``, ``5/32`` or ``3/16``, with or without words: ``1/8 flush rivet``;
        or by its part number, ``MS20426AD4``, whose figure counts 1/32 in.

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
        name = _shank(tidy(text, "a rivet such as 5/32"))
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


def is_rivet(text: str) -> bool:
    """Tell whether a fastener's name speaks of a rivet.

    Examples
    --------
    >>> is_rivet("MS20426AD4 rivet"), is_rivet("#8 FHMS")
    (True, False)
    """
    return RIVET.search(text.lower()) is not None


def _shank(plain: str) -> str:
    """Return the shank's size in a rivet's name."""
    numbered = re.search(r"\bms ?20426 ?(?:ad|dd|[abd]) ?(\d)(?:-\d+)?\b", plain)
    if numbered:
        thirty_seconds = Fraction(int(numbered[1]), 32)
        plain = f"{thirty_seconds} {plain.replace(numbered[0], ' ')}"
    words = plain.replace("100°", " ").split()
    left = [word for word in words if word.strip(".,") not in RIVET_WORDS]
    return size_name(" ".join(left))


def _seat(name: str) -> tuple[float, float] | None:
    for row in tables.rows(SEATS):
        least = fact(SEATS, row, "countersink_dia_min_in")
        greatest = fact(SEATS, row, "countersink_dia_max_in")
        if row["rivet"] == name and least and greatest:
            return least.value, greatest.value
    return None
