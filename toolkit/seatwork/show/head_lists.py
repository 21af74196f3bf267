"""Sentences about flat heads: diameters, heights, gages, and the pin in a seat."""

from seatwork import checks, hardware, seats, units
from seatwork.errors import SeatworkError
from seatwork.seats import protrusion
from seatwork.seats.cones import half_tangent
from seatwork.shop import rules
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import system_of
from seatwork.units import show_both, show_length


def diameters(screw: str) -> Said:
    """Say the three diameters of a flat head.

    Parameters
    ----------
    screw : str
        The screw by its name.

    Returns
    -------
    Said
        Theoretical sharp, greatest edge and least rounded edge, as far as lists give them.

    Raises
    ------
    SeatworkError
        If there is no such screw, or its head has no cone.

    Examples
    --------
    >>> print(diameters("1/4 flat head machine screw"))
    theoretical sharp: 0.507 in (12.88 mm)
    greatest edge: 0.477 in (12.12 mm)
    least rounded edge: 0.442 in (11.23 mm)
    """
    found, system = hardware.screw(screw), system_of(screw)
    sizes = {
        "theoretical sharp": ("sharp_diameter", found.head.sharp_diameter),
        "greatest edge": ("edge_diameter", found.edge_diameter),
        "least rounded edge": ("rounded_edge_diameter", found.rounded_edge_diameter),
    }
    known = {label: one for label, one in sizes.items() if one[1] is not None}
    return said(
        *((label, show_both(one[1] or 0.0, system)) for label, one in known.items()),
        code=(
            f"screw = sw.screw({quoted(screw)})",
            *(f"print(sw.units.show_both(screw.{name}))" for name, _ in known.values()),
        ),
    )


def _gage(screw: str) -> hardware.Gage:
    """Return the gage of a screw's head, or refuse where no list gives one."""
    gage = hardware.screw(screw).gage
    if gage is None:
        raise SeatworkError(
            screw, "no list here gives its gage", "take one it gives, such as 1/4 flat head"
        )
    return gage


def gage_spread(screw: str) -> Said:
    """Say how far good heads of one screw differ on their gage, and what the shop allows.

    Parameters
    ----------
    screw : str
        The screw by its name.

    Returns
    -------
    Said
        Least and greatest height above the gage, their difference, and the rule for flush.

    Raises
    ------
    SeatworkError
        If there is no such screw, or no list gives its gage.

    Examples
    --------
    >>> print(gage_spread("1/4 flat head"))
    on the gage: from 0.029 in (0.74 mm) to 0.050 in (1.27 mm)
    good heads differ by: 0.021 in (0.53 mm)
    the rule for flush allows: 0.015 in (0.38 mm)
    """
    gage = _gage(screw)
    allowed = rules()["flush.greatest_below"].shown
    lines = (
        f"gage = sw.screw({quoted(screw)}).gage",
        "print(sw.units.show_both(gage.least), sw.units.show_both(gage.greatest))",
        "print(sw.units.show_both(gage.greatest - gage.least))",
        'print(sw.rules()["flush.greatest_below"].shown)',
    )
    return said(
        ("on the gage", f"from {show_both(gage.least)} to {show_both(gage.greatest)}"),
        ("good heads differ by", show_both(gage.greatest - gage.least)),
        ("the rule for flush allows", allowed),
        code=lines,
    )


def on_gage(screw: str, *, angle: float) -> Said:
    """Say how far the greatest head stands above its gage, worked out and as listed.

    Parameters
    ----------
    screw : str
        The screw by its name.
    angle : float
        Included angle of the head [deg].

    Returns
    -------
    Said
        Height above the gage to four decimals, and the greatest that the table prints.

    Raises
    ------
    SeatworkError
        If there is no such screw, or no list gives its gage.

    Examples
    --------
    >>> print(on_gage("1/4 flat head", angle=82))
    worked out at 82°: 0.0477 in (1.21 mm) above the gage
    the table prints: 0.050 in (1.27 mm)
    """
    found, gage = hardware.screw(screw), _gage(screw)
    high = protrusion(found.head.sharp_diameter, gage.diameter, angle)
    return said(
        (f"worked out at {units.show_angle(angle)}", f"{show_both(high, places=4)} above the gage"),
        ("the table prints", show_both(gage.greatest)),
        code=(
            f"screw = sw.screw({quoted(screw)})",
            "high = sw.seats.protrusion(",
            f"    screw.head.sharp_diameter, screw.gage.diameter, {angle:g}",
            ")",
            "print(sw.units.show_both(high, places=4))",
            "print(sw.units.show_both(screw.gage.greatest))",
        ),
    )


def head_height(screw: str) -> Said:
    """Say the height of a flat head, worked out from its diameters and as its table has it.

    Parameters
    ----------
    screw : str
        A flat head screw whose table gives the height.

    Returns
    -------
    Said
        Height of the cone from head to thread, to four decimals of an inch, and the table's.

    Raises
    ------
    SeatworkError
        If there is no such screw, or its table gives no height.

    Examples
    --------
    >>> print(head_height("#10 socket flat head"))
    worked out: 0.1271 in (3.23 mm)
    the table prints: 0.127 in (3.23 mm)
    """
    found, system = hardware.screw(screw), system_of(screw)
    head, high = found.head, found.head_height
    if high is None:
        raise SeatworkError(screw, "no list gives the height of its head", "take another screw")
    cone = seats.Countersink(
        diameter=head.sharp_diameter,
        hole_diameter=found.thread.diameter,
        included_angle=head.included_angle,
    )
    places = 4 if system == "inch" else None
    return said(
        ("worked out", show_both(cone.depth, system, places)),
        ("the table prints", show_both(high, system)),
        code=(
            f"screw = sw.screw({quoted(screw)})",
            "cone = sw.Countersink(",
            "    diameter=screw.head.sharp_diameter,",
            "    hole_diameter=screw.thread.diameter,",
            "    included_angle=screw.head.included_angle,",
            ")",
            f'print(sw.units.show_both(cone.depth, "{system}", {places}))',
            f'print(sw.units.show_both(screw.head_height, "{system}"))',
        ),
    )


def least_below(screw: str) -> Said:
    """Say how far below the face the least head may lie, in a seat of its size and in a wider.

    Parameters
    ----------
    screw : str
        A screw whose document gives a flushness, such as ``M8 csk socket``.

    Returns
    -------
    Said
        The flushness F of the document in a seat of the theoretical sharp diameter, and how
        much lower every head lies in the listed seat.

    Raises
    ------
    SeatworkError
        If there is no such screw, or no document gives both.

    Examples
    --------
    >>> print(least_below("M8 csk socket"))
    seat of 17.92 mm (0.706 in): the least head may lie 0.40 mm (0.016 in) below
    seat of 18.25 mm (0.719 in): every head lies 0.165 mm (0.006 in) lower than that
    """
    found = hardware.screw(screw)
    low, sharp = found.flushness, found.head.sharp_diameter
    if low is None:
        raise SeatworkError(
            screw, "no document here says how low it may lie", "take one such as M8 csk socket"
        )
    listed = hardware.listed_countersink(found)
    angle = found.head.included_angle
    lower = (listed.diameter - sharp) / 2 / half_tangent(angle)
    system = system_of(screw)
    more = f"{show_length(lower, system, 3)} ({show_length(lower)})"
    return said(
        (f"seat of {show_both(sharp, system)}", f"the least head may lie {_two(low)} below"),
        (
            f"seat of {show_both(listed.diameter, system)}",
            f"every head lies {more} lower than that",
        ),
        code=(
            f"screw = sw.screw({quoted(screw)})",
            "seat = sw.hardware.listed_countersink(screw)",
            "print(screw.flushness, seat.diameter, screw.head.sharp_diameter)",
        ),
    )


def _two(mm: float) -> str:
    return show_both(mm, "metric")


def pin(diameter: str, *, below: str, angle: float) -> Said:
    """Say how wide a seat is, from how deep a gage pin lies in it.

    Parameters
    ----------
    diameter : str
        Diameter of the pin, square and sharp at its end.
    below : str
        How far its end lies below the face.
    angle : float
        Included angle of the seat [deg].

    Returns
    -------
    Said
        Diameter of the seat at the face: the pin and twice the tangent of half the angle
        times what it lies below.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or the angle makes no cone.

    Examples
    --------
    >>> print(pin(".375 in", below=".076 in", angle=82))
    the seat: 0.507 in (12.88 mm) at the face
    """
    stops, deep = units.length(diameter), units.length(below)
    checks.length(stops, "diameter of the pin")
    seat = seats.Countersink.from_depth(depth=deep, hole_diameter=stops, included_angle=angle)
    system = system_of(diameter, below)
    return said(
        ("the seat", f"{show_both(seat.diameter, system)} at the face"),
        code=(
            "seat = sw.Countersink.from_depth(",
            f"    depth={typed(below)},",
            f"    hole_diameter={typed(diameter)},",
            f"    included_angle={angle:g},",
            ")",
            f'print(sw.units.show_both(seat.diameter, "{system}"))',
        ),
    )
