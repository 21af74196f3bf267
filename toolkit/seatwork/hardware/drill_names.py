"""Every drill that a size of a print can mean, the one to say first."""

from seatwork.errors import SeatworkError
from seatwork.hardware.drill_list import Drill, drills
from seatwork.quantities import INCH, Length
from seatwork.units import show_number

SAME = 1e-6  # mm; two sizes nearer than this are the same
LAST_PLACE = 1e-4  # in; a size that is no whole thousandth is written to four places
METRIC_NEAR = 0.0005  # mm
ORDER = ("fraction", "number", "letter", "metric")


def drills_of(diameter: float, system: str) -> tuple[Drill, ...]:
    """Find every drill whose size, rounded as the print writes it, is the one given.

    Parameters
    ----------
    diameter : float
        Size of the print [mm], above zero.
    system : {"inch", "metric"}
        System of the print: its own drills only, the other's where it has none.

    Returns
    -------
    tuple of Drill
        The fraction first, then number, letter and metric; empty where no drill is so.

    Raises
    ------
    SeatworkError
        If the diameter is no size of a drill.

    Examples
    --------
    >>> [one.name for one in drills_of(0.266 * 25.4, "inch")]
    ['17/64', 'H']
    >>> [one.name for one in drills_of(0.201 * 25.4, "inch")]
    ['#7']
    >>> [one.name for one in drills_of(0.312 * 25.4, "inch")]
    ['5/16']
    """
    if not 0 < diameter < float("inf"):
        raise SeatworkError(Length(diameter), "that is no drill size", "give one above zero")
    near = _half_of_last_place(diameter) if system == "inch" else METRIC_NEAR
    found = [one for one in drills() if _rounds_to(one, diameter, near)]
    own = [one for one in found if one.system == system] or found
    return tuple(sorted(own, key=lambda one: (ORDER.index(one.series), one.diameter)))


def _rounds_to(drill: Drill, diameter: float, near: float) -> bool:
    """Tell whether a drill's size is written as the one given [mm].

    A half rounds up, .1935 is written .194; of a fraction it may round down too, since prints
    write 5/16 as .312 and 3/16 as .187 (common practice, no source).
    """
    over = drill.diameter - diameter
    most = near + SAME if drill.series == "fraction" else near - SAME
    return -near - SAME <= over < most


def beside(named: tuple[Drill, ...]) -> str:
    """Say how the other drills of a size lie to the first of them.

    Examples
    --------
    >>> beside(drills_of(0.281 * 25.4, "inch")), beside(drills_of(0.25 * 25.4, "inch"))
    ('K is 0.0003 in under', 'E')
    """
    first, *others = named or (None,)
    return ", ".join(_text_of(one, one.diameter - first.diameter) for one in others if first)


def _text_of(one: Drill, over: float) -> str:
    if abs(over) < SAME:
        return one.name
    # .00025 in is said as .0003, away from zero, as the trade does
    far = show_number(abs(over) / INCH + SAME, 4)
    return f"{one.name} is {far} in {'over' if over > 0 else 'under'}"


def _half_of_last_place(diameter: float) -> float:
    inches = diameter / INCH
    whole = abs(inches - round(inches, 3)) < SAME
    return INCH * (5 * LAST_PLACE if whole else LAST_PLACE / 2)
