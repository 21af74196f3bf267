"""One size from what people type: a length, a drill or a screw."""

import re

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.drill_list import drill
from seatwork.hardware.spelling import as_typed, size_name, tidy
from seatwork.hardware.threads import INCH_TABLE, thread
from seatwork.units import length

WANTED = "a size such as .266, 17/64, 6.6 mm, #7 drill, #10 screw, H or M6"
THREAD = re.compile(r"(?:#?\d+|\d*\.\d+|(?:\d+[ -])?\d+/\d+)-\d+(?: ?un[cf].*)?|m ?\d.*")


def size(text: object, system: str | None = None) -> float:
    """Read a size that may be a length or the name of a drill or a screw.

    Parameters
    ----------
    text : str, number or pint.Quantity
        What `seatwork.units.length` reads, and ``#7``, ``H``, ``#10 drill``, ``#10 screw``,
        ``M6``, ``1/4-20``.
    system : {"inch", "metric"}, optional
        What a bare number is read in.

    Returns
    -------
    float
        Length [mm]; of a screw, its basic major diameter.

    Raises
    ------
    SeatworkError
        For anything else. ``#10`` is asked about: drill or screw.

    Examples
    --------
    >>> size("#7"), size("H"), size("M6"), size("17/64")
    (5.1054, 6.7564, 6.0, 6.746875)
    """
    if not isinstance(text, str):
        return length(text, system)
    with as_typed(text):
        plain = tidy(text, WANTED)
        name = size_name(re.sub(r" ?\b(?:drill|screw)$", "", plain))
        if plain.endswith("screw"):
            return thread(name).diameter
        if plain.endswith("drill"):
            return drill(name).diameter
        if name.startswith("#") and "-" not in name:
            return _numbered(name)
        if re.fullmatch(r"[A-Z]", name):
            return drill(name).diameter
        if THREAD.fullmatch(plain):
            return thread(plain).diameter
        return length(text, system)


def _numbered(name: str) -> float:
    """Return the size of a number: a drill, or a screw, or a question."""
    is_screw = name in {row["size"] for row in tables.rows(INCH_TABLE)}
    if not is_screw:
        return drill(name).diameter
    if name == "#0":
        return thread(name).diameter
    raise SeatworkError(name, "a drill or a screw?", f"write {name} drill or {name} screw")
