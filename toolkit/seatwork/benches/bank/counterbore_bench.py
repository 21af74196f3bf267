"""The counterbore bench: a hex cap screw below the face, and the wrench socket beside it."""

from dataclasses import replace
from typing import Any, ClassVar

from seatwork.benches.bank import counterbore_words as words
from seatwork.benches.bank.counterbore_sums import (
    ALLOWANCE,
    BELOW,
    BORE,
    BOSS,
    HEAD,
    KEY,
    METRIC_DEPTH,
    WRENCH,
    Held,
    boss_for,
    held,
    hexagons,
    listing,
    pilot,
    solid_tools,
    usual,
)
from seatwork.benches.bank.counterbore_words import Outcome
from seatwork.benches.bench import Bench, Values
from seatwork.benches.build.controls import Choice, Control, Pick, Switch
from seatwork.benches.build.listed import shop
from seatwork.benches.build.measures import Measure
from seatwork.benches.build.part_sizes import plate_size, seat_size
from seatwork.benches.build.sourced import fact_line, rule_line
from seatwork.drawings.parts.tightening import Bolt, Ring
from seatwork.drawings.views.counterbore_view import CounterboreView, Tightened
from seatwork.hardware import wrench_socket
from seatwork.hardware.clearance import ClearanceHole
from seatwork.hardware.drill_list import Drill
from seatwork.seats.wrench_room import reached
from seatwork.shop.house.house_rules import HouseRules, rules
from seatwork.units import show_both

FIRST = "3/8 hex cap (bearing cap)"
BRINGING = {"screw", "way", "washer"}


class Counterbore(Bench[Outcome]):
    """Show a screw in its counterbore, and whether the wrench comes down to its head.

    Opens on a hex cap screw in a counterbore that was cut for its head: the wrench socket does
    not go in. There are three ways out.

    Examples
    --------
    >>> bench = Counterbore()
    >>> bench.readouts()[0]
    ['Head', '0.010 in (0.25 mm) below']
    >>> bench.set(way="larger counterbore").result.lies.goes_in
    True
    """

    title = "Counterbore: how will you tighten it?"
    view = CounterboreView
    cautions: ClassVar[tuple[str, ...]] = ("before", "counterbore")
    controls: ClassVar[tuple[Control, ...]] = (
        Choice(name="way", label="Way out", options=(HEAD, BORE, KEY, BOSS), start=HEAD),
        seat_size("depth", "Depth of the cut", 0.2, 30.0, least=0.02),
        Pick(name="screw", label="Screw", listed=hexagons, known=held, start=FIRST,
             others="another screw", folded=True),
        Switch(name="measured", label="Measure your own socket", back="Take the list's socket"),
        seat_size("socket", "Your wrench socket, outside", 11.0, 48.0, needs="measured"),
        Switch(name="washer", label="Washer under the head", folded=True),
        plate_size(5.0, 60.0),
        seat_size("edge", "Hole to the edge of the plate", 5.0, 60.0, folded=True),
    )  # fmt: skip

    def brings(self, given: Values, now: Values) -> Values:
        """Let screw, way out and washer bring the usual depth, a screw its plate too."""
        if not BRINGING & given.keys():
            return {}
        at = held(now["screw"])
        brought: dict[str, Any] = {}
        if "screw" in given:
            brought = {"thickness": at.thickness, "edge": at.edge_distance, "socket": at.stand_in}
            if at.keyed or now["way"] == KEY:
                brought["way"] = KEY if at.keyed else HEAD
        values = dict(now) | brought | dict(given)
        seat = usual(at, values["way"], values["washer"], _room(at, values), rules())
        return brought | {"depth": seat.depth}

    def work_out(
        self, *, way: str, depth: float, screw: str, measured: bool, socket: float, washer: bool,
        thickness: float, edge: float,
    ) -> Outcome:  # fmt: skip
        """Cut the seat, lay the screw in, and bring the wrench socket down.

        Raises
        ------
        SeatworkError
            If nothing is left under or beside the seat, or the sizes make none.
        """
        at, kept, ringed = held(screw), rules(), washer
        values = {"measured": measured, "socket": socket, "way": way}
        room = _room(at, values)
        seat = replace(usual(at, way, ringed, room, kept), depth=depth)
        boss = None
        if way == BOSS:
            boss = boss_for(seat, instead_of=usual(at, BORE, ringed, room, kept))
        outer = replace(seat, diameter=boss.diameter) if boss else seat
        rim = boss.height if boss else 0.0
        part = at.held_by(way)
        return Outcome(
            at=at,
            seat=seat,
            pilot=pilot(seat, kept, solid_tools(shop())),
            boss=boss,
            ringed=ringed,
            lies=reached(
                seat,
                room=room,
                head_height=part.head_height or 0.0,
                washer_thickness=(at.ring.thickness or 0.0) if ringed else 0.0,
                rim=rim,
            ),
            thickness=thickness,
            edge_distance=edge,
            floor_left=seat.floor_left(thickness + rim),
            web=outer.wall_to_edge(edge),
            socket=None if way == KEY else _socket(values, room, kept),
            measured=measured,
        )

    def part(self, result: Outcome, system: str) -> Tightened:
        """Draw the seat twice in section: being cut, and with its screw being tightened."""
        return _part(result, system)

    def measures(self, result: Outcome) -> tuple[Measure, ...]:
        """Give how the head lies, and the metal left under the seat."""
        head = Measure("Head", abs(result.lies.amount), note=result.state)
        if result.state == "flush":
            head = Measure("Head", "flush", kind="word")
        return head, Measure("Floor left", result.floor_left)

    def sources(self, result: Outcome) -> tuple[str, ...]:
        """Tell where each number comes from."""
        part, at = result.part, result.at
        height = part.facts["height"]
        hole = show_both(result.seat.hole_diameter, self.system)
        metric = part.thread.system == "metric"
        deep = ALLOWANCE if result.boss else METRIC_DEPTH if metric else BELOW
        lines = (
            fact_line(f"{part.name}, height of the head", height.source, height.confirmed),
            fact_line(f"Hole {hole}, {_drilled(at.hole)}", at.hole.source, at.hole.confirmed),
            *_across(result, self.values["way"]),
            *self._socket_sources(result),
            *self._ring_sources(result),
            rule_line(deep),
            rule_line("pilot.clearance"),
            "Floor left: thickness less depth; web: edge distance less half the diameter of the "
            "seat, or of the boss; exact. "
            "How thin either may be is for the designer to say.",
            "Thickness, edge distance, the boss as cast and its rim: examples, no source.",
        )
        return tuple(dict.fromkeys(lines))

    def _socket_sources(self, result: Outcome) -> tuple[str, ...]:
        if result.socket is None:
            key = result.part.facts.get("hex_socket")
            return (fact_line("Key", key.source, key.confirmed),) if key else ()
        if result.measured:
            return (rule_line(WRENCH),)
        room = result.at.room
        across = show_both(room.counterbore_diameter, self.system)
        about = f"Counterbore {across} for the wrench socket, {room.basis}"
        drawn = f"Socket {show_both(result.socket, self.system)}: that, less the room round it."
        return (fact_line(about, room.source, room.confirmed), drawn, rule_line(WRENCH))

    def _ring_sources(self, result: Outcome) -> tuple[str, ...]:
        if not result.ringed:
            return ()
        ring = result.at.ring
        return (fact_line(ring.name, ring.source, ring.confirmed),)


def _part(one: Outcome, system: str) -> Tightened:
    """Give the drawing its sizes and its words."""
    screw, ring = one.part, one.at.washer
    return Tightened(
        bore=one.seat,
        thickness=one.thickness,
        edge_distance=one.edge_distance,
        floor_left=one.floor_left,
        web=one.web,
        bolt=Bolt(
            head=screw.head_diameter or screw.across_corners or 0.0,
            height=screw.head_height or 0.0,
            shank=screw.thread.diameter,
            key=one.key,
        ),
        amount=one.lies.amount,
        pilot=one.pilot,
        washer=Ring(
            outside=ring.outside_diameter,
            hole=ring.hole_diameter or screw.thread.diameter,
            thickness=ring.thickness or 0.0,
        )
        if one.ringed and ring is not None
        else None,
        boss=one.boss,
        socket=one.socket,
        rests_at=one.lies.rests_at,
        heading=words.heading(one, system),
        second=words.second(one, system),
        cutting=words.cutting(one, system),
        tightening=words.tightening(one, system),
        text=words.text_of(one, system),
    )


def _drilled(hole: Drill | ClearanceHole) -> str:
    return f"drill {hole.name}" if isinstance(hole, Drill) else f"{hole.fit} fit"


def _room(at: Held, values: Values) -> float:
    """Give the counterbore that the wrench socket needs [mm]: the list's, or by measure."""
    if values["way"] == KEY and at.wrench is None:
        return 2 * at.named.thread.diameter  # no socket is shown
    if not values["measured"]:
        return at.room.counterbore_diameter
    if values["way"] == KEY:
        return float(values["socket"])
    turned = at.held_by(values["way"])
    return wrench_socket(turned, outside_diameter=values["socket"]).counterbore_diameter


def _socket(values: Values, room: float, kept: HouseRules) -> float:
    """Give the socket's outside diameter [mm]: measured, or what the list's room is for."""
    return float(values["socket"]) if values["measured"] else room - kept.number(WRENCH)


def _across(one: Outcome, way: str) -> tuple[str, ...]:
    """Tell where the diameter of a seat comes from that no socket has to go into."""
    if way == BORE:
        return ()
    found = listing(one.at, way, one.ringed)
    if found is not None:
        about = f"Counterbore, {found.standard}, {found.series}; depth: {found.depth_basis}"
        return (fact_line(about, found.source, found.confirmed),)
    corners = one.part
    source, confirmed = corners.source, corners.confirmed
    about = f"{corners.name}, across corners; no list gives its counterbore, so the room round it"
    return (
        fact_line(f"{about} is that of the wrench clearance", source, confirmed),
        rule_line(WRENCH),
    )


counterbore = Counterbore
