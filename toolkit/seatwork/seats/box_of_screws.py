"""One seat for every screw in the box: which sizes keep all heads between flush and a limit.

Lengths are millimeters, angles are included angles in degrees.

Notes
-----
Cutting the seat wider lets every head down, so each head has its own range of diameters: at
the lower end its top is level with the face, at the upper end it lies the allowed amount
below. From S(r) = h(r) - s(r) at the circles that can carry (see ``heads``), a head stands at
a level S exactly when D is the largest of

    d + 2 T (h(d) - S)           carried at the hole edge,
    De + 2 T (w - S)             carried at the head's own edge, w deep, if S < w,
    Dh - 2 t S                   carried at the seat's rim, otherwise,

with T of the seat and t of the head. One seat does it for all heads if the greatest of the
lower ends is not above the least of the upper ends. The first is set by the head that stands
highest, the second by the one that lies lowest; these two are named, and if their ranges do
not meet there is no such seat: the screws are to be tried, or sorted.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from itertools import product

from seatwork import checks
from seatwork.errors import SeatworkError
from seatwork.quantities import Angle, Length
from seatwork.seats.cones import Countersink, half_tangent
from seatwork.seats.heads import Head, fit
from seatwork.seats.touching_off import Limits


@dataclass(frozen=True, slots=True, kw_only=True)
class SeatRange:
    """The seats that keep every head between flush and the allowed amount below.

    Parameters
    ----------
    least : float
        Diameter at the face at which the highest head is flush [mm].
    greatest : float
        Diameter at the face at which the lowest head lies the allowed amount below [mm].
    highest_head : Head
        The head that must not stand proud: it sets `least`.
    lowest_head : Head
        The head that must not lie too deep: it sets `greatest`.
    below : float
        Amount below the face that is allowed [mm].
    spread : float
        Difference in height of the two heads in one seat [mm], that of diameter `least`.
    """

    least: float
    greatest: float
    highest_head: Head
    lowest_head: Head
    below: float
    spread: float

    @property
    def exists(self) -> bool:
        """Whether one seat does it for all."""
        return self.least <= self.greatest

    @property
    def diameter(self) -> Limits | None:
        """The range of diameters at the face, None if there is none [mm]."""
        return Limits(least=self.least, greatest=self.greatest) if self.exists else None

    def explain(self, show: Callable[[object], str] = str) -> str:
        """Say the answer in one or two sentences, sizes written by `show`.

        Parameters
        ----------
        show : callable
            Writes a ``Length`` or an ``Angle`` in the reader's units.

        Returns
        -------
        str
            The range, or why there is none and which two heads are to blame.
        """
        if self.exists:
            return (
                f"Seats from {show(Length(self.least))} to {show(Length(self.greatest))} at the"
                f" face keep every head flush or up to {show(Length(self.below))} below."
            )
        return (
            f"No one seat fits every screw: in one seat {_text_of(self.lowest_head, show)} lies"
            f" {show(Length(self.spread))} lower than {_text_of(self.highest_head, show)}, and only"
            f" {show(Length(self.below))} is allowed. Try the screws you will use, or sort them."
        )


def _text_of(head: Head, show: Callable[[object], str]) -> str:
    edge = "" if head.edge_diameter is None else f", edge {show(Length(head.edge_diameter))}"
    sharp = show(Length(head.sharp_diameter))
    return f"the {show(Angle(head.included_angle))} head (theoretical sharp {sharp}{edge})"


def diameter_for(
    head: Head, *, amount: float, hole_diameter: float, included_angle: float
) -> float:
    """Find the seat in which a head stands at a given height.

    Parameters
    ----------
    head : Head
        The screw's head.
    amount : float
        Height of its flat top above the face [mm]; minus below it.
    hole_diameter : float
        Diameter of the hole [mm].
    included_angle : float
        Whole angle across the seat [deg].

    Returns
    -------
    float
        Diameter of the seat at the face [mm].

    Raises
    ------
    SeatworkError
        If the head drops through the hole, or no countersink holds it so high.

    Notes
    -----
    The inverse of ``heads.fit``; derived at the top of this module.

    Examples
    --------
    >>> head = Head(sharp_diameter=12.8778, included_angle=82)
    >>> diameter_for(head, amount=-0.381, hole_diameter=6.7564, included_angle=82) / 25.4
    0.5331
    """
    checks.signed_length(amount, "amount above the face")
    checks.length(hole_diameter, "hole diameter")
    checks.smaller(hole_diameter, "hole diameter", head.edge, "edge of the head")
    widening = 2 * half_tangent(included_angle)
    hole_depth = (head.sharp_diameter - hole_diameter) / 2 / head.tangent
    on_hole_edge = hole_diameter + widening * (hole_depth - amount)
    if amount < head.rim_depth:
        on_rim = head.edge + widening * (head.rim_depth - amount)
    else:
        on_rim = head.sharp_diameter - 2 * head.tangent * amount
    return _wider_than_hole(max(on_hole_edge, on_rim), hole_diameter, amount)


def _wider_than_hole(diameter: float, hole_diameter: float, amount: float) -> float:
    if not diameter > hole_diameter:
        raise SeatworkError(
            Length(amount),
            "no countersink holds the head as high as that",
            "without a countersink it rests on the hole edge; ask for less",
        )
    return diameter


def seats_for(
    heads: Iterable[Head], *, hole_diameter: float, included_angle: float, below: float
) -> SeatRange:
    """Find the seats that keep all heads between flush and `below` under the face.

    Parameters
    ----------
    heads : iterable of Head
        All heads of the box, or the corners of their limits (``corner_heads``).
    hole_diameter : float
        Diameter of the hole [mm].
    included_angle : float
        Whole angle across the seat [deg].
    below : float
        How far a head may lie below the face [mm].

    Returns
    -------
    SeatRange
        The range, or, with ``exists`` False, the two heads that rule it out.

    Raises
    ------
    SeatworkError
        If there are no heads, or one cannot sit on the hole at all.

    Examples
    --------
    Two 1/4 heads that gage .050 and .029 over a .424 hole cannot share a seat within .015:

    >>> high = Head(sharp_diameter=12.9778, included_angle=82)
    >>> low = Head(sharp_diameter=12.0505, included_angle=82)
    >>> seats_for([high, low], hole_diameter=6.7564, included_angle=82, below=0.381).exists
    False
    """
    checks.length_or_zero(below, "amount allowed below the face")
    lows: list[tuple[float, Head]] = []
    highs: list[tuple[float, Head]] = []
    for head in heads:
        sizes = {"hole_diameter": hole_diameter, "included_angle": included_angle}
        lows.append((diameter_for(head, amount=0.0, **sizes), head))
        highs.append((diameter_for(head, amount=-below, **sizes), head))
    if not lows:
        raise SeatworkError("", "there is no head to seat", "give at least one head")
    least, highest = max(lows, key=_diameter)
    greatest, lowest = min(highs, key=_diameter)
    seat = Countersink(diameter=least, hole_diameter=hole_diameter, included_angle=included_angle)
    return SeatRange(
        least=least,
        greatest=greatest,
        highest_head=highest,
        lowest_head=lowest,
        below=below,
        spread=fit(highest, seat).amount - fit(lowest, seat).amount,
    )


def _diameter(pair: tuple[float, Head]) -> float:
    return pair[0]


def corner_heads(
    *,
    sharp_diameter: Limits,
    included_angle: tuple[float, float],
    edge_diameter: Limits | None = None,
) -> tuple[Head, ...]:
    """Give the heads at the corners of a size's limits.

    Parameters
    ----------
    sharp_diameter : Limits
        Least and greatest theoretical sharp diameter [mm].
    included_angle : tuple of float
        Least and greatest angle of the head [deg], such as 80 and 82.
    edge_diameter : Limits, optional
        Least and greatest edge [mm]; None for theoretical sharp edges.

    Returns
    -------
    tuple of Head
        Every pairing that makes a head; the worst heads are among them, since the height of
        a head rises and falls steadily with each of the three sizes.

    Raises
    ------
    SeatworkError
        If even the least edge is wider than every sharp diameter.

    Examples
    --------
    >>> heads = corner_heads(sharp_diameter=Limits(least=12.4, greatest=12.9),
    ...                      included_angle=(80, 82))
    >>> len(heads)
    4
    """
    sharps = (sharp_diameter.least, sharp_diameter.greatest)
    edges: tuple[float | None, ...] = (None,)
    if edge_diameter is not None:
        checks.not_larger(
            edge_diameter.least, "least edge", sharp_diameter.greatest, "greatest sharp diameter"
        )
        edges = (edge_diameter.least, edge_diameter.greatest)
        sharps = (max(sharp_diameter.least, edge_diameter.least), sharp_diameter.greatest)
    return tuple(
        Head(sharp_diameter=sharp, included_angle=angle, edge_diameter=edge)
        for sharp, angle, edge in product(sharps, included_angle, edges)
        if edge is None or edge <= sharp
    )
