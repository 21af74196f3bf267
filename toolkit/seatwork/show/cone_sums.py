"""Sentences about cones: depth, the triangle, travel, and what a stop error does."""

import re

from seatwork import checks, hardware, seats, units
from seatwork.errors import SeatworkError
from seatwork.seats.cones import half_tangent
from seatwork.seats.touching_off import diameter_error
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import diameter_of, system_of
from seatwork.units import show_angle, show_both, show_number

TURN = re.compile(r"(\d+)/(\d+) turn of (.+)")
DEEPEST_TURN = 20


def depth(diameter: str = "", *, screw: str = "", hole: str, angle: float, sheet: str = "") -> Said:
    """Say how deep a cone is, from the face to the edge of the hole.

    Parameters
    ----------
    diameter : str
        Diameter at the face, such as ``.283 in``; left out where a screw is named.
    screw : str
        A flat head screw, whose theoretical sharp diameter is then the seat's.
    hole : str
        The hole: a size or a drill.
    angle : float
        Included angle of the seat [deg].
    sheet : str
        Thickness of the sheet, if what is left of it is to be said too.

    Returns
    -------
    Said
        The depth; of a sheet also which part of it that is, and what is left.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or the sizes make no cone.

    Examples
    --------
    >>> print(depth(screw="#10 flat head", hole="#7", angle=82))
    82° seat: 0.106 in (2.69 mm) deep
    """
    seat, lines = _seat(diameter, screw, hole, angle)
    system = system_of(diameter, screw, hole)
    told = [(f"{show_angle(angle)} seat", f"{show_both(seat.depth, system)} deep")]
    lines = [*lines, f'print(sw.units.show_both(seat.depth, "{system}"))']
    if sheet:
        thick = units.length(sheet)
        told += _of_the_sheet(seat.depth, thick, system)
        lines += [f"print(100 * seat.depth / {typed(sheet)})"]
    return said(*told, code=lines)


def _of_the_sheet(deep: float, thick: float, system: str) -> list[tuple[str, str]]:
    """Say which part of a sheet a cone takes, and what is left or missing."""
    checks.length(thick, "thickness of the sheet")
    part = f"{show_number(100 * deep / thick, 0)} % of {show_both(thick, system)}"
    left = thick - deep
    if left <= 0:
        return [("of the sheet", f"{part}: deeper than the sheet")]
    return [("of the sheet", part), ("left", show_both(left, system))]


def _seat(
    diameter: str, screw: str, hole: str, angle: float
) -> tuple[seats.Countersink, list[str]]:
    """Return a seat of what was typed, and the lines that make it."""
    if bool(diameter) == bool(screw):
        raise SeatworkError(
            diameter or "no diameter and no screw",
            "a cone has one width at the face",
            "write the diameter, or the screw, one of the two",
        )
    through, hole_code = diameter_of(hole)
    if screw:
        wide, code = hardware.screw(screw).head.sharp_diameter, f"sw.screw({quoted(screw)}).head"
        code += ".sharp_diameter"
    else:
        wide, code = units.length(diameter), typed(diameter)
    seat = seats.Countersink(diameter=wide, hole_diameter=through, included_angle=angle)
    return seat, _made(code, hole_code, angle)


def _made(diameter: str, hole: str, angle: float, name: str = "seat") -> list[str]:
    """Write the lines that make a seat."""
    return [
        f"{name} = sw.Countersink(",
        f"    diameter={diameter},",
        f"    hole_diameter={hole},",
        f"    included_angle={angle:g},",
        ")",
    ]


def depths(diameter: str, *, hole: str, angles: tuple[float, ...]) -> Said:
    """Say how deep one cone is at several angles.

    Parameters
    ----------
    diameter : str
        Diameter at the face.
    hole : str
        The hole: a size or a drill.
    angles : tuple of float
        Included angles [deg].

    Returns
    -------
    Said
        A depth for each angle.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or the sizes make no cone.

    Examples
    --------
    >>> print(depths("12 mm", hole="6 mm", angles=(82, 90)))
    82° seat: 3.45 mm (0.136 in) deep
    90° seat: 3.00 mm (0.118 in) deep
    """
    each = [depth(diameter, hole=hole, angle=angle) for angle in angles]
    if not each:
        raise SeatworkError("no angle", "there is nothing to say", "write angles=(82, 90)")
    lines = [line for one in each for line in one.code().splitlines()[2:]]
    return said(*((row.label, row.text) for one in each for row in one.rows), code=lines)


def depth_factor(angle: float) -> Said:
    """Say how deep a cone goes for each inch that it widens from hole to face.

    Parameters
    ----------
    angle : float
        Included angle [deg].

    Returns
    -------
    Said
        Depth for a difference in diameter of 1, a plain number.

    Raises
    ------
    SeatworkError
        If the angle makes no cone.

    Examples
    --------
    >>> print(depth_factor(82))
    82°: 0.575 deep for each 1.000 of difference in diameter
    """
    factor = 0.5 / half_tangent(angle)
    lines = _made("2.0", "1.0", angle, "one")
    return said(
        (
            show_angle(angle),
            f"{show_number(factor, 3, 3)} deep for each 1.000 of difference in diameter",
        ),
        code=(*lines, "print(one.depth)"),
    )


def triangle(diameter: str, *, hole: str, angle: float) -> Said:
    """Say the triangle of a cone: across, half the angle, down.

    Parameters
    ----------
    diameter : str
        Diameter at the face.
    hole : str
        The hole: a size or a drill.
    angle : float
        Included angle [deg].

    Returns
    -------
    Said
        Across [in and mm], half the angle with its tangent, and down.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or the sizes make no cone.

    Examples
    --------
    >>> print(triangle(".507 in", hole=".266 in", angle=82))
    across: 0.1205 in (3.06 mm), half the difference of 0.507 in and 0.266 in
    half the angle: 41°, tangent 0.869
    down: across ÷ tangent = 0.139 in (3.52 mm)
    """
    seat, lines = _seat(diameter, "", hole, angle)
    system = system_of(diameter, hole)
    across = (seat.diameter - seat.hole_diameter) / 2
    sizes = (units.show_length(one, system) for one in (seat.diameter, seat.hole_diameter))
    four = 4 if system == "inch" else None
    return said(
        (
            "across",
            f"{show_both(across, system, four)}, half the difference of {' and '.join(sizes)}",
        ),
        ("half the angle", f"{show_angle(angle / 2)}, tangent {show_number(seat.tangent, 3, 3)}"),
        ("down", f"across ÷ tangent = {show_both(seat.depth, system)}"),
        code=(*lines, f'print(sw.units.show_both(seat.depth, "{system}"))'),
    )


def travel(diameter: str, *, hole: str, angle: float, nose: str = "") -> Said:
    """Say how far the quill travels to a full cone, by what touched first.

    Parameters
    ----------
    diameter : str
        Diameter at the face.
    hole : str
        The hole: a size or a drill.
    angle : float
        Included angle [deg].
    nose : str
        Diameter of the flat nose of the tool, to say the travel from a solid face too.

    Returns
    -------
    Said
        Travel after the lips touch the edge of the hole, and after the nose touches metal.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or the sizes make no cone.

    Examples
    --------
    >>> print(travel(".507 in", hole=".266 in", angle=82, nose=".060 in"))
    after the lips touch the edge of the hole: 0.139 in (3.52 mm)
    after the nose touches solid metal: 0.257 in (6.53 mm)
    """
    seat, lines = _seat(diameter, "", hole, angle)
    system = system_of(diameter, hole)
    told = [
        (
            "after the lips touch the edge of the hole",
            show_both(seat.travel_from_hole_edge(), system),
        )
    ]
    lines = [*lines, "print(sw.units.show_both(seat.travel_from_hole_edge()))"]
    if nose:
        far = seat.travel_from_face(units.length(nose))
        told.append(("after the nose touches solid metal", show_both(far, system)))
        lines.append(f"print(sw.units.show_both(seat.travel_from_face({typed(nose)})))")
    return said(*told, code=lines)


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
