"""Sentences about counterbores: the bore, the washer, the wrench, the fillet under the head."""

from seatwork import hardware
from seatwork.errors import SeatworkError
from seatwork.show.said import Said, quoted, said
from seatwork.show.sizes_said import system_of
from seatwork.units import show_both


def counterbore(screw: str, *, washer: str = "") -> Said:
    """Say the counterbore that a list gives for a screw, or what a washer would need.

    Parameters
    ----------
    screw : str
        A screw with a flat underside, such as ``3/8-16 SHCS`` or ``M6 SHCS``.
    washer : str
        A washer under its head, such as ``3/8 narrow``, put in after the bore was cut.

    Returns
    -------
    Said
        Diameter and depth with what the depth is made of; with a washer, how wide it is and
        how deep the bore would have to be.

    Raises
    ------
    SeatworkError
        If no list has the screw or the washer.

    Examples
    --------
    >>> print(counterbore("3/8-16 SHCS"))
    the counterbore: 0.625 in (15.88 mm) wide, 0.385 in (9.78 mm) deep
    the depth is: the head, 0.375 in (9.53 mm), and 0.010 in (0.25 mm) more
    """
    bore, found = hardware.listed_counterbore(screw), hardware.screw(screw)
    head, system = found.head_height, system_of(screw)
    if head is None:
        raise SeatworkError(screw, "no list gives the height of its head", "take another screw")
    lines = [
        f"bore = sw.hardware.listed_counterbore({quoted(screw)})",
        f'print(sw.units.show_both(bore.diameter, "{system}"))',
        f'print(sw.units.show_both(bore.depth, "{system}"))',
    ]
    if washer:
        return _with_washer(washer, bore, system, lines[:2])
    more = f"{show_both(head, system)}, and {show_both(bore.depth - head, system)} more"
    wide, deep = show_both(bore.diameter, system), show_both(bore.depth, system)
    return said(
        ("the counterbore", f"{wide} wide, {deep} deep"),
        ("the depth is", f"the head, {more}"),
        code=lines,
    )


def _with_washer(
    washer: str, bore: hardware.CounterboreSize, system: str, lines: list[str]
) -> Said:
    """Say whether a washer goes into a bore made for the screw alone, and how deep it must be."""
    ring = hardware.washer(washer)
    if ring.thickness is None:
        raise SeatworkError(washer, "no list gives its thickness", "take another washer")
    goes = "it goes in" if ring.outside_diameter < bore.diameter else "it does not go in"
    wide = show_both(ring.outside_diameter, system)
    return said(
        ("the bore", f"{show_both(bore.diameter, system)} wide"),
        ("the washer", f"{wide} wide: {goes}"),
        ("with it the depth is", show_both(bore.depth + ring.thickness, system)),
        code=(
            *lines,
            f"ring = sw.washer({quoted(washer)})",
            f'print(sw.units.show_both(ring.outside_diameter, "{system}"))',
            f'print(sw.units.show_both(bore.depth + ring.thickness, "{system}"))',
        ),
    )


def wrench_room(screw: str) -> Said:
    """Say the counterbore that lets the wrench socket in with the head.

    Parameters
    ----------
    screw : str
        A hex head screw, such as ``3/8-16 hex cap``.

    Returns
    -------
    Said
        Diameter of the counterbore, and which list stands behind it.

    Raises
    ------
    SeatworkError
        If no list has the screw, or it is turned from inside.

    Examples
    --------
    >>> print(wrench_room("3/8-16 hex cap").rows[0])
    with room for the wrench socket: 1.102 in (28.00 mm) wide
    """
    found, system = hardware.wrench_socket(screw), system_of(screw)
    wide = show_both(found.counterbore_diameter, system)
    return said(
        ("with room for the wrench socket", f"{wide} wide"),
        ("by", found.basis),
        code=(
            f"found = sw.hardware.wrench_socket({quoted(screw)})",
            f'print(sw.units.show_both(found.counterbore_diameter, "{system}"))',
            "print(found.basis)",
        ),
    )


def fillet(screw: str, *, ring: bool = False) -> Said:
    """Say what the fillet under a head needs of the hole's edge.

    Parameters
    ----------
    screw : str
        A socket head cap screw, such as ``3/8-16 SHCS``.
    ring : bool
        Whether to say what is left to carry the head instead, and the greatest corner radius
        at the floor of the listed bore.

    Returns
    -------
    Said
        What the fillet needs, what the hole has, and how far to break the edge on each side.

    Raises
    ------
    SeatworkError
        If no list gives the fillet of that screw.

    Examples
    --------
    >>> print(fillet("M6 SHCS"))
    the fillet needs: 6.80 mm (0.268 in)
    the hole has: 6.60 mm (0.260 in)
    break the edge: 0.10 mm (0.004 in) on each side
    """
    found, system = hardware.screw(screw), system_of(screw)
    clear = hardware.fillet_clearance(found)
    if clear is None:
        raise SeatworkError(
            screw, "no list here gives the fillet under its head", "take a socket head cap screw"
        )
    lines = [
        f"screw = sw.screw({quoted(screw)})",
        "clear = sw.hardware.fillet_clearance(screw).value",
    ]
    if ring:
        return _ring(found, clear.value, system, lines)
    hole = hardware.clearance_hole(found.thread).diameter
    needed = (clear.value - hole) / 2
    places = 4 if system == "inch" else None
    edge = f"{show_both(needed, system, places)} on each side" if needed > 0 else "not needed"
    return said(
        ("the fillet needs", show_both(clear.value, system)),
        ("the hole has", show_both(hole, system)),
        ("break the edge", edge),
        code=(
            *lines,
            "hole = sw.clearance_hole(screw.thread).diameter",
            f'print(sw.units.show_both((clear - hole) / 2, "{system}", {places}))',
        ),
    )


def _ring(screw: hardware.Screw, clear: float, system: str, lines: list[str]) -> Said:
    """Say the ring that carries a head, and the greatest radius in the corner of its bore."""
    bore, wide = hardware.listed_counterbore(screw), screw.head_diameter or 0.0
    return said(
        ("ring left under the head", f"{show_both((wide - clear) / 2, system)} at most"),
        (
            "corner radius at the floor",
            f"{show_both((bore.diameter - wide) / 2, system)} at most",
        ),
        code=(
            *lines,
            "bore = sw.hardware.listed_counterbore(screw)",
            f'print(sw.units.show_both((screw.head_diameter - clear) / 2, "{system}"))',
            f'print(sw.units.show_both((bore.diameter - screw.head_diameter) / 2, "{system}"))',
        ),
    )
