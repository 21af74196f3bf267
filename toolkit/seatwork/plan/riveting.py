"""Seats of countersunk rivets: hole, cone and least sheet from the rivet's own lists."""

from collections.abc import Iterator

from seatwork import hardware, notes
from seatwork.hardware import Rivet
from seatwork.hardware.rivets import is_rivet
from seatwork.plan.order import Order
from seatwork.plan.records import Check, Given
from seatwork.quantities import Length
from seatwork.seats import Countersink

EVEN = 1e-6  # mm; two sizes nearer than this are the same


def rivet_named(features: tuple[notes.Feature, ...]) -> Rivet | None:
    """Return the rivet that a note names for a hole; None where it names none.

    Raises
    ------
    SeatworkError
        If the lists have no such rivet.
    """
    named = (one.screw for one in features if one.screw and is_rivet(one.screw))
    return next((hardware.rivet(text) for text in named), None)


def rivet_hole(found: Rivet | None) -> Given | None:
    """Return the hole of a rivet: its usual drill."""
    if found is None:
        return None
    return Given(
        about="hole",
        value=found.drill.diameter,
        source=f"usual drill of the {found.name} rivet: {found.source}",
        confirmed=found.confirmed,
        name=found.drill.name,
    )


def rivet_angle(found: Rivet) -> Given:
    """Return the included angle of a rivet's head."""
    return Given(
        about="included angle",
        value=found.head.included_angle,
        kind="angle",
        source=found.source,
        confirmed=found.confirmed,
    )


def rivet_diameter(found: Rivet) -> Given:
    """Return the seat of a rivet at the face: the middle of its listed limits, else its head."""
    about = "diameter at the face"
    if found.seat_limits is None:
        sharp = found.head.sharp_diameter
        return Given(about=about, value=sharp, source=found.source, confirmed=found.confirmed)
    least, greatest = found.seat_limits
    return Given(
        about=about,
        value=(least + greatest) / 2,
        least=least,
        greatest=greatest,
        source=f"seat of the {found.name} rivet: {found.source}",
        confirmed=found.confirmed,
    )


def check_rivet_sheet(found: Rivet | None, seat: Countersink, order: Order) -> Iterator[Check]:
    """Hold the sheet against the least one listed for a machine countersink for the rivet."""
    if found is None or order.thickness is None:
        return
    rules = hardware.least_thickness(
        countersink_depth=seat.depth, head_height=seat.depth, rivet=found.name
    )
    listed = next((one for one in rules if one.rule.endswith(f"{found.name} rivet")), None)
    if listed is None:
        return
    holds = order.thickness > listed.length + EVEN
    least = order.show(Length(listed.length))
    yield Check(
        name="least sheet for the rivet",
        verdict="holds" if holds else "look",
        sentence=f"{listed.rule} in {least} at least"
        + ("." if holds else ": at or under the least. Dimple it, or another rivet? Ask."),
    )
