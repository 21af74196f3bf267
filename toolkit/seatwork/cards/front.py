"""The front of a card: what must be asked, how the part is held, what to set, what to measure."""

from collections.abc import Iterator, Sequence

from seatwork.cards import triangle
from seatwork.cards.blocks import caption, heading, measured, sign_here, stop_box
from seatwork.cards.lettering import UNITS
from seatwork.cards.pages import MARGIN, Pages
from seatwork.cards.section import section_of
from seatwork.cards.setups import Card
from seatwork.cards.to_scale import Place, draw, height
from seatwork.plan import Plan
from seatwork.plan.contents import HEADINGS, NOT_YET
from seatwork.plan.rows import show_limits
from seatwork.rows import Row, Rows
from seatwork.seats import Countersink

PICTURE_WIDE = 3.7
COLUMNS = (("tool", 0.23), ("rev/min", 0.12), ("feed", 0.11), ("stop", 0.32))
"""Columns of what to set, and their shares of the page; the step has the rest."""

SIZE = 10.5
"""Type of what is read once, before the first cut; what is set and measured is larger [pt]."""

LENGTHS = {"inch": "inches, feed in in/rev", "metric": "mm, feed in mm/rev"}
TRIED = "tried with the job's own screw"
BLUED = f"{TRIED}; contact seen with blue"


def front(pages: Pages, plan: Plan, rows: Rows, card: Card, *, day: str, name: str) -> None:
    """Set the card of one setup on pages whose last one is empty.

    Parameters
    ----------
    pages : Pages
        Where it goes.
    plan : Plan
        The plan.
    rows : Rows
        What it says.
    card : Card
        What is done in the setup.
    day : str
        Date, or a line to write it on.
    name : str
        Name of the feature or the job; may be empty.
    """
    system = plan.callout.system
    note = " ".join(plan.callout.text.split())
    said = "; ".join(seat.place for seat in card.touched)
    title = f"{name}: {said}" if name else said
    say = pages.say
    where = f"{say(plan.material)}, {say(plan.machine)}, {day}"
    heading(pages, title, where, f"{say('Print note')}: {note}", size=14.0)
    sign_here(pages)
    asked = to_settle(plan, rows)
    if asked:
        stop_box(pages, HEADINGS["stop"], asked)
    _held(pages, card)
    for spot in card.spots:
        _drawing_and_sizes(pages, plan, card, spot)
    _to_set(pages, card, system, asked=bool(asked))
    _at_the_stop(pages, card, system)
    _measured(pages, card, system)
    if card.number == 1:
        _lines(pages, HEADINGS["caution"], rows.of("caution"))
    places = [seat.place for seat in card.cut]
    _lines(pages, HEADINGS["look"], [row for row in rows.of("look") if row.place in places])


def to_settle(plan: Plan, rows: Rows) -> list[str]:
    """Return what must be settled before anything is cut, each with the question to ask."""
    stopped = [c for seat in plan.seats for c in seat.checks if c.verdict == "stop"]
    lines = [
        f"{check.name}: {check.sentence} {check.question.removeprefix(check.sentence)}".strip()
        for check in stopped
    ]
    lines += [f"{row.label}: {row.text}" for row in rows.of("ask")]
    return list(dict.fromkeys(" ".join(line.split()) for line in lines))


def _held(pages: Pages, card: Card) -> None:
    """Say in a few lines how the part lies: held, on what, which face is up, where zero is."""
    setup = card.setup
    say = pages.say
    number = say(f"Setup {card.number} of {card.count}")
    caption(pages, f"{number}: {say(setup.face)}")
    held, under = f"{say('Held')}: {say(setup.held)}.", f"{say('Under it')}: {say(setup.under)}."
    pages.text(f"{held} {under}", size=SIZE)
    pages.text(f"{say('Zero')}: {say(setup.zero)}.", size=SIZE)


def _drawing_and_sizes(pages: Pages, plan: Plan, card: Card, spot: int) -> None:
    """Set the section of a hole, and beside it the sizes that are cut in this setup."""
    system = plan.callout.system
    shown = section_of(plan, spot, turned=card.setup.far_up)
    pages.space(0.06)
    high = height(shown) if shown else 0.0
    pages.keep_together(high)
    top = pages.down
    if shown:
        left, upper = MARGIN * UNITS, (pages.height - top) * UNITS
        place = Place(left=left, top=upper, wide=PICTURE_WIDE * UNITS, high=high * UNITS)
        words, deep = draw(pages.axes, place, shown, system)
        pages.words[-1].append(f"[drawing: {words}]")
        high = deep / UNITS
    for row in _sizes(card, spot, system):
        beside = shown is not None and pages.down < top + high - 0.1
        pages.text(str(row), size=SIZE, indent=PICTURE_WIDE + 0.1 if beside else 0.0)
    _triangle(pages, card, spot, system, floor=top + high)
    pages.down = max(pages.down, top + high)


def _triangle(pages: Pages, card: Card, spot: int, system: str, *, floor: float) -> None:
    """Set the triangle of the first cone cut here below its sizes, if the corner has room."""
    cones = [
        seat.shape for seat in card.cut if seat.spot == spot and isinstance(seat.shape, Countersink)
    ]
    if not cones or pages.down + triangle.HIGH > floor:
        return
    left, top = (MARGIN + PICTURE_WIDE + 0.1) * UNITS, (pages.height - pages.down - 0.12) * UNITS
    room = Place(left=left, top=top, wide=3.4 * UNITS, high=triangle.HIGH * UNITS)
    said = triangle.draw(pages.axes, room, cones[0], system)
    pages.words[-1].append(f"[triangle: {said}]")


def _sizes(card: Card, spot: int, system: str) -> tuple[Row, ...]:
    """Return the sizes of the seats cut here, each once; of others the hole alone."""
    found = []
    for seat in card.touched:
        if seat.spot == spot:
            rows = zip(seat.sizes, seat.size_rows(system), strict=True)
            found += [row for size, row in rows if seat in card.cut or size.about == "hole"]
    return tuple(dict.fromkeys(found))


def _to_set(pages: Pages, card: Card, system: str, *, asked: bool) -> None:
    pages.space(0.06)
    first = 1.0 - sum(share for _, share in COLUMNS)
    columns = [share * pages.room for share in (first, *(share for _, share in COLUMNS))]
    title = NOT_YET if asked else HEADINGS["set"]
    caption(pages, f"{pages.say(title)} ({pages.say(LENGTHS[system])})", needs=1.0)
    lines = [(row.label, *(dict(row.cells)[head] for head, _ in COLUMNS)) for row in _steps(card)]
    pages.table([("step", *(head for head, _ in COLUMNS)), *lines], columns)


def _steps(card: Card) -> list[Row]:
    return [row for _, _, row in card.steps]


def _at_the_stop(pages: Pages, card: Card, system: str) -> None:
    """Say what the tools are oiled with, what is lacking, and each seat's stop with its limits."""
    pages.space(0.04)
    for line in _oils(card):
        pages.text(line, size=SIZE)
    for _, step, _ in card.steps:
        if not step.in_shop:
            pages.text(f"Not in the shop's list, for {step.name}: {step.tool}", size=SIZE)
    for seat in card.cut:
        travels = card.travels(seat, system)
        if travels:
            pages.text("; ".join(f"{row.label}: {row.text}" for row in travels), size=SIZE)
        for sentence in seat.advice[:1]:
            pages.text(sentence, size=SIZE)


def _oils(card: Card) -> Iterator[str]:
    """Yield what to cut with, each once, with the steps where they differ."""
    wet = [step for _, step, _ in card.steps if step.oil]
    for oil in dict.fromkeys(step.oil for step in wet):
        steps = ", ".join(dict.fromkeys(step.name for step in wet if step.oil == oil))
        yield f"Oil, {steps}: {oil}."


def _measured(pages: Pages, card: Card, system: str) -> None:
    """Set boxes to write in beside each reading; beside each length where there is none."""
    found = [(seat, str(row)) for seat, row in card.readings(system)]
    gaged = [seat for seat, _ in found]
    found += [
        (seat, f"{size.about}: {show_limits(size, system)}")
        for seat in card.cut
        if seat not in gaged
        for size in seat.sizes
        if size.kind == "length" and size.about != "pilot"
    ]
    found += [
        (seat, BLUED if seat.kind == "countersink" else TRIED) for seat in card.cut if seat.screw
    ]
    if found:
        caption(pages, "Measured", needs=0.4)
    for seat, words in found:
        measured(pages, words, seat.count)


def _lines(pages: Pages, title: str, rows: Sequence[Row]) -> None:
    if rows:
        caption(pages, title)
    for row in rows:
        pages.text(f"{pages.say(row.label)}: {pages.say(row.text)}", size=SIZE)
