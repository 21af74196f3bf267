"""A seat in section, drawn to a standard scale, with the bar that proves the scale."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import numpy as np
from matplotlib.axes import Axes
from matplotlib.lines import Line2D
from matplotlib.patches import Polygon, Rectangle

from seatwork.cards.lettering import SIZE, UNITS, width, write
from seatwork.cards.section import Face, Shown
from seatwork.drawings.strokes import profiles
from seatwork.drawings.strokes.linework import Linework, joined, linework_patches
from seatwork.drawings.strokes.metal import BELOW_BREAK, Window, draw_metal
from seatwork.drawings.strokes.scales import BARS, SCALES
from seatwork.drawings.strokes.style import CENTER_DASHES, PALETTES, POINTS, Sizes, Style
from seatwork.errors import SeatworkError
from seatwork.quantities import INCH
from seatwork.units import show_angle, show_length, show_number

MM = UNITS / INCH
PRINT = Style(
    colors=PALETTES["print"],
    sizes=Sizes(text=SIZE, large=16.0, edge=2.6, thin=1.1, contact=3.0, arrow=11.0, hatch=11.0),
)
SIDE = 132.0
ABOVE, BELOW = 68.0, 66.0
PLATE = 34.0
RISE = 26.0
LOW, HIGH = 2.3, 3.1
"""Height of a section of one seat, and of one that shows the part to its other end [in]."""

OTHER_FACE = 92.0
"""Below the other face: what is dimensioned there, and the scale bar [page units]."""

TAIL = 20.0
LAND_ROOM = 60.0
"""Least height between two seats for an arrow to the hole [page units]."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """A rectangle on the page [1/100 in], origin of the page at the lower left."""

    left: float
    top: float
    wide: float
    high: float


def height(shown: Shown) -> float:
    """Return the height that a section takes on the card [in]."""
    deep = shown.thickness is not None or shown.blind
    return HIGH if deep else LOW


def pick_scale(shown: Shown, place: Place) -> float:
    """Return the largest standard scale at which the section fits its place [-].

    Raises
    ------
    SeatworkError
        If the seat is too large for the smallest scale.
    """
    wide = (place.wide - SIDE - 2 * PLATE) / MM
    rest = OTHER_FACE if shown.thickness is not None else BELOW + RISE
    deep = (place.high - ABOVE - rest) / MM
    for scale in SCALES:
        if shown.diameter * scale <= wide and shown.depth * scale <= deep:
            return scale
    raise SeatworkError(
        f"{shown.diameter:.4g} mm", "it is too large for the drawing on a card", "check the note"
    )


def draw(axes: Axes, place: Place, shown: Shown, system: str) -> tuple[str, float]:
    """Draw the section to scale, dimensioned, with its scale bar.

    Parameters
    ----------
    axes : matplotlib.axes.Axes
        The page.
    place : Place
        Where it goes.
    shown : Shown
        What to show.
    system : {"inch", "metric"}
        Units of the dimensions.

    Returns
    -------
    str
        What is written on it.
    float
        How high it came out [page units].
    """
    scale = pick_scale(shown, place)
    window = _window(place, shown, scale)
    whole = shown.thickness is not None
    draw_metal(axes, PRINT, window, whole=whole)
    _edges(axes, shown, window)
    work = Linework(PRINT.sizes)
    told = [*_dimensions(axes, work, shown, window, system)]
    low = window.bottom - (OTHER_FACE if whole else BELOW) + 6.0
    told.append(_bar(axes, window, low, scale, system, shown.to_scale))
    for patch, path in zip(linework_patches(axes, PRINT), (work.lines, work.heads), strict=True):
        patch.set_path(path)
        patch.set_zorder(6.0)
    return "; ".join(told), place.top - low + 6.0


def _window(place: Place, shown: Shown, scale: float) -> Window:
    half = min((place.wide - SIDE) / 2, shown.diameter * scale * MM / 2 + 2.2 * PLATE)
    face = place.top - ABOVE
    bottom = place.top - place.high + BELOW
    if shown.thickness is not None:
        bottom = face - shown.thickness * scale * MM
    return Window(
        axis=place.left + 6.0 + half,
        face=face,
        left=place.left + 6.0,
        right=place.left + 6.0 + 2 * half,
        bottom=bottom,
        scale=scale * MM,
    )


def _edges(axes: Axes, shown: Shown, window: Window) -> None:
    """Cut the hole out of the metal and draw every visible edge."""
    wall, opening = shown.wall.copy(), shown.wall.copy()
    if shown.thickness is None and not shown.blind:
        wall[-1, 1] = window.deepest
        opening[-1, 1] = window.deepest - BELOW_BREAK / window.scale
    hole = window.to_page(profiles.whole(opening))
    axes.add_artist(Polygon(hole, facecolor="white", linewidth=0, zorder=2.0))
    across = [np.array([(-x, y), (x, y)]) for x, y in shown.wall[1:-1] if y < 0.0]
    lines = [window.to_page(line) for line in (*profiles.left_and_right(wall), *across)]
    lines += [np.array([(window.left, y), (window.right, y)]) for y in _faces(shown, window)]
    edge = PRINT.sizes.edge * POINTS
    axes.add_artist(Line2D(*joined(lines).T, color="black", linewidth=edge, zorder=2.5))
    thin: dict[str, Any] = {"color": "black", "linewidth": PRINT.sizes.thin * POINTS}
    middle = np.array([(window.axis, window.face + 14), (window.axis, window.bottom - 10)])
    axes.add_artist(Line2D(*middle.T, linestyle=CENTER_DASHES, zorder=3.5, **thin))
    if shown.thread is not None:
        for line in _thread(shown.thread, shown, window):
            axes.add_artist(Line2D(*line.T, zorder=2.4, **thin))


def _faces(shown: Shown, window: Window) -> tuple[float, ...]:
    return (window.face, window.bottom) if shown.thickness is not None else (window.face,)


def _thread(
    thread: tuple[float, float, float], shown: Shown, window: Window
) -> Iterator[profiles.Points]:
    """Yield a thread as drawings show it cut: thin lines at the major diameter, and its end."""
    major, start, end = thread
    deep = -end if shown.blind else window.deepest
    for side in (-major / 2, major / 2):
        yield window.to_page(np.array([(side, -start), (side, deep)]))
        if shown.blind:
            inner = np.copysign(shown.hole_diameter / 2, side)
            yield window.to_page(np.array([(inner, deep), (side, deep)]))


def _dimensions(
    axes: Axes, work: Linework, shown: Shown, window: Window, system: str
) -> Iterator[str]:
    faces = ((shown.upper, window.face, 1.0), (shown.lower, window.bottom, -1.0))
    for face, height, up in faces:
        if face is not None and face.dimensioned:
            yield from _seat(axes, work, face, window, system, height, up)
    if shown.thickness is None:
        yield _hole(axes, work, shown, window, system)
    elif (land := _land(shown, window)) is not None:
        yield _pointed_at(axes, work, shown, window, system, land)


def _seat(
    axes: Axes, work: Linework, face: Face, window: Window, system: str, height: float, up: float
) -> Iterator[str]:
    """Dimension the seat at one face: across beyond the face, its depth to the right."""
    line = height + up * 34.0
    half = face.diameter / 2 * window.scale
    for x in (window.axis - half, window.axis + half):
        work.extension((x, height), (x, line))
    work.dimension((window.axis - half, line), (window.axis + half, line))
    across = f"⌀ {show_length(face.diameter, system)}"
    if face.angle is not None:
        across += f" X {show_angle(face.angle)}"
    _middled(axes, window.axis, line + (12.0 if up > 0 else -28.0), across, left=window.left)
    floor, beside = height - up * face.depth * window.scale, window.right + 16.0
    work.extension((window.right, height), (beside, height))
    work.extension((window.axis + half, floor), (beside, floor))
    _deep(work, beside, height, floor, up)
    deep = f"↧ {show_length(face.depth, system)}"
    write(axes, beside + 9.0, (height + floor) / 2 - 5.0, deep)
    yield from (across, deep)


def _deep(work: Linework, x: float, height: float, floor: float, up: float) -> None:
    """Dimension a depth; arrows that have no room come from outside, and not far."""
    if abs(height - floor) > 3.0 * PRINT.sizes.arrow:
        work.dimension((x, floor), (x, height))
        return
    for tip, away in ((height, up), (floor, -up)):
        work.line((x, tip + away * TAIL), (x, tip + away * 0.6 * PRINT.sizes.arrow))
        work.head((x, tip), (0.0, -away))


def _land(shown: Shown, window: Window) -> float | None:
    """Return the height of the middle between two seats; None where a word has no room."""
    assert shown.thickness is not None
    above = shown.upper.depth if shown.upper else 0.0
    below = shown.thickness - (shown.lower.depth if shown.lower else 0.0)
    room = (below - above) * window.scale
    return window.face - (above + below) / 2 * window.scale if room > LAND_ROOM else None


def _pointed_at(
    axes: Axes, work: Linework, shown: Shown, window: Window, system: str, height: float
) -> str:
    """Point at the wall of the hole between two seats."""
    beside = window.right + 25.0
    wall = window.axis + shown.hole_diameter / 2 * window.scale
    work.leader((beside - 3.0, height), (wall, height))
    text = f"⌀ {show_length(shown.hole_diameter, system)}"
    write(axes, beside, height - 5.0, text)
    return f"hole {text}"


def _hole(axes: Axes, work: Linework, shown: Shown, window: Window, system: str) -> str:
    ends = [window.spot(side * shown.hole_diameter / 2, window.deepest) for side in (-1, 1)]
    line = window.bottom - 20.0
    for end in ends:
        work.extension(end, (end[0], line))
    work.dimension(*((x, line) for x, _ in ends))
    text = f"hole ⌀ {show_length(shown.hole_diameter, system)}"
    half = shown.hole_diameter / 2 * window.scale
    right = window.axis + half + (10.0 if 2 * half > 3 * PRINT.sizes.arrow else 30.0)
    write(axes, right, line - 5.0, text)
    return text


def _middled(axes: Axes, x: float, y: float, words: str, *, left: float) -> None:
    start = max(left, x - width(words) * UNITS / 2)
    write(axes, start, y, words)


def _bar(axes: Axes, window: Window, low: float, scale: float, system: str, to_scale: bool) -> str:
    """Draw the scale bar: a round length of the part, half of it filled."""
    fits = [length for length in BARS[system] if length * window.scale <= 120.0]
    length = fits[-1] if fits else BARS[system][0]
    long = length * window.scale
    for start, color in ((0.0, "black"), (0.5, "white")):
        corner = (window.left + start * long, low)
        half = Rectangle(corner, long / 2, 9.0, facecolor=color, edgecolor="black", linewidth=0.8)
        half.set_zorder(7.0)
        axes.add_artist(half)
    ratio = f"{scale:g}:1" if scale >= 1 else f"1:{1 / scale:g}"
    unit_name = "in" if system == "inch" else "mm"
    shown = show_number(length / INCH if system == "inch" else length, 3)
    text = f"{shown} {unit_name}, scale {ratio}"
    if not to_scale:
        text += "; thickness as it comes"
    write(axes, window.left + long + 8.0, low, text)
    return text
