"""The gage sheet: which gage, when it was calibrated, what it should say, what it said."""

from seatwork.cards.blocks import caption, heading, sign_here, written
from seatwork.cards.job import Day
from seatwork.cards.pages import Pages
from seatwork.errors import SeatworkError
from seatwork.plan import Plan, SeatPlan, telling
from seatwork.seats import Countersink
from seatwork.seats.gaging import ball_range
from seatwork.units import show_both

COLUMNS = (0.34, 0.22, 0.22, 0.22)
GAGES = ("ball", "second ball", "plate or head gage", "depth indicator", "caliper")
ROWS = 5
STEP = {"inch": 0.0508, "metric": 0.05}  # mm of ball height


def gage_sheet(plan: Plan, *, paper: str = "letter", date: Day = None) -> Pages:
    """Set a gage sheet for each countersink of a plan.

    Parameters
    ----------
    plan : Plan
        Of a note with a countersink.
    paper : {"letter", "a4"}
        Size of the sheets.
    date : date or str, optional
        Day of printing.

    Raises
    ------
    SeatworkError
        If the plan has no countersink.
    """
    seats = [seat for seat in plan.seats if isinstance(seat.shape, Countersink)]
    if not seats:
        raise SeatworkError(
            plan.callout.text, "the note has no countersink to gage", "name one that has"
        )
    pages = Pages(paper, foot="Gage sheet")
    for number, seat in enumerate(seats):
        if number:
            pages.new_page()
        _sheet(pages, plan, seat, written(date))
    return pages


def _sheet(pages: Pages, plan: Plan, seat: SeatPlan, day: str) -> None:
    system = plan.callout.system
    note = " ".join(plan.callout.text.split())
    heading(pages, f"Gage sheet: {seat.title}", f"Print note: {note}; {day}")
    sign_here(pages)
    caption(pages, "Gages used")
    blank = [(gage, "", "", "") for gage in GAGES]
    head = ("gage", "gage id", "size on it", "calibration due")
    pages.table([head, *blank], [share * pages.room for share in COLUMNS])
    caption(pages, "What they should say")
    for row in (*telling.size_rows(seat, system)[:4], *telling.reading_rows(seat, system)):
        pages.text(f"{row.label}: {row.text}")
    assert isinstance(seat.shape, Countersink)
    _balls(pages, seat.shape, system)
    caption(pages, "Readings")
    head = ("part, hole", "ball: top above face", "plate: protrusion", "head above face")
    pages.table([head, *[("", "", "", "")] * ROWS], [share * pages.room for share in COLUMNS])


def _balls(pages: Pages, seat: Countersink, system: str) -> None:
    """Say which balls touch the cone, and what a change of their height means."""
    least, greatest = ball_range(seat)
    grows = seat.tangent * 2 * STEP[system]
    pages.text(
        f"A ball touches the cone if it is larger than {show_both(least, system)}, up to "
        f"{show_both(greatest, system)}. Each {show_both(STEP[system], system)} lower means "
        f"{show_both(grows, system)} more diameter."
    )
