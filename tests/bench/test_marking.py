"""How many submissions are marked in a second, beside what executing notebooks would cost."""

import json
import sys
import time
from collections.abc import Callable
from pathlib import Path
from random import Random
from statistics import median

import pytest
from seatwork.marking import Answer, AnswerFile, mark, sheets
from seatwork.questions import all_types
from seatwork.questions.type.parts import NumberPart
from seatwork.record import forms, hand_out

SUBMISSIONS = 400
ROUNDS = 7
QUESTIONS = 20
WANTED = 1000  # submissions a second of one quiet core
READS = 50_000  # answer files that such a core reads as plain JSON in a second
NOTEBOOKS = 3


def write_sheet(folder: Path) -> sheets.Sheet:
    """Write a sheet of twenty number questions of different types."""
    kinds = [
        name
        for name, kind in all_types().items()
        if isinstance((part := kind.draw(Random(0)).parts)[0], NumberPart) and len(part) == 1
    ][:QUESTIONS]
    lines = [f'[[questions]]\nid = "q{n}"\ntype = "{kind}"\n' for n, kind in enumerate(kinds, 1)]
    path = folder / "long.toml"
    path.write_text("format = 1\n" + "".join(lines), encoding="utf-8")
    return sheets.read(path)


def answer(part: NumberPart, rng: Random) -> str:
    """Answer as a class does: four of five right, most of the rest by a known slip."""
    luck = rng.random()
    if luck < 0.8:
        unit = f" {part.unit}" if rng.random() < 0.5 else ""
        return f"{part.rounded:f}{unit}"
    slips = [slip.value for slip in part.slips]
    if luck < 0.95 and slips:
        return f"{slips[int(rng.random() * len(slips))]:.4f}"
    return f"{float(part.answer) * (0.2 + 2.8 * rng.random()):.4f}"


def execute(notebook: Path) -> None:
    """Execute one notebook in a kernel of its own, as marking by execution would."""
    import nbformat
    from nbclient import NotebookClient

    book = nbformat.read(notebook, as_version=4)
    NotebookClient(
        book, timeout=120, allow_errors=True, resources={"metadata": {"path": str(notebook.parent)}}
    ).execute()


def seconds(work: Callable[[], object]) -> float:
    """Time some work in this core's own time [s]."""
    began = time.thread_time()
    work()
    return time.thread_time() - began


def execute_some(count: int) -> float:
    """Execute a worksheet several times; return what one takes [s]."""
    notebook = Path(__file__).resolve().parents[2] / "exercises" / "counterbores.ipynb"
    began = time.monotonic()
    for _ in range(count):
        execute(notebook)
    return (time.monotonic() - began) / count


@pytest.mark.bench
def test_submissions_a_second(tmp_path: Path) -> None:
    """Marking submissions of 20 questions, beside reading their files and running notebooks."""
    sheet, rng = write_sheet(tmp_path), Random(9)
    learners = [f"L{number:05d}" for number in range(1, SUBMISSIONS + 1)]
    for one in hand_out(tmp_path / "course", sheet, learners):
        answers = {
            name: Answer(parts=(answer(question.parts[0], rng),))  # type: ignore[arg-type]
            for name, question in one.questions.items()
        }
        file = AnswerFile(learner=one.given.learner, sheet="long", form=1, answers=answers)
        (tmp_path / "in").mkdir(exist_ok=True)
        (tmp_path / "in" / file.name).write_bytes(file.content())
    texts = [path.read_bytes() for path in (tmp_path / "in").iterdir()]
    ones, reads = [], []
    for _ in range(ROUNDS):
        ones.append(seconds(lambda: mark(forms(tmp_path / "course"), sheet, tmp_path / "in")))
        reads.append(seconds(lambda: [json.loads(text) for text in texts * 5]) / 5)
    assert not any(
        one.needs_a_person for one in mark(forms(tmp_path / "course"), sheet, tmp_path / "in")
    )
    ratio, each = median(ones) / median(reads), execute_some(NOTEBOOKS)
    best = SUBMISSIONS / min(ones)
    sys.stdout.write(
        f"\n{best:.0f} submissions a second of one core as busy as it is; one is marked while "
        f"{ratio:.0f} are read as JSON, {READS / WANTED:.0f} at most\n"
        f"one notebook executed costs {each * best:.0f} submissions marked\n"
    )
    assert ratio <= READS / WANTED
    assert each * best > 500, "marking as data must be far cheaper than executing"
