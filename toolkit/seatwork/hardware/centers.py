"""Center drills by their number."""

from dataclasses import dataclass

from seatwork import tables
from seatwork.hardware.facts import Sourced, needed, weakest
from seatwork.hardware.spelling import as_typed, size_name, tidy
from seatwork.units import show_both

WANTED = "a center drill such as #3 or A2.5"


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class CenterDrill(Sourced):
    """A combined drill and countersink.

    Parameters
    ----------
    name : str
        Its number, ``#3``, or type and drill diameter, ``A2.5``.
    drill_diameter : float
        Diameter of the drill point [mm].
    body_diameter : float
        Diameter of the body, which the mouth of the hole must not reach [mm].
    included_angle : float
        Included angle of the cone [deg].
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    name: str
    drill_diameter: float
    body_diameter: float
    included_angle: float

    def _line(self) -> str:
        return f"{self.name}: {show_both(self.drill_diameter)} drill, {self.document}"


def center_drill(text: str) -> CenterDrill:
    """Find a center drill.

    Parameters
    ----------
    text : str
        ``#3`` (inch, plain type) or ``A2.5`` (metric, type A).

    Raises
    ------
    SeatworkError
        If no center drill held here has the name.

    Examples
    --------
    >>> center_drill("#3").body_diameter
    6.35
    """
    with as_typed(text):
        name = size_name(tidy(text, WANTED).removeprefix("center drill ")).upper()
        name = f"#{name}" if name.isdigit() else name
        metric = name.startswith("A")
        table = "center_drills_metric" if metric else "center_drills_inch"
        row = tables.row(table, name)
    unit = "mm" if metric else "in"
    drilled = needed(table, row, f"drill_dia_{unit}")
    body = needed(table, row, f"body_dia_{unit}")
    return CenterDrill(
        name=name,
        drill_diameter=drilled.value,
        body_diameter=body.value,
        included_angle=needed(table, row, "included_angle_deg").value,
        source=body.source,
        confirmed=weakest(drilled.confirmed, body.confirmed),
    )
