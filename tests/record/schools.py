"""Records of made-up classes, and the papers that they hand in."""

from dataclasses import dataclass
from pathlib import Path
from random import Random

from seatwork.marking import AnswerFile, Sheet, sheets
from seatwork.marking.submissions import Submission
from seatwork.marking.text import right_answer
from seatwork.questions.type.parts import NumberPart
from seatwork.record import Record, cells, class_now, forms, open_record
from seatwork.record.taking_in import Taken, take_in

from tests.as_saved import as_saved, sealed

SLIPS = 0.1
"""Share of answers that are given by a slip."""
BY_HOUSE = cells.Counting()


@dataclass(frozen=True)
class School:
    """A course with one sheet handed out, and the papers answered to it."""

    folder: Path
    plan: Sheet
    papers: tuple[AnswerFile, ...]

    @property
    def record(self) -> Record:
        """The record, opened anew."""
        return open_record(self.folder)

    def other(self, number: int, **typed: str) -> AnswerFile:
        """Return a paper with other answers, as the page of its form saves it."""
        file = self.papers[number]
        for question, text in typed.items():
            file = file.changed(question, parts=(text,))
        return as_saved(self.folder, file)

    def take(self, record: Record, papers: tuple[AnswerFile, ...], day: str) -> Taken:
        """Take some papers in."""
        return take_in(record, self.plan, given(papers), day=day)


def given(papers: tuple[AnswerFile, ...]) -> list[Submission]:
    """Hand papers in."""
    return [Submission(file.name, file) for file in papers]


def answered(folder: Path, name: str, learner: str, form: int, slips: float = SLIPS) -> AnswerFile:
    """Answer a form, some of it by a known slip; the same at every run."""
    plan, one = sheets.load(name), forms(folder).form(name, learner, form)
    assert one is not None
    rng, file = Random(f"{learner}{name}{form}"), AnswerFile(learner=learner, sheet=name, form=form)
    for question, asked in one.questions(plan).items():
        parts = tuple(
            str(part.slips[0].value)
            if isinstance(part, NumberPart) and part.slips and rng.random() < slips
            else right_answer(part)
            for part in asked.parts
        )
        file = file.changed(question, parts=parts, tries=1)
    return sealed(file, one)


def points_of(record: Record, day: str = "2026-12-01") -> dict[tuple[str, str], object]:
    """Return how every cell of the class stands."""
    with record.reading() as connection:
        now = class_now.Class(connection, day, counting=BY_HOUSE)
        return {key: list(map(tuple, cells)) for key, cells in now.grid().items()}
