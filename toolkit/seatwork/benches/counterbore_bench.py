"""The counterbore bench: a hex cap screw below the face, and the wrench socket beside it."""

from collections.abc import Sequence
from dataclasses import replace
from typing import Any, ClassVar

from matplotlib.artist import Artist

from seatwork.benches import counterbore_words as words
from seatwork.benches.bench import Bench, Values
from seatwork.benches.controls import Choice, Control, Number, Switch
from seatwork.benches.counterbore_jobs import (
    ALLOWANCE,
    BELOW,
    BORE,
    BOSS,
    HALF,
    HEAD,
    KEY,
    M6,
    M8,
    METRIC_DEPTH,
    QUARTER,
    THREE,
    WRENCH,
    Job,
    boss_for,
    jobs,
    listing,
    pilot,
    solid_tools,
    usual,
)
from seatwork.benches.counterbore_words import Outcome
from seatwork.benches.measures import Measure
from seatwork.benches.sourced import fact_line, rule_line
from seatwork.drawings.counterbore_view import CounterboreView, Tightened
from seatwork.drawings.scene import Look, Scene
from seatwork.drawings.tightening import Bolt, Ring
from seatwork.hardware import wrench_socket
from seatwork.seats.wrench_room import reached
from seatwork.shop.house.house_rules import HouseRules, rules
from seatwork.units import show_both

BRINGING = {"screw", "way", "washer"}


class Counterbore(Bench[Outcome]):
    """The bench itself; begin with ``counterbore``."""

    name = "counterbore"
    title = "Counterbore: how will you tighten it?"
    cautions: ClassVar[tuple[str, ...]] = ("before", "counterbore")
    controls: ClassVar[tuple[Control, ...]] = (
        Choice(name="way", label="Way out", options=(HEAD, BORE, KEY, BOSS), start=HEAD),
        Number(
            name="depth",
            label="Depth of the cut",
            low=0.2,
            high=30.0,
            start=6.4262,
            why="that takes in every head here, sunk by its own height and more",
        ),
        Choice(
            name="screw",
            label="Screw",
            options=(THREE, QUARTER, HALF, M6, M8),
            start=THREE,
            folded=True,
        ),
        Switch(
            name="measured",
            label="Measure your own socket",
            back="Take the list's socket",
        ),
        Number(
            name="socket",
            label="Your wrench socket, outside",
            low=11.0,
            high=48.0,
            start=27.20625,
            why="that takes in the sockets for these heads",
            needs="measured",
        ),
        Switch(name="washer", label="Washer under the head", folded=True),
        Number(
            name="thickness",
            label="Plate thickness",
            low=5.0,
            high=60.0,
            start=25.4,
            why="thinner is sheet, and thicker tells nothing new",
            folded=True,
        ),
        Number(
            name="edge",
            label="Hole to the edge of the plate",
            low=5.0,
            high=60.0,
            start=25.4,
            why="nearer no head fits, and farther the edge plays no part",
            folded=True,
        ),
    )

    def __init__(self, **given: Any) -> None:
        self._tools = solid_tools()
        super().__init__(**given)

    def work_out(self, **values: Any) -> Outcome:
        """Cut the seat, lay the screw in, and bring the wrench socket down.

        Raises
        ------
        SeatworkError
            If nothing is left under or beside the seat, or the sizes make none.
        """
        job, way, held = jobs()[values["screw"]], values["way"], rules()
        room, ringed = _room(job, values), values["washer"]
        wanted = usual(values["screw"], way, ringed, room, held)
        seat = replace(wanted, depth=values["depth"])
        boss = None
        if way == BOSS:
            pocket = usual(values["screw"], BORE, ringed, room, held)
            boss = boss_for(seat, instead_of=pocket)
        outer = replace(seat, diameter=boss.diameter) if boss else seat
        rim = boss.height if boss else 0.0
        part = job.cylinder if way == KEY else job.hexagon
        return Outcome(
            job=job,
            seat=seat,
            pilot=pilot(seat, held, self._tools),
            boss=boss,
            ringed=ringed,
            lies=reached(
                seat,
                room=room,
                head_height=part.head_height or 0.0,
                washer_thickness=(job.ring.thickness or 0.0) if ringed else 0.0,
                rim=rim,
            ),
            thickness=values["thickness"],
            edge_distance=values["edge"],
            floor_left=seat.floor_left(values["thickness"] + rim),
            web=outer.wall_to_edge(values["edge"]),
            socket=None if way == KEY else _socket(values, room, held),
            measured=values["measured"],
        )

    def scene(self, result: Outcome, look: Look) -> Scene[Outcome]:
        """Show the seat twice in section: being cut, and with its screw being tightened."""
        return _Shown(result, look)

    def measures(self, result: Outcome) -> tuple[Measure, ...]:
        """Give how the head lies, and the metal left under the seat."""
        head = Measure("Head", abs(result.lies.amount), note=result.state)
        if result.state == "flush":
            head = Measure("Head", "flush", kind="word")
        return head, Measure("Floor left", result.floor_left)

    def sources(self, result: Outcome) -> tuple[str, ...]:
        """Tell where each number comes from."""
        job, key = result.job, result.socket is None
        part = job.cylinder if key else job.hexagon
        height = part.facts["height"]
        hole = show_both(result.seat.hole_diameter, self.system)
        metric = part.thread.system == "metric"
        deep = ALLOWANCE if result.boss else METRIC_DEPTH if metric else BELOW
        told = (
            fact_line(f"{part.name}, height of the head", height.source, height.confirmed),
            fact_line(f"Hole {hole}, {job.hole.fit} fit", job.hole.source, job.hole.confirmed),
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
        return tuple(dict.fromkeys(told))

    def _socket_sources(self, result: Outcome) -> tuple[str, ...]:
        if result.socket is None:
            fact = result.job.cylinder.facts["hex_socket"]
            return (fact_line("Key", fact.source, fact.confirmed),)
        if result.measured:
            return (rule_line(WRENCH),)
        room = result.job.room
        across = show_both(room.counterbore_diameter, self.system)
        about = f"Counterbore {across} for the wrench socket, {room.basis}"
        drawn = f"Socket {show_both(result.socket, self.system)}: that, less the room round it."
        return (fact_line(about, room.source, room.confirmed), drawn, rule_line(WRENCH))

    def _ring_sources(self, result: Outcome) -> tuple[str, ...]:
        ring = result.job.ring
        return (fact_line(ring.name, ring.source, ring.confirmed),) if result.ringed else ()

    def _read(self, given: Values, now: Values | None = None) -> dict[str, Any]:
        """Read values; screw, way out and washer bring the usual depth, a screw its plate."""
        read = super()._read(given, now)
        if not BRINGING & read.keys():
            return read
        begin = {control.name: control.start for control in self.controls}
        state = getattr(self, "_state", None)
        now = begin | (state.values if state else {}) | read
        job, brought = jobs()[now["screw"]], {}
        if "screw" in read:
            brought = {"thickness": job.thickness, "edge": job.edge_distance}
            brought["socket"] = job.stand_in
        room = _room(job, now | brought | read)
        seat = usual(now["screw"], now["way"], now["washer"], room, rules())
        return brought | {"depth": seat.depth} | read


def counterbore(
    *,
    way: str = HEAD,
    depth: float | str | None = None,
    screw: str = THREE,
    measured: bool = False,
    socket: float | str | None = None,
    washer: bool = False,
    thickness: float | str | None = None,
    edge: float | str | None = None,
    system: str | None = None,
    palette: str | None = None,
    projector: bool = False,
) -> Counterbore:
    """Show a screw in its counterbore, and whether the wrench comes down to its head.

    Opens on a hex cap screw in a counterbore that was cut for its head: the wrench socket does
    not go in. There are three ways out.

    Parameters
    ----------
    way : str
        ``"cut for the head"``, ``"larger counterbore"``, ``"socket head screw"`` or
        ``"raised boss"``.
    depth : float or str, optional
        Depth of the cut [mm], or shop text; the usual one for the screw and the way out if not
        given.
    screw : str
        One of the cider mill's screws; it brings its plate.
    measured : bool
        Whether the wrench socket was measured.
    socket : float or str, optional
        Its outside diameter [mm], or shop text.
    washer : bool
        Whether a washer lies under the head.
    thickness, edge : float or str, optional
        Thickness of the plate, and from the hole's axis to its edge [mm], or shop text.
    system : {"inch", "metric"}, optional
        Unit system named first; the house rule ``display.system`` if not given.
    palette : {"light", "dark", "print"}, optional
        Colors; the live view follows the page if not given.
    projector : bool
        Large type and heavy lines.

    Returns
    -------
    Counterbore
        The bench; the last line of a cell shows it.

    Raises
    ------
    SeatworkError
        If a value cannot be read or is out of range, or no floor or web is left.

    Examples
    --------
    >>> bench = counterbore()
    >>> bench.readouts()[0]
    ['Head', '0.010 in (0.25 mm) below']
    >>> bench.set(way="larger counterbore").result.lies.goes_in
    True
    """
    chosen = {"depth": depth, "socket": socket, "thickness": thickness, "edge": edge}
    return Counterbore(
        system=system,
        palette=palette,
        projector=projector,
        way=way,
        screw=screw,
        measured=measured,
        washer=washer,
        **{name: value for name, value in chosen.items() if value is not None},
    )


class _Shown:
    """The scene of the drawings room, told by the bench's result."""

    def __init__(self, result: Outcome, look: Look) -> None:
        self._system = look.system
        self._scene = CounterboreView(_part(result, look.system), look)
        self.draw = self._scene.draw

    def move(self, result: Outcome) -> str:
        """Show another result; return the text."""
        return self._scene.move(_part(result, self._system))

    @property
    def ghosts(self) -> Sequence[Artist]:
        """Outlines that may stay for comparison."""
        return self._scene.ghosts


def _part(one: Outcome, system: str) -> Tightened:
    """Give the drawing its sizes and its words."""
    key = one.socket is None
    screw, ring = (one.job.cylinder if key else one.job.hexagon), one.job.ring
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
            key=screw.facts["hex_socket"].value if key else None,
        ),
        amount=one.lies.amount,
        pilot=one.pilot,
        washer=Ring(
            outside=ring.outside_diameter,
            hole=ring.hole_diameter or screw.thread.diameter,
            thickness=ring.thickness or 0.0,
        )
        if one.ringed
        else None,
        boss=one.boss,
        socket=one.socket,
        rests_at=one.lies.rests_at,
        heading=words.heading(one, system),
        second=words.second(one, system),
        cutting=words.cutting(one, system),
        tightening=words.tightening(one, system),
        text=words.told(one, system),
    )


def _room(job: Job, values: Values) -> float:
    """Give the counterbore that the wrench socket needs [mm]: the list's, or by measure."""
    if not values["measured"]:
        return job.room.counterbore_diameter
    return wrench_socket(job.hexagon, outside_diameter=values["socket"]).counterbore_diameter


def _socket(values: Values, room: float, held: HouseRules) -> float:
    """Give the socket's outside diameter [mm]: measured, or what the list's room is for."""
    return float(values["socket"]) if values["measured"] else room - held.number(WRENCH)


def _across(one: Outcome, way: str) -> tuple[str, ...]:
    """Tell where the diameter of a seat comes from that no socket has to go into."""
    if way == BORE:
        return ()
    found = listing(one.job, way, one.ringed)
    if found is not None:
        about = f"Counterbore, {found.standard}, {found.series}; depth: {found.depth_basis}"
        return (fact_line(about, found.source, found.confirmed),)
    corners = one.job.hexagon
    source, confirmed = corners.source, corners.confirmed
    about = f"{corners.name}, across corners; no list gives its counterbore, so the room round it"
    return (
        fact_line(f"{about} is that of the wrench clearance", source, confirmed),
        rule_line(WRENCH),
    )
