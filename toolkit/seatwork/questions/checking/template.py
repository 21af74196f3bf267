"""Files to begin a question type with: type, drawing and proof; they pass the check as they are."""

from seatwork.questions.checking.places import stem

OWN_IMPORTS = """\
from seatwork.questions import LENGTH, Mistake, NumberQuestion, Tolerance, WorkedStep, pick, slip
"""
BANK_IMPORTS = """\
from seatwork.questions.type.draws import pick
from seatwork.entries.measures import LENGTH
from seatwork.questions.type.question import NumberQuestion, Tolerance
from seatwork.questions.type.slips import Mistake, slip
from seatwork.questions.type.working import WorkedStep
"""
UNDRAWN = (
    '    undrawn = "the two sizes say it all"  # or write drawings/{stem}.py and take this out\n'
)

TYPE = '''"""One line: what this question asks for."""

from collections.abc import Iterable
from dataclasses import dataclass
from random import Random
from typing import ClassVar, Self

{imports}

@dataclass(frozen=True, slots=True, kw_only=True)
class {title}(NumberQuestion):
    """Asks for the diameter of a hole with a chamfer on it."""

    id = "{name}"  # the name a sheet uses
    goal = "Say in one sentence what a learner can do after it."
    difficulty = 1  # 1, 2 or 3
    codes = ({codes})  # of the course outline
{undrawn}    measure = LENGTH
    accepted = Tolerance("0.002", "0.05", "Say why just this much is accepted.")
    sizes: ClassVar = {{"hole_diameter": LENGTH, "leg": LENGTH}}
    asked = "A hole of {{hole_diameter}} gets a chamfer, its leg {{leg}}. How wide is its mouth?"
    hints = ("A first step, without the formula.", "A second step.")

    hole_diameter: float
    leg: float

    @classmethod
    def propose(cls, rng: Random) -> Self:
        """Draw from sizes a shop really has, in mm."""
        return cls(hole_diameter=pick(rng, (6.6, 9.0, 11.0)), leg=pick(rng, (0.5, 0.8, 1.0)))

    def value(self) -> float:
        """Return the right answer [mm]."""
        return self.hole_diameter + 2 * self.leg

    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips, each with what it gives."""
        yield slip("M41", self.hole_diameter + self.leg)

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps to the answer: what each finds, its sum, what comes of it."""
        yield WorkedStep("both legs together", "2 × {{leg}}", 2 * self.leg, LENGTH)
        # {{0}} is what came of the first step
        yield WorkedStep("the mouth", "{{hole_diameter}} + {{0}}", self.value(), LENGTH)
'''
DRAWING = '''"""The broken edge of a hole, its mouth as a question mark."""

from seatwork.drawings.asked import Stated
from seatwork.drawings.scene import Drawing
from seatwork.drawings.sketches.edges import broken_edge


def draw(question: Stated) -> Drawing:
    """Draw the broken edge, its mouth as a question mark."""
    return broken_edge(question.labels("leg", hole="hole_diameter", mouth="?"))
'''
PROOF = '''"""Proof of {name}: right answer and slips, from nothing of the package."""

from typing import Any


def parts(q: Any) -> list[Any]:
    """Open both sides of the hole by one leg."""
    return [(q.hole_diameter + 2 * q.leg, {{"M41": q.hole_diameter + q.leg}})]
'''


def own_type(name: str, codes: str = "", *, drawn: bool = False) -> str:
    """Return the file of a type for a workbook.

    Parameters
    ----------
    name : str
        Its id, such as ``chamfer-mouth``.
    codes : str
        One code of the outline that it serves; none if empty.
    drawn : bool
        Whether a drawing is written beside it.
    """
    undrawn = "" if drawn else UNDRAWN.format(stem=stem(name))
    return _type(name, OWN_IMPORTS, codes, undrawn)


def bank_files(name: str) -> dict[str, str]:
    """Return the files of a type of the package by their places in the project."""
    return {
        f"toolkit/seatwork/questions/bank/{stem(name)}.py": _type(name, BANK_IMPORTS, "E1", ""),
        f"toolkit/seatwork/drawings/asked/{stem(name)}.py": DRAWING,
        f"tests/questions/proofs/{stem(name)}.py": PROOF.format(name=name),
    }


def _type(name: str, imports: str, codes: str, undrawn: str) -> str:
    return TYPE.format(
        name=name,
        title="".join(word.capitalize() for word in name.split("-")),
        imports=imports,
        codes=f'"{codes}",' if codes else "",
        undrawn=undrawn,
    )
