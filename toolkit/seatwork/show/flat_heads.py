"""How a flat head lies in a seat, in one sentence."""

import re
from dataclasses import replace

from seatwork import hardware, seats, units
from seatwork.errors import SeatworkError
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import diameter_of, system_of
from seatwork.units import show_both

CONTACTS = {
    "cone": "it carries on the whole cone",
    "hole edge": "it touches on a line, the edge of the hole",
    "rim": "it touches on a line, its rim",
}
HEAD = "a screw, such as 1/4 flat head, or a size and an angle, such as .507 in, 82°"
SEAT = "a size and an angle, such as .507 in, 82°"


def fit(*, head: str, seat: str, hole: str = "") -> Said:
    """Say how a head lies in a seat, and where it touches.

    Parameters
    ----------
    head : str
        A screw, ``1/4 flat head``; its least head, ``least M6 socket flat``; a screw with
        another angle or edge, ``1/4 flat head, 80°``, ``1/4 flat head, edge .462 in``; or a
        size and an angle, ``.507 in, 82°``.
    seat : str
        Diameter at the face and included angle, ``.507 in, 82°``; ``its edge, 82°`` for a
        seat as wide as the greatest edge of the screw.
    hole : str
        The hole: a size or a drill; the size of the screw's thread where it is left out.

    Returns
    -------
    Said
        Proud, flush or below with the amount, and where it touches.

    Raises
    ------
    SeatworkError
        If head, seat or hole cannot be read, or the head cannot sit there.

    Examples
    --------
    >>> print(fit(head=".507 in, 82°", seat=".507 in, 90°", hole=".266 in"))
    the head: 0.018 in (0.46 mm) proud; it touches on a line, the edge of the hole
    """
    lies, head_code, screw = _head(head)
    wide, wide_code, angle = _seat(seat, screw, head)
    if hole:
        through, hole_code = diameter_of(hole)
    elif screw:
        through = screw.thread.diameter
        hole_code = f"sw.screw({quoted(_named(head)[0])}).thread.diameter"
    else:
        raise SeatworkError("no hole", "the head's hole is not said", 'write hole=".266 in"')
    cut = seats.Countersink(diameter=wide, hole_diameter=through, included_angle=angle)
    found, system = seats.fit(lies, cut), system_of(head, seat, hole)
    amount = f"{show_both(abs(found.amount), system)} {found.state}"
    where = "flush with the face" if found.state == "flush" else amount
    return said(
        ("the head", f"{where}; {CONTACTS[found.contact]}"),
        code=(
            f"head = {head_code}",
            "seat = sw.Countersink(",
            f"    diameter={wide_code},",
            f"    hole_diameter={hole_code},",
            f"    included_angle={angle:g},",
            ")",
            "found = sw.fit(head, seat)",
            f'print(sw.units.show_both(abs(found.amount), "{system}"), found.state)',
            'print("it touches on the", found.contact)',
        ),
    )


def _named(text: str) -> tuple[str, list[str]]:
    """Split a head into what leads it and what is said of it after commas."""
    if not isinstance(text, str):
        raise SeatworkError(type(text).__name__, "that is not text", f"write {HEAD}")
    lead, *rest = (part.strip() for part in re.split(r",\s+", text))
    return re.sub(r"^least\s+", "", lead), rest


def _head(text: str) -> tuple[seats.Head, str, hardware.Screw | None]:
    """Read a head: the head, the Python that makes it, and its screw if it has one."""
    lead, rest = _named(text)
    try:
        sharp = units.length(lead)
    except SeatworkError:
        return _head_of_screw(text, lead, rest)
    if len(rest) != 1:
        raise SeatworkError(text, "a head has a size and an angle", f"write {HEAD}")
    angle = units.angle(rest[0])
    code = f"sw.Head(sharp_diameter={typed(lead)}, included_angle={angle:g})"
    return seats.Head(sharp_diameter=sharp, included_angle=angle), code, None


def _head_of_screw(
    text: str, lead: str, rest: list[str]
) -> tuple[seats.Head, str, hardware.Screw | None]:
    """Read the head of a screw, with the angle or the edge that is said of it."""
    screw = hardware.screw(lead)
    code = f"sw.screw({quoted(lead)}).head"
    if text.strip().startswith("least "):
        return screw.least_head, f"sw.screw({quoted(lead)}).least_head", screw
    if not rest:
        return screw.head, code, screw
    head = replace(screw.head, height=None)
    sharp = f"sharp_diameter={code}.sharp_diameter"
    if len(rest) == 1 and (edge := re.fullmatch(r"edge\s+(.+)", rest[0])):
        made = replace(head, edge_diameter=units.length(edge[1]))
        said_so = f"edge_diameter={typed(edge[1])}, included_angle={head.included_angle:g}"
        return made, f"sw.Head({sharp}, {said_so})", screw
    if len(rest) != 1:
        raise SeatworkError(text, "one thing can be said of a screw's head", f"write {HEAD}")
    angle = units.angle(rest[0])
    edge_code = f"edge_diameter={code}.edge_diameter, included_angle={angle:g}"
    return replace(head, included_angle=angle), f"sw.Head({sharp}, {edge_code})", screw


def _seat(text: str, screw: hardware.Screw | None, head: str) -> tuple[float, str, float]:
    """Read a seat: diameter at the face [mm], the Python that reads it, included angle [deg]."""
    wide, rest = _named(text)
    if len(rest) != 1:
        raise SeatworkError(text, "a seat has a size and an angle", f"write {SEAT}")
    angle = units.angle(rest[0])
    if wide != "its edge":
        return units.length(wide), typed(wide), angle
    if screw is None or screw.edge_diameter is None:
        raise SeatworkError(text, "no list gives the edge of that head", f"write {SEAT}")
    return screw.edge_diameter, f"sw.screw({quoted(_named(head)[0])}).edge_diameter", angle
