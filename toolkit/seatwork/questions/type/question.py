"""A question type: what it draws, asks, accepts, and recognizes."""

import warnings
from abc import ABC, abstractmethod
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, fields, replace
from decimal import Decimal
from functools import partial
from pathlib import Path
from random import Random
from typing import Any, ClassVar, Self

from seatwork.entries.measures import Measure
from seatwork.errors import SeatworkError
from seatwork.questions.type.clearness import is_told_apart
from seatwork.questions.type.common_slips import common_slips
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.questions.type.pictures import Drawing, drawing_of
from seatwork.questions.type.slips import Mistake, Slip
from seatwork.questions.type.working import WorkedStep, filled

TRIES = 500


@dataclass(frozen=True, slots=True)
class Tolerance:
    """What is accepted either way of the answer, in inch and in metric units, and why."""

    inch: str
    metric: str
    reason: str

    def amount(self, system: str) -> Decimal:
        """Return the tolerance in the unit of `system`."""
        return Decimal(self.inch if system == "inch" else self.metric)


@dataclass(frozen=True, slots=True, kw_only=True)
class Question(ABC):
    """One question with its numbers; each type is a subclass in a file of its own.

    A subclass is a frozen dataclass whose fields are the drawn sizes. Lengths are held in
    mm, rounded as they are stated, so that the answer follows from what the reader sees.

    Parameters
    ----------
    system : {"inch", "metric"}
        Unit system the question is asked and answered in.
    """

    id: ClassVar[str]
    goal: ClassVar[str]
    difficulty: ClassVar[int]
    codes: ClassVar[tuple[str, ...]] = ()
    """Codes of the course outline that it serves."""
    version: ClassVar[int] = 1
    earlier: ClassVar[Mapping[int, "type[Question]"]] = {}
    """Versions that asked something else: what was handed out then is marked by them."""
    is_chain: ClassVar[bool] = False
    sizes: ClassVar[dict[str, Measure]]
    asked: ClassVar[str]
    hints: ClassVar[tuple[str, ...]]
    undrawn: ClassVar[str] = ""
    """Why no drawing belongs to it; empty where one does."""
    unmarked: ClassVar[str] = ""
    """Why no question mark stands on its drawing; empty where one does."""
    folder: ClassVar[Path | None] = None
    """Folder of an instructor's own type; None for a type of the package."""

    system: str = "inch"

    @classmethod
    @abstractmethod
    def propose(cls, rng: Random) -> Self:
        """Return a question with drawn numbers, which may yet hide a slip."""

    def text(self) -> str:
        """Return what is asked, every size with its unit."""
        names = {item.name: str(getattr(self, item.name)) for item in fields(self)}
        return self.asked.format(**names | {name: self.stated(name) for name in self.sizes})

    @property
    @abstractmethod
    def parts(self) -> tuple[Part, ...]:
        """What is to be answered."""

    def parts_given(self, values: Sequence[float | None]) -> tuple[Part, ...]:
        """Return the parts of a chain for the learner's own `values` of the steps before."""
        del values  # only chains carry values forward
        return self.parts

    def working(self) -> Iterable[WorkedStep]:
        """Yield the steps to the answer; a type in words only gives sentences in `worked`."""
        return ()

    def because(self) -> str:
        """Return what is said before the steps: why they are the right ones."""
        return ""

    def remark(self) -> str:
        """Return what is said after the steps: what else they show."""
        return ""

    def worked_steps(self) -> tuple[WorkedStep, ...]:
        """Return the steps to the answer, the numbers in their sums."""
        stated = {name: self.stated(name) for name in self.sizes}
        return filled(self.working(), self.system, stated)

    def worked(self) -> str:
        """Return the answer worked out step by step, shown after a try."""
        lines = [step.line(self.system) for step in self.worked_steps()]
        return " ".join(filter(None, [self.because(), *lines, self.remark()]))

    def drawing(self) -> Drawing | None:
        """Return the drawing found by the type's name; None if it has none, see `undrawn`."""
        return drawing_of(self, self.id, self.folder)

    @classmethod
    def draw(cls, rng: Random) -> Self:
        """Return a question in which no slip hides behind another or the answer.

        Parameters
        ----------
        rng : random.Random
            The only source of chance; only its ``random()`` is used.
        """
        for _ in range(TRIES):
            question = cls.propose(rng)
            native = question.stated_in(question.system)
            if native.is_clear() and native.stated_in(_other(native.system)).is_clear():
                return native
        fault = "no numbers were found that tell its slips apart"
        raise SeatworkError(cls.id, fault, "widen its draw")

    def stated_in(self, system: str) -> Self:
        """Return the question asked in `system`, its sizes rounded as they are stated there."""
        stated = {
            name: measure.as_stated(getattr(self, name), system)
            for name, measure in self.sizes.items()
        }
        return replace(self, system=system, **stated)

    def ask(self, system: str | None = None) -> str:
        """Return the question as read by the learner, how to answer included."""
        question = self if system in (None, self.system) else self.stated_in(str(system))
        lines = [question.text()]
        for letter, part in zip("abcdefgh", question.parts, strict=False):
            label = f"({letter}) " if len(question.parts) > 1 else ""
            lines.append(" ".join(filter(None, (label + part.prompt, part.request))).strip())
        return "\n".join(lines)

    def stated(self, name: str) -> str:
        """Write one of the sizes with its unit."""
        return self.sizes[name].show(getattr(self, name), self.system)

    def said(self, name: str) -> str:
        """Write a size by the name this had before: `stated` is its name now."""
        warnings.warn("said is called stated now; the old name goes", DeprecationWarning, 2)
        # a class that still writes its sizes by the old name may ask for these, too
        own = type(self).stated
        return (Question.stated if own.__name__ == "said" else own)(self, name)

    def __init_subclass__(cls) -> None:
        if "said" in vars(cls) and "stated" not in vars(cls):
            warnings.warn(f"{cls.__name__}: said is called stated now", DeprecationWarning, 2)
            setattr(cls, "stated", vars(cls)["said"])  # noqa: B010  # a method by its old name

    def labels(self, *same: str, **others: str) -> dict[str, str]:
        """Return the labels of a sketch: sizes as they are said, "?" for the one asked for.

        Parameters
        ----------
        *same : str
            Sizes that the sketch calls as the question does.
        **others : str
            By its name on the sketch, the name of a size, or "?".
        """
        names = {name: name for name in same} | others
        return {name: "?" if size == "?" else self.stated(size) for name, size in names.items()}

    def is_clear(self) -> bool:
        """Whether the answer and all slips can be told from one another."""
        return all(is_told_apart(part) for part in self.parts if isinstance(part, NumberPart))

    @property
    def counting_angle(self) -> str:
        """Name of the size whose angle the answer goes by."""
        return "included_angle"

    def at_angle(self, angle: float) -> Self | None:
        """Return the question with another angle [deg] that counts; None if none would use it."""
        changed: Any = {self.counting_angle: angle}
        return replace(self, **changed)

    def drawn(self) -> dict[str, Any]:
        """Return the sizes as plain data, to be kept in a file."""
        return {item.name: getattr(self, item.name) for item in fields(self)}

    @property
    def main(self) -> Part:
        """The part that the question is about: its last."""
        return self.parts[-1]

    @property
    def answer(self) -> Decimal | str:
        """The right answer, a number in the unit asked for, not rounded."""
        return self.main.answer

    @property
    def unit(self) -> str:
        """Unit asked for; empty where no number is."""
        return self.main.unit if isinstance(self.main, NumberPart) else ""

    @property
    def tolerance(self) -> Decimal:
        """Accepted either way; zero where no number is asked for."""
        return self.main.tolerance if isinstance(self.main, NumberPart) else Decimal(0)

    @property
    def slips(self) -> tuple[Slip, ...]:
        """The slips this question recognizes, of all its parts."""
        return tuple(slip for part in self.parts for slip in part.slips)


@dataclass(frozen=True, slots=True, kw_only=True)
class NumberQuestion(Question):
    """A question with one number for an answer."""

    measure: ClassVar[Measure]
    accepted: ClassVar[Tolerance]
    is_listed: ClassVar[bool] = False
    """Whether the answer is a size from a list, which nobody rounds."""

    @abstractmethod
    def value(self) -> float:
        """Return the right answer in inside units."""

    @abstractmethod
    def mistakes(self) -> Iterable[Mistake]:
        """Yield the slips, each with what it gives."""

    @property
    def parts(self) -> tuple[Part, ...]:
        """The one number asked for."""
        return (self.number(self.value(), self.mistakes),)

    def number(self, value: float, mistakes: Any = tuple, prompt: str = "") -> NumberPart:
        """Return a part that asks for `value`, by this type's measure and tolerance."""
        return NumberPart(
            measure=self.measure,
            system=self.system,
            value=value,
            tolerance=self.allowed(value),
            mistakes=mistakes,
            prompt=prompt,
            reason=self.accepted.reason,
            is_listed=self.is_listed,
            more=partial(common_slips, self),
        )

    def allowed(self, value: float) -> Decimal:
        """Return the tolerance on an answer of `value`, in the unit asked for."""
        del value  # most types allow the same whatever the answer
        return self.accepted.amount(self.system)

    def show(self, value: float) -> str:
        """Write a value of this type's measure with its unit."""
        return self.measure.show(value, self.system)

    def fine(self, value: float) -> str:
        """Write a value of this type's measure with one more place, for a step of a working."""
        return self.measure.show_finely(value, self.system)


def _other(system: str) -> str:
    return "metric" if system == "inch" else "inch"
