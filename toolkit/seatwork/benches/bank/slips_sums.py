"""What the slips bench looks into: topics of the bank, other questions, an instructor's own."""

from decimal import Decimal
from functools import lru_cache
from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.questions.left_out import described
from seatwork.questions.registry import all_types, named, own_types
from seatwork.questions.type.draws import generator
from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.question import Question
from seatwork.shop.folder import find

TOPICS = {
    "depth of a countersink": ("seat-depth", "M01"),
    "diameter from a depth": ("seat-diameter", "M02"),
    "quill travel from the nose": ("nose-travel", "M10"),
    "quill travel from the hole edge": ("edge-travel", "M11"),
    "spindle speed": ("spindle-speed", "M29"),
    "depth of a counterbore": ("washer-depth", "M23"),
    "room for the wrench": ("wrench-room", "M22"),
    "chamfer of a tapped hole": ("thread-chamfer", "M20"),
    "first touch on a rough pad": ("spotface-depth", "M25"),
    "which cutter left this seat": ("angle-found", "M01"),
}
"""Questions by their topic: the type, and the slip whose number is typed to begin with."""


def topics() -> tuple[str, ...]:
    """Name the topics, and the workbook's own question types, whose files are only read here."""
    own = described(folder) if (folder := _folder()) else {}
    return (*TOPICS, *(name for name in own if name not in all_types()))


def kind_of(name: str) -> type[Question]:
    """Find the question type of a topic, or the type of that name; an own one is run for it.

    Raises
    ------
    SeatworkError
        If there is no such type, or it asks for no number.
    """
    if name in TOPICS:
        return all_types()[TOPICS[name][0]]
    kind = all_types().get(name) or named(name, _own())
    if not _asks_number(kind):
        raise SeatworkError(name, "this question asks for no number", "take one that does")
    return kind


def drawn(name: str, learner: float) -> tuple[Question, NumberPart]:
    """Return the question with a learner's numbers, and the number it asks for."""
    kind = kind_of(name)
    question = kind.draw(generator(f"{kind.id} {int(learner)}".encode()))
    part = question.main
    assert isinstance(part, NumberPart)
    return question, part


def example(name: str, learner: float) -> str:
    """Write the number that the topic's example slip, or the first, gives with these sizes."""
    part = drawn(name, learner)[1]
    gives = {s.code: s.value for s in part.slips if isinstance(s.value, Decimal)}
    code = TOPICS.get(name, ("", ""))[1]
    value = gives.get(code, next(iter(gives.values()), part.answer))
    return part.measure.show(part.measure.inside(value, part.system), part.system)


def _asks_number(kind: type[Question]) -> bool:
    return isinstance(kind.draw(generator(b"looked at")).main, NumberPart)


def _folder() -> Path | None:
    """Return the folder of the workbook's own question types, if it has one."""
    found = find()
    return found / "questions" if found and (found / "questions").is_dir() else None


def _own() -> dict[str, type[Question]]:
    """Return the workbook's own types; one with a fault is left out, as it is on sheets."""
    folder = _folder()
    if folder is None:
        return {}
    files = sorted(folder.glob("*.py"))
    return _read(folder, tuple((path, path.stat().st_mtime_ns) for path in files))


@lru_cache(maxsize=2)
def _read(folder: Path, saved: tuple[tuple[Path, int], ...]) -> dict[str, type[Question]]:
    del saved  # only tells one state of the files from another
    return own_types(folder, [])
