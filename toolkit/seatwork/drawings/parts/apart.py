"""A screw above its seat, not yet let down: for asking how it will lie."""

from typing import Any

from matplotlib.axes import Axes

from seatwork.drawings.parts.seat_view import SeatView
from seatwork.drawings.parts.seated import SeatedHead
from seatwork.drawings.parts.words import an
from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Linework, Point, linework_patches, unit
from seatwork.drawings.strokes.metal import Window, draw_metal
from seatwork.drawings.strokes.style import FONT, Style, page, style
from seatwork.seats import fit
from seatwork.units import show_angle, show_both

AXIS, FACE, HALF_PLATE, BOTTOM = 465.0, 330.0, 245.0, 50.0
WIDEST, HIGHEST, DEEPEST = 380.0, 250.0, 230.0
"""Most that head or seat may take across, that the head may be high, the seat deep."""

LIFT = 55.0
"""Gap between the end of the head's cone and the face [page units]."""

COLUMN, HEADING, LABELS = 765.0, 600.0, 208.0


def head_over_seat(part: SeatedHead, look: Look | None = None) -> Drawing:
    """Draw a screw above its seat, with both angles and sizes, and nothing about the contact.

    Parameters
    ----------
    part : SeatedHead
        Head and seat.
    look : Look, optional
        Units, palette, size.

    Returns
    -------
    Drawing
        A still section.

    Raises
    ------
    SeatworkError
        If the head cannot lie in the seat.
    """
    fit(part.head, part.seat)
    look = look or Look()
    its = style(look)
    figure, axes = page(its.colors)
    window = _window(part)
    draw_metal(axes, its, window)
    amount = profiles.neck_depth(part.head, part.seat) + LIFT / window.scale
    SeatView(axes, its).place(part, amount, window)
    _label(axes, its, part, amount, window)
    sizes = _sizes(part, look.system)
    _list(axes, its, sizes)
    return Drawing(figure, _text(part, look.system))


def _window(part: SeatedHead) -> Window:
    scale = min(
        WIDEST / max(part.seat.diameter, part.head.edge),
        HIGHEST / profiles.neck_depth(part.head, part.seat),
        DEEPEST / part.seat.depth,
    )
    return Window(
        axis=AXIS,
        face=FACE,
        left=AXIS - HALF_PLATE,
        right=AXIS + HALF_PLATE,
        bottom=BOTTOM,
        scale=scale,
    )


def _label(axes: Axes, its: Style, part: SeatedHead, amount: float, window: Window) -> None:
    """Name both cones, with a leader to the middle of each side."""
    head, seat = part.head, part.seat
    shank = profiles.shank_diameter(head, seat)
    neck = profiles.neck_depth(head, seat)
    on_head = window.spot(-(head.edge + shank) / 4, amount - (head.rim_depth + neck) / 2)
    on_seat = window.spot(-(seat.diameter + seat.hole_diameter) / 4, -seat.depth / 2)
    work = Linework(its.sizes)
    for cone, name, spot in ((head, "head", on_head), (seat, "seat", on_seat)):
        text = f"{show_angle(cone.included_angle)} {name}"
        start = (LABELS, spot[1] - 60.0 if name == "seat" else spot[1])
        _lead(axes, its, work, text, start, spot)
    for patch, path in zip(linework_patches(axes, its), (work.lines, work.heads), strict=True):
        patch.set_path(path)


def _lead(axes: Axes, its: Style, work: Linework, text: str, start: Point, spot: Point) -> None:
    looks: dict[str, Any] = {"fontfamily": FONT, "fontsize": its.sizes.text, "zorder": 5.3}
    axes.text(*start, text, ha="right", va="center", color=its.colors.ink, **looks)
    shoulder = (start[0] + 24.0, start[1])
    tip = spot - its.sizes.edge / 2 * unit(shoulder, spot)
    work.leader((start[0] + 8.0, start[1]), shoulder, tuple(tip))


def _sizes(part: SeatedHead, system: str) -> tuple[tuple[str, str], ...]:
    head, seat = part.head, part.seat
    edge = () if head.edge_diameter is None else (("edge of the head", head.edge_diameter),)
    sizes = (
        ("theoretical sharp diameter", head.sharp_diameter),
        *edge,
        ("seat, at the face", seat.diameter),
        ("hole", seat.hole_diameter),
    )
    return tuple((name, show_both(size, system)) for name, size in sizes)


def _list(axes: Axes, its: Style, sizes: tuple[tuple[str, str], ...]) -> None:
    looks: dict[str, Any] = {"fontfamily": FONT, "fontsize": its.sizes.text, "zorder": 5.3}
    pen = HEADING
    for name, size in sizes:
        axes.text(COLUMN, pen, name, color=its.colors.ink, **looks)
        axes.text(COLUMN, pen - its.line_height, size, color=its.colors.ink, **looks)
        pen -= 2.4 * its.line_height


def _text(part: SeatedHead, system: str) -> str:
    head, seat = (an(show_angle(cone.included_angle)) for cone in (part.head, part.seat))
    sizes = "; ".join(f"{name} {size}" for name, size in _sizes(part, system))
    return f"Section of {head} head above {seat} seat, not yet let down: {sizes}."
