"""Answers typed back from paper: learner, question, number, one a row."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from seatwork import files
from seatwork.errors import SeatworkError
from seatwork.marking.answers import LONGEST, AnswerFile
from seatwork.marking.handed import Forms, HandedOut
from seatwork.marking.names import QUESTION, form_number, learner_code
from seatwork.marking.sealing import FORM_ID
from seatwork.marking.sheets import Item, Sheet
from seatwork.marking.submissions import Submission
from seatwork.questions.left_out import LeftOut

HEADS = ("learner", "question", "answer")
COLUMNS = (*HEADS, "form")
PARTS = "abcdefgh"
NO_ROW = "the file has no row for it"
WHOLE = (
    "type the whole paper, with a row for each question or part; one that is blank on the paper"
    " has a row without an answer"
)


def read(path: Path, sheet: Sheet, handed_out: Forms) -> list[Submission]:
    """Return the answers of a CSV file typed from paper, one submission a learner.

    Parameters
    ----------
    path : Path
        Columns learner, question, answer, and form for a learner who was given several: its
        number, or its id as printed; parts
        as questions ``c3a``, ``c3b``, or in one answer with ``;`` between them.
    sheet : Sheet
        The worksheet.
    handed_out : Forms
        What was handed out.

    Returns
    -------
    list of Submission
        A question that stands in two rows, or in none, is left to a person, with what was read.

    Raises
    ------
    SeatworkError
        If the file cannot be read, or rows are wrong: all of them, and what would do.
    """
    faults: list[SeatworkError] = []
    rows = files.read_table(path, columns=COLUMNS, needed=HEADS, faults=faults)
    rows = _sure_of_form(rows, sheet, handed_out, faults)
    papers: dict[tuple[str, int], _Paper] = {}
    files.build_each(rows, lambda row: _enter(papers, row, sheet, handed_out), faults)
    return [paper.submission(_asked(paper, sheet, handed_out)) for paper in papers.values()]


def _sure_of_form(
    rows: Sequence[files.Row], sheet: Sheet, handed_out: Forms, faults: list[SeatworkError]
) -> list[files.Row]:
    """Leave out rows that do not say which of several forms they answer, one fault a learner.

    A test typed before would otherwise be marked by the numbers of the re-test.
    """
    sure, doubtful = [], dict[str, files.Row]()
    for row in rows:
        learner = row.text("learner").upper()
        several = len(handed_out.sheets.get(sheet.name, {}).get(learner, ())) > 1
        if several and not row.text("form"):
            doubtful.setdefault(learner, row)
        else:
            sure.append(row)
    for learner, row in doubtful.items():
        numbers = " and ".join(str(one.form) for one in handed_out.forms(sheet.name, learner))
        remedy = "write in a column form, in every row, the number printed on the paper"
        faults.append(row.refuse("form", f"{learner} was given the forms {numbers}", remedy))
    return sure


@dataclass(slots=True)
class _Paper:
    """What was typed from one paper so far: by question and part, each with its rows."""

    learner: str
    sheet: str
    form: int
    typed: dict[tuple[str, int | None], list[tuple[int, str]]] = field(default_factory=dict)

    def submission(self, asked: Mapping[str, int]) -> Submission:
        """Return the paper; `asked` says of how many parts each question of its form is."""
        file = AnswerFile(learner=self.learner, sheet=self.sheet, form=self.form)
        for name in dict.fromkeys(name for name, _ in self.typed):
            file = file.changed(name, parts=self._parts(name))
        doubts = {**self._missing(asked), **self._twice()}
        return Submission(f"paper {file.name}", file, doubts=doubts, came="paper")

    def _parts(self, name: str) -> tuple[str, ...]:
        whole = self.typed.get((name, None))
        parts = [text.strip() for text in whole[0][1].split(";")] if whole else []
        for (question, part), rows in self.typed.items():
            if question == name and part is not None:
                parts += [""] * (part + 1 - len(parts))
                parts[part] = rows[0][1]
        return tuple(parts)

    def _missing(self, asked: Mapping[str, int]) -> dict[str, str]:
        """Name the questions that no row says, or not with all of their parts."""
        found = {}
        for name, count in asked.items():
            given = {part for other, part in self.typed if other == name}
            whole = self.typed[name, None][0][1] if None in given else ""
            typed = whole.count(";") + 1 if whole else len(given)
            if not given:
                found[name] = NO_ROW
            elif typed < count and (whole or None not in given):
                found[name] = f"only {typed} of its {count} parts stood in the file"
        return found

    def _twice(self) -> dict[str, str]:
        """Name the questions that stand in more than one row, with what each row says."""
        found = {}
        for name in {name for name, _ in self.typed}:
            parts = {part: rows for (other, part), rows in self.typed.items() if other == name}
            rows = sorted(row for both in parts.values() for row in both)
            if len(rows) > len(parts) or (None in parts and len(parts) > 1):
                sentence = ", ".join(f"row {number} says “{text}”" for number, text in rows)
                found[name] = f"it was typed twice: {sentence}"
        return found


def _asked(paper: _Paper, sheet: Sheet, handed_out: Forms) -> dict[str, int]:
    """Return of how many parts each question of a paper's form is; 1 where that is not known."""
    form = handed_out.form(sheet.name, paper.learner, paper.form)
    items = [item for item in sheet.items if form is not None and item.id in form.sizes]
    return {
        item.id: 1 if form is None or issubclass(item.kind, LeftOut) else _count(form, item)
        for item in items
    }


def _count(form: HandedOut, item: Item) -> int:
    try:
        return len(form.question(item).parts)
    except Exception:  # sizes of another version: marking says so
        return 1


def _enter(
    papers: dict[tuple[str, int], _Paper], row: files.Row, sheet: Sheet, handed_out: Forms
) -> None:
    learner = learner_code_of(row)
    form = _form(row, sheet, handed_out, learner)
    row.needed("question")
    given = handed_out.form(sheet.name, learner, form)
    asked = given.asked(sheet) if given else sheet
    place = row.read("question", lambda text: place_of(text.lower(), asked))
    assert place is not None
    answer = row.text("answer")
    if len(answer) > LONGEST:
        raise row.refuse("answer", "the answer is far too long", "shorten it")
    paper = papers.setdefault((learner, form), _Paper(learner, sheet.name, form))
    paper.typed.setdefault(place, []).append((row.number, answer))


def learner_code_of(row: files.Row) -> str:
    """Return the learner that a row names, in capitals or not.

    Raises
    ------
    SeatworkError
        With the row, if it is blank or no learner code.
    """
    row.needed("learner")
    return row.read("learner", lambda text: learner_code(text.upper())) or ""


def _form(row: files.Row, sheet: Sheet, handed_out: Forms, learner: str) -> int:
    text, forms = row.text("form"), handed_out.sheets.get(sheet.name, {}).get(learner, [])
    if FORM_ID.fullmatch(text.upper()):
        return row.read("form", lambda text: _of_id(text.upper(), sheet, handed_out, learner)) or 0
    if text:
        whole = int(text) if text.isascii() and text.isdigit() and len(text) <= 2 else text
        return row.read("form", lambda _: form_number(whole)) or 0
    if not forms:
        fault = f"no form of {sheet.name} is known of {learner}"
        raise row.refuse("form", fault, "write the form's number, or check the learner")
    return forms[-1].form


def _of_id(form_id: str, sheet: Sheet, handed_out: Forms, learner: str) -> int:
    """Return the number of the form that has an id, if it is this learner's."""
    own = handed_out.whose(form_id)
    if own is None:
        raise SeatworkError(form_id, "no form of that id was handed out", "look at the paper again")
    if own[:2] != (learner, sheet.name):
        fault = f"that form is {own[0]}'s, {own[1]}, not {learner}'s"
        raise SeatworkError(form_id, fault, "look at the paper again")
    return own[2]


def place_of(question: str, sheet: Sheet) -> tuple[str, int | None]:
    """Return the question meant by ``c3`` or ``c3b``, and the part, None for the whole.

    Raises
    ------
    SeatworkError
        If the sheet has no such question.
    """
    names = {item.id for item in sheet.items}
    if question in names:
        return question, None
    if question[:-1] in names and QUESTION.fullmatch(question[:-1]) and question[-1] in PARTS:
        return question[:-1], PARTS.index(question[-1])
    raise SeatworkError(ascii(question)[:40], "the sheet has no such question", "check the row")
