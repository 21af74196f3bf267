"""Compile the catalogs of learners' texts, and list what has no text in another language yet.

``python tests/catalogs.py`` compiles each ``.po`` under ``marking/catalogs`` to the ``.mo`` beside
it; ``--missing [DRAWS]`` writes the templates that have none, as entries to fill in.
"""

import ast
import io
import json
import sys
from collections.abc import Iterable, Iterator
from contextlib import suppress
from decimal import Decimal
from pathlib import Path
from random import Random

import seatwork
from babel.messages import mofile, pofile
from seatwork.cards.blocks import VERIFY
from seatwork.cards.front import BLUED, LENGTHS, TRIED
from seatwork.drawings.scene import Drawing, Look
from seatwork.drawings.views.cut_seat import in_words
from seatwork.entries.asked import sayings
from seatwork.entries.sentences import template
from seatwork.errors import SeatworkError
from seatwork.files.writing import NO_RIGHT, REFUSALS
from seatwork.marking.languages import CATALOGS, languages
from seatwork.marking.speaking import unsaid
from seatwork.picks.bench_of import filled, opened
from seatwork.picks.wording import every
from seatwork.plan import setups
from seatwork.plan.contents import HEADINGS, NOT_YET
from seatwork.questions import Question, all_types
from seatwork.questions.cuts.cone_triangle import LAST, triangle_at
from seatwork.questions.cuts.finding import own_cut, right_cut
from seatwork.questions.type.parts import ChoicePart, NumberPart, OrderPart, Part
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.record.class_picture import OWN_SLIP
from seatwork.record.learner_report import NOBODY
from seatwork.shop.house.cautions import cautions, closing
from seatwork.shop.shop import Shop
from seatwork.worksheet.kept import EMPTIED

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


def picture_texts(draws: Iterable[int]) -> Iterator[str]:
    """Yield what stands on the pictures of every type, and what each shows in words."""
    for kind in all_types().values():
        for seed in draws:
            question = kind.draw(Random(seed))
            for system in SYSTEMS:
                stated = question.stated_in(system)
                look = Look(system=system)
                steps = (triangle_at(stated, step, look) for step in range(1, LAST + 1))
                for drawing in filter(None, (stated.drawing(), *steps)):
                    assert isinstance(drawing, Drawing)
                    yield from (drawing.text, *drawing.words())
                yield from _cut_pictures(stated)


def _cut_pictures(question: Question) -> Iterator[str]:
    """Yield what the pictures of numbers that are cut show in words: right ones and slips."""
    for number, part in enumerate(question.parts):
        if not isinstance(part, NumberPart):
            continue
        for value in (part.rounded, *(slip.value for slip in part.slips)):
            found = own_cut(question, number, f"{value:f}")
            if found and found.own:
                with suppress(SeatworkError):
                    for seat in filter(None, (found.right, found.own)):
                        yield in_words(seat, found.own, question.system)


READ_BY_LEARNERS = (
    *("marking/answers.py", "marking/given.py", "marking/pick_file.py", "picks/bets.py"),
    *("worksheet/kept.py", "worksheet/entry.py", "worksheet/handing_in.py"),
)
"""Files whose faults a learner reads on a form."""
KEPT, HANDED_IN = "not saved, since ", "nothing was handed in, since "


def refusal_texts() -> Iterator[str]:
    """Yield why an entry cannot be read, an answer not be kept or a sheet not be handed in."""
    yield from sayings()
    for name in READ_BY_LEARNERS:
        for node in ast.walk(ast.parse((ROOM / name).read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and ast.unparse(node.func) in RAISERS:
                told = (_literal(one) for one in node.args[1:])
                yield from (text for text in told if text and "since 1" not in text)
    busy = "another command is writing there (process 12)"
    wait = "wait until it is done, then give the command again"
    for fault, remedy in (*REFUSALS.values(), NO_RIGHT, (busy, wait)):
        yield f"{KEPT}{fault}; {remedy.replace('give the command again', 'type it again')}"
        yield f"{HANDED_IN}{fault}; tell your instructor; your answers are saved here"
    look = "run this cell again to see that answer and go on from it"
    for fault in (EMPTIED, "another page has answered it (a; .139 in)", "a newer version wrote it"):
        yield f"{KEPT}{fault}; {look}"


RAISERS = {"SeatworkError", "Overtaken", "NewerFormat", "_refuse"}
ROOM = Path(seatwork.__file__).parent


def _literal(node: ast.expr) -> str:
    """Return a text that stands in the code, 1 for each of its values; empty for another node."""
    if isinstance(node, ast.JoinedStr):
        return "".join(_literal(one) or "1" for one in node.values)
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else ""


def paper_texts() -> Iterator[str]:
    """Yield what stands on paper for learners beside questions and plans.

    The cautions, the frame of a job card, of a worksheet and of a report.
    """
    for box in cautions():
        yield from (box.title, box.short, box.hazard, *box.do, box.number)
    yield from (VERIFY, closing(), *CARD, *HEADINGS.values(), NOT_YET, *LENGTHS.values())
    yield from (TRIED, BLUED, NOBODY, *SHEET, *REPORT)
    yield from (one.name for one in (*Shop.at().machines, *Shop.at().materials))
    yield from (setups.SHEET, setups.RAW, *setups.HELD.values(), *setups.ANEW.values())
    yield from (setups.THROUGH, setups.BACKING, setups.CLEAR, setups.TURNS, setups.BLIND)
    yield from (setups.FREE, setups.LAYOUT, setups.EDGES, setups.CENTERED, setups.DEPTH)
    yield from (f"{setups.LAYOUT}{setups.MARK_FAR}", "near face up", "far face up", "far end")


CARD = (
    *("instructor", "date", "page 2", "Measured", "step", "tool", "rev/min", "feed", "stop"),
    *("Print note", "Setup 1 of 2", "Held", "Under it", "Zero", "Job card", "Station sign"),
)
SHEET = (
    *("Learner", "form", "1 point", "2 points", "2.5 points", "room to work", "work"),
    "More room to work",
    "Write the number in the box, with its unit if it is another than printed.",
)
REPORT = (
    *("Report of", "As of 2026-09-07.", "Left the course", "Theory (the last sitting counts)"),
    *("Theory (the best sitting counts)", "Practical", "Safety", "No part inspected."),
    *("Nothing signed.", "Outline: points earned/asked, parts accepted of cut", "part"),
    *("Nothing asked yet.", "Not asked yet", "nothing", "Nothing handed out.", "sheet", "sitting"),
    *("how it stands", "does not count", "7 of 8, 88%", "passed", "not yet (pass mark 80%)"),
    *("after the day", "2 more in the feedback.", "your instructor looks at it", "excused", "void"),
    *("paper lost", "withdrawn", "not here", "handed out", "signed on paper", "accept", "reject"),
    *("signature withdrawn", "cannot tell with this instrument", *SLIPS.values(), OWN_SLIP),
)


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
        texts = {
            *drawn_texts(draws),
            *cut_texts(draws),
            *pick_texts(),
            *refusal_texts(),
            *paper_texts(),
        }
        texts |= set(picture_texts(draws))
        for language in languages()[1:]:
            for text in sorted(without_text(texts, language)):
                sys.stdout.write(f'msgid {json.dumps(text, ensure_ascii=False)}\nmsgstr ""\n\n')
        return
    for path in sorted(CATALOGS.rglob("*.po")):
        path.with_suffix(".mo").write_bytes(compiled(path))


if __name__ == "__main__":
    main()
