"""The clearance hole for a screw and a fit, from a list."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH, lengths
from seatwork.questions.shared.real_sizes import drilled_for, hole
from seatwork.questions.type.draws import pick
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep

FITS = ("close", "normal", "loose")
SIZES = ("#10", "1/4", "5/16", "3/8", "1/2", "5/8")

READ = "You read the column for a {name} fit. Look again which fit is asked for."


@dataclass(frozen=True, slots=True, kw_only=True)
class ClearanceHole(NumberQuestion):
    """Asks for the hole that lets a screw pass with a named fit."""

    id = "clearance-hole"
    goal = "Take the clearance hole, not the tap drill, from the right column."
    difficulty = 1
    codes = ("N2",)
    undrawn = "a row of a table; no part to show"
    measure = LENGTH
    accepted = Tolerance(
        "0.001", "0.025", "A listed size is read off exactly; .001 in is rounding."
    )
    sizes: ClassVar = lengths("diameter", "tap_drill", "close", "normal", "loose")
    asked = (
        "The list for a {size} screw: thread diameter {diameter}, tap drill {tap_drill}. "
        "Clearance holes by ASME B18.2.8: close {close}, normal {normal}, loose {loose}. The "
        "screw must pass through the hopper plate into a nut, {fit} fit. Which hole is drilled "
        "in the plate?"
    )
    hints = (
        "Does the screw cut or hold a thread in this plate?",
        "Three columns are left. Which one does the question name?",
    )

    size: str
    fit: str
    diameter: float
    tap_drill: float
    close: float
    normal: float
    loose: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a size and a fit."""
        size, fit = pick(rng, SIZES), pick(rng, FITS)
        coarse = drilled_for(f"{size} UNC")
        return cls(
            size=size,
            fit=fit,
            diameter=coarse.thread.diameter,
            tap_drill=coarse.diameter,
            close=hole(size, "close"),
            normal=hole(size, "normal"),
            loose=hole(size, "loose"),
        )

    def value(self) -> float:
        """Return the hole [mm]."""
        return float(getattr(self, self.fit))

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips."""
        yield slip("M19", self.tap_drill)
        yield slip(
            "M20", self.diameter, "You took the size of the screw. It would not pass freely."
        )
        for name in FITS:
            if name != self.fit:
                yield slip("M50", float(getattr(self, name)), READ.format(name=name))

    def because(self) -> str:
        """Return why these are the steps."""
        return "The screw passes through the plate, so the tap drill is out."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        yield WorkedStep(f"the hole for a {self.fit} fit", "", self.value(), LENGTH)
