"""Compile the catalogs of learners' texts, and list what has no text in another language yet.

``python tests/catalogs.py`` compiles each ``.po`` under ``marking/catalogs`` to the ``.mo`` beside
it; ``--missing [DRAWS]`` writes the templates that have none, as entries to fill in.
"""

import io
import json
import sys
from collections.abc import Iterable, Iterator
from decimal import Decimal
from pathlib import Path
from random import Random

from babel.messages import mofile, pofile
from seatwork.marking.languages import CATALOGS, languages
from seatwork.marking.speaking import template, unsaid
from seatwork.picks.bench_of import filled, opened
from seatwork.picks.wording import every
from seatwork.questions import Question, all_types
from seatwork.questions.cuts.finding import own_cut, right_cut
from seatwork.questions.type.parts import ChoicePart, NumberPart, OrderPart, Part

SYSTEMS = ("inch", "metric")


def question_texts(question: Question) -> Iterator[str]:
    """Yield every text that a learner reads of a question, but for its slips."""
    yield from (question.text(), *question.hints, question.because(), question.remark())
    for part in question.parts:
        yield from (part.prompt, *_part_texts(part))
    if type(question).worked is not Question.worked:
        yield question.worked()
    else:
        yield from (step.line(question.system) for step in question.worked_steps())


def _part_texts(part: Part) -> Iterable[str]:
    if isinstance(part, ChoicePart):
        return (part.request, *(text for _, text in part.options))
    if isinstance(part, OrderPart):
        return (part.request, *part.steps)
    assert isinstance(part, NumberPart)
    return (part.request, part.reason)


def drawn_texts(draws: Iterable[int]) -> Iterator[str]:
    """Yield the texts of every type, drawn with these seeds, in both systems."""
    for kind in all_types().values():
        for seed in draws:
            question = kind.draw(Random(seed))
            for system in SYSTEMS:
                yield from question_texts(question.stated_in(system))


def cut_texts(draws: Iterable[int]) -> Iterator[str]:
    """Yield what is said of numbers that are cut: right ones, slips, and some that are neither."""
    for kind in all_types().values():
        for seed in draws:
            question = kind.draw(Random(seed))
            for system in SYSTEMS:
                yield from _cut_texts(question.stated_in(system))


def _cut_texts(question: Question) -> Iterator[str]:
    for number, part in enumerate(question.parts):
        if not isinstance(part, NumberPart):
            continue
        right = part.rounded
        typed = {right, right * 3, right * 100, right / 3, -right, 0 * right}
        typed |= {Decimal(slip.value) for slip in part.slips}
        found = [own_cut(question, number, f"{value:f}") for value in sorted(typed)]
        for one in filter(None, (*found, right_cut(question, number))):
            yield one.said
            faults = one.own.standing().faults if one.own else ()
            yield "; ".join(fault.label() for fault in faults).capitalize() + "."


def pick_texts() -> Iterator[str]:
    """Yield what each pick asks and says, the readouts of its bench in their places."""
    for pick in every().values():
        yield from (pick.question, *pick.choice.values(), *pick.tempt.values())
        yield filled(pick, opened(pick))
        for ask in pick.ask:
            yield from (ask.label, *(one.says for one in ask.tempt))


def without_text(texts: Iterable[str], language: str) -> set[str]:
    """Return the templates of those sentences that have no text in a language."""
    return {template(one)[0] for text in texts for one in unsaid(text, language)}


def compiled(path: Path) -> bytes:
    """Return the compiled form of a catalog."""
    made = io.BytesIO()
    mofile.write_mo(made, pofile.read_po(io.BytesIO(path.read_bytes()), locale=path.parts[-3]))
    return made.getvalue()


def main() -> None:
    """Compile the catalogs, or list what they have no text for."""
    if "--missing" in sys.argv:
        draws = range(int(sys.argv[-1]) if sys.argv[-1].isdigit() else 20)
        texts = {*drawn_texts(draws), *cut_texts(draws), *pick_texts()}
        for language in languages()[1:]:
            for text in sorted(without_text(texts, language)):
                sys.stdout.write(f'msgid {json.dumps(text, ensure_ascii=False)}\nmsgstr ""\n\n')
        return
    for path in sorted(CATALOGS.rglob("*.po")):
        path.with_suffix(".mo").write_bytes(compiled(path))


if __name__ == "__main__":
    main()
