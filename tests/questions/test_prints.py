"""What questions that read a print ask, against the reader of notes and the planner.

The questions work with the sizes they drew; here their notes are read and planned as anybody's
are, and both must come to the same. What the numbers are by hand stands in ``samples.toml``.
"""

from collections.abc import Callable, Iterator
from random import Random
from typing import Any

import pytest
from seatwork import hardware, notes, plan
from seatwork.errors import SeatworkError
from seatwork.notes import Callout
from seatwork.plan import SeatPlan
from seatwork.questions import Question, all_types
from seatwork.questions.bank.print_drill_name import CHARTS
from seatwork.questions.bank.print_fillet import SCREWS
from seatwork.questions.shared.print_question import PrintQuestion
from seatwork.questions.type.clearness import too_close
from seatwork.questions.type.parts import NumberPart

READS = sorted(name for name, kind in all_types().items() if issubclass(kind, PrintQuestion))
INCH = 25.4
NEAR = 0.03
"""What a plan may differ by, where it takes a named drill for a printed size [mm]."""

Values = list[float | None]


def size(callout: Callout, kind: str, name: str = "diameter") -> Any:
    """Return a size of the one feature of a kind that the reader found."""
    (found,) = [one for one in callout.features if type(one).__name__ == kind]
    return getattr(found, name)


def hole(callout: Callout, name: str = "diameter") -> Any:
    """Return a size of the hole that the reader found."""
    return size(callout, "Hole", name)


def limits(question: Any, callout: Callout) -> Values:
    """Give both limits as the reader hands them out, and their middle."""
    found = size(callout, "Countersink")
    return [found.smallest, found.largest, (found.smallest + found.largest) / 2]


def tapped(question: Any, callout: Callout) -> Values:
    """Give both depths as read, and the chamfer's from its diameter and the drill's."""
    drilled = hole(callout)
    drill = drilled.value or hardware.drill(drilled.name).diameter
    side = (size(callout, "Countersink").value - drill) / 2
    depths = hole(callout, "depth").value, size(callout, "Thread", "depth").value
    return [*depths, None, side]


def bored(question: Any, callout: Callout) -> Values:
    """Give bore and depth as read, and the floor from the plate."""
    depth = size(callout, "Counterbore", "depth").value
    return [size(callout, "Counterbore").value, depth, question.thickness - depth]


def lead(question: Any, callout: Callout) -> Values:
    """Give the thread's depth as read, and the lead in threads of the pitch as read."""
    threads = size(callout, "Thread", "threads_per_inch")
    return [size(callout, "Thread", "depth").value + (question.lead + 1) * INCH / threads]


READ: dict[str, Callable[[Any, Callout], Values]] = {
    "read-note": lambda q, c: [
        hole(c, "count"),
        hole(c).value,
        size(c, "Countersink").value,
        size(c, "Countersink", "angle").value,
    ],
    "print-counterbore": bored,
    "print-limits-aim": limits,
    "print-thread-seat": tapped,
    "print-blind-tap-drill": lead,
    "print-spotface": lambda q, c: [size(c, "Spotface").value, None],
    "print-drill-name": lambda q, c: [hardware.drill(q.name).diameter],
    "print-pattern-count": lambda q, c: [2 * hole(c, "count") * q.parts_made],
    "print-slash-stack": lambda q, c: [
        hole(c).value,
        size(c, "Counterbore").value,
        size(c, "Counterbore", "depth").value,
    ],
    "print-general-tolerance": lambda q, c: [
        size(c, "Counterbore").value - (q.fine if q.is_fine else q.coarse),
        size(c, "Counterbore").value + (q.fine if q.is_fine else q.coarse),
    ],
    "print-fillet": lambda q, c: [None, abs(q.fillet - hole(c).value) / 2],
    "print-chamfer-forms": lambda q, c: [
        None,
        hole(c).value + 2 * size(c, "Chamfer", "leg").value,
    ],
    "print-max-min": lambda q, c: [
        None,
        min(
            size(c, "Counterbore", "depth").value,
            q.thickness - size(c, "Counterbore", "left").value,
        ),
    ],
    "print-point-depth": lambda q, c: [hole(c, "depth").value + q.point],
}


def asked(name: str, count: int) -> Iterator[Any]:
    """Draw questions of a type, in both unit systems."""
    for state in range(count):
        for system in ("inch", "metric"):
            yield all_types()[name].draw(Random(state)).stated_in(system)


def compared(question: Question, values: Values, near: float) -> None:
    """Hold the parts of a question against what was read or planned."""
    assert len(values) == len(question.parts)
    for part, value in zip(question.parts, values, strict=True):
        if value is not None:
            assert isinstance(part, NumberPart)
            assert part.value == pytest.approx(value, abs=near)


@pytest.mark.parametrize("name", sorted(READ))
def test_the_reader_finds_in_the_note_what_is_asked(name: str) -> None:
    """The note is read without a fault, and its fields come to the right answer."""
    for question in asked(name, 6):
        callout = notes.read(question.note(), question.system)
        compared(question, READ[name](question, callout), 0.006)


def planned(question: Any) -> tuple[SeatPlan, ...]:
    """Plan the note of a question on a plate of its thickness."""
    thick = getattr(question, "thickness", INCH)
    callout = notes.read(question.note(), question.system)
    return plan.make(callout, material="6061 aluminum", machine="knee mill", thickness=thick).seats


def deep(seat: SeatPlan) -> float:
    """Return the depth of a planned seat from its face [mm]."""
    return float(seat.size("depth from the face").value)


def flush_limits(question: Any) -> Values:
    """Give the limits of the planned seat's diameter."""
    found = planned(question)[0].size("diameter at the face")
    return [found.least, found.largest]


PLANNED: dict[str, Callable[[Any], Values]] = {
    "print-far-side": lambda q: [None, q.thickness - deep(planned(q)[0])],
    "print-both-sides": lambda q: [None, q.thickness - sum(map(deep, planned(q)))],
    "print-counterbore": lambda q: [None, None, q.thickness - deep(planned(q)[0])],
    "print-floor-chamfer": lambda q: [deep(planned(q)[-1])],
    "print-flush-limits": flush_limits,
}


@pytest.mark.slow
@pytest.mark.parametrize("name", sorted(PLANNED))
def test_the_planner_comes_to_the_answer(name: str) -> None:
    """A plan of the drawn note has the size that the question asks for."""
    for question in asked(name, 4):
        compared(question, PLANNED[name](question), NEAR)


def test_the_far_side_is_read_as_such() -> None:
    """FAR SIDE is one seat on the far face, BOTH SIDES one on each."""
    for name, side in (("print-far-side", "far"), ("print-both-sides", "both")):
        for question in asked(name, 3):
            callout = notes.read(question.note(), question.system)
            assert size(callout, "Countersink", "side") == side


@pytest.mark.parametrize("name", READS)
@pytest.mark.slow
def test_every_note_is_read(name: str) -> None:
    """Of 20 draws, in both systems, every note is one that the reader takes."""
    for question in asked(name, 20):
        assert notes.read(question.note(), question.system).features


def is_asked_about(question: Any) -> bool:
    """Whether the reader or the planner of the package asks before such a note is cut."""
    callout = notes.read(question.note(), question.system)
    screw = "1/4 flat head machine screw" if question.fight == "no angle" else None
    thickness = 0.25 * INCH if question.thick else INCH
    try:
        made = plan.make(
            callout, screw=screw, material="6061 aluminum", machine="knee mill", thickness=thickness
        )
    except SeatworkError:
        return True
    return bool(callout.warnings) or any(row.kind == "stop" for row in made.rows())


def test_every_fight_is_one() -> None:
    """The reader or the planner asks about each note that is said to fight with something."""
    shown = {question.fight: question for question in asked("print-conflict", 40)}
    assert len(shown) == 6
    assert {name for name, one in shown.items() if not is_asked_about(one)} <= {"no angle"}


def test_the_drill_chart_is_the_list() -> None:
    """Every drill of the charts has the size that the package's list has."""
    for rows in CHARTS.values():
        for name, inches in rows:
            assert hardware.drill(name).diameter == pytest.approx(inches * INCH, abs=0.0006)


def test_the_fillets_are_those_of_the_list() -> None:
    """The fillet of each screw, as printed in the question, is that of the package's table."""
    for name, _, _, fillet, head, height in SCREWS:
        screw = hardware.screw(f"{name} socket head cap screw")
        assert screw.head_diameter == pytest.approx(head * INCH, abs=0.02)
        assert screw.head_height == pytest.approx(height * INCH, abs=0.02)
        listed = hardware.fillet_clearance(screw)
        assert listed is not None
        assert listed.value == pytest.approx(fillet * INCH, abs=0.02)


@pytest.mark.parametrize("name", READS)
def test_few_draws_keep_their_slips_apart(name: str) -> None:
    """Of 20 draws none has a slip within three tolerances of the answer or of another."""
    for question in asked(name, 20):
        assert not [
            pair
            for part in question.parts
            if isinstance(part, NumberPart)
            for pair in too_close(part)
        ]
