"""The end of a sheet that asks where to begin: each question with the lesson it stands for."""

from collections.abc import Mapping
from os.path import relpath
from pathlib import Path
from typing import Any

from seatwork.marking import Sheet
from seatwork.marking.sheets import folder
from seatwork.marking.speaking import Speaker
from seatwork.questions import Verdict

HEADS = ("question", "your answer", "lesson")
NOTHING_MISSED = "Nothing missed: go to the last lesson, the whole part, and look back as you need."


class Route:
    """Which lessons a learner may pass over, and where to begin.

    Parameters
    ----------
    plan : Sheet
        A sheet whose questions name lessons.
    verdicts : mapping of str to tuple of Verdict
        What is to be said of each answer.
    say : callable
        Says a text in the learner's language.
    """

    def __init__(
        self, plan: Sheet, verdicts: Mapping[str, tuple[Verdict, ...]], say: Speaker = str
    ) -> None:
        self._say = say
        self.rows = [
            (item.id, result(verdicts[item.id]), item.start, item.lesson)
            for item in plan.items
            if item.lesson
        ]

    @property
    def first(self) -> str:
        """Say where to begin: the lesson of the first question that was missed."""
        for _, verdict, lesson, _ in self.rows:
            if verdict != "right":
                return f"{self._say('Begin with')} {lesson}".rstrip("?.") + "."
        return self._say(NOTHING_MISSED)

    def __repr__(self) -> str:
        lines = [
            f"{name}: {self._say(verdict)} ({lesson})" for name, verdict, lesson, _ in self.rows
        ]
        return "\n".join([*lines, self.first])

    def _repr_mimebundle_(self, include: Any = None, exclude: Any = None) -> dict[str, str]:
        from seatwork.rows import plain

        rows = [tuple(map(self._say, HEADS)), ("---",) * 3]
        rows += [
            (name, self._say(verdict), _link(lesson, file))
            for name, verdict, lesson, file in self.rows
        ]
        table = "\n".join(f"| {' | '.join(row)} |" for row in rows)
        return {"text/plain": repr(self), "text/markdown": f"{table}\n\n**{plain(self.first)}**"}


def result(verdicts: tuple[Verdict, ...]) -> str:
    """Say in a word or two what came of a question."""
    if all(verdict.is_right for verdict in verdicts):
        return "right"
    return "left empty" if any(verdict.kind == "blank" for verdict in verdicts) else "missed"


def _link(lesson: str, file: str) -> str:
    """Link a lesson from where this notebook stands; plain words if no lessons came along."""
    from seatwork.rows import plain

    lessons = folder().parents[1] / "notebooks"
    if not lessons.is_dir() or lessons.anchor != Path.cwd().anchor:
        return plain(lesson)
    return f"[{plain(lesson)}]({Path(relpath(lessons)).as_posix()}/{file}.ipynb)"
