"""Sentences about the stop: what an error of it does, and how deep a tip goes to spot a mouth."""

import re

from seatwork import checks, hardware, units
from seatwork.errors import SeatworkError
from seatwork.seats.cones import half_tangent
from seatwork.seats.touching_off import diameter_error
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import system_of
from seatwork.units import show_angle, show_both

TURN = re.compile(r"(\d+)/(\d+) turn of (.+)")
DEEPEST_TURN = 20


def stop_error(error: str, *, angle: float, head: bool = False) -> Said:
    """Say how much wider a seat becomes when the stop lets the quill too deep.

    Parameters
    ----------
    error : str
        How much too deep: ``.005 in``, or a part of a turn of the stop's screw:
        ``1/6 turn of 1/2-20``.
    angle : float
        Included angle of the cutter [deg].
    head : bool
        Whether to say also how much lower a head of that angle lies.

    Returns
    -------
    Said
        The error, and how much wider the seat is at the face; four decimals for a part of a turn.

    Raises
    ------
    SeatworkError
        If the error is no size, or the angle makes no cone.

    Examples
    --------
    >>> print(stop_error("1/6 turn of 1/2-20", angle=82, head=True))
    stop too deep by: 0.0083 in (0.21 mm)
    diameter at the face: 0.0145 in (0.37 mm) wider
    a flat head lies: 0.0083 in (0.21 mm) lower
    """
    deep, code, places = _error(error)
    wider = diameter_error(depth_error=deep, included_angle=angle)
    system = system_of(error)
    told = [
        ("stop too deep by", show_both(deep, system, places)),
        ("diameter at the face", f"{show_both(wider, system, places)} wider"),
    ]
    if head:  # head and seat are one cone: it follows the stop
        told.append(("a flat head lies", f"{show_both(deep, system, places)} lower"))
    call = f"sw.seats.touching_off.diameter_error(depth_error={code}, included_angle={angle:g})"
    return said(*told, code=(f"wider = {call}", "print(sw.units.show_both(wider, places=4))"))


def _error(text: str) -> tuple[float, str, int | None]:
    """Read an error of the stop [mm], the Python that reads it, and its decimals if not usual."""
    found = TURN.fullmatch(" ".join(text.split())) if isinstance(text, str) else None
    if not found:
        return units.length(text), typed(text), None
    part, whole, screw = int(found[1]), int(found[2]), found[3]
    pitch = hardware.thread(screw).pitch
    if pitch is None:
        raise SeatworkError(screw, "its pitch is not said", "write it, such as 1/2-20")
    if whole == 0 or not part <= DEEPEST_TURN * whole:
        raise SeatworkError(text, "that is no part of a turn", "write such as 1/6 turn of 1/2-20")
    code = f"sw.hardware.thread({quoted(screw)}).pitch * {part} / {whole}"
    return pitch * part / whole, code, 4


def spot(*, mouth: str, tools: tuple[float, ...]) -> Said:
    """Say how deep the tip of a tool goes to spot a mouth of a size.

    Parameters
    ----------
    mouth : str
        Diameter of the mouth at the face.
    tools : tuple of float
        Included angles of the tools [deg].

    Returns
    -------
    Said
        Depth of the tip below the face for each tool, taken as sharp.

    Raises
    ------
    SeatworkError
        If the mouth is no size, or an angle makes no cone.

    Examples
    --------
    >>> print(spot(mouth=".306 in", tools=(90, 120)))
    90° tool: its tip is 0.153 in (3.89 mm) below the face
    120° tool: its tip is 0.088 in (2.24 mm) below the face
    """
    wide, system = units.length(mouth), system_of(mouth)
    checks.length(wide, "mouth")
    told = [
        (
            f"{show_angle(tool)} tool",
            f"its tip is {show_both(wide / 2 / half_tangent(tool), system)} below the face",
        )
        for tool in tools
    ]
    if not told:
        raise SeatworkError("no tool", "there is nothing to say", "write tools=(90, 120)")
    lines = [
        f"print(sw.units.show_both({typed(mouth)} / 2 / tan(radians({tool:g} / 2))))"
        for tool in tools
    ]
    return said(*told, code=("from math import radians, tan", *lines))
