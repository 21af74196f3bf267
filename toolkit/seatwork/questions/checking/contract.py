"""What a question type still lacks, said in plain sentences to whoever writes one."""

import re
from collections.abc import Iterator
from decimal import Decimal
from math import isclose
from pathlib import Path
from random import Random

from seatwork.entries.measures import unit_step
from seatwork.errors import SeatworkError
from seatwork.questions.checking import drawn, pinning, proving
from seatwork.questions.checking.places import BANK, stem
from seatwork.questions.type.clearness import too_close
from seatwork.questions.type.parts import NumberPart, Part
from seatwork.questions.type.question import Question
from seatwork.questions.type.running import failed
from seatwork.questions.type.slip_sentences import SLIPS
from seatwork.questions.type.slips import Slip
from seatwork.questions.type.verdicts import judge
from seatwork.shop.lists.outline import read_outline

DRAWS = 300
OTHER = {"inch": "metric", "metric": "inch"}
FORMULA = re.compile(r"[=×÷√*]| [/+−-] \S|\d\s*/\s*\S")
MOST_DRAWS = 10_000
SHORTEST_REASON = 20
OTHER_UNIT = {"inch": re.compile(r"\d mm\b"), "metric": re.compile(r"\d in\b")}
NO_PLACE = Decimal("1e-7")  # finer than any number is typed
CLOSE = 1e-9  # part of a number that two ways to it may differ by
APART, OF = 5, 40  # questions that differ, at least, of so many drawn


def lacks(kind: type[Question], draws: int = DRAWS) -> tuple[str, ...]:
    """Return what a question type lacks; nothing if it keeps the contract.

    Parameters
    ----------
    kind : type
        The question type. One of the package has to agree with its proof and its pinned
        draws too, where the project's tests are there.
    draws : int
        How many questions are drawn and looked at, every other one in its other unit system.

    Returns
    -------
    tuple of str
        One sentence each; never raises, whatever the type's own code does.
    """
    if not 1 <= draws <= MOST_DRAWS:
        raise SeatworkError(draws, f"draws go from 1 to {MOST_DRAWS:,}", f"take {DRAWS}")
    try:
        found = [*_stated(kind), *_codes(kind)]
        if not found:
            found = [*_asked(kind, draws), *drawn.faults(kind)]
        if not found and kind.folder is None:
            found = [*proving.faults(kind, draws), *pinning.faults(kind)]
    except SeatworkError as error:
        return (str(error),)
    except Exception as error:  # whatever a person's own type may do
        return (f"it fails: {failed(error, *_files(kind))}",)
    return tuple(dict.fromkeys(found))


def _files(kind: type[Question]) -> list[Path]:
    """Name the files in which a type's own code may stand."""
    folder, name = kind.folder or BANK, f"{stem(kind.id)}.py"
    return [*folder.glob("*.py"), folder / "drawings" / name]


def _stated(kind: type[Question]) -> Iterator[str]:
    """Look at what a type says of itself."""
    for name in ("id", "goal", "difficulty", "sizes", "hints"):
        if not hasattr(kind, name):
            yield f"{name} is missing"
    if not getattr(kind, "goal", ".").strip().endswith("."):
        yield "the goal is no sentence"
    if getattr(kind, "difficulty", 1) not in (1, 2, 3):
        yield "the difficulty is not 1, 2 or 3"
    hints = getattr(kind, "hints", ("", ""))
    if len(hints) < 2:
        yield "the hints are not in steps; give two or more"
    for hint in hints:
        if FORMULA.search(hint):
            yield f"a hint holds a formula: {hint}"


def _codes(kind: type[Question]) -> Iterator[str]:
    """Look for its codes in the outline; a type of one's own may have none."""
    if not kind.codes and kind.folder is None:
        yield "it serves no code of the course outline; say them in codes"
    # the types of the package serve its own outline, whatever a workbook has in its place
    known = read_outline((kind.folder or BANK).parent)
    for code in kind.codes:
        if code not in known:
            yield f"the course outline has no code {code}; it has {', '.join(known)}"


def _asked(kind: type[Question], draws: int) -> Iterator[str]:
    """Look at questions as they are drawn."""
    for state in range(min(draws, 20)):
        if kind.draw(Random(state)) != kind.draw(Random(state)):
            yield "the same state of the generator gives another question"
    found = False
    for state in range(draws):
        question = kind.draw(Random(state))
        system = question.system if state % 2 else OTHER[question.system]
        for fault in _faults(question.stated_in(system)):
            found = True
            yield fault
    if not found and len({kind.draw(Random(state)).ask() for state in range(OF)}) < APART:
        yield f"fewer than {APART} of {OF} questions differ; widen its draw"


def _faults(question: Question) -> Iterator[str]:
    """Look at one question as it is read and answered."""
    text = question.ask()
    for name in question.sizes:
        if question.stated(name) not in text:
            yield f"the size {name} is not stated in the question"
    if OTHER_UNIT[question.system].search(text):
        yield f"a question in {question.system} units states a size in the other unit"
    if "None" in text or "nan" in text:
        yield "a size is missing in the question"
    yield from _working_faults(question)
    for part in question.parts:
        if isinstance(part, NumberPart):
            yield from _number_faults(part)
        else:
            yield from _choice_faults(part)
        if type(question).folder is None:
            yield from _nameless(part)


def _nameless(part: Part) -> Iterator[str]:
    """Look for slips of the package that the list of slips lacks; lists of a class name them so."""
    for code in sorted({slip.code for slip in part.slips} - SLIPS.keys()):
        yield f"the slip {code} is not in slip_sentences.py; give it two sentences there"


def _working_faults(question: Question) -> Iterator[str]:
    """Look whether the steps, or else the sentences of the working, come to the answer.

    A type in words only has no steps, nor has one of a person's own that was written earlier.
    """
    steps, parts, worked = question.worked_steps(), question.parts, question.worked()
    if not worked.strip():
        yield "the worked answer is empty"
        return
    for place, part in enumerate(parts):
        if not isinstance(part, NumberPart):
            continue
        last = [one.value for one in steps if one.part % len(parts) == place][-1:]
        asked = steps or question.folder is None
        if asked and not (last and isclose(last[0], part.value, rel_tol=CLOSE, abs_tol=CLOSE)):
            yield "the steps in working() do not come to the answer"
        elif not any(number in worked for number in _written(part)):
            yield "the worked answer does not come to the answer"


def _choice_faults(part: Part) -> Iterator[str]:
    if not judge(part, str(part.answer)).is_right:
        yield "the right option is not marked right"
    for slip in part.slips:
        if judge(part, str(slip.value)).is_right:
            yield f"the slip {slip.code} is marked right"


def _written(part: NumberPart) -> Iterator[str]:
    """Give the answer as a working may write it: in full, as shown, or as notes do."""
    yield f"{part.rounded:f}".lstrip("0")
    yield part.measure.show(part.value, part.system)
    yield f"{part.rounded.normalize():f}".lstrip("0")


def _number_faults(part: NumberPart) -> Iterator[str]:
    if len(part.reason) < SHORTEST_REASON:
        yield "the tolerance has no reason"
    if not part.tolerance > 0:
        yield "the tolerance is not above zero"
    else:
        yield from _band_faults(part)
    for first, second in too_close(part):
        yield f"{first} and {second} are closer than three tolerances"
    codes = {slip.code for slip in part.slips}
    for slip in part.slips:
        yield from _slip_faults(part, slip, codes)


def _band_faults(part: NumberPart) -> Iterator[str]:
    """Look at what is accepted: the answer in full and rounded, both ends, and no more."""
    if part.tolerance < unit_step(part.measure, part.system) / 2:
        yield "the tolerance is less than half of the last place asked for"
    low, high = part.band
    for number in (f"{part.answer:.9f}", f"{part.rounded:f}", f"{low:f}", f"{high:f}"):
        if not judge(part, number).is_right:
            yield "the answer, in full or rounded as asked, is not marked right"
    if judge(part, f"{high + part.tolerance / 100:f}").is_right:
        yield "more than the tolerance is marked right"


def _slip_faults(part: NumberPart, slip: Slip, codes: set[str]) -> Iterator[str]:
    if not slip.sentence:
        yield f"the slip {slip.code} has no sentence"
    if slip.twin_of:
        if slip.twin_of not in codes:
            yield f"the slip {slip.code} is a twin of {slip.twin_of}, which is no slip here"
    elif isinstance(slip.value, Decimal):
        told = [found.code for found in judge(part, f"{slip.value:.7f}").slips]
        own = [found.code for found in part.matching(slip.value, NO_PLACE)]
        if slip.code not in told or own != [slip.code]:
            yield f"the number of slip {slip.code} is not told as that slip"
