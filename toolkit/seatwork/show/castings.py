"""Sentences about castings: the ring that is clean, the flange left, the bolt that bends."""

from seatwork import checks, seats, units
from seatwork.errors import SeatworkError
from seatwork.seats.bolting import seat_tilt, slope_angle
from seatwork.shop import rules
from seatwork.show.said import Said, said, typed
from seatwork.show.sizes_said import system_of
from seatwork.units import show_angle, show_both, show_number

MPA_IN_KSI = 6.894757  # 1000 lbf/in²: 4448.2216 N on 645.16 mm²
SKIN = "spotface.scale_allowance"
SMALL = 0.5


def bend(*, bolt: str, grip: str, slope: str = "", gap: str = "", across: str = "") -> Said:
    """Say the most that a seat out of square can bend a bolt.

    Parameters
    ----------
    bolt : str
        Diameter of the bolt.
    grip : str
        Length that bends, from the head to the first thread engaged.
    slope : str
        The slope of the seat, such as ``1:20``; or give gap and across.
    gap, across : str
        Thickest feeler under one side of the head, and the width of the head.

    Returns
    -------
    Said
        Angle of the seat, and the most that the skin of the bolt is stretched.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or neither slope nor gap is given.

    Examples
    --------
    >>> print(bend(slope="1:20", bolt="1/2 in", grip="1-1/2 in"))
    the seat leans: 2.9°
    in the bolt: at most 248 ksi (1707 MPa)
    """
    tilt, code = _tilt(slope, gap, across)
    stress = seats.bending_stress(tilt=tilt, diameter=units.length(bolt), grip=units.length(grip))
    ksi, mpa = show_number(stress / MPA_IN_KSI, 0), show_number(stress, 0)
    amounts = (f"{ksi} ksi", f"{mpa} MPa")
    first, other = amounts if system_of(bolt, grip) == "inch" else amounts[::-1]
    return said(
        ("the seat leans", show_angle(tilt)),
        ("in the bolt", f"at most {first} ({other})"),
        code=(
            f"tilt = sw.seats.bolting.{code}",
            "stress = sw.seats.bending_stress(",
            f"    tilt=tilt, diameter={typed(bolt)}, grip={typed(grip)}",
            ")",
            "print(sw.units.show_angle(tilt))",
            "print(stress)  # MPa",
        ),
    )


def _tilt(slope: str, gap: str, across: str) -> tuple[float, str]:
    """Read how a seat leans [deg], and the Python that does."""
    if slope and (gap or across):
        raise SeatworkError(slope, "a slope and a gap say the same", "give one of the two")
    if slope:
        rise, mark, run = slope.replace(" ", "").partition(":")
        if not (mark and rise.isdecimal() and run.isdecimal() and int(run)):
            raise SeatworkError(slope[:40], "that is no slope", "write it such as 1:20")
        return slope_angle(int(rise) / int(run)), f"slope_angle({rise} / {run})"
    if not (gap and across):
        raise SeatworkError(
            "no slope and no gap", "how the seat leans is not said", 'write slope="1:20"'
        )
    code = f"seat_tilt(gap={typed(gap)}, across={typed(across)})"
    return seat_tilt(gap=units.length(gap), across=units.length(across)), code


def clean_up(
    diameter: str, *, draft: float | None = None, boss: str = "", skin: bool = False
) -> Said:
    """Say how deep a spotface goes until its ring is clean all round.

    Parameters
    ----------
    diameter : str
        Diameter of the spotface.
    draft : float, optional
        Slope of a flat pad, from square to the hole [deg].
    boss : str
        Diameter of a round boss, cut from its crown, where the face is no flat pad.
    skin : bool
        Whether the skin of the casting must be gone too, by the shop's rule.

    Returns
    -------
    Said
        On a slope: from first touch, at the axis, and on the low side; on a boss: below its crown.

    Raises
    ------
    SeatworkError
        If a size cannot be read, or both or neither of slope and boss are given.

    Examples
    --------
    >>> print(clean_up("1-1/4 in", draft=3))
    from first touch: 0.066 in (1.66 mm)
    at the axis of the hole: 0.033 in (0.83 mm)
    >>> print(clean_up("1-1/4 in", boss="4 in"))
    below the crown: 0.100 in (2.54 mm)
    """
    if (draft is None) == (not boss):
        raise SeatworkError(
            boss or "no draft and no boss", "a pad leans or is round", "give draft or boss"
        )
    wide, system = units.length(diameter), system_of(diameter, boss)
    ring = seats.Spotface(diameter=wide, hole_diameter=SMALL * wide)
    more = rules().number(SKIN) if skin else 0.0
    lines = [f"ring = sw.Spotface(diameter={typed(diameter)}, hole_diameter={typed(diameter)} / 2)"]
    end = f' + sw.rules()["{SKIN}"].value' if skin else ""
    if draft is None:
        deep = ring.clean_up_on_round(units.length(boss)) + more
        lines += [f"deep = ring.clean_up_on_round({typed(boss)}){end}"]
        told = [("below the crown", show_both(deep, system))]
    else:
        whole = ring.clean_up_on_tilt(draft)
        deep = whole + more
        lines += [f"deep = ring.clean_up_on_tilt({draft:g}){end}"]
        told = [("from first touch", show_both(deep, system))]
        if skin:
            told.insert(0, ("skin of the casting", rules()[SKIN].shown))
        else:
            told.append(("at the axis of the hole", show_both(whole / 2, system)))
    return said(*told, code=(*lines, f'print(sw.units.show_both(deep, "{system}"))'))


def flange_left(thickness: str, *, skin: bool = False) -> Said:
    """Say the flange left at the low side of a ring that is clean all round.

    Parameters
    ----------
    thickness : str
        Thickness of the flange at the low side.
    skin : bool
        Whether the skin of the casting is cut away there, by the shop's rule.

    Returns
    -------
    Said
        What is left: all of it, less the skin.

    Raises
    ------
    SeatworkError
        If it is no size, or no thicker than the skin.

    Examples
    --------
    >>> print(flange_left(".500 in", skin=True))
    left at the low side: 0.469 in (11.91 mm)
    """
    thick, system = units.length(thickness), system_of(thickness)
    checks.length(thick, "thickness of the flange")
    left = thick - (rules().number(SKIN) if skin else 0.0)
    if not left > 0:
        raise SeatworkError(thickness, "the skin is as thick as the flange", "give a thicker one")
    end = f' - sw.rules()["{SKIN}"].value' if skin else ""
    return said(
        ("left at the low side", show_both(left, system)),
        code=(f'print(sw.units.show_both({typed(thickness)}{end}, "{system}"))',),
    )
