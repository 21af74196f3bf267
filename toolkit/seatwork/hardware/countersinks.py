"""Countersinks as metric lists give them: DIN 74 and ISO 15065."""

from collections.abc import Mapping
from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Sourced, fact, needed
from seatwork.hardware.naming import screw
from seatwork.hardware.screws import Screw
from seatwork.hardware.spelling import as_typed
from seatwork.units import show_angle, show_both


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class CountersinkSize(Sourced):
    """A countersink as a list gives it.

    Parameters
    ----------
    diameter : float
        Diameter at the face [mm]; the least, where limits are given.
    greatest : float, optional
        Greatest diameter at the face [mm], where the list gives it.
    hole_diameter : float, optional
        Hole of the list [mm].
    depth : float, optional
        Depth of the cone from the face as printed [mm].
    included_angle : float
        Included angle [deg].
    standard : str
        Name of the list.
    withdrawn : bool
        Whether the list has been withdrawn.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    diameter: float
    greatest: float | None
    hole_diameter: float | None
    depth: float | None
    included_angle: float
    standard: str
    withdrawn: bool

    def _line(self) -> str:
        angle = show_angle(self.included_angle)
        return f"{show_both(self.diameter)} at the face, {angle}, {self.standard}"


@dataclass(frozen=True, slots=True, kw_only=True)
class CountersinkList:
    """A list of countersinks: its table, its columns, and the kind of screw it is for."""

    table: str
    kind: str | None
    diameter: str
    angle: str
    hole: str | None = None
    depth: str | None = None
    greatest: str | None = None


LISTS: Mapping[str, CountersinkList] = {
    "DIN 74 form F": CountersinkList(
        table="countersink_din_74_form_F_2003",
        kind="flat socket metric",
        diameter="countersink_dia_dc_mm",
        angle="included_angle_deg",
        hole="through_hole_dh_mm",
        depth="depth_t1_mm",
    ),
    "ISO 15065": CountersinkList(
        table="countersink_iso_15065",
        kind="flat machine metric",
        diameter="countersink_dia_dc_min_nominal_mm",
        angle="included_angle_nominal_deg",
        hole="through_hole_dh_mm",
        depth="depth_t1_approx_mm",
        greatest="countersink_dia_dc_max_mm",
    ),
    "DIN 74 form A": CountersinkList(
        table="countersink_din_74_form_A_1980",
        kind="din 963",
        diameter="countersink_dia_d2_medium_mm",
        angle="included_angle_deg",
        hole="through_hole_d1_medium_mm",
        depth="depth_t1_medium_mm",
    ),
    "DIN 74 form A fine": CountersinkList(
        table="countersink_din_74_form_A_1980",
        kind="din 963",
        diameter="countersink_dia_d3_fine_mm",
        angle="included_angle_deg",
        hole="through_hole_d1_fine_mm",
    ),
    "DIN 74 form B": CountersinkList(
        table="countersink_din_74_form_B_1980",
        kind="din 7991",
        diameter="countersink_dia_d2_mm",
        angle="included_angle_deg",
        hole="through_hole_d1_medium_mm",
        depth="depth_t1_mm",
    ),
}


def listed_countersink(text: str | Screw, *, standard: str | None = None) -> CountersinkSize:
    """Find the countersink of a metric flat head in a published list.

    Parameters
    ----------
    text : str or Screw
        A metric flat head screw.
    standard : str, optional
        A key of `LISTS`; the list that belongs to the screw without it.

    Returns
    -------
    CountersinkSize
        As printed: a list may differ from the geometry of the head by its rounding.

    Raises
    ------
    SeatworkError
        If the list is not for this screw; inch flat heads have no list.

    Examples
    --------
    >>> listed_countersink("M6 csk socket").diameter, listed_countersink("M6 slotted csk").diameter
    (13.71, 12.6)
    """
    with as_typed(text):
        found = screw(text) if isinstance(text, str) else text
        fitting = [name for name, held in LISTS.items() if held.kind == found.kind]
        if not fitting:
            raise SeatworkError(
                found.name,
                "no list held here gives a countersink for it",
                "cut to the theoretical sharp diameter of its head",
            )
        if standard is not None and standard not in fitting:
            raise SeatworkError(
                found.name,
                f"{standard} gives no countersink for it",
                f"say {' or '.join(fitting)}",
            )
        name = standard or fitting[0]
        return _sized(name, LISTS[name], found.thread.diameter)


def _sized(name: str, held: CountersinkList, diameter: float) -> CountersinkSize:
    row = tables.row(held.table, float(diameter))
    across = needed(held.table, row, held.diameter)

    def optional(column: str | None) -> float | None:
        found = fact(held.table, row, column) if column else None
        return found.value if found else None

    return CountersinkSize(
        diameter=across.value,
        greatest=optional(held.greatest),
        hole_diameter=optional(held.hole),
        depth=optional(held.depth),
        included_angle=needed(held.table, row, held.angle).value,
        standard=name,
        withdrawn=tables.about(held.table).withdrawn,
        source=across.source,
        confirmed=across.confirmed,
    )
