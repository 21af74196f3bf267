"""The part card: a summary of all features, then a card for each."""

from collections.abc import Callable, Iterable, Mapping

from seatwork.cards.blocks import Day, caption, heading, named, sign_here, stop_box, written
from seatwork.cards.front import to_settle
from seatwork.cards.job import add_cards
from seatwork.cards.pages import Pages
from seatwork.errors import SeatworkError
from seatwork.plan import Operation, Plan, SeatPlan
from seatwork.plan.contents import HEADINGS
from seatwork.plan.settings import GET
from seatwork.units import show_both, show_spindle

HEAD = ("feature", "seat", "diameter, depth", "cutter", "spindle")
SHARES = (0.17, 0.26, 0.22, 0.2, 0.15)
SEAT_SIZES = ("diameter", "depth", "leg")


def part_card(
    name: str,
    plans: Mapping[str, Plan],
    *,
    paper: str = "",
    date: Day = None,
    left_out: Iterable[str] = (),
    progress: Callable[[int], None] | None = None,
) -> Pages:
    """Set a whole part: what to ask first, a summary, a card for each setup of each feature.

    Parameters
    ----------
    name : str
        Name of the part.
    plans : mapping of str to Plan
        A plan for each feature, in the order to list them.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of printing; a line to write it on if not given.
    left_out : iterable of str
        Sentences about features that could not be planned.
    progress : callable, optional
        Called with the number of features done.

    Returns
    -------
    Pages
        ``save(path)`` writes the PDF.

    Raises
    ------
    SeatworkError
        If there is nothing to cut.
    """
    named(name, "name")
    if not any(plan.seats for plan in plans.values()):
        raise SeatworkError(name, "no feature of the part could be planned", "check its notes")
    pages = Pages(paper, foot=f"Part card {name}")
    heading(pages, f"Part card: {name}", f"{len(plans)} features, {written(date)}")
    sign_here(pages)
    _asked(pages, plans, tuple(left_out))
    _summary(pages, plans)
    _tools(pages, plans)
    for number, (feature, plan) in enumerate(plans.items(), 1):
        if plan.seats:
            pages.new_page()
            add_cards(pages, plan, date=date, name=feature)
        if progress:
            progress(number)
    return pages


def _summary(pages: Pages, plans: Mapping[str, Plan]) -> None:
    rows = [_row(feature, plan, seat) for feature, plan in plans.items() for seat in plan.seats]
    pages.table([HEAD, *rows], [share * pages.room for share in SHARES])


def _row(feature: str, plan: Plan, seat: SeatPlan) -> tuple[str, ...]:
    system = plan.callout.system
    main = next((step for step in seat.operations[::-1] if step.spindle is not None), None)
    speed = main.spindle.step.spindle_speed if main and main.spindle else None
    sizes = [
        show_both(size.value, system)
        for size in seat.sizes
        if size.kind == "length" and (size.about.startswith(SEAT_SIZES) or "diameter" in size.about)
    ]
    return (
        feature,
        seat.place,
        "; ".join(sizes),
        _tool(main) if main else "by hand",
        show_spindle(speed) if speed else "see the card",
    )


def _tool(step: Operation) -> str:
    """Name a tool in few words; what to get is said in full under the tools to fetch."""
    return (step.short or step.tool) if step.in_shop else GET


def _tools(pages: Pages, plans: Mapping[str, Plan]) -> None:
    """List every tool once, to fetch before the first cut."""
    steps = [step for plan in plans.values() for seat in plan.seats for step in seat.operations]
    tools = dict.fromkeys(
        step.tool + ("" if step.in_shop else " (not in the shop's list)")
        for step in steps
        if step.tool
    )
    caption(pages, "Tools to fetch")
    for tool in tools:
        pages.tick(tool)


def _asked(pages: Pages, plans: Mapping[str, Plan], left_out: tuple[str, ...]) -> None:
    """Set what must be settled before anything else on the page."""
    lines = [
        f"{name}, {line}" for name, plan in plans.items() for line in to_settle(plan, plan.rows())
    ]
    lines += [f"Left out: {sentence}" for sentence in left_out]
    if lines:
        stop_box(pages, HEADINGS["stop"], lines)
