"""Answers typed back from paper: learner, question, number, one a row."""

from pathlib import Path

from seatwork.errors import SeatworkError
from seatwork.marking import spreadsheet
from seatwork.marking.answers import LONGEST, AnswerFile
from seatwork.marking.handed import Record
from seatwork.marking.names import QUESTION, learner_code
from seatwork.marking.sheets import Sheet
from seatwork.marking.submissions import Submission

HEADS = ("learner", "question", "answer")
PARTS = "abcdefgh"


def read(path: Path, sheet: Sheet, record: Record) -> list[Submission]:
    """Return the answers of a CSV file typed from paper, one submission a learner.

    Parameters
    ----------
    path : Path
        Columns learner, question, answer, and form if not the last one handed out; parts
        as questions ``c3a``, ``c3b``, or in one answer with ``;`` between them.
    sheet : Sheet
        The worksheet.
    record : Record
        What was handed out.

    Raises
    ------
    SeatworkError
        If the file cannot be read, or a row is wrong: row and what would do.
    """
    files: dict[tuple[str, int], AnswerFile] = {}
    for number, row in enumerate(spreadsheet.read(path, HEADS), 2):
        try:
            _enter(files, row, sheet, record)
        except SeatworkError as error:
            place = f"{path.name}, row {number}"
            raise error.of(f"{place}: {error.value}") from error
    return [Submission(name=f"paper {file.name}", file=file) for file in files.values()]


def _enter(
    files: dict[tuple[str, int], AnswerFile], row: dict[str, str], sheet: Sheet, record: Record
) -> None:
    learner = learner_code(row["learner"].strip().upper())
    form = _form(row.get("form", "").strip(), sheet, record, learner)
    name, part = place_of(row["question"].strip().lower(), sheet)
    empty = AnswerFile(learner=learner, sheet=sheet.name, form=form)
    file = files.get((learner, form), empty)
    texts = [text.strip()[:LONGEST] for text in row["answer"].split(";")]
    if part is not None:
        before = list(file.of(name).parts)
        texts = before + [""] * (part + 1 - len(before))
        texts[part] = row["answer"].strip()[:LONGEST]
    files[learner, form] = file.changed(name, parts=tuple(texts))


def _form(text: str, sheet: Sheet, record: Record, learner: str) -> int:
    forms = record.sheets.get(sheet.name, {}).get(learner, [])
    if text.isascii() and text.isdigit():
        return int(text)
    if text or not forms:
        raise SeatworkError(learner, f"no form of {sheet.name} is known", "write the form's number")
    return forms[-1].form


def place_of(question: str, sheet: Sheet) -> tuple[str, int | None]:
    """Return the question meant by ``c3`` or ``c3b``, and the part, None for the whole."""
    names = {item.id for item in sheet.items}
    if question in names:
        return question, None
    if question[:-1] in names and QUESTION.fullmatch(question[:-1]) and question[-1] in PARTS:
        return question[:-1], PARTS.index(question[-1])
    raise SeatworkError(ascii(question)[:40], "the sheet has no such question", "check the row")
