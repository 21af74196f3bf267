"""Everything printed is black and white: no meaning hangs on a color."""

import io
from collections.abc import Callable
from itertools import groupby

import numpy as np
import pytest
from matplotlib.colors import to_rgb
from matplotlib.image import imread
from matplotlib.lines import Line2D
from matplotlib.patches import Rectangle
from seatwork.cards import (
    Pages,
    charts,
    coupon_set,
    demonstration,
    formula_page,
    gage_page,
    glossary_page,
    job_card,
    on_paper,
    seat_profile,
    station,
)
from seatwork.drawings.strokes.style import PALETTES
from seatwork.marking import sheets
from seatwork.plan import Plan
from seatwork.record import hand_out

pytestmark = pytest.mark.slow

NOTE = "4X ⌀.201 THRU ⌵ FOR #10-32 FLAT HEAD"
BOTH = "2X ⌀.266 THRU ⌵ ⌀.507 X 82° BOTH SIDES"
PRINTED: dict[str, Callable[[Plan], Pages]] = {
    "job card": job_card,
    "gage page": gage_page,
    "profile": seat_profile,
    "demonstration": demonstration,
    "coupons": lambda _: coupon_set(),
    "formulas": lambda _: formula_page(),
    "glossary": lambda _: glossary_page(),
    "drills": lambda _: charts.drills(),
    "clearance holes": lambda _: charts.clearance_holes(),
    "counterbores": lambda _: charts.counterbores(),
    "sign": lambda _: station.station_sign("bench drill press"),
    "checklist": lambda _: station.crib_checklist(),
}
LEAST_CONTRAST = 4.5
"""Of letters and lines against their ground (WCAG 2.1, 1.4.3)."""


def pixels(pages: Pages, page: int, dpi: float = 60.0) -> np.ndarray:
    """Draw a page; give its pixels, 0 black to 1 white."""
    return imread(io.BytesIO(pages.png(page, dpi=dpi)), format="png")[..., :3]


def luminance(color: object) -> float:
    """Give the relative luminance of a color as a black and white printer lays it down."""
    gray = float(np.dot(to_rgb(color), (0.299, 0.587, 0.114)))
    return gray / 12.92 if gray <= 0.04045 else ((gray + 0.055) / 1.055) ** 2.4


def contrast(first: object, second: object) -> float:
    """Give the contrast ratio of two colors printed in gray."""
    low, high = sorted((luminance(first), luminance(second)))
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize("name", PRINTED)
def test_no_page_has_a_color(name: str, plan_of: Callable[..., Plan]) -> None:
    """No pixel of it, on its first four pages, differs in red, green and blue."""
    pages = PRINTED[name](plan_of(NOTE))
    for number in range(min(4, len(pages.figures))):
        assert np.ptp(pixels(pages, number), axis=2).max() == 0


def test_no_worksheet_has_a_color(tmp_path: object) -> None:
    """Pictures of questions come out in gray on paper, as the printer would make them."""
    sheet = sheets.load("cones")
    pages = on_paper(sheet, hand_out(tmp_path / "course", sheet, ["L07"])[0])
    for number in range(len(pages.figures)):
        assert np.ptp(pixels(pages, number), axis=2).max() == 0


@pytest.mark.parametrize("palette", ["light", "print"])
def test_lines_stand_off_their_ground_in_gray(palette: str) -> None:
    """Ink, hatching, centerlines and contact keep their contrast without a color."""
    colors = PALETTES[palette]
    for line in (colors.ink, colors.hatch, colors.center, colors.contact):
        assert contrast(line, colors.paper) >= LEAST_CONTRAST
    for ground in (colors.metal, colors.screw):
        assert contrast(colors.ink, ground) >= LEAST_CONTRAST


def drawn(pages: Pages) -> list[Line2D]:
    """Give every line of the first page."""
    return [one for one in pages.figures[0].axes[0].get_children() if isinstance(one, Line2D)]


def test_a_section_is_told_by_lines_alone(plan_of: Callable[..., Plan]) -> None:
    """Edges are twice as heavy as other lines, the centerline is broken, metal is hatched."""
    lines = drawn(job_card(plan_of(BOTH, thickness=12.7)))
    weights = sorted({round(line.get_linewidth(), 2) for line in lines})
    edges = [line for line in lines if line.get_linewidth() >= 2 * weights[0]]
    broken = [line for line in lines if line.get_linestyle() not in ("-", "None")]
    hatched = [line for line in lines if _slopes(line) == {1.0}]
    assert edges
    assert broken
    assert hatched
    assert {to_rgb(line.get_color()) for line in edges} == {(0.0, 0.0, 0.0)}


def _slopes(line: Line2D) -> set[float]:
    """Give the slopes of a line that is broken by gaps."""
    points = np.column_stack([line.get_xdata(), line.get_ydata()]).astype(float)
    pieces = [
        np.array(list(group))
        for gap, group in groupby(points, key=lambda point: bool(np.isnan(point[0])))
        if not gap
    ]
    steps = [np.diff(piece, axis=0)[0] for piece in pieces if len(piece) == 2]
    return {round(float(up / along), 3) for along, up in steps if along}


def test_a_stop_is_told_by_word_and_frame(plan_of: Callable[..., Plan]) -> None:
    """What must be settled stands first on the card, in capitals, in a frame of its own weight."""
    pages = job_card(plan_of(BOTH, material="1018 steel", thickness=6.35))
    first = pages.words[0]
    stop = next(place for place, line in enumerate(first) if line.startswith("STOP"))
    assert stop < first.index("Setup 1 of 2: near face up")
    frames = [one for one in pages.figures[0].axes[0].patches if isinstance(one, Rectangle)]
    weights = sorted(frame.get_linewidth() for frame in frames)
    assert weights[-1] >= 2 * weights[-2]
    assert "Not yet" in str(pages)


def test_a_stop_says_what_to_ask(plan_of: Callable[..., Plan]) -> None:
    """Two seats that meet: other screw, thicker plate, or one side (planning rules, B2)."""
    pages = job_card(plan_of(BOTH, material="1018 steel", thickness=6.35))
    front = " ".join(pages.words[0])
    assert "Other screw, thicker plate, or is one side meant?" in front


def test_a_card_without_a_stop_has_no_frame_for_one(plan_of: Callable[..., Plan]) -> None:
    """A plan with nothing to settle says what to set at once."""
    pages = job_card(plan_of(NOTE))
    assert "STOP" not in " ".join(pages.words[0])
    assert "Not yet" not in str(pages)
