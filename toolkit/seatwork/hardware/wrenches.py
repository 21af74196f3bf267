"""Room for a wrench socket over a hexagon head."""

from dataclasses import dataclass

from seatwork import tables
from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Sourced, needed
from seatwork.hardware.naming import screw
from seatwork.hardware.screws import Screw
from seatwork.hardware.spelling import as_typed
from seatwork.hardware.threads import thread
from seatwork.quantities import Length
from seatwork.shop import rules
from seatwork.units import show_both

TABLE = "counterbore_din_974_2"
FLATS = "across_flats_s_mm"
ROW_1 = "counterbore_dia_row1_socket_wrench_mm"
MEASURE = "measure yours"


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class WrenchSocket(Sourced):
    """The room that a wrench socket needs in a counterbore.

    Parameters
    ----------
    across_flats : float
        Width across flats of the head [mm].
    counterbore_diameter : float
        Counterbore that takes the socket [mm].
    basis : str
        What the diameter rests on, with "measure yours" where it stands in.
    source, confirmed : str
        As `seatwork.hardware.facts.Sourced`.
    """

    across_flats: float
    counterbore_diameter: float
    basis: str

    def _line(self) -> str:
        return f"counterbore {show_both(self.counterbore_diameter)}, {self.basis}"


def wrench_socket(text: str | Screw, *, outside_diameter: float | None = None) -> WrenchSocket:
    """Find the counterbore that leaves room for the wrench socket of a hexagon head.

    Parameters
    ----------
    text : str or Screw
        A hex screw or its size: ``3/8-16 hex cap``, ``1/2``, ``M10``.
    outside_diameter : float, optional
        Outside diameter of the socket in hand, measured [mm]. With it the counterbore is
        that and the house rule ``counterbore.wrench_clearance``.

    Returns
    -------
    WrenchSocket
        No table of inch sockets was found: row 1 of DIN 974-2 of the next wrench size up
        stands in, and says so.

    Raises
    ------
    SeatworkError
        If the screw has no hexagon head, or none as large is in the list.

    Examples
    --------
    >>> wrench_socket("M10").counterbore_diameter
    28.0
    >>> wrench_socket("3/8-16 hex cap").basis
    'DIN 974-2 row 1 for 16 mm across flats stands in: measure yours'
    """
    with as_typed(text):
        found = _hex(text) if isinstance(text, str) else text
        flats = found.across_flats
        if flats is None:
            raise SeatworkError(found.name, "it has no hexagon head", "name a hex screw")
        if outside_diameter is not None:
            return _measured(flats, outside_diameter)
        return _listed(flats)


def _hex(text: str) -> Screw:
    """Read a hex screw, or a size alone as the hex screw of that size."""
    try:
        size = thread(text)
    except SeatworkError:
        return screw(text)
    inches = " in" if size.size.isdigit() else ""
    return screw(f"{size.size}{inches} hex")


def _measured(flats: float, outside_diameter: float) -> WrenchSocket:
    if not flats < outside_diameter < float("inf"):
        raise SeatworkError(
            Length(outside_diameter),
            "a socket is wider than the head it turns, {flats}",
            "measure across the outside of the socket",
            flats=Length(flats),
        )
    rule = rules()["counterbore.wrench_clearance"]
    return WrenchSocket(
        across_flats=flats,
        counterbore_diameter=outside_diameter + rules().number(rule.name),
        basis=f"socket as measured, and the house rule {rule.name}",
        source=rule.source,
        confirmed=rule.confirmed,
    )


def _listed(flats: float) -> WrenchSocket:
    for row in tables.rows(TABLE):
        held = needed(TABLE, row, FLATS).value
        if held >= flats - 1e-9:
            room = needed(TABLE, row, ROW_1)
            exact = abs(held - flats) < 1e-9
            stands = "" if exact else " stands in"
            return WrenchSocket(
                across_flats=flats,
                counterbore_diameter=room.value,
                basis=f"DIN 974-2 row 1 for {held:g} mm across flats{stands}: {MEASURE}",
                source=room.source,
                confirmed=room.confirmed,
            )
    raise SeatworkError(Length(flats), "DIN 974-2 ends below that width", f"{MEASURE} socket")
