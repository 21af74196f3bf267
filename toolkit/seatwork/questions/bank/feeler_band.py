"""What two feeler leaves tell of a head: a band, not a size."""

from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import LENGTH
from seatwork.quantities import INCH
from seatwork.questions.type.draws import pick, shuffled, step_between
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question

SIDES = {"below": "proud", "proud": "below"}
GOES = {
    "below": "A straightedge lies over a head. A leaf of {goes} slides between it and the head; a "
    "leaf of {stops} does not.",
    "proud": "A straightedge rocks on a head. Two equal leaves are laid beside the head, under the "
    "straightedge. On two leaves of {goes} it still rocks; on two of {stops} it clears the head.",
}
WRONG = {
    "goes": (
        "M49",
        "You took the leaf that goes for the size. It says: at least that much.",
    ),
    "stops": (
        "M49",
        "You took the leaf that does not go for the size. It says: less than that.",
    ),
    "halfway": (
        "M60",
        "You wrote halfway as if you had measured it. Nobody tried a leaf of that size.",
    ),
    "side": (
        "M15",
        "You took proud for below, or below for proud. Look at what the straightedge lies on.",
    ),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class FeelerBand(Question):
    """Asks how a head lies when one leaf goes and the next does not."""

    id = "feeler-band"
    goal = "Say what two feeler leaves tell."
    difficulty = 1
    codes = ("G1", "S6")
    unmarked = "how the head lies is chosen in words"
    sizes: ClassVar = {"goes": LENGTH, "stops": LENGTH}
    asked = "{told} How does the head lie?"
    hints = (
        "What does the leaf that goes tell you? At least, or at most?",
        "What does the leaf that does not go tell you?",
    )

    side: str
    goes: float
    stops: float
    order: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw two leaves next to each other, a side of the face and the order of the options."""
        goes = step_between(rng, 0.002, 0.012, 0.001)
        return cls(
            side=pick(rng, ("below", "proud")),
            goes=goes * INCH,
            stops=(goes + pick(rng, (0.001, 0.002))) * INCH,
            order="".join(shuffled(rng, "01234")),
        )

    def text(self) -> str:
        """Return which leaves were tried, and where."""
        told = GOES[self.side].format(goes=self.stated("goes"), stops=self.stated("stops"))
        return self.asked.format(told=told)

    @property
    def parts(self) -> tuple[Part, ...]:
        """How the head lies."""
        goes, stops = self.stated("goes"), self.stated("stops")
        options = (
            ("goes", f"{goes} {self.side}"),
            ("between", self.between),
            ("stops", f"{stops} {self.side}"),
            ("halfway", f"{self.side} by just the middle of the two leaves"),
            ("side", f"between {goes} and {stops} {SIDES[self.side]}"),
        )
        shown = tuple(options[int(place)] for place in self.order)
        return (ChoicePart(options=shown, right="between", wrong=dict(WRONG)),)

    @property
    def between(self) -> str:
        """The right option."""
        return f"between {self.stated('goes')} and {self.stated('stops')} {self.side}"

    def worked(self) -> str:
        """Return what each leaf tells."""
        return (
            f"The first leaf says: at least {self.stated('goes')}. The second says: less than "
            f"{self.stated('stops')}. So the head lies {self.between}: a band, not a size."
        )
