"""The bench sheet of a cut: steps to tick, the stop by trial, readings that are read back."""

from seatwork import notes, units
from seatwork.cards.blocks import Day, caption, heading, sign_here, stop_box, written
from seatwork.cards.front import to_settle
from seatwork.cards.gages import readings_table
from seatwork.cards.pages import Pages
from seatwork.cards.setups import cards_of
from seatwork.errors import SeatworkError
from seatwork.inspection.cuts import cuts_of, size_of
from seatwork.inspection.judging import limits_of
from seatwork.marking import evening_course
from seatwork.marking.evening_file import BenchJob
from seatwork.plan import Plan, SeatPlan, make
from seatwork.plan.contents import HEADINGS
from seatwork.shop import rules
from seatwork.shop.house.cautions import cautions

SIZE = 10.5
TRIALS = 4
TRIAL = ("trial", "stop set at", "gage says", "off by, which way", "move the stop", "initials")
SHARES = (0.08, 0.19, 0.19, 0.21, 0.19, 0.14)
SHORT = {"inch": ".010 in", "metric": "0.25 mm"}
BY_TRIAL = (
    "Scrap of the same stock, held the same way. Never the part first.",
    "Touch, set {short} short, cut. Spindle stopped: burr off, try the screw, gage.",
    "Turn the stop by the difference. {move}",
    "Cut a second scrap from the start. Right: lock the stop. Then the part, gage it, sign.",
)
"""How a stop is set by trial; common practice, no source."""

WITH_A_SCREW = "Head and stop move together: {short} proud is {short} deeper."
WITHOUT = "By depth it is the same; a diameter changes by the angle, so gage again."
WORKED_OUT = "worked out"
TWO_LIMITS = (
    "Two limits, both right. Set the stop within {stop}: beyond that the diameter is off. A depth "
    "read afterwards may be {depth}: the print gives no depth, so it has the title block's "
    "tolerance, and hole and angle vary too. In doubt the diameter decides."
)


def bench_sheets(evening: int, *, form: str = "eight", paper: str = "", date: Day = None) -> Pages:
    """Set a bench sheet for each cut of an evening, the two sides of one paper.

    Parameters
    ----------
    evening : int
        Which, from 1.
    form : {"eight", "four"}
        Eight evenings, or the shorter form.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of the evening; a line to write it on if not given.

    Raises
    ------
    SeatworkError
        If there is no such evening, nothing is cut on it, or a cut cannot be planned.

    Notes
    -----
    Its readings are the columns that ``seatwork inspect`` reads, from a file that names each
    cut as its feature; `cuts` are the plans to judge them by.
    """
    jobs = jobs_of(evening, form)
    pages = Pages(paper, foot=f"Bench sheet, evening {evening}")
    for number, job in enumerate(jobs):
        if number:
            pages.new_page()
        plan = planned(job)
        _front(pages, job, plan, date)
        for name, cut in cuts_of({job.name: plan}).items():
            pages.new_page()
            readings_table(pages, name, cut)
    return pages


def cuts(evening: int, *, form: str = "eight") -> dict[str, Plan]:
    """Plan the cuts of an evening, by their names.

    Parameters
    ----------
    evening : int
        Which, from 1.
    form : {"eight", "four"}
        Eight evenings, or the shorter form.

    Raises
    ------
    SeatworkError
        As for `bench_sheets`.
    """
    return {job.name: planned(job) for job in jobs_of(evening, form)}


def planned(job: BenchJob) -> Plan:
    """Plan one cut of an evening.

    Raises
    ------
    SeatworkError
        If the shop has not what it is cut from or on, or its note asks a question.
    """
    return make(
        notes.read(job.note),
        screw=job.screw or None,
        material=job.material,
        machine=job.machine,
        thickness=units.length(job.thickness) if job.thickness else None,
    )


def jobs_of(evening: int, form: str) -> tuple[BenchJob, ...]:
    """Return the cuts of an evening; refuse one without."""
    course = evening_course(form)
    cut = [number for number, one in enumerate(course.evenings, 1) if one.given.bench]
    if evening not in cut:
        fault = "no evening is named" if evening == 0 else "nothing is cut on it"
        remedy = f"name an evening at the machines: {', '.join(map(str, cut))}"
        raise SeatworkError(f"evening {evening}" if evening else "bench sheet", fault, remedy)
    return course.evening(evening).given.bench


def _front(pages: Pages, job: BenchJob, plan: Plan, date: Day) -> None:
    note = " ".join(plan.callout.text.split())
    heading(
        pages,
        f"Bench sheet: {job.name}",
        f"Print note: {note}; {plan.material}, {plan.machine}",
        f"Learner ________   pair ________   {written(date)}",
        size=14.0,
    )
    sign_here(pages)
    asked = to_settle(plan, plan.rows())
    if asked:
        stop_box(pages, HEADINGS["stop"], asked)
    caption(pages, "Before power: read aloud, each to the other")
    for box in cautions(*plan.cautions):
        pages.text(f"{box.title}: {box.in_short}", size=SIZE)
    caption(pages, "Steps, tick each when it is done")
    for card in cards_of(plan):
        pages.tick(f"Setup {card.number}: {card.setup.face}. Held: {card.setup.held}")
        for _, _, row in card.steps:
            pages.tick(f"{row.label}: {row.text}" if row.text else row.label)
    if any(seat.stops for seat in plan.seats):
        _trial(pages, plan)


def _trial(pages: Pages, plan: Plan) -> None:
    """Set how the stop is found by trial, and a table to write it in."""
    system = plan.callout.system
    caption(pages, "The stop, by trial on scrap", needs=2.6)
    short, screw = SHORT[system], any(seat.screw for seat in plan.seats)
    move = (WITH_A_SCREW if screw else WITHOUT).format(short=short)
    for number, line in enumerate(BY_TRIAL, 1):
        pages.text(f"{number}  {line.format(short=short, move=move)}", size=SIZE)
    for seat in plan.seats:
        for row in seat.stop_rows(system)[:1]:
            pages.text(f"Aim, {seat.place}: {row.label}: {row.text}", size=SIZE)
        if told := two_limits(seat, system):
            pages.text(told, size=SIZE)
    rows = [(str(number), "", "", "", "", "") for number in range(1, TRIALS + 1)]
    pages.table([TRIAL, *rows], [share * pages.room for share in SHARES], grid=True)


def two_limits(seat: SeatPlan, system: str) -> str:
    """Say why a stop has other limits than the depth that is read afterwards.

    Parameters
    ----------
    seat : SeatPlan
        The seat with its stops.
    system : {"inch", "metric"}
        System of the print.

    Returns
    -------
    str
        Empty where both have the same limits, or one of them has none.

    Notes
    -----
    A depth that no print states is read against the title block, as any size without limits;
    the stop is held to what the diameter at the face allows on the hole as drilled.
    """
    size = size_of("depth", seat)
    depth = limits_of("depth", seat, system=system, rules=rules())
    stop = next((one for one in seat.stops if one.least and one.greatest), None)
    if size is None or depth is None or stop is None:
        return ""
    if not size.source.startswith(WORKED_OUT):
        return ""
    stopped = _from_to(stop.least, stop.greatest, system)
    read = _from_to(depth.least, depth.greatest, system)
    return "" if stopped == read else TWO_LIMITS.format(stop=stopped, depth=read)


def _from_to(least: float | None, greatest: float | None, system: str) -> str:
    return " to ".join(units.show_length(size or 0.0, system) for size in (least, greatest))
