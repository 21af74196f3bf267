"""The plan of a print note: hole by hole, from what was said to what is done."""

from dataclasses import replace

from seatwork import notes
from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.plan import sentences
from seatwork.plan.aims import aimed
from seatwork.plan.bands import check_band
from seatwork.plan.beside import with_beside
from seatwork.plan.centers import center_plan
from seatwork.plan.holes import hole_and_seats
from seatwork.plan.machine import check_machine
from seatwork.plan.naming import rules_of
from seatwork.plan.open import assumptions_of, questions_of
from seatwork.plan.order import Order, by_hand
from seatwork.plan.place import place_of
from seatwork.plan.plans import Plan, SeatPlan
from seatwork.plan.resolving import screw_for, stated
from seatwork.plan.sentences import shower, told_in
from seatwork.plan.setups import setups_of
from seatwork.plan.sides import by_side
from seatwork.plan.spots import at_spots, numbered
from seatwork.plan.starting import check_start
from seatwork.plan.threads import label
from seatwork.plan.wear import wear_of
from seatwork.quantities import Angle, Length
from seatwork.seats.spotfaces import STEEPEST
from seatwork.shop.shop import Shop

AT_MACHINE = {
    "drill press": "drill_press",
    "mill": "mill",
    "lathe": "lathe",
    "hand drill": "hand_drill",
}
AT_SEAT = {"counterbore": "counterbore", "spotface": "spotface", "edge": "sheet"}
THIN = 3.2  # mm; sheet rather than plate (common practice, no source)


def make_plan(
    callout: notes.Callout | str,
    *,
    screw: str | None = None,
    material: str,
    machine: str,
    shop: Shop | None = None,
    thickness: float | None = None,
    edge: float | None = None,
    engagement: float | None = None,
    slope: float | None = None,
    thread_below: float | None = None,
) -> Plan:
    """Plan the cutting of everything a note asks for.

    Parameters
    ----------
    callout : Callout or str
        The note, as read or as typed.
    screw : str, optional
        The screw, where the note does not name it.
    material, machine : str
        Names in the shop's lists.
    shop : Shop, optional
        The shop; the workbook folder's, or the package's own.
    thickness : float, optional
        Thickness of the part at the hole [mm], for knife edge and floor.
    edge : float, optional
        Distance from the hole's center to the nearest edge [mm].
    engagement : float, optional
        Thread the screw is to engage beyond the part [mm]; by house rule if not given.
    slope : float, optional
        Slope of a raw pad, from square to the hole [deg], for a spotface; `thickness` is then
        that of the flange at the low side of the ring.
    thread_below : float, optional
        Depth of full thread in the part below, where it is blind [mm]: the screw must not bottom.

    Returns
    -------
    Plan
        Sizes with limits and sources, operations in order, stops, readings, checks, cautions.

    Raises
    ------
    SeatworkError
        If note and screw disagree, a screw is named twice differently, or something needed
        is missing: the sentence is the question to ask.

    Examples
    --------
    >>> made = make_plan("4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD",
    ...                  material="6061 aluminum", machine="bench drill press")
    >>> [step.name for step in made.seats[0].operations]
    ['drill', 'countersink', 'deburr the far side']
    """
    callout = callout if isinstance(callout, notes.Callout) else notes.read(callout)
    sizes = {
        "thickness": thickness,
        "edge": edge,
        "engagement": engagement,
        "thread_below": thread_below,
    }
    with told_in(callout.system):
        return _planned(callout, screw, (material, machine), shop or Shop.at(), sizes, slope)


make = make_plan
"""The same by its short name inside the room."""


def _planned(
    callout: notes.Callout,
    screw: str | None,
    cut: tuple[str, str],
    shop: Shop,
    sizes: dict[str, float | None],
    slope: float | None,
) -> Plan:
    groups = tuple(aimed(group, shop.rules) for group in callout.groups())
    screws = [screw_for(group, screw) for group in groups]
    system = _system(callout, screws)
    order = Order(
        shop=shop,
        material=shop.material(cut[0]),
        machine=shop.machine(cut[1]),
        system=system,
        show=shower(system),
        slope=_sloped(slope),
        **{name: _known(name, size) for name, size in sizes.items()},
    )
    found = [
        at_spots(_group(group, wanted, order), group[0].count)
        for group, wanted in zip(groups, screws, strict=True)
    ]
    seats = with_beside(callout, [_looked_over(seat, order) for seat in numbered(found)])
    by_feature = [one for group, one in zip(groups, screws, strict=True) for _ in group]
    assumptions = assumptions_of(callout, by_feature)
    return Plan(
        callout=replace(callout, system=system),
        material=order.material.name,
        machine=order.machine.name,
        seats=seats,
        setups=setups_of(seats, order),
        assumed=assumptions,
        questions=questions_of(callout, by_feature, seats),
        cautions=_cautions(seats, order),
        rules=rules_of(seats, assumptions, shop.rules),
        thickness=order.thickness,
    )


def _system(callout: notes.Callout, screws: list[Screw | None]) -> str:
    """Return the system of a note; of its screw, where the note has no size of its own."""
    sized = any(
        isinstance(getattr(feature, name, None), notes.Size)
        for feature in callout.features
        for name in ("diameter", "depth", "leg", "size")
    )
    named = next((screw.thread.system for screw in screws if screw), callout.system)
    return callout.system if sized else named


def _looked_over(seat: SeatPlan, order: Order) -> SeatPlan:
    """Return a seat with what the machine, its stop and wear have to do with it."""
    looked = (*check_machine(seat, order), *check_band(seat, order), *check_start(seat, order))
    checks = (*seat.checks, *looked)
    return replace(seat, checks=checks, advice=(*seat.advice, *wear_of(seat)))


def _sloped(slope: float | None) -> float | None:
    """Refuse a slope of a pad that is none."""
    if slope is not None and not 0 <= slope < STEEPEST:
        raise SeatworkError(
            Angle(slope), "that is no slope of a pad", "measure it from square to the hole"
        )
    return slope


def _known(name: str, size: float | None) -> float | None:
    """Refuse a size of the part that is no length."""
    if size is not None and not 0 < size < float("inf"):
        raise SeatworkError(
            Length(size), f"that is no {name} of a part", "give one above zero, or none"
        )
    return size


def _group(group: tuple[notes.Feature, ...], screw: Screw | None, order: Order) -> list[SeatPlan]:
    for thread in (one for one in group if isinstance(one, notes.Thread)):
        label(thread)  # a pipe thread is refused before its drill is looked for
    drilled = next((one for one in group if isinstance(one, notes.Counterdrill)), None)
    if drilled is not None:
        return _counterdrills(drilled, group, order)
    if all(isinstance(one, notes.EdgeBreak) for one in group):
        return [_edge_plan(one, order) for one in group if isinstance(one, notes.EdgeBreak)]
    return hole_and_seats(group, place_of(group, screw=screw, order=order), order)


def _counterdrills(
    note: notes.Counterdrill, group: tuple[notes.Feature, ...], order: Order
) -> list[SeatPlan]:
    """Plan a center in each end where the note asks for both."""
    other = next((one for one in group if isinstance(one, notes.Thread | notes.Counterbore)), None)
    if other is not None:
        raise SeatworkError(
            "CENTER DRILL",
            "it stands with a thread or a counterbore on one hole, and a center hole is planned "
            "alone",
            "ask whether it only spots the drill; if so, leave it out",
        )
    ends = list(by_side((note,)))
    made = [_counterdrill(note, group, order) for _ in ends]
    if len(ends) == 1:
        return made
    turn = by_hand("turn the part over", f"{sentences.TURN['lathe']} {sentences.FACE_END}")
    second = replace(
        made[1],
        title=f"{made[1].title}, far end",
        operations=(turn, *made[1].operations),
        stops=tuple(replace(one, touch=f"{one.touch}, touched off anew") for one in made[1].stops),
    )
    return [replace(made[0], title=f"{made[0].title}, near end"), second]


def _counterdrill(
    note: notes.Counterdrill, group: tuple[notes.Feature, ...], order: Order
) -> SeatPlan:
    if note.meaning != "center drill":
        raise SeatworkError(
            "C'DRILL" if note.meaning == "ask" else "counterdrill",
            "it can mean a center drill or a counterdrill, and only a center hole is planned here",
            "ask which; on a shaft end write CENTER DRILL",
        )
    return center_plan(note, group, order)


def _edge_plan(note: notes.EdgeBreak, order: Order) -> SeatPlan:
    sizes = (stated(note.size, "edge break"),) if note.size else ()
    name = "break the edges" if note.edges else "take off the burrs"
    return SeatPlan(
        title=name,
        kind="edge",
        count=note.count,
        sizes=sizes,
        operations=(
            by_hand(name, sentences.BREAK_EDGE, "file, scraper or deburring tool", "by hand"),
        ),
        advice=(sentences.NO_EDGE_MARK,),
    )


def _cautions(seats: tuple[SeatPlan, ...], order: Order) -> tuple[str, ...]:
    names = ["before", AT_MACHINE[order.machine.kind]]
    if order.machine.kind == "drill press":
        names.insert(1, "belt")
    names += [AT_SEAT[seat.kind] for seat in seats if seat.kind in AT_SEAT]
    if order.thickness is not None and order.thickness <= THIN:
        names.append("sheet")
    names.append("chips")
    if not order.material.dry:
        names.append("coolant")
    if any(step.taper_shank for seat in seats for step in seat.operations):
        names.append("taper_shank")
    if any(seat.kind == "spotface" for seat in seats):
        names.append("bolt")
    names += _by_step(seats)
    return tuple(dict.fromkeys(names))


def _by_step(seats: tuple[SeatPlan, ...]) -> list[str]:
    """Name the cautions that belong to turning over, tapping and back spotfacing."""
    done = {step.name for seat in seats for step in seat.operations}
    at = {"turn the part over": "turn_over", "tap": "tapping", "back spotface": "back_spotface"}
    at["back counterbore"] = "back_spotface"
    return [caution for step, caution in at.items() if step in done]
