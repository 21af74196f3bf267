"""The steps of a working as data: what each finds, by which sum, and what comes of it."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import Any

from seatwork.entries.measures import ANGLE, FINE_LENGTH, LENGTH, RATIO, Measure
from seatwork.seats.cones import half_tangent


@dataclass(frozen=True, slots=True)
class WorkedStep:
    """One step on the way to an answer.

    Parameters
    ----------
    label : str
        What it finds, in words, as it stands after "that is": ``the depth``.
    sum : str
        The sum, with the names of sizes in braces and steps before by their number:
        ``({diameter} − {hole_diameter}) ÷ 2``, ``{1} ÷ {3}``. Empty where nothing is worked.
    value : float
        What comes of it, in inside units [-].
    measure : Measure
        What it measures; `FINE_LENGTH` shows a length with one more place.
    how : str
        What is done, as it stands after "Next:"; empty for "find" and the label.
    code : str
        Slip of a learner who stops here.
    part : int
        Number of the part of the question that it leads to; -1 is the last.
    """

    label: str
    sum: str
    value: float
    measure: Measure
    how: str = ""
    code: str = "M59"
    part: int = -1

    def __repr__(self) -> str:
        return f"<WorkedStep: {self.label[:60]}>"

    @property
    def next(self) -> str:
        """What is done, in words."""
        return self.how or f"find {self.label}"

    def shown(self, system: str) -> str:
        """Write what comes of it with its unit."""
        return self.measure.show(self.value, system)

    def line(self, system: str) -> str:
        """Write the step as a line: what it finds, the sum, what comes of it."""
        label = self.label.removeprefix("the ")
        sum_ = f"{self.sum} = " if self.sum else ""
        return f"{label[:1].upper()}{label[1:]}: {sum_}{self.shown(system)}."


def filled(
    steps: Iterable[WorkedStep], system: str, stated: dict[str, str]
) -> tuple[WorkedStep, ...]:
    """Return steps with the numbers in their sums.

    Parameters
    ----------
    steps : iterable of WorkedStep
        The steps as a type writes them.
    system : {"inch", "metric"}
        Unit system of the numbers.
    stated : dict of str to str
        The sizes of the question by name, written with their units.
    """
    found: list[WorkedStep] = []
    for step in steps:
        before = [one.shown(system) for one in found]
        found.append(replace(step, sum=step.sum.format(*before, **stated)))
    return tuple(found)


def across_steps(
    wide: str, narrow: str, difference: float, first: int = 0, part: int = -1
) -> Iterator[WorkedStep]:
    """Yield the two steps to one side of a cone: the difference, then half of it.

    Parameters
    ----------
    wide, narrow : str
        The two diameters as they stand in a sum, such as ``{diameter}``.
    difference : float
        What they differ by [mm].
    first : int
        Number of the first of these steps among those of the question.
    part : int
        Part of the question that they lead to.
    """
    label = "the difference of the two diameters"
    yield WorkedStep(
        label, f"{wide} − {narrow}", difference, FINE_LENGTH, f"find {label}", "M53", part
    )
    label, how = "across, half the difference", "halve the difference: that is across"
    yield WorkedStep(label, f"{{{first}}} ÷ 2", difference / 2, FINE_LENGTH, how, "M52", part)


def angle_steps(
    angle: float, name: str = "{included_angle}", first: int = 2, part: int = -1
) -> Iterator[WorkedStep]:
    """Yield the two steps to a tangent: half the angle, then its tangent.

    Parameters
    ----------
    angle : float
        Included angle [deg].
    name : str
        The angle as it stands in a sum.
    first : int
        Number of the first of these steps among those of the question.
    part : int
        Part of the question that they lead to.
    """
    yield WorkedStep(
        "half the angle", f"{name} ÷ 2", angle / 2, ANGLE, "halve the angle", "M59", part
    )
    yield WorkedStep(
        "the tangent of half the angle",
        f"tangent of {{{first}}}",
        half_tangent(angle),
        RATIO,
        "look up the tangent of half the angle",
        "M58",
        part,
    )


def cone_steps(
    question: Any,
    wide: str,
    narrow: str,
    label: str = "the depth",
    angle: str = "included_angle",
    measure: Measure = LENGTH,
) -> Iterator[WorkedStep]:
    """Yield the five steps of a cone's triangle, from two diameters and the angle to down.

    Parameters
    ----------
    question : Question
        What is asked.
    wide, narrow, angle : str
        Names of its sizes.
    label : str
        What is found last.
    measure : Measure
        What the last is shown by.
    """
    difference = getattr(question, wide) - getattr(question, narrow)
    included = getattr(question, angle)
    yield from across_steps(f"{{{wide}}}", f"{{{narrow}}}", difference)
    yield from angle_steps(included, f"{{{angle}}}")
    down = difference / 2 / half_tangent(included)
    how = "divide across by the tangent of half the angle"
    yield WorkedStep(label, "{1} ÷ {3}", down, measure, how)
