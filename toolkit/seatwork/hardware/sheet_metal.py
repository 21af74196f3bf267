"""Least sheet for a countersink, and distance to an edge: rules that differ, each by name."""

from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Sourced, fact, needed
from seatwork.quantities import Length
from seatwork.tables.reading import Cell
from seatwork.units import show_both

SHEET_RULES, RIVET_SHEETS = "least_sheet_rules", "least_sheet_rivets"
DISTANCE_RULES = "edge_distance_rules"


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class RuledLength(Sourced):
    """A least length, with the rule that asks for it.

    Parameters
    ----------
    length : float
        The least length [mm].
    rule : str
        Name of the rule, with its document.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    length: float
    rule: str

    def _line(self) -> str:
        return f"{show_both(self.length)} at least, {self.rule}"


def least_thickness(
    *, countersink_depth: float, head_height: float, rivet: str | None = None
) -> tuple[RuledLength, ...]:
    """Return the least sheet for a machine countersink, by every rule that applies.

    Parameters
    ----------
    countersink_depth : float
        Depth of the cone from the face [mm].
    head_height : float
        Height of the head [mm].
    rivet : str, optional
        Nominal shank of a rivet, ``5/32``: adds the rule of the rivet table.

    Returns
    -------
    tuple of RuledLength
        Thinnest first. They disagree: the shop or the drawing says which rules.

    Raises
    ------
    SeatworkError
        If a length is not above zero, or the rivet is not in the table.

    Examples
    --------
    >>> [round(each.length, 2) for each in least_thickness(countersink_depth=1.0, head_height=1.2)]
    [1.02, 1.2, 1.3, 1.5, 2.0]
    """
    sizes = {"countersink depth": countersink_depth, "head height": head_height}
    for name, value in sizes.items():
        if not 0 < value < float("inf"):
            raise SeatworkError(Length(value), f"that is no {name}", "give one above zero")
    found = [_sheet(row, sizes) for row in tables.rows(SHEET_RULES)]
    if rivet is not None:
        found.append(_rivet_sheet(rivet))
    return tuple(sorted(found, key=lambda each: each.length))


def _sheet(row: dict[str, Cell], sizes: dict[str, float]) -> RuledLength:
    named = fact(SHEET_RULES, row, "least_sheet_in")
    ratio = fact(SHEET_RULES, row, "least_ratio")
    length = named.value if named else sizes[str(row["of"])] * (ratio.value if ratio else 1.0)
    return RuledLength(
        length=length,
        rule=f"{row['document']}: {row['rule']}",
        source=str(row["source"]),
        confirmed=str(row["confirmed"]),
    )


def _rivet_sheet(rivet: str) -> RuledLength:
    least = needed(RIVET_SHEETS, tables.row(RIVET_SHEETS, rivet), "least_sheet_in")
    return RuledLength(
        length=least.value,
        rule=f"{tables.about(RIVET_SHEETS).standard}: {rivet} rivet",
        source=least.source,
        confirmed=least.confirmed,
    )


def edge_distances(diameter: float, *, what: str = "edge distance") -> tuple[RuledLength, ...]:
    """Return the least distances from the center of a rivet hole, by every rule.

    Parameters
    ----------
    diameter : float
        Shank diameter [mm].
    what : {"edge distance", "spacing"}, optional
        To the edge of the sheet, or to the next rivet.

    Returns
    -------
    tuple of RuledLength
        Least first. They disagree: head and document decide.

    Raises
    ------
    SeatworkError
        If the diameter is not above zero.

    Examples
    --------
    >>> [each.length for each in edge_distances(4.0)][0]
    6.0
    """
    if not 0 < diameter < float("inf"):
        raise SeatworkError(Length(diameter), "that is no shank", "give one above zero")
    if what not in ("edge distance", "spacing"):
        raise SeatworkError(what, "no such rule is held", "say edge distance or spacing")
    found = [
        RuledLength(
            length=diameter * needed(DISTANCE_RULES, row, "least_diameters_ratio").value,
            rule=str(row["rule"]),
            source=str(row["source"]),
            confirmed=str(row["confirmed"]),
        )
        for row in tables.rows(DISTANCE_RULES)
        if row["what"] == what
    ]
    return tuple(sorted(found, key=lambda each: each.length))
