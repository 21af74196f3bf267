"""A worksheet on paper: one for each learner, and the key for the instructor."""

from collections.abc import Sequence
from pathlib import Path

from seatwork.cards.pages import Pages
from seatwork.marking import Handout, Sheet
from seatwork.marking.telling import band, right_answer
from seatwork.questions.parts import NumberPart

LETTERS = "abcdefgh"
PICTURE = 0.8


def learner_sheet(path: Path, sheet: Sheet, handout: Handout, paper: str = "letter") -> None:
    """Write one learner's worksheet: numbers, drawings, boxes to write in.

    Parameters
    ----------
    path : Path
        The PDF.
    sheet : Sheet
        The worksheet.
    handout : Handout
        The learner's form.
    paper : {"letter", "a4"}
        Size of the sheets.
    """
    given = handout.given
    pages = Pages(paper, foot=f"{given.learner}  {sheet.name}  form {given.form}")
    pages.text(sheet.title, size=18, bold=True)
    pages.text(f"Learner {given.learner}    form {given.form}    date ____________")
    pages.text("Write the number in the box, with its unit if it is another than printed.")
    for item in sheet.items:
        _question(pages, item.id, item.points, handout)
    pages.save(path)


def _question(pages: Pages, name: str, points: float, handout: Handout) -> None:
    question = handout.questions[name]
    drawing = question.drawing()
    pages.space(0.25)
    pages.keep_together(3.9 if drawing else 1.6)
    pages.text(f"{name}    ({points:g} points)", bold=True)
    pages.text(question.ask())
    if drawing is not None:
        pages.picture(drawing.png(PICTURE), height=2.4)
    pages.space(0.08)
    for number, part in enumerate(question.parts):
        label = name if len(question.parts) == 1 else f"{name}{LETTERS[number]}"
        pages.box(label, part.unit if isinstance(part, NumberPart) else "")


def answer_key(
    path: Path, sheet: Sheet, handouts: Sequence[Handout], paper: str = "letter"
) -> None:
    """Write the instructor's key: every learner's answers with what is accepted."""
    pages = Pages(paper, foot=f"{sheet.name}  KEY, instructor only")
    pages.text(f"{sheet.title}: key", size=18, bold=True)
    for handout in handouts:
        given = handout.given
        pages.space(0.15)
        pages.keep_together(1.0)
        pages.text(f"{given.learner}    form {given.form}", bold=True)
        for item in sheet.items:
            for number, part in enumerate(handout.questions[item.id].parts):
                single = len(handout.questions[item.id].parts) == 1
                label = item.id if single else f"{item.id}{LETTERS[number]}"
                accepted = band(part)
                shown = f"{right_answer(part)}   (accepted {accepted})" if accepted else ""
                pages.text(f"{label}   {shown or right_answer(part)}", indent=0.3)
    pages.save(path)
