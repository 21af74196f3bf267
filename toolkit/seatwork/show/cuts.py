"""Sentences about cutting: speed, steps of the machine, and time."""

from seatwork import checks, cutting, units
from seatwork.errors import SeatworkError
from seatwork.shop import Shop
from seatwork.show.said import Said, quoted, said, typed
from seatwork.show.sizes_said import system_of
from seatwork.units import show_both, show_feed, show_length, show_number, show_spindle


def speed(surface: str, diameter: str) -> Said:
    """Say the spindle speed for a surface speed at a diameter.

    Parameters
    ----------
    surface : str
        Surface speed at the lip, ``25 m/min`` or ``90 sfm``.
    diameter : str
        Largest diameter that cuts.

    Returns
    -------
    Said
        Spindle speed [rev/min].

    Raises
    ------
    SeatworkError
        If one of them cannot be read.

    Examples
    --------
    >>> print(speed("25 m/min", "12 mm"))
    25 m/min at 12 mm: 663 rev/min
    """
    found = cutting.spindle_speed(
        cutting_speed=units.cutting_speed(surface), diameter=units.length(diameter)
    )
    return said(
        (f"{surface.strip()} at {diameter.strip()}", show_spindle(found)),
        code=(
            "turns = sw.cutting.spindle_speed(",
            f"    cutting_speed=sw.units.cutting_speed({quoted(surface)}),",
            f"    diameter={typed(diameter)},",
            ")",
            "print(sw.units.show_spindle(turns))",
        ),
    )


def shortcut(constant: float) -> Said:
    """Say how far a shop's short rule for the spindle speed is off.

    Parameters
    ----------
    constant : float
        The number of the rule, 4 for ``4 x V / D``; 3.82, 318 and 320 are known too [-].

    Returns
    -------
    Said
        How much too fast or too slow it is.

    Raises
    ------
    SeatworkError
        If no rule here has that number.

    Examples
    --------
    >>> print(shortcut(4))
    4 x V / D: 4.7 % too fast
    """
    known = cutting.SHORTCUTS
    name = f"{constant:g}" if checks.is_number(constant) else ""
    if name not in known:
        raise SeatworkError(
            str(constant)[:20], "no short rule has that number", f"write {', '.join(known)}"
        )
    rule = known[name]
    off = "too fast" if rule.error > 0 else "too slow"
    return said(
        (rule.name, f"{show_number(abs(100 * rule.error), 1)} % {off}"),
        code=(f'print(100 * sw.cutting.SHORTCUTS["{name}"].error)',),
    )


def step(turns: float, machine: str) -> Said:
    """Say which step of a machine to set.

    Parameters
    ----------
    turns : float
        Spindle speed wanted [rev/min].
    machine : str
        A machine of the shop's list.

    Returns
    -------
    Said
        The step to set, the next one down; or what to do where every step is too fast.

    Raises
    ------
    SeatworkError
        If the machine is not listed, or the speed is no speed.

    Examples
    --------
    >>> print(step(500, "bench drill press"))
    500 rev/min on the bench drill press: Set 410 rev/min (wanted 500).
    """
    found = Shop.at().machine(machine)
    advice = cutting.pick_step(spindle_speed=turns, steps=found.speeds).advice
    return said(
        (f"{show_spindle(turns)} on the {found.name}", advice),
        code=(
            f"machine = sw.shop.Shop.at().machine({quoted(machine)})",
            f"step = sw.cutting.pick_step(spindle_speed={turns:g}, steps=machine.speeds)",
            "print(step.advice)",
        ),
    )


def time(travel: str, *, rev: float, feed: str) -> Said:
    """Say how long a cut takes: travel over turns and feed.

    Parameters
    ----------
    travel : str
        How far the tool goes.
    rev : float
        Spindle speed [rev/min].
    feed : str
        Feed in one turn, ``.003 ipr`` or ``0.1 mm/rev``.

    Returns
    -------
    Said
        The sum in its two steps: how far in a minute, then the seconds.

    Raises
    ------
    SeatworkError
        If one of them cannot be read.

    Examples
    --------
    >>> print(time(".139 in", rev=300, feed=".003 ipr"))
    in one minute: 300 turns of 0.003 in/rev = 0.900 in (22.86 mm)
    time: 0.139 in ÷ 0.900 in, times 60 = 9.3 seconds
    """
    far, each = units.length(travel), units.feed(feed)
    seconds = cutting.time_in_cut(travel=far, spindle_speed=rev, feed=each)
    system = system_of(travel, feed)
    minute = rev * each
    turns = f"{show_number(rev, 0)} turns of {show_feed(each, system)}"
    return said(
        (
            "in one minute",
            f"{turns} = {show_both(minute, system)}",
        ),
        (
            "time",
            f"{show_length(far, system)} ÷ {show_length(minute, system)}, times 60 = "
            f"{show_number(seconds, 1)} seconds",
        ),
        code=(
            "seconds = sw.cutting.time_in_cut(",
            f"    travel={typed(travel)},",
            f"    spindle_speed={rev:g},",
            f"    feed=sw.units.feed({quoted(feed)}),",
            ")",
            "print(seconds)",
        ),
    )
