"""What can be wrong with a screw in its seat, in words, and what a shop still takes for right.

Lengths are millimeters. The face is at height 0.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from seatwork import checks
from seatwork.quantities import Length
from seatwork.seats.heads import Fit, state_of

BELOW = 0.381
""".015 in: how far below the face a head may lie. Common practice, no source."""

SUNK = 1.5875
"""1/16 in: how far below the face a head may lie in a counterbore, and how much deeper than clean
a spotface may go. Common practice, no source."""

LOOSE = 1.25
"""Counterbore over head beyond which the head rattles [-]; published counterbores are at most
1.2 heads wide. Common practice, no source."""

SHARE = 2 / 3
"""Share of the part that a cone may take [-]; beyond it little metal is left. Common practice,
no source."""

LABELS = {
    "proud": "proud by {amount}",
    "below": "{amount} below the face: too deep",
    "rattling": "rattles: {amount} of play each way",
    "knife edge": "knife edge: far side open to {amount}",
    "broken through": "broken through: no floor left",
    "drops through": "drops through: hole {amount} too wide",
    "does not enter": "does not enter: {amount} too thick",
    "head too wide": "head {amount} too wide to go in",
    "on a line": "bears on a line, {amount} across",
    "thin": "only {amount} of metal left",
    "too deep": "{amount} deeper than needed",
    "overhangs": "head overhangs by {amount}",
    "not clean": "not clean: {amount} more to go",
    "no bearing": "no ring left: {amount} too wide",
    "in the air": "hangs in the air: nothing carries it",
    "in the metal": "would have to go into the metal",
}
"""What can be wrong, in a line as short as a drawing wants it."""

SENTENCES = {
    "proud": "The head stands {amount} proud of the face.",
    "below": "The head lies {amount} below the face, deeper than is allowed.",
    "rattling": "The head rattles: it has {amount} of play to each side.",
    "knife edge": "The cone goes through and opens the far side to {amount}: a knife edge.",
    "broken through": "The seat is broken through: no floor is left to carry the head.",
    "drops through": "The screw drops through: the hole is {amount} wider than the head.",
    "does not enter": "The screw does not enter: it is {amount} thicker than the hole.",
    "head too wide": "The head is {amount} wider than its counterbore and lies on the face.",
    "on a line": "The head bears on a line only, {amount} across, not on the cone.",
    "thin": "Only {amount} of metal is left under the seat.",
    "too deep": "The spotface goes {amount} deeper than it needs to clean up.",
    "overhangs": "The head overhangs the spotface by {amount} on each side and meets rough metal.",
    "not clean": "The spotface is not clean all round: {amount} more makes it so.",
    "no bearing": "The chamfer is {amount} wider than the head: no ring is left to bear on.",
    "in the air": "The head hangs in the air there: nothing carries it.",
    "in the metal": "The head would have to go into the metal to be there.",
}
"""The same in a sentence."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CapScrew:
    """A screw with a flat underside: socket head, hexagon, or any other.

    Parameters
    ----------
    head_diameter : float
        Across the head, of a hexagon across its corners [mm].
    head_height : float
        From its underside to its top [mm].
    diameter : float
        Of the shank [mm].

    Raises
    ------
    SeatworkError
        If the sizes make no screw; the sentence names the bad one.

    Examples
    --------
    >>> CapScrew(head_diameter=10, head_height=6, diameter=6).head_height
    6
    """

    head_diameter: float
    head_height: float
    diameter: float

    def __post_init__(self) -> None:
        checks.length(self.head_height, "height of the head")
        checks.length(self.diameter, "diameter of the screw")
        checks.length(self.head_diameter, "diameter of the head")
        checks.smaller(self.diameter, "diameter of the screw", self.head_diameter, "head")


@dataclass(frozen=True, slots=True, kw_only=True)
class Allowed:
    """What a shop still takes for right.

    Parameters
    ----------
    below : float
        How far below the face a flat head may lie [mm].
    sunk : float
        How far below the face a head may lie in a counterbore, and how much deeper than clean a
        spotface may go [mm].
    loose : float
        Counterbore over head up to which the head does not rattle [-].
    share : float
        Share of the part that a cone may take [-].
    floor : float
        Least metal under a floor [mm].
    """

    below: float = BELOW
    sunk: float = SUNK
    loose: float = LOOSE
    share: float = SHARE
    floor: float = 0.0

    def __post_init__(self) -> None:
        checks.length_or_zero(self.below, "depth allowed below the face")
        checks.length_or_zero(self.sunk, "depth allowed in a counterbore")
        checks.length_or_zero(self.floor, "least floor")
        checks.quantity(self.loose, "counterbore over head")
        checks.quantity(self.share, "share of the part")


@dataclass(frozen=True, slots=True, kw_only=True)
class Fault:
    """One thing that is wrong.

    Parameters
    ----------
    name : str
        Which, one of ``LABELS``.
    amount : float
        How much, as its sentence says [mm].
    """

    name: str
    amount: float

    def label(self, show: Callable[[Any], str] = str) -> str:
        """Say it in a short line, the size written by `show` (which takes a ``Length``)."""
        return LABELS[self.name].format(amount=show(Length(self.amount)))

    def sentence(self, show: Callable[[Any], str] = str) -> str:
        """Say it in a sentence, the size written by `show` (which takes a ``Length``)."""
        return SENTENCES[self.name].format(amount=show(Length(self.amount)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """How a screw stands in a seat.

    Parameters
    ----------
    amount : float or None
        Height of the head's top above the face [mm], minus below it; None where nothing
        carries it, or it does not enter.
    bears_at : float
        Height of what carries the head, from the face [mm]; the greatest where it is a cone.
    left : float
        Metal left under the seat [mm], minus where the cut is deeper than the part.
    faults : tuple of Fault
        What is wrong, the worst first; none if all is well.
    fit : Fit or None
        How a flat head is carried; None for other heads and where nothing carries it.
    """

    amount: float | None
    bears_at: float
    left: float
    faults: tuple[Fault, ...]
    fit: Fit | None = None

    def __repr__(self) -> str:
        amount = "" if self.amount is None else f", {self.amount:+.3f} mm"
        return f"<Standing {self.state}{amount}; wrong: {', '.join(self.names) or 'nothing'}>"

    @property
    def state(self) -> str:
        """Proud, flush, below, drops through, or does not enter."""
        if self.amount is None:
            return self.faults[0].name
        return state_of(self.amount)

    @property
    def names(self) -> tuple[str, ...]:
        """The names of what is wrong."""
        return tuple(fault.name for fault in self.faults)

    def explain(self, show: Callable[[Any], str] = str) -> str:
        """Say all that is wrong, a sentence each, sizes written by `show` (takes a ``Length``).

        Examples
        --------
        >>> from seatwork.seats import Counterbore, stands
        >>> screw = CapScrew(head_diameter=10, head_height=6, diameter=6)
        >>> stands(screw, Counterbore(diameter=11, depth=5, hole_diameter=6.6), 12).explain()
        'The head stands 1 mm proud of the face.'
        """
        if not self.faults:
            return "Nothing is wrong with it."
        return " ".join(fault.sentence(show) for fault in self.faults)
