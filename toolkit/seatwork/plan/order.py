"""A work order, and the operations it is made of: tool, speed, feed, oil and load."""

from dataclasses import dataclass, replace

from seatwork.plan.bounds import Bounds
from seatwork.plan.loads import load_for
from seatwork.plan.records import Operation
from seatwork.plan.sentences import Show
from seatwork.quantities import INCH, Length
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop.choosing.choosing import Choice, Choices, Where, choose
from seatwork.shop.choosing.feeds import feed_for
from seatwork.shop.choosing.fitting import Round
from seatwork.shop.choosing.passing import passed_over, to_grind
from seatwork.shop.choosing.reasons import OUTLOOK
from seatwork.shop.choosing.spindles import Spindle, spindle_for
from seatwork.shop.lists.machines import ShopMachine
from seatwork.shop.lists.materials import Material
from seatwork.shop.shop import Shop
from seatwork.units import show_note

HALF_TENTH = 0.05
EVEN = 1e-6  # mm
LITTLE = 0.001 * INCH  # mm over the low limit; a regrind takes off more (judgement, no source)
FINE = {"inch": 4, "metric": 3}
Seat = Countersink | Counterbore | Spotface | Chamfer


@dataclass(frozen=True, slots=True, kw_only=True)
class Order:
    """What is cut, on what, and what is known of the part.

    Parameters
    ----------
    shop : Shop
        The shop's lists and rules.
    material : Material
        What is cut.
    machine : ShopMachine
        On what.
    system : {"inch", "metric"}
        System of the note.
    thickness : float or None
        Thickness of the part at the hole [mm].
    edge : float or None
        Distance from the hole's center to the nearest edge [mm].
    engagement : float or None
        Thread the screw is to engage beyond the part [mm].
    show : callable
        Writes a ``Length`` or an ``Angle`` for people.
    slope : float or None
        Slope of the raw pad, from square to the hole [deg].
    thread_below : float or None
        Full thread in the part below, where its hole is blind [mm].
    """

    shop: Shop
    material: Material
    machine: ShopMachine
    system: str
    thickness: float | None
    edge: float | None
    engagement: float | None
    show: Show
    slope: float | None = None
    thread_below: float | None = None

    def show_length(self, length: float) -> str:
        """Write a length [mm] for people."""
        return self.show(Length(length))

    def choices(self, seat: Seat, hole_diameter: float, bore: float | None = None) -> Choices:
        """Rank the shop's cutters for a seat, one in a counterbore if `bore` [mm] is given."""
        where = Where(
            material=self.material.name,
            machine=self.machine.name,
            thickness=self.thickness,
            hole_diameter=hole_diameter,
            bore_diameter=bore,
            system=self.system,
        )
        return choose(seat=seat, where=where, shop=self.shop)


@dataclass(frozen=True, slots=True, kw_only=True)
class Cutting:
    """Sizes of a cut, for its speed, feed and torque.

    Parameters
    ----------
    operation : str
        ``drill``, ``countersink``, ``chamfer``, ``counterbore``, ``spotface``, ``center drill``,
        ``ream``.
    diameter, hole_diameter : float
        Largest and smallest diameter that cut [mm].
    included_angle : float
        Included angle of the lips [deg]; 180 for flat ones.
    flutes : int
        Number of lips.
    tool_material : str
        What the lips are made of.
    feed_diameter : float or None
        Diameter the feed goes by, where a slender pilot bears less than the widest cut [mm].
    """

    operation: str
    diameter: float
    hole_diameter: float
    included_angle: float = 118.0
    flutes: int = 2
    tool_material: str = "hss"
    feed_diameter: float | None = None


def drilling(order: Order, *, diameter: float, name: str, why: str) -> Operation:
    """Return the drilling of a hole with a twist drill."""
    size = order.show(Length(diameter))
    tool = f"drill {name}, {size}" if name else f"drill under {size} and ream or bore to size"
    made = operation(
        order,
        Cutting(operation="drill", diameter=diameter, hole_diameter=0.0),
        name="drill",
        why=why,
        tool=tool,
    )
    near = _size(diameter, order.system)
    return replace(made, short=_drill(name, near))


def _size(diameter: float, system: str) -> str:
    """Write a drill's diameter [mm], in inches to four places where it has them."""
    thousandths = diameter / INCH * 1000
    odd = system == "inch" and abs(thousandths - round(thousandths)) > HALF_TENTH
    return show_note(diameter, system, 4 if odd else None)


def _drill(name: str, near: str) -> str:
    """Name a drill with its size, where the name is not its size."""
    if not name:
        return f"under {near}, then bore"
    return name if near in name else f"{name} ({near})"


def seat_cutting(
    order: Order,
    seat: Seat,
    *,
    name: str,
    why: str,
    hole_diameter: float,
    bore: float | None = None,
    bounds: Bounds | None = None,
) -> tuple[Operation, Choice | None]:
    """Return the cutting of a seat with the shop's best cutter, or with what to get.

    A flat seat takes a cutter anywhere inside its `bounds` where none has its own size.
    """
    own = order.choices(_on_hole(seat, hole_diameter), hole_diameter, bore)
    choices = _inside(own, seat, hole_diameter, bounds, order)
    best, wanted = choices.best, _round(_on_hole(seat, hole_diameter), hole_diameter)
    cut, passed = _cut_of(seat, name, hole_diameter, best), passed_over(choices, wanted)
    if best is None:
        made = operation(order, cut, name=name, why=why, tool=choices.would_do, in_shop=False)
        grind = to_grind(choices, wanted, order.shop.rules, order.system)
        return replace(made, passed=passed, grind=grind), None
    found = [reason.sentence for reason in best.reasons_for if reason.about != OUTLOOK]
    body = best.tool.cutter.body_diameter
    if choices is not own and body is not None and bounds is not None:
        found.insert(0, _inside_words(body, bounds, order))
    reasons = "; ".join(found[:2])
    made = operation(order, cut, name=name, why=why, tool=best.tool.name, tool_reason=reasons)
    taper = best.tool.held.morse_taper is not None
    return replace(made, passed=passed, taper_shank=taper), best


def _inside(
    choices: Choices, seat: Seat, hole_diameter: float, bounds: Bounds | None, order: Order
) -> Choices:
    """Return the choices for a flat seat at its least, where a cutter lies inside its limits."""
    if choices.best is not None or bounds is None or isinstance(seat, Chamfer):
        return choices
    if not bounds.least > hole_diameter:
        return choices
    smallest = replace(seat, diameter=bounds.least, hole_diameter=hole_diameter)
    least = order.choices(smallest, hole_diameter)
    body = least.best.tool.cutter.body_diameter if least.best else None
    inside = body is not None and bounds.least - EVEN <= body <= bounds.greatest + EVEN
    return least if inside else choices


def _inside_words(body: float, bounds: Bounds, order: Order) -> str:
    """Say how far a cutter lies over the low limit, which is where wear takes it."""
    over = show_note(max(body - bounds.least, 0.0), order.system, FINE[order.system])
    shown = f"its body, {order.show_length(body)}, lies inside the limits"
    if body - bounds.least < LITTLE:
        return (
            f"{shown}, and only {over} over the low one: wear or a regrind takes it under; gage "
            "the first seat and every one after"
        )
    return f"{shown}, {over} over the low one, which is what wear may take"


def _on_hole(seat: Seat, hole_diameter: float) -> Seat:
    """Return the seat on the hole that is there when it is cut; a chamfer has no hole."""
    return seat if isinstance(seat, Chamfer) else replace(seat, hole_diameter=hole_diameter)


def _round(seat: Seat, hole_diameter: float) -> Round:
    """Return a seat as a tool meets it: a chamfer as the cone it is at its hole."""
    return seat.at_hole(hole_diameter) if isinstance(seat, Chamfer) else seat


def operation(
    order: Order,
    cut: Cutting,
    *,
    name: str,
    why: str,
    tool: str,
    in_shop: bool = True,
    tool_reason: str = "",
) -> Operation:
    """Return an operation with its spindle speed, feed, oil and load."""
    spindle = _spindle(order, cut)
    feed = feed_for(
        cut.operation, diameter=cut.feed_diameter or cut.diameter, rules=order.shop.rules
    )
    speed = spindle.step.spindle_speed if spindle else None
    load = None
    if speed is not None:
        load = load_for(
            diameter=cut.diameter,
            hole_diameter=cut.hole_diameter,
            included_angle=cut.included_angle,
            feed=feed.value,
            flutes=cut.flutes,
            spindle_speed=speed,
            material=order.material,
            machine=order.machine,
            rules=order.shop.rules,
        )
    return Operation(
        name=name,
        why=why,
        tool=tool,
        in_shop=in_shop,
        tool_reason=tool_reason,
        spindle=spindle,
        feed=feed.value,
        feed_source=feed.source,
        oil=order.material.cutting_oil,
        oil_note=order.material.oil_note,
        load=load.stall if load else None,
        power=load.power if load else None,
    )


def by_hand(name: str, why: str, tool: str = "", short: str = "") -> Operation:
    """Return an operation that needs no spindle speed of its own."""
    return Operation(name=name, why=why, tool=tool, short=short)


def _spindle(order: Order, cut: Cutting) -> Spindle | None:
    """Work out the spindle speed; None where the shop has no cutting speed for the material."""
    if order.material.drill_speed_low is None:
        return None
    return spindle_for(
        cut.operation,
        diameter=cut.diameter,
        hole_diameter=cut.hole_diameter,
        material=order.material,
        machine=order.machine,
        rules=order.shop.rules,
        tool_material=cut.tool_material,
    )


def _cut_of(seat: Seat, operation: str, hole_diameter: float, best: Choice | None) -> Cutting:
    cutter = best.tool.cutter if best else None
    cone = seat.at_hole(hole_diameter) if isinstance(seat, Chamfer) else seat
    angle = cone.included_angle if isinstance(cone, Countersink) else 180.0
    return Cutting(
        operation=operation,
        diameter=cone.diameter,
        hole_diameter=hole_diameter,
        included_angle=angle,
        flutes=(cutter.flutes if cutter else None) or 1,
        tool_material=cutter.material if cutter else "hss",
    )
