"""The plan of a print note: hole by hole, from what was said to what is done."""

from seatwork import notes
from seatwork.errors import SeatworkError
from seatwork.hardware import Screw
from seatwork.plan import words
from seatwork.plan.cones import center_plan, chamfer_plan, countersink_plan, tapped_hole_plan
from seatwork.plan.counterbores import INCH_LIST
from seatwork.plan.flats import counterbore_plan, spotface_plan
from seatwork.plan.order import Order, by_hand
from seatwork.plan.place import Place, drill_hole, far_side, place_of
from seatwork.plan.records import Plan, SeatPlan
from seatwork.plan.resolving import said, screw_for
from seatwork.plan.wording import shower
from seatwork.shop.stock import Shop

AT_MACHINE = {
    "drill press": "drill_press",
    "mill": "mill",
    "lathe": "lathe",
    "hand drill": "hand_drill",
}
AT_SEAT = {"counterbore": "counterbore", "spotface": "spotface", "edge": "sheet"}
THIN = 3.2  # mm; sheet rather than plate (common practice, no source)


def make(
    callout: notes.Callout,
    *,
    screw: str | None = None,
    material: str,
    machine: str,
    shop: Shop | None = None,
    thickness: float | None = None,
    edge: float | None = None,
) -> Plan:
    """Plan the cutting of everything a note asks for.

    Parameters
    ----------
    callout : Callout
        The note as read.
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
    >>> callout = notes.read("4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD")
    >>> made = make(callout, material="6061 aluminum", machine="bench drill press")
    >>> [step.name for step in made.seats[0].operations]
    ['drill', 'countersink', 'deburr the far side']
    """
    shop = shop or Shop.at()
    order = Order(
        shop=shop,
        material=shop.material(material),
        machine=shop.machine(machine),
        system=callout.system,
        thickness=thickness,
        edge=edge,
        show=shower(callout.system),
    )
    wanted = screw_for(callout, screw)
    seats = tuple(planned for group in callout.groups() for planned in _group(group, wanted, order))
    return Plan(
        callout=callout,
        material=order.material.name,
        machine=order.machine.name,
        seats=seats,
        assumptions=_assumptions(callout, wanted),
        questions=tuple(warning.sentence for warning in _open_warnings(callout, wanted)),
        cautions=_cautions(seats, order),
    )


def _group(group: tuple[notes.Feature, ...], screw: Screw | None, order: Order) -> list[SeatPlan]:
    place = place_of(group, screw=screw, order=order)
    made = [planned for one in group if (planned := _feature(one, place, order)) is not None]
    if made:
        return made
    if place.thread is not None:
        return [tapped_hole_plan(None, place, order)]
    return [_plain_hole(place, order)] if place.note else []


def _feature(note: notes.Feature, place: Place, order: Order) -> SeatPlan | None:
    match note:
        case notes.Countersink():
            return countersink_plan(note, place, order)
        case notes.Counterbore():
            return counterbore_plan(note, place, order)
        case notes.Spotface():
            return spotface_plan(note, place, order)
        case notes.Chamfer():
            return chamfer_plan(note, place, order)
        case notes.EdgeBreak():
            return _edge_plan(note, order)
        case notes.Counterdrill():
            return _counterdrill(note, place, order)
    return None


def _counterdrill(note: notes.Counterdrill, place: Place, order: Order) -> SeatPlan:
    if note.meaning != "center drill":
        raise SeatworkError(
            "C'DRILL" if note.meaning == "ask" else "counterdrill",
            "it can mean a center drill or a counterdrill, and only a center hole is planned here",
            "ask which; on a shaft end write CENTER DRILL",
        )
    return center_plan(note, place, order)


def _plain_hole(place: Place, order: Order) -> SeatPlan:
    hole = place.hole("the hole")
    return SeatPlan(
        title="hole",
        kind="hole",
        count=place.count,
        sizes=(hole,),
        operations=(*drill_hole(place, order), *far_side(place)),
    )


def _edge_plan(note: notes.EdgeBreak, order: Order) -> SeatPlan:
    sizes = (said(note.size, "edge break"),) if note.size else ()
    name = "break the edges" if note.edges else "take off the burrs"
    return SeatPlan(
        title=name,
        kind="edge",
        count=note.count,
        sizes=sizes,
        operations=(by_hand(name, words.BREAK_EDGE, "file, scraper or deburring tool"),),
        advice=(words.NO_EDGE_MARK,),
    )


def _assumptions(callout: notes.Callout, screw: Screw | None) -> tuple[str, ...]:
    said_so = [one.sentence for one in callout.assumptions if not _settled(one, callout, screw)]
    return tuple(dict.fromkeys([*said_so, *(screw.assumptions if screw else ())]))


def _settled(one: notes.Assumption, callout: notes.Callout, screw: Screw | None) -> bool:
    """Tell whether the screw itself gives what the note left open."""
    if screw is None:
        return False
    feature = callout.features[one.feature]
    angle = one.field == "angle" and isinstance(feature, notes.Countersink)
    return (angle and screw.seat_angle is not None) or (
        one.rule == INCH_LIST and screw.across_flats is not None
    )


def _open_warnings(callout: notes.Callout, screw: Screw | None) -> list[notes.NoteWarning]:
    knows_angle = screw is not None and screw.seat_angle is not None
    return [w for w in callout.warnings if not (w.code == "angle-missing" and knows_angle)]


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
    if any(seat.kind == "spotface" for seat in seats):
        names.append("bolt")
    return tuple(dict.fromkeys(names))
