"""The coupons of the angle lesson: a bar with four seats, one of them wrong, and a tilted pad."""

from dataclasses import dataclass

from seatwork import hardware, notes
from seatwork.cards import coupon_views
from seatwork.cards.blocks import Day, caption, heading, in_full, sign_here, written
from seatwork.cards.pages import Pages
from seatwork.plan import Operation, Plan, SeatPlan, make
from seatwork.seats import Countersink, fit
from seatwork.shop.house.cautions import cautions
from seatwork.shop.shop import Shop
from seatwork.units import show_angle, show_both, show_note, show_spindle

QUARTER, SIXTH, GUARD = (
    "1/4-20 flat head machine screw",
    "M6 socket countersunk head",
    "1/4-28 100° flat head machine screw",
)
BAR_METAL, PAD_METAL, MACHINE = "6061 aluminum", "gray iron", "knee mill"
PAD_NOTE = "⌀17/32 THRU, S.F. 1.25"
CLOSE = {"inch": "close", "metric": "medium"}
SHARES = (0.08, 0.28, 0.18, 0.25, 0.21)


@dataclass(frozen=True, slots=True, kw_only=True)
class Coupon:
    """One seat of the bar.

    Parameters
    ----------
    letter : str
        Stamped beside it.
    screw : str
        The screw it is tried with.
    angle : float or None
        Included angle it is cut to [deg]; None for the screw's own.
    """

    letter: str
    screw: str
    angle: float | None = None


COUPONS = (
    Coupon(letter="A", screw=QUARTER),
    Coupon(letter="B", screw=SIXTH),
    Coupon(letter="C", screw=GUARD),
    Coupon(letter="D", screw=SIXTH, angle=82.0),
)
"""Cut to each screw's theoretical sharp diameter; D has the wrong angle on purpose."""


def coupon_set(*, paper: str = "", date: Day = None, shop: Shop | None = None) -> Pages:
    """Set the drawings of the coupons: bar, pad, screws, stock, which cutter where.

    Parameters
    ----------
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of printing.
    shop : Shop, optional
        The shop whose cutters are chosen; the workbook folder's, or the package's own.
    """
    shop = shop or Shop.at()
    plans = {coupon: bar_plan(coupon, shop) for coupon in COUPONS}
    pages = Pages(paper, foot="Coupon set, angle lesson")
    heading(
        pages,
        "Coupon set 1: bar with four seats",
        f"{BAR_METAL}, one bar for each pair of learners, {written(date)}",
    )
    sign_here(pages)
    coupon_views.bar(pages, {c.letter: cone(plan) for c, plan in plans.items()})
    _seats(pages, plans)
    pages.new_page()
    pad = make(notes.read(PAD_NOTE), material=PAD_METAL, machine=MACHINE, shop=shop)
    heading(pages, "Coupon set 2: cast pad, tilted on purpose", f"{PAD_METAL}, {PAD_NOTE}")
    coupon_views.pad(pages)
    _pad_notes(pages, pad)
    _bar_notes(pages)
    _to_fetch(pages)
    names = dict.fromkeys(name for plan in (*plans.values(), pad) for name in plan.cautions)
    in_full(pages, cautions(*names))
    return pages


def bar_plan(coupon: Coupon, shop: Shop) -> Plan:
    """Plan one seat of the bar: the screw's sharp diameter on its clearance hole."""
    screw = hardware.screw(coupon.screw)
    system = screw.thread.system
    hole = hardware.clearance_hole(screw.thread, CLOSE[system])
    assert screw.sharp_diameter is not None
    drilled = hole.drill if system == "inch" and hole.drill else show_note(hole.diameter, system)
    across = show_note(screw.sharp_diameter, system)
    angle = show_angle(coupon.angle or screw.seat_angle or 0.0)
    note = f"⌀{drilled} THRU ⌵ ⌀{across} X {angle}"
    return make(
        notes.read(note, system=system),
        material=BAR_METAL,
        machine=MACHINE,
        shop=shop,
        thickness=coupon_views.THICK,
    )


def cone(plan: Plan) -> Countersink:
    """Return the countersink of a plan of one."""
    shape = plan.seats[0].shape
    assert isinstance(shape, Countersink)
    return shape


def _seats(pages: Pages, plans: dict[Coupon, Plan]) -> None:
    head = ("seat", "print note", "depth from the face", "tried with", "cutter")
    rows = [_row(coupon, plan) for coupon, plan in plans.items()]
    pages.table([head, *rows], [share * pages.room for share in SHARES])
    missing = dict.fromkeys(tool for plan in plans.values() if (tool := _missing(plan)))
    for tool in missing:
        pages.text(f"To get: {tool}")
    caption(pages, "What the class should find (instructor)")
    for coupon, plan in plans.items():
        pages.text(f"{coupon.letter}: {_found(coupon, cone(plan))}")


def _row(coupon: Coupon, plan: Plan) -> tuple[str, ...]:
    seat, wrong = plan.seats[0], "  WRONG ON PURPOSE" if coupon.angle else ""
    depth = seat.size("depth from the face")
    tool = "to get, see below" if _missing(plan) else _cutting(seat)[0]
    return (
        coupon.letter,
        plan.callout.text + wrong,
        show_both(depth.value, plan.callout.system) if depth else "",
        coupon.screw,
        f"{tool}, {_cutting(seat)[1]}",
    )


def _found(coupon: Coupon, seat: Countersink) -> str:
    """Tell how the greatest and the least head of the screw lie in the seat."""
    screw = hardware.screw(coupon.screw)
    said = []
    for size, head in (("greatest", screw.head), ("least", screw.least_head)):
        found = fit(head, seat)
        lies = (
            "flush" if found.state == "flush" else f"{show_both(abs(found.amount))} {found.state}"
        )
        said.append(f"{size} head {lies}, touching at the {found.contact}")
    return "; ".join(said)


def _own(seat: SeatPlan) -> Operation:
    """Return the seat's own operation, the last that turns a spindle."""
    return [step for step in seat.operations if step.spindle is not None][-1]


def _missing(plan: Plan) -> str:
    """Return what to get for a seat; empty where the shop has the cutter."""
    step = _own(plan.seats[0])
    return "" if step.in_shop else step.tool


def _cutting(seat: SeatPlan) -> tuple[str, str]:
    """Return cutter and spindle speed of the seat's own operation."""
    step = _own(seat)
    speed = step.spindle.step.spindle_speed if step.spindle else None
    return step.tool, show_spindle(speed) if speed else "see the plan"


def _bar_notes(pages: Pages) -> None:
    caption(pages, "Cutting the bar")
    for line in (
        "Use a sharp cutter: a worn one makes 81° or 83°, and the lesson is about angles.",
        "Cut each seat to its diameter, not to its depth. Check A to C with two balls, then stamp.",
        "Stamp the letters only. The angles are what the class has to find.",
    ):
        pages.text(line)


def _pad_notes(pages: Pages, plan: Plan) -> None:
    caption(pages, "Pad")
    seat = plan.seats[0]
    for row in seat.size_rows(plan.callout.system):
        pages.text(f"{row.label}: {row.text}")
    tool, speed = _cutting(seat)
    clean = show_both(coupon_views.pad_clean_up())
    pages.text(f"Spotface with {tool}, {speed}, dry; deep enough to clean up all round.")
    pages.text(f"From first touch on the high side that is {clean} on this tilt.")
    pages.text(
        "Leave every second pad unfaced: a bolt on it sits on one side, and a feeler goes in."
    )


def _to_fetch(pages: Pages) -> None:
    caption(pages, "To fetch for one pair of learners")
    stock = (
        f"1 bar, {BAR_METAL}, {show_both(coupon_views.THICK)} x {show_both(coupon_views.WIDE)} x "
        f"{show_both(coupon_views.LONG)}"
    )
    pad = (
        f"2 pads, {PAD_METAL}, {show_both(coupon_views.PAD)} square, "
        f"{show_both(coupon_views.PAD_LOW)} at the low side"
    )
    screws = (f"2 of {name}, gaged before the lesson" for name in (QUARTER, SIXTH, GUARD))
    others = ("1 hex cap screw 1/2-13 with nut", "bluing, a feeler gage of 0.018 in (0.46 mm)")
    for line in (stock, pad, *screws, *others):
        pages.tick(line)
