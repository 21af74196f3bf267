"""How the sentences of a plan write their sizes: both unit systems, the note's own first."""

from collections.abc import Callable

from seatwork.errors import Angle, Length
from seatwork.units import show_angle, show_both

Show = Callable[[object], str]


def shower(system: str) -> Show:
    """Return a function that writes a ``Length`` or an ``Angle`` for people.

    Examples
    --------
    >>> shower("inch")(Length(12.7)), shower("metric")(Angle(82))
    ('0.500 in (12.70 mm)', '82°')
    """

    def show(size: object) -> str:
        if isinstance(size, Length):
            return show_both(size, system)
        return show_angle(size) if isinstance(size, Angle) else str(size)

    return show
