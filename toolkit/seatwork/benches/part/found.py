"""What comes of a part: each note read and planned, each reading judged."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace

from seatwork import inspection, notes, units
from seatwork.benches.part.state import PartState, Seat, owner_of
from seatwork.errors import SeatworkError
from seatwork.inspection import Inspection
from seatwork.inspection.cuts import Cut, cuts_of
from seatwork.notes import Callout
from seatwork.plan import Plan, make_plan
from seatwork.shop.shop import Shop

LENGTHS = {
    "thickness": "thickness at the hole",
    "edge": "hole to the nearest edge",
    "engagement": "thread to engage",
}
SLOPE = "slope of a raw pad"
"""What is typed beside the note, in the words of its box."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatFound:
    """What came of one note.

    Parameters
    ----------
    seat : Seat
        As typed.
    callout : Callout or None
        What was read; None where it could not be.
    plan : Plan or None
        What to do; None where it could not be planned.
    trouble : SeatworkError or None
        Why there is no plan.
    """

    seat: Seat
    callout: Callout | None = None
    plan: Plan | None = None
    trouble: SeatworkError | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class PartFound:
    """What came of a whole part.

    Parameters
    ----------
    seats : tuple of SeatFound
        In the order of the notes.
    cuts : dict of str to Cut
        What is measured, by the name the blank sheet gives it.
    inspection : Inspection
        What the readings say.
    """

    seats: tuple[SeatFound, ...]
    cuts: Mapping[str, Cut]
    inspection: Inspection

    @property
    def plans(self) -> dict[str, Plan]:
        """The plans there are, by the name of their note."""
        return {one.seat.name: one.plan for one in self.seats if one.plan is not None}


class Finder:
    """Works a part out, and keeps the plans of notes that did not change.

    Parameters
    ----------
    shop : Shop
        Lists and house rules, as they were when the page was opened.
    """

    def __init__(self, shop: Shop) -> None:
        self.shop = shop
        self._found: dict[tuple[Seat, tuple[tuple[str, str], ...]], SeatFound] = {}

    def shop_of(self, state: PartState) -> Shop:
        """Return the shop with the rules that hold otherwise for a part.

        Raises
        ------
        SeatworkError
            If there is no such rule, or it cannot have that value.
        """
        return replace(self.shop, rules=self.shop.rules.changed(state.rules, "this part"))

    def find(self, state: PartState) -> PartFound:
        """Return what comes of a part.

        Raises
        ------
        SeatworkError
            If a rule was changed to what it cannot be; a note that cannot be read or planned
            says so in its own place.
        """
        shop, ruled = self.shop_of(state), tuple(sorted(state.rules.items()))
        kept = {(seat, ruled): self._found.get((seat, ruled)) for seat in state.seats}
        self._found = {key: found or _planned(key[0], shop) for key, found in kept.items()}
        seats = tuple(self._found[seat, ruled] for seat in state.seats)
        plans = {one.seat.name: one.plan for one in seats if one.plan is not None}
        cuts = cuts_of(plans)
        return PartFound(seats=seats, cuts=cuts, inspection=_judged(state, plans, shop))


def _planned(seat: Seat, shop: Shop) -> SeatFound:
    callout = None
    try:
        if not seat.note:
            raise SeatworkError("no note", "there is nothing to plan yet", "type the print note")
        callout = notes.read(seat.note, rules=shop.rules)
        plan = make_plan(
            callout,
            screw=seat.screw or None,
            material=seat.material,
            machine=seat.machine,
            shop=shop,
            slope=_read(units.angle, SLOPE, seat.slope) if seat.slope else None,
            **{
                name: _read(units.length, about, text)
                for name, about in LENGTHS.items()
                if (text := getattr(seat, name))
            },
        )
    except SeatworkError as error:
        return SeatFound(seat=seat, callout=callout, trouble=error)
    return SeatFound(seat=seat, callout=callout, plan=plan)


def _read(reader: Callable[[str], float], about: str, text: str) -> float:
    """Read what is typed in a box; what cannot be is refused by the box's name."""
    try:
        return reader(text)
    except SeatworkError as error:
        value = f"{about}, {error.value}"
        options = error.options
        raise SeatworkError(
            value, error.fault, error.remedy, options=options, **error.sizes
        ) from error


def _judged(state: PartState, plans: Mapping[str, Plan], shop: Shop) -> Inspection:
    """Judge what was measured; readings of a note without a plan wait for it, and it is said."""
    names = [seat.name for seat in state.seats]
    owned = [(one, owner_of(one.feature, names)) for one in state.readings]
    waiting = [one for one, name in owned if name in names and name not in plans]
    readings = [one for one in state.readings if one not in waiting]
    held = [
        f"{one.part}, {one.feature}: its note has no plan now; the readings wait for one."
        for one in waiting
    ]
    rows = [{"part": one.part, "feature": one.feature, **one.cells} for one in readings]
    measured = inspection.read_typed(rows, features=tuple(cuts_of(plans)))
    found = inspection.inspect(measured.measured, plans, shop=shop)
    return replace(found, faults=(*held, *measured.faults, *found.faults))
