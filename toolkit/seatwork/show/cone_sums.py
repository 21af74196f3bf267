"""Sentences about cones: depth, the triangle, and travel."""

from seatwork import checks, hardware, seats, units
from seatwork.errors import SeatworkError
from seatwork.seats.cones import half_tangent
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import diameter_of, system_of
from seatwork.units import show_angle, show_both, show_number


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
