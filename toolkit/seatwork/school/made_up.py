"""A made-up class of any size that makes the slips of a sheet: how many the marking names."""

from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from random import Random

from seatwork.errors import SeatworkError
from seatwork.marking.seeds import PRACTICE_KEY, sheet_seed
from seatwork.marking.sheets import Sheet, load
from seatwork.marking.text import right_answer
from seatwork.questions import Question, Verdict, judge_all
from seatwork.questions.left_out import LeftOut
from seatwork.questions.type.parts import ChoicePart, NumberPart, Part
from seatwork.questions.type.slips import Slip
from seatwork.school.workers import each
from seatwork.units.showing import rounded

A_TASK = 100
"""Learners of one task."""
MOST = 1_000_000
NAMED, AMONG, NOT_NAMED = "named", "among", "not named"
Place = tuple[str, str]
Counts = dict[Place, Counter[str]]


@dataclass(frozen=True, slots=True, kw_only=True)
class SlipFigure:
    """How often a slip was made in one question, and how often the marking named it.

    Parameters
    ----------
    question : str
        Its place on the sheet, such as c1.
    code : str
        Code of the slip, such as M01.
    made : int
        How often it was made.
    named : int
        How often it was named, and no other.
    among : int
        How often it was named with others, or asked about.
    not_named : int
        How often it was not; the answer was wrong for no known reason, or for another.

    Examples
    --------
    >>> print(SlipFigure(question="c1", code="M02", made=90, named=88, among=2, not_named=0))
    c1 M02: made 90 times, named 88, among others 2, not named 0
    """

    question: str
    code: str
    made: int
    named: int
    among: int
    not_named: int

    def __str__(self) -> str:
        told = f"named {self.named}, among others {self.among}, not named {self.not_named}"
        return f"{self.question} {self.code}: made {self.made} times, {told}"


def slip_figures(
    sheet: Sheet | str,
    learners: int = 1000,
    *,
    workers: int = 1,
    scheduler: str = "",
    progress: Callable[[int], None] | None = None,
) -> tuple[SlipFigure, ...]:
    """Let a made-up class answer a sheet, a slip in every question, and count what is named.

    Each learner has an own form, makes one of the slips known of each question and is right in
    its other parts. Numbers are written to the places asked for. The figures are the same for
    any number of workers.

    Parameters
    ----------
    sheet : Sheet or str
        The worksheet, or its name; question types that are left out are not asked.
    learners : int
        How many, 1 to a million.
    workers, scheduler : int, str
        As for `mark_rooms`.
    progress : callable, optional
        Called with the number of learners done.

    Raises
    ------
    SeatworkError
        If the number is none, the scheduler does not answer, or the sheet is not known.
    """
    if isinstance(learners, bool) or not isinstance(learners, int) or not 1 <= learners <= MOST:
        raise SeatworkError(learners, "that is no number of learners", f"write 1 to {MOST:,}")
    plan = load(sheet) if isinstance(sheet, str) else sheet
    tasks = [(plan, at, min(at + A_TASK, learners)) for at in range(0, learners, A_TASK)]
    total: Counts = {}
    for done, (_, found) in enumerate(each(tried, tasks, workers=workers, scheduler=scheduler), 1):
        if isinstance(found, SeatworkError):
            raise found
        for place, count in found.items():
            total.setdefault(place, Counter()).update(count)
        if progress:
            progress(min(done * A_TASK, learners))
    return tuple(_figure(*place, total[place]) for place in sorted(total, key=_in_order(plan)))


def tried(plan: Sheet, first: int, end: int) -> Counts:
    """Let the learners of these numbers answer, and count what came of each slip.

    Parameters
    ----------
    plan : Sheet
        The worksheet.
    first, end : int
        The first learner, and the one after the last.
    """
    found: Counts = {}
    for number in range(first, end):
        seed = sheet_seed(PRACTICE_KEY, f"L{number}", plan.name, 1)
        rng = Random(seed)
        for name, question in plan.draw(seed).items():
            made = [] if isinstance(question, LeftOut) else list(_slips(question))
            if made:
                place, slip = rng.choice(made)
                what = _told(question, place, slip)
                found.setdefault((name, slip.code), Counter())[what] += 1
    return found


def _slips(question: Question) -> Iterator[tuple[int, Slip]]:
    """Yield the slips of a question, each with its part; none whose answer would be accepted."""
    for place, part in enumerate(question.parts):
        for slip in part.slips:
            accepted = isinstance(part, NumberPart) and _is_in(part, _text(part, slip))
            if not slip.twin_of and not accepted:
                yield place, slip


def _is_in(part: NumberPart, text: str) -> bool:
    low, high = part.band
    return low <= Decimal(text) <= high


def _text(part: Part, slip: Slip) -> str:
    """Write what somebody with this slip would write."""
    if isinstance(part, NumberPart):
        assert isinstance(slip.value, Decimal)
        return f"{rounded(slip.value, part.measure.places[part.system]):f}"
    if isinstance(part, ChoicePart):
        return str(slip.value)
    first, then = str(slip.value)[0], str(slip.value)[1]
    return part.right.translate({ord(first): then, ord(then): first})


def _told(question: Question, place: int, slip: Slip) -> str:
    """Return what the marking says of an answer with one slip in it."""
    parts = question.parts
    typed = [
        _text(part, slip) if n == place else right_answer(part) for n, part in enumerate(parts)
    ]
    verdict: Verdict = judge_all(question, typed)[place]
    codes = [one.code for one in verdict.slips]
    if slip.code not in codes:
        return NOT_NAMED
    return NAMED if len(set(codes)) == 1 and verdict.kind != "asks back" else AMONG


def _in_order(plan: Sheet) -> Callable[[Place], tuple[int, str]]:
    """Return the key that sorts by the order of the sheet, then by slip."""
    order = [item.id for item in plan.items]
    return lambda place: (order.index(place[0]), place[1])


def _figure(question: str, code: str, count: Counter[str]) -> SlipFigure:
    return SlipFigure(
        question=question,
        code=code,
        made=count.total(),
        named=count[NAMED],
        among=count[AMONG],
        not_named=count[NOT_NAMED],
    )
