"""Features put into note text: sizes first, then each feature in symbols, words or ISO form."""

from decimal import Decimal
from fractions import Fraction

from seatwork import units
from seatwork.errors import SeatworkError
from seatwork.notes.features import (
    FLOOR,
    Chamfer,
    Counterbore,
    Counterdrill,
    Countersink,
    EdgeBreak,
    Feature,
    Head,
    Hole,
    Spotface,
    Thread,
)
from seatwork.notes.sizes import Size

STYLES = ("symbols", "words", "iso")
SYSTEM = {"in": "inch", "mm": "metric"}
MOST_PLACES = 20
MARK = {
    "symbols": {Countersink: "⌵", Counterbore: "⌴", Spotface: "⌴SF"},
    "words": {Countersink: "CSK", Counterbore: "C'BORE", Spotface: "S.F."},
}
MEANING = {"counterdrill": "COUNTERDRILL", "center drill": "CENTER DRILL", "ask": "C'DRILL"}


class Composer:
    """Writes features in one style.

    Parameters
    ----------
    style : {"symbols", "words", "iso"}
        How sizes are marked and features named.
    show_units : bool
        Whether each length carries its unit.
    """

    def __init__(self, style: str, *, show_units: bool = False) -> None:
        self.style = style
        self.show_units = show_units

    def feature(self, feature: Feature) -> str:
        """Return one feature without its count."""
        ways = {
            Hole: self._hole,
            Countersink: self._seat,
            Counterbore: self._seat,
            Spotface: self._seat,
            Counterdrill: self._counterdrill,
            Chamfer: self._chamfer,
            EdgeBreak: self._edge_break,
            Thread: self._thread,
        }
        parts = (*ways[type(feature)](feature), *self._tail(feature))  # type: ignore[operator]
        return " ".join(part for part in parts if part)

    # -- sizes ---------------------------------------------------------------------------

    def size(self, size: Size) -> str:
        """Return a size with its tolerance, unmarked."""
        if size.name:
            return size.name if size.name.startswith("#") else f"LTR {size.name}"
        if size.least is not None and size.greatest is not None:
            number = self._limits(size.least, size.greatest, size)
        elif size.upper is None and (fraction := self._fraction(size)):
            number = fraction + self._fit(size)
        else:
            number = self._number(size.value or 0.0, size) + self._deviations(size)
            number += self._fit(size)
        return f"{number} {size.bound.upper()}".strip()

    def _again(self, also: Size) -> str:
        """Return a drill said again: its name, or its decimal and never the fraction."""
        return self.size(also) if also.name else self._number(also.value or 0.0, also)

    def _fit(self, size: Size) -> str:
        return f" {size.fit}" if self.show_units and size.fit else size.fit

    def _limits(self, least: float, greatest: float, size: Size) -> str:
        """Return both limits with as many places as the longer one, one at least."""
        places = max(1, *(_places(self._number(end, size)) for end in (least, greatest)))
        return "-".join(self._number(end, size, places) for end in (least, greatest))

    def _fraction(self, size: Size) -> str:
        """Return an inch size as a fraction where a decimal would be longer than .001."""
        if size.unit != "in" or _places(self._number(size.value or 0.0, size)) <= 3:
            return ""
        parts = Fraction(Decimal(repr(size.value))) / Fraction(254, 10)
        if parts.denominator not in (16, 32, 64):
            return ""
        whole, rest = divmod(parts.numerator, parts.denominator)
        text = f"{rest}/{parts.denominator}"
        text = f"{whole}-{text}" if whole else text
        return f"{text} IN" if self.show_units else text

    def _deviations(self, size: Size) -> str:
        if size.upper is None or size.lower is None:
            return ""
        places = _places(self._number(size.value or 0.0, size))
        if size.upper == -size.lower:
            return f" ±{self._number(size.upper, size, places)}"
        upper, lower = (
            ("-" if value < 0 or (value == 0 and other > 0) else "+")
            + self._number(abs(value), size, places)
            for value, other in ((size.upper, -1.0), (size.lower, 1.0))
        )
        return f" {upper} {lower} "

    def _number(self, value: float, size: Size, least_places: int = 0) -> str:
        if size.unit == "deg":
            return f"{plain_decimal(value)}°"
        text = exact_length(value, SYSTEM[size.unit], least_places)
        return f"{text} {size.unit.upper()}" if self.show_units else text

    def _diameter(self, size: Size | None) -> str:
        if size is None:
            return ""
        if size.name:
            return self.size(size)
        return f"{self.size(size)} DIA" if self.style == "words" else f"⌀{self.size(size)}"

    def _depth(self, size: Size | None, joined: bool) -> str:
        if size is None:
            return ""
        if self.style == "words":
            return f"{'X ' if joined else ''}{self.size(size)} DP"
        return f"↧{self.size(size)}"

    def _joined(self, *parts: str) -> str:
        return " X ".join(part for part in parts if part)

    def _angle(self, size: Size | None) -> str:
        return "" if size is None else self.size(size)

    # -- features ------------------------------------------------------------------------

    def _hole(self, hole: Hole) -> tuple[str, ...]:
        bare = hole.diameter is None or self.style == "words"
        word = hole.process.upper() or ("HOLE" if bare else "")
        return (
            word,
            self._diameter(hole.diameter),
            f"({self._again(hole.also)})" if hole.also else "",
            self._depth(hole.depth, joined=hole.diameter is not None),
            {"full diameter": "FULL DIA", "point": "TO POINT"}.get(hole.depth_to, ""),
            hole.bottom,
            "THRU" if hole.through else "",
        )

    def _seat(self, seat: Countersink | Counterbore | Spotface) -> tuple[str, ...]:
        angle = seat.angle if isinstance(seat, Countersink) else None
        left, fillet = getattr(seat, "left", None), getattr(seat, "fillet", None)
        head = seat.head if isinstance(seat, Countersink | Counterbore) else None
        return (
            MARK[self.style][type(seat)],
            "TO CLEAN UP" if getattr(seat, "clean_up", False) else "",
            self._joined(self._diameter(seat.diameter), self._angle(angle)),
            self._depth(seat.depth, joined=bool(seat.diameter or angle)),
            seat.bottom if isinstance(seat, Counterbore) else "",
            f"LEAVE {self.size(left)}" if left else "",
            f"R {self.size(fillet)}" if fillet else "",
            "W/ SOCKET CLR" if getattr(seat, "wrench_room", False) else "",
            self._head(head) if head else "",
        )

    def _head(self, head: Head) -> str:
        if head.state == "flush":
            return f"FLUSH{self._deviations(head.amount)}" if head.amount else "FLUSH"
        amount = self.size(head.amount) if head.amount else ""
        if head.state.startswith("flush to"):
            return f"FLUSH TO {amount} {head.state.split()[-1].upper()}"
        return f"{amount} {head.state.upper()}".strip()

    def _counterdrill(self, feature: Counterdrill) -> tuple[str, ...]:
        return (
            self._iso_center(feature) or MEANING[feature.meaning],
            self._joined(
                "" if feature.form else self._diameter(feature.diameter), self._angle(feature.angle)
            ),
            self._depth(feature.depth, joined=bool(feature.diameter or feature.angle)),
        )

    def _iso_center(self, center: Counterdrill) -> str:
        """Return a center with form and pilot as ISO 6411 names it; its mouth is in it."""
        if not (center.form and center.pilot and center.diameter):
            return ""
        sizes = (
            exact_length(size.value or 0.0, "metric") for size in (center.pilot, center.diameter)
        )
        return f"ISO 6411-{center.form}{'/'.join(sizes)}"

    def _chamfer(self, chamfer: Chamfer) -> tuple[str, ...]:
        leg = "" if chamfer.leg is None else self.size(chamfer.leg)
        if chamfer.diameter is None:
            return "CHAM", self._joined(leg, self._side_angle(chamfer.angle))
        return "CHAM", self._joined(self._diameter(chamfer.diameter), self._angle(chamfer.angle))

    def _side_angle(self, angle: Size | None) -> str:
        return "" if angle is None else self.size(halved(angle))

    def _edge_break(self, edge: EdgeBreak) -> tuple[str, ...]:
        words = ("REMOVE BURRS" if edge.burrs else "", "BREAK EDGES" if edge.edges else "")
        size = "" if edge.size is None else self.size(edge.size)
        return " AND ".join(w for w in words if w), self._joined(size, self._side_angle(edge.angle))

    def _thread(self, thread: Thread) -> tuple[str, ...]:
        return (
            f"{thread.tap.upper()} TAP" if thread.tap else "",
            designation(thread),
            self._depth(thread.depth, joined=True),
            "THRU" if thread.through else "",
        )

    def _face(self, face: str) -> str:
        if face == FLOOR:
            return "AT C'BORE FLOOR"
        return face.upper() if face.endswith("plate") or not face else f"FROM {face.upper()}"

    def _tail(self, feature: Feature) -> tuple[str, ...]:
        return (
            self._face(feature.measured_from),
            f"FOR {feature.screw}" if feature.screw else "",
            f"{feature.side.upper()} SIDE{'S' if feature.side == 'both' else ''}"
            if feature.side
            else "",
            {"typical": "TYP"}.get(feature.scope, feature.scope.upper()),
        )


def exact_length(mm: float, system: str, least_places: int = 0) -> str:
    """Return the shortest decimal that reads back as the same length.

    Parameters
    ----------
    mm : float
        Length [mm].
    system : {"inch", "metric"}
        Unit the text is in; inch text has no zero before its point, and two places at least.
    least_places : int
        Decimal places at least.

    Raises
    ------
    SeatworkError
        If no decimal does.

    Examples
    --------
    >>> exact_length(5.1054, "inch"), exact_length(6.6, "metric")
    ('.201', '6.6')
    """
    first = max(2 if system == "inch" else 0, least_places)
    for places in range(first, MOST_PLACES):
        number = units.rounded_length(mm, system, places)
        if units.length(f"{number:f}", system) == mm:
            text = f"{number:f}"
            return text.removeprefix("0") if system == "inch" and number < 1 else text
    raise SeatworkError(mm, "no decimal names that length", "round it first")


def _places(text: str) -> int:
    """Return the decimal places of a number in text."""
    return len(text.split(" ")[0].rstrip("°").partition(".")[2])


def plain_decimal(value: float) -> str:
    """Return a number without exponent or needless zeros."""
    text = f"{Decimal(repr(value)):f}"
    return text.rstrip("0").rstrip(".") if "." in text else text


def halved(angle: Size) -> Size:
    """Return the angle of one side for an included angle."""

    def half(value: float | None) -> float | None:
        return None if value is None else value / 2

    return Size(
        value=half(angle.value),
        unit="deg",
        upper=half(angle.upper),
        lower=half(angle.lower),
        least=half(angle.least),
        greatest=half(angle.greatest),
        fit=angle.fit,
        bound=angle.bound,
    )


def designation(thread: Thread) -> str:
    """Return a thread's designation, such as ``1/4-20 UNC-2B`` or ``M8X1.25-6H``."""
    last = f"-{thread.thread_class}" if thread.thread_class else ""
    left = " LH" if thread.left_hand else ""
    if thread.size.startswith("M"):
        pitch = "" if thread.pitch is None else f"X{plain_decimal(thread.pitch)}"
        return f"{thread.size}{pitch}{last}{left}"
    pitch = plain_decimal(thread.threads_per_inch or 0.0)
    series = f" {thread.series}" if thread.series else ""
    return f"{thread.size}-{pitch}{series}{last}{left}"
