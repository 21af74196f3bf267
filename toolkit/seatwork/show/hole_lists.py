"""Sentences about holes: through, for the tap, for the pilot, and how long a screw may be."""

from seatwork import checks, hardware, seats, units
from seatwork.errors import SeatworkError
from seatwork.shop import rules
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import system_of
from seatwork.units import show_angle, show_both

OTHER_LIST = "older American list"


def holes(thread: str) -> Said:
    """Say the two holes of a screw: the one it goes through, the one for its tap.

    Parameters
    ----------
    thread : str
        The thread, such as ``3/8-16`` or ``M6``.

    Returns
    -------
    Said
        Clearance hole with its list, and tap drill.

    Raises
    ------
    SeatworkError
        If no list has the thread.

    Examples
    --------
    >>> print(holes("3/8-16"))
    through: 13/32 drill, 0.406 in (10.32 mm), normal (ASME B18.2.8)
    for the tap: 5/16 drill, 0.313 in (7.94 mm)
    """
    system = system_of(thread)
    through = hardware.clearance_hole(hardware.thread(thread))
    into = hardware.tap_drill(thread)
    return said(
        ("through", f"{_drilled(through, system)}, {through.label}"),
        ("for the tap", f"{into.name} drill, {show_both(into.diameter, system)}"),
        code=(
            f"thread = sw.hardware.thread({quoted(thread)})",
            "print(sw.clearance_hole(thread).drill, sw.clearance_hole(thread).label)",
            f'print(sw.units.show_both(sw.clearance_hole(thread).diameter, "{system}"))',
            f'print(sw.units.show_both(sw.hardware.tap_drill(thread).diameter, "{system}"))',
        ),
    )


def _drilled(hole: hardware.ClearanceHole, system: str) -> str:
    size = show_both(hole.diameter, system)
    return f"{hole.drill} drill, {size}" if hole.drill else size


def clearance_lists(screw: str) -> Said:
    """Say the clearance holes of one screw size, list by list.

    Parameters
    ----------
    screw : str
        The size, such as ``#10`` or ``M6``.

    Returns
    -------
    Said
        Close and usual hole of the usual list; for inch sizes also the older American list.

    Raises
    ------
    SeatworkError
        If no list has the size.

    Examples
    --------
    >>> print(clearance_lists("#10"))
    close (ASME B18.2.8): #5 drill, 0.206 in (5.22 mm)
    normal (ASME B18.2.8): #2 drill, 0.221 in (5.61 mm)
    free (older American list): #7 drill, 0.201 in (5.11 mm)
    """
    system = system_of(screw)
    if system == "metric":
        asked: list[tuple[str | None, str | None]] = [("fine", None), ("medium", None)]
    else:
        asked = [("close", None), ("normal", None), ("free", OTHER_LIST)]
    found, lines = [], []
    for fit, standard in asked:
        try:
            hole = hardware.clearance_hole(screw, fit, standard=standard)
        except SeatworkError:
            if standard is None:
                raise
            continue
        found.append((hole.label, _drilled(hole, system)))
        named = f', standard="{standard}"' if standard else ""
        lines.append(f'print(sw.clearance_hole({quoted(screw)}, "{fit}"{named}).diameter)')
    return said(*found, code=lines)


def longest_screw(thread: str, *, through: str, into: str) -> Said:
    """Say how long a screw may be in a blind thread: one pitch off its end.

    Parameters
    ----------
    thread : str
        The thread with its pitch, such as ``1/4-20``.
    through : str
        Thickness of the part the screw goes through.
    into : str
        Full thread in the part behind.

    Returns
    -------
    Said
        The pitch, and the greatest length: a flat head over all, any other below its head.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or the thread's pitch is not said.

    Examples
    --------
    >>> print(longest_screw("1/4-20", through=".250 in", into=".437 in"))
    one pitch: 0.050 in (1.27 mm)
    the screw may be: 0.637 in (16.18 mm) long, at the most
    """
    pitch = hardware.thread(thread).pitch
    if pitch is None:
        raise SeatworkError(thread, "its pitch is not said", "write it, such as 1/4-20")
    thick, deep = units.length(through), units.length(into)
    checks.length(thick, "thickness")
    if not deep > pitch:
        raise SeatworkError(into, "that is less than one pitch of thread", "give the full thread")
    system = system_of(thread, through)
    most = thick + deep - pitch
    return said(
        ("one pitch", show_both(pitch, system)),
        ("the screw may be", f"{show_both(most, system)} long, at the most"),
        code=(
            f"pitch = sw.hardware.thread({quoted(thread)}).pitch",
            f"most = {typed(through)} + {typed(into)} - pitch",
            f'print(sw.units.show_both(most, "{system}"))',
        ),
    )


def pilot(screw: str) -> Said:
    """Say the pilot for a screw's hole.

    Parameters
    ----------
    screw : str
        The size, such as ``3/8`` or ``M6``.

    Returns
    -------
    Said
        The hole, what the shop leaves around a pilot, and the pilot.

    Raises
    ------
    SeatworkError
        If no list has the size.

    Examples
    --------
    >>> print(pilot("3/8"))
    the hole: 0.406 in (10.32 mm)
    less: 0.002 in (0.05 mm)
    the pilot: 0.404 in (10.27 mm)
    """
    hole = hardware.clearance_hole(screw).diameter
    play, system = rules()["pilot.clearance"], system_of(screw)
    return said(
        ("the hole", show_both(hole, system)),
        ("less", play.shown),
        ("the pilot", show_both(hole - rules().number("pilot.clearance"), system)),
        code=(
            f"hole = sw.clearance_hole({quoted(screw)}).diameter",
            'play = sw.rules()["pilot.clearance"].value',
            f'print(sw.units.show_both(hole - play, "{system}"))',
        ),
    )


def thread_chamfer(thread: str) -> Said:
    """Say the chamfer of a hole that is tapped after it.

    Parameters
    ----------
    thread : str
        The thread with its pitch, such as ``3/8-16``.

    Returns
    -------
    Said
        Mouth, angle, tap drill, and the depth from the face to the edge of the drilled hole.

    Raises
    ------
    SeatworkError
        If no list has the thread.

    Examples
    --------
    >>> print(thread_chamfer("3/8-16"))
    mouth: 0.395 in (10.03 mm) at 90°
    tap drill: 5/16, 0.313 in (7.94 mm)
    chamfer: 0.041 in (1.05 mm) deep
    """
    found, into = hardware.tapped_hole_chamfer(thread), hardware.tap_drill(thread)
    angle, system = found.included_angle, system_of(thread)
    cone = seats.Countersink(
        diameter=found.diameter, hole_diameter=into.diameter, included_angle=angle
    )
    return said(
        ("mouth", f"{show_both(found.diameter, system)} at {show_angle(angle)}"),
        ("tap drill", f"{into.name}, {show_both(into.diameter, system)}"),
        ("chamfer", f"{show_both(cone.depth, system)} deep"),
        code=(
            f"mouth = sw.hardware.tapped_hole_chamfer({quoted(thread)})",
            f"hole = sw.hardware.tap_drill({quoted(thread)})",
            "cone = sw.Countersink(",
            "    diameter=mouth.diameter,",
            "    hole_diameter=hole.diameter,",
            "    included_angle=mouth.included_angle,",
            ")",
            f'print(sw.units.show_both(mouth.diameter, "{system}"))',
            f'print(sw.units.show_both(cone.depth, "{system}"))',
        ),
    )
