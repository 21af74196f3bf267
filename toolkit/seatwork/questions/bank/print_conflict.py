"""A note that fights with its screw or with itself: see it, and ask."""

from collections.abc import Mapping
from dataclasses import dataclass
from random import Random
from typing import ClassVar, NamedTuple, Self

from seatwork.quantities import INCH
from seatwork.questions.shared.print_question import PrintQuestion
from seatwork.questions.type.draws import pick, shuffled
from seatwork.questions.type.parts import ChoicePart, Part
from seatwork.units import show_note


class Fight(NamedTuple):
    """A note that fights: its text with sizes in braces, what it fights with, and its sizes."""

    note: str
    said: str
    sizes: tuple[float, ...]
    shape: str = "seat"
    plate: float = 0.0


FIGHTS: Mapping[str, Fight] = {
    "angle": Fight(
        "⌀{} THRU ⌵ ⌀{} X 82° FOR M6 SOCKET FLAT HEAD",
        "the angle is not that of the screw",
        (6.6, 13.44),
    ),
    "hole": Fight(
        "⌀{} THRU ⌵ ⌀{} X 82°",
        "the seat is smaller than its hole",
        (0.344 * INCH, 0.266 * INCH),
    ),
    "thread": Fight(
        "#7 X {} DP, 1/4-20 UNC-2B X {} DP",
        "the thread is deeper than its drill",
        (0.380 * INCH, 0.630 * INCH),
        "thread",
    ),
    "plate": Fight(
        "⌀{} THRU ⌴ ⌀{} ↧{}",
        "the bore is deeper than the plate is thick",
        (0.406 * INCH, 0.625 * INCH, 0.385 * INCH),
        "bore",
        0.25 * INCH,
    ),
    "no angle": Fight(
        "⌀{} THRU ⌵ ⌀{}",
        "the seat of a screw has no angle",
        (0.266 * INCH, 0.507 * INCH),
    ),
    "two sizes": Fight(
        "⌀{} THRU ⌴ ⌀{} ⌴ ⌀{} ↧{}",
        "one bore has two diameters",
        (0.406 * INCH, 0.625 * INCH, 0.750 * INCH, 0.385 * INCH),
        "bore",
    ),
}
NOTHING = "nothing, it can be cut as it stands"
DEEDS = {
    "ask": "ask, and write down who said what",
    "print": "cut it as printed",
    "screw": "cut it as you think it was meant",
    "middle": "cut it halfway between the two",
}
WRONG_DEEDS = {
    "print": ("M64", "You cut it as printed. Then the part is to print, and scrap."),
    "screw": ("M64", "You changed the print by yourself. Nobody may do that at the machine."),
    "middle": ("M64", "You took the middle. That fits neither of the two."),
}
NO_FAULT = "You found no fault. Hold each field against the others, the screw and the plate."
ANOTHER = "You would ask about another field. Say the note aloud, field by field."


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintConflict(PrintQuestion):
    """Asks what is wrong with a note, and what is done about it."""

    id = "print-conflict"
    goal = "Stop when a note fights with its screw or with itself."
    difficulty = 2
    codes = ("N1", "H1")
    sizes: ClassVar = {}
    hints = (
        "Say the note aloud, field by field. Does each field go with the one before?",
        "Hold it against what is beside it: the screw, the plate, the drill.",
    )

    fight: str
    faults: str
    deeds: str

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw a fight, three other faults to choose from, and the order of the options."""
        fight = pick(rng, tuple(FIGHTS))
        others = shuffled(rng, [name for name in FIGHTS if name != fight])[:3]
        return cls(
            system="metric" if fight == "angle" else "inch",
            fight=fight,
            faults="; ".join(shuffled(rng, (fight, *others, "nothing"))),
            deeds="; ".join(shuffled(rng, tuple(DEEDS))),
        )

    def from_above(self) -> str:
        """Return what the hole looks like from above."""
        return FIGHTS[self.fight].shape

    def note(self) -> str:
        """Return the note."""
        found = FIGHTS[self.fight]
        return found.note.format(*(show_note(size, self.system) for size in found.sizes))

    @property
    def thick(self) -> str:
        """Thickness of the plate, where the note fights with it."""
        plate = FIGHTS[self.fight].plate
        return show_note(plate, self.system) if plate else ""

    def text(self) -> str:
        """Return the note, with the plate or the screw where it is there."""
        told = PrintQuestion.text(self)
        if self.thick:
            return f"The plate is {self.thick} thick. {told}"
        return f"A 1/4 flat head screw goes in. {told}" if self.fight == "no angle" else told

    @property
    def parts(self) -> tuple[Part, ...]:
        """What is wrong, and what is done."""
        said = {name: found.said for name, found in FIGHTS.items()} | {"nothing": NOTHING}
        shown = self.faults.split("; ")
        wrong = {name: ("M62", ANOTHER) for name in shown if name not in (self.fight, "nothing")}
        fault = ChoicePart(
            prompt="What is wrong with this note?",
            options=tuple((name, said[name]) for name in shown),
            right=self.fight,
            wrong=wrong | {"nothing": ("M64", NO_FAULT)},
        )
        deed = ChoicePart(
            prompt="What do you do?",
            options=tuple((name, DEEDS[name]) for name in self.deeds.split("; ")),
            right="ask",
            wrong=dict(WRONG_DEEDS),
        )
        return (fault, deed)

    def worked(self) -> str:
        """Return what fights, and what is done."""
        return (
            f"Here {FIGHTS[self.fight].said}. Ask whoever may change the print, and keep the "
            "answer, with the name, beside it. Nothing is cut before that."
        )
