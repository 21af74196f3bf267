"""Chains: steps that build on one another, each marked with the learner's own step before."""

from abc import abstractmethod
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import partial
from typing import ClassVar

from seatwork.entries.measures import Measure
from seatwork.questions.type.common_slips import common_slips
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.questions.type.question import Question, Tolerance
from seatwork.questions.type.slips import Mistake


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One step of a chain.

    Parameters
    ----------
    prompt : str
        What is asked.
    measure : Measure
        What is measured.
    accepted : Tolerance
        What is accepted either way, and why.
    formula : callable
        Gives the value in inside units [-] from those of the steps before.
    mistakes : callable
        Gives the known slips from the values of the steps before.
    """

    prompt: str
    measure: Measure
    accepted: Tolerance
    formula: Callable[[Sequence[float]], float]
    mistakes: Callable[[Sequence[float]], Iterable[Mistake]]

    def __repr__(self) -> str:
        return f"<Step: {self.prompt[:60]} ({self.measure.name})>"


@dataclass(frozen=True, slots=True, kw_only=True)
class ChainQuestion(Question):
    """A question whose steps build on one another."""

    is_chain: ClassVar[bool] = True

    @abstractmethod
    def steps(self) -> tuple[Step, ...]:
        """Return the steps in order."""

    def values(self, given: Sequence[float | None] = ()) -> tuple[float, ...]:
        """Return the right value of each step, from `given` earlier values where there are."""
        found: list[float] = []
        for number, step in enumerate(self.steps()):
            own = [
                value if value is not None else found[place]
                for place, value in enumerate((*given, *[None] * (number + 1))[:number])
            ]
            found.append(step.formula(own))
        return tuple(found)

    @property
    def parts(self) -> tuple[Part, ...]:
        """The steps, each from the right values before."""
        return self.parts_given(())

    def parts_given(self, values: Sequence[float | None]) -> tuple[Part, ...]:
        """Return the steps, each from the learner's own values before."""
        right = self.values(values)
        own = [
            value if value is not None else right[number]
            for number, value in enumerate((*values, *[None] * len(right))[: len(right)])
        ]
        return tuple(
            self._part(step, right[number], own[:number])
            for number, step in enumerate(self.steps())
        )

    def _part(self, step: Step, value: float, before: Sequence[float]) -> NumberPart:
        return NumberPart(
            measure=step.measure,
            system=self.system,
            value=value,
            tolerance=step.accepted.amount(self.system),
            mistakes=lambda: step.mistakes(before),
            prompt=step.prompt,
            reason=step.accepted.reason,
            more=partial(common_slips, self),
        )
