"""Answer the worked sheets right again, where a question has other numbers than before.

An answer that is right stays as somebody wrote it, with its working. What is written here is the
program's own answer and working; `tests/questions/proofs` holds each type against a second
reckoning. Run ``python tests/store.py`` on the sheets named afterwards.
"""

import re
import sys
from itertools import pairwise
from pathlib import Path

import nbformat
from seatwork import opening
from seatwork.marking import given, sheets
from seatwork.marking.text import right_answer
from seatwork.questions import Question, judge_all
from seatwork.worksheet.entry import typed_parts

WORKED = opening.source() / "exercises" / "worked"
ASKED = re.compile(r'(?P<lead>.*\.ask\("(?P<name>\w+)", answer=)(?P<answer>.*)\)', re.DOTALL)


def answered(question: Question) -> str:
    """Write the right answer as it stands in a cell."""
    parts = [right_answer(part) for part in question.parts]
    mark = ", ".join(f'"{part}"' for part in parts)
    return f"({mark})" if len(parts) > 1 else mark


def is_right(question: Question, answer: str) -> bool:
    """Tell whether the answer that stands in a cell is right in every part."""
    typed = typed_parts(re.findall(r'"([^"]*)"', answer))
    return all(verdict.is_right for verdict in judge_all(question, typed))


def is_worked(question: Question, before: nbformat.NotebookNode, answer: str) -> bool:
    """Tell whether a cell's answer is right, and the working before it of this question's numbers.

    Other numbers may give the same answer, so the cell of the working keeps what was asked.
    """
    return is_right(question, answer) and before.metadata.get("asked") == question.text()


def heading(text: str) -> str:
    """Return a cell's text up to its last heading."""
    lines = text.splitlines()
    last = max((at for at, line in enumerate(lines) if line.startswith("#")), default=-1)
    return "\n".join(lines[: last + 1])


def rework(path: Path) -> list[str]:
    """Answer one worked sheet right; return the questions whose answer was changed."""
    notebook, changed = nbformat.read(path, as_version=4), []
    drawn = sheets.load(path.stem).draw(given.practice(path.stem).seed)
    for before, cell in pairwise(notebook.cells):
        found = ASKED.fullmatch(cell.source) if cell.cell_type == "code" else None
        if not found:
            continue
        question = drawn[found["name"]]
        if is_worked(question, before, found["answer"]):
            continue
        cell.source = f"{found['lead']}{answered(question)})"
        before.source = f"{heading(before.source)}\n\n{question.worked()}"
        before.metadata["asked"] = question.text()
        changed.append(found["name"])
    if changed:
        nbformat.write(notebook, path)
    return changed


if __name__ == "__main__":
    for sheet in sorted(WORKED.glob("*.ipynb")):
        if names := rework(sheet):
            sys.stdout.write(f"exercises/worked/{sheet.name}: {', '.join(names)}\n")
