"""A counterbore as a chain: its depth, the floor left under it, and what the floor still allows."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.real_sizes import hex_cap
from seatwork.questions.type.chain import ChainQuestion, Step
from seatwork.questions.type.draws import pick, step_between
from seatwork.questions.type.question import Tolerance
from seatwork.questions.type.slip_sentences import TOOK_OFF
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

STOP = Tolerance("0.002", "0.05", "A depth stop is set and read to about .001 in.")
ADDED = "You added. What is cut is taken off the plate."


@dataclass(frozen=True, slots=True, kw_only=True)
class BoreAndFloor(ChainQuestion):
    """Asks how deep a counterbore is, what it leaves, and how much deeper it could go."""

    id = "bore-and-floor"
    goal = "Set the depth of a counterbore and look at the floor before the cut."
    difficulty = 2
    codes = ("B1",)
    sizes: ClassVar = lengths("diameter", "height", "below", "thickness", "least_floor")
    asked = (
        "A {size} hex cap screw has a thread of {diameter} and a head {height} high at most. It "
        "goes into a counterbore, in a plate {thickness} thick. The top of the head is to be "
        "{below} below the face. At least {least_floor} of plate must stay under the head. Each "
        "step goes on from your own step before."
    )
    hints = (
        "Draw the head on the floor of the bore. What is above it, up to the face?",
        "What is cut away and what is left make up the plate.",
        "The floor you have, beside the floor you must have: what lies between them?",
    )

    size: str
    diameter: float
    height: float
    below: float
    thickness: float
    least_floor: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a hex cap screw, .010 to .040 in below, a plate, and .6 to .85 of its floor."""
        screw = hex_cap(rng)
        below = step_between(rng, 0.010, 0.040, 0.001)
        plate = round(pick(rng, (2.0, 2.25, 2.5, 2.75)) * screw.height / INCH * 16) / 16
        floor = plate - screw.height / INCH - below
        return cls(
            size=screw.size,
            diameter=screw.diameter,
            height=screw.height,
            below=below * INCH,
            thickness=plate * INCH,
            least_floor=round(floor * pick(rng, (0.6, 0.7, 0.75, 0.85)), 2) * INCH,
        )

    def is_clear(self) -> bool:
        """Whether the floor is thicker than it must be, and the slips stand apart."""
        return self.values()[2] >= 0.02 * INCH and super(BoreAndFloor, self).is_clear()

    def steps(self) -> tuple[Step, ...]:
        """Return the three steps."""
        return self._depth(), self._floor(), self._spare()

    def _depth(self) -> Step:
        head, below = self.height, self.below
        return Step(
            prompt="How deep is the counterbore?",
            measure=LENGTH,
            accepted=STOP,
            formula=lambda _: head + below,
            mistakes=lambda _: (
                slip("M23", head),
                slip("M15", head - below, TOOK_OFF),
                slip(
                    "M21",
                    self.diameter + below,
                    "You took the thread for the height of the head. Look what stands on the "
                    "floor of the bore.",
                ),
                slip("M13", head + 2 * below, "You counted the amount twice. You need it once."),
            ),
        )

    def _floor(self) -> Step:
        return Step(
            prompt="How thick is what is left under the head?",
            measure=LENGTH,
            accepted=STOP,
            formula=lambda own: self.thickness - own[0],
            mistakes=lambda own: (
                slip(
                    "M24",
                    own[0],
                    "You gave the depth that is cut. You were asked for what is left.",
                ),
                slip("M15", self.thickness + own[0], ADDED),
            ),
        )

    def _spare(self) -> Step:
        least = self.least_floor
        return Step(
            prompt="How much deeper could the bore go, at most?",
            measure=LENGTH,
            accepted=STOP,
            formula=lambda own: max(own[1] - least, 0.0),
            mistakes=lambda own: (
                slip(
                    "M24",
                    self.thickness - least,
                    "You gave the whole depth of the deepest bore. You were asked how much deeper "
                    "than yours it is.",
                ),
                slip("M15", own[1] + least, ADDED),
            ),
        )

    def because(self) -> str:
        """Return why these are the steps."""
        return "The head stands on the floor of the bore, and its top lies below the face."

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps."""
        depth, floor, spare = self.values()
        yield WorkedStep("the depth of the bore", "{height} + {below}", depth, LENGTH, part=0)
        how = "take the depth off the plate"
        yield WorkedStep("the floor left", "{thickness} − {0}", floor, LENGTH, how, part=1)
        how = "take off the floor that must stay"
        yield WorkedStep("how much deeper", "{1} − {least_floor}", spare, LENGTH, how)
