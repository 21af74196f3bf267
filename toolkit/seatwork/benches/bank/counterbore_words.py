"""What the counterbore bench says: the lines on its picture and its text."""

from dataclasses import dataclass

from seatwork.benches.bank.counterbore_sums import HEAD, KEY, Held
from seatwork.hardware.screws import Screw
from seatwork.seats import Counterbore
from seatwork.seats.pilots import Pilot, RaisedBoss
from seatwork.seats.wrench_room import Reached
from seatwork.units import show_both, show_length

KINDS = {"solid": "fixed", "removable": "interchangeable"}


@dataclass(frozen=True, slots=True, kw_only=True)
class Outcome:
    """A seat with its screw in it, as numbers.

    Parameters
    ----------
    at : Held
        Screws, hole and plate.
    seat : Counterbore
        As cut.
    pilot : Pilot
        Pilot of its cutter.
    boss : RaisedBoss or None
        What it is cut into instead of the face.
    ringed : bool
        Whether a washer lies under the head.
    lies : Reached
        How the head lies, and what the wrench socket takes hold of.
    thickness, edge_distance : float
        Of the plate, and from the hole's axis to its edge [mm].
    floor_left, web : float
        Metal under the seat, and from seat or boss to the edge [mm].
    socket : float or None
        Outside diameter of the wrench socket [mm]; None where a key turns the screw.
    measured : bool
        Whether that was measured.
    """

    at: Held
    seat: Counterbore
    pilot: Pilot
    boss: RaisedBoss | None
    ringed: bool
    lies: Reached
    thickness: float
    edge_distance: float
    floor_left: float
    web: float
    socket: float | None
    measured: bool

    @property
    def part(self) -> Screw:
        """The screw that lies in the seat."""
        return self.at.held_by(KEY if self.socket is None else HEAD)

    @property
    def key(self) -> float | None:
        """Width across flats of the key that turns it [mm]; None for a wrench, or not listed."""
        return self.part.value("hex_socket") if self.socket is None else None

    @property
    def state(self) -> str:
        """Where the head's top lies."""
        if abs(self.lies.amount) < 5e-4:
            return "flush"
        return "proud" if self.lies.amount > 0 else "below"


def heading(one: Outcome, system: str) -> str:
    """Say in one line whether the screw can be tightened."""
    if one.socket is None:
        return "A hex key goes into the head: nothing beside it is needed"
    if one.boss:
        return "On a raised boss nothing is in the socket's way"
    if one.lies.goes_in:
        return "The wrench socket goes in, down to the head"
    if one.lies.hold > 0:
        return f"The wrench socket holds only {show_both(one.lies.hold, system)} of the head"
    return "The wrench socket does not go in. How will you tighten it?"


def second(one: Outcome, system: str) -> str:
    """Say in one line what that rests on."""
    across, hole = (
        show_length(size, system) for size in (one.seat.diameter, one.seat.hole_diameter)
    )
    if one.boss:
        wide, high = (show_length(size, system) for size in (one.boss.diameter, one.boss.height))
        return f"Boss {wide} across, cast {high} high, with a spotface of {across}"
    if one.socket is None:
        key = f", key {show_length(one.key, system)}" if one.key else ""
        return f"{one.part.name}{key}: counterbore {across}"
    outside = show_length(one.socket, system)
    if one.lies.goes_in:
        return f"Socket {outside} across; counterbore {across} on a hole of only {hole}"
    return f"Socket {outside} across, counterbore {across}, cut for the head"


def cutting(one: Outcome, system: str) -> tuple[str, str]:
    """Tell the pilot in two lines."""
    size, free, hole = (
        show_length(size, system)
        for size in (one.pilot.diameter, one.pilot.clearance, one.seat.hole_diameter)
    )
    return f"{KINDS[one.pilot.kind]} pilot {size}", f"{free} under its hole, {hole}"


def tightening(one: Outcome, system: str) -> tuple[str, str]:
    """Tell in two lines how the head lies and what turns it."""
    lies = f"head {standing(one, system)}"
    if one.socket is None:
        return lies, "hex key from above"
    return lies, "socket as measured" if one.measured else "socket from a list: measure yours"


def standing(one: Outcome, system: str) -> str:
    """Name amount and state of the head."""
    if one.state == "flush":
        return "flush with the face"
    where = "proud of" if one.state == "proud" else "below"
    return f"{show_length(abs(one.lies.amount), system)} {where} the face"


def text_of(one: Outcome, system: str) -> str:
    """Tell all of it, with every number in both systems."""

    def both(size: float) -> str:
        return show_both(size, system)

    part, ring = one.part, one.at.washer
    under = (
        f", with a washer of {both(ring.outside_diameter)}, {both(ring.thickness or 0.0)} thick,"
        if one.ringed and ring is not None
        else ""
    )
    seat, boss = one.seat, one.boss
    place = (
        f"a spotface {both(seat.diameter)} across and {both(seat.depth)} deep on a boss "
        f"{both(boss.diameter)} across, cast {both(boss.height)} high "
        f"(grip {both(boss.grip_gain)} longer than over a counterbore)"
        if boss
        else f"a counterbore {both(seat.diameter)} across and {both(seat.depth)} deep"
    )
    lies = (
        "is flush with"
        if one.state == "flush"
        else (f"is {both(abs(one.lies.amount))} {'proud of' if one.state == 'proud' else 'below'}")
    )
    return (
        f"{part.name}{under} in {place}, on a hole of {both(seat.hole_diameter)} in a plate "
        f"{both(one.thickness)} thick. {_sentence(heading(one, system))} {_turned(one, system)}"
        f"The top of the head {lies} the face; floor left {both(one.floor_left)}, web "
        f"{both(one.web)}. Pilot: {KINDS[one.pilot.kind]}, {both(one.pilot.diameter)}, "
        f"{both(one.pilot.clearance)} under its hole."
    )


def _turned(one: Outcome, system: str) -> str:
    """Tell what turns the screw."""
    if one.socket is None:
        return f"Key {show_both(one.key, system)} across flats. " if one.key else ""
    whence = "as measured" if one.measured else "from a list, measure yours"
    hold = (
        f"it holds {show_both(one.lies.hold, system)} of the head"
        if one.lies.hold
        else "it holds nothing"
    )
    return f"Wrench socket {show_both(one.socket, system)} across, {whence}; {hold}. "


def _sentence(line: str) -> str:
    return line if line.endswith("?") else f"{line}."
