"""A seat beside its hole as it is to be seen, and everything that is said of it."""

from dataclasses import dataclass

from seatwork.drawings.parts.words import an
from seatwork.seats import Countersink, Head
from seatwork.seats.heads import FLUSH
from seatwork.seats.on_hole import OnHole
from seatwork.units import show_angle, show_both, show_length


@dataclass(frozen=True, slots=True, kw_only=True)
class BesideHole:
    """What is to be seen.

    Parameters
    ----------
    head : Head
        The screw's head.
    seat : Countersink
        The seat.
    offset, lean : float
        How far the seat lies beside its hole [mm], and both lean from square [deg].
    body : float
        Diameter of the screw's body [mm].
    shown : bool
        Whether the screw is in.
    lies : OnHole
        How the head stands.
    held : str
        What holds the screw, in words that follow "the screw".
    guided : str
        What kept the seat on its hole, a sentence.
    """

    head: Head
    seat: Countersink
    offset: float
    lean: float
    body: float
    shown: bool
    lies: OnHole
    held: str
    guided: str

    @property
    def shift(self) -> float:
        """How far the screw has shifted toward the seat [mm]."""
        return self.offset - self.lies.left_over


def standing(height: float, system: str) -> str:
    """Say where one side of a head stands.

    Examples
    --------
    >>> standing(0.146, "inch"), standing(-0.1, "metric"), standing(0.001, "inch")
    ('0.006 in proud', '0.10 mm below', 'flush')
    """
    if abs(height) <= FLUSH:
        return "flush"
    return f"{show_length(abs(height), system)} {'proud' if height > 0 else 'below'}"


def leaning(lean: float) -> str:
    """Say how hole and seat stand to the face.

    Examples
    --------
    >>> leaning(0), leaning(1.5)
    ('both are square to the face', 'both lean 1.5° from square')
    """
    return f"both lean {show_angle(lean)} from square" if lean else "both are square to the face"


def heading_of(part: BesideHole, system: str) -> str:
    """Ask, or say how the head stands on both sides."""
    if not part.shown:
        return "How will the head stand, and where will it touch?"
    high, low = (standing(height, system) for height in (part.lies.high, part.lies.low))
    if high == low:
        return f"The head is {high} all round" if high == "flush" else f"{high} on both sides"
    return f"Left {high}, right {low}"


def text_of(part: BesideHole, system: str) -> str:
    """Tell everything in words, lengths in both systems."""
    seat, lies = part.seat, part.lies
    wide, hole, beside, gap = (
        show_both(size, system)
        for size in (seat.diameter, seat.hole_diameter, part.offset, lies.gap)
    )
    told = (
        f"{an(show_angle(seat.included_angle)).capitalize()} seat of {wide} on a hole of {hole}, "
        f"{beside} beside it; {leaning(part.lean)}. "
        f"{part.guided}."
    )
    if not part.shown:
        return f"{told} {heading_of(part, system)}"
    high, low = (_both(height, system) for height in (lies.high, lies.low))
    touches = (
        "It touches all round."
        if lies.arc == 360
        else f"It touches over {show_angle(lies.arc, 0)} of 360°, on the left; opposite it lies "
        f"{gap} clear of its seat."
    )
    return f"{told} The screw {part.held}. Its head: left {high}, right {low}. {touches}"


def _both(height: float, system: str) -> str:
    if abs(height) <= FLUSH:
        return "flush"
    return f"{show_both(abs(height), system)} {'proud' if height > 0 else 'below'}"
