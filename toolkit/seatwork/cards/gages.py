"""The gage page: which gage, when it was calibrated, what it should say, what it said."""

from seatwork.cards.blocks import Day, caption, heading, sign_here, written
from seatwork.cards.pages import Pages
from seatwork.errors import SeatworkError
from seatwork.inspection.blank import columns_of, limits_words
from seatwork.inspection.columns import COLUMNS, PART, REMARK, Column
from seatwork.inspection.cuts import Cut, cuts_of, readings_of
from seatwork.plan import Plan
from seatwork.seats import Countersink
from seatwork.seats.gaging import ball_range
from seatwork.units import show_both

GAGES = (0.34, 0.22, 0.22, 0.22)
PARTS = 4
READINGS = (0.44, 0.2, *[0.36 / PARTS] * PARTS)
STEP = {"inch": 0.0508, "metric": 0.05}  # mm of ball height


def gage_page(plans: Plan | dict[str, Plan], *, paper: str = "", date: Day = None) -> Pages:
    """Set a gage page for each seat of a plan, or of the plans of a part.

    Parameters
    ----------
    plans : Plan or dict of str to Plan
        Of one note, or of a part's features by their names.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of printing.

    Raises
    ------
    SeatworkError
        If no plan has a seat to measure.

    Notes
    -----
    Its readings are the columns of the blank that ``seatwork inspect --blank`` writes.
    """
    known = {"": plans} if isinstance(plans, Plan) else plans
    cuts = cuts_of(known)
    if not cuts:
        text = "; ".join(" ".join(one.callout.text.split()) for one in known.values())
        raise SeatworkError(text, "there is no seat to gage", "name a note that has one")
    pages = Pages(paper, foot="Gage sheet")
    for number, (name, cut) in enumerate(cuts.items()):
        if number:
            pages.new_page()
        note = next(one.callout.text for one in known.values() if cut.seat in one.seats)
        _gages(pages, name, cut, f"Print note: {' '.join(note.split())}; {written(date)}")
        pages.new_page()
        readings_table(pages, name, cut)
    return pages


def _gages(pages: Pages, name: str, cut: Cut, note: str) -> None:
    heading(pages, f"Gage sheet: {cut.seat.title}", *_feature(name), note)
    sign_here(pages)
    caption(pages, "Gages used")
    used = (gage for one in readings_of(cut.seat) for gage in one.instruments)
    balls = ("ball",) if isinstance(cut.seat.shape, Countersink) else ()
    plugs = (one.instrument for one in cut.seat.readings if "plug" in one.instrument)
    blank = [(gage, "", "", "") for gage in dict.fromkeys((*used, *balls, *plugs))]
    head = ("gage", "gage id", "size on it", "calibration due")
    pages.table([head, *blank], [share * pages.room for share in GAGES])
    caption(pages, "What they should say")
    rows = cut.seat.size_rows(cut.system)[:4]
    for row in (*rows, *cut.seat.reading_rows(cut.system)):
        pages.text(f"{row.label}: {row.text}")
    if isinstance(cut.seat.shape, Countersink):
        _balls(pages, cut.seat.shape, cut.system)


def _feature(name: str) -> tuple[str, ...]:
    return (f"Feature: {name}",) if name else ()


def readings_table(pages: Pages, name: str, cut: Cut) -> None:
    """Set a line for every column that ``seatwork inspect`` reads, with room for a few parts.

    Parameters
    ----------
    pages : Pages
        Where it goes; its last page is empty.
    name : str
        The feature, as the file of readings names it; empty where there is one.
    cut : Cut
        The seat, and the system of its print.
    """
    heading(pages, f"Readings: {name or cut.seat.title}")
    sign_here(pages)
    columns = (COLUMNS[PART], *columns_of(cut.seat), COLUMNS[REMARK])
    lines = [(_label(one, cut), limits_words(one, cut), *[""] * PARTS) for one in columns]
    head = ("reading", "good from, to", *(str(number) for number in range(1, PARTS + 1)))
    pages.table([head, *lines], [share * pages.room for share in READINGS], grid=True)


def _label(column: Column, cut: Cut) -> str:
    return f"{column.heading(cut.system)}: {column.about}"


def _balls(pages: Pages, seat: Countersink, system: str) -> None:
    """Say which balls touch the cone, and what a change of their height means."""
    least, greatest = ball_range(seat)
    grows = seat.tangent * 2 * STEP[system]
    pages.text(
        f"A ball touches the cone if it is larger than {show_both(least, system)}, up to "
        f"{show_both(greatest, system)}. Each {show_both(STEP[system], system)} lower means "
        f"{show_both(grows, system)} more diameter."
    )
