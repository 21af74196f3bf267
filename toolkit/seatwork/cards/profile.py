"""The profile of a seat at full size, for a loupe, and at ten times, for a comparator."""

import numpy as np
from matplotlib.lines import Line2D

from seatwork.cards.blocks import heading
from seatwork.cards.lettering import UNITS
from seatwork.cards.pages import MARGIN, Pages
from seatwork.cards.to_scale import MM
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import joined
from seatwork.errors import SeatworkError
from seatwork.plan import Plan, SeatPlan
from seatwork.quantities import INCH
from seatwork.seats import Chamfer, Counterbore, Countersink

BAR = 50.0  # mm
PROOF = "DO NOT USE UNLESS BOTH BARS MEASURE 50 mm. Print at 100%, not fitted to the page."
LOUPE, COMPARATOR = 1.0, 10.0


def seat_profile(plan: Plan, *, paper: str = "") -> Pages:
    """Set the outline of each seat of a plan at 1:1, and at 10:1 where the page holds it.

    Parameters
    ----------
    plan : Plan
        What is cut.
    paper : {"letter", "a4"}, optional
        Size of the pages; by house rule ``display.paper`` if not given.

    Raises
    ------
    SeatworkError
        If the plan has no seat with a depth.
    """
    seats = [(seat, wall) for seat in plan.seats if (wall := _wall(seat)) is not None]
    if not seats:
        raise SeatworkError(
            plan.callout.text, "it has no seat with a profile", "name a countersink or counterbore"
        )
    pages = Pages(paper, foot="Seat profile, full size")
    for number, (seat, wall) in enumerate(seats):
        if number:
            pages.new_page()
        _one_seat(pages, plan, seat, wall)
    return pages


def _wall(seat: SeatPlan) -> profiles.Points | None:
    hole = seat.size("hole")
    match seat.shape:
        case Countersink() as cone:
            return profiles.countersink_wall(cone, -1.5 * cone.depth)
        case Counterbore() as bore:
            return profiles.counterbore_wall(bore, -1.25 * bore.depth)
        case Chamfer() as chamfer if hole is not None:
            return profiles.chamfer_wall(chamfer, hole.value, -2.5 * chamfer.depth)
    return None


def _one_seat(pages: Pages, plan: Plan, seat: SeatPlan, wall: profiles.Points) -> None:
    note = " ".join(plan.callout.text.split())
    heading(pages, f"Seat profile: {seat.title}", f"Print note: {note}")
    for row in seat.size_rows(plan.callout.system):
        pages.text(f"{row.label}: {row.text}")
    pages.space(0.1)
    pages.text(PROOF, size=14.0, bold=True)
    _bars(pages)
    for scale in (LOUPE, COMPARATOR):
        _outline(pages, wall, scale)


def _bars(pages: Pages) -> None:
    """Draw the 50 mm bar twice, across and down: printers stretch the two unlike."""
    top, long = pages.down + 0.15, BAR / INCH
    for x0, y0, x1, y1 in ((0.1, 0.0, 0.1 + long, 0.0), (0.1, 0.0, 0.1, long)):
        pages.stroke(x0, top + y0, x1, top + y1, 1.2)
    for place in (0.1, 0.1 + long):
        pages.stroke(place, top - 0.08, place, top + 0.08, 1.2)
    for place in (0.0, long):
        pages.stroke(0.02, top + place, 0.18, top + place, 1.2)
    pages.words[-1].append("[two bars of 50 mm]")
    pages.set("50 mm", 0.1 + long / 2 - 0.25, top + 0.22)
    pages.set("50 mm", 0.2, top + long / 2)
    pages.down = top


def _outline(pages: Pages, wall: profiles.Points, scale: float) -> None:
    """Draw the profile to the right of the bars, or below them, thin and without dimensions."""
    half, deep = wall[:, 0].max() * scale / INCH, -wall[:, 1].min() * scale / INCH
    beside = scale == LOUPE
    if not beside:
        pages.down += BAR / INCH + 0.35
        if 2 * half + 0.6 > pages.room or pages.down + deep + 0.4 > pages.floor:
            pages.text("At 10:1 it does not fit this page.")
            return
    axis = (MARGIN + (pages.room + 2.4) / 2 if beside else MARGIN + pages.room / 2) * UNITS
    face = (pages.height - pages.down - (0.45 if beside else 0.4)) * UNITS
    middle = np.array([axis, face])
    right = wall * scale * MM
    rim = np.array([(right[0, 0] + 28.0, 0.0), (right[0, 0], 0.0)])
    lines = [np.concatenate([rim, right]) * np.array([side, 1.0]) + middle for side in (1.0, -1.0)]
    axis_line = np.array([(0.0, 15.0), (0.0, right[-1, 1] - 10.0)]) + middle
    pages.axes.add_artist(Line2D(*joined(lines).T, color="black", linewidth=0.6))
    dashes = (0, (9.0, 3.0, 2.0, 3.0))
    pages.axes.add_artist(Line2D(*axis_line.T, color="black", linewidth=0.5, linestyle=dashes))
    said = "full size, 1:1" if beside else "10:1, for a comparator screen of ten times"
    pages.words[-1].append(f"[profile at {said}]")
    pages.set(said, (axis - right[0, 0]) / UNITS - MARGIN, pages.down + 0.16)
