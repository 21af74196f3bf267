"""Which cutters fit a seat: angle, body, nose, pilot and shank; sets put together."""

from collections.abc import Iterator
from dataclasses import dataclass

from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop.house.house_rules import HouseRules
from seatwork.shop.lists.cutters import CONES, SeatCutter
from seatwork.shop.lists.machines import ShopMachine
from seatwork.shop.shop import Shop
from seatwork.units import show_angle, show_both

Seat = Countersink | Counterbore | Spotface | Chamfer
Round = Countersink | Counterbore | Spotface

CROSS_HOLE, GREATEST_LEG = "cross-hole countersink", "crosshole.greatest_leg"
SAME_ANGLE = 0.5
UNDERSIZE = 0.05
OVERSIZE = {"Counterbore": 0.25, "Spotface": 1.6}
LOOSEST_PILOT = 0.127 + 1e-6


@dataclass(frozen=True, slots=True, kw_only=True)
class Assembly:
    """A cutter ready to hold: with its pilot and its holder or stop cage.

    Parameters
    ----------
    cutter : SeatCutter
        What cuts.
    pilot : SeatCutter or None
        Removable pilot in it.
    holder : SeatCutter or None
        Holder of a head, or stop cage.
    """

    cutter: SeatCutter
    pilot: SeatCutter | None = None
    holder: SeatCutter | None = None

    @property
    def pilot_diameter(self) -> float | None:
        """Diameter of the pilot, fixed or removable [mm]; None without one."""
        return self.pilot.body_diameter if self.pilot else self.cutter.pilot_diameter

    @property
    def name(self) -> str:
        """Names of its parts."""
        parts = (self.cutter, self.pilot, self.holder)
        return " + ".join(part.name for part in parts if part is not None)

    @property
    def held(self) -> SeatCutter:
        """The part whose shank goes into the machine."""
        return self.holder or self.cutter


def assemblies(shop: Shop, hole_diameter: float) -> Iterator[Assembly]:
    """Every cutter of the shop, sets put together for a hole [mm]."""
    for cutter in shop.cutters:
        if cutter.kind in ("pilot", "holder", "stop cage"):
            continue
        pilots = [_best_pilot(shop, cutter, hole_diameter)] if cutter.set else [None]
        holders = _holders(shop, cutter) or [None]
        for pilot in pilots:
            for holder in holders:
                yield Assembly(cutter=cutter, pilot=pilot, holder=holder)


def _best_pilot(shop: Shop, cutter: SeatCutter, hole_diameter: float) -> SeatCutter | None:
    """Largest pilot of the set that goes into the hole."""
    fitting = [
        part
        for part in shop.cutters
        if part.kind == "pilot" and part.set == cutter.set and _body(part) < hole_diameter
    ]
    return max(fitting, key=_body, default=None)


def _holders(shop: Shop, cutter: SeatCutter) -> list[SeatCutter | None]:
    if cutter.threaded:
        return [
            part
            for part in shop.cutters
            if part.kind == "stop cage" and part.takes.casefold() == cutter.shank.casefold()
        ]
    return [
        part
        for part in shop.cutters
        if cutter.set and part.kind == "holder" and part.set == cutter.set
    ]


def misfit(tool: Assembly, seat: Round, machine: ShopMachine, system: str = "inch") -> str | None:
    """Say the first thing that keeps a tool from cutting a seat; None if it fits."""
    return (
        shape_misfit(tool, seat, system)
        or pilot_misfit(tool, seat, system)
        or _shank_misfit(tool, machine, system)
        or _stop_misfit(tool, seat, machine)
    )


def shape_misfit(tool: Assembly, seat: Round, system: str = "inch") -> str | None:
    """Say what keeps the shape of a tool from a seat: angle, body, nose; None if it has it."""
    shape = _cone_misfit if isinstance(seat, Countersink) else _flat_misfit
    return shape(tool, seat, system)


def out_of_place(
    tool: Assembly,
    seat: Round,
    rules: HouseRules,
    *,
    bore: float | None,
    system: str = "inch",
) -> str | None:
    """Say what keeps a tool that fits from being taken: its kind of work, or a counterbore.

    Parameters
    ----------
    tool : Assembly
        The tool.
    seat : Countersink, Counterbore or Spotface
        What to cut.
    rules : HouseRules
        The house rules in force.
    bore : float or None
        Counterbore in whose floor the seat lies [mm].
    system : {"inch", "metric"}
        Which unit system stands first.
    """
    body = _body(tool.cutter)
    if bore is not None and not body < bore:
        across = show_both(bore, system)
        return f"its body, {show_both(body, system)}, does not go into the counterbore, {across}"
    leg = (seat.diameter - seat.hole_diameter) / 2
    most = rules.number(GREATEST_LEG)
    if tool.cutter.kind == CROSS_HOLE and isinstance(seat, Countersink) and leg > most + 1e-6:
        return (
            f"it is for burrs and chamfers of a leg up to {show_both(most, system)} "
            f"(house rule {GREATEST_LEG}), and this one has {show_both(leg, system)}"
        )
    return None


def _cone_misfit(tool: Assembly, seat: Round, system: str) -> str | None:
    cutter, angle = tool.cutter, tool.cutter.included_angle
    if cutter.kind not in CONES or angle is None or not isinstance(seat, Countersink):
        return f"{_one(cutter.kind)} cuts no cone"
    if not abs(angle - seat.included_angle) <= SAME_ANGLE:
        return f"its angle is {show_angle(angle)}, the seat has {show_angle(seat.included_angle)}"
    if not _body(cutter) >= seat.diameter:
        return f"its body, {show_both(_body(cutter), system)}, is smaller than the seat"
    if not cutter.nose_diameter < seat.hole_diameter:
        return f"its nose, {show_both(cutter.nose_diameter, system)}, does not go into the hole"
    return None


def _flat_misfit(tool: Assembly, seat: Round, system: str) -> str | None:
    cutter = tool.cutter
    if cutter.kind in CONES:
        return f"{_one(cutter.kind)} leaves no flat"
    body, over = show_both(_body(cutter), system), _body(cutter) - seat.diameter
    if not over >= -UNDERSIZE:
        return f"its body, {body}, is smaller than the seat"
    if not over <= OVERSIZE[type(seat).__name__]:
        return f"its body, {body}, is {show_both(over, system)} larger than the seat"
    return None


def pilot_misfit(tool: Assembly, seat: Round, system: str = "inch") -> str | None:
    """Say what keeps the pilot of a tool out of the hole; None if it runs in it."""
    if tool.cutter.pilot == "none":
        return None
    pilot = tool.pilot_diameter
    if pilot is None:
        return f"no pilot of set {tool.cutter.set} goes into the hole"
    if not pilot < seat.hole_diameter:
        return f"its pilot, {show_both(pilot, system)}, does not go into the hole"
    if not seat.hole_diameter - pilot <= LOOSEST_PILOT:
        return (
            f"its pilot, {show_both(pilot, system)}, hangs loose in the hole "
            f"by {show_both(seat.hole_diameter - pilot, system)}"
        )
    return None


def _shank_misfit(tool: Assembly, machine: ShopMachine, system: str) -> str | None:
    held = tool.held
    if tool.cutter.threaded and tool.holder is None:
        return f"its shank, {held.shank}, needs a stop cage and the list has none for it"
    if tool.cutter.set and not tool.cutter.shank and tool.holder is None:
        return f"the list has no holder for set {tool.cutter.set}"
    if tool.cutter.kind in ("end mill", "chamfer mill") and not machine.collets:
        return f"it is held in a collet, and the {machine.name} has none"
    taper = held.morse_taper
    if taper is not None and (machine.morse_taper is None or taper > machine.morse_taper):
        return f"its shank is {held.shank}, and the {machine.name} does not take it"
    size = held.shank_diameter
    if size is not None and not (machine.chuck is not None and size <= machine.chuck):
        return f"its shank, {show_both(size, system)}, is too thick for the {machine.name}"
    return None


def _stop_misfit(tool: Assembly, seat: Round, machine: ShopMachine) -> str | None:
    """Keep to one stop: the machine's own, or a cage; several bare lips in a hand drill grab."""
    caged = tool.holder is not None and tool.holder.kind == "stop cage"
    if caged and machine.depth_stop is not None:
        return f"its cage would be a second stop: the {machine.name} has its own, and one decides"
    many = (tool.cutter.flutes or 0) > 1
    if machine.kind == "hand drill" and many and not caged and isinstance(seat, Countersink):
        return f"{tool.cutter.flutes} bare lips grab in a hand drill: it wants a stop cage"
    return None


def _body(part: SeatCutter) -> float:
    return part.body_diameter or 0.0


def _one(kind: str) -> str:
    return f"an {kind}" if kind[0] in "aeiou" else f"a {kind}"
