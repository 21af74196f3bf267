"""Questions with drawn numbers that recognize the slips learners make."""

from seatwork.questions.question import NumberQuestion, Question, Tolerance
from seatwork.questions.registry import all_types, named, own_types
from seatwork.questions.slips import Mistake, Slip
from seatwork.questions.verdicts import Verdict, judge, judge_all

__all__ = [
    "Mistake",
    "NumberQuestion",
    "Question",
    "Slip",
    "Tolerance",
    "Verdict",
    "all_types",
    "judge",
    "judge_all",
    "named",
    "own_types",
]
