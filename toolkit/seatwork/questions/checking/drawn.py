"""Whether a question's drawing shows only what is stated, and marks what is asked for."""

import re
from collections.abc import Iterator
from random import Random

from seatwork.questions.type.parts import NumberPart
from seatwork.questions.type.pictures import Drawing, LostDrawing, drawer
from seatwork.questions.type.question import Question

DRAWS = 4
SYSTEMS = ("inch", "metric")
NUMBER = re.compile(r"\d*\.?\d+(?: in| mm|°)")
OTHER_SYSTEM = re.compile(r"\(\d*\.?\d+ (?:in|mm)\)")
MARK = re.compile(r"^[⌀↧±+ ]*\?", re.MULTILINE)


def faults(kind: type[Question]) -> Iterator[str]:
    """Yield what is wrong with a type's drawing, in one sentence each."""
    file = f"drawings/{'' if kind.folder else 'asked/'}{kind.id.replace('-', '_')}.py"
    # a type may draw by a method of its own, too
    has_drawing = bool(drawer(kind.id, kind.folder)) or kind.drawing is not Question.drawing
    if has_drawing and kind.undrawn:
        yield "it has a drawing and says in undrawn why it has none; keep one"
    elif not has_drawing and not kind.undrawn:
        yield f"it has no drawing; write {file}, or say why in undrawn"
    if has_drawing:
        for state in range(DRAWS):
            question = kind.draw(Random(state))
            for system in SYSTEMS:
                yield from shown_wrongly(question.stated_in(system))


def _asks_number(question: Question) -> bool:
    """Tell whether a part asks for a number, be it not the last."""
    return any(isinstance(part, NumberPart) for part in question.parts)


def shown_wrongly(question: Question) -> Iterator[str]:
    """Yield what one question's drawing shows that it should not, or does not show."""
    drawing = question.drawing()
    if drawing is None:
        return
    if isinstance(drawing, LostDrawing):
        yield str(drawing.error)
        return
    seen = written(drawing)
    for number in given_away(question, seen):
        yield f"the drawing shows {number}, which the question does not state"
    marked = bool(MARK.search(seen)) and "to be found" in seen
    if isinstance(question.main, NumberPart) and not question.unmarked:
        if not marked:
            yield 'the drawing has no "?" where the size asked for is, or say why in unmarked'
    elif "?" in seen and (question.unmarked or not _asks_number(question)):
        yield 'the drawing has a "?", though unmarked says why not or no number is asked for'


def written(drawing: Drawing) -> str:
    """Return all that is written on a drawing and told of it."""
    figure = getattr(drawing, "figure", None)
    words = [text.get_text() for axes in figure.axes for text in axes.texts] if figure else []
    return "\n".join([drawing.text, *words])


def given_away(question: Question, seen: str) -> list[str]:
    """Return the numbers of a drawing that the question does not state.

    A size in the other unit system, in brackets after the first, counts as stated.
    """
    stated = set(NUMBER.findall(question.ask()))
    return sorted(set(NUMBER.findall(OTHER_SYSTEM.sub("", seen))) - stated)
