"""General tolerances of broken edges, ISO 2768-1."""

from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Fact
from seatwork.hardware.limits import in_range
from seatwork.quantities import Length

CLASSES = {"f": "fine", "m": "medium", "c": "coarse", "v": "very coarse"}


def edge_tolerance(leg: float, tolerance_class: str = "m") -> Fact:
    """Return the tolerance of an edge break or a chamfer that carries none.

    Parameters
    ----------
    leg : float
        Radius or chamfer height [mm], 0.5 or more.
    tolerance_class : {"f", "m", "c", "v"}, optional
        Class in the title block.

    Returns
    -------
    Fact
        Plus and minus this value [mm].

    Raises
    ------
    SeatworkError
        Under 0.5 mm, where the standard wants the tolerance at the dimension.

    Examples
    --------
    >>> edge_tolerance(2).value
    0.2
    """
    _known(tolerance_class)
    table = "edge_tolerances_iso_2768_1"
    return in_range(table, Length(leg), "tolerance_mm", tolerance_class=tolerance_class)


def _known(tolerance_class: str) -> None:
    if tolerance_class not in CLASSES:
        raise SeatworkError(
            tolerance_class, "ISO 2768-1 has no such class", f"say {', '.join(CLASSES)}"
        )
