"""Scoring one learner's answers to one form: verdicts, points, and what is doubtful."""

from decimal import Decimal
from typing import NamedTuple

from seatwork.marking.answers import Answer, AnswerFile
from seatwork.marking.handed import HandedOut
from seatwork.marking.sheets import Item, Sheet
from seatwork.questions import Verdict, judge_all
from seatwork.questions.typed import read_plainly
from seatwork.questions.verdicts import RIGHT

ALL_RIGHT = (RIGHT,)


class Scored(NamedTuple):
    """One question as scored.

    Parameters
    ----------
    id : str
        Its place on the sheet.
    points : float or None
        Points earned [-]; None if a person must decide.
    of : float
        Points it is worth [-].
    verdicts : tuple of Verdict
        What was said of each part.
    typed : tuple of str
        What was typed for each part.
    sure : bool
        Whether the learner marked it "I think this is right".
    doubt : str
        Why a person must decide; empty if none must.
    """

    id: str
    points: float | None
    of: float
    verdicts: tuple[Verdict, ...]
    typed: tuple[str, ...]
    sure: bool = False
    doubt: str = ""


def score(sheet: Sheet, form: HandedOut, file: AnswerFile, tries: int) -> tuple[Scored, ...]:
    """Score all questions of a sheet.

    Parameters
    ----------
    sheet : Sheet
        The worksheet.
    form : HandedOut
        The form the learner was given.
    file : AnswerFile
        What the learner answered.
    tries : int
        Checks allowed for a question; 0 for no limit.
    """
    return tuple([_score_item(item, form, file.of(item.id), sheet, tries) for item in sheet.items])


def _score_item(item: Item, form: HandedOut, answer: Answer, sheet: Sheet, tries: int) -> Scored:
    verdicts: tuple[Verdict, ...] = ALL_RIGHT
    points = item.points
    if not _plainly_right(item, form, answer):
        verdicts = judge_all(form.question(item), answer.parts)
        points *= sum(verdict.is_right for verdict in verdicts) / len(verdicts)
    if sheet.hint_cost:
        points *= max(1.0 - sheet.hint_cost * answer.hints, 0.0)
    doubt = _doubt(answer, len(verdicts), tries)
    earned = None if doubt else points
    return Scored(item.id, earned, item.points, verdicts, answer.parts, answer.sure, doubt)


def _plainly_right(item: Item, form: HandedOut, answer: Answer) -> bool:
    """Whether the one number asked for stands there, within the tolerance kept with the form."""
    measure, key = item.plain_measure, form.key.get(item.id, ())
    if measure is None or len(answer.parts) != 1 or item.kind.version != form.versions[item.id]:
        return False
    value = read_plainly(answer.parts[0], measure, form.sizes[item.id]["system"])
    if value is None or not key or key[0] is None:
        return False
    return abs(value - Decimal(key[0][0])) <= Decimal(key[0][1])


def _doubt(answer: Answer, parts: int, tries: int) -> str:
    if len(answer.parts) > parts:
        return "more answers than the question has parts"
    if answer.attempt != 1:
        return "the numbers were drawn anew"
    if tries and answer.tries > tries:
        return f"checked {answer.tries} times, {tries} were allowed"
    return ""
