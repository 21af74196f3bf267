"""A spotface note: how wide the flat is, and when the cut is deep enough."""

from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

from seatwork.entries.measures import COUNT, lengths
from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import READ, PrintQuestion, read_off
from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.slips import slip
from seatwork.questions.type.working import WorkedStep

DEPTHS = {
    "clean": "until the flat is clean all round, no deeper",
    "sixteenth": "a sixteenth, as for any cut without a depth",
    "wide": "as deep as the flat is wide",
    "forgotten": "nobody can tell: the note forgot its depth",
}
WRONG = {
    "sixteenth": ("M62", "You took a depth that the note does not give. What does SF stop at?"),
    "wide": ("M44", "You took the width for a depth. ⌀ is across, and nothing follows it."),
    "forgotten": ("M62", "You took it for a counterbore. Read the letters in the note again."),
}
FORMS = {
    "symbols": "{count}X ⌀{hole_diameter} THRU ⌴SF ⌀{diameter}",
    "words": "{hole_diameter} DR, {diameter} S.F., {count} HOLES",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintSpotface(PrintQuestion):
    """Asks for the width of a spotface and when its cut is deep enough."""

    id = "print-spotface"
    goal = "Tell a spotface from a counterbore and know when to stop."
    difficulty = 1
    codes = ("N1", "F1")
    shape = "spotface"
    sizes: ClassVar = {"count": COUNT} | lengths("hole_diameter", "diameter")
    hints = (
        "SF, with or without points, is short for spotface. The size behind or before it is its.",
        "What is a spotface for? When has it done that?",
    )

    form: str
    count: int
    hole_diameter: float
    diameter: float
    order: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a hole, a flat, a way of writing and the order of the options."""
        return cls(
            form=pick(rng, tuple(FORMS)),
            count=pick(rng, (2, 3, 4, 6)),
            hole_diameter=pick(rng, (0.281, 0.344, 0.406, 0.531, 0.656)) * INCH,
            diameter=pick(rng, (0.75, 0.875, 1.0, 1.25, 1.5)) * INCH,
            order="".join(shuffled(rng, "0123")),
        )

    def note(self) -> str:
        """Return the note, in signs or in the words of older prints."""
        return FORMS[self.form].format(**{name: self.stated(name) for name in self.sizes})

    def is_clear(self) -> bool:
        """Whether a flat is left round the hole and the slips stand apart."""
        return self.diameter >= 1.7 * self.hole_diameter and Question.is_clear(self)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The width of the flat, and how deep."""
        hole, wide = self.hole_diameter, self.diameter
        flat = self.length(
            wide,
            READ,
            "How wide is the flat?",
            slip("M44", hole, "You gave the hole. The flat belongs to SF."),
            slip("M13", wide / 2, "You gave the radius. The note gives the whole width."),
            slip(
                "M02",
                (wide - hole) / 2,
                "You gave the ring on one side. The flat is measured over all.",
            ),
            slip("M15", hole + wide, "You added hole and flat. The flat is measured over all."),
        )
        words = tuple(DEPTHS)
        options = tuple((words[int(place)], DEPTHS[words[int(place)]]) for place in self.order)
        deep = ChoicePart(
            prompt="How deep is it cut?", options=options, right="clean", wrong=dict(WRONG)
        )
        return (flat, deep)

    def because(self) -> str:
        """Return when a spotface is deep enough."""
        return "A spotface without a depth is cut until it is clean all round, no deeper."

    def working(self) -> tuple[WorkedStep, ...]:
        """Return what is read off."""
        return (read_off("the width of the flat", self.diameter, 0),)
