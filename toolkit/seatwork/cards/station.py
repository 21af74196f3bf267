"""At the station and in the crib: the demonstration script, the sign, the checklist of cutters."""

from seatwork.cards.blocks import Day, caption, heading, in_full, sign_here, written
from seatwork.cards.pages import Pages
from seatwork.errors import SeatworkError
from seatwork.marking.speaking import speaker
from seatwork.plan import Operation, Plan, SeatPlan
from seatwork.shop.house.cautions import cautions, closing
from seatwork.shop.lists.cutters import SeatCutter
from seatwork.shop.shop import Shop
from seatwork.units import show_spindle

FAULTS = ("chipped", "loaded", "blued", "bent pilot", "burr on taper")
MEANINGS = (
    "chipped: a lip is broken; turn it under a lamp",
    "loaded: metal is stuck to a lip",
    "blued: a lip was hot and is soft",
    "bent pilot: roll it on a flat plate",
    "burr on taper: draw a cotton bud along the wiped taper; a burr catches it",
)
MARKS = {"drill press": "drill_press", "mill": "mill", "lathe": "lathe", "hand drill": "hand_drill"}
BIG, LARGE = 34.0, 15.0


def demonstration(plan: Plan, *, paper: str = "", date: Day = None) -> Pages:
    """Set the script of a demonstration at the machine, with the numbers of a plan.

    Parameters
    ----------
    plan : Plan
        What is cut before the class; its first seat.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of printing.

    Raises
    ------
    SeatworkError
        If no seat of the plan is cut at the machine.
    """
    shown = [(seat, step) for seat in plan.seats if (step := _cut(seat)) is not None]
    if not shown:
        raise SeatworkError(
            plan.callout.text, "nothing in it is cut at the machine", "name a note with a seat"
        )
    seat, step = shown[0]
    pages = Pages(paper, foot="Demonstration")
    heading(
        pages,
        f"Demonstration: {seat.title}",
        f"{plan.material}, {plan.machine}, {written(date)}",
        "Instructor at the machine. Nobody cuts before the instructor has checked the set-up.",
    )
    sign_here(pages)
    for title, lines in _script(plan, seat, step):
        caption(pages, title)
        for line in lines:
            pages.tick(line)
    in_full(pages, cautions(*plan.cautions))
    return pages


def _cut(seat: SeatPlan) -> Operation | None:
    steps = [step for step in seat.operations if step.spindle is not None and step.name != "drill"]
    return steps[-1] if steps else None


def _script(plan: Plan, seat: SeatPlan, step: Operation) -> list[tuple[str, list[str]]]:
    """Return the demonstration part by part: what is done, what is asked."""
    system = plan.callout.system
    stops = [f"{row.label}: {row.text}" for row in seat.stop_rows(system)[:2]]
    readings = [f"{row.label}: {row.text}" for row in seat.reading_rows(system)[:2]]
    speed = step.spindle.step.spindle_speed if step.spindle else None
    turning = show_spindle(speed) if speed else "no step is slow enough: see the job card"
    return [
        (
            "Before power",
            [
                "Read the cautions aloud. Glasses on everyone, watchers too.",
                f"Cutter: {step.tool}. Pass it round: where are the lips, which lip cuts?",
                "Clamp scrap of the same metal and thickness. What could turn with the cutter?",
                f"Set the spindle: {turning}. Ask: why so slow?",
            ],
        ),
        (
            "On scrap",
            [
                *stops,
                f"Oil: {step.oil or 'none'}. Feed so that it makes a chip.",
                "Stop short. Spindle stopped, brush, try the job's own screw. Proud, flush, below?",
                "Move the stop by what is missing; cut again; try again.",
            ],
        ),
        (
            "Proof",
            [
                *readings,
                "Blue the seat, turn the screw in it once. Whole cone, or a ring? Where?",
                "Ask: it is flush. Is the angle right? What would tell?",
            ],
        ),
        (
            "After",
            [
                "Spindle stopped: far side deburred, chips binned by metal, floor wiped.",
                "Each learner says one thing that would have hurt a hand.",
            ],
        ),
    ]


def station_sign(
    machine: str, *, paper: str = "", shop: Shop | None = None, language: str = "en"
) -> Pages:
    """Set the sign of a machine, in type to read from a step away.

    Parameters
    ----------
    machine : str
        Name in the shop's list.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    shop : Shop, optional
        The shop; the workbook folder's, or the package's own.
    language : {"en", "es"}
        What it is said in; a caution that the shop reworded stays as the shop has it.

    Raises
    ------
    SeatworkError
        If the shop has no such machine, or there is no catalog of that language.
    """
    say = speaker(language)
    shop = shop or Shop.at()
    its = shop.machine(machine)
    cap = shop.rules.number("speeds.countersink_cap")
    pages = Pages(paper, foot=f"Station sign: {its.name}", say=say)
    pages.text(say(its.name).upper(), size=BIG, bold=True)
    pages.rule(2.0)
    most = say("Countersinks: at most").upper()
    pages.text(f"{most} {show_spindle(cap)}", size=20.0, bold=True)
    pages.text(say(f"Slowest speed here: {show_spindle(its.slowest)}."), size=LARGE)
    names = ["before", *(["belt"] if its.kind == "drill press" else []), MARKS[its.kind]]
    for box in cautions(*names):
        pages.space(0.08)
        pages.keep_together(0.9)
        pages.text(say(box.title), size=18.0, bold=True)
        for line in (*box.do, *filter(None, [box.number])):
            pages.text(f"• {say(line)}", size=LARGE, indent=0.1)
    pages.space(0.1)
    pages.text(say(closing()), size=LARGE, bold=True)
    return pages


def crib_checklist(*, paper: str = "", shop: Shop | None = None) -> Pages:
    """Set the checklist of the crib: every cutter of the list, five faults to look for.

    Parameters
    ----------
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    shop : Shop, optional
        The shop; the workbook folder's, or the package's own.
    """
    shop = shop or Shop.at()
    pages = Pages(paper, foot="Crib checklist")
    heading(pages, "Crib checklist: countersinks, counterbores, spotface cutters")
    pages.text("Looked over by ____________________   date ______________")
    for meaning in MEANINGS:
        pages.text(meaning)
    pages.text(
        "Tick what is in order. A cutter with one fault goes to the grinder, not the drawer."
    )
    pages.space(0.1)
    head = ("cutter", *FAULTS, "condition on the list")
    rows = [_crib_row(cutter) for cutter in shop.cutters if cutter.kind != "stop cage"]
    shares = (0.2, 0.125, 0.11, 0.1, 0.1, 0.13, 0.235)
    pages.table([head, *rows], [share * pages.room for share in shares])
    return pages


def _crib_row(cutter: SeatCutter) -> tuple[str, ...]:
    """Return a row with a square to tick where the fault can be; a dash where it cannot."""
    lips = cutter.kind not in ("pilot", "holder")
    pilot = cutter.kind == "pilot" or cutter.pilot == "fixed"
    taper = cutter.shank.startswith("Morse")
    can = (lips, lips, lips, pilot, taper)
    note = f"{cutter.condition}. {cutter.note}" if cutter.note else cutter.condition
    return (cutter.name, *("□" if one else "-" for one in can), note)
