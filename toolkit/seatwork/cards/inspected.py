"""The inspection page: verdicts, run chart and histogram of one quantity, and the practical."""

import io

from matplotlib.axes import Axes
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure

from seatwork.cards.blocks import Day, caption, heading, sign_here, written
from seatwork.cards.pages import Pages
from seatwork.errors import SeatworkError
from seatwork.inspection.findings import Inspection, PartVerdict
from seatwork.inspection.rubric import NOT_CLEARED, rubric
from seatwork.inspection.series import RunChart, histogram, run_chart
from seatwork.units import rounded_length, show_both, show_length

QUANTITIES = ("diameter", "depth", "stand")
COLUMNS = (0.12, 0.2, 0.3, 0.38)
BINS_ACROSS = 8
MOST_PARTS = 500
POINTS = 12.0


def inspection_page(
    inspection: Inspection,
    feature: str,
    *,
    quantity: str = "diameter",
    paper: str = "",
    date: Day = None,
) -> Pages:
    """Set the page of one feature's measured parts.

    Parameters
    ----------
    inspection : Inspection
        What was judged.
    feature : str
        Name of the feature.
    quantity : {"diameter", "depth", "stand"}
        What the charts show.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.
    date : date or str, optional
        Day of printing.

    Raises
    ------
    SeatworkError
        If nothing of that feature was measured, or not that quantity.
    """
    parts = [part for part in inspection.parts if part.measured.feature == feature]
    if not parts:
        raise SeatworkError(feature, "no part of that feature was measured", "name another")
    if len(parts) > MOST_PARTS:
        fault = f"{len(parts):,} parts are too many for one page"
        raise SeatworkError(feature, fault, f"split the file, {MOST_PARTS} parts to a file")
    if quantity not in QUANTITIES:
        raise SeatworkError(quantity, "no chart is drawn of that", f"say {', '.join(QUANTITIES)}")
    chart, system = run_chart(parts, quantity), parts[0].system
    pages = Pages(paper, foot="Inspection sheet")
    heading(pages, f"Inspection: {feature}", f"{parts[0].seat.title}; {written(date)}")
    sign_here(pages)
    _verdicts(pages, parts, chart)
    _charts(pages, chart, system)
    _practical(pages)
    return pages


def _verdicts(pages: Pages, parts: list[PartVerdict], chart: RunChart) -> None:
    caption(pages, "Parts")
    found = dict(zip(chart.parts, chart.values, strict=True))
    rows = [("part", chart.about, "verdict", "what to change")]
    for part in parts:
        mark = part.measured.part
        value = show_both(found[mark], part.system) if mark in found else "not measured"
        rows.append((mark, value, f"{part.mark} {part.verdict}", " ".join(part.changes)))
    pages.table(rows, [share * pages.room for share in COLUMNS])


def _charts(pages: Pages, chart: RunChart, system: str) -> None:
    caption(pages, f"{chart.about}: run chart and histogram", needs=3.0)
    pages.picture(_drawn(chart, system), height=2.7)
    least, greatest = show_length(chart.least, system), show_length(chart.greatest, system)
    pages.text(f"Dashed: limits, {least} to {greatest}. {chart.signal}".strip())
    if len(set(chart.values)) > 1:
        pages.text(chart.capability().explain())


def _practical(pages: Pages) -> None:
    pages.new_page()
    sign_here(pages)
    caption(pages, "Practical, judged by the instructor")
    rows = [("looked at", "what a good part shows", "found")]
    rows += [(line.name, line.asked, line.found) for line in rubric()]
    pages.table(rows, [share * pages.room for share in (0.25, 0.5, 0.25)])
    pages.text(NOT_CLEARED)


def _drawn(chart: RunChart, system: str) -> bytes:
    """Draw both charts in black on white, sharing the scale of sizes."""
    figure = Figure(figsize=(7.0, 2.7), dpi=200)
    FigureCanvasAgg(figure)
    run, count = figure.subplots(1, 2, sharey=True, width_ratios=(2, 1))
    scaled = [float(rounded_length(value, system, 5)) for value in chart.values]
    run.plot(range(1, len(scaled) + 1), scaled, "ko-", linewidth=1.0)
    run.set_xlabel("part, in the order of cutting", fontsize=POINTS)
    run.set_ylabel("in" if system == "inch" else "mm", fontsize=POINTS)
    run.set_xticks(range(1, len(scaled) + 1))
    bins = histogram(scaled, width=_width(chart, system))
    count.barh(
        [(low + high) / 2 for low, high in zip(bins.edges, bins.edges[1:], strict=False)],
        bins.counts,
        height=bins.edges[1] - bins.edges[0],
        facecolor="0.85",
        edgecolor="black",
        hatch="//",
    )
    count.set_xlabel("parts", fontsize=POINTS)
    count.set_xticks(range(max(bins.counts) + 1))
    for axes in (run, count):
        _limits(axes, chart, system)
    figure.tight_layout()
    kept = io.BytesIO()
    figure.savefig(kept, format="png", metadata={"Software": None})
    return kept.getvalue()


def _limits(axes: Axes, chart: RunChart, system: str) -> None:
    for limit in (chart.least, chart.greatest):
        axes.axhline(float(rounded_length(limit, system, 5)), color="black", linestyle="--")
    axes.tick_params(labelsize=POINTS)


def _width(chart: RunChart, system: str) -> float:
    spread = max(chart.greatest - chart.least, 0.02)
    return float(rounded_length(spread / BINS_ACROSS, system, 5)) or 0.001
