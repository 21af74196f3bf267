"""How deep a blind hole is drilled for a thread and the lead of its tap."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import ClassVar

from seatwork.entries.measures import FINE_LENGTH
from seatwork.questions.earlier.first_blind_tap_drill import FirstBlindTapDrill
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.working import WorkedStep


@dataclass(frozen=True, slots=True, kw_only=True)
class PrintBlindTapDrill(FirstBlindTapDrill):
    """Asks for the least depth of the drill under a blind thread, and takes none that is less."""

    version = 2
    earlier: ClassVar[Mapping[int, type[Question]]] = {1: FirstBlindTapDrill}

    @property
    def parts(self) -> tuple[Part, ...]:
        """The least depth of the drill."""
        (depth,) = super(PrintBlindTapDrill, self).parts
        assert isinstance(depth, NumberPart)
        return (replace(depth, is_least=True),)

    def working(self) -> Iterator[WorkedStep]:
        """Yield the steps; the last with one place more, since it is rounded up after it."""
        *before, last = super(PrintBlindTapDrill, self).working()
        yield from before
        yield replace(last, measure=FINE_LENGTH)

    def remark(self) -> str:
        """Return how a least depth is rounded."""
        (depth,) = self.parts
        assert isinstance(depth, NumberPart)
        shown = depth.measure.write(depth.rounded, self.system)
        return f"At least so deep: round up, never down, to {shown}."
