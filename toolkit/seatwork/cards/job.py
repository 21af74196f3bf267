"""The job card: a plan on paper, for the bench beside the machine."""

from seatwork.cards.blocks import (
    Day,
    caption,
    heading,
    in_full,
    in_short,
    named,
    reading_box,
    sign_here,
    written,
)
from seatwork.cards.lettering import UNITS
from seatwork.cards.pages import MARGIN, Pages
from seatwork.cards.to_scale import Place, Shown, draw, of_counterbore, of_countersink, of_hole
from seatwork.errors import SeatworkError
from seatwork.plan import Operation, Plan, SeatPlan
from seatwork.plan.rows import show_limits
from seatwork.rows import Row
from seatwork.seats import Chamfer, Counterbore, Countersink, Spotface
from seatwork.shop.house.cautions import cautions
from seatwork.units import show_spindle

PICTURE_WIDE, PICTURE_HIGH = 3.7, 2.3
TOUCH_OFF = 2
"""Rows of the first touch-off: its travel, and what a stop error does."""

READINGS = 2
"""Readings on the card itself; the others stand behind it."""

TRIED = "tried with the job's own screw; contact seen with blue"
FACED = 0.05
"""Depth drawn for a spotface without a depth, as a share of its diameter; it is not dimensioned."""


def job_card(
    plan: Plan,
    *,
    paper: str = "",
    date: Day = None,
    name: str = "",
) -> Pages:
    """Set a plan as cards, one for each seat, what does not fit on pages behind it.

    Parameters
    ----------
    plan : Plan
        What to do.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of printing; a line to write it on if not given.
    name : str
        Name of the feature or the job.

    Returns
    -------
    Pages
        ``save(path)`` writes the PDF, ``png(page)`` shows one page, ``words`` holds the text.

    Raises
    ------
    SeatworkError
        If the paper is not known, or the plan holds nothing to cut.
    """
    named(name, "name")
    if not plan.seats:
        raise SeatworkError(
            plan.callout.text, "the plan holds nothing to cut", "write a note with a seat or a hole"
        )
    pages = Pages(paper, foot=f"Job card {name}".strip())
    add_cards(pages, plan, date=date, name=name)
    in_full(pages, cautions(*plan.cautions))
    return pages


def add_cards(pages: Pages, plan: Plan, *, date: Day, name: str = "") -> None:
    """Add the cards of a plan to pages whose last one is empty, without the cautions in full."""
    for number, seat in enumerate(plan.seats):
        if number:
            pages.new_page()
        front = len(pages.figures)
        _front(pages, plan, seat, written(date), name)
        if len(pages.figures) == front:
            pages.new_page()
        _behind(pages, plan, seat)


def _front(pages: Pages, plan: Plan, seat: SeatPlan, day: str, name: str) -> None:
    system = plan.callout.system
    note = " ".join(plan.callout.text.split())
    title = f"{name}: {seat.count} x {seat.title}" if name else f"{seat.count} x {seat.title}"
    heading(pages, title, f"{plan.material}, {plan.machine}, {day}", f"Print note: {note}")
    sign_here(pages)
    _drawing_and_sizes(pages, seat, system)
    _ask_first(pages, plan, seat)
    _steps(pages, seat, system)
    _stop(pages, seat, system)
    _measured(pages, seat, system)
    in_short(pages, cautions(*plan.cautions))
    _rules(pages, plan)


def _drawing_and_sizes(pages: Pages, seat: SeatPlan, system: str) -> None:
    top, shown = pages.down, section_of(seat)
    indent = PICTURE_WIDE + 0.15 if shown else 0.0
    for row in seat.size_rows(system):
        pages.text(f"{row.label}:", indent=indent)
        pages.text(row.text, bold=True, indent=indent)
    if shown is None:
        return
    left, upper = MARGIN * UNITS, (pages.height - top) * UNITS
    place = Place(left=left, top=upper, wide=PICTURE_WIDE * UNITS, high=PICTURE_HIGH * UNITS)
    pages.words[-1].append(f"[drawing: {draw(pages.axes, place, shown, system)}]")
    pages.down = max(pages.down, top + PICTURE_HIGH + 0.05)


def section_of(seat: SeatPlan) -> Shown | None:
    """Return what the card draws of a seat; None where there is nothing to show."""
    hole = seat.size("hole")
    match seat.shape:
        case Countersink():
            return of_countersink(seat.shape)
        case Counterbore():
            return of_counterbore(seat.shape)
        case Chamfer() if hole is not None:
            return of_countersink(seat.shape.at_hole(hole.value))
        case Spotface() as face:
            bore = Counterbore(
                diameter=face.diameter,
                depth=FACED * face.diameter,
                hole_diameter=face.hole_diameter,
            )
            return of_counterbore(bore, dimensioned=False)
    return of_hole(hole.value) if hole is not None else None


def _ask_first(pages: Pages, plan: Plan, seat: SeatPlan) -> None:
    asked = plan.rows().of("stop", "ask").at("", seat.place)
    if not asked:
        return
    caption(pages, "Stop and ask first")
    for row in asked:
        pages.text(str(row))


def _steps(pages: Pages, seat: SeatPlan, system: str) -> None:
    caption(pages, "Steps")
    rows = seat.operation_rows(system)
    for number, (step, told) in enumerate(zip(seat.operations, rows, strict=True), 1):
        pages.text(f"{number}. {_step(step, told)}")


def _step(step: Operation, told: tuple[Row, ...]) -> str:
    """Tell a step in one line: tool, spindle speed, feed, oil."""
    by_label = {row.label: row.text for row in told}
    have = "" if step.in_shop else "not in the shop's list: "
    parts = [f"{step.name}: {have}{step.tool}" if step.tool else step.name]
    if step.spindle is not None:
        speed = step.spindle.step.spindle_speed
        parts.append(step.spindle.step.advice if speed is None else show_spindle(speed))
    elif "spindle speed" in by_label:
        parts.append(f"spindle speed: {by_label['spindle speed']}")
    if "feed" in by_label:
        parts.append(by_label["feed"])
    if step.oil:
        parts.append(step.oil)
    return "; ".join(parts)


def _stop(pages: Pages, seat: SeatPlan, system: str) -> None:
    """Set the touch-off to use, and what to do about the stop; the others stand behind the card."""
    rows = seat.stop_rows(system)
    if not (rows or seat.advice):
        return
    caption(pages, "Depth stop" if rows else "At the machine")
    if rows:
        pages.text("; ".join(f"{row.label}: {row.text}" for row in rows[:TOUCH_OFF]))
    for sentence in seat.advice[:1]:
        pages.text(sentence)


def _measured(pages: Pages, seat: SeatPlan, system: str) -> None:
    """Set a box for each of the first readings; for each length where there is no reading."""
    said = [f"{row.label}: {row.text}" for row in seat.reading_rows(system)]
    if not said:
        lengths = [size for size in seat.sizes if size.kind == "length" and size.about != "pilot"]
        said = [f"{size.about}: {show_limits(size, system)}" for size in lengths]
    caption(pages, "Measured")
    for words in (*said[:READINGS], *([TRIED] if seat.screw else [])):
        reading_box(pages, words)


def _rules(pages: Pages, plan: Plan) -> None:
    if plan.rules:
        caption(pages, "House rules used")
        pages.text("; ".join(f"{rule.name} {rule.shown}" for rule in plan.rules) + ".")


def _behind(pages: Pages, plan: Plan, seat: SeatPlan) -> None:
    """Set everything else the plan says: why, how it was reckoned, readings, checks, sources."""
    system = plan.callout.system
    pages.space(0.05)
    pages.text(f"Behind the card: {seat.count} x {seat.title}", size=16.0, bold=True)
    for number, rows in enumerate(seat.operation_rows(system), 1):
        first, *others = rows
        pages.text(f"{number}. {first.label}: {first.text}")
        for row in others:
            pages.text(f"{row.label}: {row.text}", indent=0.25)
    _more(pages, "Other touch-offs", seat.stop_rows(system)[TOUCH_OFF:])
    for sentence in seat.advice[1:]:
        pages.text(sentence)
    more = seat.reading_rows(system)[READINGS:]
    if more:
        caption(pages, "More readings")
    for row in more:
        reading_box(pages, f"{row.label}: {row.text}")
    _more(pages, "Looked at", seat.check_rows())
    if seat.outlook:
        pages.text(f"Chatter: {seat.outlook}")
    _sources(pages, plan)


def _more(pages: Pages, words: str, rows: tuple[Row, ...]) -> None:
    if rows:
        caption(pages, words)
    for row in rows:
        pages.text(str(row))


def _sources(pages: Pages, plan: Plan) -> None:
    caption(pages, "Assumed, and where the numbers come from")
    for sentence in plan.assumptions:
        pages.text(f"Assumed: {sentence}")
    for source in plan.sources():
        pages.text(f"Source: {source}")
    for what in plan.from_memory():
        pages.text(f"Check your copy, from memory: {what}")
