"""Wall charts: drills, clearance holes, counterbores; every list with its source."""

from collections.abc import Iterable, Sequence

from seatwork import hardware, shop
from seatwork.cards.blocks import LINE, heading
from seatwork.cards.pages import Pages
from seatwork.errors import SeatworkError
from seatwork.hardware import Drill
from seatwork.hardware.facts import Sourced
from seatwork.quantities import INCH
from seatwork.units import show_both, show_length

INCH_SIZES = ("#4", "#6", "#8", "#10", "1/4", "5/16", "3/8", "7/16", "1/2", "5/8", "3/4")
METRIC_SIZES = ("M3", "M4", "M5", "M6", "M8", "M10", "M12", "M16", "M20")
INCH_FITS, METRIC_FITS = ("close", "normal", "loose"), ("fine", "medium", "coarse")
GROUPS = 3
CHOOSING = "Clearance: next size up. Tap drill: as listed. Reamer: next under."
COLUMNS = {2: (0.0, 1.05), 3: (0.0, 0.75, 1.45)}
LARGEST_STEP = 12.0  # mm; above it the chart holds whole millimeters only


def drills(*, paper: str = "") -> Pages:
    """Set the drill chart: number, letter and fractional drills, then the metric ones.

    Parameters
    ----------
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    pages = Pages(paper, foot="Wall chart: drills")
    inch = [drill for drill in hardware.drills("inch") if drill.diameter <= INCH]
    _drill_page(pages, "Drills: number, letter and fraction", inch, inch_first=True)
    pages.new_page()
    metric = [drill for drill in hardware.drills("metric") if _usual(drill)]
    _drill_page(pages, "Drills: metric", metric, inch_first=False)
    return pages


def _usual(drill: Drill) -> bool:
    """Tell whether a metric drill is on the chart: tenths up to 12 mm, whole ones up to 20 mm."""
    step = 0.1 if drill.diameter <= LARGEST_STEP else 1.0
    steps = drill.diameter / step
    return 1.0 <= drill.diameter <= 20.0 and abs(steps - round(steps)) < 1e-6


def _drill_page(pages: Pages, title: str, drills: Sequence[Drill], *, inch_first: bool) -> None:
    columns = "name, inches, millimeters" if inch_first else "name, inches"
    heading(pages, title, f"Columns: {columns}. {CHOOSING}")
    cells = [_cell(drill, inch_first) for drill in drills]
    source = _sources(drills)
    _down_the_columns(pages, cells, leave=pages.high(source) + 0.1)
    pages.space(0.08)
    pages.text(source)


def _cell(drill: Drill, inch_first: bool) -> tuple[str, ...]:
    """Return name and size; a metric drill's name is its size."""
    metric, inch = show_length(drill.diameter, "metric"), show_length(drill.diameter, "inch", 4)
    if inch_first:
        return drill.name, inch.removesuffix(" in"), metric.removesuffix(" mm")
    return drill.name, inch


def _down_the_columns(pages: Pages, cells: Sequence[tuple[str, ...]], *, leave: float) -> None:
    """Set short rows down three columns, as many pages as they take."""
    wide = pages.room / GROUPS
    place = 0
    while place < len(cells):
        if place:
            pages.new_page()
        top = pages.down
        deep = int((pages.floor - top - leave) / LINE)
        deep = min(deep, -(-(len(cells) - place) // GROUPS))
        for number, row in enumerate(cells[place : place + GROUPS * deep]):
            group, line = divmod(number, deep)
            _short_row(pages, row, group * wide, top + (line + 1) * LINE - 0.04)
        place += GROUPS * deep
        pages.down = top + deep * LINE
        for group in range(1, GROUPS):
            pages.stroke(group * wide - 0.1, top, group * wide - 0.1, pages.down)


def _short_row(pages: Pages, row: tuple[str, ...], left: float, base: float) -> None:
    pages.words[-1].append(" ".join(row))
    for number, (words, right) in enumerate(zip(row, COLUMNS[len(row)], strict=True)):
        pages.set(words, left + right, base, bold=number == 0)


def clearance_holes(*, paper: str = "") -> Pages:
    """Set the chart of clearance holes, inch and metric, all three fits.

    Parameters
    ----------
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    pages = Pages(paper, foot="Wall chart: clearance holes")
    rules = shop.rules()
    for system, sizes, fits in (
        ("inch", INCH_SIZES, INCH_FITS),
        ("metric", METRIC_SIZES, METRIC_FITS),
    ):
        usual = rules.word(f"hole.{system}_fit")
        pages.keep_together(4.0)
        heading(pages, f"Clearance holes, {system}", f"House rule hole.{system}_fit: {usual}.")
        found = [[hardware.clearance_hole(size, fit) for fit in fits] for size in sizes]
        rows = [
            (size, *(_hole(one, system) for one in holes))
            for size, holes in zip(sizes, found, strict=True)
        ]
        columns = [0.16, *[0.28] * 3]
        unit = "in (mm)" if system == "inch" else "mm (in)"
        head = ("screw", *(f"{fit}, {unit}" for fit in fits))
        pages.table([head, *rows], [share * pages.room for share in columns])
        pages.text(_sources(one for holes in found for one in holes))
        pages.space(0.2)
    return pages


def _hole(hole: hardware.ClearanceHole, system: str) -> str:
    """Write a hole without units, which the heading names: drill, size, the other system."""
    other = "metric" if system == "inch" else "inch"
    size, beside = (show_length(hole.diameter, one).split()[0] for one in (system, other))
    drill = f"{hole.drill}: " if hole.drill and system == "inch" else ""
    return f"{drill}{size} ({beside})"


def counterbores(*, paper: str = "") -> Pages:
    """Set the chart of counterbores for socket head cap screws.

    Parameters
    ----------
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    """
    pages = Pages(paper, foot="Wall chart: counterbores")
    below = shop.rules()["counterbore.inch_below_face"].shown
    for system, sizes in (("inch", INCH_SIZES), ("metric", METRIC_SIZES)):
        pages.keep_together(4.0)
        line = f"House rule counterbore.inch_below_face: {below}." if system == "inch" else ""
        heading(pages, f"Counterbores for socket head cap screws, {system}", *filter(None, [line]))
        found = [(size, _bore(size)) for size in sizes]
        rows = [
            (
                size,
                show_both(hardware.clearance_hole(size).diameter, system),
                show_both(bore.diameter, system),
                show_both(bore.depth, system),
            )
            for size, bore in found
            if bore is not None
        ]
        head = ("screw", "clearance hole", "counterbore diameter", "depth from the face")
        pages.table([head, *rows], [share * pages.room for share in (0.16, 0.28, 0.28, 0.28)])
        pages.text(_sources(bore for _, bore in found if bore is not None))
        pages.space(0.2)
    pages.text("The wrench socket must fit too: a hex cap screw needs a larger counterbore.")
    return pages


def _bore(size: str) -> hardware.CounterboreSize | None:
    try:
        return hardware.listed_counterbore(f"{size} SHCS")
    except SeatworkError:
        return None


def _sources(found: Iterable[Sourced]) -> str:
    """Name each document once, and say what is from memory."""
    return "Source: " + "; ".join(dict.fromkeys(_document(one) for one in found)) + "."


def _document(one: Sourced) -> str:
    document = one.source.partition(";")[0]
    return document if "memory" in document or not one.caution else f"{document} ({one.caution})"
