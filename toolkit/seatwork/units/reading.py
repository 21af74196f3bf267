"""Shop text read into floats: ``1-1/4 in``, ``.266``, ``6,6 mm``, ``82°``, ``90 sfm``.

Text is matched against fixed forms and computed in decimal; nothing is evaluated, and a
units library is asked only when a caller hands over one of its quantities.
"""

import re
import sys
from decimal import Decimal
from typing import Any

from seatwork.errors import SeatworkError
from seatwork.quantities import EXACT_INCH
from seatwork.units.showing import MM_PER_FOOT, system_named

LONGEST = 60  # characters; no size, speed or feed is written longer
SIZES = "a size such as .266, 17/64, 1-1/4 in or 6.6 mm"

LENGTH_UNITS = {
    **dict.fromkeys(("in", "in.", "inch", "inches", '"'), EXACT_INCH),
    **dict.fromkeys(("mm", "mm.", "millimeter", "millimeters", "millimetre", "millimetres"), 1),
    **dict.fromkeys(("thou", "thousandth", "thousandths"), EXACT_INCH / 1000),
    **dict.fromkeys(("cm", "centimeter", "centimeters"), 10),
    **dict.fromkeys(("um", "µm", "μm", "micron", "microns"), Decimal("0.001")),
}
ANGLE_UNITS = dict.fromkeys(("", "°", "deg", "deg.", "degree", "degrees"), 1)
SPEED_UNITS = {
    **dict.fromkeys(("sfm", "sfpm", "fpm", "ft/min", "feet/min"), MM_PER_FOOT / 1000),
    **dict.fromkeys(("m/min", "m/minute"), 1),
}
FEED_UNITS = {
    **dict.fromkeys(("ipr", "in/rev", "inch/rev"), EXACT_INCH),
    **dict.fromkeys(("mm/rev", "mm/r"), 1),
}

DECIMAL = re.compile(r"([+-]?)(\d+[.,]?\d*|[.,]\d+)", re.ASCII)
FRACTION = re.compile(r"([+-]?)(?:(\d+)[ -]+)?(\d+)/(\d+)", re.ASCII)
NAME = re.compile(r"#.*|no\.? ?\d.*|m ?\d.*|[a-z]|\d[\d/ -]*\"?-\d+.*", re.ASCII | re.IGNORECASE)
VULGAR = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
MARKS = str.maketrans({"″": '"', "”": '"', "“": '"', "º": "°", "\u00a0": " ", "−": "-", "–": "-"})


def length(value: object, system: str | None = None) -> float:
    """Read a length as people write it in the shop.

    Parameters
    ----------
    value : str, number or pint.Quantity
        ``.266``, ``0.266"``, ``17/64``, ``1-1/4 in``, ``6.6 mm``, ``6,6 mm``, ``15 thou``.
        A fraction is in inches always.
    system : {"inch", "metric"}, optional
        What a bare number is read in; without it a bare number is asked about.

    Returns
    -------
    float
        Length [mm], zero or more.

    Raises
    ------
    SeatworkError
        For anything else: what was read, what is wrong, what would do.

    Examples
    --------
    >>> length("1-1/4 in"), length("6,6 mm"), length(".5", "inch")
    (31.75, 6.6, 12.7)
    """
    if _is_quantity(value):
        return _from_quantity(value, "millimeter", "a length")
    text = _clean(value, SIZES)
    amount, unit, is_fraction = _amount_and_unit(text, SIZES)
    if amount < 0:
        raise SeatworkError(text, "a size has no sign", "write it without; say proud or below")
    if is_fraction:
        return _fraction_of_an_inch(text, amount, unit)
    if unit == "mil":
        raise SeatworkError(
            text,
            "mil is an inch thousandth to some, a millimeter or an angle to others",
            "write thou, or mm",
        )
    if unit == "":
        unit = _assumed_unit(text, system)
    return float(amount * _factor(text, unit, LENGTH_UNITS, SIZES))


def angle(value: object) -> float:
    """Read an angle: ``82``, ``82°``, ``82 deg``, ``59,5°`` or a pint Quantity.

    Returns
    -------
    float
        Angle [deg], 0 to 360.

    Raises
    ------
    SeatworkError
        For anything else.

    Examples
    --------
    >>> angle("82°"), angle("59.5 deg")
    (82.0, 59.5)
    """
    wanted = "an angle such as 82° or 82 deg"
    if _is_quantity(value):
        return _from_quantity(value, "degree", "an angle")
    text = _clean(value, wanted)
    amount, unit, is_fraction = _amount_and_unit(text, wanted)
    degrees = float(amount * _factor(text, unit, ANGLE_UNITS, wanted))
    if is_fraction or not 0 <= degrees <= 360:
        raise SeatworkError(text, "that is not an angle from 0 to 360 degrees", f"write {wanted}")
    return degrees


def cutting_speed(value: object, system: str | None = None) -> float:
    """Read a surface speed: ``90 sfm``, ``90 ft/min``, ``30 m/min``.

    Parameters
    ----------
    value : str, number or pint.Quantity
        The speed at the cutting edge.
    system : {"inch", "metric"}, optional
        What a bare number is read in: ft/min or m/min.

    Returns
    -------
    float
        Surface speed [m/min], above zero.

    Raises
    ------
    SeatworkError
        For anything else.

    Examples
    --------
    >>> cutting_speed("100 sfm"), cutting_speed("30 m/min")
    (30.48, 30.0)
    """
    bare = {"inch": "sfm", "metric": "m/min"}
    wanted = "a surface speed such as 90 sfm or 30 m/min"
    return _rate(value, system, SPEED_UNITS, bare, wanted, "meter/minute")


def feed(value: object, system: str | None = None) -> float:
    """Read a feed per turn: ``.004 ipr``, ``.004 in/rev``, ``0.1 mm/rev``.

    Parameters
    ----------
    value : str, number or pint.Quantity
        The advance in one turn of the spindle.
    system : {"inch", "metric"}, optional
        What a bare number is read in: in/rev or mm/rev.

    Returns
    -------
    float
        Feed [mm/rev], above zero.

    Raises
    ------
    SeatworkError
        For anything else.

    Examples
    --------
    >>> feed(".004 ipr"), feed("0.1 mm/rev")
    (0.1016, 0.1)
    """
    bare = {"inch": "ipr", "metric": "mm/rev"}
    wanted = "a feed such as .004 ipr or 0.1 mm/rev"
    return _rate(value, system, FEED_UNITS, bare, wanted, "millimeter/turn")


def number(value: object) -> Decimal:
    """Read a bare number, such as a spindle speed or a count.

    Returns
    -------
    Decimal
        The number as typed, sign kept.

    Raises
    ------
    SeatworkError
        If anything but one number was typed.

    Examples
    --------
    >>> number(" 688 "), number("1.5")
    (Decimal('688'), Decimal('1.5'))
    """
    wanted = "a number such as 688 or 1.5"
    text = _clean(value, wanted)
    amount, unit, _ = _amount_and_unit(text, wanted)
    if unit:
        raise SeatworkError(text, f"{unit!r} is not part of a number", f"write {wanted}")
    return amount


def _clean(value: object, wanted: str) -> str:
    """Return the text typed, trimmed, or refuse it before anything else looks at it."""
    if isinstance(value, bool) or not isinstance(value, str | int | float | Decimal):
        raise SeatworkError(type(value).__name__, "that is not text", f"write {wanted}")
    text = value if isinstance(value, str) else str(value)
    if len(text) > LONGEST:
        raise SeatworkError(text[:20] + "…", "that is too long to be a size", f"write {wanted}")
    text = " ".join(text.translate(MARKS).strip(" ").split(" "))
    if not text.isprintable():
        raise SeatworkError(ascii(text), "it holds characters that do not print", f"write {wanted}")
    if not text:
        raise SeatworkError("nothing", "no value was typed", f"write {wanted}")
    return text


def _amount_and_unit(text: str, wanted: str) -> tuple[Decimal, str, bool]:
    """Split into amount, unit (lower case, may be empty) and whether it was a fraction."""
    plain = re.sub(r"(?<=\d)(?=[½¼¾⅛⅜⅝⅞])", " ", text)
    for sign, fraction in VULGAR.items():
        plain = plain.replace(sign, fraction)
    found = FRACTION.match(plain)
    if found and not re.match(r'"? ?-', plain[found.end() :]):
        return _fraction(text, *found.groups()), plain[found.end() :].strip().lower(), True
    if NAME.fullmatch(plain):
        raise SeatworkError(
            text, "that names a drill or a screw, not a size", f"look it up, or write {wanted}"
        )
    found = DECIMAL.match(plain)
    unit = plain[found.end() :].strip().lower() if found else ""
    if not found or (unit and unit[0] in "0123456789.,e+-*"):
        raise SeatworkError(text, "that cannot be read as one number", f"write {wanted}")
    return _decimal(text, *found.groups()), unit, False


def _fraction(text: str, sign: str, whole: str | None, top: str, bottom: str) -> Decimal:
    if int(bottom) not in (2, 4, 8, 16, 32, 64, 128):
        raise SeatworkError(
            text, "shop fractions are halves to 1/128", "write it as a decimal, such as .3"
        )
    amount = Decimal(whole or 0) + Decimal(top) / Decimal(bottom)
    return -amount if sign == "-" else amount


def _decimal(text: str, sign: str, digits: str) -> Decimal:
    if re.fullmatch(r"[1-9]\d{0,2},\d{3}", digits):
        plain, point = digits.replace(",", ""), digits.replace(",", ".")
        raise SeatworkError(
            text, f"the comma can mean {plain} or {point}", f"write {plain} or {point}"
        )
    return Decimal(sign + digits.replace(",", ".").rstrip("."))


def _fraction_of_an_inch(text: str, amount: Decimal, unit: str) -> float:
    if LENGTH_UNITS.get(unit or "in") != EXACT_INCH:
        raise SeatworkError(
            text, "a fraction is read in inches", "write it in inches, or as decimal millimeters"
        )
    return float(amount * EXACT_INCH)


def _assumed_unit(text: str, system: str | None) -> str:
    if system is None:
        both = (f"{text} in", f"{text} mm")
        raise SeatworkError(text, "in or mm?", f"write {both[0]} or {both[1]}", options=both)
    return "in" if system_named(system) == "inch" else "mm"


def _factor(text: str, unit: str, units: dict[str, Any], wanted: str) -> Decimal:
    if unit not in units:
        raise SeatworkError(text, f"the unit {unit!r} is not known here", f"write {wanted}")
    return Decimal(units[unit])


def _rate(
    value: object,
    system: str | None,
    units: dict[str, Any],
    bare: dict[str, str],
    wanted: str,
    pint_unit: str,
) -> float:
    if _is_quantity(value):
        return _from_quantity(value, pint_unit, wanted)
    text = _clean(value, wanted)
    amount, unit, is_fraction = _amount_and_unit(text, wanted)
    unit = unit.replace(" ", "")
    if not unit:
        if system is None:
            either = " or ".join(bare.values())
            raise SeatworkError(text, f"{either}?", f"write {wanted}")
        unit = bare[system_named(system)]
    rate = float(amount * _factor(text, unit, units, wanted))
    if is_fraction or not rate > 0:
        raise SeatworkError(text, "it must be a decimal number above zero", f"write {wanted}")
    return rate


def _is_quantity(value: object) -> bool:
    """Tell whether pint is loaded and made this value; a text never is."""
    pint = sys.modules.get("pint")
    return pint is not None and isinstance(value, pint.Quantity)


def _from_quantity(value: Any, unit: str, wanted: str) -> float:
    try:
        amount = float(value.to(unit).magnitude)
    except (TypeError, ValueError, AttributeError) as error:
        raise SeatworkError(value, f"that is not {wanted}", f"give {wanted}") from error
    if not 0 <= amount < float("inf"):
        raise SeatworkError(value, "it must be a finite amount, zero or more", f"give {wanted}")
    return amount
