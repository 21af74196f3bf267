"""Screws: what a name at the counter stands for, with every diameter kept apart."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from seatwork.errors import SeatworkError
from seatwork.hardware.facts import Fact, caution
from seatwork.hardware.hexagons import across_corners
from seatwork.hardware.threads import Thread
from seatwork.quantities import Length
from seatwork.rows import Blocks, Row, Shown
from seatwork.seats import Head
from seatwork.seats.cones import half_tangent
from seatwork.units import show_angle, show_both

STATED = {
    "sharp_diameter": "sharp",
    "edge_diameter": "across the edge",
    "head_diameter": "across the head",
    "across_flats": "across the flats",
}
"""What the size of a screw's head is called, by the fact that the seat is cut to."""


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Gage(Shown):
    """The ring a flat head is gaged in: how far it may stand above it.

    Parameters
    ----------
    diameter : float
        Hole diameter of the gage [mm].
    least, greatest : float
        Least and greatest height of the head above the gage [mm].
    """

    diameter: float
    least: float
    greatest: float

    def _line(self) -> str:
        return f"head {show_both(self.least)} to {show_both(self.greatest)} above the ring"

    def _blocks(self) -> Blocks:
        yield "", (Row(label="hole of the gage", text=show_both(self.diameter)),)


@dataclass(frozen=True, slots=True, kw_only=True, repr=False)
class Screw(Shown):
    """A screw and what its documents say of its head.

    Parameters
    ----------
    kind : str
        A key of `seatwork.hardware.kinds.KINDS`, such as ``flat machine 82``.
    title : str
        What the screw is called.
    thread : Thread
        Its size, and pitch where named.
    standard : str
        Document that governs the head.
    facts : mapping of str to Fact
        The published values [mm, deg], each with source and confirmation. Names:
        ``sharp_diameter, edge_diameter, rounded_edge_diameter, height, seat_angle,
        least_angle, greatest_angle, head_diameter, knurled_diameter, across_flats,
        across_flats_old, across_corners, hex_socket, gage_diameter, gage_least,
        gage_greatest, flushness``; what no document gives is left out.
    main : str
        Name of the fact that the seat is cut to.
    withdrawn : bool, optional
        Whether the document has been withdrawn.
    length : float, optional
        Length where one was named [mm].
    assumptions : tuple of str, optional
        What was taken for granted in reading the name.

    Notes
    -----
    One screw has several diameters. The theoretical sharp diameter is where head cone and
    head top would meet; the edge diameter is the greatest the metal really has; the rounded
    edge diameter the least. Editions of a standard are sources of one screw.
    """

    kind: str
    title: str
    thread: Thread
    standard: str
    facts: Mapping[str, Fact] = field(hash=False)
    main: str
    withdrawn: bool = False
    length: float | None = None
    assumptions: tuple[str, ...] = ()

    def _line(self) -> str:
        main = self.facts[self.main].value
        return f"{self.name}: {show_both(main)} {STATED.get(self.main, '')}, {self.standard}"

    def _blocks(self) -> Blocks:
        yield (
            "",
            tuple(
                Row(
                    label=name.replace("_", " "),
                    text=show_angle(one.value) if "angle" in name else show_both(one.value),
                    source=f"{one.document} ({one.confirmed})",
                )
                for name, one in self.facts.items()
            ),
        )
        yield "Taken for granted", tuple(Row(label="read", text=one) for one in self.assumptions)

    @property
    def name(self) -> str:
        """Size and title: ``#10-32 flat head machine screw, 82°``."""
        return f"{self.thread.name} {self.title}"

    @property
    def source(self) -> str:
        """Source of the value that the seat is cut to."""
        return self.facts[self.main].source

    @property
    def confirmed(self) -> str:
        """How well the value that the seat is cut to is confirmed."""
        return self.facts[self.main].confirmed

    @property
    def caution(self) -> str:
        """What must be said beside the value that the seat is cut to."""
        return caution(self.confirmed)

    def value(self, name: str) -> float | None:
        """Return a published value [mm or deg]; None where no document here gives it."""
        return self.facts[name].value if name in self.facts else None

    @property
    def sharp_diameter(self) -> float | None:
        """Theoretical sharp diameter of the greatest head [mm]."""
        return self.value("sharp_diameter")

    @property
    def edge_diameter(self) -> float | None:
        """Greatest diameter of the edge the head really has [mm]."""
        return self.value("edge_diameter")

    @property
    def rounded_edge_diameter(self) -> float | None:
        """Least diameter of the edge, rounded or flat [mm]."""
        return self.value("rounded_edge_diameter")

    @property
    def head_height(self) -> float | None:
        """Height of the head, the greatest where a range is given [mm]."""
        return self.value("height")

    @property
    def head_diameter(self) -> float | None:
        """Greatest diameter of a cylindrical head, plain [mm]."""
        return self.value("head_diameter")

    @property
    def across_flats(self) -> float | None:
        """Width across flats of a hexagon head [mm]."""
        return self.value("across_flats")

    @property
    def across_corners(self) -> float | None:
        """Width across corners of a hexagon head: the greatest published, or the sharp hexagon's.

        [mm]; None for other heads.
        """
        if self.across_flats is None:
            return None
        return self.value("across_corners") or across_corners(self.across_flats)

    @property
    def seat_angle(self) -> float | None:
        """Included angle of the seat that goes with the head [deg]."""
        return self.value("seat_angle")

    @property
    def angle_range(self) -> tuple[float, float] | None:
        """Least and greatest head angle [deg]; None where no range is held."""
        least, greatest = self.value("least_angle"), self.value("greatest_angle")
        return None if least is None or greatest is None else (least, greatest)

    @property
    def gage(self) -> Gage | None:
        """The head's gage; None where the documents give none."""
        names = ("gage_diameter", "gage_least", "gage_greatest")
        if not all(name in self.facts for name in names):
            return None
        diameter, least, greatest = (self.facts[name].value for name in names)
        return Gage(diameter=diameter, least=least, greatest=greatest)

    @property
    def flushness(self) -> float | None:
        """How far the least head may lie below a face cut for the greatest [mm]."""
        return self.value("flushness")

    @property
    def knows_least(self) -> bool:
        """Whether a document here gives the least cone of the head, by gage or flushness."""
        return self.gage is not None or self.flushness is not None

    @property
    def head(self) -> Head:
        """The greatest flat head, for `seatwork.seats.fit`.

        Raises
        ------
        SeatworkError
            If the screw has no flat head, or no theoretical sharp diameter is published.
        """
        sharp = self._sharp_or_refuse()
        return Head(
            sharp_diameter=sharp,
            included_angle=self.facts["seat_angle"].value,
            edge_diameter=self.edge_diameter,
            height=self.head_height,
        )

    @property
    def steepest_head(self) -> Head:
        """The greatest head with the least angle of its range: what stands proud first.

        Raises
        ------
        SeatworkError
            As `head` does.
        """
        angles = self.angle_range
        return replace(self.head, included_angle=angles[0]) if angles else self.head

    @property
    def least_head(self) -> Head:
        """The least head that is still this screw.

        Raises
        ------
        SeatworkError
            As `head` does.

        Notes
        -----
        Where a gage is published, the least protrusion gives the least cone: the diameter at
        the head's top is G + 2 F tan(A/2). Elsewhere the cone is that of the greatest head
        and only its edge is least: see `lowest_head` and `knows_least`.
        """
        sharp, angle = self._sharp_or_refuse(), self.facts["seat_angle"].value
        gage = self.gage
        if gage:
            sharp = gage.diameter + 2 * gage.least * half_tangent(angle)
        return Head(
            sharp_diameter=sharp, included_angle=angle, edge_diameter=self.rounded_edge_diameter
        )

    @property
    def lowest_head(self) -> Head:
        """The head that may lie lowest in a seat cut for the greatest.

        Raises
        ------
        SeatworkError
            As `head` does.

        Notes
        -----
        Where the document lets a head lie a flushness F below a face cut to the theoretical
        sharp diameter, its own is that less 2 F tan(A/2); elsewhere it is the least head.
        """
        least, low = self.least_head, self.flushness
        if low is None:
            return least
        sharp = least.sharp_diameter - 2 * low * half_tangent(least.included_angle)
        edge = least.edge_diameter
        return replace(
            least, sharp_diameter=sharp, edge_diameter=None if edge is None else min(edge, sharp)
        )

    def _sharp_or_refuse(self) -> float:
        if self.sharp_diameter is not None:
            return self.sharp_diameter
        if self.edge_diameter is None:
            raise SeatworkError(
                self.name, "its head has no cone", "cut a counterbore or a spotface for it"
            )
        raise SeatworkError(
            self.name,
            f"{self.standard} gives the edge of the head, {{edge}}, not its theoretical sharp"
            " diameter; a seat cut to the edge leaves the head proud".replace("{{", "{"),
            "gage the screw, or name one with a theoretical sharp diameter",
            edge=Length(self.edge_diameter),
        )
