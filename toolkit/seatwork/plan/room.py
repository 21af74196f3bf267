"""Room in a counterbore: the head, the wrench socket, and the pilot that makes it possible."""

from collections.abc import Iterator

from seatwork import hardware
from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.plan.order import Order
from seatwork.plan.records import Check
from seatwork.plan.sentences import Show
from seatwork.quantities import Length
from seatwork.seats import Counterbore, Spotface
from seatwork.seats.pilots import Pilot, SolidTool, pilot_for
from seatwork.shop.choosing.fitting import LOOSEST_PILOT

BELOW = "head below the face"
ROUNDING = 1e-6  # mm; a list in millimeters and a note in inches may differ by the note's rounding
SOLID = ("counterbore", "spotface cutter")


def check_room(seat: Counterbore, screw: Screw, order: Order) -> tuple[Check, ...]:
    """Look at whether head and wrench socket go in, and how deep the head then lies.

    Parameters
    ----------
    seat : Counterbore
        The counterbore.
    screw : Screw
        What goes in.
    order : Order
        With the shop, and how sizes are written.
    """
    return (_check_head(seat, screw, order.show), *_check_below(seat, screw, order.show))


def check_passes(hole: float, screw: Screw | None, order: Order) -> tuple[Check, ...]:
    """Look at whether the screw goes through a plain hole [mm], and with what room."""
    if screw is None:
        return ()
    major = screw.thread.diameter
    if hole < major - ROUNDING:
        sizes = f"{order.show_length(hole)}, {order.show_length(major)}"
        return (
            Check(
                name="screw in the hole",
                verdict="stop",
                sentence=f"The hole is smaller than the screw: {sizes}.",
                question="A larger hole, another screw, or is the hole to be tapped?",
            ),
        )
    return () if hole > major + ROUNDING else (_no_room(screw, order),)


def _no_room(screw: Screw, order: Order) -> Check:
    """Say that a hole as large as its screw leaves no clearance, and what a list would give."""
    sentence = f"The hole is as large as the screw, {order.show_length(screw.thread.diameter)}: "
    sentence += "no clearance. Is a fitted screw meant?"
    try:
        usual = hardware.clearance_hole(screw.thread)
        sentence += f" {usual.standard} gives {order.show_length(usual.diameter)}."
    except SeatworkError:
        pass  # the list has no such size: the question stands
    return Check(name="screw in the hole", verdict="look", sentence=sentence)


def check_seated(seat: Spotface, screw: Screw | None, order: Order) -> tuple[Check, ...]:
    """Look at whether the whole head comes to lie on the spotface, corners and all."""
    across = (screw.across_corners or screw.head_diameter) if screw else None
    if screw is None or across is None:
        return ()
    corners = " across corners" if screw.across_corners else ""
    face = f"The spotface, {order.show_length(seat.diameter)},"
    head = f"the head, {order.show_length(across)}{corners}"
    name, fits = "head on the spotface", across <= seat.diameter + ROUNDING
    if fits:
        sentence = f"{face} takes {head}."
        return (Check(name=name, verdict="holds", sentence=sentence),)
    return (
        Check(
            name=name,
            verdict="stop",
            sentence=f"{face} is smaller than {head}: it would hang over on the rough face.",
            question="A larger spotface, or another screw?",
        ),
    )


def check_pilot(seat: Counterbore, screw: Screw | None, order: Order) -> Check:
    """Look at whether a fixed pilot will do, or only an interchangeable one."""
    tools = [
        SolidTool(diameter=cutter.body_diameter, pilot_diameter=cutter.pilot_diameter)
        for cutter in order.shop.cutters
        if cutter.kind in SOLID and cutter.body_diameter and cutter.pilot_diameter
    ]
    clearance = order.shop.rules.number("pilot.clearance")
    found = pilot_for(
        seat,
        clearance=clearance,
        greatest_clearance=max(LOOSEST_PILOT, clearance),
        solid_tools=tools,
    )
    return _text_of(found, seat, screw, order)


def _text_of(found: Pilot, seat: Counterbore, screw: Screw | None, order: Order) -> Check:
    size = order.show_length(found.diameter)
    if found.kind == "solid":
        sentence = f"The list has this counterbore with a fixed pilot of {size}."
        return Check(name="pilot", verdict="holds", sentence=sentence)
    bore, hole = order.show_length(seat.diameter), order.show_length(seat.hole_diameter)
    boss = f" {_boss(screw, order.show)}" if screw and screw.across_flats else ""
    return Check(
        name="pilot",
        verdict="look",
        sentence=f"No tool in the list with a fixed pilot cuts {bore} on a hole of {hole}: only an "
        f"interchangeable pilot of {size} will do. Tighten what holds it.{boss}",
    )


def _check_head(seat: Counterbore, screw: Screw, show: Show) -> Check:
    if screw.across_flats is None:
        across = screw.head_diameter or screw.sharp_diameter or screw.edge_diameter or 0.0
        name, what = "head in the counterbore", "head"
    else:
        across = hardware.wrench_socket(screw).counterbore_diameter
        name, what = "wrench room", "room a wrench socket needs (measure yours)"
    fits = across <= seat.diameter + ROUNDING
    verdict = "goes in" if fits else "does not go in"
    text = f"The {what}, {show(Length(across))}, {verdict}."
    if fits:
        return Check(name=name, verdict="holds", sentence=text)
    boss = f" {_boss(screw, show)}" if screw.across_flats else ""
    return Check(
        name=name,
        verdict="stop",
        sentence=f"{_itself(seat, screw, show)}{text} A larger counterbore on this hole wants an "
        f"interchangeable pilot.{boss}",
        question=f"The counterbore, {show(Length(seat.diameter))}, is too small for the {what}, "
        f"{show(Length(across))}: a larger one, another screw, or a raised boss?",
    )


def _itself(seat: Counterbore, screw: Screw, show: Show) -> str:
    """Say first that not even the hexagon goes in, where it does not."""
    corners = screw.across_corners or 0.0
    if corners <= seat.diameter + ROUNDING:
        return ""
    return f"The head itself does not go in: {show(Length(corners))} across corners. "


def _boss(screw: Screw, show: Show) -> str:
    """Name the other ways out: a boss that needs no counterbore, or a socket screw."""
    corners = show(Length(screw.across_corners or 0.0))
    return (
        "The other ways out: a raised boss, spotfaced to at least the corners of the head, "
        f"{corners}, where the wrench socket comes down from outside; or a socket head cap screw."
    )


def _check_below(seat: Counterbore, screw: Screw, show: Show) -> Iterator[Check]:
    height = screw.head_height
    if height is None:
        return
    below = seat.depth - height
    if below >= 0:
        sentence = f"The greatest head lies {show(Length(below))} below the face."
        yield Check(name=BELOW, verdict="holds", sentence=sentence)
        return
    sentence = f"The greatest head stands {show(Length(-below))} proud"
    if screw.across_corners is not None:  # a shallow counterbore may only seat a hexagon head
        yield Check(name=BELOW, verdict="look", sentence=f"{sentence}: is that wanted?")
        return
    asks = "Is that wanted, or which depth?"
    yield Check(name=BELOW, verdict="stop", sentence=f"{sentence}.", question=asks)
