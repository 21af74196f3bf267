"""Sizes as a learner types them: a length, or the name of a drill."""

import re

from seatwork import hardware, units
from seatwork.show.said import Said, quoted, said, typed

DRILL = re.compile(r"#.*|[A-Za-z]")
METRIC = re.compile(r"mm\b|\bM ?\d|m/min", re.IGNORECASE)


def system_of(*texts: str | None) -> str:
    """Tell which unit system stands first: metric where any of the texts is metric.

    Examples
    --------
    >>> system_of(".507 in", None), system_of("M6 flat head")
    ('inch', 'metric')
    """
    return "metric" if any(METRIC.search(text) for text in texts if text) else "inch"


def diameter_of(text: str) -> tuple[float, str]:
    """Read a hole's size or a drill's name.

    Parameters
    ----------
    text : str
        ``.266 in``, ``17/64``, ``#7``, ``6.6 mm``.

    Returns
    -------
    tuple of (float, str)
        The diameter [mm], and the Python that reads it.

    Raises
    ------
    SeatworkError
        If it is neither a size nor a drill.
    """
    if isinstance(text, str) and DRILL.fullmatch(text.strip()):
        return hardware.drill(text).diameter, f"sw.drill({quoted(text)}).diameter"
    return units.length(text), typed(text)


def size(text: str) -> Said:
    """Say a size in both unit systems.

    Parameters
    ----------
    text : str
        The size as the shop writes it: ``17/64``, ``6.6 mm``, ``#7``.

    Returns
    -------
    Said
        The size in inches and in millimeters.

    Raises
    ------
    SeatworkError
        If the text is no size.

    Examples
    --------
    >>> print(size("17/64"))
    17/64: 0.266 in (6.75 mm)
    """
    found, code = diameter_of(text)
    system = system_of(text)
    return said(
        (" ".join(text.split()), units.show_both(found, system)),
        code=(f'print(sw.units.show_both({code}, "{system}"))',),
    )
