"""What wrong answers are told, as a table, and what drawing and telling cost."""

import sys
from pathlib import Path
from random import Random
from time import process_time

import pytest
from seatwork.questions import Question, all_types, judge
from seatwork.questions.type.clearness import is_told_apart, too_close
from seatwork.questions.type.parts import NumberPart

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
import teaching_measures as measures

ROUNDS = 5


@pytest.mark.bench
def test_what_wrong_answers_are_told() -> None:
    """The table of ``tests/teaching_measures.py``, before and now."""
    sys.stdout.write("\n" + measures.page() + "\n")


@pytest.mark.bench
def test_slips_are_told_apart_in_floats_faster() -> None:
    """Deciding in floats whether slips stand apart costs less than half of exact numbers."""
    parts = [part for question in drawn() for part in numbers(question)]
    exact = least(lambda: [too_close(part) for part in parts])
    floats = least(lambda: [is_told_apart(part) for part in parts])
    sys.stdout.write(f"\nslips told apart: floats take {floats / exact:.2f} of exact numbers\n")
    assert floats < exact / 2


@pytest.mark.bench
def test_a_wrong_answer_is_told_within_milliseconds() -> None:
    """Looking a wrong answer up in all ways costs what a person does not notice."""
    parts = [part for question in drawn() for part in numbers(question)]
    wrong = [(part, f"{float(part.answer) * 1.7:.4f}") for part in parts]
    taken = least(lambda: [judge(part, text) for part, text in wrong]) / len(wrong)
    sys.stdout.write(f"\none wrong answer told in {taken * 1000:.2f} ms\n")
    assert taken < 0.01


def drawn() -> list[Question]:
    """Draw a question of every type."""
    return [kind.draw(Random(3)) for kind in all_types().values()]


def numbers(question: Question) -> list[NumberPart]:
    """Return the numbers a question asks for."""
    return [part for part in question.parts if isinstance(part, NumberPart)]


def least(work: object) -> float:
    """Return the least time of a few rounds [s]."""
    assert callable(work)
    times = []
    for _ in range(ROUNDS):
        began = process_time()
        work()
        times.append(process_time() - began)
    return min(times)
