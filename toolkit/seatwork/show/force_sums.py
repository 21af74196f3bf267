"""Sentences about what a cut asks for: torque, power, rake, and the pitch of a chatter note."""

import re

from seatwork import cutting, hardware, units
from seatwork.errors import SeatworkError
from seatwork.plan import LB_IN, show_power, show_torque
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import system_of
from seatwork.units import show_both, show_number, show_spindle

TOOL = re.compile(r"(.+?)\s+(drill|counterbore)")
TORQUE = re.compile(r"(\d+(?:\.\d+)?)\s*(lb·in|lb-in|lb in|N·m|Nm|N m)")


def note_of_marks(marks: float, *, rev: float) -> Said:
    """Say the note that left so many chatter marks round the cone.

    Parameters
    ----------
    marks : float
        Marks counted once round [-].
    rev : float
        Spindle speed [rev/min].

    Returns
    -------
    Said
        Swings in a second, of a machine that gives up and down.

    Raises
    ------
    SeatworkError
        If marks or speed are no numbers above zero.

    Examples
    --------
    >>> print(note_of_marks(22, rev=640))
    22 marks at 640 rev/min: 22 times 640 ÷ 60 = 235 swings a second
    """
    (hertz,) = cutting.frequency_from_marks(marks=marks, spindle_speed=rev, direction="axial")
    count, turns = show_number(marks, 1), show_number(rev, 0)
    return said(
        (
            f"{count} marks at {turns} rev/min",
            f"{count} times {turns} ÷ 60 = {show_number(hertz, 0)} swings a second",
        ),
        code=(
            "(hertz,) = sw.cutting.frequency_from_marks(",
            f'    marks={marks:g}, spindle_speed={rev:g}, direction="axial"',
            ")",
            "print(hertz)",
        ),
    )


def rake_saving(rake: float) -> Said:
    """Say how much less a lip with rake pushes than one without.

    Parameters
    ----------
    rake : float
        Rake of the lip [deg], -30 to 30.

    Returns
    -------
    Said
        The force as a part of that at zero rake: each degree takes 1 % off.

    Raises
    ------
    SeatworkError
        If the rake is out of range.

    Examples
    --------
    >>> print(rake_saving(15))
    15° of rake: 85 % of the force at zero rake
    """
    chip = {"main_value": 1000.0, "exponent": 0.25, "chip_thickness": 0.1}
    plain = cutting.specific_force(**chip)
    part = cutting.specific_force(**chip, rake=rake) / plain
    return said(
        (
            f"{units.show_angle(rake)} of rake",
            f"{show_number(100 * part, 0)} % of the force at zero rake",
        ),
        code=(
            'chip = {"main_value": 1000, "exponent": 0.25, "chip_thickness": 0.1}',
            f"keen = sw.cutting.specific_force(**chip, rake={rake:g})",
            "print(100 * keen / sw.cutting.specific_force(**chip))",
        ),
    )


def torque(tool: str, *, feed: str, force: float, hole: str = "", rev: float | None = None) -> Said:
    """Say the torque of a drill, or of a counterbore on a hole that is already there.

    Parameters
    ----------
    tool : str
        ``22 mm drill`` or ``22 mm counterbore``.
    feed : str
        Feed in one turn, ``0.15 mm/rev``.
    force : float
        Cutting force on the area of the chip [MPa].
    hole : str
        For a counterbore: the screw whose clearance hole is there, or the hole's size.
    rev : float, optional
        Spindle speed, to say the power too [rev/min].

    Returns
    -------
    Said
        The torque; for a counterbore the hole as well; with a speed the power.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or a counterbore has no hole.

    Examples
    --------
    >>> print(torque("22 mm drill", feed="0.15 mm/rev", force=2200))
    torque: 20.0 N·m (177 lb·in)
    """
    wide, code, through, hole_code = _tool(tool, hole)
    system = system_of(tool, feed, hole)
    found = cutting.torque(
        tangential_coefficient=force, feed=units.feed(feed), diameter=wide, hole_diameter=through
    )
    told = [("torque", show_torque(found, system))]
    if through:
        told.insert(0, ("the hole", show_both(through, system)))
    lines = [
        "torque = sw.cutting.torque(",
        f"    tangential_coefficient={force:g},",
        f"    feed=sw.units.feed({quoted(feed)}),",
        f"    diameter={code},",
        f"    hole_diameter={hole_code},",
        ")",
        f'print(sw.plan.show_torque(torque, "{system}"))',
    ]
    if rev is not None:
        watts = cutting.power(torque=found, spindle_speed=rev)
        told.append((f"power at {show_spindle(rev)}", show_power(watts, "inch")))
        call = f"sw.cutting.power(torque=torque, spindle_speed={rev:g})"
        lines.append(f'print(sw.plan.show_power({call}, "inch"))')
    return said(*told, code=lines)


def _tool(tool: str, hole: str) -> tuple[float, str, float, str]:
    """Read a tool and its hole: diameters [mm], each with the Python that reads it."""
    found = TOOL.fullmatch(tool.strip()) if isinstance(tool, str) else None
    if not found:
        raise SeatworkError(
            str(tool)[:40], "that is no drill and no counterbore", "write such as 22 mm drill"
        )
    wide, code = units.length(found[1]), typed(found[1])
    if found[2] == "drill":
        if hole:
            raise SeatworkError(hole, "a drill makes its own hole", "leave the hole out")
        return wide, code, 0.0, "0"
    if not hole:
        raise SeatworkError(tool, "a counterbore goes on a hole", 'write hole="M10"')
    try:
        return wide, code, units.length(hole), typed(hole)
    except SeatworkError:
        through = hardware.clearance_hole(hole).diameter
        return wide, code, through, f"sw.clearance_hole({quoted(hole)}).diameter"


def power(torque: str, *, rev: float) -> Said:
    """Say the power of a torque at a spindle speed.

    Parameters
    ----------
    torque : str
        ``559 lb·in`` or ``20 N·m``.
    rev : float
        Spindle speed [rev/min].

    Returns
    -------
    Said
        The power in both systems.

    Raises
    ------
    SeatworkError
        If the torque cannot be read.

    Examples
    --------
    >>> print(power("559 lb·in", rev=350))
    559 lb·in (63.2 N·m) at 350 rev/min: 3.10 hp (2315 W)
    """
    found = TORQUE.fullmatch(torque.strip()) if isinstance(torque, str) else None
    if not found:
        raise SeatworkError(
            str(torque)[:40], "that is no torque", "write such as 559 lb·in or 20 N·m"
        )
    inch = found[2].startswith("lb")
    newton_meters = float(found[1]) / LB_IN if inch else float(found[1])
    system = "inch" if inch else "metric"
    watts = cutting.power(torque=newton_meters, spindle_speed=rev)
    amount = f"{found[1]} / sw.plan.LB_IN" if inch else found[1]
    return said(
        (
            f"{show_torque(newton_meters, system)} at {show_spindle(rev)}",
            show_power(watts, system),
        ),
        code=(
            f"watts = sw.cutting.power(torque={amount}, spindle_speed={rev:g})",
            f'print(sw.plan.show_power(watts, "{system}"))',
        ),
    )
