"""Scoring one learner's answers to one form: verdicts, points, and what is doubtful."""

from typing import NamedTuple

from seatwork.marking.answers import Answer, AnswerFile
from seatwork.marking.handed import HandedOut
from seatwork.marking.sheets import Item, Sheet
from seatwork.marking.unread import doubt
from seatwork.questions import Verdict, judge_all
from seatwork.questions.left_out import LeftOut


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
    computed : float or None
        Points as computed [-], whatever a person gave; None if a person must decide.
    """

    id: str
    points: float | None
    of: float
    verdicts: tuple[Verdict, ...]
    typed: tuple[str, ...]
    sure: bool = False
    doubt: str = ""
    computed: float | None = None


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
    return tuple(_score_item(item, form, file.of(item.id), sheet, tries) for item in sheet.items)


def _score_item(item: Item, form: HandedOut, answer: Answer, sheet: Sheet, tries: int) -> Scored:
    if issubclass(item.kind, LeftOut):
        why = f"its question type {item.kind.id} is left out: {item.kind.why}"
        return Scored(item.id, None, item.points, (), answer.parts, answer.sure, why)
    verdicts = judge_all(form.question(item), answer.parts)
    points = item.points * sum(verdict.is_right for verdict in verdicts) / len(verdicts)
    if sheet.hint_cost:
        points *= max(1.0 - sheet.hint_cost * answer.hints, 0.0)
    why = _doubt(answer, verdicts, tries)
    earned = None if why else points
    of = item.points
    return Scored(item.id, earned, of, verdicts, answer.parts, answer.sure, why, earned)


def _doubt(answer: Answer, verdicts: tuple[Verdict, ...], tries: int) -> str:
    if len(answer.parts) > len(verdicts):
        return "more answers than the question has parts"
    if answer.attempt != 1:
        return "the numbers were drawn anew"
    if tries and answer.tries > tries:
        return f"checked {answer.tries} times, {tries} were allowed"
    unread = [doubt(*pair) for pair in zip(answer.parts, verdicts, strict=False)]
    return "; ".join(why for why in unread if why)
