"""Values as people read them: rounded once, here, half away from zero."""

from collections.abc import Callable
from decimal import ROUND_HALF_UP, Decimal, InvalidOperation
from functools import lru_cache

from seatwork.errors import SeatworkError
from seatwork.quantities import EXACT_INCH, Angle, Length

KEPT = 2048
"""Numbers kept as written: a picture, its text and its readouts say the same ones at each step."""

MM_PER_FOOT = Decimal("304.8")
PLACES = {"inch": 3, "metric": 2}
UNIT = {"inch": "in", "metric": "mm"}


def system_named(system: str) -> str:
    """Return `system` when it is "inch" or "metric".

    Raises
    ------
    SeatworkError
        For any other word.
    """
    if system not in UNIT:
        raise SeatworkError(system, "that is no unit system", 'write "inch" or "metric"')
    return system


def rounded(value: float | Decimal, places: int) -> Decimal:
    """Round half away from zero, on the shortest decimal that names the float.

    Parameters
    ----------
    value : float or Decimal
        Any finite number [any unit].
    places : int
        Decimal places kept.

    Returns
    -------
    Decimal
        Never a negative zero.

    Raises
    ------
    SeatworkError
        If the value is NaN or infinite.

    Examples
    --------
    >>> rounded(0.1385, 3), rounded(-0.0004, 3)
    (Decimal('0.139'), Decimal('0.000'))
    """
    exact = value if isinstance(value, Decimal) else Decimal(repr(float(value)))
    if not exact.is_finite():
        raise SeatworkError(value, "that is not a finite number", "check the sizes it came from")
    try:
        result = exact.quantize(_last_place(places), rounding=ROUND_HALF_UP)
    except InvalidOperation as error:
        raise SeatworkError(
            value, f"it has too many digits for {places} places", "ask for fewer places"
        ) from error
    return abs(result) if result.is_zero() else result


@lru_cache(maxsize=64)
def _last_place(places: int) -> Decimal:
    """Return one of the last place kept."""
    return Decimal(1).scaleb(-places)


def rounded_length(mm: float, system: str = "inch", places: int | None = None) -> Decimal:
    """Round a length in the unit of `system`.

    Parameters
    ----------
    mm : float
        Length [mm].
    system : {"inch", "metric"}
        Unit of the result: in or mm.
    places : int, optional
        Decimal places; .001 in and 0.01 mm if not given.

    Returns
    -------
    Decimal
        The length [in] or [mm].

    Examples
    --------
    >>> rounded_length(12.7), rounded_length(12.7, "metric")
    (Decimal('0.500'), Decimal('12.70'))
    """
    kept = PLACES[system_named(system)] if places is None else places
    exact = Decimal(repr(float(mm)))
    return rounded(exact / EXACT_INCH if system == "inch" and exact.is_finite() else exact, kept)


def show_number(value: float | Decimal, places: int, least: int = 0) -> str:
    """Write a bare number [-] rounded to `places`, trailing zeros dropped down to `least` places.

    Examples
    --------
    >>> show_number(0.004, 4, least=3), show_number(82.0, 1)
    ('0.004', '82')
    """
    return _number(value, places, least)


@lru_cache(maxsize=KEPT)
def _number(value: float | Decimal, places: int, least: int) -> str:
    text = f"{rounded(value, places):f}"
    whole, _, decimals = text.partition(".")
    kept = decimals.rstrip("0").ljust(least, "0")
    return f"{whole}.{kept}" if kept else whole


def show_length(mm: float, system: str = "inch", places: int | None = None) -> str:
    """Write a length with its unit, leading zero kept.

    Parameters
    ----------
    mm : float
        Length [mm].
    system : {"inch", "metric"}
        System to write it in.
    places : int, optional
        Decimal places; .001 in and 0.01 mm if not given.

    Examples
    --------
    >>> show_length(12.7), show_length(12.7, "metric")
    ('0.500 in', '12.70 mm')
    """
    return _length(mm, system, places)


@lru_cache(maxsize=KEPT)
def _length(mm: float, system: str, places: int | None) -> str:
    return f"{rounded_length(mm, system, places):f} {UNIT[system_named(system)]}"


def show_both(mm: float, system: str = "inch", places: int | None = None) -> str:
    """Write a length [mm] in both systems, `system` first; `places` count in `system`.

    Examples
    --------
    >>> show_both(12.7), show_both(12.7, "metric")
    ('0.500 in (12.70 mm)', '12.70 mm (0.500 in)')
    """
    other = "metric" if system == "inch" else "inch"
    return f"{_length(mm, system, places)} ({_length(mm, other, None)})"


def show_note(mm: float, system: str = "inch", places: int | None = None) -> str:
    """Write a length [mm] as print notes do: no unit, and no leading zero in inches.

    Metric sizes drop trailing zeros, as ISO and ASME Y14.5 notes do.

    Examples
    --------
    >>> show_note(9.779), show_note(6.6, "metric"), show_note(0.4, "metric")
    ('.385', '6.6', '0.4')
    """
    kept = PLACES[system_named(system)] if places is None else places
    if system == "metric":
        return show_number(mm, kept)
    text = f"{rounded_length(mm, 'inch', kept):f}"
    return text.replace("0.", ".", 1) if text.lstrip("-").startswith("0.") else text


def show_angle(degrees: float, places: int = 1) -> str:
    """Write an angle [deg], trailing zeros dropped.

    Examples
    --------
    >>> show_angle(82.0), show_angle(81.46)
    ('82°', '81.5°')
    """
    return f"{show_number(degrees, places)}°"


def show_speed(metres_per_minute: float, system: str = "inch") -> str:
    """Write a surface speed [m/min] as whole sfm or m/min.

    Examples
    --------
    >>> show_speed(27.432), show_speed(27.432, "metric")
    ('90 sfm', '27 m/min')
    """
    if system_named(system) == "metric":
        return f"{show_number(metres_per_minute, 0)} m/min"
    exact = Decimal(repr(float(metres_per_minute)))
    return f"{show_number(exact * 1000 / MM_PER_FOOT if exact.is_finite() else exact, 0)} sfm"


def show_spindle(rev_per_minute: float) -> str:
    """Write a spindle speed [rev/min], whole.

    Examples
    --------
    >>> show_spindle(687.55)
    '688 rev/min'
    """
    return f"{show_number(rev_per_minute, 0)} rev/min"


def show_feed(mm_per_rev: float, system: str = "inch") -> str:
    """Write a feed per turn [mm/rev]: .0001 in or 0.001 mm, trailing zeros dropped.

    Examples
    --------
    >>> show_feed(0.1016), show_feed(0.1016, "metric")
    ('0.004 in/rev', '0.102 mm/rev')
    """
    if system_named(system) == "metric":
        return f"{show_number(mm_per_rev, 3, least=2)} mm/rev"
    exact = Decimal(repr(float(mm_per_rev)))
    inch = exact / EXACT_INCH if exact.is_finite() else exact
    return f"{show_number(inch, 4, least=3)} in/rev"


def explain(error: SeatworkError, system: str = "inch", say: Callable[[str], str] = str) -> str:
    """Tell an error with its lengths and angles in the reader's system.

    Parameters
    ----------
    error : SeatworkError
        The error raised.
    system : {"inch", "metric"}
        Unit system of the reader.
    say : callable
        Says what is wrong and what would do in the reader's language.

    Examples
    --------
    >>> explain(SeatworkError(Length(12.7), "no cutter is that wide", "choose another"))
    '0.500 in: no cutter is that wide; choose another.'
    """

    def show(value: object) -> str:
        if isinstance(value, Length):
            return show_length(value, system)
        return show_angle(value) if isinstance(value, Angle) else str(value)

    return error.sentence(show, say)
